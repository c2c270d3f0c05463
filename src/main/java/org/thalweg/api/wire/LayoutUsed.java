package org.thalweg.api.wire;

import jakarta.validation.constraints.Size;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.api.Limits;
import org.thalweg.api.problem.Figure;
import org.thalweg.panel.Lead;
import org.thalweg.roof.PanelHold;

/**
 * The figures a roof was laid with.
 *
 * @param tolerance      corners this close are one
 * @param panel          the panel
 * @param start          where the first strip goes
 * @param edgeTreatments how panels end
 * @param valleyPan      pan of valleys
 * @param hipCap         cap of hips
 * @param trims          what edges are trimmed with
 * @param fastening      spacings
 * @param underlayment   the sheets under the metal
 * @param sealing        tape, sealant and rivets
 * @param wind           what clips are spaced for
 * @param climate        heat and rain
 * @param ordering       how it is bought
 * @param cutting        what goods of sheet metal were cut from
 * @param tapeRule       how tape marks are rounded
 * @param defaults       which of them the request left out
 */
@Schema(
        name = "LayoutUsed",
        requiredProperties = {
            "tolerance",
            "panel",
            "start",
            "edgeTreatments",
            "valleyPan",
            "hipCap",
            "trims",
            "fastening",
            "underlayment",
            "sealing",
            "climate",
            "ordering",
            "tapeRule",
            "defaults"
        },
        description = "The figures the roof was laid with, given or default.")
