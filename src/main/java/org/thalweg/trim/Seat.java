package org.thalweg.trim;

import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Vector3;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;

/**
 * How a trim sits at its edge. The three directions are one long and square to each other.
 *
 * @param start    the corner the edge starts at: on the left seen from its first plane looking up the slope, or the lower one;
 *                 world, metres
 * @param finish   the corner it ends at
 * @param along    from the one to the other
 * @param across   square to it in the first plane, away from that plane
 * @param up       square to both, off the first plane outward
 * @param bend     how far the trim bends there; above 0 up, as to a wall, below 0 down, as over a ridge or to a fascia
 * @param level    whether it runs from left to right rather than up
 * @param mirrored whether {@code across} points to the left of {@code along} and not to the right: so on the left rake
 */
public record Seat(
        Point3 start,
        Point3 finish,
        Vector3 along,
        Vector3 across,
        Vector3 up,
        Angle bend,
        boolean level,
        boolean mirrored) {

    public Length length() {
        return Length.metres(start.distance(finish));
    }

    /** A place of the trim in the world: on a line of its section, so far past the corner it starts at along the edge. */
    public Point3 inWorld(Point2 line, Length fromStart) {
        return start.plus(across.times(line.across())).plus(up.times(line.up())).plus(along.times(fromStart.metres()));
    }

    /** The way off the face the leg beyond the edge's bend lies in. */
    Vector3 upBeyond() {
        return across.times(-bend.sin()).plus(up.times(bend.cos()));
    }
}
