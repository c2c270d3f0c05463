package org.thalweg.footprint;

/** Counts the work of one plan of walls, and stops it where more is asked than one plan may cost. */
final class Tally {

    private final long most;
    private long steps;
    private long exact;

    Tally(long most) {
        this.most = most;
    }

    /** A sign that had to be decided in whole numbers; about as much work as a thousand steps. */
    int exact(int sign) {
        exact++;
        steps(1000);
        return sign;
    }

    void steps(long count) {
        steps += count;
        if (steps > most) {
            throw new NoRoof.Stop(NoRoof.because(
                    NoRoof.Reason.TOO_MUCH_WORK,
                    "its eaves meet in more ways than are told apart for one plan (%d steps)".formatted(most)));
        }
    }

    long exactSigns() {
        return exact;
    }
}
