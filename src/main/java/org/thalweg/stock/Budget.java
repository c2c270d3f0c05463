package org.thalweg.stock;

import java.util.function.LongSupplier;

/**
 * How long a plan may be thought about.
 *
 * @param steps counted work, about a nanosecond each; the same on every machine. 0 or more: with 0 the answer is the first
 *              plan at hand and its bound
 * @param nanos by the clock, a last resort; 0 or more
 * @param clock nanoseconds from any start, handed in, so that this room has no clock of its own
 */
public record Budget(long steps, long nanos, LongSupplier clock) {

    public Budget {
        if (steps < 0 || nanos < 0) {
            throw new IllegalArgumentException("a budget of %d steps, %d ns is below 0".formatted(steps, nanos));
        }
    }

    /** Counted work only: no clock, so the same answer everywhere. */
    public static Budget steps(long steps) {
        return new Budget(steps, Long.MAX_VALUE, () -> 0);
    }
}
