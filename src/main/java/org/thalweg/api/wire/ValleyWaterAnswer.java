package org.thalweg.api.wire;

import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.api.Limits;
import org.thalweg.api.problem.Figure;
import org.thalweg.api.wire.LineAnswer.Hand;

/**
 * Water in a valley.
 *
 * @param rainfall        what comes down
 * @param roughness       of the metal
 * @param roughnessSource where that stands
 * @param sides           both sides
 */
@Schema(
        name = "ValleyWater",
        requiredProperties = {"roughness", "roughnessSource", "sides"},
        description =
                "Water in a valley: each side of the rib is a channel of its own, one bank the rib, the other the pan."
                        + " Manning's formula for steady flow, the section taken square to the valley.")
public record ValleyWaterAnswer(
        @Schema(description = "What comes down; left out when it is not known, and so are flows and depths.")
        Optional<Figure> rainfall,

        @Schema(description = "Manning's n.", format = "double", minimum = "0", maximum = "1")
        double roughness,

        @Schema(description = "Where it stands.", maxLength = 200)
        String roughnessSource,

        @Schema(description = "The side to the left, then the side to the right.", minItems = 2, maxItems = 2)
        List<WaterSideAnswer> sides) {

    /**
     * One side.
     *
     * @param hand         which
     * @param plane        its plane
     * @param catchment    what drains to it
     * @param panRiseDeg   how far the pan rises outward
     * @param ribHeight    how high the rib stands
     * @param stations     places along it
     * @param rainToPanels rain at which water reaches its margin
     * @param rainToRib    rain at which it reaches the top of the rib
     */
    @Schema(
            name = "ValleyWaterSide",
            requiredProperties = {"hand", "plane", "catchment", "stations"},
            description = "Water on one side of a valley.")
    public record WaterSideAnswer(
            @Schema(ref = "Hand", description = "Which side.")
            Hand hand,

            @Schema(description = "Its plane.", maxLength = Limits.ID_ANSWERED)
            String plane,

            @Schema(ref = "PositiveArea", description = "What drains to it, seen from above.")
            double catchment,

            @Schema(
                    ref = "AngleDeg",
                    description =
                            "ψ: how far the pan rises outward in the section square to the valley; left out where the"
                                    + " plane does not fall to it.")
            Optional<Double> panRiseDeg,

            @Schema(ref = "PositiveLength", description = "How high the rib stands in that section, left out likewise.")
            Optional<Double> ribHeight,

            @Schema(description = "Places along the valley, from the foot up.", maxItems = Limits.STATIONS + 4)
            List<StationAnswer> stations,

            @Schema(
                    description =
                            "Rain at which, at one of the stations, water spreads up to its margin off the panels; left out"
                                    + " when none does.")
            Optional<Figure> rainToPanels,

            @Schema(description = "Rain at which it stands as high as the rib at the foot; left out when none does.")
            Optional<Figure> rainToRib) {}

    /**
     * One place along a side.
     *
     * @param from        how far up from the foot
     * @param catchment   what drains past it
     * @param spreadLimit how far water may spread
     * @param flow        what runs past
     * @param depth       how deep
     * @param spread      how far up the pan
     */
    @Schema(
            name = "WaterStation",
            requiredProperties = {"from", "catchment", "spreadLimit"},
            description = "Water at one place along a valley.")
    public record StationAnswer(
            @Schema(ref = "PositiveLength", description = "How far up from the foot, true length.")
            double from,

            @Schema(ref = "PositiveArea", description = "What drains past it on this side, seen from above.")
            double catchment,

            @Schema(ref = "PositiveLength", description = "How far up the pan water may spread: hold-back less margin.")
            double spreadLimit,

            @Schema(description = "What runs past.") Optional<Figure> flow,

            @Schema(ref = "PositiveLength", description = "How deep it stands at the low, square to the valley line.")
            Optional<Double> depth,

            @Schema(ref = "PositiveLength", description = "How far up the pan it reaches, measured on the metal.")
            Optional<Double> spread) {}
}
