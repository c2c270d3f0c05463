package org.thalweg.api.wire;

import jakarta.validation.Valid;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.Limits;

/**
 * A roof drawn in plan.
 *
 * @param planes  its planes
 * @param height  how high one corner stands
 * @param heights more corners, of planes it does not reach
 * @param edges   sides the plan can't name
 */
@Schema(
        name = "RoofPlan",
        requiredProperties = {"planes", "height"},
        additionalProperties = Schema.False.class,
        description =
                "Planes as seen from above, each with its pitch, and the height of one corner. From there heights go on"
                        + " wherever planes meet: at a corner they share within the tolerance, or where a corner of one lies on a"
                        + " side of another. Planes that meet at a corner must stand equally high there within the tolerance."
                        + " Along a side named `sideWall` or `headWall` in `edges` planes do not meet, and at the ends of such a"
                        + " side only planes meet that share another side there.")
public record PlanForm(
        @Schema(description = "The planes, in the order the answer keeps.") @NotNull @Size(min = 1, max = Limits.PLANES)
        List<@Valid PlanPlaneForm> planes,

        @Schema(description = "How high one corner stands; the others follow.") @NotNull @Valid
        PlanHeightForm height,

        @Schema(
                description =
                        "Heights of more corners, for planes that `height` does not reach because they meet nothing, or walls"
                                + " stand between; where planes meet all the same, the heights must agree. Default: none.")
        @Size(max = Limits.PLANES)
        @Nullable
        List<@Valid PlanHeightForm> heights,

        @Schema(description = "Sides whose kind the planes can't show. Default: none.")
        @Size(max = Limits.NAMED_EDGES)
        @Nullable
        List<@Valid PlanEdgeForm> edges) {

    /**
     * A plane seen from above.
     *
     * @param id       the caller's name for it
     * @param outline  its corners
     * @param openings its holes
     * @param pitch    how steep it is
     * @param eave     the side it rises from
     * @param fallDeg  or which way it falls
     */
    @Schema(
            name = "PlanPlane",
            requiredProperties = {"id", "outline", "pitch"},
            additionalProperties = Schema.False.class,
            description =
                    "One plane of a plan. Which way it falls is said by `eave` or `fallDeg`, one of the two; a plane of pitch 0 is"
                            + " level and needs neither.")
    public record PlanPlaneForm(
            @Schema(
                    description = "The caller's name for the plane, its own among the planes; 1 to 100 characters.",
                    examples = "south")
            @NotNull
            @Size(min = 1, max = Limits.ID_LENGTH)
            String id,

            @Schema(
                    description =
                            "Its corners as seen from above, each [x, y] in the request's length unit, in order, either way round;"
                                    + " the first may be repeated at the end. Numbers within 10,000,000 m of 0.")
            @NotNull
            @Size(min = Limits.LEAST_CORNERS, max = Limits.CORNERS_OF_A_RING)
            List<WirePlanCorner> outline,

            @Schema(description = "Chimneys, skylights and other holes. Default: none.")
            @Size(max = Limits.OPENINGS)
            @Nullable
            List<@Valid PlanOpeningForm> openings,

            @Schema(
                    description =
                            "How steep the plane is, up to 89 degrees from level; 0 is level. Rise 0 to 1000 over run 0.001 to 1000.")
            @NotNull
            WirePitch pitch,

            @Schema(
                    description =
                            "The side the plane rises from, square to it and inward: its two ends, neighbouring corners of the"
                                    + " outline, counted from 0, in either order. Default: `fallDeg` says it.")
            @Size(min = 2, max = 2)
            @Nullable
            List<@Min(0) @Max(Limits.CORNERS_OF_A_RING) Long> eave,

            @Schema(
                    description =
                            "The direction water runs, seen from above, in degrees counter-clockwise from +x, 0 to 360. Default:"
                                    + " `eave` says it.",
                    format = "double",
                    examples = "180")
            @Min(0)
            @Max(Limits.FULL_TURN_DEG)
            @Nullable
            Double fallDeg) {}

    /**
     * A hole in a plane, seen from above.
     *
     * @param id      the caller's name for it
     * @param outline its corners
     */
    @Schema(
            name = "PlanOpening",
            requiredProperties = {"id", "outline"},
            additionalProperties = Schema.False.class,
            description = "A chimney, skylight or other hole in a plane of a plan.")
    public record PlanOpeningForm(
            @Schema(
                    description = "The caller's name for the opening, its own within the plane; 1 to 100 characters.",
                    examples = "chimney")
            @NotNull
            @Size(min = 1, max = Limits.ID_LENGTH)
            String id,

            @Schema(
                    description =
                            "Its corners as seen from above, each [x, y] in the request's length unit, in order, either way round;"
                                    + " the first may be repeated at the end. Numbers within 10,000,000 m of 0.")
            @NotNull
            @Size(min = Limits.LEAST_CORNERS, max = Limits.CORNERS_OF_A_RING)
            List<WirePlanCorner> outline) {}

    /**
     * How high a corner stands.
     *
     * @param plane  the plane it is a corner of
     * @param corner which one
     * @param z      how high
     */
    @Schema(
            name = "PlanHeight",
            requiredProperties = {"plane", "corner", "z"},
            additionalProperties = Schema.False.class,
            description = "How high one corner of a plan stands.")
    public record PlanHeightForm(
            @Schema(description = "The id of the plane it is a corner of; 1 to 100 characters.", examples = "south")
            @NotNull
            @Size(min = 1, max = Limits.ID_LENGTH)
            String plane,

            @Schema(description = "Which corner of its outline, counted from 0; up to 5000.", examples = "0")
            @NotNull
            @Min(0)
            @Max(Limits.CORNERS_OF_A_RING)
            Long corner,

            @Schema(description = "How high it stands, within 10,000,000 m of 0 in the request's length unit.") @NotNull
            WireLength z) {}

    /**
     * A side the caller names.
     *
     * @param plane   the plane it is a side of
     * @param opening the opening of it, if it is a side of one
     * @param side    which one
     * @param kind    what it is
     */
    @Schema(
            name = "PlanEdge",
            requiredProperties = {"plane", "side", "kind"},
            additionalProperties = Schema.False.class,
            description =
                    "A side whose kind the plan can't show: something stands there. A wall is named on the plane whose metal ends at"
                            + " it, the lower one. Where a wall ends midway, give the outline a corner there.")
    public record PlanEdgeForm(
            @Schema(description = "The id of the plane it is a side of; 1 to 100 characters.", examples = "south")
            @NotNull
            @Size(min = 1, max = Limits.ID_LENGTH)
            String plane,

            @Schema(
                    description =
                            "The id of the plane's opening it is a side of; 1 to 100 characters. Default: it is a side of the outline.",
                    examples = "dormer")
            @Size(min = 1, max = Limits.ID_LENGTH)
            @Nullable
            String opening,

            @Schema(
                    description =
                            "Which side, counted from 0: side n runs from corner n to the next one, the last side back to corner 0;"
                                    + " up to 5000.",
                    examples = "2")
            @NotNull
            @Min(0)
            @Max(Limits.CORNERS_OF_A_RING)
            Long side,

            @Schema(ref = "NamedEdgeKind", description = "What stands there.") @NotNull
            NamedEdgeKind kind) {}
}
