package org.thalweg.geometry;

/**
 * The one tolerance of a request, chosen at the door and passed on.
 *
 * <p>Two scales follow from it. Corners closer than {@code metres} are one corner: that is how well a roof is measured.
 * Numbers closer than a {@link #hair} are one number: that is how well a computer adds.
 *
 * @param metres corners this close are one corner; above 0
 */
public record Tolerance(double metres) {

    /** 1 mm. */
    public static final Tolerance DEFAULT = new Tolerance(0.001);

    /** Rounding noise: a hundred-thousandth of the tolerance, 10 nm by default. */
    public double hair() {
        return metres * 1e-5;
    }

    /** Whether two computed lengths are the same number. Metres. */
    public boolean same(double a, double b) {
        return Math.abs(a - b) <= hair();
    }

    /** The fewest steps that reach {@code length}: 12.000000001 steps are 12. Both in metres, {@code step} above 0. */
    public long ceil(double length, double step) {
        return (long) Math.ceil((length - hair()) / step);
    }
}
