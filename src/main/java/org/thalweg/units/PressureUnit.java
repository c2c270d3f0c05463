package org.thalweg.units;

/**
 * Units a pressure is written in. Callers don't choose one: crews who read inches count pounds-force on a square foot, the
 * others kilopascals. The foot is 0.3048 m exactly; for the pound-force see {@link ForceUnit}.
 */
public enum PressureUnit {
    POUND_FORCE_PER_SQUARE_FOOT("lbf/ft2", "K85", 0.45359237 * 9.80665 / (0.3048 * 0.3048)),
    KILOPASCAL("kPa", "KPA", 1000);

    /** Decimals a pressure is answered with, in every unit. */
    public static final int DECIMALS = 4;

    private final String symbol;
    private final String code;
    private final double pascals;

    PressureUnit(String symbol, String code, double pascals) {
        this.symbol = symbol;
        this.code = code;
        this.pascals = pascals;
    }

    /** The unit that goes with a tape: pounds-force on a square foot with inches and feet, kilopascals with the others. */
    public static PressureUnit beside(LengthUnit tape) {
        return tape.inInches() ? POUND_FORCE_PER_SQUARE_FOOT : KILOPASCAL;
    }

    public String symbol() {
        return symbol;
    }

    /** The unit's common code [published: UN/CEFACT Recommendation 20]. */
    public String code() {
        return code;
    }

    public Pressure of(double number) {
        return new Pressure(number * pascals);
    }

    public double from(Pressure pressure) {
        return pressure.pascals() / pascals;
    }

    /** The pressure as an answer prints it: in this unit, to {@link #DECIMALS} places, halfway away from zero. */
    public double round(Pressure pressure) {
        return Rounding.toDecimals(from(pressure), DECIMALS);
    }
}
