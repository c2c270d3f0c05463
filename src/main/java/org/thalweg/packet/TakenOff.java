package org.thalweg.packet;

import java.util.List;
import java.util.Optional;
import org.thalweg.fastening.FastenerRows;
import org.thalweg.fastening.FasteningCase;
import org.thalweg.fastening.Seams;
import org.thalweg.sealing.Sealing;
import org.thalweg.takeoff.OrderLines;
import org.thalweg.takeoff.PanelTakeoff;
import org.thalweg.trim.Trim;
import org.thalweg.underlayment.IceBarrier;
import org.thalweg.underlayment.Underlay;

/**
 * What an estimator takes off a job: everything that is counted, and what to order of it.
 *
 * @param laid      roof, panels and the pans of its valleys, and what they are fastened by
 * @param wind      what clips are spaced for, if for the wind
 * @param fasteners every row of fasteners
 * @param seams     every seam with its clips
 * @param trims     the trim of every edge that gets one, in the order of the edges
 * @param underlay  the sheets under the metal
 * @param ice       the ice barrier, if there is one
 * @param sealing   tape, sealant, closures and rivets
 * @param takeoff   the panels' blanks and areas
 * @param order     what to order
 */
public record TakenOff(
        FasteningCase laid,
        Optional<LaidWind> wind,
        FastenerRows fasteners,
        Seams seams,
        List<Trim> trims,
        Underlay underlay,
        Optional<IceBarrier> ice,
        Sealing sealing,
        PanelTakeoff takeoff,
        OrderLines order) {

    public TakenOff {
        trims = List.copyOf(trims);
    }
}
