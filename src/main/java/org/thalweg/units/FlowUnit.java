package org.thalweg.units;

/**
 * Units a flow is answered in. Callers don't choose one: plumbers who read inches count gallons a minute, the others
 * litres a second. The gallon is the US liquid gallon, 231 in³ exactly [published: NIST Special Publication 811,
 * appendix B.8].
 */
public enum FlowUnit {
    GALLON_PER_MINUTE("gal/min", "G2", 231 * 0.0254 * 0.0254 * 0.0254 / 60),
    LITRE_PER_SECOND("L/s", "G51", 0.001);

    /** Decimals a flow is answered with, in every unit. */
    public static final int DECIMALS = 4;

    private final String symbol;
    private final String code;
    private final double cubicMetresPerSecond;

    FlowUnit(String symbol, String code, double cubicMetresPerSecond) {
        this.symbol = symbol;
        this.code = code;
        this.cubicMetresPerSecond = cubicMetresPerSecond;
    }

    /** The unit that goes with a tape: gallons a minute with inches and feet, litres a second with the others. */
    public static FlowUnit beside(LengthUnit tape) {
        return tape.inInches() ? GALLON_PER_MINUTE : LITRE_PER_SECOND;
    }

    public String symbol() {
        return symbol;
    }

    /** The unit's common code [published: UN/CEFACT Recommendation 20]. */
    public String code() {
        return code;
    }

    public Flow of(double number) {
        return new Flow(number * cubicMetresPerSecond);
    }

    public double from(Flow flow) {
        return flow.cubicMetresPerSecond() / cubicMetresPerSecond;
    }

    /** The flow as an answer prints it: in this unit, to {@link #DECIMALS} places, halfway away from zero. */
    public double round(Flow flow) {
        return Rounding.toDecimals(from(flow), DECIMALS);
    }
}
