package org.thalweg.movement;

import java.util.List;
import org.thalweg.finding.Place;
import org.thalweg.units.Length;

/**
 * One panel that is fixed at one place, and what lets it move from there: its clips, and what holds its ends.
 *
 * @param mark    which, by the mark of its lowest piece
 * @param plane   on which plane
 * @param below   how far its lower end moves from where it is fixed
 * @param above   how far its upper end does
 * @param clipped whether clips hold it along a rib
 * @param ends    every end that lies on an edge of the roof
 */
public record MovingPanel(String mark, Place plane, Growth below, Growth above, boolean clipped, List<HeldEnd> ends) {

    public MovingPanel {
        ends = List.copyOf(ends);
    }

    /**
     * How far its clips must let it slide, each way: as far as its further end moves. The end is taken for the last clip, which
     * stands a little nearer.
     */
    public Length travelNeeded() {
        return below.most().compareTo(above.most()) >= 0 ? below.most() : above.most();
    }

    /** Whether screws go through it below as well as above, so that it is fixed twice. */
    public boolean screwedTwice() {
        return screwed(true) && screwed(false);
    }

    private boolean screwed(boolean lower) {
        return ends.stream().anyMatch(end -> end.hold() == EndHold.SCREWS && end.lower() == lower);
    }
}
