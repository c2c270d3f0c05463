package org.thalweg.units;

/**
 * A pitch as roofers write it, rise over level run: 6:12 rises 6 in each 12 in of run.
 *
 * @param rise same unit as {@code run}; 0 or more
 * @param run  level, above 0
 */
public record Pitch(double rise, double run) implements Measure {

    public Pitch {
        if (!(rise >= 0 && run > 0 && Double.isFinite(rise / run))) {
            throw new IllegalArgumentException("a pitch (%s:%s) needs rise >= 0 and run > 0".formatted(rise, run));
        }
    }

    /** Slope as rise over a run of 12, the way North American crews read it. */
    public static Pitch ofSlope(Angle slope) {
        return new Pitch(12 * slope.tan(), 12);
    }

    public Angle slope() {
        return Angle.atan2(rise, run);
    }

    public double tan() {
        return rise / run;
    }
}
