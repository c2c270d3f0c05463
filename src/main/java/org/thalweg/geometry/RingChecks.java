package org.thalweg.geometry;

import java.util.List;

/**
 * Whether a shape is one that can be cut from metal: no side crosses or runs along another, every opening lies inside
 * and apart from the others.
 *
 * <p>Rings may touch themselves and each other in single points: a skylight may stand with a corner on the ridge, an
 * outline may pinch. A touch is a corner within a {@link Tolerance#hair} of a side or of another corner, from which the
 * ring goes back to the side it came from.
 *
 * <p>A shape of n sides takes about n log n steps, whatever it looks like.
 */
public final class RingChecks {

    /** What is wrong with a ring. */
    public enum Fault {
        /** Two sides cross. */
        CROSSES,
        /** Two sides run along each other, or one turns back on itself. */
        RUNS_ALONG,
        /** A corner of an opening lies outside the outer ring. */
        OUTSIDE,
        /** An opening lies in another. */
        WITHIN
    }

    /**
     * One reason why a shape can't be cut.
     *
     * @param fault     what is wrong
     * @param ring      the ring to put right: 0 the outer ring, 1 … the openings
     * @param side      its side, or the corner that side starts at
     * @param otherRing the ring it is at odds with, the same one or an earlier one
     * @param otherSide that ring's side, smaller than {@code side} if the ring is the same; 0 for OUTSIDE and WITHIN
     */
    public record Conflict(Fault fault, int ring, int side, int otherRing, int otherSide) {}

    private RingChecks() {}

    /** Shapes of more sides are swept; fewer are compared side by side, which is quicker and finds more conflicts. */
    private static final int FEW = 64;

    /**
     * What is wrong with a shape, in the order of the rings. A shape of few sides gives at most one conflict a ring, and
     * rings that are at odds with themselves come alone, for nothing else can be said of them. Of a shape of many sides
     * only one crossing is named.
     *
     * @param shape rings of at least three corners; may run either way round
     */
    public static List<Conflict> of(Region shape, Tolerance tolerance) {
        if (shape.openings().isEmpty() && bulges(shape.outer(), tolerance.hair())) {
            return List.of();
        }
        Sides sides = new Sides(shape, tolerance.hair());
        List<Conflict> conflicts = sides.x.length > FEW ? new SideSweep(sides).first() : compared(sides);
        return conflicts.isEmpty() ? sides.strays() : conflicts;
    }

    private static List<Conflict> compared(Sides sides) {
        List<Conflict> conflicts = sides.conflicts(true);
        return conflicts.isEmpty() && sides.rings.length > 1 ? sides.conflicts(false) : conflicts;
    }

    /** Whether a triangle or quadrilateral turns left at every corner: then it is simple, and most roof planes are. */
    private static boolean bulges(Ring ring, double hair) {
        int size = ring.size();
        if (size > 4) {
            return false;
        }
        for (int i = 0; i < size; i++) {
            int j = ring.next(i);
            int k = ring.next(j);
            double x = ring.across(j) - ring.across(i);
            double y = ring.up(j) - ring.up(i);
            double turn = x * (ring.up(k) - ring.up(i)) - y * (ring.across(k) - ring.across(i));
            if (turn <= hair * (Math.abs(x) + Math.abs(y))) {
                return false;
            }
        }
        return true;
    }
}
