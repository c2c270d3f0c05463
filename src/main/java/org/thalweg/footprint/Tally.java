package org.thalweg.footprint;

import org.thalweg.units.Count;

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
            throw NoRoof.because(
                            NoRoof.Reason.TOO_MUCH_WORK,
                            "Eaves meet in too many ways: following them takes {actual} steps and more, {limit} at most."
                                    + " Ask for parts of the roof by themselves.")
                    .with(new Count(steps), new Count(most))
                    .stop();
        }
    }

    long exactSigns() {
        return exact;
    }
}
