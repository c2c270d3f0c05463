package org.thalweg.fastening;

import java.util.List;
import org.thalweg.geometry.Point2;
import org.thalweg.panel.Panel;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;

/**
 * A panel from end to end, held at one place and free from there. Pieces that are lapped are one panel: a lap is fastened
 * metal to metal, so they move together.
 *
 * @param plane  index in the roof's planes
 * @param pieces from the lowest up; one unless it is lapped
 * @param fixed  where it is fixed, in the middle of its width; in the frame the plane's panels are placed in, metres
 * @param below  from there to the lowest place of the finished metal; 0 or more
 * @param above  from there to the highest; 0 or more
 * @param ends   where it ends on an edge of the roof, piece by piece, as each ring runs
 */
public record HeldPanel(int plane, List<Panel> pieces, Point2 fixed, Length below, Length above, List<FreeEnd> ends) {

    public HeldPanel {
        pieces = List.copyOf(pieces);
        ends = List.copyOf(ends);
    }

    /**
     * An end that moves.
     *
     * @param edge  index in the roof's edges of what it ends on
     * @param lower whether it is a lower end
     * @param free  from the fixed place to its furthest place, along the slope; 0 or more
     * @param mitre φ, from the level line to the end, in [0°, 90°); square to the end the panel moves by its growth · cos φ
     */
    public record FreeEnd(int edge, boolean lower, Length free, Angle mitre) {}

    /** The mark of its lowest piece. */
    public String mark() {
        return pieces.get(0).mark();
    }

    /** From end to end along the slope. */
    public Length length() {
        return Length.metres(below.metres() + above.metres());
    }

    /** The longest part of it that moves one way. */
    public Length free() {
        return below.compareTo(above) >= 0 ? below : above;
    }
}
