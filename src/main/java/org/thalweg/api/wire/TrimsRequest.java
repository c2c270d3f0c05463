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
import org.thalweg.api.wire.LayoutRequest.PanelForm;
import org.thalweg.api.wire.TrimsForm.HemsForm;
import org.thalweg.api.wire.TrimsForm.SheetForm;
import org.thalweg.api.wire.TrimsForm.StockForm;

/**
 * Trims, of profiles by themselves or of a roof.
 *
 * @param units     the caller's units
 * @param profiles  the profiles
 * @param sheet     and what they are bent of
 * @param stock     and what their pieces are made of
 * @param roof      or the roof
 * @param panel     and the panels on it
 * @param hipCap    and the cap of its hips
 * @param trims     and what its edges get
 * @param cutting   what their pieces are cut from
 * @param include   what else to answer
 * @param tolerance how well the roof was measured
 */
@Schema(
        name = "TrimsRequest",
        requiredProperties = {"units"},
        additionalProperties = Schema.False.class,
        description =
                "Trims: of `profiles` by themselves, with `sheet` and `stock`, or of a `roof`, with `panel`, `hipCap`, `trims` and"
                        + " `tolerance`, which are those of a layout and mean the same.")
@TrimsOf
public record TrimsRequest(
        @Schema(description = "The units of this request and its answer.") @NotNull @Valid
        UnitsForm units,

        @Schema(description = "Profiles by themselves, in the order the answer keeps.")
        @Size(min = 1, max = Limits.PROFILES)
        @Nullable
        List<@Valid ProfileForm> profiles,

        @Schema(description = "What profiles are bent of. Default: each member's own.") @Nullable @Valid
        SheetForm sheet,

        @Schema(description = "What pieces of profiles are made of. Default: each member's own.") @Nullable @Valid
        StockForm stock,

        @Schema(description = "The roof to trim.") @Nullable @Valid
        RoofForm roof,

        @Schema(
                description =
                        "The panels on the roof; `seamHeight`, `thickness` and `minimumSlope` count here. Default: each"
                                + " member's own.")
        @Nullable
        @Valid
        PanelForm panel,

        @Schema(description = "The cap of hips; its `leg` counts here. Default: each member's own.") @Nullable @Valid
        HipCapForm hipCap,

        @Schema(description = "What the edges of the roof get. Default: each member's own.") @Nullable @Valid
        TrimsForm trims,

        @Schema(description = "What the pieces are cut from. Default: none.") @Nullable @Valid
        CuttingForm cutting,

        @Schema(description = "What else to answer: `working`. Default: nothing else.")
        @Size(max = Limits.INCLUDES)
        @Nullable
        List<LayoutRequest.Include> include,

        @Schema(
                description = "Corners this close are one corner; it says how well the roof was measured."
                        + " 0.000001 m to 0.1 m in the request's length unit. Default: 1 mm.")
        @Nullable
        WireLength tolerance)
        implements Asked {

    /**
     * A profile by itself.
     *
     * @param id       the caller's name for it
     * @param name     what it is called
     * @param legs     its girths
     * @param bendsDeg between them
     * @param hems     along its edges
     * @param lap      how far a piece lies over the one before
     * @param lengths  how much of it is wanted
     */
    @Schema(
            name = "TrimProfile",
            requiredProperties = {"id", "legs", "bendsDeg"},
            additionalProperties = Schema.False.class,
            description = "A profile in section, walked from its first edge with the weather face to the left.")
    public record ProfileForm(
            @Schema(
                    description = "The caller's name for it, its own among the profiles; 1 to 100 characters.",
                    examples = "p1")
            @NotNull
            @Size(min = 1, max = Limits.ID_LENGTH)
            String id,

            @Schema(description = "What it is called; 1 to 60 characters. Default: its id.", examples = "fascia cover")
            @Size(min = 1, max = Limits.PROFILE_NAME)
            @Nullable
            String name,

            @Schema(
                    description =
                            "Girths of its legs from the first edge to the last, to outside mould lines: to where the outer faces"
                                    + " of two legs would meet if the bend between them were sharp; past a square bend, to the outermost of"
                                    + " the bend. Hems not counted. 1 to 12, each 0.001 m to 2 m in the request's length unit.")
            @NotNull
            @Size(min = 1, max = Limits.TRIM_LEGS)
            List<WireLength> legs,

            @Schema(
                    description =
                            "How far each bend turns, from -180 to 180: above 0 up, toward the weather face, below 0 down. One"
                                    + " fewer than the legs.")
            @NotNull
            @Size(max = Limits.TRIM_LEGS - 1)
            List<@Min(-Limits.HALF_TURN_DEG) @Max(Limits.HALF_TURN_DEG) Double> bendsDeg,

            @Schema(description = "Its edges folded back. Default: none.") @Nullable @Valid
            HemsForm hems,

            @Schema(
                    description =
                            "How far a piece lies over the one before. 0 m to 2 m in the request's length unit, at least 0.1 m less"
                                    + " than `pieceLength`. Default: 4 in (common practice, no source).")
            @Nullable
            WireLength lap,

            @Schema(description = "Runs wanted of it, square at both ends. Default: none.")
            @Size(max = Limits.RUNS)
            @Nullable
            List<@Valid RunForm> lengths) {}

    /**
     * A run of trim.
     *
     * @param length in all
     * @param count  how many
     */
    @Schema(
            name = "TrimRun",
            requiredProperties = "length",
            additionalProperties = Schema.False.class,
            description = "A run of trim, square at both ends.")
    public record RunForm(
            @Schema(description = "Its length in all. 0.01 m to 1000 m in the request's length unit.") @NotNull
            WireLength length,

            @Schema(description = "How many such runs. 1 to 10000. Default: 1.", examples = "2")
            @Min(1)
            @Max(Limits.RUN_COUNT)
            @Nullable
            Long count) {}
}
