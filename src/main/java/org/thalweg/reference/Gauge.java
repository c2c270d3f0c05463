package org.thalweg.reference;

import java.math.BigDecimal;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import org.thalweg.units.AreaUnit;
import org.thalweg.units.Length;
import org.thalweg.units.MassUnit;

/**
 * One line of a gauge table, as printed.
 *
 * @param system             which table
 * @param gauge              the gauge number, or ounces per square foot for copper; empty where sheet goes by thickness
 * @param thicknessInches    nominal thickness, with the digits it was printed with
 * @param leastInches        thinnest sheet that still passes for it, if the table says
 * @param mostInches         thickest sheet that still passes for it, if the table says
 * @param poundsPerSquareFoot mass per area, with the digits it was printed with
 * @param source             where it stands
 * @param confidence         how sure we are of it; see {@link Sourced#confidence}
 * @param note               anything else; may be empty
 */
public record Gauge(
        String system,
        String gauge,
        BigDecimal thicknessInches,
        Optional<BigDecimal> leastInches,
        Optional<BigDecimal> mostInches,
        BigDecimal poundsPerSquareFoot,
        String source,
        String confidence,
        String note) {

    static Gauge of(CSVRecord row) {
        return new Gauge(
                row.get("system"),
                row.get("gauge_or_oz"),
                new BigDecimal(row.get("thickness_in")),
                printed(row.get("min_in")),
                printed(row.get("max_in")),
                new BigDecimal(row.get("weight_lb_per_ft2")),
                row.get("source"),
                row.get("confidence"),
                row.get("note"));
    }

    private static Optional<BigDecimal> printed(String cell) {
        return cell.isEmpty() ? Optional.empty() : Optional.of(new BigDecimal(cell));
    }

    public Length thickness() {
        return Length.inches(thicknessInches.doubleValue());
    }

    /** The printed mass per area. */
    public double kilogramsPerSquareMetre() {
        return MassUnit.POUND.of(poundsPerSquareFoot.doubleValue()).kilograms()
                / AreaUnit.SQUARE_FOOT.of(1).squareMetres();
    }
}
