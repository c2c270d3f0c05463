package org.thalweg.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** What is left of a square-ended blank once a shape is cut from it. */
public final class Remainder {

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private Remainder() {}

    /**
     * The off-cuts, the largest first, equal ones from the left, then from the lowest up; all sides tagged
     * {@link Side#RIB}. What is thinner than the tolerance is no off-cut.
     *
     * @param width  of the blank, across from 0, metres
     * @param length of the blank, up from 0, metres
     * @param shape  what is cut from it
     */
    public static List<Region> of(double width, double length, Region shape, Tolerance tolerance) {
        Geometry blank = FACTORY.toGeometry(new Envelope(0, width, 0, length));
        Geometry left = OverlayNGRobust.overlay(blank, polygon(shape), OverlayNG.DIFFERENCE);
        List<Region> offcuts = new ArrayList<>();
        for (int i = 0; i < left.getNumGeometries(); i++) {
            if (left.getGeometryN(i) instanceof Polygon polygon
                    && polygon.getArea() > tolerance.metres() * polygon.getLength() / 2) {
                offcuts.add(region(polygon));
            }
        }
        offcuts.sort(Comparator.comparingDouble(Region::area)
                .reversed()
                .thenComparingDouble(offcut -> offcut.outer().leastAcross())
                .thenComparingDouble(offcut -> offcut.outer().leastUp()));
        return offcuts;
    }

    private static Polygon polygon(Region shape) {
        return FACTORY.createPolygon(
                ring(shape.outer()),
                shape.openings().stream().map(Remainder::ring).toArray(LinearRing[]::new));
    }

    private static LinearRing ring(Ring ring) {
        return FACTORY.createLinearRing(JtsRings.closed(ring));
    }

    private static Region region(Polygon polygon) {
        List<Ring> openings = new ArrayList<>();
        for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
            openings.add(JtsRings.ring(polygon.getInteriorRingN(i).getCoordinates(), false));
        }
        return new Region(JtsRings.ring(polygon.getExteriorRing().getCoordinates(), true), openings);
    }
}
