package org.thalweg.api.wire;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/**
 * The sheets under the metal.
 *
 * @param rollWidth    of the sheet
 * @param rollLength   of a whole roll
 * @param sideLap      of a course over the one below
 * @param endLap       of a sheet over the next
 * @param endLapsApart from those of the course below
 * @param iceBarrier   the ice barrier, if there is one
 */
@Schema(
        name = "Underlayment",
        additionalProperties = Schema.False.class,
        description =
                "The sheets under the metal, laid across the slope from the eave up. The panel system's figures win over"
                        + " every default.")
public record UnderlaymentForm(
        @Schema(
                description =
                        "Width of the sheet. 0.2 m to 5 m in the request's length unit. Default: 36 in, or 1 m in metric"
                                + " units (common practice, no source).")
        @Nullable
        WireLength rollWidth,

        @Schema(
                description =
                        "Length of a whole roll. 2 m to 500 m in the request's length unit. Default: 72 ft, or 22 m in"
                                + " metric units (common practice, no source).")
        @Nullable
        WireLength rollLength,

        @Schema(
                description =
                        "How far a course lies over the one below, at least 0.1 m less than the width. 0 m to 4.9 m in the"
                                + " request's length unit. Default: 2 in, or 51 mm in metric units (IRC table R905.1.1(2), at 4:12"
                                + " and over, from memory).")
        @Nullable
        WireLength sideLap,

        @Schema(
                description =
                        "How far one sheet of a course lies over the next. 0 m to 0.9 m in the request's length unit. Default:"
                                + " 4 in, or 102 mm in metric units (IRC table R905.1.1(2), from memory).")
        @Nullable
        WireLength endLap,

        @Schema(
                description =
                        "How far end laps stay from those of the course below. 0 m to 10 m in the request's length unit."
                                + " Default: 6 ft, or 1829 mm in metric units (IRC R905.2.7).")
        @Nullable
        WireLength endLapsApart,

        @Schema(description = "The ice barrier along the eaves and under the valleys. Default: none.") @Nullable @Valid
        IceBarrierForm iceBarrier) {

    /**
     * The ice barrier.
     *
     * @param overhang   from the eave's edge to the wall
     * @param insideWall how far it goes on inside
     * @param alongSlope its least on steep roofs
     * @param valley     width of the strip under valleys
     * @param rollWidth  of the sheet
     * @param rollLength of a whole roll
     * @param sideLap    of a course over the one below
     * @param endLap     of a sheet over the next
     */
    @Schema(
            name = "IceBarrier",
            requiredProperties = "overhang",
            additionalProperties = Schema.False.class,
            description =
                    "The ice barrier. Codes ask for one where ice has dammed water up; the building official decides.")
    public record IceBarrierForm(
            @Schema(
                    description =
                            "Level distance from the eave's edge to the outside of the wall below it. 0 m to 10 m in the request's"
                                    + " length unit.")
            @NotNull
            WireLength overhang,

            @Schema(
                    description =
                            "How far it goes on inside that line, measured level. 0 m to 10 m in the request's length unit."
                                    + " Default: 24 in, or 610 mm in metric units (IRC R905.1.2).")
            @Nullable
            WireLength insideWall,

            @Schema(
                    description =
                            "How far along the slope it goes at least on roofs of 8:12 and over. 0 m to 10 m in the request's"
                                    + " length unit; 0 by IRC 2024. Default: 36 in, or 914 mm in metric units (IRC 2015-2021"
                                    + " R905.1.2).")
            @Nullable
            WireLength alongSlope,

            @Schema(
                    description =
                            "Width of the strip under valleys, both sides together; 0 for none. 0 m to 5 m in the request's"
                                    + " length unit. Default: 36 in, or 914 mm in metric units (IBC 1507.3.9).")
            @Nullable
            WireLength valleyWidth,

            @Schema(
                    description =
                            "Width of the sheet. 0.2 m to 5 m in the request's length unit. Default: 36 in, or 1 m in"
                                    + " metric units (common practice, no source).")
            @Nullable
            WireLength rollWidth,

            @Schema(
                    description =
                            "Length of a whole roll. 2 m to 500 m in the request's length unit. Default: 66 ft, or 20 m in"
                                    + " metric units (common practice, no source).")
            @Nullable
            WireLength rollLength,

            @Schema(
                    description =
                            "How far a course lies over the one below, at least 0.1 m less than the width. 0 m to 4.9 m in the"
                                    + " request's length unit. Default: 4 in, or 100 mm in metric units (common practice, no"
                                    + " source).")
            @Nullable
            WireLength sideLap,

            @Schema(
                    description =
                            "How far one sheet of a course lies over the next. 0 m to 0.9 m in the request's length unit."
                                    + " Default: 6 in, or 150 mm in metric units (common practice, no source).")
            @Nullable
            WireLength endLap) {}
}
