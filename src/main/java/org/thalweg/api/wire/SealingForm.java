package org.thalweg.api.wire;

import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.Limits;

/**
 * With how much everything is made tight.
 *
 * @param valleyTapeCount  lines of tape between panels and pan
 * @param cleatTapeCount   lines under a valley's cleat
 * @param closureTapeCount lines along a closure
 * @param endLapTapeCount  lines across an end lap
 * @param openingTapeCount lines under the flashing of an opening
 * @param panLapBeadCount  beads across a lap of the pan
 * @param trimLapBeadCount beads across a lap of a trim
 * @param rivetSpacing     rivets of a lap of a trim
 * @param beadPerCartridge length of bead one cartridge gives
 */
@Schema(
        name = "Sealing",
        additionalProperties = Schema.False.class,
        description =
                "How many lines of tape and beads of sealant lie side by side, and how laps of trims are riveted. All"
                        + " defaults are common practice without a source.")
public record SealingForm(
        @Schema(
                description =
                        "Lines of tape between panels that are screwed down at a valley and its pan. 0 to 6. Default: 1.",
                format = "double",
                minimum = "0",
                maximum = "6",
                multipleOf = 1)
        @Min(0)
        @Max(Limits.LINES)
        @Nullable
        Double valleyTapeCount,

        @Schema(
                description = "Lines of tape under the cleat of a valley. 0 to 6. Default: 1.",
                format = "double",
                minimum = "0",
                maximum = "6",
                multipleOf = 1)
        @Min(0)
        @Max(Limits.LINES)
        @Nullable
        Double cleatTapeCount,

        @Schema(
                description = "Lines of tape along each closure, below and above it together. 0 to 6. Default: 2.",
                format = "double",
                minimum = "0",
                maximum = "6",
                multipleOf = 1)
        @Min(0)
        @Max(Limits.LINES)
        @Nullable
        Double closureTapeCount,

        @Schema(
                description = "Lines of tape across each end lap of a panel. 0 to 6. Default: 1.",
                format = "double",
                minimum = "0",
                maximum = "6",
                multipleOf = 1)
        @Min(0)
        @Max(Limits.LINES)
        @Nullable
        Double endLapTapeCount,

        @Schema(
                description = "Lines of tape between panels and the flashing of an opening. 0 to 6. Default: 1.",
                format = "double",
                minimum = "0",
                maximum = "6",
                multipleOf = 1)
        @Min(0)
        @Max(Limits.LINES)
        @Nullable
        Double openingTapeCount,

        @Schema(
                description =
                        "Beads of sealant across each lap of a pan; 0 where laps are soldered. 0 to 6. Default: 2.",
                format = "double",
                minimum = "0",
                maximum = "6",
                multipleOf = 1)
        @Min(0)
        @Max(Limits.LINES)
        @Nullable
        Double panLapBeadCount,

        @Schema(
                description = "Beads of sealant across each lap of a trim. 0 to 6. Default: 1.",
                format = "double",
                minimum = "0",
                maximum = "6",
                multipleOf = 1)
        @Min(0)
        @Max(Limits.LINES)
        @Nullable
        Double trimLapBeadCount,

        @Schema(
                description =
                        "Rivets across each lap of a trim, apart at most; the first and the last as far from its edges as"
                                + " `fastening.edgeDistance` says. 0.005 m to 1 m in the request's length unit. Default: 2 in, or"
                                + " 50 mm in metric units.")
        @Nullable
        WireLength rivetSpacing,

        @Schema(
                description =
                        "How long a bead one cartridge of sealant gives. 0.1 m to 1000 m in the request's length unit. Default:"
                                + " 24 ft, or 7.5 m in metric units.")
        @Nullable
        WireLength beadPerCartridge) {}
