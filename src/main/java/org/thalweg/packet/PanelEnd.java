package org.thalweg.packet;

import java.util.Optional;
import org.thalweg.roof.EdgeTreatment;
import org.thalweg.roof.PanelHold;
import org.thalweg.units.Length;

/**
 * How panels are to end at an edge, as asked for. What is left out is 0, but at a valley it follows from the pan and the
 * hold.
 *
 * @param setback how far the finished edge stops short of the roof line; at a valley the hold-back at its foot
 * @param hem     metal folded under
 * @param turnUp  metal turned up
 * @param hold    how the lower ends are held; at valleys it decides the hem as well
 */
public record PanelEnd(
        Optional<Length> setback, Optional<Length> hem, Optional<Length> turnUp, Optional<PanelHold> hold) {

    /** Nothing is asked for. */
    public static final PanelEnd NONE =
            new PanelEnd(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /** At an edge that is no valley. */
    public EdgeTreatment treatment() {
        return new EdgeTreatment(setback.orElse(Length.ZERO), hem.orElse(Length.ZERO), turnUp.orElse(Length.ZERO));
    }
}
