package org.thalweg.api.wire;

import jakarta.validation.constraints.Size;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.api.Limits;
import org.thalweg.panel.Lead;

/**
 * A roof, laid.
 *
 * @param engine   who answered
 * @param digest   which request
 * @param job      the caller's name for it
 * @param units    the caller's units
 * @param used     the figures it was laid with
 * @param roof     planes and edges
 * @param laid     how each plane is laid
 * @param panels   every panel to cut
 * @param valleys  every valley
 * @param hips     every hip
 * @param trims    the trim of every edge
 * @param fasteners every row of fasteners
 * @param clips    the clips of every seam
 * @param wind     what those are spaced for
 * @param movement how far panels move
 * @param underlayment the sheets under the metal
 * @param sealing  tape, sealant, closures and rivets
 * @param cuts     goods of sheet metal cut from stock
 * @param coil     the panels in one run of coil
 * @param order    equal blanks, counted
 * @param orderLines what to order
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
            "trims",
            "fasteners",
            "clips",
            "movement",
            "underlayment",
            "sealing",
            "order",
            "orderLines",
            "totals",
            "findings",
            "cautions"
        },
        description = "A roof laid with panels: what to cut, what to order, what to heed.")
public record LayoutAnswer(
        @Schema(ref = "Engine") String engine,
        @Schema(ref = "Digest") String digest,

        @Schema(
                description = "The caller's name for the job, where the request gave one.",
                maxLength = Limits.ID_LENGTH,
                examples = "Boathouse, main roof")
        Optional<String> job,

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
                description = "The trim of every edge that gets one, in the order of the edges.",
                maxItems = Limits.EDGES)
        List<TrimAnswer> trims,

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

        @Schema(description = "The wind that clips are spaced for; left out where the request gives none.")
        Optional<WindAnswer> wind,

        @Schema(
                description =
                        "How far every panel moves from where it is fixed, and what lets it: by plane, then by strip in laying"
                                + " order, then from the lowest up. Pieces that are lapped are one panel.",
                maxItems = Limits.PANELS_ANSWERED)
        List<MovementAnswer> movement,

        UnderlaymentAnswer underlayment,

        @Schema(
                description =
                        "Tape, sealant, closures and rivets: along the rows of fasteners in their order, then valley by valley its"
                                + " cleats and the laps of its pan, then the laps of trims.",
                maxItems = Limits.SEAL_RUNS)
        List<SealRunAnswer> sealing,

        @Schema(
                description =
                        "Goods of sheet metal cut from stock, by item and width, pans, trims, then cleats; where `cutting` was given.",
                maxItems = Limits.ORDER_LINES)
        Optional<List<SheetCutAnswer>> cuts,

        @Schema(description = "The panels in one run of coil, where `cutting` names a coil.")
        Optional<CoilAnswer> coil,

        @Schema(description = "Equal blanks counted, the longest first.", maxItems = Limits.PANELS_ANSWERED)
        List<BlankLine> order,

        @Schema(
                description = "What to order, item by item; every quantity is counted from what is listed above.",
                maxItems = Limits.ORDER_LINES)
        List<OrderLineAnswer> orderLines,

        @Schema(description = "Sums of what is listed above.", maxItems = Limits.TOTALS)
        List<Total> totals,

        @Schema(
                description = "What a crew should know: first of the roof, in the order of the planes and edges, then"
                        + " of the panels, in their order, then of the valleys, the hips, the fasteners, what moves, the"
                        + " trims, the wind and the pieces that no stock was found for.",
                maxItems = Limits.FINDINGS)
        List<FindingAnswer> findings,

        @Schema(description = "What holds for every roof.", maxItems = Limits.CAUTIONS)
        List<CautionAnswer> cautions) {

    /**
     * One plane, laid.
     *
     * @param plane        which
     * @param frame        the frame of its panels
     * @param leads        from which side
     * @param firstWidth   how wide the first panel is
     * @param panelCount   how many panels it takes
     * @param finishedArea what they show
     * @param travelNeeded of its clips
     * @param longestPanel its clips allow
     */
    @Schema(
            name = "LaidPlane",
            requiredProperties = {"plane", "leads", "firstWidth", "panelCount", "finishedArea", "travelNeeded"},
            description = "How one plane is laid.")
    public record LaidPlane(
            @Schema(description = "The plane's id.", maxLength = Limits.ID_ANSWERED, examples = "south")
            String plane,

            @Schema(
                    description =
                            "The frame its panels, fasteners and clips are placed in, where that is not the plane's own: on a level"
                                    + " plane that `laying` gives a fall.")
            Optional<ReadRoof.FrameAnswer> frame,

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
            double finishedArea,

            @Schema(
                    ref = "PositiveLength",
                    description =
                            "How far its clips must let panels slide, each way: the most that `movement` tells of its"
                                    + " panels.")
            double travelNeeded,

            @Schema(
                    description =
                            "The longest panel that `fastening.clipTravel` allows; left out where that is not given, or"
                                    + " nothing moves.")
            Optional<MarkedLength> longestPanel) {}

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
     * @param of       of which kind of it
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
                            + " nowhere), `mass` (of the panels' sheet), `mitredEnds` (ends of panels that a tape shows as not"
                            + " square), `mitreLength` (along the cuts of those ends), `valleys`, `valleyPieces`, `seams`, `clips`, `fasteners` (of each"
                            + " kind, then all), `trimPieces`, `underlaymentRolls`, `iceBarrierRolls` (when there is one),"
                            + " `sealantTape`, `sealant` (all beads), `sealantCartridges`, `closures`, `closureLength`,"
                            + " `rivets`, `orderedMass` (the masses of the order lines). The list is open.",
                    maxLength = 40,
                    examples = "orderedArea")
            String item,

            @Schema(
                    description = "Which kind of it, where kinds are told apart, as `eave` of `fasteners`.",
                    maxLength = 40,
                    examples = "eave")
            Optional<String> of,

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
            String unit) {

        /** A sum of which no kinds are told apart. */
        public static Total of(String item, double quantity, String unit) {
            return new Total(item, Optional.empty(), quantity, unit);
        }
    }
}
