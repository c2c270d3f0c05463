package org.thalweg.roof;

import org.thalweg.units.Angle;
import org.thalweg.units.Pitch;

/**
 * One plane as it is drawn in a plan, before anything is checked.
 *
 * @param drawn as seen from above; every z is 0
 * @param pitch how steep it is
 * @param fall  which way water runs on it
 */
public record PlanPlane(PlaneOutline drawn, Pitch pitch, Fall fall) {

    /** Which way water runs on a plane. */
    public sealed interface Fall {}

    /**
     * Square to a side of the outline, and out over it: the plane rises from there inward.
     *
     * @param corner which corner of the caller's outline is one end of the side
     * @param other  and which the other
     */
    public record ToEave(int corner, int other) implements Fall {}

    /** @param direction counter-clockwise from +x */
    public record Toward(Angle direction) implements Fall {}

    /** Nowhere: the plane is level. */
    public record Nowhere() implements Fall {}
}
