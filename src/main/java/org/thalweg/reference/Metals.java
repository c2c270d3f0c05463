package org.thalweg.reference;

import java.util.List;
import java.util.Optional;

/**
 * The metals known here. Aluminium-zinc coated steel is not among them: no figure for it has been found yet.
 */
public final class Metals {

    private static final List<MetalFigure> FIGURES = PublishedTable.read("metals.csv", MetalFigure::of);

    private static final List<Metal> ALL = List.of(
            // The sheet basis of the steel gauges holds for galvanized sheet at its full thickness too: it meets every
            // row of the galvanized table within the digits printed there.
            Metal.of(
                    "galvanized-steel",
                    "galvanized_sheet_gauge",
                    figure("steel", "sheet_weight_per_inch"),
                    figure("steel_galvanized", "thermal_expansion")),
            // Five expansion figures are printed for copper. The handbook's 9.8e-6 is a mean up to 572 °F, hotter than
            // any roof; two are a century old; 9.33e-6 (77 to 212 °F) and the trade table's 9.4e-6 (which the copper
            // association's alloy data give for 68 to 212 °F) are for temperatures a roof sees. Of these the larger:
            // the
            // error falls on the side of more room to move, and a published example checks it.
            Metal.of(
                    "copper",
                    "copper_oz_per_ft2",
                    figure("copper", "density"),
                    figure("copper", "thermal_expansion_trade_table")),
            // Its gauge table is reckoned at 42 lb/ft² to the inch, 0.6 % above this density; both are from memory.
            Metal.of(
                    "stainless-steel",
                    "stainless_us_standard_gauge",
                    figure("stainless_304", "density"),
                    figure("stainless_300", "thermal_expansion")),
            // 1.29e-5 per °F is 2.32e-5 per kelvin; the European 2.3e-5 is the same figure with a digit less.
            Metal.of(
                    "aluminum",
                    "aluminum_decimal",
                    figure("aluminum_3003", "density"),
                    figure("aluminum", "thermal_expansion")),
            // The 1919 figure is for rolled zinc without titanium: another metal, which grows a sixth more.
            Metal.of(
                    "zinc",
                    "zinc_titanium_mm",
                    figure("zinc_titanium", "density_si"),
                    figure("zinc_titanium", "thermal_expansion_si")));

    private Metals() {}

    /** Every line of the table, used here or not, in the order of the file. */
    public static List<MetalFigure> figures() {
        return FIGURES;
    }

    /** Every metal, in a settled order. */
    public static List<Metal> all() {
        return ALL;
    }

    /** The metal callers name {@code key}; letter case counts. */
    public static Optional<Metal> of(String key) {
        return ALL.stream().filter(metal -> metal.key().equals(key)).findFirst();
    }

    private static MetalFigure figure(String metal, String property) {
        return FIGURES.stream()
                .filter(figure ->
                        figure.metal().equals(metal) && figure.property().equals(property))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("metals.csv has no " + property + " of " + metal));
    }
}
