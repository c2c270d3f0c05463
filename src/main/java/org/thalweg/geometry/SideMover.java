package org.thalweg.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;

/**
 * Moves the sides of a shape, each by its own distance, square to itself, corners mitred: how a set-back shortens a
 * panel and a hem lengthens it. A side that moves further at one end than at the other turns a little, as the panels do
 * along a valley that lies open wider toward the eave.
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
 *
 * <p>Known limit: where a side too short for its mitre vanishes beside a re-entrant corner, the side that outlives it ends
 * square at its old end and is not drawn out to the next one.
 */
public final class SideMover {

    /** Sides that turn by less than a degree are in line: their mitre would lie 57 times the distance away. */
    private static final double IN_LINE = Math.sin(Math.toRadians(1));

    private SideMover() {}

    /** How far sides move towards the metal, measured square to the side as it was; below 0 away from it. Metres. */
    public interface Inward {

        /** At the corner a side starts from. */
        double atStart(Ring ring, int side);

        /** At the corner it runs to; in between in proportion. */
        double atEnd(Ring ring, int side);
    }

    /** Sides that move alike at both ends, by their tag. */
    private record Parallel(IntToDoubleFunction byTag) implements Inward {

        @Override
        public double atStart(Ring ring, int side) {
            return byTag.applyAsDouble(ring.tag(side));
        }

        @Override
        public double atEnd(Ring ring, int side) {
            return byTag.applyAsDouble(ring.tag(side));
        }
    }

    /**
     * Moves every side parallel to itself.
     *
     * @param shape     what to change
     * @param inward    for a side's tag, how far the side moves towards the metal; below 0 away from it; metres
     * @param tolerance tells a hair
     * @return as the other {@code move}
     */
    public static List<Region> move(Region shape, IntToDoubleFunction inward, Tolerance tolerance) {
        return move(shape, new Parallel(inward), tolerance);
    }

