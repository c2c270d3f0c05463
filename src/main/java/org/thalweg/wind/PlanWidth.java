package org.thalweg.wind;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Ring;
import org.thalweg.roof.Plane;
import org.thalweg.roof.Roof;
import org.thalweg.units.Length;

/**
 * How narrow a roof is, seen from above. The narrowest pair of parallel lines that holds it has one of them along a side of its
 * convex hull [geometry], so only those directions are tried.
 */
final class PlanWidth {

    private PlanWidth() {}

    static Length least(Roof roof) {
        List<Point3> hull = hull(corners(roof));
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < hull.size(); i++) {
            Point3 a = hull.get(i);
            Point3 b = hull.get((i + 1) % hull.size());
            double side = Math.hypot(b.x() - a.x(), b.y() - a.y());
            // Two planes tell the same corner a rounding apart: no side lies between the two.
            if (side > roof.tolerance().metres()) {
                least = Math.min(least, across(hull, a, b, side));
            }
        }
        return Length.metres(least);
    }

    /** From the line through two corners of the hull to the furthest corner. */
    private static double across(List<Point3> hull, Point3 a, Point3 b, double side) {
        return hull.stream().mapToDouble(c -> turn(a, b, c) / side).max().orElse(0);
    }

    private static List<Point3> corners(Roof roof) {
        List<Point3> corners = new ArrayList<>();
        for (Plane plane : roof.planes()) {
            Ring ring = plane.shape().outer();
            for (int i = 0; i < ring.size(); i++) {
                corners.add(plane.frame().inWorld(ring.corner(i)));
            }
        }
        corners.sort(Comparator.comparingDouble(Point3::x).thenComparingDouble(Point3::y));
        return corners;
    }

    /** Counter-clockwise, each corner once: the lower side from left to right, then the upper one back. */
    private static List<Point3> hull(List<Point3> sorted) {
        List<Point3> hull = new ArrayList<>();
        addSide(sorted, hull);
        List<Point3> back = new ArrayList<>(sorted);
        Collections.reverse(back);
        addSide(back, hull);
        return hull;
    }

    private static void addSide(List<Point3> walked, List<Point3> hull) {
        int first = hull.size();
        for (Point3 corner : walked) {
            while (hull.size() >= first + 2
                    && turn(hull.get(hull.size() - 2), hull.get(hull.size() - 1), corner) <= 0) {
                hull.remove(hull.size() - 1);
            }
            hull.add(corner);
        }
        hull.remove(hull.size() - 1);
    }

    /** Twice the area of a triangle seen from above; above 0 if it turns left. */
    private static double turn(Point3 a, Point3 b, Point3 c) {
        return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
    }
}
