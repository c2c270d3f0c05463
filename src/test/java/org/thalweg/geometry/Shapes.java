package org.thalweg.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Shapes for tests: drawn by hand or made up from a seed. */
public final class Shapes {

    private Shapes() {}

    /** A ring from corners across, up, across, up …; side i has tag {@code firstTag} + i. */
    public static Ring ring(int firstTag, double... corners) {
        int n = corners.length / 2;
        return new Ring(
                IntStream.range(0, n).mapToDouble(i -> corners[2 * i]).toArray(),
                IntStream.range(0, n).mapToDouble(i -> corners[2 * i + 1]).toArray(),
                IntStream.range(0, n).map(i -> firstTag + i).toArray());
    }

    /** A shape without openings, tags from 0. */
    public static Region region(double... corners) {
        return new Region(ring(0, corners), List.of());
    }

    /**
     * A plane as crooked as they come: a star-shaped outline of 3 to 40 corners with up to four openings cut out, some of
     * which notch it or part it; every other one has all its corners on whole numbers, so that corners meet lines.
     */
    public static List<Region> crooked(long seed) {
        Random random = new Random(seed);
        boolean whole = random.nextBoolean();
        Geometry shape = star(random, 12, 12, 2 + random.nextDouble() * 10, 3 + random.nextInt(38), whole);
        for (int i = random.nextInt(5); i > 0; i--) {
            shape = OverlayNGRobust.overlay(
                    shape,
                    star(
                            random,
                            4 + random.nextInt(16),
                            4 + random.nextInt(16),
                            0.5 + random.nextDouble() * 3,
                            3 + random.nextInt(8),
                            whole),
                    org.locationtech.jts.operation.overlayng.OverlayNG.DIFFERENCE);
        }
        List<Region> regions = new ArrayList<>();
        for (int i = 0; i < shape.getNumGeometries(); i++) {
            if (shape.getGeometryN(i) instanceof Polygon polygon && polygon.getArea() > 1e-3) {
                regions.add(Jts.region(polygon));
            }
        }
        return regions;
    }

    private static Geometry star(Random random, double x, double y, double size, int corners, boolean whole) {
        Coordinate[] ring = new Coordinate[corners + 1];
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * (i + 0.8 * random.nextDouble()) / corners;
            double radius = size * (0.2 + 0.8 * random.nextDouble());
            double cornerX = x + radius * Math.cos(angle);
            double cornerY = y + radius * Math.sin(angle);
            ring[i] = whole ? new Coordinate(Math.rint(cornerX), Math.rint(cornerY)) : new Coordinate(cornerX, cornerY);
        }
        ring[corners] = ring[0].copy();
        // Rounding may make the ring touch or cross itself; what it goes round is still a shape.
        return org.locationtech.jts.geom.util.GeometryFixer.fix(Jts.FACTORY.createPolygon(ring));
    }
}
