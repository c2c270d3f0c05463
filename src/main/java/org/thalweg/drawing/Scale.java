package org.thalweg.drawing;

import org.thalweg.units.LengthUnit;

/**
 * A scale that stands on a rule one can buy: 1:n, for feet and inches by quarters of an inch to the foot and the like, for
 * metres by ones, twos and fives [published: ISO 5455 for metric drawings; 1:25, 1:75, 1:125 and the scales for feet and
 * inches: common practice].
 *
 * @param ratio one of the sheet is this many of the roof
 * @param unit  the lengths that are drawn
 */
public record Scale(double ratio, LengthUnit unit) {

    private static final double[] INCHES = {
        1, 2, 3, 4, 6, 8, 12, 16, 24, 32, 48, 64, 96, 128, 192, 240, 384, 480, 960, 1920
    };
    private static final String[] TO_THE_FOOT = {
        "12\"", "6\"", "4\"", "3\"", "2\"", "1 1/2\"", "1\"", "3/4\"", "1/2\"", "3/8\"", "1/4\"", "3/16\"", "1/8\"",
        "3/32\"", "1/16\"", "1/20\"", "1/32\"", "1/40\"", "1/80\"", "1/160\""
    };
    private static final double[] METRIC = {1, 2, 5, 10, 20, 25, 50, 75, 100, 125, 150, 200, 250, 500, 1000, 2000};
    private static final double POINTS_PER_METRE = 72 / 0.0254;

    /** The largest usual scale at which {@code wide} by {@code high} of the roof fits into {@code area}. */
    public static Scale fitting(double wide, double high, LengthUnit unit, Area area) {
        double metre = unit.of(1).metres() * POINTS_PER_METRE;
        double least = Math.max(wide * metre / area.width(), high * metre / area.height());
        for (double ratio : unit.inInches() ? INCHES : METRIC) {
            if (ratio >= least * (1 - 1e-9)) {
                return new Scale(ratio, unit);
            }
        }
        return new Scale(Math.ceil(least / 1000) * 1000, unit);
    }

    /** Points of the sheet to one unit of the roof. */
    public double points() {
        return unit.of(1).metres() * POINTS_PER_METRE / ratio;
    }

    /** As it is written on the sheet. */
    public String stated() {
        String plain = "1:" + (long) ratio;
        if (unit.inInches()) {
            for (int i = 0; i < INCHES.length; i++) {
                if (INCHES[i] == ratio && ratio > 1) {
                    return plain + " (" + TO_THE_FOOT[i] + " = 1')";
                }
            }
        }
        return plain;
    }
}
