package org.thalweg.api.wire;

import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.api.Limits;
import org.thalweg.api.wire.LineAnswer.EndAnswer;
import org.thalweg.api.wire.LineAnswer.Hand;
import org.thalweg.api.wire.LineAnswer.LowAnswer;

/**
 * One hip, laid out.
 *
 * @param edge       its name among the roof's edges
 * @param length     true length
 * @param slopeDeg   its slope
 * @param capBendDeg bend of its cap
 * @param sides      both planes
 */
@Schema(
        name = "Hip",
        requiredProperties = {"edge", "length", "slopeDeg", "capBendDeg", "sides"},
        description = "A hip: where panels, closure and cap end on both planes.")
public record HipAnswer(
        @Schema(description = "Its name among the roof's edges.", maxLength = 40, examples = "H1")
        String edge,

        @Schema(description = "True length, foot to head.") MarkedLength length,

        @Schema(ref = "AngleDeg", description = "Slope of the hip line, from level.")
        double slopeDeg,

        @Schema(
                ref = "AngleDeg",
                description = "Bend of the cap, downward, from flat: the angle between the two planes.")
        double capBendDeg,

        @Schema(
                description = "The plane to the left and the plane to the right, seen from the foot looking up.",
                minItems = 2,
                maxItems = 2)
        List<HipSideAnswer> sides) {

    /**
     * One plane of a hip.
     *
     * @param plane            which
     * @param hand             to which side
     * @param pitch            its pitch
     * @param planAngleDeg     from its eave to the hip, in plan
     * @param angleFromEaveDeg the same in the plane
     * @param riseAcrossCover  of the cut across a whole panel
     * @param setback          of the panels
     * @param bottom           what the plane ends on at the foot
     * @param top              what it ends on at the head
     * @param line             the hip
     * @param panelLine        the panels' edge
     * @param closureLine      outer side of the closure
     * @param capLine          edge of the cap
     */
    @Schema(
            name = "HipSide",
            requiredProperties = {
                "plane",
                "hand",
                "pitch",
                "planAngleDeg",
                "angleFromEaveDeg",
                "setback",
                "bottom",
                "top",
                "line"
            },
            description = "What a crew marks on one plane of a hip.")
    public record HipSideAnswer(
            @Schema(description = "The plane's id.", maxLength = Limits.ID_ANSWERED, examples = "south")
            String plane,

            @Schema(ref = "Hand", description = "To which side it lies.")
            Hand hand,

            @Schema(description = "Its pitch.") RiseAndRun pitch,

            @Schema(ref = "AngleDeg", description = "α: in plan, from the plane's level line to the hip.")
            double planAngleDeg,

            @Schema(ref = "AngleDeg", description = "φ: in the plane, from its level line to the hip.")
            double angleFromEaveDeg,

            @Schema(
                    description =
                            "How much the cut across a whole panel rises; left out where the hip runs along the ribs.")
            Optional<MarkedLength> riseAcrossCover,

            @Schema(description = "How far the panels stop short of the hip, in the plane, square to it.")
            MarkedLength setback,

            @Schema(description = "What the plane ends on at the foot.")
            EndAnswer bottom,

            @Schema(description = "What it ends on at the head.")
            EndAnswer top,

            @Schema(description = "The hip, from the foot up.")
            LowAnswer line,

            @Schema(description = "Where the panels end.") Optional<LineAnswer> panelLine,

            @Schema(description = "Outer side of the closure, the cap's leg less the inset.")
            Optional<LineAnswer> closureLine,

            @Schema(description = "Edge of the cap.") Optional<LineAnswer> capLine) {}
}
