package org.thalweg.fastening;

import java.util.Arrays;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Region;
import org.thalweg.geometry.Ring;
import org.thalweg.geometry.Tolerance;

/**
 * The line fasteners stand on, while everything they must keep clear of is taken out of it. Kept and laid anew for every
 * row of a roof, for there are hundreds.
 *
 * <pre>
 *          rib |                 | rib          the row's own side is the panel's end; the line lies an inset
 *              |                 |              inside it, ends where the metal ends, and its fasteners keep
 *      line    |- -o---o---o---o-|- -           clear of the ribs and of every other side
 *              |        ____-----
 *              |___-----   own side
 * </pre>
 */
final class RowLine {

    private final Stretches left;
    private final double hair;
    private double[] crossings = new double[8];

    private double across;
    private double up;
    private double dirAcross;
    private double dirUp;

    RowLine(Tolerance tolerance) {
        hair = tolerance.hair();
        left = new Stretches(hair);
    }

    /**
     * Lays the line {@code inset} to the left of the way from one place to another; places on it count from the first. Metres.
     *
     * @return how far apart the two are
     */
    double lay(double fromAcross, double fromUp, double toAcross, double toUp, double inset) {
        double acrossBy = toAcross - fromAcross;
        double upBy = toUp - fromUp;
        double length = Math.sqrt(acrossBy * acrossBy + upBy * upBy);
        dirAcross = acrossBy / length;
        dirUp = upBy / length;
        across = fromAcross - inset * dirUp;
        up = fromUp + inset * dirAcross;
        return length;
    }

    /** Forgets what was taken out. */
    void whole(double from, double to) {
        left.start(from, to);
    }

    Stretches left() {
        return left;
    }

    Point2 at(double along) {
        return new Point2(across + along * dirAcross, up + along * dirUp);
    }

    double along(double toAcross, double toUp) {
        return (toAcross - across) * dirAcross + (toUp - up) * dirUp;
    }

    /** How far a place lies to the left of the line; below 0 to the right. */
    double off(double toAcross, double toUp) {
        return (toUp - up) * dirAcross - (toAcross - across) * dirUp;
    }

    /** Whether the line runs to the right, or straight up. */
    boolean rightward() {
        return dirAcross > 0 || (dirAcross == 0 && dirUp > 0);
    }

    /** Takes out what lies outside a shape that is moved so far. */
    void inside(Region shape, double acrossBy, double upBy) {
        int count = cross(shape.outer(), acrossBy, upBy, 0);
        for (Ring opening : shape.openings()) {
            count = cross(opening, acrossBy, upBy, count);
        }
        if (count == 2) {
            left.keep(Math.min(crossings[0], crossings[1]), Math.max(crossings[0], crossings[1]));
        } else {
            Arrays.sort(crossings, 0, count);
            left.keep(crossings, count);
        }
    }

    /** Takes out what lies inside a convex ring. */
    void outside(Ring ring) {
        if (cross(ring, 0, 0, 0) == 2) {
            left.drop(Math.min(crossings[0], crossings[1]), Math.max(crossings[0], crossings[1]));
        }
    }

    private int cross(Ring ring, double acrossBy, double upBy, int found) {
        int count = found;
        int last = ring.size() - 1;
        double along = along(ring.across(last) + acrossBy, ring.up(last) + upBy);
        double off = off(ring.across(last) + acrossBy, ring.up(last) + upBy);
        for (int i = 0; i <= last; i++) {
            double nextAlong = along(ring.across(i) + acrossBy, ring.up(i) + upBy);
            double nextOff = off(ring.across(i) + acrossBy, ring.up(i) + upBy);
            if (off > 0 != nextOff > 0) {
                if (count == crossings.length) {
                    crossings = Arrays.copyOf(crossings, 2 * count);
                }
                crossings[count++] = along + (nextAlong - along) * off / (off - nextOff);
            }
            along = nextAlong;
            off = nextOff;
        }
        return count;
    }

    /** Takes out what does not lie between two ribs, at these places across. */
    void between(double leftRib, double rightRib) {
        if (dirAcross == 0) {
            if (across < leftRib || across > rightRib) {
                left.start(0, 0);
            }
            return;
        }
        double one = (leftRib - across) / dirAcross;
        double other = (rightRib - across) / dirAcross;
        left.keep(Math.min(one, other), Math.max(one, other));
    }

    /** Takes out what lies nearer than {@code distance} to a side; nearer by less than a hair is as far as that. */
    void clearOf(double fromAcross, double fromUp, double toAcross, double toUp, double distance) {
        double offFrom = off(fromAcross, fromUp);
        double offTo = off(toAcross, toUp);
        if (Math.min(offFrom, offTo) >= distance - hair || Math.max(offFrom, offTo) <= hair - distance) {
            return;
        }
        double from = along(fromAcross, fromUp);
        double to = along(toAcross, toUp);
        // Near one end, near the other, or beside it: together one stretch, for near a straight side is a convex place.
        double start = Math.min(from - reach(offFrom, distance), to - reach(offTo, distance));
        double end = Math.max(from + reach(offFrom, distance), to + reach(offTo, distance));
        double length = Math.sqrt((to - from) * (to - from) + (offTo - offFrom) * (offTo - offFrom));
        double cos = (to - from) / length;
        double sin = (offTo - offFrom) / length;
        for (int edge = -1; edge <= 1; edge += 2) {
            // Where the side moved by the distance to either hand meets the line, if it does within its length.
            double movedOff = offFrom + edge * distance * cos;
            double share = -movedOff / sin / length;
            if (share >= 0 && share <= 1) {
                double met = from - edge * distance * sin + share * (to - from);
                start = Math.min(start, met);
                end = Math.max(end, met);
            }
        }
        if (end > start) {
            left.drop(start, end);
        }
    }

    /** Half of what a circle about a place off the line covers of it; less than nothing where it does not reach. */
    private static double reach(double off, double distance) {
        double square = distance * distance - off * off;
        return square > 0 ? Math.sqrt(square) : Double.NEGATIVE_INFINITY;
    }
}
