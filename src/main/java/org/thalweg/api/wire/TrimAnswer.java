package org.thalweg.api.wire;

import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.Size;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.api.Limits;
import org.thalweg.api.wire.FlatAnswer.BendLine;
import org.thalweg.api.wire.FlatAnswer.HemsAnswer;
import org.thalweg.roof.EdgeKind;
import org.thalweg.trim.Hand;
import org.thalweg.trim.Meeting.How;

/**
 * The trim of one edge.
 *
 * @param edge          its name among the roof's edges
 * @param kind          what that edge is
 * @param profile       what the profile is called
 * @param hand          which of two that mirror each other
 * @param weatherFaceUp whether blanks are drawn with the weather face up
 * @param edgeBendDeg   how far the edge bends it
 * @param legs          girths of its legs
 * @param bendsDeg      bends between them
 * @param hems          along its edges
 * @param flatWidth     width of the flat sheet
 * @param bendLines     where to bend it
 * @param section       its mould lines
 * @param ends          both ends
 * @param run           what its pieces make up
 * @param pieces        its pieces
 * @param findings      codes of what was found
 * @param working       how its figures came about
 */
@Schema(
        name = "Trim",
        requiredProperties = {
            "edge",
            "kind",
            "profile",
            "weatherFaceUp",
            "edgeBendDeg",
            "legs",
            "bendsDeg",
            "hems",
            "flatWidth",
            "bendLines",
            "section",
            "ends",
            "run",
            "pieces",
            "findings"
        },
        description =
                "The trim of one edge: a profile in section, walked from its first edge with the weather face to the left. The"
                        + " first leg is the one on the roof: on a ridge or hip the left one, at a pitch break the upper one; the last"
                        + " is the one furthest out. A level edge starts at its left end, seen from its plane looking up the slope"
                        + " (of two planes the first), a sloped one at its lower end.")
