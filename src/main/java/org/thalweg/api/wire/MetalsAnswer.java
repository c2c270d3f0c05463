package org.thalweg.api.wire;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.api.Limits;

/**
 * The metals and their figures.
 *
 * @param engine  who answered
 * @param metals  the metals a request may name
 * @param figures every figure of the table
 */
@Schema(
        name = "MetalsAnswer",
        requiredProperties = {"engine", "metals", "figures"},
        description = "The metals and their published figures.")
public record MetalsAnswer(
        @Schema(ref = "Engine", description = "Who answered.")
        String engine,

        @Schema(
                description = "The metals a request may name, each with the two figures used for it. The order is"
                        + " settled.",
                maxItems = Limits.REFERENCE_ROWS)
        List<MetalAnswer> metals,

        @Schema(
                description =
                        "Every figure of the table, used or not, in the order of the table. Several are printed for"
                                + " some metals, and they do not agree.",
                maxItems = Limits.REFERENCE_ROWS)
        List<PrintedFigure> figures) {

    /**
     * One metal.
     *
     * @param key         how requests name it
     * @param gaugeSystem which table lists its sheets
     * @param density     the figure used for what a sheet weighs
     * @param expansion   the figure used for how far a sheet grows
     */
    @Schema(
            name = "Metal",
            requiredProperties = {"key", "gaugeSystem", "density", "expansion"},
            description = "A metal panels are made of, with the figures used for it.")
    public record MetalAnswer(
            @Schema(
                    description = "How a request names it, in `panel.metal`.",
                    maxLength = Limits.METAL_LENGTH,
                    examples = "galvanized-steel")
            String key,

            @Schema(
                    description = "Which table of `/v1/reference/gauges` lists its sheets.",
                    maxLength = 60,
                    examples = "galvanized_sheet_gauge")
            String gaugeSystem,

            @Schema(
                    description = "The figure used for what a sheet weighs, where the gauge table has no row for its"
                            + " thickness.")
            PrintedFigure density,

            @Schema(description = "The figure used for how far a sheet grows when it warms.")
            PrintedFigure expansion) {}
}
