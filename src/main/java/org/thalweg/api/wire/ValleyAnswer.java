package org.thalweg.api.wire;

import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.api.Limits;
import org.thalweg.api.wire.LineAnswer.EndAnswer;
import org.thalweg.api.wire.LineAnswer.Hand;
import org.thalweg.api.wire.LineAnswer.LowAnswer;
import org.thalweg.fastening.ValleyRows.RowKind;
import org.thalweg.roof.PanelHold;

/**
 * One valley, laid out.
 *
 * @param edge      its name among the roof's edges
 * @param length    true length
 * @param slopeDeg  its slope
 * @param bendDeg   angle between the two planes
 * @param hold      how panels are held
 * @param pan       the pan's section
 * @param sides     both planes
 * @param pieces    of the pan
 * @param fasteners every row
 * @param movement  of the panels
 * @param drainage  water
 * @param working   how the figures came about
 */
@Schema(
        name = "Valley",
        requiredProperties = {
            "edge",
            "length",
            "slopeDeg",
            "bendDeg",
            "hold",
            "pan",
            "sides",
            "pieces",
            "fasteners",
            "movement",
            "drainage"
        },
        description = "A valley: its pan, what to chalk on both planes, what is fastened where, and the water in it.")
public record ValleyAnswer(
        @Schema(description = "Its name among the roof's edges.", maxLength = 40, examples = "V1")
        String edge,

        @Schema(description = "True length, foot to head.") MarkedLength length,

        @Schema(ref = "AngleDeg", description = "Slope of the valley line, from level.")
        double slopeDeg,

        @Schema(ref = "AngleDeg", description = "Angle between the outward normals of the two planes; 0 is flat.")
        double bendDeg,

        @Schema(ref = "PanelHold", description = "How the panels' ends are held.")
        PanelHold hold,

        PanAnswer pan,

        @Schema(
                description = "The plane to the left and the plane to the right, seen from the foot looking up.",
                minItems = 2,
                maxItems = 2)
        List<SideAnswer> sides,

        @Schema(
                description = "Pieces of the pan, from the foot up, each over the one below.",
                maxItems = Limits.PAN_PIECES)
        List<PieceAnswer> pieces,

        @Schema(
                description = "Every row of fasteners: the left side's, then the right side's.",
                maxItems = Limits.VALLEY_ROWS)
        List<RowAnswer> fasteners,

        MovementAnswer movement,
        ValleyWaterAnswer drainage,

        @Schema(
                description =
                        "How the figures came about, in the order of the answer; with `include: [\"working\"]`. Told are the"
                                + " figures that were computed and that one line tells truly. Not told: what is the request's"
                                + " own; shapes and points; a cornerDeg that does not follow from φ; pieces between the second"
                                + " and the last but one, which are as the second; of a valley in a roof, longestPanel and"
                                + " catchments, which took following every fall line; from and length of pieces where a valley"
                                + " is so short that the trims of foot and head meet, and their count where it is shorter than"
                                + " a lap; water on a flat whose panRiseDeg is 0.",
                maxItems = Limits.WORKING)
        Optional<List<WorkingAnswer>> working) {

    /**
     * The section of the pan.
     *
     * @param coilWidth   width of the flat sheet
     * @param flat        from the low to the outer fold
     * @param ribLeg      girth of a leg
     * @param edgeReturn  girth of a return
     * @param lowBendDeg  bend at each low
     * @param crownBendDeg bend at the crown
     * @param returnBendDeg bend at each return
     */
    @Schema(
            name = "PanSection",
            requiredProperties = {
                "coilWidth",
                "flat",
                "ribLeg",
                "edgeReturn",
                "lowBendDeg",
                "crownBendDeg",
                "returnBendDeg"
            },
            description =
                    "The section of a pan. Bends are how far the metal is turned from flat; girths run from bend line to"
                            + " bend line, no bend allowance taken off.")
    public record PanAnswer(
            @Schema(description = "Width of the flat sheet.")
            MarkedLength coilWidth,

            @Schema(description = "From the low to the outer fold.")
            MarkedLength flat,

            @Schema(description = "Girth of one leg of the rib.")
            MarkedLength ribLeg,

            @Schema(description = "Girth of the return along each outer edge.")
            MarkedLength edgeReturn,

            @Schema(
                    ref = "AngleDeg",
                    description = "Bend at each low, upward: the two legs touch and stand half-way between the flats.")
            double lowBendDeg,

            @Schema(ref = "AngleDeg", description = "Bend at the crown of the rib: doubled back.")
            double crownBendDeg,

            @Schema(ref = "AngleDeg", description = "Bend of each return, upward: doubled back.")
            double returnBendDeg) {}

    /**
     * One plane of a valley.
     *
     * @param plane            which
     * @param hand             to which side it lies
     * @param pitch            its pitch
     * @param planAngleDeg     from its eave to the valley, in plan
     * @param angleFromEaveDeg the same in the plane
     * @param riseAcrossCover  of the cut across a whole panel
     * @param flat             from the low to the pan's outer fold
     * @param holdBack         of the panels at the foot
     * @param holdBackAtTop    at the head
     * @param coverUnderPanel  of the pan at the foot
     * @param bottom           what the plane ends on at the foot
     * @param top              what it ends on at the head
     * @param low              the low
     * @param chalkLine        the panels' edge
     * @param fastenerLine     sealant and screws
     * @param panEdge          the pan's outer fold
     * @param cleat            what holds the panels
     * @param sealantLength    of the tape
     */
    @Schema(
            name = "ValleySide",
            requiredProperties = {
                "plane",
                "hand",
                "pitch",
                "planAngleDeg",
                "angleFromEaveDeg",
                "flat",
                "holdBack",
                "holdBackAtTop",
                "coverUnderPanel",
                "bottom",
                "top",
                "low"
            },
            description =
                    "What a crew marks on one plane of a valley. A line that has no room on a short valley is left out.")
    public record SideAnswer(
            @Schema(description = "The plane's id.", maxLength = Limits.ID_ANSWERED, examples = "south")
            String plane,

            @Schema(ref = "Hand", description = "To which side it lies, seen from the foot looking up.")
            Hand hand,

            @Schema(description = "Its pitch.") RiseAndRun pitch,

            @Schema(ref = "AngleDeg", description = "α: in plan, from the plane's level line to the valley.")
            double planAngleDeg,

            @Schema(
                    ref = "AngleDeg",
                    description =
                            "φ: in the plane, from its level line to the valley; the mitre of its panels, from square.")
            double angleFromEaveDeg,

            @Schema(
                    description =
                            "How much the cut across a whole panel rises, w · tan φ; left out where the valley runs along"
                                    + " the ribs.")
            Optional<MarkedLength> riseAcrossCover,

            @Schema(description = "From the low to the pan's outer fold.")
            MarkedLength flat,

            @Schema(description = "How far the panels stay off the low at the foot.")
            MarkedLength holdBack,

            @Schema(description = "The same at the head; less where the valley widens downward.")
            MarkedLength holdBackAtTop,

            @Schema(description = "How far the pan reaches under the panels at the foot, where that is least.")
            MarkedLength coverUnderPanel,

            @Schema(description = "What the plane ends on at the foot.")
            EndAnswer bottom,

            @Schema(description = "What it ends on at the head.")
            EndAnswer top,

            @Schema(description = "The low, from the foot up.")
            LowAnswer low,

            @Schema(description = "Where the panels end.") Optional<LineAnswer> chalkLine,

            @Schema(description = "Where sealant and screws go, inside the panels' edge.")
            Optional<LineAnswer> fastenerLine,

            @Schema(description = "The pan's outer fold.") Optional<LineAnswer> panEdge,

            @Schema(description = "The cleat along the chalk line, where panels are held by one.")
            Optional<CleatAnswer> cleat,

            @Schema(
                    description =
                            "Sealant tape on this side: along the fastener line where panels are screwed down, under the"
                                    + " cleat where they are not.")
            Optional<MarkedLength> sealantLength) {}

    /**
     * A cleat.
     *
     * @param length       of the run
     * @param pieceLength  of every piece but the last
     * @param lastLength   of the last
     * @param count        of pieces
     * @param notchSpacing from rib to rib along it
     */
    @Schema(
            name = "Cleat",
            requiredProperties = {"length", "pieceLength", "lastLength", "count"},
            description =
                    "A continuous offset cleat along a chalk line; the panels' hems go round it, notched at their ribs.")
    public record CleatAnswer(
            @Schema(description = "Length of the whole run.")
            MarkedLength length,

            @Schema(description = "Length of every piece but the last.")
            MarkedLength pieceLength,

            @Schema(description = "Length of the last piece.")
            MarkedLength lastLength,

            @Schema(description = "Pieces, the last one included, end to end.", minimum = "1", maximum = "1e6")
            int count,

            @Schema(
                    description =
                            "From rib to rib along the run, where the hems are notched: w / cos φ; left out where the"
                                    + " valley runs along the ribs.")
            Optional<MarkedLength> notchSpacing) {}

    /**
     * A row of fasteners.
     *
     * @param kind     what it holds down
     * @param plane    on which plane
     * @param hand     to which side
     * @param from     where its line starts
     * @param to       where it ends
     * @param first    from the start to the first fastener
     * @param spacing  between neighbours
     * @param count    how many
     * @param perPanel whether all that is said of one whole panel
     */
    @Schema(
            name = "FastenerRow",
            requiredProperties = {"kind", "plane", "hand", "from", "to", "first", "spacing", "count", "perPanel"},
            description = "A row of fasteners, evenly spaced.")
    public record RowAnswer(
            @Schema(ref = "RowKind", description = "What it holds down.")
            RowKind kind,

            @Schema(description = "The plane it is on.", maxLength = Limits.ID_ANSWERED)
            String plane,

            @Schema(ref = "Hand", description = "To which side of the valley.")
            Hand hand,

            @Schema(description = "Where its line starts; plane frame.")
            PlanePoint from,

            @Schema(description = "Where it ends; plane frame.")
            PlanePoint to,

            @Schema(
                    description =
                            "From the line's start to the first fastener; of a panel, from its rib, along the line.")
            MarkedLength first,

            @Schema(description = "Between neighbours; 0 when there is only one.")
            MarkedLength spacing,

            @Schema(description = "How many.", minimum = "1", maximum = "1e9")
            int count,

            @Schema(description = "Whether `first`, `spacing` and `count` are those of one whole panel on the line.")
            boolean perPanel) {}

    /**
     * How the panels move.
     *
     * @param longestPanel longest that ends at the valley
     * @param longer       by how much it grows
     * @param shorter      by how much it shrinks
     * @param limit        how far fixed screws let it
     * @param recommended  how to hold it
     * @param source       where the limit comes from
     */
    @Schema(
            name = "ValleyMovement",
            requiredProperties = {"longestPanel", "longer", "shorter", "limit", "recommended", "source"},
            description = "How far the longest panel at the valley moves, and how to hold it for that.")
    public record MovementAnswer(
            @Schema(
                    description =
                            "Longest panel that can end at the valley, along the slope up to where its plane ends, before"
                                    + " set-backs and laps; taken as free from its other end.")
            MarkedLength longestPanel,

            @Schema(ref = "PositiveLength", description = "By how much it grows from installed to warmest.")
            double longer,

            @Schema(ref = "PositiveLength", description = "By how much it shrinks from installed to coldest.")
            double shorter,

            @Schema(ref = "PositiveLength", description = "How far fixed screws let it move, each way.")
            double limit,

            @Schema(
                    ref = "PanelHold",
                    description = "`fixed` where the greater of the two is within the limit, else `cleated`.")
            PanelHold recommended,

            @Schema(description = "Where the limit comes from.", maxLength = 300)
            String source) {}
}
