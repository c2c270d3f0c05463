package org.thalweg.api.wire;

import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.trim.Hem.Kind;

/** What is told of any profile, of a roof or by itself: its hems and where it is bent. */
public final class FlatAnswer {

    private FlatAnswer() {}

    /**
     * Hems of a profile.
     *
     * @param first along its first edge
     * @param last  along its last edge
     */
    @Schema(name = "HemsAsBent", description = "The hems of a profile; an edge without one has none here.")
    public record HemsAnswer(
            @Schema(description = "Along the first edge.") Optional<HemAnswer> first,

            @Schema(description = "Along the last edge.") Optional<HemAnswer> last) {}

    /**
     * A hem.
     *
     * @param kind  whether it is pressed flat
     * @param girth from the fold to the edge of the sheet
     * @param gap   what stays open
     * @param up    whether it is folded onto the weather face
     */
    @Schema(
            name = "HemAsBent",
            requiredProperties = {"kind", "girth", "gap", "up"},
            description = "An edge folded back on itself.")
    public record HemAnswer(
            @Schema(ref = "HemKind", description = "Whether it is pressed flat.")
            Kind kind,

            @Schema(description = "From the outermost of the fold to the edge of the sheet.")
            MarkedLength girth,

            @Schema(ref = "PositiveLength", description = "What stays open between the two layers.")
            double gap,

            @Schema(description = "Whether it is folded onto the weather face; else under.")
            boolean up) {}

    /**
     * Where to bend.
     *
     * @param at        from the first edge
     * @param bendDeg   how far
     * @param hem       whether it is the fold of a hem
     * @param allowance what it takes up
     * @param deduction what it takes off
     */
    @Schema(
            name = "BendLine",
            requiredProperties = {"at", "bendDeg", "hem", "allowance", "deduction"},
            description = "A line across the flat sheet to bend it along.")
    public record BendLine(
            @Schema(description = "The middle of the bend, from the first edge of the flat sheet.")
            MarkedLength at,

            @Schema(
                    ref = "SignedAngleDeg",
                    description =
                            "How far to bend; above 0 what lies beyond comes up toward the weather face, below 0 it goes down.")
            double bendDeg,

            @Schema(description = "Whether it is the fold of a hem.")
            boolean hem,

            @Schema(
                    ref = "PositiveLength",
                    description =
                            "Bend allowance: how wide the bend is in the flat sheet; its line lies in the middle.")
            double allowance,

            @Schema(
                    description =
                            "Bend deduction: what the bend takes off the sum of the girths on both sides of it, in the request's"
                                    + " length unit; below 0 it adds.",
                    format = "double",
                    minimum = "-1e11",
                    maximum = "1e11")
            double deduction) {}
}
