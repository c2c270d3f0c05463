package org.thalweg.units;

/** Units a mass may be answered in. The pound is 0.45359237 kg exactly [published: international yard and pound, 1959]. */
public enum MassUnit {
    POUND("lb", 0.45359237),
    KILOGRAM("kg", 1);

    /** Decimals a mass is answered with, in every unit. */
    public static final int DECIMALS = 3;

    private final String symbol;
    private final double kilograms;

    MassUnit(String symbol, double kilograms) {
        this.symbol = symbol;
        this.kilograms = kilograms;
    }

    public String symbol() {
        return symbol;
    }

    public double from(Mass mass) {
        return mass.kilograms() / kilograms;
    }

    /** The mass as an answer prints it: in this unit, to {@link #DECIMALS} places, halfway away from zero. */
    public double round(Mass mass) {
        return Rounding.toDecimals(from(mass), DECIMALS);
    }
}
