package org.thalweg.reference;

import java.math.BigDecimal;
import org.apache.commons.csv.CSVRecord;

/**
 * One line of the table of metals, as printed.
 *
 * @param metal      which metal or alloy, in the file's words
 * @param property   what was measured; over which temperatures or when, if that matters
 * @param value      the figure, with the digits it was printed with
 * @param unit       its unit
 * @param source     where it stands
 * @param confidence how sure we are of it; see {@link Sourced#confidence}
 * @param note       anything else; may be empty
 */
public record MetalFigure(
        String metal, String property, BigDecimal value, String unit, String source, String confidence, String note) {

    static MetalFigure of(CSVRecord row) {
        return new MetalFigure(
                row.get("metal"),
                row.get("property"),
                new BigDecimal(row.get("value")),
                row.get("unit"),
                row.get("source"),
                row.get("confidence"),
                row.get("note"));
    }

    /** The figure read as what a sheet weighs for its thickness. */
    Sourced<Density> density() {
        return Sourced.of(Density.of(value.doubleValue(), unit), source, confidence);
    }

    /** The figure read as how far a sheet grows. */
    Sourced<Expansion> expansion() {
        return Sourced.of(Expansion.of(value.doubleValue(), unit), source, confidence);
    }
}
