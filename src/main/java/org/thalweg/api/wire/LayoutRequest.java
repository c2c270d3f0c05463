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
import org.thalweg.roof.PanelHold;

/**
 * A roof and the metal to lay on it.
 *
 * @param units          the caller's units
 * @param job            the caller's name for it
 * @param roof           the roof
 * @param panel          the metal
 * @param start          where the first strip goes
 * @param edgeTreatments how panels end
 * @param valleyPan      the pan of valleys
 * @param hipCap         the cap of hips
 * @param trims          what edges are trimmed with
 * @param fastening      how things are fastened
 * @param underlayment   the sheets under the metal
 * @param sealing        with how much everything is made tight
 * @param wind           what clips are spaced for
 * @param climate        heat and rain
 * @param ordering       how the job is bought
 * @param cutting        what goods of sheet metal are cut from
 * @param laying         what single planes get instead
 * @param include        what else to answer
 * @param tolerance      how well the roof was measured
 */
@Schema(
        name = "LayoutRequest",
        requiredProperties = {"units", "roof", "panel"},
        additionalProperties = Schema.False.class,
        description = "A measured roof and the panels to lay on it.")
public record LayoutRequest(
        @Schema(description = "The units of this request and its answer.") @NotNull @Valid
        UnitsForm units,

        @Schema(
                description =
                        "The caller's name for the job, 1 to 100 characters; it is answered and stands on every sheet drawn. Default: none.",
                examples = "Boathouse, main roof")
        @Size(min = 1, max = Limits.ID_LENGTH)
        @Nullable
        String job,

        @Schema(description = "The roof as measured.") @NotNull @Valid
        RoofForm roof,

        @Schema(description = "The panel system and the metal.") @NotNull @Valid
        PanelForm panel,

        @Schema(description = "Where the first strip of every plane goes. Default: offset 0.") @Nullable @Valid
        StartForm start,

        @Schema(
                maxProperties = Limits.TREATMENTS,
                description = "How panels end at edges, by an edge kind (`valley`), by one edge's name (`V1`) or"
                        + " by the two corners it runs between (`A-B`). One edge's treatment replaces its"
                        + " kind's. Default: at valleys held back as the pan says, elsewhere on the roof line.")
        @Size(max = Limits.TREATMENTS)
        @Nullable
        Map<@Size(min = 1, max = 2 * Limits.ID_LENGTH + 1) String, @Valid TreatmentForm> edgeTreatments,

        @Schema(description = "The pan of every valley. Default: each member's own.") @Nullable @Valid
        ValleyPanForm valleyPan,

        @Schema(description = "The cap of every hip. Default: each member's own.") @Nullable @Valid
        HipCapForm hipCap,

        @Schema(description = "What edges are trimmed with. Default: each member's own.") @Nullable @Valid
        TrimsForm trims,

        @Schema(description = "How things are fastened. Default: each member's own.") @Nullable @Valid
        FasteningForm fastening,

        @Schema(description = "The sheets under the metal. Default: each member's own, and no ice barrier.")
        @Nullable
        @Valid
        UnderlaymentForm underlayment,

        @Schema(description = "With how much everything is made tight. Default: each member's own.") @Nullable @Valid
        SealingForm sealing,

        @Schema(
                description =
                        "The wind that clips are spaced for. Default: none; clips then stand as `fastening` says.")
        @Nullable
        @Valid
        WindForm wind,

        @Schema(description = "Heat and rain. Default: each member's own.") @Nullable @Valid
        ClimateForm climate,

        @Schema(description = "How the job is bought. Default: each member's own.") @Nullable @Valid
        OrderingForm ordering,

        @Schema(
                description =
                        "What pans, trims, cleats and the panels formed on site are cut from. Default: none; they are ordered as long as"
                                + " their pieces.")
        @Nullable
        @Valid
        CuttingForm cutting,

        @Schema(
                maxProperties = Limits.PLANES,
                description = "How single planes are laid, by their id. Default: as the rest of the request says.")
        @Size(max = Limits.PLANES)
        @Nullable
        Map<@Size(min = 1, max = Limits.ID_LENGTH) String, @Valid LayingForm> laying,

        @Schema(description = "What else to answer. Default: nothing else.") @Size(max = Limits.INCLUDES) @Nullable
        List<Include> include,

        @Schema(
                description = "Corners this close are one corner; it says how well the roof was measured."
                        + " 0.000001 m to 0.1 m in the request's length unit. Default: 1 mm.")
        @Nullable
        WireLength tolerance)
        implements Asked {

    /**
     * The panel system.
     *
     * @param cover          width a panel covers, rib to rib
     * @param seamHeight     height of the rib
     * @param girth          width of the flat coil a panel is made from
     * @param metal          what it is made of
     * @param thickness      of the metal
     * @param longest        longest panel that can be made or carried
     * @param shortest       shortest that can be made
     * @param orderIncrement step that blank lengths are rounded up to
     * @param narrowestRip   narrowest strip worth cutting
     * @param leads          which rib leads
     * @param endLap         how far a piece goes under the next
     * @param stagger        how far laps of neighbours are apart
     * @param minimumSlope   flattest slope the system allows
     */
    @Schema(
            name = "Panel",
            requiredProperties = "cover",
            additionalProperties = Schema.False.class,
            description = "The panel system and the metal it is made from.")
    public record PanelForm(
            @Schema(description = "Width a panel covers, from rib to rib. 0.05 m to 2 m in the request's length unit.")
            @NotNull
            WireLength cover,

            @Schema(
                    description =
                            "Height of the rib; plain profiles of trims stand over it. 0 m to 0.2 m in the request's length unit."
                                    + " Default: not known; trims then take 1 in, or 25 mm in metric units (UFGS 07 60 00: a finished"
                                    + " seam of about 1 in).")
            @Nullable
            WireLength seamHeight,

            @Schema(
                    description = "Width of the flat coil one panel is made from, ribs and all; gives the mass."
                            + " 0.05 m to 3 m in the request's length unit. Default: the cover and 2 3/4 in for the two seams"
                            + " (Copper Roofings, a manual, 1920s).")
            @Nullable
            WireLength girth,

            @Schema(
                    description =
                            "What the panel is made of, by its name in the published table of metals;"
                                    + " gives the mass. 1 to 40 characters. Default: `galvanized-steel` (common practice, no source).",
                    examples = "galvanized-steel")
            @Size(min = 1, max = Limits.METAL_LENGTH)
            @Nullable
            String metal,

            @Schema(
                    description = "Thickness of the metal; gives the mass. 0.0001 m to 0.005 m in the request's"
                            + " length unit. Default: 0.0276 in, No. 24 of the galvanized gauge table (common practice, no"
                            + " source).")
            @Nullable
            WireLength thickness,

            @Schema(
                    description =
                            "Longest panel that can be made or carried; longer ones are lapped. 0.1 m to"
                                    + " 200 m in the request's length unit. Default: 45 ft, or 13.7 m in metric units (SMACNA"
                                    + " architectural sheet metal manual, 5th ed., as quoted: practical limit of a continuous pan).")
            @Nullable
            WireLength longest,

            @Schema(
                    description = "Shortest panel that can be made; shorter ones get a finding. 0 m to 10 m in"
                            + " the request's length unit. Default: 6 in, or 150 mm in metric units (common practice, no"
                            + " source).")
            @Nullable
            WireLength shortest,

            @Schema(
                    description = "Step that blank lengths are rounded up to. 0.0001 m to 1 m in the request's"
                            + " length unit. Default: 1/4 in, or 5 mm in metric units (common practice, no source).")
            @Nullable
            WireLength orderIncrement,

            @Schema(
                    description =
                            "Narrowest strip worth cutting; narrower ones get a finding. 0 m to 1 m in the"
                                    + " request's length unit. Default: 4 in, or 100 mm in metric units (common practice, no source).")
            @Nullable
            WireLength narrowestRip,

            @Schema(
                    ref = "Leads",
                    description =
                            "Which rib leads: from which side, seen looking up the slope, strips are laid. Default: left.")
            @Nullable
            Leads leads,

            @Schema(
                    description = "How far the upper piece of a panel lies over the lower one. 0 m to 2 m in the"
                            + " request's length unit. Default: 6 in, or 150 mm in metric units, at most a tenth of `longest`"
                            + " (common practice, no source).")
            @Nullable
            WireLength endLap,

            @Schema(
                    description = "How far the laps of neighbouring panels are kept apart along the slope. 0 m"
                            + " to 20 m in the request's length unit. Default: 24 in, or 600 mm in metric units, at most a quarter"
                            + " of `longest` (common practice, no source).")
            @Nullable
            WireLength stagger,

            @Schema(
                    description = "Flattest slope the system allows; flatter planes get a finding. Default:"
                            + " 1/4:12, the International Building Code's least slope for standing-seam panels"
                            + " (IBC 1507.4.2, IRC R905.10.2).")
            @Nullable
            WirePitch minimumSlope) {}

    /**
     * Where the first strip goes.
     *
     * @param by     how it is chosen
     * @param offset where, when the caller says so
     */
    @Schema(
            name = "Start",
            requiredProperties = "by",
            additionalProperties = Schema.False.class,
            description = "Where the first strip of a plane goes.")
    public record StartForm(
            @Schema(ref = "StartBy", description = "How the place is chosen.") @NotNull
            StartBy by,

            @Schema(
                    description =
                            "How wide the first panel is, from the edge where laying starts to the first rib; 0 for a whole panel;"
                                    + " only with `offset`."
                                    + " 0 m to 2 m in the request's length unit, less than the cover. Default: 0.")
            @Nullable
            WireLength offset) {}

    /**
     * How a panel ends at an edge.
     *
     * @param setback how far it stops short
     * @param hem     extra metal folded under
     * @param turnUp  extra metal turned up
     * @param hold    how it is held
     */
    @Schema(
            name = "EdgeTreatment",
            additionalProperties = Schema.False.class,
            description = "How a panel ends at an edge.")
    public record TreatmentForm(
            @Schema(
                    description = "How far the finished edge stops short of the roof line, in the plane, square"
                            + " to it; below 0 it runs past. -2 m to 2 m in the request's length unit. At a valley it is the hold-back at"
                            + " the foot. Default: 0; at a valley what the pan says.")
            @Nullable
            WireLength setback,

            @Schema(
                    description = "Metal beyond the finished edge that is folded under. 0 m to 0.5 m in the"
                            + " request's length unit. Default: 0; at a valley with `cleated` hold 1 in, or 25 mm in metric"
                            + " units (from memory: common standing-seam practice).")
            @Nullable
            WireLength hem,

            @Schema(
                    description = "Metal beyond the finished edge that is turned up. 0 m to 0.5 m in the"
                            + " request's length unit. Default: 0.")
            @Nullable
            WireLength turnUp,

            @Schema(
                    ref = "PanelHold",
                    description =
                            "How the panels' ends are held: at valleys it decides hem, cleats and screws, elsewhere whether a"
                                    + " cleat or screws hold their lower ends, and so how far those may move. Default: fixed.")
            @Nullable
            PanelHold hold) {}

    /**
     * How one plane is laid.
     *
     * @param fallDeg which way a level plane is to drain
     * @param leads   which rib leads on it
     * @param start   where its first strip goes
     */
    @Schema(
            name = "Laying",
            additionalProperties = Schema.False.class,
            description = "How one plane is laid, where it differs from the rest.")
    public record LayingForm(
            @Schema(
                    description = "Direction water is to run on a level plane, in degrees counter-clockwise from"
                            + " +x, 0 to 360. Without it a level plane gets no panels.",
                    format = "double",
                    examples = "270")
            @Min(0)
            @Max(Limits.FULL_TURN_DEG)
            @Nullable
            Double fallDeg,

            @Schema(ref = "Leads", description = "Which rib leads on this plane. Default: the panel's.") @Nullable
            Leads leads,

            @Schema(description = "Where this plane's first strip goes. Default: the request's.") @Nullable @Valid
            StartForm start) {}

    /** Which rib leads: the one the crew starts from. */
    public enum Leads {
        LEFT,
        RIGHT
    }

    /** How the place of the first strip is chosen. */
    public enum StartBy {
        OFFSET,
        CENTRED,
        LEAST_WASTE
    }

    /** What a layout may answer besides the cut schedule. */
    public enum Include {
        OFFCUTS,
        WORLD,
        WORKING
    }
}
