package org.thalweg.units;

/**
 * Units a force is written in. Callers don't choose one: crews who read inches count pounds-force, the others newtons. The
 * pound-force is the pound, 0.45359237 kg, at standard gravity, 9.80665 m/s², both exact [published: NIST Special Publication
 * 811, appendix B.8].
 */
public enum ForceUnit {
    POUND_FORCE("lbf", "C78", 0.45359237 * 9.80665),
    NEWTON("N", "NEW", 1);

    /** Decimals a force is answered with, in every unit. */
    public static final int DECIMALS = 2;

    private final String symbol;
    private final String code;
    private final double newtons;

    ForceUnit(String symbol, String code, double newtons) {
        this.symbol = symbol;
        this.code = code;
        this.newtons = newtons;
    }

    /** The unit that goes with a tape: pounds-force with inches and feet, newtons with the others. */
    public static ForceUnit beside(LengthUnit tape) {
        return tape.inInches() ? POUND_FORCE : NEWTON;
    }

    public String symbol() {
        return symbol;
    }

    /** The unit's common code [published: UN/CEFACT Recommendation 20]. */
    public String code() {
        return code;
    }

    public Force of(double number) {
        return new Force(number * newtons);
    }

    public double from(Force force) {
        return force.newtons() / newtons;
    }

    /** The force as an answer prints it: in this unit, to {@link #DECIMALS} places, halfway away from zero. */
    public double round(Force force) {
        return Rounding.toDecimals(from(force), DECIMALS);
    }
}
