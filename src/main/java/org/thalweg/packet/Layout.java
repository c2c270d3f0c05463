package org.thalweg.packet;

import java.util.List;
import java.util.Optional;
import org.thalweg.fastening.FastenerRows;
import org.thalweg.fastening.Seams;
import org.thalweg.panel.PanelLayout;
import org.thalweg.roof.EdgeTreatment;
import org.thalweg.roof.Roof;
import org.thalweg.sealing.Sealing;
import org.thalweg.takeoff.OrderLines;
import org.thalweg.takeoff.PanelTakeoff;
import org.thalweg.trim.Trim;
import org.thalweg.underlayment.IceBarrier;
import org.thalweg.underlayment.Underlay;
import org.thalweg.valley.HipLayout;

/**
 * One job, laid out.
 *
 * @param roof       the roof as read
 * @param treatments how panels end at each edge, in the roof's order
 * @param panels     every panel to cut
 * @param valleys    every valley, in the order of the edges; one that more than two planes crowd about is left out
 * @param hips       every hip, likewise
 * @param fasteners  every row of fasteners
 * @param seams      every seam with its clips
 * @param trims      the trim of every edge that gets one, in the order of the edges
 * @param wind       what their clips are spaced for, if for the wind
 * @param movement   how far every panel moves
 * @param underlay   the sheets under the metal
 * @param ice        the ice barrier, if there is one
 * @param sealing    tape, sealant, closures and rivets
 * @param takeoff    the panels' blanks and areas
 * @param order      what to order
 */
public record Layout(
        Roof roof,
        List<EdgeTreatment> treatments,
        PanelLayout panels,
        List<LaidValley> valleys,
        List<HipLayout> hips,
        FastenerRows fasteners,
        Seams seams,
        List<Trim> trims,
        Optional<LaidWind> wind,
        RoofMovement movement,
        Underlay underlay,
        Optional<IceBarrier> ice,
        Sealing sealing,
        PanelTakeoff takeoff,
        OrderLines order) {

    public Layout {
        treatments = List.copyOf(treatments);
        valleys = List.copyOf(valleys);
        hips = List.copyOf(hips);
        trims = List.copyOf(trims);
    }
}
