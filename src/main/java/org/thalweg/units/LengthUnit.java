package org.thalweg.units;

import java.math.BigDecimal;

/** The units a tape may be marked in. The inch is 25.4 mm exactly [published: international yard and pound, 1959]. */
public enum LengthUnit {
    INCH("in", "0.0254", 4),
    FOOT("ft", "0.3048", 5),
    MILLIMETRE("mm", "0.001", 3),
    CENTIMETRE("cm", "0.01", 4),
    METRE("m", "1", 6);

    private final String symbol;
    private final double metres;
    private final int decimals;

    LengthUnit(String symbol, String metres, int decimals) {
        this.symbol = symbol;
        this.metres = new BigDecimal(metres).doubleValue();
        this.decimals = decimals;
    }

    /** How callers write the unit. */
    public String symbol() {
        return symbol;
    }

    /** Decimals a length is answered with: about three micrometres or finer in every unit. */
    public int decimals() {
        return decimals;
    }

    public Length of(double number) {
        return new Length(number * metres);
    }

    public double from(Length length) {
        return length.metres() / metres;
    }

    /** The length as an answer prints it: in this unit, to {@link #decimals()} places, halfway away from zero. */
    public double round(Length length) {
        return Rounding.toDecimals(from(length), decimals);
    }
}
