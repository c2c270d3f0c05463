package org.thalweg.panel;

import java.util.OptionalDouble;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Side;
import org.thalweg.geometry.Tolerance;

/**
 * One straight cut of a panel, as marked on the flat blank; panel frame.
 *
 * @param end  which end or side of the metal it makes
 * @param edge index in the roof's edges of the edge it is for, or {@link Side#LAP}
 * @param from its left end, or for a rip its lower end
 * @param to   its right end, or for a rip its upper end
 */
public record Cut(End end, int edge, Point2 from, Point2 to) {

    /** Which end or side of the metal a cut makes. */
    public enum End {
        LOWER,
        UPPER,
        LEFT,
        RIGHT
    }

    /** Where it crosses the left rib, measured along from the lower square end; empty when it stops short of the rib. */
    public OptionalDouble left(Tolerance tolerance) {
        return tolerance.same(from.across(), 0) ? OptionalDouble.of(from.up()) : OptionalDouble.empty();
    }

    /** Where it crosses the right rib, which is {@code cover} away; empty when it stops short of the rib. */
    public OptionalDouble right(double cover, Tolerance tolerance) {
        return tolerance.same(to.across(), cover) ? OptionalDouble.of(to.up()) : OptionalDouble.empty();
    }

    /** Whether it runs from rib to rib; a rip does not. */
    public boolean across() {
        return end == End.LOWER || end == End.UPPER;
    }

    /** How long it is, from its one end to the other; metres. */
    public double length() {
        return from.distance(to);
    }

    /** How far one end lies further up than the other; 0 for a square cut. Metres. */
    public double rise() {
        return Math.abs(to.up() - from.up());
    }

    /** Angle from square, in [0°, 90°]; 90° for a rip. Radians. */
    public double mitre() {
        return Math.atan2(rise(), Math.abs(to.across() - from.across()));
    }

    /**
     * How far along a rib the fold of a hem or turn-up lies from this cut. A crew notches the hem at the ribs from the one to
     * the other, so that it can be folded between them. [geometry: extra / cos φ]
     *
     * @param extra how far the metal reaches beyond the fold, square to it; 0 or more, metres
     * @return metres, up the rib from a lower cut, down it from an upper one; no figure for a rip, which crosses no rib
     */
    public double notch(double extra) {
        return extra / Math.cos(mitre());
    }
}
