package org.thalweg.units;

/**
 * How a figure becomes a mark or a printed number: to the nearest, and halfway goes away from zero, both for tapes and
 * for decimals. Plain {@code double} arithmetic, because an answer holds thousands of figures.
 *
 * <p>What is halfway on paper is rarely halfway in a computer: 20 5/32 in, kept in metres, may come back a hair under.
 * So a figure a {@link #HAIR} below halfway counts as halfway; the result is then at most 0.500001 of the last place off.
 */
final class Rounding {

    /** How far below halfway is still halfway: a millionth of the last place, far above what computing loses. */
    private static final double HAIR = 1e-6;

    /** In very large figures the gap between neighbouring {@code double}s is what counts; never more than this. */
    private static final double WIDEST_HAIR = 0.1;

    private static final double[] TENS = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6};

    private Rounding() {}

    /** The nearest whole number, halfway away from zero; never {@code -0.0}. */
    static double nearest(double number) {
        double size = Math.abs(number);
        double below = Math.floor(size);
        double hair = Math.min(HAIR + 4 * Math.ulp(size), WIDEST_HAIR);
        double whole = size - below >= 0.5 - hair ? below + 1 : below;
        return number < 0 && whole > 0 ? -whole : whole;
    }

    /**
     * The nearest number with at most {@code decimals} decimals, halfway away from zero; never {@code -0.0}.
     * A whole number over a power of ten that a {@code double} holds exactly is the {@code double} nearest to that
     * decimal, so it prints with no more decimals than asked for.
     *
     * @param decimals 0 to 6
     */
    static double toDecimals(double number, int decimals) {
        return nearest(number * TENS[decimals]) / TENS[decimals];
    }
}
