package org.thalweg.units;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Optional;

/** The units a tape may be marked in. The inch is 25.4 mm exactly [published: international yard and pound, 1959]. */
public enum LengthUnit {
    INCH("in", "INH", "0.0254", 4),
    FOOT("ft", "FOT", "0.3048", 5),
    MILLIMETRE("mm", "MMT", "0.001", 3),
    CENTIMETRE("cm", "CMT", "0.01", 4),
    METRE("m", "MTR", "1", 6);

    private final String symbol;
    private final String code;
    private final double metres;
    private final int decimals;

    LengthUnit(String symbol, String code, String metres, int decimals) {
        this.symbol = symbol;
        this.code = code;
        this.metres = new BigDecimal(metres).doubleValue();
        this.decimals = decimals;
    }

    /** The unit callers write as {@code symbol}; letter case counts. */
    public static Optional<LengthUnit> of(String symbol) {
        return Arrays.stream(values())
                .filter(unit -> unit.symbol.equals(symbol))
                .findFirst();
    }

    /** How callers write the unit. */
    public String symbol() {
        return symbol;
    }

    /** How price books write the unit: its common code [published: UN/CEFACT Recommendation 20]. */
    public String code() {
        return code;
    }

    /** Whether its tape is marked in inches: what goes with it then is in feet and pounds, and usual figures are round inches. */
    public boolean inInches() {
        return this == INCH || this == FOOT;
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
