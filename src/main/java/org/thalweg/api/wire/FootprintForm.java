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
 * The walls of a roof, and what rises from them.
 *
 * @param outline    corners of the walls
 * @param holes      courtyards
 * @param pitch      of every side that says nothing else
 * @param eaveHeight how high the eaves stand
 * @param overhang   how far the roof stands out
 * @param sides      what is said of single sides
 * @param openings   chimneys, skylights
 */
@Schema(
        name = "RoofFootprint",
        requiredProperties = {"outline", "pitch"},
        additionalProperties = Schema.False.class,
        description =
                "The plan of the walls and a pitch: the service finds the roof. From the eave of every side a slope rises at its pitch,"
                        + " square to the side; slopes meet in ridges, hips and valleys. A side that is a gable has no slope, and"
                        + " those beside it run through to its wall. Side n runs from corner n of its ring to the next one, the last"
                        + " side back to corner 0. A slope is called as its side, `side3` or `hole0side3` where the side has no id;"
                        + " what rises from it further up adds `.above1`, `.above2` and so on, the slopes of a cross gable `.start`"
                        + " and `.end`; the second of several parts adds `.2`. Edges along a wall tell their side as `footprintSide`."
                        + " Not found here: a dormer set back from its wall, and sides in one line that rise in different ways; for these"
                        + " post the `editable` roof that `/v1/roofs` answers, with more planes in it.")
