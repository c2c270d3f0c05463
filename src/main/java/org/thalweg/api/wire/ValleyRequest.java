package org.thalweg.api.wire;

import jakarta.validation.Valid;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.Limits;
import org.thalweg.api.wire.LayoutRequest.PanelForm;
import org.thalweg.api.wire.LayoutRequest.TreatmentForm;

/**
 * One valley, at a corner or of a roof.
 *
 * @param units          the caller's units
 * @param job            the caller's name for it
 * @param corner         the corner it is at
 * @param roof           or the roof it is in
 * @param valley         and the two corners it runs between there
 * @param edge           or its name there
 * @param panel          the panels that meet it
 * @param valleyPan      its pan
 * @param fastening      how things are fastened
 * @param climate        heat and rain
 * @param edgeTreatments how panels end at it
 * @param cutting        what pans and cleats are cut from
 * @param include        what else to answer
 * @param tolerance      how well the roof was measured
 */
@Schema(
        name = "ValleyRequest",
        requiredProperties = {"units", "panel"},
        additionalProperties = Schema.False.class,
        description =
                "One valley: at a `corner` given by two pitches, or in a `roof`, named by `valley` (two points) or `edge`"
                        + " (its name in an answer). The other members are those of a layout and mean the same.")
@ValleyForm
public record ValleyRequest(
        @Schema(description = "The units of this request and its answer.") @NotNull @Valid
        UnitsForm units,

        @Schema(
                description =
                        "The caller's name for the job, 1 to 100 characters; it is answered and stands on every sheet drawn. Default: none.",
                examples = "Boathouse, north valley")
        @Size(min = 1, max = Limits.ID_LENGTH)
        @Nullable
        String job,

        @Schema(description = "The inner corner the valley starts from.") @Nullable @Valid
        CornerForm corner,

        @Schema(description = "The roof the valley is in.") @Nullable @Valid
        RoofForm roof,

        @Schema(
                description =
                        "Names of the two points the valley runs between, in either order. A line that other planes part"
                                + " is answered as several valleys.")
        @Size(min = 2, max = 2)
        @Nullable
        List<@Size(min = 1, max = Limits.ID_LENGTH) String> valley,

        @Schema(description = "The valley's name, as `/v1/roofs` answers it; 1 to 100 characters.", examples = "V1")
        @Size(min = 1, max = Limits.ID_LENGTH)
        @Nullable
        String edge,

        @Schema(description = "The panels that meet the valley; only `cover` must be there.") @NotNull @Valid
        PanelForm panel,

        @Schema(description = "Its pan. Default: each member's own.") @Nullable @Valid
        ValleyPanForm valleyPan,

        @Schema(description = "How things are fastened. Default: each member's own.") @Nullable @Valid
        FasteningForm fastening,

        @Schema(description = "Heat and rain. Default: each member's own.") @Nullable @Valid
        ClimateForm climate,

        @Schema(
                maxProperties = Limits.TREATMENTS,
                description =
                        "How panels end at edges, as in a layout; `valley` or the valley's own name or points count here."
                                + " Default: held back as the pan says, fixed.")
        @Size(max = Limits.TREATMENTS)
        @Nullable
        Map<@Size(min = 1, max = 2 * Limits.ID_LENGTH + 1) String, @Valid TreatmentForm> edgeTreatments,

        @Schema(description = "What the pan and its cleats are cut from. Default: none.") @Nullable @Valid
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
     * An inner corner of a house.
     *
     * @param pitches      of the two planes
     * @param planAngleDeg between the two eaves
     * @param run          level run of the valley
     * @param length       or its true length
     * @param top          what the planes end on at the top
     */
    @Schema(
            name = "Corner",
            requiredProperties = {"pitches", "planAngleDeg"},
            additionalProperties = Schema.False.class,
            description =
                    "An inner corner of a house, seen from the corner looking up the valley: its planes are answered as"
                            + " `left` and `right`. Give `run` or `length`, not both.")
    public record CornerForm(
            @Schema(description = "Pitches of the plane to the left and the plane to the right.")
            @NotNull
            @Size(min = 2, max = 2)
            List<WirePitch> pitches,

            @Schema(
                    description =
                            "Angle in plan between the two eaves, outside of the roof, as one measures it standing in the"
                                    + " corner on the ground; 1 to 180. 90 is a square corner; 180 is none, and is refused.",
                    format = "double",
                    examples = "90")
            @NotNull
            @Min(1)
            @Max(Limits.HALF_TURN_DEG)
            Double planAngleDeg,

            @Schema(
                    description =
                            "Level run of the valley, measured along the left eave as it would run on past the corner."
                                    + " 0.05 m to 1000 m in the request's length unit.")
            @Nullable
            WireLength run,

            @Schema(description = "True length of the valley. 0.05 m to 1000 m in the request's length unit.") @Nullable
            WireLength length,

            @Schema(
                    ref = "CornerTop",
                    description = "What both planes end on at the top of the valley. Default: ridge.")
            @Nullable
            CornerTop top) {}

    /** What the planes at a corner may end on at the top. */
    public enum CornerTop {
        RIDGE,
        HEAD_WALL
    }
}
