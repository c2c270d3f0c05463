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
import org.thalweg.trim.Hand;

/**
 * The trims of a roof.
 *
 * @param sheet       what they are bent of
 * @param stock       what pieces are made of
 * @param ventedRidge whether ridges let air out
 * @param past        how far some run past the outside of the roof
 * @param laidFrom    from which end pieces are laid
 * @param kinds       what each kind of edge gets
 */
@Schema(
        name = "Trims",
        additionalProperties = Schema.False.class,
        description =
                "What the edges of the roof are trimmed with. Eaves, rakes, ridges, hips, pitch breaks, walls and openings get a"
                        + " plain profile each unless `kinds` says otherwise.")
public record TrimsForm(
        @Schema(description = "What trims are bent of. Default: each member's own.") @Nullable @Valid
        SheetForm sheet,

        @Schema(description = "What pieces are made of. Default: each member's own.") @Nullable @Valid
        StockForm stock,

        @Schema(
                description =
                        "Whether the plain cap of ridges lets air out: an inch higher, wider, its edges turned down in"
                                + " front of the vent. Default: false.")
        @Nullable
        Boolean ventedRidge,

        @Schema(
                description =
                        "How far caps, and flashings at walls and pitch breaks, run past the outside of the roof, square to its"
                                + " edge. 0 m to 0.5 m in the request's length unit. Default: 1 in, or 25 mm in metric units (common"
                                + " practice, no source).")
        @Nullable
        WireLength past,

        @Schema(
                ref = "TrimHand",
                description =
                        "The end that pieces of a level edge are laid from, each over the one before, seen from the edge's"
                                + " plane looking up the slope; pieces of a sloped edge are laid from below. Default: left.")
        @Nullable
        Hand laidFrom,

        @Schema(
                maxProperties = Limits.EDGE_KINDS,
                description =
                        "What edges of a kind get, by the kind: `eave`, `highEave`, `rake`, `angledEave`, `angledRake`, `ridge`,"
                                + " `hip`, `pitchBreak`, `sideWall`, `headWall`, `opening`. Default: each a plain profile.")
        @Size(max = Limits.EDGE_KINDS)
        @Nullable
        Map<@Size(min = 1, max = Limits.ID_LENGTH) String, @Valid KindForm> kinds) {

    /**
     * What trims are bent of.
     *
     * @param thickness    of the metal
     * @param insideRadius of its bends
     * @param kFactor      where the line lies that does not stretch
     * @param bendFormula  or the formula that says what bends take up
     * @param coilWidth    widest sheet
     */
    @Schema(
            name = "TrimSheet",
            additionalProperties = Schema.False.class,
            description =
                    "The sheet trims are bent of, and what its bends take up: `kFactor` or `bendFormula`, not both.")
    public record SheetForm(
            @Schema(
                    description =
                            "Thickness of the metal; 0 with an inside radius of 0 makes the flat width the sum of the legs. 0 m to"
                                    + " 0.005 m in the request's length unit. Default: the panel's, or 0.0276 in (No. 24 of the"
                                    + " galvanized gauge table; common practice, no source).")
            @Nullable
            WireLength thickness,

            @Schema(
                    description =
                            "Radius of the inner face of every bend but those of hems. 0 m to 0.05 m in the request's length unit."
                                    + " Default: the thickness (common practice, no source).")
            @Nullable
            WireLength insideRadius,

            @Schema(
                    description =
                            "K: how far from the inner face the line lies that neither stretches nor shrinks, as part of the"
                                    + " thickness; a bend takes up β (ρ + K t). 0 to 1. Default: 0.4469, the empirical formula of"
                                    + " FAA-H-8083-31 as a K-factor.",
                    format = "double",
                    examples = "0.44")
            @Min(0)
            @Max(1)
            @Nullable
            Double kFactor,

            @Schema(ref = "BendFormula", description = "What a bend takes up instead. Default: as `kFactor` says.")
            @Nullable
            BendFormula bendFormula,

            @Schema(
                    description =
                            "Width of the widest sheet at hand; what is wider flat gets a finding. 0.05 m to 3 m in the request's"
                                    + " length unit. Default: 48 in, or 1220 mm in metric units (common practice, no source).")
            @Nullable
            WireLength coilWidth) {}

    /** Published formulas of what a bend takes up. */
    public enum BendFormula {
        HANDBOOK,
        DIN_6935
    }

    /**
     * What pieces are made of.
     *
     * @param pieceLength   longest piece
     * @param shortestPiece shortest piece
     */
    @Schema(
            name = "TrimStock",
            additionalProperties = Schema.False.class,
            description = "How long pieces of trim can be.")
    public record StockForm(
            @Schema(
                    description =
                            "Longest piece. 0.3 m to 20 m in the request's length unit, and at least 0.1 m more than every lap."
                                    + " Default: 10 ft (UFGS 07 60 00: sheets are furnished 8 to 10 ft long), or 3 m in metric units"
                                    + " (common practice, no source).")
            @Nullable
            WireLength pieceLength,

            @Schema(
                    description =
                            "Shortest piece that can be made; shorter ones get a finding. 0 m to 3 m in the request's length unit,"
                                    + " at most `pieceLength`. Default: 12 in, or 300 mm in metric units, at most `pieceLength` (common"
                                    + " practice, no source).")
            @Nullable
            WireLength shortestPiece) {}

    /**
     * What edges of one kind get.
     *
     * @param none    whether they get no trim
     * @param lap     how far a piece lies over the one before
     * @param profile the caller's own profile
     */
    @Schema(
            name = "TrimKind",
            additionalProperties = Schema.False.class,
            description = "What edges of one kind get: no trim, or a profile and a lap.")
    public record KindForm(
            @Schema(description = "Whether they are left without trim; then nothing else is said. Default: false.")
            @Nullable
            Boolean none,

            @Schema(
                    description =
                            "How far a piece lies over the one before. 0 m to 2 m in the request's length unit, at least 0.1 m less"
                                    + " than `pieceLength`. Default: 3 in round the outside (Copper Development Association, Copper in"
                                    + " Architecture, rake strips; a drip edge laps 2 in at least, IRC R905.2.8.5), 4 in at a pitch break"
                                    + " (the same, 9.6A), else 4 in (common practice, no source).")
            @Nullable
            WireLength lap,

            @Schema(description = "The caller's own profile. Default: a plain one of this service.") @Nullable @Valid
            EdgeProfileForm profile) {}

    /**
     * A profile that is bent to the edge it is for.
     *
     * @param name     what it is called
     * @param legs     its girths
     * @param bendsDeg between them
     * @param atEdge   which bend lies on the edge
     * @param withEdge which bends follow the edge
     * @param height   how far off its plane it lies there
     * @param hems     along its edges
     */
    @Schema(
            name = "EdgeProfile",
            requiredProperties = {"legs", "bendsDeg"},
            additionalProperties = Schema.False.class,
            description =
                    "A profile in section, walked from its first edge with the weather face to the left. The leg before the bend"
                            + " at the edge lies along the plane, the others follow from the bends.")
    public record EdgeProfileForm(
            @Schema(
                    description = "What it is called; 1 to 60 characters. Default: the kind of edge.",
                    examples = "wide eave drip")
            @Size(min = 1, max = Limits.PROFILE_NAME)
            @Nullable
            String name,

            @Schema(
                    description =
                            "Girths of its legs from the first edge to the last, to outside mould lines: to where the outer faces"
                                    + " of two legs would meet if the bend between them were sharp; past a square bend, to the outermost of"
                                    + " the bend. Hems not counted. The first leg is the one on the roof: on a ridge or hip the left one,"
                                    + " at a pitch break the upper one. 2 to 12, each 0.001 m to 2 m in the request's length unit.")
            @NotNull
            @Size(min = 2, max = Limits.TRIM_LEGS)
            List<WireLength> legs,

            @Schema(
                    description =
                            "How far each bend turns by itself, from -180 to 180: above 0 up, toward the weather face, below 0 down."
                                    + " One fewer than the legs. Bends of `withEdge` turn by what the edge bends besides.")
            @NotNull
            @Size(min = 1, max = Limits.TRIM_LEGS - 1)
            List<@Min(-Limits.HALF_TURN_DEG) @Max(Limits.HALF_TURN_DEG) Double> bendsDeg,

            @Schema(
                    description = "Which of the bends lies on the edge, counted from 1. 1 to 11. Default: 1.",
                    examples = "1")
            @Min(1)
            @Max(Limits.TRIM_LEGS - 1)
            @Nullable
            Long atEdge,

            @Schema(
                    description =
                            "Which of the bends follow the edge, counted from 1: they turn by `edgeBendDeg` of the answer besides."
                                    + " Default: the one at the edge.")
            @Size(max = Limits.TRIM_LEGS - 1)
            @Nullable
            List<@Min(1) @Max(Limits.TRIM_LEGS - 1) Long> withEdge,

            @Schema(
                    description =
                            "How far off its plane the leg before the bend at the edge lies, as on the seams of the panels. 0 m to"
                                    + " 0.3 m in the request's length unit. Default: 0, on the plane.")
            @Nullable
            WireLength height,

            @Schema(description = "Its edges folded back. Default: none.") @Nullable @Valid
            HemsForm hems) {}

    /**
     * Hems of a profile.
     *
     * @param first along its first edge
     * @param last  along its last edge
     */
    @Schema(
            name = "TrimHems",
            additionalProperties = Schema.False.class,
            description = "Edges of a profile folded back on themselves.")
    public record HemsForm(
            @Schema(description = "Along the first edge. Default: none.") @Nullable @Valid
            HemForm first,

            @Schema(description = "Along the last edge. Default: none.") @Nullable @Valid
            HemForm last) {}

    /**
     * A hem.
     *
     * @param girth from the fold to the edge of the sheet
     * @param gap   what stays open
     * @param up    whether it is folded onto the weather face
     */
    @Schema(
            name = "TrimHem",
            requiredProperties = "girth",
            additionalProperties = Schema.False.class,
            description = "An edge folded back on itself, by 180 degrees.")
    public record HemForm(
            @Schema(
                    description =
                            "From the outermost of the fold to the edge of the sheet. 0.001 m to 0.5 m in the request's length"
                                    + " unit.")
            @NotNull
            WireLength girth,

            @Schema(
                    description =
                            "What stays open between the two layers; 0 when pressed flat. 0 m to 0.05 m in the request's length"
                                    + " unit. Default: 0.")
            @Nullable
            WireLength gap,

            @Schema(description = "Whether it is folded onto the weather face. Default: false, it is folded under.")
            @Nullable
            Boolean up) {}
}
