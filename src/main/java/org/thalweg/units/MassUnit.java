package org.thalweg.units;

/** Units a mass may be answered in. The pound is 0.45359237 kg exactly [published: international yard and pound, 1959]. */
public enum MassUnit {
    POUND("lb", 0.45359237),
    KILOGRAM("kg", 1);

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
}
