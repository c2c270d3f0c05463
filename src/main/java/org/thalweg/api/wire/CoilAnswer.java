package org.thalweg.api.wire;

import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.api.Limits;

/**
 * Panels from one coil.
 *
 * @param stock         which coil
 * @param orderedLength of the shortest run
 * @param panelLength   of the panels alone
 * @param squareLength  of square blanks
 * @param orderedArea   of the shortest run
 * @param materialArea  of the panels alone
 * @param run           the shortest run
 * @param layingOrder   the shortest run in the order of laying
 * @param paired        two panels to a square blank
 */
@Schema(
        name = "CoilCut",
        requiredProperties = {"stock", "orderedLength", "panelLength", "squareLength", "run", "layingOrder"},
        description =
                "Panels one after the other from a coil whose end is square before and after; neighbours share a cut where their ends lean"
                        + " alike.")
public record CoilAnswer(
        @Schema(description = "Id of the stock.", maxLength = Limits.ID_LENGTH, examples = "coil-20")
        String stock,

        @Schema(description = "Coil that the shortest run takes; no order of the panels takes less.")
        MarkedLength orderedLength,

        @Schema(ref = "PositiveLength", description = "Coil of the same area as the panels: half of both their edges.")
        double panelLength,

        @Schema(description = "Coil that the panels take when each is cut from a square blank of its own.")
        MarkedLength squareLength,

        @Schema(ref = "PositiveArea", description = "Area of the ordered length, when the width is known.")
        Optional<Double> orderedArea,

        @Schema(ref = "PositiveArea", description = "Area of the panels themselves, when the width is known.")
        Optional<Double> materialArea,

        @Schema(description = "The shortest run, in the order it is cut.", maxItems = Limits.COIL_PANELS)
        List<RunPanelAnswer> run,

        @Schema(description = "The shortest run that keeps the order the panels are laid in.")
        LayingOrderAnswer layingOrder,

        @Schema(description = "Square blanks of one panel or two, head to head; not in a layout.")
        Optional<PairedAnswer> paired) {

    /**
     * The run in the order of laying.
     *
     * @param length of coil
     * @param cost   coil above the shortest run
     * @param run    in the order it is cut
     */
    @Schema(
            name = "LayingOrder",
            requiredProperties = {"length", "cost", "run"},
            description = "The shortest run that keeps the order of the request, which is the order of laying.")
    public record LayingOrderAnswer(
            @Schema(description = "Coil that it takes.") MarkedLength length,

            @Schema(ref = "PositiveLength", description = "Coil that keeping the order takes above the shortest run.")
            double cost,

            @Schema(description = "In the order it is cut.", maxItems = Limits.COIL_PANELS)
            List<RunPanelAnswer> run) {}

    /**
     * Blanks of one panel or two.
     *
     * @param length of all blanks
     * @param proven whether no other pairs take less
     * @param blanks one by one
     */
    @Schema(
            name = "PairedBlanks",
            requiredProperties = {"length", "proven", "blanks"},
            description = "Square blanks with at most two panels on each.")
    public record PairedAnswer(
            @Schema(description = "Coil that all blanks take.")
            MarkedLength length,

            @Schema(
                    description =
                            "Whether no other pairs take less; above 400 panels they are paired one after the other.")
            boolean proven,

            @Schema(description = "In the order of the first panel of each.", maxItems = Limits.COIL_PANELS)
            List<BlankRunAnswer> blanks) {}

    /**
     * A square blank and what is on it.
     *
     * @param length of the blank
     * @param panels on it
     */
    @Schema(
            name = "PairedBlank",
            requiredProperties = {"length", "panels"},
            description = "A square blank and the one or two panels on it.")
    public record BlankRunAnswer(
            @Schema(description = "How long the blank is.") MarkedLength length,

            @Schema(description = "In the order they are cut, measured from the end of the blank.", maxItems = 2)
            List<RunPanelAnswer> panels) {}

    /**
     * A panel in a run.
     *
     * @param id     which
     * @param turned whether it is turned
     * @param lower  along the lower edge of the coil
     * @param upper  along its upper edge
     */
    @Schema(
            name = "RunPanel",
            requiredProperties = {"id", "turned", "lower", "upper"},
            description = "A panel as it lies on the coil.")
    public record RunPanelAnswer(
            @Schema(description = "Id of the piece.", maxLength = Limits.ID_LENGTH, examples = "hip-4")
            String id,

            @Schema(description = "Whether it is turned end for end.")
            boolean turned,

            @Schema(description = "Along the lower edge of the coil.")
            SpanAnswer lower,

            @Schema(description = "Along the upper edge of the coil.")
            SpanAnswer upper) {}

    /**
     * From one mark to another.
     *
     * @param from the first mark
     * @param to   the second
     */
    @Schema(
            name = "EdgeSpan",
            requiredProperties = {"from", "to"},
            description = "From one mark to another along an edge, measured from the square end.")
    public record SpanAnswer(
            @Schema(description = "Where it begins.") MarkedLength from,

            @Schema(description = "Where it ends.") MarkedLength to) {}
}
