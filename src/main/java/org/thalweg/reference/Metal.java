package org.thalweg.reference;

/**
 * A metal panels are made of, with the figures used for it.
 *
 * @param key              how callers name it: {@code galvanized-steel}
 * @param gaugeSystem      the table its sheets are listed in; see {@link Gauge#system}
 * @param printedDensity   the line of the table of metals that says what a sheet weighs
 * @param printedExpansion the line of the table of metals that says how far a sheet grows
 * @param density          what a sheet weighs for its thickness, where its table has no row for that thickness
 * @param expansion        how far it grows when it warms
 */
public record Metal(
        String key,
        String gaugeSystem,
        MetalFigure printedDensity,
        MetalFigure printedExpansion,
        Sourced<Density> density,
        Sourced<Expansion> expansion) {

    static Metal of(String key, String gaugeSystem, MetalFigure density, MetalFigure expansion) {
        return new Metal(key, gaugeSystem, density, expansion, density.density(), expansion.expansion());
    }
}
