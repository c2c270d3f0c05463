package org.thalweg.api.wire;

import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * The underlayment's figures; members as in the request.
 *
 * @param rollWidth    of the sheet
 * @param rollLength   of a whole roll
 * @param sideLap      of a course over the one below
 * @param endLap       of a sheet over the next
 * @param endLapsApart from those of the course below
 * @param iceBarrier   the ice barrier, if there is one
 */
@Schema(
        name = "UnderlaymentUsed",
        requiredProperties = {"rollWidth", "rollLength", "sideLap", "endLap", "endLapsApart"},
        description = "The underlayment as used; members mean what they mean in the request.")
public record UnderlaymentUsed(
        @Schema(ref = "PositiveLength", description = "Width of the sheet.")
        double rollWidth,

        @Schema(ref = "PositiveLength", description = "Length of a whole roll.")
        double rollLength,

        @Schema(ref = "PositiveLength", description = "Lap of a course over the one below.")
        double sideLap,

        @Schema(ref = "PositiveLength", description = "Lap of a sheet over the next.")
        double endLap,

        @Schema(ref = "PositiveLength", description = "How far end laps stay from those of the course below.")
        double endLapsApart,

        @Schema(description = "The ice barrier; left out when there is none.")
        Optional<IceBarrierUsed> iceBarrier) {

    /**
     * The ice barrier's figures.
     *
     * @param overhang    from the eave's edge to the wall
     * @param insideWall  how far it goes on inside
     * @param alongSlope  its least on steep roofs
     * @param valleyWidth of the strip under valleys
     * @param rollWidth   of the sheet
     * @param rollLength  of a whole roll
     * @param sideLap     of a course over the one below
     * @param endLap      of a sheet over the next
     */
    @Schema(
            name = "IceBarrierUsed",
            requiredProperties = {
                "overhang",
                "insideWall",
                "alongSlope",
                "valleyWidth",
                "rollWidth",
                "rollLength",
                "sideLap",
                "endLap"
            },
            description = "The ice barrier as used; members mean what they mean in the request.")
    public record IceBarrierUsed(
            @Schema(ref = "PositiveLength", description = "Level, from the eave's edge to the wall.")
            double overhang,

            @Schema(ref = "PositiveLength", description = "Level, how far it goes on inside.")
            double insideWall,

            @Schema(ref = "PositiveLength", description = "Its least along the slope of steep roofs.")
            double alongSlope,

            @Schema(ref = "PositiveLength", description = "Width of the strip under valleys.")
            double valleyWidth,

            @Schema(ref = "PositiveLength", description = "Width of the sheet.")
            double rollWidth,

            @Schema(ref = "PositiveLength", description = "Length of a whole roll.")
            double rollLength,

            @Schema(ref = "PositiveLength", description = "Lap of a course over the one below.")
            double sideLap,

            @Schema(ref = "PositiveLength", description = "Lap of a sheet over the next.")
            double endLap) {}
}
