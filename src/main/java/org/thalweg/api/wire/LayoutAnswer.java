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
 * A roof, laid.
 *
 * @param engine   who answered
 * @param digest   which request
 * @param units    the caller's units
 * @param used     the figures it was laid with
 * @param roof     planes and edges
 * @param laid     how each plane is laid
 * @param panels   every panel to cut
 * @param valleys  every valley
 * @param hips     every hip
 * @param fasteners every row of fasteners
 * @param clips    the clips of every seam
 * @param order    equal blanks, counted
 * @param totals   sums of what is listed
 * @param findings what a crew should know of it
 * @param cautions what holds for every roof
 */
@Schema(
        name = "LayoutAnswer",
        requiredProperties = {
            "engine",
            "digest",
            "units",
            "used",
            "roof",
            "laid",
            "panels",
            "valleys",
            "hips",
            "fasteners",
            "clips",
            "order",
            "totals",
            "findings",
            "cautions"
        },
        description = "A roof laid with panels: what to cut, what to order, what to heed.")
public record LayoutAnswer(
        @Schema(ref = "Engine") String engine,
        @Schema(ref = "Digest") String digest,

        @Schema(description = "The request's units; they hold for every figure of this answer.")
        UnitsForm units,

        LayoutUsed used,
        ReadRoof roof,

        @Schema(
                description = "How each plane is laid, in the order of the planes; a plane that gets no panels is"
                        + " left out and has a finding.",
                maxItems = Limits.PLANES)
        List<LaidPlane> laid,

        @Schema(
                description = "Every panel to cut, by plane, then by strip in laying order, then from the lowest up.",
                maxItems = Limits.PANELS_ANSWERED)
        List<PanelAnswer> panels,

        @Schema(
                description =
                        "Every valley, in the order of the edges; one that more than two planes crowd about is left out.",
                maxItems = Limits.EDGES)
        List<ValleyAnswer> valleys,

        @Schema(description = "Every hip, likewise.", maxItems = Limits.EDGES)
        List<HipAnswer> hips,

        @Schema(
                description =
                        "Every row of fasteners, by plane: panel by panel, then along the edges, then the edges of pans.",
                maxItems = Limits.FASTENERS)
        List<FastenerAnswer> fasteners,

        @Schema(
                description =
                        "The clips of every seam, by plane, then by strip, from the lowest up. The outer ribs of a plane have"
                                + " none: what lies beside them is fastened along its edge.",
                maxItems = Limits.FASTENERS)
        List<FastenerAnswer.ClipAnswer> clips,

        @Schema(description = "Equal blanks counted, the longest first.", maxItems = Limits.PANELS_ANSWERED)
        List<BlankLine> order,

        @Schema(description = "Sums of what is listed above.", maxItems = Limits.TOTALS)
        List<Total> totals,

        @Schema(
                description = "What a crew should know: first of the roof, in the order of the planes and edges, then"
                        + " of the panels, in their order, then of the valleys, the hips and the fasteners.",
                maxItems = Limits.FINDINGS)
        List<FindingAnswer> findings,

        @Schema(description = "What holds for every roof.", maxItems = Limits.CAUTIONS)
        List<CautionAnswer> cautions) {

    /**
     * The figures a roof was laid with.
     *
     * @param tolerance      corners this close are one
     * @param panel          the panel
     * @param start          where the first strip goes
     * @param edgeTreatments how panels end
     * @param valleyPan      pan of valleys
     * @param hipCap         cap of hips
     * @param fastening      spacings
     * @param climate        heat and rain
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
                "fastening",
                "climate",
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
            ValleyUsed.FasteningUsed fastening,
            ValleyUsed.ClimateUsed climate,

            @Schema(description = "How tape marks are rounded.", maxLength = 200)
            String tapeRule,

            @Schema(
                    description = "Pointers to what the request left out and a default stands for, as"
                            + " `#/panel/longest`.",
                    maxItems = Limits.DEFAULTS)
            List<@Size(max = 200) String> defaults) {}

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

    /**
     * One plane, laid.
     *
     * @param plane        which
     * @param leads        from which side
     * @param firstWidth   how wide the first panel is
     * @param panelCount   how many panels it takes
     * @param finishedArea what they show
     */
    @Schema(
            name = "LaidPlane",
            requiredProperties = {"plane", "leads", "firstWidth", "panelCount", "finishedArea"},
            description = "How one plane is laid.")
    public record LaidPlane(
            @Schema(description = "The plane's id.", maxLength = Limits.ID_ANSWERED, examples = "south")
            String plane,

            @Schema(ref = "Leads", description = "From which side its strips are laid, seen looking up the slope.")
            Lead leads,

            @Schema(
                    description =
                            "Width of the first panel, from the edge where laying starts to the first rib; 0 for a"
                                    + " whole panel.")
            MarkedLength firstWidth,

            @Schema(description = "Panels on the plane.", minimum = "0", maximum = "1e6")
            int panelCount,

            @Schema(
                    description = "Area the panels show, set-backs off; in the request's area unit.",
                    format = "double",
                    minimum = "0",
                    maximum = "1e18")
            double finishedArea) {}

    /**
     * Equal blanks.
     *
     * @param cover       what they cover
     * @param girth       width of their flat sheet
     * @param blankLength length each is ordered as
     * @param count       how many
     * @param marks       which panels are cut from them
     */
    @Schema(
            name = "BlankLine",
            requiredProperties = {"cover", "girth", "blankLength", "count", "marks"},
            description = "Blanks of one length, as ordered.")
    public record BlankLine(
            @Schema(description = "Width they cover, from rib to rib.")
            MarkedLength cover,

            @Schema(description = "Width of their flat sheet.")
            MarkedLength girth,

            @Schema(description = "Length each is ordered as.")
            MarkedLength blankLength,

            @Schema(description = "How many.", minimum = "1", maximum = "1e6")
            int count,

            @Schema(
                    description = "Marks of the panels cut from them, in the order of the panels.",
                    maxItems = Limits.PANELS_ANSWERED)
            List<@Size(max = Limits.ID_ANSWERED + 24) String> marks) {}

    /**
     * A sum.
     *
     * @param item     of what
     * @param quantity how much
     * @param unit     in which unit
     */
    @Schema(
            name = "Total",
            requiredProperties = {"item", "quantity", "unit"},
            description = "A sum of what is listed.")
    public record Total(
            @Schema(
                    description = "What is summed: `panels`, `roofArea` (all planes), `finishedArea` (what the panels"
                            + " show), `orderedLength`, `orderedArea` (blanks as wide as they cover), `sheetArea`"
                            + " (blanks as wide as their flat sheet), `waste` (part of the ordered area that shows"
                            + " nowhere), `mass` (of the sheet). The list is open.",
                    maxLength = 40,
                    examples = "orderedArea")
            String item,

            @Schema(
                    description = "How much, in the unit beside it.",
                    format = "double",
                    minimum = "0",
                    maximum = "1e18",
                    examples = "812.5")
            double quantity,

            @Schema(
                    description = "Unit as a UN/CEFACT Recommendation 20 code: `C62` pieces, `FOT` feet, `FTK` square"
                            + " feet, `LBR` pounds, `P1` per cent and so on.",
                    maxLength = 3,
                    examples = "FTK")
            String unit) {}
}
