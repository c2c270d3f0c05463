package org.thalweg.api.wire;

import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.roof.EdgeKind;

/**
 * A line beside the low.
 *
 * @param from   its lower end
 * @param to     its upper end
 * @param length from one to the other
 * @param lower  how to find its lower end
 * @param upper  how to find its upper end
 */
@Schema(
        name = "ChalkLine",
        requiredProperties = {"from", "to", "length", "lower", "upper"},
        description = "A line to snap beside a valley or hip, on one plane.")
public record LineAnswer(
        @Schema(description = "Its lower end; plane frame.") PlanePoint from,

        @Schema(description = "Its upper end; plane frame.") PlanePoint to,

        @Schema(description = "From one to the other.") MarkedLength length,

        @Schema(description = "How to find its lower end.") LineMark lower,

        @Schema(description = "How to find its upper end.") LineMark upper) {

    /**
     * How to find one end of a line.
     *
     * @param up    where to set the square
     * @param out   how far out to measure
     * @param edge  the edge the plane ends on there
     * @param along how far along it to measure instead
     */
    @Schema(
            name = "LineMark",
            requiredProperties = {"up", "out", "edge"},
            description = "How to find one end of a line with a tape and a square.")
    public record LineMark(
            @Schema(
                    description =
                            "Set the square on the low this far up from the foot; below 0 on the low run on past it.")
            MarkedLength up,

            @Schema(description = "Measure this far out, square to the low.")
            MarkedLength out,

            @Schema(description = "Name of the edge the plane ends on there.", maxLength = 40, examples = "E1")
            String edge,

            @Schema(
                    description =
                            "Or measure this far along that edge from the end of the valley; left out where the line does"
                                    + " not end on it.")
            Optional<MarkedLength> along) {}

    /** To which side something lies, seen from the foot of a valley or hip looking up. */
    public enum Hand {
        LEFT,
        RIGHT
    }

    /**
     * What a plane ends on at one end of a valley.
     *
     * @param edge      name of its next edge there
     * @param kind      what that is
     * @param cornerDeg angle between the valley and it
     */
    @Schema(
            name = "ValleyEnd",
            requiredProperties = {"edge", "kind", "cornerDeg"},
            description = "What a plane ends on at one end of a valley or hip.")
    public record EndAnswer(
            @Schema(description = "Name of the plane's next edge there.", maxLength = 40, examples = "E1")
            String edge,

            @Schema(ref = "EdgeKind", description = "What that edge is.")
            EdgeKind kind,

            @Schema(
                    ref = "AngleDeg",
                    description =
                            "Angle between the two through the plane's metal; over 180 the plane turns back there.")
            double cornerDeg) {}

    /**
     * The low.
     *
     * @param from the foot
     * @param to   the head
     */
    @Schema(
            name = "ValleyLow",
            requiredProperties = {"from", "to"},
            description = "The line of a valley or hip on one of its planes; plane frame.")
    public record LowAnswer(
            @Schema(description = "The foot; plane frame.") PlanePoint from,

            @Schema(description = "The head; plane frame.") PlanePoint to) {}
}
