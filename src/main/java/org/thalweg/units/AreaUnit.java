package org.thalweg.units;

import java.util.Arrays;
import java.util.Optional;

/** Units an area may be answered in. A square is the roofer's 100 ft². */
public enum AreaUnit {
    SQUARE_FOOT("ft2", "FTK", 0.3048 * 0.3048),
    SQUARE("square", "SQR", 100 * 0.3048 * 0.3048),
    SQUARE_INCH("in2", "INK", 0.0254 * 0.0254),
    SQUARE_METRE("m2", "MTK", 1);

    /** Decimals an area is answered with, in every unit. */
    public static final int DECIMALS = 4;

    private final String symbol;
    private final String code;
    private final double squareMetres;

    AreaUnit(String symbol, String code, double squareMetres) {
        this.symbol = symbol;
        this.code = code;
        this.squareMetres = squareMetres;
    }

    /** The unit callers write as {@code symbol}; letter case counts. */
    public static Optional<AreaUnit> of(String symbol) {
        return Arrays.stream(values())
                .filter(unit -> unit.symbol.equals(symbol))
                .findFirst();
    }

    public String symbol() {
        return symbol;
    }

    /**
     * How price books write the unit: its common code [published: UN/CEFACT Recommendation 20]. {@code SQR} is there
     * "square, roofing", counted in multiples of 100 square feet; {@code SQ} is another thing.
     */
    public String code() {
        return code;
    }

    public Area of(double number) {
        return new Area(number * squareMetres);
    }

    public double from(Area area) {
        return area.squareMetres() / squareMetres;
    }

    /** The area as an answer prints it: in this unit, to {@link #DECIMALS} places, halfway away from zero. */
    public double round(Area area) {
        return Rounding.toDecimals(from(area), DECIMALS);
    }
}
