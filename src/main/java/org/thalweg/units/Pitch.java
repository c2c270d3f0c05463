package org.thalweg.units;

import java.util.Optional;

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

    /**
     * Reads a pitch as crews write it: {@code 6:12}, {@code 8.5:12}, {@code 1/4:12}, {@code 6 1/2:12}, or {@code 6/12}
     * with plain numbers. Everything else is no pitch: signs, exponents, a run of 0, more than {@link Tape#LONGEST}
     * characters. How steep is too steep is for the caller to say.
     */
    public static Optional<Pitch> read(String text) {
        if (text.length() > Tape.LONGEST) {
            return Optional.empty();
        }
        int colon = text.indexOf(':');
        int parting = colon >= 0 ? colon : text.indexOf('/');
        if (parting < 0) {
            return Optional.empty();
        }
        String left = text.substring(0, parting);
        double rise = colon >= 0 ? Figures.amountOf(left) : Figures.numberOf(left);
        double run = Figures.numberOf(text.substring(parting + 1));
        return rise >= 0 && run > 0 ? Optional.of(new Pitch(rise, run)) : Optional.empty();
    }

    public Angle slope() {
        return Angle.atan2(rise, run);
    }

    public double tan() {
        return rise / run;
    }

    /** The rise over a run of 12 as an answer prints it: to 4 places, halfway away from zero. */
    public double roundedPer12() {
        return Rounding.toDecimals(12 * tan(), 4);
    }
}
