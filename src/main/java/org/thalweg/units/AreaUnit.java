package org.thalweg.units;

/** Units an area may be answered in. A square is the roofer's 100 ft². */
public enum AreaUnit {
    SQUARE_FOOT("ft2", 0.3048 * 0.3048),
    SQUARE("square", 100 * 0.3048 * 0.3048),
    SQUARE_INCH("in2", 0.0254 * 0.0254),
    SQUARE_METRE("m2", 1);

    /** Decimals an area is answered with, in every unit. */
    public static final int DECIMALS = 4;

    private final String symbol;
    private final double squareMetres;

    AreaUnit(String symbol, double squareMetres) {
        this.symbol = symbol;
        this.squareMetres = squareMetres;
    }

    public String symbol() {
        return symbol;
    }

    public double from(Area area) {
        return area.squareMetres() / squareMetres;
    }

    /** The area as an answer prints it: in this unit, to {@link #DECIMALS} places, halfway away from zero. */
    public double round(Area area) {
        return Rounding.toDecimals(from(area), DECIMALS);
    }
}
