package org.thalweg.reference;

import java.util.List;
import org.thalweg.units.Length;

/** The gauge tables: how thick a sheet is that goes by a number, and what a square foot of it weighs. */
public final class Gauges {

    private static final List<Gauge> ALL = PublishedTable.read("gauges.csv", Gauge::of);

    private Gauges() {}

    /** Every line of every table, in the order of the file. */
    public static List<Gauge> all() {
        return ALL;
    }

    /**
     * What a sheet of {@code metal} this thick weighs: as its table prints it where the table has the thickness, else its
     * density by its thickness. A table has a thickness when it would print it: within half of the last digit of
     * its thickness column, so that 0.7 mm galvanized sheet (0.02756 in) is 24 gauge (0.0276 in).
     *
     * @param thickness 0 or more
     */
    public static SheetMass massPerArea(Metal metal, Length thickness) {
        List<Gauge> table = table(metal);
        Length halfDigit = halfDigit(table);
        return table.stream()
                .filter(gauge -> Math.abs(gauge.thickness().metres() - thickness.metres()) <= halfDigit.metres())
                .findFirst()
                .map(gauge -> new SheetMass(
                        gauge.kilogramsPerSquareMetre(), Sourced.cited(gauge.source(), gauge.confidence()), true))
                .orElseGet(() -> new SheetMass(
                        metal.density().value().kilogramsPerSquareMetre(thickness),
                        metal.density().source(),
                        false));
    }

    private static List<Gauge> table(Metal metal) {
        return ALL.stream()
                .filter(gauge -> gauge.system().equals(metal.gaugeSystem()))
                .toList();
    }

    /** A column is printed to the same digit throughout; the file lost the zeros at the end of 0.0270. */
    private static Length halfDigit(List<Gauge> table) {
        int decimals = table.stream()
                .mapToInt(gauge -> gauge.thicknessInches().scale())
                .max()
                .orElse(0);
        return Length.inches(0.5 * Math.pow(10, -decimals));
    }
}
