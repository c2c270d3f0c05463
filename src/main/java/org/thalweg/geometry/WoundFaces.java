package org.thalweg.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.polygonize.Polygonizer;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/**
 * Makes shapes of rings that may cross themselves and each other: the faces they wind round at least once,
 * counter-clockwise. Where moved sides have passed each other the ring winds backwards, and that face is dropped.
 */
final class WoundFaces {

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private WoundFaces() {}

    /** The faces of {@code rings}, the largest first, each side with the tag of the ring's side it lies on. */
    static List<Region> of(Region rings, Tolerance tolerance) {
        List<Ring> all = new ArrayList<>();
        all.add(rings.outer());
        all.addAll(rings.openings());
        all.removeIf(ring -> ring.size() < 3);
        if (all.isEmpty()) {
            return List.of();
        }
        List<LineString> closed = all.stream().map(WoundFaces::line).toList();
        Polygonizer polygonizer = new Polygonizer();
        polygonizer.add(UnaryUnionOp.union(closed));
        List<Geometry> kept = new ArrayList<>();
        for (Object face : polygonizer.getPolygons()) {
            Polygon polygon = (Polygon) face;
            Coordinate inside = polygon.getInteriorPoint().getCoordinate();
            if (all.stream().mapToInt(ring -> winding(ring, inside)).sum() > 0) {
                kept.add(polygon);
            }
        }
        Geometry union = OverlayNGRobust.union(kept);
        STRtree sides = sides(all);
        List<Region> regions = new ArrayList<>();
        for (int i = 0; union != null && i < union.getNumGeometries(); i++) {
            if (union.getGeometryN(i) instanceof Polygon polygon && polygon.getArea() > 0) {
                regions.add(region(polygon, sides, tolerance));
            }
        }
        regions.sort(Comparator.comparingDouble(Region::area)
                .reversed()
                .thenComparingDouble(region -> region.outer().leastAcross())
                .thenComparingDouble(region -> region.outer().leastUp()));
        return regions;
    }

    private static LineString line(Ring ring) {
        return FACTORY.createLineString(JtsRings.closed(ring));
    }

    private static int winding(Ring ring, Coordinate point) {
        int winding = 0;
        for (int i = 0; i < ring.size(); i++) {
            int j = ring.next(i);
            double side = (ring.across(j) - ring.across(i)) * (point.y - ring.up(i))
                    - (point.x - ring.across(i)) * (ring.up(j) - ring.up(i));
            if (ring.up(i) <= point.y && ring.up(j) > point.y && side > 0) {
                winding++;
            } else if (ring.up(i) > point.y && ring.up(j) <= point.y && side < 0) {
                winding--;
            }
        }
        return winding;
    }

    private static Region region(Polygon polygon, STRtree sides, Tolerance tolerance) {
        List<Ring> openings = new ArrayList<>();
        for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
            openings.add(ring(polygon.getInteriorRingN(i).getCoordinates(), false, sides, tolerance));
        }
        openings.sort(Comparator.<Ring>comparingDouble(ring -> ring.across(0))
                .thenComparingDouble(ring -> ring.up(0))
                .thenComparingDouble(Ring::signedArea));
        return new Region(ring(polygon.getExteriorRing().getCoordinates(), true, sides, tolerance), openings);
    }

    /** The ring with its tags, from its lowest corner on: the faces are found in an order that changes from run to run. */
    private static Ring ring(Coordinate[] closed, boolean counterClockwise, STRtree sides, Tolerance tolerance) {
        Ring found = JtsRings.ring(closed, counterClockwise);
        Ring bare = found.startingAt(found.lowestLeft());
        int n = bare.size();
        int[] tags = new int[n];
        RingBuilder builder = new RingBuilder();
        for (int i = 0; i < n; i++) {
            int j = i + 1 == n ? 0 : i + 1;
            tags[i] = nearestTag(bare.across(i), bare.up(i), bare.across(j), bare.up(j), sides, tolerance);
        }
        // Where sides of the same tag meet in line, the corner was only made by noding.
        for (int i = 0; i < n; i++) {
            int before = i == 0 ? n - 1 : i - 1;
            int j = i + 1 == n ? 0 : i + 1;
            if (tags[i] != tags[before]
                    || offLine(
                                    bare.across(before),
                                    bare.up(before),
                                    bare.across(j),
                                    bare.up(j),
                                    bare.across(i),
                                    bare.up(i))
                            > tolerance.hair()) {
                builder.add(bare.across(i), bare.up(i), tags[i]);
            }
        }
        return builder.closed();
    }

    /** The tag of the side that the line from a to b lies on; noding has put it there but for rounding. */
    private static int nearestTag(double ax, double ay, double bx, double by, STRtree sides, Tolerance tolerance) {
        Envelope middle = new Envelope(new Coordinate((ax + bx) / 2, (ay + by) / 2));
        middle.expandBy(tolerance.metres());
        double nearest = Double.POSITIVE_INFINITY;
        int tag = Side.RIB;
        for (Object found : sides.query(middle)) {
            RingSide side = (RingSide) found;
            Ring ring = side.ring;
            int i = side.side;
            int j = ring.next(i);
            double sx = ring.across(j) - ring.across(i);
            double sy = ring.up(j) - ring.up(i);
            if (sx * (bx - ax) + sy * (by - ay) > 0) {
                double off = toSegment(ring, i, j, ax, ay) + toSegment(ring, i, j, bx, by);
                if (off < nearest || (off == nearest && ring.tag(i) < tag)) {
                    nearest = off;
                    tag = ring.tag(i);
                }
            }
        }
        return tag;
    }

    private record RingSide(Ring ring, int side) {}

    private static STRtree sides(List<Ring> rings) {
        STRtree sides = new STRtree();
        for (Ring ring : rings) {
            for (int i = 0; i < ring.size(); i++) {
                int j = ring.next(i);
                sides.insert(
                        new Envelope(ring.across(i), ring.across(j), ring.up(i), ring.up(j)), new RingSide(ring, i));
            }
        }
        return sides;
    }

    private static double toSegment(Ring ring, int i, int j, double x, double y) {
        double sx = ring.across(j) - ring.across(i);
        double sy = ring.up(j) - ring.up(i);
        double along = ((x - ring.across(i)) * sx + (y - ring.up(i)) * sy) / (sx * sx + sy * sy);
        double t = Math.max(0, Math.min(1, along));
        return Math.hypot(x - ring.across(i) - t * sx, y - ring.up(i) - t * sy);
    }

    private static double offLine(double ax, double ay, double bx, double by, double x, double y) {
        double dx = bx - ax;
        double dy = by - ay;
        return Math.abs(dx * (y - ay) - dy * (x - ax)) / Math.hypot(dx, dy);
    }
}
