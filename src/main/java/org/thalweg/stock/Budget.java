package org.thalweg.stock;

import java.util.function.LongSupplier;

/**
 * How long a plan may be thought about.
 *
 * @param steps counted work, one or two nanoseconds each; the same on every machine. 0 or more: with 0 the answer is the first
 *              plan at hand and its bound
 * @param nanos by the clock, a last resort; 0 or more
 * @param clock nanoseconds from any start, handed in, so that this room has no clock of its own
 */
public record Budget(long steps, long nanos, LongSupplier clock) {

    /** What a machine of 2026 does, warm and with a core to itself. [measured] */
    private static final long STEPS_A_MILLISECOND = 500_000;

    public Budget {
        if (steps < 0 || nanos < 0) {
            throw new IllegalArgumentException("a budget of %d steps, %d ns is below 0".formatted(steps, nanos));
        }
    }

    /** Counted work only: no clock, so the same answer everywhere. */
    public static Budget steps(long steps) {
        return new Budget(steps, Long.MAX_VALUE, () -> 0);
    }

    /** About so long, by counted work alone. @param milliseconds 0 or more */
    public static Budget work(int milliseconds) {
        return steps(milliseconds * STEPS_A_MILLISECOND);
    }

    /**
     * About so long. The clock is given twice as long as the counted work should take, so that it strikes only on a machine
     * that is too slow, too busy or not yet warm.
     *
     * @param milliseconds 0 or more
     */
    public static Budget milliseconds(int milliseconds, LongSupplier clock) {
        return new Budget(milliseconds * STEPS_A_MILLISECOND, milliseconds * 2_000_000L, clock);
    }
}
