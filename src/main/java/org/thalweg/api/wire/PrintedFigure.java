package org.thalweg.api.wire;

import java.math.BigDecimal;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * A figure of a metal.
 *
 * @param metal      which metal
 * @param property   what was measured
 * @param value      the figure
 * @param unit       its unit
 * @param source     where it stands
 * @param confidence how sure we are of it
 * @param note       anything else
 */
@Schema(
        name = "PrintedFigure",
        requiredProperties = {"metal", "property", "value", "unit", "source", "confidence"},
        description = "A figure of a metal as it was printed, with where it stands.")
public record PrintedFigure(
        @Schema(
                description = "Which metal or alloy, in the table's words.",
                maxLength = 40,
                examples = "steel_galvanized")
        String metal,

        @Schema(
                description = "What was measured; over which temperatures or when, if that matters.",
                maxLength = 60,
                examples = "thermal_expansion")
        String property,

        @Schema(
                description = "The figure, with the digits it was printed with, in the unit beside it.",
                format = "double",
                minimum = "0",
                maximum = "1e6",
                examples = "0.0000067")
        BigDecimal value,

        @Schema(
                description = "The unit it was printed in: `in/in/F` is a share of the length per degree Fahrenheit,"
                        + " `m/m/K` per kelvin; `lb/ft2/in` is a mass per area for each inch of thickness. The list is"
                        + " open.",
                maxLength = 20,
                examples = "in/in/F")
        String unit,

        @Schema(
                description = "The code, handbook or table it stands in.",
                maxLength = 200,
                examples = "EN 988 zinc-copper-titanium, 0.022 mm/m K")
        String source,

        @Schema(ref = "Confidence", description = "How sure we are of it.")
        String confidence,

        @Schema(description = "Anything else, when there is something.", maxLength = 200, examples = "12.06e-6 /K")
        Optional<String> note) {}
