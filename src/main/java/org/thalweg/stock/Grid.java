package org.thalweg.stock;

import org.thalweg.units.Length;

/**
 * The steps in which lengths are counted: 3.125 µm, the largest that holds sixty-fourths of an inch (127 steps) and tenths of
 * a millimetre (32 steps), so that whatever a tape can show is exact in either unit. [geometry: an inch is 25.4 mm]
 */
public final class Grid {

    private static final double STEPS_PER_METRE = 320_000;

    /** Lengths this near to a step, as part of it, are meant to be on it: what arithmetic on doubles leaves. */
    private static final double ON_STEP = 1e-3;

    private Grid() {}

    /** For pieces and kerfs: never shorter than asked for. */
    public static long atLeast(Length length) {
        return (long) Math.ceil(length.metres() * STEPS_PER_METRE - ON_STEP);
    }

    /** For bars: never longer than there is. */
    public static long atMost(Length length) {
        return (long) Math.floor(length.metres() * STEPS_PER_METRE + ON_STEP);
    }

    /** For signed offsets: the nearest step. */
    public static long nearest(Length length) {
        return Math.round(length.metres() * STEPS_PER_METRE);
    }

    public static Length length(long steps) {
        return Length.metres(steps / STEPS_PER_METRE);
    }
}
