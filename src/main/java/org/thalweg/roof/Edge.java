package org.thalweg.roof;

import java.util.List;
import org.thalweg.finding.Origin;
import org.thalweg.geometry.Point3;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;

/**
 * One edge of a roof.
 *
 * @param id     its name: the kind's letter and a number, in the order of the planes and their corners
 * @param kind   what the trade calls it
 * @param sides  the one or two (or, crowded, more) planes that carry it, in the order of the planes
 * @param from   where the first plane's ring starts it; world, metres
 * @param to     where it ends
 * @param length true length
 * @param slope  angle from level, in [0°, 90°]
 * @param bend   δ, angle between the two planes' outward normals, the bend to brake into a flashing; 0° is flat, 0° for
 *               an edge of one plane
 * @param convex whether its two planes turn away from each other: so on a ridge or hip, not in a valley; tells the two
 *               kinds of pitch break. False for an edge of one plane
 * @param at     where in the request the side of the first plane starts
 */
public record Edge(
        String id,
        EdgeKind kind,
        List<EdgeSide> sides,
        Point3 from,
        Point3 to,
        Length length,
        Angle slope,
        Angle bend,
        boolean convex,
        Origin at) {

    public Edge {
        sides = List.copyOf(sides);
    }

    /** Whether two planes meet here. */
    public boolean shared() {
        return sides.size() > 1;
    }

    /**
     * An edge as one of its planes sees it.
     *
     * @param plane index in {@link Roof#planes}
     * @param mitre φ, the angle in the plane from the level line to the edge, in [0°, 90°]; the cut across a panel of
     *              cover w rises w · tan φ
     */
    public record EdgeSide(int plane, Angle mitre) {}
}
