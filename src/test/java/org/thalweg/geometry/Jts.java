package org.thalweg.geometry;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.PolygonExtracter;

/** The same shapes as JTS knows them, so that JTS can be asked for a second opinion. */
public final class Jts {

    public static final GeometryFactory FACTORY = new GeometryFactory();

    private Jts() {}

    public static Polygon polygon(Region region) {
        return FACTORY.createPolygon(
                ring(region.outer()), region.openings().stream().map(Jts::ring).toArray(LinearRing[]::new));
    }

    public static LinearRing ring(Ring ring) {
        Coordinate[] corners = new Coordinate[ring.size() + 1];
        for (int i = 0; i <= ring.size(); i++) {
            int corner = i == ring.size() ? 0 : i;
            corners[i] = new Coordinate(ring.across(corner), ring.up(corner));
        }
        return FACTORY.createLinearRing(corners);
    }

    /** Only what has an area; shapes that touch a line leave points and lines there. */
    public static Geometry areas(Geometry mixed) {
        return FACTORY.buildGeometry(PolygonExtracter.getPolygons(mixed));
    }

    /** A polygon's rings, outer first, each side tagged with its place in its ring, openings from 100, 200 … on. */
    public static Region region(Polygon polygon) {
        Ring outer = ring(polygon.getExteriorRing().getCoordinates(), true, 0);
        Ring[] openings = new Ring[polygon.getNumInteriorRing()];
        for (int i = 0; i < openings.length; i++) {
            openings[i] = ring(polygon.getInteriorRingN(i).getCoordinates(), false, 100 * (i + 1));
        }
        return new Region(outer, List.of(openings));
    }

    private static Ring ring(Coordinate[] closed, boolean counterClockwise, int firstTag) {
        int n = closed.length - 1;
        boolean turn = org.locationtech.jts.algorithm.Orientation.isCCW(closed) != counterClockwise;
        double[] across = new double[n];
        double[] up = new double[n];
        int[] tag = new int[n];
        for (int i = 0; i < n; i++) {
            Coordinate corner = turn ? closed[n - i] : closed[i];
            across[i] = corner.x;
            up[i] = corner.y;
            tag[i] = firstTag + i;
        }
        return new Ring(across, up, tag);
    }
}
