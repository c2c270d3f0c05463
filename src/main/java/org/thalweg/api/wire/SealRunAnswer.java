package org.thalweg.api.wire;

import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.api.Limits;
import org.thalweg.sealing.SealItem;
import org.thalweg.sealing.SealKind;

/**
 * Lines of tape or beads of sealant side by side, a closure, or the rivets of one lap.
 *
 * @param kind   what it makes tight
 * @param item   what it is
 * @param plane  on which plane
 * @param panel  on which panel
 * @param edge   for which edge
 * @param piece  which piece of pan or trim laps the one before
 * @param length of each
 * @param count  how many
 */
@Schema(
        name = "SealRun",
        requiredProperties = {"kind", "item", "edge", "length", "count"},
        description = "Equal lines of tape or beads of sealant side by side, a closure, or the rivets of one lap.")
public record SealRunAnswer(
        @Schema(ref = "SealKind", description = "What it makes tight.")
        SealKind kind,

        @Schema(ref = "SealItem", description = "What it is.")
        SealItem item,

        @Schema(
                description = "The plane's id; left out for laps of pans and trims.",
                maxLength = Limits.ID_ANSWERED,
                examples = "south")
        Optional<String> plane,

        @Schema(
                description = "Mark of the panel it is on; left out where no panel is.",
                maxLength = Limits.ID_ANSWERED + 24)
        Optional<String> panel,

        @Schema(
                description = "Name of the roof edge it is for; `lap` for the end lap of a panel.",
                maxLength = 40,
                examples = "R1")
        String edge,

        @Schema(
                description = "Mark of the piece of pan or trim that laps the one before it; left out elsewhere.",
                maxLength = 60,
                examples = "V1-2")
        Optional<String> piece,

        @Schema(description = "Length of each line, bead or closure; of rivets the line they stand on.")
        MarkedLength length,

        @Schema(description = "How many lines, beads, closures or rivets.", minimum = "1", maximum = "1e6")
        int count) {}
