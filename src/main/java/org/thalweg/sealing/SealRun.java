package org.thalweg.sealing;

import java.util.Optional;
import java.util.OptionalInt;
import org.thalweg.panel.Panel;
import org.thalweg.units.Length;

/**
 * Equal lines of tape or beads of sealant side by side, a closure, or the rivets of one lap.
 *
 * @param kind   what it makes tight
 * @param item   what it is
 * @param plane  index in the roof's planes; nothing for laps of pans and trims, which lie on two planes or beside one
 * @param panel  the panel it is on; nothing where no panel is
 * @param edge   index in the roof's edges of the edge it is for, or {@link org.thalweg.geometry.Side#LAP}
 * @param piece  mark of the piece of pan or trim that laps the one before; nothing elsewhere
 * @param length of each line, bead or closure; of rivets the line they stand on
 * @param count  of lines, beads, closures or rivets; 1 or more
 */
public record SealRun(
        SealKind kind,
        SealItem item,
        OptionalInt plane,
        Optional<Panel> panel,
        int edge,
        Optional<String> piece,
        Length length,
        int count) {

    /** All of them end to end; nothing long for rivets. */
    public Length total() {
        return item == SealItem.RIVET ? Length.ZERO : Length.metres(length.metres() * count);
    }
}
