package org.thalweg.api.wire;

import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.api.Limits;
import org.thalweg.fastening.FastenerKind;
import org.thalweg.wind.WindZone;

/**
 * Fasteners in a row.
 *
 * @param kind    what they hold down
 * @param plane   on which plane
 * @param panel   through which panel
 * @param edge    for which edge
 * @param count   how many
 * @param spacing between neighbours
 * @param places  where they stand on the plane
 * @param onPanel where they stand on the panel
 * @param world   where they stand in the world
 */
@Schema(
        name = "Fasteners",
        requiredProperties = {"kind", "plane", "edge", "count", "spacing", "places"},
        description = "Fasteners in a row, evenly spaced along their real line.")
public record FastenerAnswer(
        @Schema(ref = "FastenerKind", description = "What they hold down.")
        FastenerKind kind,

        @Schema(description = "The plane's id.", maxLength = Limits.ID_ANSWERED, examples = "south")
        String plane,

        @Schema(
                description =
                        "Mark of the panel they go through; left out where they run on under or beside the panels.",
                maxLength = Limits.ID_ANSWERED + 24)
        Optional<String> panel,

        @Schema(
                description = "Name of the roof edge they are for; `lap` for the end lap of a panel.",
                maxLength = 40,
                examples = "E1")
        String edge,

        @Schema(description = "How many.", minimum = "1", maximum = "1e6")
        int count,

        @Schema(description = "Between neighbours; 0 when there is only one.")
        MarkedLength spacing,

        @Schema(
                description = "Where they stand; in the frame the plane's panels are placed in.",
                maxItems = Limits.FASTENERS)
        List<PlanePoint> places,

        @Schema(
                description =
                        "Where they stand on the panel, for work in the shop; panel frame. Left out where no panel is"
                                + " pierced.",
                maxItems = Limits.FASTENERS)
        Optional<List<PlanePoint>> onPanel,

        @Schema(
                description =
                        "Where they stand in the world, in the order of `places`. Only with `world` in `include`.",
                maxItems = Limits.FASTENERS)
        Optional<List<WorldPoint>> world) {

    /**
     * Clips in a seam.
     *
     * @param plane   on which plane
     * @param strip   the strip laid first of the two that meet there
     * @param from    lowest place of the seam
     * @param to      highest place
     * @param count   how many
     * @param spacing between neighbours
     * @param runs    how they stand from part to part
     * @param places  where they stand
     * @param world   where that is in the world
     */
    @Schema(
            name = "Clips",
            requiredProperties = {"plane", "strip", "from", "to", "count", "spacing", "places"},
            description = "The clips in one unbroken stretch of a seam, where two neighbouring strips both have metal.")
    public record ClipAnswer(
            @Schema(description = "The plane's id.", maxLength = Limits.ID_ANSWERED, examples = "south")
            String plane,

            @Schema(
                    description = "The strip laid first of the two that meet there; the other is the next.",
                    minimum = "1",
                    maximum = "1e6")
            int strip,

            @Schema(description = "Lowest place of the seam; in the frame the plane's panels are placed in.")
            PlanePoint from,

            @Schema(description = "Highest place, straight above.")
            PlanePoint to,

            @Schema(description = "How many.", minimum = "1", maximum = "1e6")
            int count,

            @Schema(description = "Between neighbours, where that is widest; 0 when there is only one.")
            MarkedLength spacing,

            @Schema(
                    description =
                            "How they stand from part to part, from the lowest up, where they are spaced for the wind; else left"
                                    + " out. Where two parts meet there is a clip; it is counted with the lower one.",
                    maxItems = Limits.FASTENERS)
            Optional<List<ClipRunAnswer>> runs,

            @Schema(
                    description = "Where they stand, from the lowest up; in the same frame.",
                    maxItems = Limits.FASTENERS)
            List<PlanePoint> places,

            @Schema(
                    description = "Where they stand in the world, in the same order. Only with `world` in `include`.",
                    maxItems = Limits.FASTENERS)
            Optional<List<WorldPoint>> world) {}

    /**
     * Clips in a part of a seam that stand evenly.
     *
     * @param zone    the wind zone that decides
     * @param from    lowest place of the part
     * @param to      highest place
     * @param spacing between neighbours
     * @param most    allowed between them
     * @param count   how many
     */
    @Schema(
            name = "ClipRun",
            requiredProperties = {"zone", "from", "to", "spacing", "most", "count"},
            description = "The clips in one part of a seam, evenly spaced for the wind.")
    public record ClipRunAnswer(
            @Schema(
                    ref = "WindZone",
                    description = "The wind zone that decides; of several that ask the same, the hardest.")
            WindZone zone,

            @Schema(description = "Lowest place of the part; in the frame the plane's panels are placed in.")
            PlanePoint from,

            @Schema(description = "Highest place, straight above.")
            PlanePoint to,

            @Schema(description = "Between neighbours, from the part below on; 0 when there is only one.")
            MarkedLength spacing,

            @Schema(description = "Greatest spacing the wind and the request allow in it.")
            MarkedLength most,

            @Schema(description = "How many.", minimum = "1", maximum = "1e6")
            int count) {}
}