    /**
     * @param shape     what to change
     * @param inward    how far each side moves at either end
     * @param tolerance tells a hair
     * @return what is left, in no, one or several pieces, the largest first; sides keep their tags, a step has the tag of
     *     the side that moves further inward
     */
    public static List<Region> move(Region shape, Inward inward, Tolerance tolerance) {
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
        return after.openings().isEmpty() && convex(before.outer()) && convex(after.outer())
                || SidesApart.in(after) && openingsInside(after);
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

    private static boolean still(Ring ring, Inward inward) {
        for (int i = 0; i < ring.size(); i++) {
            if (inward.atStart(ring, i) != 0 || inward.atEnd(ring, i) != 0) {
                return false;
            }
        }
        return true;
    }

    private static Region moved(Region shape, Inward inward, boolean throughCorners, Tolerance tolerance) {
        List<Ring> openings = new ArrayList<>(shape.openings().size());
        for (Ring opening : shape.openings()) {
            openings.add(moved(opening, inward, throughCorners, tolerance));
        }
        return new Region(moved(shape.outer(), inward, throughCorners, tolerance), openings);
    }

    /**
     * Moves a ring's sides.
     *
     * @param throughCorners where both sides shorten as they move towards the metal, or away from it round a re-entrant
     *     corner, go from the one's end through the old corner to the other's start.
     *     A side too short for its mitres then winds backwards by as much as is gone and no further.
     */
    private static Ring moved(Ring ring, Inward inward, boolean throughCorners, Tolerance tolerance) {
        int n = ring.size();
        RingBuilder moved = new RingBuilder();
        MovedSide into = new MovedSide(ring, n - 1, inward);
        for (int i = 0; i < n; i++) {
            int before = i == 0 ? n - 1 : i - 1;
            MovedSide out = new MovedSide(ring, i, inward);
            double corner = into.sideX * out.sideY - into.sideY * out.sideX;
            double turn = into.x * out.y - into.y * out.x;
            boolean inLine = Math.abs(corner) <= IN_LINE;
            boolean alike = tolerance.same(into.atEnd, out.atStart);
            double x = ring.across(i);
            double y = ring.up(i);
            if (Math.abs(turn) > IN_LINE && (alike || !inLine)) {
                double intoBy = into.offEnd();
                double outBy = out.offStart();
                double stepX = (intoBy * out.x - outBy * into.x) / turn;
                double stepY = (intoBy * out.y - outBy * into.y) / turn;
                if (throughCorners && into.endsPast(stepX, stepY, turn) && out.startsPast(stepX, stepY, turn)) {
                    moved.add(x - into.sideY * into.atEnd, y + into.sideX * into.atEnd, ring.tag(before));
                    moved.add(x, y, ring.tag(i));
                    moved.add(x - out.sideY * out.atStart, y + out.sideX * out.atStart, ring.tag(i));
                } else {
                    moved.add(x + stepX, y + stepY, ring.tag(i));
                }
            } else if (alike && inLine) {
                // Square to the middle of the two directions: needs no angle to speak of between them.
                double both = 1 + into.sideX * out.sideX + into.sideY * out.sideY;
                double by = out.atStart;
                moved.add(
                        x - (into.sideY + out.sideY) * by / both,
                        y + (into.sideX + out.sideX) * by / both,
                        ring.tag(i));
            } else {
                int step = ring.tag(into.atEnd > out.atStart ? before : i);
                moved.add(x - into.sideY * into.atEnd, y + into.sideX * into.atEnd, step);
                moved.add(x - out.sideY * out.atStart, y + out.sideX * out.atStart, ring.tag(i));
            }
            into = out;
        }
        return moved.closed();
    }

    /** A side, and the line it is moved onto. */
    private static final class MovedSide {

        /** Direction of the side as it was, one long. */
        final double sideX;

        final double sideY;

        /** Direction of the moved line, one long. */
        final double x;

        final double y;

        /** How far its ends move, square to the side as it was. */
        final double atStart;

        final double atEnd;

        /** Of the angle between the two, which turns to the left where the side moves further at its end. */
        final double cos;

        final double sin;

        MovedSide(Ring ring, int side, Inward inward) {
            int next = ring.next(side);
            double dx = ring.across(next) - ring.across(side);
            double dy = ring.up(next) - ring.up(side);
            double length = Math.sqrt(dx * dx + dy * dy);
            sideX = dx / length;
            sideY = dy / length;
            atStart = inward.atStart(ring, side);
            atEnd = inward.atEnd(ring, side);
            double more = atEnd - atStart;
            if (more == 0) {
                cos = 1;
                sin = 0;
                x = sideX;
                y = sideY;
            } else {
                double movedLength = Math.sqrt(length * length + more * more);
                cos = length / movedLength;
                sin = more / movedLength;
                x = sideX * cos - sideY * sin;
                y = sideY * cos + sideX * sin;
            }
        }

        /** How far the moved line lies from the corner the side starts from, square to itself. */
        double offStart() {
            return atStart * cos;
        }

        double offEnd() {
            return atEnd * cos;
        }

        /**
         * Whether the moved side goes past a mitre that lies this far from the corner, towards metal that is gone. A side
         * that moves out at a corner that turns in, or the other way round, may go past it too, but on metal that is there.
         */
        boolean endsPast(double stepX, double stepY, double turn) {
            return stepX * x + stepY * y - atEnd * sin < 0 && atEnd * turn >= 0;
        }

        boolean startsPast(double stepX, double stepY, double turn) {
            return stepX * x + stepY * y - atStart * sin > 0 && atStart * turn >= 0;
        }
    }

    private static double cross(Ring ring, int i, int j, int k) {
        return (ring.across(j) - ring.across(i)) * (ring.up(k) - ring.up(j))
                - (ring.up(j) - ring.up(i)) * (ring.across(k) - ring.across(j));
    }
}
