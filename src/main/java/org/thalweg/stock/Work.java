package org.thalweg.stock;

/**
 * How much thinking a plan may cost, and how much it has cost. Work is counted in steps (one or two nanoseconds each: one entry
 * of a table, one number of a matrix), so the same request stops at the same place on any machine. The clock only
 * guards against a machine that is far slower than that: where it strikes, the plan is still right, but another run may
 * find another.
 */
final class Work {

    private static final long STEPS_BETWEEN_LOOKS = 200_000;

    private final Meter meter;
    private final long until;

    Work(Budget budget) {
        this(new Meter(budget), budget.steps());
    }

    private Work(Meter meter, long until) {
        this.meter = meter;
        this.until = until;
    }

    void spend(long steps) {
        meter.spend(steps);
    }

    boolean over() {
        return meter.late || meter.spent >= until;
    }

    long spent() {
        return meter.spent;
    }

    /** Whether the clock stopped it, before the counted work was done. */
    boolean late() {
        return meter.late;
    }

    /** At most so many steps of what is left, for one part of the job. */
    Work atMost(double steps) {
        return new Work(meter, Math.min(until, meter.spent + (long) steps));
    }

    /** A part of what is left. */
    Work share(double part) {
        return atMost(part * Math.max(0, until - meter.spent));
    }

    /** What all parts of a job have spent together. */
    private static final class Meter {

        private final Budget budget;
        private final long start;
        private long spent;
        private long nextLook = STEPS_BETWEEN_LOOKS;
        private boolean late;

        Meter(Budget budget) {
            this.budget = budget;
            this.start = budget.clock().getAsLong();
        }

        void spend(long steps) {
            spent += steps;
            if (spent >= nextLook) {
                nextLook = spent + STEPS_BETWEEN_LOOKS;
                late = late || spent < budget.steps() && budget.clock().getAsLong() - start > budget.nanos();
            }
        }
    }
}
