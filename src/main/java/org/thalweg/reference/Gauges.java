package org.thalweg.reference;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.thalweg.units.Length;

/** The gauge tables: how thick a sheet is that goes by a number, and what a square foot of it weighs. */
public final class Gauges {

    private static final List<Gauge> ALL = PublishedTable.read("gauges.csv", Gauge::of);

    private static final Map<String, Table> TABLES = ALL.stream()
            .collect(
                    Collectors.groupingBy(Gauge::system, Collectors.collectingAndThen(Collectors.toList(), Table::of)));

    private static final Table NO_TABLE = new Table(List.of(), Length.ZERO);

    /**
     * The gauges of one system.
     *
     * @param halfDigit half of the last digit of its thickness column
     */
    private record Table(List<Gauge> gauges, Length halfDigit) {

        /** A column is printed to the same digit throughout; the file lost the zeros at the end of 0.0270. */
        static Table of(List<Gauge> gauges) {
            int decimals = gauges.stream()
                    .mapToInt(gauge -> gauge.thicknessInches().scale())
                    .max()
                    .orElse(0);
            return new Table(gauges, Length.inches(0.5 * Math.pow(10, -decimals)));
        }
    }

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
        Table table = TABLES.getOrDefault(metal.gaugeSystem(), NO_TABLE);
        double halfDigit = table.halfDigit.metres();
        return table.gauges.stream()
                .filter(gauge -> Math.abs(gauge.thickness().metres() - thickness.metres()) <= halfDigit)
                .findFirst()
                .map(gauge -> new SheetMass(
                        gauge.kilogramsPerSquareMetre(), Sourced.cited(gauge.source(), gauge.confidence()), true))
                .orElseGet(() -> new SheetMass(
                        metal.density().value().kilogramsPerSquareMetre(thickness),
                        metal.density().source(),
                        false));
    }
}
