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

    /** A sign that has to be decided in whole numbers. */
    int exact(RootSum sum) {
        exact++;
        weigh(sum);
        return sum.signum();
    }

    /** A sum in whole numbers: a thousand steps if its roots are kin, thirty times that if none of 24 are. */
    void weigh(RootSum sum) {
        steps(1000 + 50L * sum.kins() * sum.kins());
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
