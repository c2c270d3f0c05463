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
        double[] x = hull.stream().mapToDouble(Point3::x).toArray();
        double[] y = hull.stream().mapToDouble(Point3::y).toArray();
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < x.length; i++) {
            int next = (i + 1) % x.length;
            double side = Math.hypot(x[next] - x[i], y[next] - y[i]);
            // Two planes tell the same corner a rounding apart: no side lies between the two.
            if (side > roof.tolerance().metres()) {
                least = Math.min(least, across(x, y, i, next) / side);
            }
        }
        return Length.metres(least);
    }

    /** From the line through two corners of the hull to the furthest corner, times how far the two are apart. */
    private static double across(double[] x, double[] y, int from, int to) {
        double onX = x[to] - x[from];
        double onY = y[to] - y[from];
        double furthest = 0;
        for (int i = 0; i < x.length; i++) {
            furthest = Math.max(furthest, onX * (y[i] - y[from]) - onY * (x[i] - x[from]));
        }
        return furthest;
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