public record TrimAnswer(
        @Schema(description = "Its name among the roof's edges.", maxLength = 40, examples = "E1")
        String edge,

        @Schema(ref = "EdgeKind", description = "What that edge is.")
        EdgeKind kind,

        @Schema(description = "What the profile is called.", maxLength = Limits.PROFILE_NAME, examples = "eave drip")
        String profile,

        @Schema(
                ref = "TrimHand",
                description =
                        "Which of two trims that mirror each other: that to the left or to the right of its plane, seen looking"
                                + " up the slope. Left out on a level edge and where it lies on two planes.")
        Optional<Hand> hand,

        @Schema(
                description =
                        "Which face `blank` shows, drawn with its first edge to the left and the start of the edge below: the weather"
                                + " face, or the back.")
        boolean weatherFaceUp,

        @Schema(
                ref = "SignedAngleDeg",
                description =
                        "How far the trim bends at the edge: to the other plane, to a fascia or wall that stands plumb, to a curb"
                                + " that stands square; above 0 up, below 0 down.")
        double edgeBendDeg,

        @Schema(
                description =
                        "Girths of its legs from the first edge to the last, to outside mould lines; hems not counted.",
                maxItems = Limits.TRIM_LEGS)
        List<MarkedLength> legs,

        @Schema(
                description =
                        "Bends between the legs as bent, what the edge adds counted in: above 0 up, toward the weather face, below 0"
                                + " down.",
                maxItems = Limits.TRIM_LEGS)
        List<@Min(-Limits.HALF_TURN_DEG) @Max(Limits.HALF_TURN_DEG) Double> bendsDeg,

        HemsAnswer hems,

        @Schema(description = "Width of the flat sheet, hems and all: the stretch-out.")
        MarkedLength flatWidth,

        @Schema(description = "Where to bend it, from the first edge to the last.", maxItems = Limits.TRIM_LEGS + 1)
        List<BendLine> bendLines,

        @Schema(
                description =
                        "Its mould lines in section, from the first edge to the last: [across, up], both 0 at the edge; across"
                                + " points away from its plane in that plane, up stands off it outward.",
                maxItems = Limits.TRIM_LEGS + 1)
        List<PlanePoint> section,

        @Schema(description = "Its start and its finish.", minItems = 2, maxItems = 2)
        List<EndAnswer> ends,

        @Schema(description = "What its pieces make up: the edge, and what both ends reach past it.")
        MarkedLength run,

        @Schema(
                description = "Its pieces in the order they are laid; none where the cuts at its ends leave nothing.",
                maxItems = Limits.TRIM_PIECES)
        List<PieceAnswer> pieces,

        @Schema(
                description = "Codes of its findings, which stand in full in the answer's `findings`.",
                maxItems = Limits.CODES)
        List<@Size(max = 40) String> findings,

        @Schema(
                description = "How the figures of the flat sheet came about; answered with `working`.",
                maxItems = Limits.FLAT_WORKING)
        Optional<List<WorkingAnswer>> working) {

    /**
     * One end of a trim.
     *
     * @param hand  which end
     * @param reach how far it runs past the corner
     * @param depth how deep its cuts are
     * @param first what its legs up to the edge's bend meet
     * @param last  what the legs beyond it meet
     * @param cuts  across every leg
     */
    @Schema(
            name = "TrimEnd",
            requiredProperties = {"hand", "reach", "depth", "first", "last", "cuts"},
            description = "One end of a trim.")
    public record EndAnswer(
            @Schema(
                    ref = "TrimHand",
                    description =
                            "Which end it is as the trim lies before you, weather face up and last leg towards you.")
            Hand hand,

            @Schema(
                    description =
                            "How far its furthest line runs past the corner the edge ends at; below 0 it stops short.")
            MarkedLength reach,

            @Schema(description = "From the line that ends first to the one that reaches furthest.")
            MarkedLength depth,

            @Schema(description = "What the legs up to the bend at the edge meet.")
            MeetingAnswer first,

            @Schema(description = "What the legs beyond it meet.")
            MeetingAnswer last,

            @Schema(
                    description = "The cut across every leg, from the first edge to the last.",
                    maxItems = Limits.TRIM_LEGS)
            List<CutAnswer> cuts) {}

    /**
     * What a trim meets.
     *
     * @param how          how it ends there
     * @param edge         the edge it meets
     * @param kind         what that is
     * @param planDeg      angle between the two in plan
     * @param angleDeg     true angle between them
     * @param planMitreDeg mitre in plan
     * @param mitreDeg     true mitre
     * @param inside       whether it is an inner corner
     */
    @Schema(
            name = "TrimMeeting",
            requiredProperties = {"how", "edge", "kind", "planDeg", "angleDeg", "planMitreDeg", "mitreDeg", "inside"},
            description = "What one side of a trim meets at the corner its edge ends at.")
    public record MeetingAnswer(
            @Schema(ref = "TrimMeets", description = "How it ends there.")
            How how,

            @Schema(description = "Name of the edge it meets.", maxLength = 40, examples = "K1")
            String edge,

            @Schema(ref = "EdgeKind", description = "What that edge is.")
            EdgeKind kind,

            @Schema(ref = "AngleDeg", description = "Angle in plan between the two edges; 180 in line.")
            double planDeg,

            @Schema(ref = "AngleDeg", description = "True angle between them.")
            double angleDeg,

            @Schema(
                    ref = "AngleDeg",
                    description = "The mitre in plan, from square: half of what `planDeg` lacks of 180.")
            double planMitreDeg,

            @Schema(
                    ref = "AngleDeg",
                    description = "The mitre of a leg that both edges lie in: half of what `angleDeg` lacks of 180.")
            double mitreDeg,

            @Schema(
                    description =
                            "Whether the roof goes more than half round the corner, as where two eaves meet over a valley.")
            boolean inside) {}

    /**
     * The cut across a leg.
     *
     * @param leg    which
     * @param inner  reach of its inner line
     * @param outer  reach of its outer line
     * @param cutDeg from square
     */
    @Schema(
            name = "TrimCut",
            requiredProperties = {"leg", "inner", "outer", "cutDeg"},
            description =
                    "The cut across one leg at one end: how far its two mould lines run past the corner the edge ends at, along"
                            + " the edge; below 0 they stop short. A hem is cut back with its leg.")
    public record CutAnswer(
            @Schema(description = "Which leg, counted from 1 at the first edge.", minimum = "1", maximum = "12")
            int leg,

            @Schema(description = "Reach of its inner line, the one nearer the first edge.")
            MarkedLength inner,

            @Schema(description = "Reach of its outer line.")
            MarkedLength outer,

            @Schema(ref = "SignedAngleDeg", description = "From square; above 0 when the outer line reaches further.")
            double cutDeg) {}

    /**
     * A piece of trim.
     *
     * @param mark   its name
     * @param from   where it begins
     * @param length in all
     * @param lap    over the piece before
     * @param blank  its shape
     */
    @Schema(
            name = "TrimPiece",
            requiredProperties = {"mark", "from", "length", "lap", "blank"},
            description = "One piece of a trim.")
    public record PieceAnswer(
            @Schema(
                    description = "Its name: the edge's and a number, in the order pieces are laid.",
                    maxLength = 60,
                    examples = "E1-1")
            String mark,

            @Schema(
                    description =
                            "Where its end nearer the start of the edge lies, from the corner the edge starts at; below 0 past it.")
            MarkedLength from,

            @Schema(description = "Its length in all, from its furthest point to its furthest.")
            MarkedLength length,

            @Schema(description = "How far it lies over the piece before; 0 for the first.")
            MarkedLength lap,

            BlankAnswer blank) {}

    /**
     * A blank, flat.
     *
     * @param outline its corners
     */
    @Schema(
            name = "TrimBlank",
            requiredProperties = "outline",
            description =
                    "A piece of trim lying flat before it is bent: [across, along], across from the first edge of the profile, 0 to"
                            + " `flatWidth`, along from its end nearer the start of the edge. Reaches of `cuts` are marked on the bend"
                            + " lines. Left square where the cuts of both ends cross, or a leg is shorter than its bends take.")
    public record BlankAnswer(
            @Schema(
                    description = "Its corners, counter-clockwise from the lowest left one.",
                    maxItems = Limits.TRIM_CORNERS)
            List<PlanePoint> outline) {}
}
