package org.thalweg.api.wire;

import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.api.Limits;

/**
 * The sheets under the metal.
 *
 * @param planes          every plane with its courses
 * @param order           what they take
 * @param iceBarrier      strips along eaves and under valleys
 * @param iceBarrierOrder what those take
 */
@Schema(
        name = "UnderlaymentAnswer",
        requiredProperties = {"planes", "order", "iceBarrier"},
        description = "The sheets under the metal. Every plane is covered whole; an ice barrier comes besides.")
public record UnderlaymentAnswer(
        @Schema(
                description =
                        "Every plane, in the order of the planes; places of its courses are across and up the plane, in its own"
                                + " frame.",
                maxItems = Limits.PLANES)
        List<CoveredPlane> planes,

        @Schema(
                description =
                        "What they take. Rolls are rolled out one after another, plane by plane, course by course, from the"
                                + " left; what is left of one begins the next run.")
        RollOrderAnswer order,

        @Schema(
                description =
                        "Strips of ice barrier, the eaves' in the order of the edges, then the valleys'; none when no overhang is"
                                + " given.",
                maxItems = Limits.EDGES)
        List<IceStripAnswer> iceBarrier,

        @Schema(description = "What those take, strip by strip; left out when there are none.")
        Optional<RollOrderAnswer> iceBarrierOrder) {

    /**
     * One plane.
     *
     * @param plane   which
     * @param netArea its true area
     * @param courses from the lowest up
     */
    @Schema(
            name = "CoveredPlane",
            requiredProperties = {"plane", "netArea", "courses"},
            description = "The underlayment of one plane.")
    public record CoveredPlane(
            @Schema(description = "The plane's id.", maxLength = Limits.ID_ANSWERED, examples = "south")
            String plane,

            @Schema(
                    description = "True area, openings left out; in the request's area unit.",
                    format = "double",
                    minimum = "0",
                    maximum = "1e18")
            double netArea,

            @Schema(description = "Courses, from the lowest up.", maxItems = Limits.SHEETS)
            List<CourseAnswer> courses) {}

    /**
     * One course.
     *
     * @param from its lower edge
     * @param to   its upper edge
     * @param runs unbroken stretches
     */
    @Schema(
            name = "Course",
            requiredProperties = {"from", "to", "runs"},
            description = "A course, as wide as the roll. The top one may stand over the top of its plane.")
    public record CourseAnswer(
            @Schema(description = "Where its lower edge lies, up the plane; of a strip, off the edge it follows.")
            MarkedLength from,

            @Schema(description = "Where its upper edge lies.")
            MarkedLength to,

            @Schema(
                    description = "Unbroken stretches from the left; an opening or a notch parts them.",
                    maxItems = Limits.SHEETS)
            List<RunAnswer> runs) {}

    /**
     * One unbroken stretch.
     *
     * @param from   its left end
     * @param to     its right end
     * @param sheets it is made of
     */
    @Schema(
            name = "CourseRun",
            requiredProperties = {"from", "to", "sheets"},
            description = "An unbroken stretch of a course, as far as the plane goes anywhere in it.")
    public record RunAnswer(
            @Schema(
                    description = "Its left end, across the plane; of a strip, along its edge from the left end.",
                    format = "double",
                    minimum = "-1e11",
                    maximum = "1e11")
            double from,

            @Schema(description = "Its right end.", format = "double", minimum = "-1e11", maximum = "1e11")
            double to,

            @Schema(
                    description = "Length of each sheet, from the left, with its lap over the one before.",
                    maxItems = Limits.SHEETS)
            List<MarkedLength> sheets) {}

    /**
     * One strip of ice barrier.
     *
     * @param edge    what it follows
     * @param width   how wide it must be
     * @param length  of all its sheets
     * @param courses from the edge up
     */
    @Schema(
            name = "IceStrip",
            requiredProperties = {"edge", "width", "length", "courses"},
            description = "The ice barrier along one eave or under one valley.")
    public record IceStripAnswer(
            @Schema(description = "Name of the edge it follows.", maxLength = 40, examples = "E1")
            String edge,

            @Schema(
                    description =
                            "How wide it must be: on the plane, square to the eave, at most as far as the plane goes; of a valley"
                                    + " both sides together.")
            MarkedLength width,

            @Schema(ref = "PositiveLength", description = "All its sheets end to end, laps included.")
            double length,

            @Schema(
                    description =
                            "Courses, from the eave up; of a valley from one side to the other, along it from its foot.",
                    maxItems = Limits.SHEETS)
            List<CourseAnswer> courses) {}

    /**
     * What it takes.
     *
     * @param rollCount   whole rolls
     * @param rolledOut   all sheets end to end
     * @param area        of those
     * @param setAside    not used on
     * @param rest        of the last roll
     * @param nearestLaps of courses that lie over each other
     */
    @Schema(
            name = "RollOrder",
            requiredProperties = {"rollCount", "rolledOut", "area", "setAside", "rest"},
            description = "Whole rolls, and where their length goes: rolled out, set aside, left.")
    public record RollOrderAnswer(
            @Schema(description = "Whole rolls.", minimum = "0", maximum = "1e6")
            int rollCount,

            @Schema(ref = "PositiveLength", description = "All sheets end to end, end laps included.")
            double rolledOut,

            @Schema(
                    description = "Of all sheets, laps included; in the request's area unit.",
                    format = "double",
                    minimum = "0",
                    maximum = "1e18")
            double area,

            @Schema(
                    ref = "PositiveLength",
                    description = "What was cut off to keep end laps apart, or left and too short to begin a run with.")
            double setAside,

            @Schema(ref = "PositiveLength", description = "What is left of the last roll.")
            double rest,

            @Schema(
                    ref = "PositiveLength",
                    description =
                            "The least distance between end laps of courses that lie over each other; left out where no two such"
                                    + " courses have any. Less than asked for only where rolls are too short for that.")
            Optional<Double> nearestLaps) {}
}