public record FootprintForm(
        @Schema(
                description =
                        "Corners of the walls, each [x, y] in the request's length unit, in order, either way round; the first may be"
                                + " repeated at the end, which makes no side. Numbers within 10,000,000 m of 0, and within 512 m of"
                                + " the first corner along x and y. 3 to 2000 sides, those of the holes included.")
        @NotNull
        @Size(min = Limits.LEAST_CORNERS, max = Limits.FOOTPRINT_SIDES)
        List<WirePlanCorner> outline,

        @Schema(
                description =
                        "Courtyards, open to the sky: rings like the outline, inside it and apart. Default: none.")
        @Size(max = Limits.FOOTPRINT_HOLES)
        @Nullable
        List<@Size(min = Limits.LEAST_CORNERS, max = Limits.FOOTPRINT_SIDES) List<WirePlanCorner>> holes,

        @Schema(description = "The pitch of every side that says nothing else; 0.12:12 to 600:12.") @NotNull
        WirePitch pitch,

        @Schema(
                description =
                        "How high the eave of every side that says nothing else stands, z in the request's length unit; within"
                                + " 10,000,000 m of 0. The overhang does not lower it. Default: 0.")
        @Nullable
        WireLength eaveHeight,

        @Schema(
                description =
                        "How far the roof stands out from every side that says nothing else, level and square to the wall, at"
                                + " gables too, but not at one that begins further up, and nowhere over a lower slope. 0 m to 10 m in the request's"
                                + " length unit. Default: 0, the outline is that of the eaves.")
        @Nullable
        WireLength overhang,

        @Schema(description = "What single sides are called, and where they differ; no side twice. Default: nothing.")
        @Size(max = Limits.FOOTPRINT_SIDES)
        @Nullable
        List<@Valid FootprintSideForm> sides,

        @Schema(description = "Chimneys, skylights and other openings, each in one slope. Default: none.")
        @Size(max = Limits.OPENINGS)
        @Nullable
        List<@Valid FootprintOpeningForm> openings) {

    /**
     * What is said of one side.
     *
     * @param hole       which courtyard it is a side of
     * @param side       which side
     * @param id         the caller's name for it
     * @param pitch      its pitch, or that of its cross gable
     * @param gable      whether it is a gable
     * @param eaveHeight how high its eave stands
     * @param overhang   how far the roof stands out from it
     * @param above      what becomes of it further up
     * @param wall       whether a wall goes on above the roof
     */
    @Schema(
            name = "FootprintSide",
            requiredProperties = "side",
            additionalProperties = Schema.False.class,
            description = "What is said of one side of the walls.")
    public record FootprintSideForm(
            @Schema(
                    description =
                            "Which hole it is a side of, counted from 0; up to 99. Default: it is a side of the outline.",
                    examples = "0")
            @Min(0)
            @Max(Limits.FOOTPRINT_HOLES - 1)
            @Nullable
            Long hole,

            @Schema(
                    description =
                            "Which side of its ring, counted from 0: side n runs from corner n to the next one; up to 1999.",
                    examples = "2")
            @NotNull
            @Min(0)
            @Max(Limits.FOOTPRINT_SIDES - 1)
            Long side,

            @Schema(
                    description =
                            "The caller's name for the side, its own among the sides; 1 to 90 characters. Its slope and its"
                                    + " edges are called so. Default: `side` or `hole0side` and its number.",
                    examples = "south")
            @Size(min = 1, max = Limits.SIDE_ID_LENGTH)
            @Nullable
            String id,

            @Schema(
                    description =
                            "The pitch of its slope, 0.12:12 to 600:12. Of a gable that stands in one line with a side beside it"
                                    + " that is none: the pitch of the slopes of the cross gable that ends there. Default: the footprint's.")
            @Nullable
            WirePitch pitch,

            @Schema(
                    description =
                            "Whether the side is a gable: its wall goes up, and the slopes beside it run through to it. Default:"
                                    + " false, a slope rises from it.")
            @Nullable
            Boolean gable,

            @Schema(
                    description =
                            "How high its eave stands, z in the request's length unit; within 10,000,000 m of 0. A gable has"
                                    + " none. Default: the footprint's.")
            @Nullable
            WireLength eaveHeight,

            @Schema(
                    description =
                            "How far the roof stands out from it, level and square to the wall; 0 m to 10 m in the request's"
                                    + " length unit. Default: the footprint's.")
            @Nullable
            WireLength overhang,

            @Schema(
                    description =
                            "What becomes of its slope further up, from the lowest on; at most 4. A gable has none. Default:"
                                    + " nothing, it goes on as it is.")
            @Size(max = Limits.FOOTPRINT_CHANGES)
            @Nullable
            List<@Valid FootprintChangeForm> above,

            @Schema(
                    description =
                            "Whether a wall goes on above the roof along this gable: level lines along it are then of the kind"
                                    + " `headWall`, others `sideWall`. Default: false, the roof ends there in the open.")
            @Nullable
            Boolean wall) {}

    /**
     * From a height on a side goes on otherwise.
     *
     * @param height where
     * @param pitch  at another pitch
     * @param gable  or straight up
     */
    @Schema(
            name = "FootprintChange",
            requiredProperties = "height",
            additionalProperties = Schema.False.class,
            description =
                    "From a height on a slope goes on at another pitch, or a gable goes up; `pitch` or `gable`, one of the two.")
    public record FootprintChangeForm(
            @Schema(
                    description =
                            "From which height on, z in the request's length unit, above the eave and the change before; within"
                                    + " 10,000,000 m of 0.")
            @NotNull
            WireLength height,

            @Schema(description = "The pitch from there on, 0.12:12 to 600:12. Default: a gable goes up.") @Nullable
            WirePitch pitch,

            @Schema(description = "Whether a gable goes up from there. Default: false, `pitch` says what goes on.")
            @Nullable
            Boolean gable) {}

    /**
     * An opening seen from above.
     *
     * @param id      the caller's name for it
     * @param outline its corners
     */
    @Schema(
            name = "FootprintOpening",
            requiredProperties = {"id", "outline"},
            additionalProperties = Schema.False.class,
            description =
                    "A chimney, skylight or other opening, seen from above. It lies in the slope that covers all of it.")
    public record FootprintOpeningForm(
            @Schema(
                    description = "The caller's name for the opening, its own among them; 1 to 100 characters.",
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
}
