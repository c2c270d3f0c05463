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
 * @param takenOff everything that is counted, and the order
 * @param valleys  every valley, in the order of the edges; one that more than two planes crowd about is left out
 * @param hips     every hip, likewise
 * @param movement how far every panel moves
 */
public record Layout(TakenOff takenOff, List<LaidValley> valleys, List<HipLayout> hips, RoofMovement movement) {

    public Layout {
        valleys = List.copyOf(valleys);
        hips = List.copyOf(hips);
    }

    /** The roof as read. */
    public Roof roof() {
        return takenOff.laid().roof();
    }

    /** How panels end at each edge, in the roof's order. */
    public List<EdgeTreatment> treatments() {
        return takenOff.laid().treatments();
    }

    /** Every panel to cut. */
    public PanelLayout panels() {
        return takenOff.laid().panels();
    }

    public FastenerRows fasteners() {
        return takenOff.fasteners();
    }

    public Seams seams() {
        return takenOff.seams();
    }

    public List<Trim> trims() {
        return takenOff.trims();
    }

    public Optional<LaidWind> wind() {
        return takenOff.wind();
    }

    public Underlay underlay() {
        return takenOff.underlay();
    }

    public Optional<IceBarrier> ice() {
        return takenOff.ice();
    }

    public Sealing sealing() {
        return takenOff.sealing();
    }

    public PanelTakeoff takeoff() {
        return takenOff.takeoff();
    }

    public OrderLines order() {
        return takenOff.order();
    }
}
