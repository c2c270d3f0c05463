package org.thalweg.api.wire;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.api.Limits;

/**
 * The gauge tables.
 *
 * @param engine          who answered
 * @param thicknessUnit   unit of every thickness
 * @param massPerAreaUnit unit of every mass per area
 * @param gauges          every line of every table
 */
@Schema(
        name = "GaugesAnswer",
        requiredProperties = {"engine", "thicknessUnit", "massPerAreaUnit", "gauges"},
        description = "The published gauge tables.")
public record GaugesAnswer(
        @Schema(ref = "Engine", description = "Who answered.")
        String engine,

        @Schema(
                description =
                        "The unit of every thickness here, which most tables are printed in; zinc goes by millimetres and"
                                + " is converted.",
                maxLength = 20,
                examples = "in")
        String thicknessUnit,

        @Schema(
                description =
                        "The unit of every mass per area here, which most tables are printed in. Where a table prints none,"
                                + " the mass is computed and its confidence says so.",
                maxLength = 20,
                examples = "lb/ft2")
        String massPerAreaUnit,

        @Schema(
                description = "Every line of every table, in the order of the tables.",
                maxItems = Limits.REFERENCE_ROWS)
        List<GaugeAnswer> gauges) {

    /**
     * One line of a gauge table.
     *
     * @param system         which table
     * @param gauge          what the sheet goes by
     * @param thickness      how thick it is
     * @param leastThickness thinnest that passes for it
     * @param mostThickness  thickest that passes for it
     * @param massPerArea    what it weighs
     * @param source         where it stands
     * @param confidence     how sure we are of it
     * @param note           anything else
     */
    @Schema(
            name = "Gauge",
            requiredProperties = {"system", "thickness", "massPerArea", "source", "confidence"},
            description = "One line of a gauge table, with the digits of the table.")
    public record GaugeAnswer(
            @Schema(description = "Which table. The list is open.", maxLength = 60, examples = "galvanized_sheet_gauge")
            String system,

            @Schema(
                    description =
                            "The gauge number, or ounces per square foot for copper; absent where sheet goes by its"
                                    + " thickness.",
                    maxLength = 20,
                    examples = "24")
            Optional<String> gauge,

            @Schema(
                    description = "Nominal thickness, in `thicknessUnit`.",
                    format = "double",
                    minimum = "0",
                    maximum = "10",
                    examples = "0.0276")
            BigDecimal thickness,

            @Schema(
                    description =
                            "The thinnest sheet that still passes for it, in `thicknessUnit`, where the table says.",
                    format = "double",
                    minimum = "0",
                    maximum = "10",
                    examples = "0.0236")
            Optional<BigDecimal> leastThickness,

            @Schema(
                    description =
                            "The thickest sheet that still passes for it, in `thicknessUnit`, where the table says.",
                    format = "double",
                    minimum = "0",
                    maximum = "10",
                    examples = "0.0316")
            Optional<BigDecimal> mostThickness,

            @Schema(
                    description = "What the sheet weighs, in `massPerAreaUnit`.",
                    format = "double",
                    minimum = "0",
                    maximum = "1000",
                    examples = "1.156")
            BigDecimal massPerArea,

            @Schema(
                    description = "The code, handbook or table it stands in.",
                    maxLength = 200,
                    examples = "15 U.S.C. 206 (1893 statute)")
            String source,

            @Schema(ref = "Confidence", description = "How sure we are of it.")
            String confidence,

            @Schema(
                    description = "Anything else, when there is something.",
                    maxLength = 200,
                    examples = "0.032 in = 0.454 lb/ft2")
            Optional<String> note) {}
}
