package org.thalweg.footprint;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import org.thalweg.footprint.NoRoof.Reason;
import org.thalweg.footprint.WallPlan.Wall;

/** Whether walls are a plan: rings that neither cross nor touch, courtyards inside the outline and beside each other. Exact. */
final class PlanChecks {

    private PlanChecks() {}

    static boolean turnsLeft(List<Wall> ring) {
        BigInteger twice = BigInteger.ZERO;
        Wall first = ring.get(0);
        for (int i = 1; i + 1 < ring.size(); i++) {
            twice = twice.add(BigInteger.valueOf(turn(first, ring.get(i), ring.get(i + 1))));
        }
        return twice.signum() > 0;
    }

    /** Above 0 if c lies to the left of the line from a to b. */
    static long turn(Wall a, Wall b, Wall c) {
        return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
    }

    static void check(List<List<Wall>> rings) {
        List<Wall[]> sides = new ArrayList<>();
        for (List<Wall> ring : rings) {
            for (int i = 0; i < ring.size(); i++) {
                sides.add(new Wall[] {ring.get(i), ring.get((i + 1) % ring.size())});
            }
        }
        for (int i = 0; i < sides.size(); i++) {
            for (int k = i + 1; k < sides.size(); k++) {
                if (cross(sides.get(i), sides.get(k))) {
                    int side = sides.get(i)[0].sides().get(0);
                    int other = sides.get(k)[0].sides().get(0);
                    throw NoRoof.because(
                                    Reason.RINGS_CROSS,
                                    side,
                                    "{side} and {other} cross or touch. Maybe two corners are in the wrong order, or one is"
                                            + " given twice; parts of a house that touch at a corner only are two roofs.")
                            .with(other)
                            .stop();
                }
            }
        }
        for (int i = 1; i < rings.size(); i++) {
            Wall corner = rings.get(i).get(0);
            for (int k = 0; k < rings.size(); k++) {
                if (k != i && inside(rings.get(k), corner) != (k == 0)) {
                    int side = corner.sides().get(0);
                    throw NoRoof.because(
                                    Reason.COURTYARD_OUTSIDE,
                                    side,
                                    "This courtyard is outside of the outline, or in another courtyard. Move it, or ask for"
                                            + " the building in the yard as a roof of its own.")
                            .stop();
                }
            }
        }
    }

    private static boolean cross(Wall[] one, Wall[] other) {
        if (Math.max(one[0].x(), one[1].x()) < Math.min(other[0].x(), other[1].x())
                || Math.max(other[0].x(), other[1].x()) < Math.min(one[0].x(), one[1].x())
                || Math.max(one[0].y(), one[1].y()) < Math.min(other[0].y(), other[1].y())
                || Math.max(other[0].y(), other[1].y()) < Math.min(one[0].y(), one[1].y())) {
            return false;
        }
        boolean forward = one[1].equals(other[0]);
        if (forward || one[0].equals(other[1])) {
            // Neighbours share a corner; they touch elsewhere only if they run back on each other.
            Wall from = forward ? one[0] : other[0];
            Wall shared = forward ? one[1] : other[1];
            Wall to = forward ? other[1] : one[1];
            long ahead =
                    (shared.x() - from.x()) * (to.x() - shared.x()) + (shared.y() - from.y()) * (to.y() - shared.y());
            return turn(from, shared, to) == 0 && ahead < 0;
        }
        return Long.signum(turn(one[0], one[1], other[0])) * Long.signum(turn(one[0], one[1], other[1])) <= 0
                && Long.signum(turn(other[0], other[1], one[0])) * Long.signum(turn(other[0], other[1], one[1])) <= 0;
    }

    private static boolean inside(List<Wall> ring, Wall place) {
        boolean inside = false;
        for (int i = 0; i < ring.size(); i++) {
            Wall a = ring.get(i);
            Wall b = ring.get((i + 1) % ring.size());
            if (a.y() > place.y() != b.y() > place.y() && turn(a, b, place) > 0 == b.y() > a.y()) {
                inside = !inside;
            }
        }
        return inside;
    }
}
