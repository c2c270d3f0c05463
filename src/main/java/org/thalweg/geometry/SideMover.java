package org.thalweg.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;

/**
 * Moves the sides of a shape, each by its own distance, square to itself, corners mitred: how a set-back shortens a
 * panel and a hem lengthens it.
 *
 * <pre>
 *      ______            Where two sides meet nearly in line and move differently there is no mitre
 *     /      \  moved    to speak of; the corner becomes a step.
 *    /  .--.  \
 *   /__/____\__\
 * </pre>
 *
 * <p>Most shapes only change their corners. Where sides vanish or parts fall off or grow together, the moved lines are
 * noded and every face they wind round at least once, counter-clockwise, is kept; see {@link WoundFaces}.
 */
public final class SideMover {

    /** Sides that turn by less than a degree are in line: their mitre would lie 57 times the distance away. */
    private static final double IN_LINE = Math.sin(Math.toRadians(1));

    private SideMover() {}

    /**
     * @param shape     what to change
     * @param inward    for a side's tag, how far the side moves towards the metal; below 0 away from it; metres
     * @param tolerance tells a hair
     * @return what is left, in no, one or several pieces, the largest first; sides keep their tags, a step has the tag of
     *     the side that moves further inward
     */
    public static List<Region> move(Region shape, IntToDoubleFunction inward, Tolerance tolerance) {
        if (still(shape.outer(), inward) && shape.openings().stream().allMatch(o -> still(o, inward))) {
            return List.of(shape);
        }
        Region mitred = moved(shape, inward, false, tolerance);
        return goodAsItWas(shape, mitred)
                ? List.of(mitred)
                : WoundFaces.of(moved(shape, inward, true, tolerance), tolerance);
    }

    /** Every side still runs its way and none meets another: nothing has vanished, fallen off or grown together. */
    private static boolean goodAsItWas(Region before, Region after) {
        if (!sameWay(before.outer(), after.outer())) {
            return false;
        }
        for (int i = 0; i < before.openings().size(); i++) {
            if (!sameWay(before.openings().get(i), after.openings().get(i))) {
                return false;
            }
        }
        return after.openings().isEmpty() && convex(after.outer()) || SidesApart.in(after) && openingsInside(after);
    }

    /** Every opening still lies in the metal, and none in another: sides far apart may have passed each other whole. */
    private static boolean openingsInside(Region after) {
        for (int i = 0; i < after.openings().size(); i++) {
            Ring opening = after.openings().get(i);
            if (!after.outer().encloses(opening)) {
                return false;
            }
            for (int j = 0; j < after.openings().size(); j++) {
                if (i != j && after.openings().get(j).encloses(opening)) {
                    return false;
                }
            }
        }
        return true;
    }

    private static boolean sameWay(Ring before, Ring after) {
        if (after.size() != before.size()) {
            return false;
        }
        for (int i = 0; i < before.size(); i++) {
            int j = before.next(i);
            double dot = (before.across(j) - before.across(i)) * (after.across(j) - after.across(i))
                    + (before.up(j) - before.up(i)) * (after.up(j) - after.up(i));
            if (dot <= 0) {
                return false;
            }
        }
        return true;
    }

    private static boolean convex(Ring ring) {
        for (int i = 0; i < ring.size(); i++) {
            int j = ring.next(i);
            if (cross(ring, i, j, ring.next(j)) < 0) {
                return false;
            }
        }
        return true;
    }

    private static boolean still(Ring ring, IntToDoubleFunction inward) {
        for (int i = 0; i < ring.size(); i++) {
            if (inward.applyAsDouble(ring.tag(i)) != 0) {
                return false;
            }
        }
        return true;
    }

    private static Region moved(Region shape, IntToDoubleFunction inward, boolean throughCorners, Tolerance tolerance) {
        List<Ring> openings = new ArrayList<>(shape.openings().size());
        for (Ring opening : shape.openings()) {
            openings.add(moved(opening, inward, throughCorners, tolerance));
        }
        return new Region(moved(shape.outer(), inward, throughCorners, tolerance), openings);
    }

    /**
     * Moves a ring's sides.
     *
     * @param throughCorners where both sides shorten, go from the one's end through the old corner to the other's start.
     *     A side too short for its mitres then winds backwards by as much as is gone and no further.
     */
    private static Ring moved(Ring ring, IntToDoubleFunction inward, boolean throughCorners, Tolerance tolerance) {
        int n = ring.size();
        RingBuilder moved = new RingBuilder();
        int before = n - 1;
        double[] into = direction(ring, before);
        double intoBy = inward.applyAsDouble(ring.tag(before));
        for (int i = 0; i < n; i++) {
            double[] out = direction(ring, i);
            double outBy = inward.applyAsDouble(ring.tag(i));
            double turn = into[0] * out[1] - into[1] * out[0];
            double x = ring.across(i);
            double y = ring.up(i);
            double stepX = (intoBy * out[0] - outBy * into[0]) / turn;
            double stepY = (intoBy * out[1] - outBy * into[1]) / turn;
            boolean shortens = stepX * into[0] + stepY * into[1] < 0 && stepX * out[0] + stepY * out[1] > 0;
            if (Math.abs(turn) > IN_LINE && throughCorners && shortens) {
                moved.add(x - into[1] * intoBy, y + into[0] * intoBy, ring.tag(i));
                moved.add(x, y, ring.tag(i));
                moved.add(x - out[1] * outBy, y + out[0] * outBy, ring.tag(i));
            } else if (Math.abs(turn) > IN_LINE) {
                moved.add(x + stepX, y + stepY, ring.tag(i));
            } else if (tolerance.same(intoBy, outBy)) {
                // Square to the middle of the two directions: needs no angle to speak of between them.
                double both = 1 + into[0] * out[0] + into[1] * out[1];
                moved.add(x - (into[1] + out[1]) * outBy / both, y + (into[0] + out[0]) * outBy / both, ring.tag(i));
            } else {
                int step = ring.tag(intoBy > outBy ? (i == 0 ? n - 1 : i - 1) : i);
                moved.add(x - into[1] * intoBy, y + into[0] * intoBy, step);
                moved.add(x - out[1] * outBy, y + out[0] * outBy, ring.tag(i));
            }
            into = out;
            intoBy = outBy;
        }
        return moved.closed();
    }

    private static double[] direction(Ring ring, int side) {
        int next = ring.next(side);
        double dx = ring.across(next) - ring.across(side);
        double dy = ring.up(next) - ring.up(side);
        double length = Math.sqrt(dx * dx + dy * dy);
        return new double[] {dx / length, dy / length};
    }

    private static double cross(Ring ring, int i, int j, int k) {
        return (ring.across(j) - ring.across(i)) * (ring.up(k) - ring.up(j))
                - (ring.up(j) - ring.up(i)) * (ring.across(k) - ring.across(j));
    }
}