public record LayoutUsed(
        @Schema(
                description = "Corners this close are one corner; in the request's length unit.",
                format = "double",
                minimum = "0",
                maximum = "100")
        double tolerance,

        PanelUsed panel,
        StartUsed start,

        @Schema(
                description =
                        "How panels end, by edge kind, edge name or pair of corners as in the request, every"
                                + " member filled in. What is not named ends on the roof line, at valleys where `valleys` says.",
                maxProperties = Limits.TREATMENTS)
        Map<String, TreatmentUsed> edgeTreatments,

        ValleyUsed.PanUsed valleyPan,
        ValleyUsed.HipCapUsed hipCap,
        TrimsUsed trims,
        ValleyUsed.FasteningUsed fastening,
        UnderlaymentUsed underlayment,
        SealingUsed sealing,

        @Schema(description = "The wind, when it was given.")
        Optional<WindUsed> wind,

        ValleyUsed.ClimateUsed climate,
        OrderingUsed ordering,

        @Schema(description = "What goods of sheet metal were cut from, when it was given.")
        Optional<CuttingUsed> cutting,

        @Schema(description = "How tape marks are rounded.", maxLength = 200)
        String tapeRule,

        @Schema(
                description =
                        "Pointers to what the request left out and a default stands for, as" + " `#/panel/longest`.",
                maxItems = Limits.DEFAULTS)
        List<@Size(max = 200) String> defaults) {

    /**
     * How it is bought.
     *
     * @param formed who forms the panels
     * @param items  how single items are bought
     */
    @Schema(
            name = "OrderingUsed",
            requiredProperties = {"formed", "items"},
            description = "How it is bought; members as in the request. Items not named are bought as needed.")
    public record OrderingUsed(
            @Schema(ref = "Formed", description = "Who forms the panels.")
            OrderingForm.Formed formed,

            @Schema(description = "How single items are bought.", maxProperties = Limits.ORDER_ITEMS)
            Map<String, OrderRuleUsed> items) {}

    /**
     * How one item is bought.
     *
     * @param extraPercent more for what is lost
     * @param packCount    pieces in a pack
     * @param packLength   length in a pack
     */
    @Schema(
            name = "OrderRuleUsed",
            requiredProperties = "extraPercent",
            description = "How one item is bought; members as in the request.")
    public record OrderRuleUsed(
            @Schema(
                    description = "What is ordered more, in per cent.",
                    format = "double",
                    minimum = "0",
                    maximum = "100")
            double extraPercent,

            @Schema(description = "Pieces in a pack.", minimum = "1", maximum = "1000000")
            Optional<Long> packCount,

            @Schema(
                    description = "Length in a pack, in the request's length unit.",
                    format = "double",
                    minimum = "0",
                    maximum = "1e9")
            Optional<Double> packLength) {}

    /**
     * The panel, every member filled in.
     *
     * @param cover          rib to rib
     * @param seamHeight     height of the rib, if it was given
     * @param girth          width of the flat sheet
     * @param metal          what it is made of
     * @param thickness      of the metal
     * @param massPerArea    what the sheet weighs
     * @param massSource     where that figure stands
     * @param longest        longest blank
     * @param shortest       shortest blank
     * @param orderIncrement step of blank lengths
     * @param narrowestRip   narrower is a sliver
     * @param leads          from which side strips are laid
     * @param endLap         how far a piece goes under the next
     * @param stagger        how far laps of neighbours are apart
     * @param minimumSlope   flattest slope the system allows
     */
    @Schema(
            name = "PanelUsed",
            requiredProperties = {
                "cover",
                "girth",
                "metal",
                "thickness",
                "massPerArea",
                "massSource",
                "longest",
                "shortest",
                "orderIncrement",
                "narrowestRip",
                "leads",
                "endLap",
                "stagger",
                "minimumSlope"
            },
            description = "The panel system as used; lengths in the request's length unit.")
    public record PanelUsed(
            @Schema(ref = "PositiveLength", description = "Width a panel covers, from rib to rib.")
            double cover,

            @Schema(ref = "PositiveLength", description = "Height of the rib, when it was given.")
            Optional<Double> seamHeight,

            @Schema(ref = "PositiveLength", description = "Width of the flat sheet one panel is formed from.")
            double girth,

            @Schema(description = "What the panel is made of.", maxLength = Limits.METAL_LENGTH)
            String metal,

            @Schema(ref = "PositiveLength", description = "Thickness of the metal.")
            double thickness,

            @Schema(description = "What the sheet weighs, per area in the request's units.")
            Figure massPerArea,

            @Schema(description = "Where that figure stands.", maxLength = 300)
            String massSource,

            @Schema(ref = "PositiveLength", description = "Longest blank that can be made or carried.")
            double longest,

            @Schema(ref = "PositiveLength", description = "Shortest blank that can be made.")
            double shortest,

            @Schema(ref = "PositiveLength", description = "Step that blank lengths are rounded up to.")
            double orderIncrement,

            @Schema(ref = "PositiveLength", description = "A piece narrower than this is a sliver.")
            double narrowestRip,

            @Schema(ref = "Leads", description = "From which side strips are laid.")
            Lead leads,

            @Schema(ref = "PositiveLength", description = "How far a piece goes under the one above it.")
            double endLap,

            @Schema(ref = "PositiveLength", description = "How far the laps of neighbouring strips are apart.")
            double stagger,

            @Schema(description = "Flattest slope the panel system allows.")
            RiseAndRun minimumSlope) {}

    /**
     * Where the first strip goes.
     *
     * @param by     how it is chosen
     * @param offset how wide the first panel is, when the caller says so
     */
    @Schema(
            name = "StartUsed",
            requiredProperties = {"by"},
            description = "How the place of the first strip is chosen where a plane has no own.")
    public record StartUsed(
            @Schema(ref = "StartBy", description = "How the place is chosen.")
            LayoutRequest.StartBy by,

            @Schema(ref = "PositiveLength", description = "Width of the first panel; 0 for a whole one.")
            Optional<Double> offset) {}

    /**
     * How a panel ends.
     *
     * @param setback how far it stops short
     * @param hem     metal folded under
     * @param turnUp  metal turned up
     * @param hold    how it is held, at valleys
     */
    @Schema(
            name = "TreatmentUsed",
            requiredProperties = {"setback", "hem", "turnUp"},
            description = "How a panel ends at an edge; in the request's length unit.")
    public record TreatmentUsed(
            @Schema(
                    description = "How far the finished edge stops short of the roof line; below 0 it runs past.",
                    format = "double",
                    minimum = "-1e5",
                    maximum = "1e5")
            double setback,

            @Schema(ref = "PositiveLength", description = "Metal beyond the finished edge that is folded under.")
            double hem,

            @Schema(ref = "PositiveLength", description = "Metal beyond the finished edge that is turned up.")
            double turnUp,

            @Schema(
                    ref = "PanelHold",
                    description = "How the panels' ends are held, where it was said or the kind is `valley`.")
            Optional<PanelHold> hold) {}
}
