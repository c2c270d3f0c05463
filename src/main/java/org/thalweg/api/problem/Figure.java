package org.thalweg.api.problem;

import java.math.BigDecimal;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * A number that says what it counts.
 *
 * @param value the number
 * @param unit  what it counts
 */
@Schema(
        name = "Figure",
        requiredProperties = {"value", "unit"},
        description = "A number with its unit.")
public record Figure(
        @Schema(
                description = "The number, in the unit beside it.",
                format = "double",
                minimum = "-1.7976931348623157e308",
                maximum = "1.7976931348623157e308",
                examples = "0.0625")
        double value,

        @Schema(
                description =
                        "A length, area or mass unit of the request; `deg`; `per 12` for a pitch, the"
                                + " rise over a run of 12; `gal/min` (US gallons) for a flow when the length unit is `in` or"
                                + " `ft`, else `L/s`; the length unit with `/h` for a rainfall, as `in/h`; `lbf`, `lbf/ft2` and `mph` for"
                                + " force, pressure and wind speed with `in` and `ft`, else `N`, `kPa` and `m/s`; `1` for a count or a bare number; `byte`; `character`.",
                maxLength = 20,
                examples = "in")
        String unit) {

    /** A count or a bare number. */
    public static Figure of(double number) {
        return new Figure(number, "1");
    }

    /** As people write it: {@code 12.5 in}, {@code 30°}, {@code 3}. */
    public String text() {
        return plain(value)
                + switch (unit) {
                    case "1" -> "";
                    case "deg" -> "°";
                    default -> " " + unit;
                };
    }

    /** Without an exponent where that is readable, and without zeros that say nothing. */
    private static String plain(double value) {
        BigDecimal exact = BigDecimal.valueOf(value).stripTrailingZeros();
        double size = Math.abs(value);
        return size == 0 || (size >= 1e-6 && size < 1e15) ? exact.toPlainString() : exact.toString();
    }
}
