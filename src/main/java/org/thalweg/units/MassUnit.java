package org.thalweg.units;

import java.util.Arrays;
import java.util.Optional;

/** Units a mass may be answered in. The pound is 0.45359237 kg exactly [published: international yard and pound, 1959]. */
public enum MassUnit {
    POUND("lb", "LBR", 0.45359237),
    KILOGRAM("kg", "KGM", 1);

    /** Decimals a mass is answered with, in every unit. */
    public static final int DECIMALS = 3;

    private final String symbol;
    private final String code;
    private final double kilograms;

    MassUnit(String symbol, String code, double kilograms) {
        this.symbol = symbol;
        this.code = code;
        this.kilograms = kilograms;
    }

    /** The unit callers write as {@code symbol}; letter case counts. */
    public static Optional<MassUnit> of(String symbol) {
        return Arrays.stream(values())
                .filter(unit -> unit.symbol.equals(symbol))
                .findFirst();
    }

    public String symbol() {
        return symbol;
    }

    /** How price books write the unit: its common code [published: UN/CEFACT Recommendation 20]. */
    public String code() {
        return code;
    }

    public Mass of(double number) {
        return new Mass(number * kilograms);
    }

    public double from(Mass mass) {
        return mass.kilograms() / kilograms;
    }

    /** The mass as an answer prints it: in this unit, to {@link #DECIMALS} places, halfway away from zero. */
    public double round(Mass mass) {
        return Rounding.toDecimals(from(mass), DECIMALS);
    }
}
