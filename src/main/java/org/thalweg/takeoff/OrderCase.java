package org.thalweg.takeoff;

import java.util.List;
import java.util.Optional;
import org.thalweg.fastening.FastenerRows;
import org.thalweg.fastening.FasteningCase;
import org.thalweg.fastening.Seams;
import org.thalweg.sealing.Sealing;
import org.thalweg.trim.Trim;
import org.thalweg.underlayment.IceBarrier;
import org.thalweg.underlayment.Underlay;

/**
 * A laid roof that is to be ordered.
 *
 * @param laid     roof, panels and valleys, and what they were fastened by
 * @param sheet    what panels are formed from
 * @param rows     of fasteners
 * @param seams    with their clips
 * @param trims    of its edges
 * @param underlay the sheets under the metal
 * @param ice      the ice barrier, if there is one
 * @param sealing  tape, sealant, closures and rivets
 * @param ordering how it is bought
 */
public record OrderCase(
        FasteningCase laid,
        PanelSheet sheet,
        FastenerRows rows,
        Seams seams,
        List<Trim> trims,
        Underlay underlay,
        Optional<IceBarrier> ice,
        Sealing sealing,
        Ordering ordering) {

    public OrderCase {
        trims = List.copyOf(trims);
    }
}
