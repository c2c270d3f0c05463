package org.thalweg.units;

/**
 * Units a wind speed is written in. Maps for crews who read inches print miles an hour, the others metres a second. The mile
 * is 1609.344 m exactly.
 */
public enum SpeedUnit {
    MILE_PER_HOUR("mph", "HM", 1609.344 / 3600),
    METRE_PER_SECOND("m/s", "MTS", 1);

    /** Decimals a speed is answered with, in every unit. */
    public static final int DECIMALS = 4;

    private final String symbol;
    private final String code;
    private final double metresPerSecond;

    SpeedUnit(String symbol, String code, double metresPerSecond) {
        this.symbol = symbol;
        this.code = code;
        this.metresPerSecond = metresPerSecond;
    }

    /** The unit that goes with a tape: miles an hour with inches and feet, metres a second with the others. */
    public static SpeedUnit beside(LengthUnit tape) {
        return tape.inInches() ? MILE_PER_HOUR : METRE_PER_SECOND;
    }

    public String symbol() {
        return symbol;
    }

    /** The unit's common code [published: UN/CEFACT Recommendation 20]. */
    public String code() {
        return code;
    }

    public Speed of(double number) {
        return new Speed(number * metresPerSecond);
    }

    public double from(Speed speed) {
        return speed.metresPerSecond() / metresPerSecond;
    }

    /** The speed as an answer prints it: in this unit, to {@link #DECIMALS} places, halfway away from zero. */
    public double round(Speed speed) {
        return Rounding.toDecimals(from(speed), DECIMALS);
    }
}
