package org.thalweg.api.wire;

import jakarta.validation.constraints.Size;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.api.Limits;
import org.thalweg.roof.EdgeKind;

/**
 * Planes and edges.
 *
 * @param planes in the request's order
 * @param edges  in the order of the planes and their corners
 * @param editable the same roof in points and planes
 */
@Schema(
        name = "ReadRoof",
        requiredProperties = {"planes", "edges"},
        description = "Planes with their frames and edges with their names.")
public record ReadRoof(
        @Schema(description = "The planes, in the request's order.", maxItems = Limits.PLANES)
        List<PlaneAnswer> planes,

        @Schema(
                description = "The edges, each once, in the order of the planes and their corners.",
                maxItems = Limits.EDGES)
        List<EdgeAnswer> edges,

        @Schema(
                ref = "Roof",
                description =
                        "The same roof in `points` and `planes` (and `edges` where walls stand), as `roof` may be posted: change it, and"
                                + " post it again. Unchanged it gives the same planes and edges. In `/v1/roofs` alone, for a roof that"
                                + " was posted as `plan` or `footprint`.")
        Optional<EditableRoof> editable) {

    /**
     * A plane.
     *
     * @param id       the caller's name
     * @param pitch    rise over a run of 12
     * @param slopeDeg angle from level
     * @param level    whether water has no dependable way down
     * @param area     true area
     * @param planArea area seen from above
     * @param frame    where the outline's coordinates are measured from
     * @param outline  corners on the plane
     * @param openings holes
     * @param offPlane how far the furthest corner is off
     */
    @Schema(
            name = "PlaneAnswer",
            requiredProperties = {
                "id",
                "pitch",
                "slopeDeg",
                "level",
                "area",
                "planArea",
                "frame",
                "outline",
                "openings",
                "offPlane"
            },
            description = "One plane of the roof.")
    public record PlaneAnswer(
            @Schema(
                    description = "The caller's name for the plane.",
                    maxLength = Limits.ID_ANSWERED,
                    examples = "south")
            String id,

            @Schema(description = "The plane's pitch over a run of 12.")
            RiseAndRun pitch,

            @Schema(
                    description = "Angle of the plane from level, degrees, 0 to below 90.",
                    format = "double",
                    minimum = "0",
                    maximum = "90",
                    examples = "26.5651")
            double slopeDeg,

            @Schema(description = "Whether the plane is too near level for water to have a dependable way down.")
            boolean level,

            @Schema(
                    description = "True area, measured in the plane, less openings; in the request's area unit.",
                    format = "double",
                    minimum = "0",
                    maximum = "1e18")
            double area,

            @Schema(
                    description = "Area seen from straight above, less openings; in the request's area unit.",
                    format = "double",
                    minimum = "0",
                    maximum = "1e18")
            double planArea,

            @Schema(description = "Where the plane's own coordinates are measured from.")
            FrameAnswer frame,

            @Schema(
                    description = "Corners on the plane as [across, up], counter-clockwise seen from outside, in"
                            + " the request's length unit, 0 or more. A corner of a neighbour on a side is a"
                            + " corner here too.",
                    maxItems = Limits.CORNERS_ANSWERED)
            List<PlanePoint> outline,

            @Schema(description = "The plane's openings, in the request's order.", maxItems = Limits.OPENINGS)
            List<OpeningAnswer> openings,

            @Schema(
                    description = "How far the furthest corner stands off the plane, 0 or more; in the request's"
                            + " length unit.",
                    format = "double",
                    minimum = "0",
                    maximum = "1e11")
            double offPlane) {}

    /**
     * A frame.
     *
     * @param origin where across and up are 0
     * @param across to the right, looking up the slope
     * @param up     up the slope
     */
    @Schema(
            name = "FrameAnswer",
            requiredProperties = {"origin", "across", "up"},
            description =
                    "A plane's frame, seen from outside looking up the slope. A corner [a, u] of the plane lies at"
                            + " origin + a × across + u × up in the world.")
    public record FrameAnswer(
            @Schema(ref = "WorldPoint", description = "Where across and up are 0: the outline's leftmost and lowest.")
            WorldPoint origin,

            @Schema(ref = "Direction", description = "Level, to the right; one long.")
            WorldPoint across,

            @Schema(ref = "Direction", description = "Straight up the slope; one long.")
            WorldPoint up) {}

    /**
     * A hole in a plane.
     *
     * @param outline corners on the plane
     */
    @Schema(
            name = "OpeningAnswer",
            requiredProperties = "outline",
            description = "A chimney, skylight or other hole in a plane.")
    public record OpeningAnswer(
            @Schema(
                    description = "Corners on the plane as [across, up], clockwise seen from outside, in the"
                            + " request's length unit.",
                    maxItems = Limits.CORNERS_ANSWERED)
            List<PlanePoint> outline) {}

    /**
     * An edge.
     *
     * @param id       its name
     * @param kind     what the trade calls it
     * @param footprintSide the side of the walls it runs along
     * @param planes   which planes carry it
     * @param from     one end
     * @param to       the other
     * @param length   true length
     * @param slopeDeg angle from level
     * @param bendDeg  the bend of a flashing along it
     * @param sides    how each plane sees it
     */
    @Schema(
            name = "EdgeAnswer",
            requiredProperties = {"id", "kind", "planes", "from", "to", "length", "slopeDeg", "bendDeg", "sides"},
            description = "One edge of the roof.")
    public record EdgeAnswer(
            @Schema(
                    description = "The edge's name: its kind's letter and a number. The same as long as the"
                            + " planes before it are.",
                    maxLength = 20,
                    examples = "V1")
            String id,

            @Schema(ref = "EdgeKind", description = "What the trade calls the edge.")
            EdgeKind kind,

            @Schema(
                    description =
                            "The side of the posted `footprint` it runs along, by its id or the name made of its number. Not there"
                                    + " where planes meet, and in other forms of a roof.",
                    maxLength = Limits.ID_LENGTH,
                    examples = "south")
            Optional<String> footprintSide,

            @Schema(
                    description = "Ids of the planes that carry the edge, in the planes' order: one, two, or more"
                            + " where planes crowd.",
                    minItems = 1,
                    maxItems = Limits.PLANES)
            List<@Size(max = Limits.ID_ANSWERED) String> planes,

            @Schema(ref = "WorldPoint", description = "Where the first plane's outline starts the edge.")
            WorldPoint from,

            @Schema(ref = "WorldPoint", description = "Where it ends.")
            WorldPoint to,

            @Schema(description = "True length of the edge.")
            MarkedLength length,

            @Schema(
                    description = "Angle of the edge from level, degrees, 0 to 90.",
                    format = "double",
                    minimum = "0",
                    maximum = "90",
                    examples = "19.4712")
            double slopeDeg,

            @Schema(
                    description = "Angle between the two planes, the bend to put into a flashing, degrees: 0 is"
                            + " flat, and 0 for an edge of one plane.",
                    format = "double",
                    minimum = "0",
                    maximum = "180",
                    examples = "36.8699")
            double bendDeg,

            @Schema(
                    description = "How each plane that carries the edge sees it, in the order of `planes`.",
                    minItems = 1,
                    maxItems = Limits.PLANES)
            List<EdgeSideAnswer> sides) {}

    /**
     * An edge as a plane sees it.
     *
     * @param plane    the plane
     * @param angleDeg angle to the level line
     */
    @Schema(
            name = "EdgeSideAnswer",
            requiredProperties = {"plane", "angleDeg"},
            description = "An edge as one of its planes sees it.")
    public record EdgeSideAnswer(
            @Schema(description = "Id of the plane.", maxLength = Limits.ID_ANSWERED, examples = "south")
            String plane,

            @Schema(
                    description = "φ, the angle in the plane from the level line to the edge, degrees, 0 to 90."
                            + " The cut across a panel of cover w rises w × tan φ.",
                    format = "double",
                    minimum = "0",
                    maximum = "90",
                    examples = "48.1897")
            double angleDeg) {}
}
