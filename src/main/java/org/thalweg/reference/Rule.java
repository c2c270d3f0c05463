package org.thalweg.reference;

import java.math.BigDecimal;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;
import org.thalweg.units.Measure;
import org.thalweg.units.Pitch;

/**
 * One published rule, as printed.
 *
 * @param topic      what it is about: {@code min slope}, {@code valley}, {@code clip} …
 * @param rule       what it asks for, and of which roofing
 * @param value      the figure or figures; may be empty
 * @param unit       of the value; may be empty
 * @param source     the code, handbook or practice it stands in
 * @param confidence how sure we are of it; see {@link Sourced#confidence}
 * @param note       anything else; may be empty
 */
public record Rule(
        String topic, String rule, String value, String unit, String source, String confidence, String note) {

    static Rule of(CSVRecord row) {
        return new Rule(
                row.get("topic"),
                row.get("rule"),
                row.get("value"),
                row.get("unit"),
                row.get("source"),
                row.get("confidence"),
                row.get("note"));
    }

    /** The value as a number with the digits it was printed with, where it is one plain number. */
    public Optional<BigDecimal> number() {
        return value.matches("[0-9]+(\\.[0-9]+)?") ? Optional.of(new BigDecimal(value)) : Optional.empty();
    }

    /** The value as something to compute with, where it is one plain length, slope or angle. */
    public Optional<Measure> measure() {
        return number().flatMap(number -> measure(number.doubleValue()));
    }

    private Optional<Measure> measure(double figure) {
        return switch (unit) {
            case "in per 12", "in per ft" -> Optional.of(new Pitch(figure, 12));
            case "deg" -> Optional.of(Angle.degrees(figure));
            case "in" -> Optional.of(Length.inches(figure));
            case "ft" -> Optional.of(Length.feet(figure));
            case "mm" -> Optional.of(Length.millimetres(figure));
            case "m" -> Optional.of(Length.metres(figure));
            default -> Optional.empty();
        };
    }
}
