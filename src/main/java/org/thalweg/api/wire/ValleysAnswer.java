package org.thalweg.api.wire;

import jakarta.validation.constraints.Size;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.api.Limits;
import org.thalweg.api.wire.LayoutUsed.TreatmentUsed;

/**
 * A valley, laid out alone.
 *
 * @param engine   who answered
 * @param digest   which request
 * @param job      the caller's name for it
 * @param units    the caller's units
 * @param used     the figures it was laid out with
 * @param valleys  the valley; several where other planes part its line
 * @param cuts     the pan and its cleats cut from stock
 * @param findings what a crew should know of it
 * @param cautions what holds for every roof
 */
@Schema(
        name = "ValleysAnswer",
        requiredProperties = {"engine", "digest", "units", "used", "valleys", "findings", "cautions"},
        description = "A valley laid out: the same as a layout of its roof says of it.")
public record ValleysAnswer(
        @Schema(ref = "Engine") String engine,
        @Schema(ref = "Digest") String digest,

        @Schema(
                description = "The caller's name for the job, where the request gave one.",
                maxLength = Limits.ID_LENGTH,
                examples = "Boathouse, main roof")
        Optional<String> job,

        @Schema(description = "The request's units; they hold for every figure of this answer.")
        UnitsForm units,

        AloneUsed used,

        @Schema(
                description =
                        "The valley; several, from the order of the roof's edges, where other planes part its line.",
                maxItems = Limits.EDGES)
        List<ValleyAnswer> valleys,

        @Schema(
                description =
                        "Goods of sheet metal cut from stock, by item and width, the pan first; where `cutting` was given.",
                maxItems = Limits.ORDER_LINES)
        Optional<List<SheetCutAnswer>> cuts,

        @Schema(description = "What a crew should know of it.", maxItems = Limits.FINDINGS)
        List<FindingAnswer> findings,

        @Schema(description = "What holds for every roof.", maxItems = Limits.CAUTIONS)
        List<CautionAnswer> cautions) {

    /**
     * The figures a valley was laid out with.
     *
     * @param tolerance      corners this close are one
     * @param cover          of the panels
     * @param metal          of the panels
     * @param minimumSlope   flattest slope the system allows
     * @param valleyPan      the pan
     * @param fastening      spacings
     * @param climate        heat and rain
     * @param edgeTreatments how panels end
     * @param cutting        what goods of sheet metal were cut from
     * @param tapeRule       how tape marks are rounded
     * @param defaults       which of them the request left out
     */
    @Schema(
            name = "ValleyAloneUsed",
            requiredProperties = {
                "tolerance",
                "cover",
                "metal",
                "minimumSlope",
                "valleyPan",
                "fastening",
                "climate",
                "edgeTreatments",
                "tapeRule",
                "defaults"
            },
            description = "The figures the valley was laid out with, given or default.")
    public record AloneUsed(
            @Schema(ref = "PositiveLength", description = "Corners this close are one corner.")
            double tolerance,

            @Schema(ref = "PositiveLength", description = "Width a panel covers, from rib to rib.")
            double cover,

            @Schema(description = "What the panels are made of.", maxLength = Limits.METAL_LENGTH)
            String metal,

            @Schema(description = "Flattest slope the panel system allows.")
            RiseAndRun minimumSlope,

            ValleyUsed.PanUsed valleyPan,
            ValleyUsed.FasteningUsed fastening,
            ValleyUsed.ClimateUsed climate,

            @Schema(
                    description =
                            "How panels end, by edge kind, edge name or pair of corners as in the request, every member"
                                    + " filled in.",
                    maxProperties = Limits.TREATMENTS)
            Map<String, TreatmentUsed> edgeTreatments,

            @Schema(description = "What goods of sheet metal were cut from, when it was given.")
            Optional<CuttingUsed> cutting,

            @Schema(description = "How tape marks are rounded.", maxLength = 200)
            String tapeRule,

            @Schema(
                    description = "Pointers to what the request left out and a default stands for.",
                    maxItems = Limits.DEFAULTS)
            List<@Size(max = 200) String> defaults) {}
}
