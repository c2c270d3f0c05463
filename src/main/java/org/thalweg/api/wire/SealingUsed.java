package org.thalweg.api.wire;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * With how much everything was made tight; members as in the request.
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
        name = "SealingUsed",
        requiredProperties = {
            "valleyTapeCount",
            "cleatTapeCount",
            "closureTapeCount",
            "endLapTapeCount",
            "openingTapeCount",
            "panLapBeadCount",
            "trimLapBeadCount",
            "rivetSpacing",
            "beadPerCartridge"
        },
        description = "With how much everything was made tight; members mean what they mean in the request.")
public record SealingUsed(
        @Schema(description = "Lines of tape between panels and pan.", minimum = "0", maximum = "6")
        int valleyTapeCount,

        @Schema(description = "Lines of tape under a valley's cleat.", minimum = "0", maximum = "6")
        int cleatTapeCount,

        @Schema(description = "Lines of tape along a closure.", minimum = "0", maximum = "6")
        int closureTapeCount,

        @Schema(description = "Lines of tape across an end lap.", minimum = "0", maximum = "6")
        int endLapTapeCount,

        @Schema(description = "Lines of tape under the flashing of an opening.", minimum = "0", maximum = "6")
        int openingTapeCount,

        @Schema(description = "Beads of sealant across a lap of a pan.", minimum = "0", maximum = "6")
        int panLapBeadCount,

        @Schema(description = "Beads of sealant across a lap of a trim.", minimum = "0", maximum = "6")
        int trimLapBeadCount,

        @Schema(ref = "PositiveLength", description = "Rivets across a lap of a trim, apart at most.")
        double rivetSpacing,

        @Schema(ref = "PositiveLength", description = "How long a bead one cartridge gives.")
        double beadPerCartridge) {}
