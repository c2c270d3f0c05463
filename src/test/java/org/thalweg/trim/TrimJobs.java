package org.thalweg.trim;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.thalweg.geometry.Point3;
import org.thalweg.roof.Drawn;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.Roof;
import org.thalweg.trim.TrimShape.Turn;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;

/** Roofs to trim and what to trim them with. Corners in metres, girths in inches. */
final class TrimJobs {

    private TrimJobs() {}

    static final double SEAM = 1.75;

    static TrimSpec usual() {
        return spec(TrimOrder.usual(), Hand.LEFT, false, 1);
    }

    static TrimSpec spec(Map<EdgeKind, TrimOrder> orders, Hand laidFrom, boolean vented, double scale) {
        return new TrimSpec(
                inches(SEAM * scale),
                vented,
                inches(6 * scale),
                new TrimSpec.Sheet(
                        inches(0.0276 * scale), inches(0.0276 * scale), BendAllowance.USUAL, inches(20 * scale)),
                new TrimStock(inches(120 * scale), inches(12 * scale)),
                inches(1 * scale),
                laidFrom,
                orders);
    }

    /** One profile for every kind of edge, and laps of 4 in, everything so many times as large. */
    static Map<EdgeKind, TrimOrder> fixed(double scale) {
        TrimShape shape = new TrimShape(
                "strip",
                List.of(inches(scale), inches(5 * scale), inches(4 * scale), inches(0.75 * scale)),
                List.of(Turn.degrees(-80), Turn.OF_EDGE, Turn.degrees(35)),
                1,
                inches(1.5 * scale),
                Optional.of(Hem.closed(inches(0.5 * scale))),
                Optional.of(Hem.open(inches(0.5 * scale), inches(0.1 * scale))));
        Map<EdgeKind, TrimOrder> orders = TrimOrder.usual();
        orders.replaceAll((kind, order) -> new TrimOrder(Optional.of(shape), inches(4 * scale)));
        return orders;
    }

    /** Equal pitches of 6:12 over a rectangle: four eaves, four hips, a ridge. */
    static Drawn hipped(UnaryOperator<Point3> moved) {
        return drawn(moved, 'A', 0, 0, 0, 'B', 12, 0, 0, 'C', 12, 8, 0, 'D', 0, 8, 0, 'K', 4, 4, 2, 'L', 8, 4, 2)
                .planes("ABLK", "BCL", "CDKL", "DAK");
    }

    /** The same with ends of 12:12. */
    static Drawn steepEnds(UnaryOperator<Point3> moved) {
        return drawn(moved, 'A', 0, 0, 0, 'B', 12, 0, 0, 'C', 12, 8, 0, 'D', 0, 8, 0, 'K', 2, 4, 2, 'L', 10, 4, 2)
                .planes("ABLK", "BCL", "CDKL", "DAK");
    }

    /** 6:12 from the front, 8:12 from the back, gables at the ends, an opening in front. */
    static Drawn gabled(UnaryOperator<Point3> moved) {
        return drawn(
                        moved, 'A', 0, 0, 0, 'B', 12, 0, 0, 'C', 12, 7, 0, 'D', 0, 7, 0, 'K', 0, 4, 2, 'L', 12, 4, 2,
                        'P', 5, 1, 0.5, 'Q', 6, 1, 0.5, 'R', 6, 2, 1, 'S', 5, 2, 1)
                .planes("ABLK PQRS", "CDKL");
    }

    /** Two wings at a right angle, hipped at both ends: an inner corner of the eaves under the valley. */
    static Drawn winged(UnaryOperator<Point3> moved) {
        return drawn(
                        moved, 'A', 0, 0, 0, 'B', 14, 0, 0, 'C', 14, 6, 0, 'D', 6, 6, 0, 'E', 6, 12, 0, 'F', 0, 12, 0,
                        'G', 3, 3, 1.5, 'H', 11, 3, 1.5, 'I', 3, 9, 1.5)
                .planes("ABHG", "BCH", "CDGH", "DEIG", "EFI", "FAGI");
    }

    /**
     * A single slope over a lower, flatter one, walls on its right and at its top: rakes on the left, and a chimney whose walls
     * stand plumb.
     */
    static Drawn leaning(UnaryOperator<Point3> moved) {
        return drawn(
                        moved, 'A', 0, 0, 0, 'B', 9, 0, 0, 'C', 9, 3, 1, 'D', 0, 3, 1, 'E', 9, 7, 4, 'F', 0, 7, 4, 'P',
                        4, 4, 1.75, 'Q', 5, 4, 1.75, 'R', 5, 5, 2.5, 'S', 4, 5, 2.5)
                .planes("ABCD", "DCEF PQRS")
                .named("BC", EdgeKind.SIDE_WALL)
                .named("CE", EdgeKind.SIDE_WALL)
                .named("EF", EdgeKind.HEAD_WALL)
                .named("PQ", EdgeKind.HEAD_WALL)
                .named("QR", EdgeKind.SIDE_WALL)
                .named("RS", EdgeKind.HEAD_WALL)
                .named("SP", EdgeKind.SIDE_WALL);
    }

    /** A single slope with its eave in two stretches, one plane beside the other, and a free peak. */
    static Drawn parted(UnaryOperator<Point3> moved) {
        return drawn(moved, 'A', 0, 0, 0, 'B', 5, 0, 0, 'C', 9, 0, 0, 'D', 9, 4, 2, 'E', 5, 4, 2, 'F', 0, 4, 2)
                .planes("ABEF", "BCDE");
    }

    static List<Drawn> all(UnaryOperator<Point3> moved) {
        return List.of(hipped(moved), steepEnds(moved), gabled(moved), winged(moved), leaning(moved), parted(moved));
    }

    private static Drawn drawn(UnaryOperator<Point3> moved, Object... corners) {
        Drawn drawn = Drawn.plan("");
        for (int i = 0; i < corners.length; i += 4) {
            Point3 at = moved.apply(new Point3(metres(corners[i + 1]), metres(corners[i + 2]), metres(corners[i + 3])));
            drawn.corner((char) corners[i], at.x(), at.y(), at.z());
        }
        return drawn;
    }

    private static double metres(Object number) {
        return ((Number) number).doubleValue();
    }

    static Point3 still(Point3 point) {
        return point;
    }

    static Point3 mirrored(Point3 point) {
        return new Point3(-point.x(), point.y(), point.z());
    }

    static Trim of(List<Trim> trims, Drawn.Read roof, String ends) {
        String id = roof.edge(ends).id();
        return trims.stream()
                .filter(trim -> trim.edge().id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no trim at " + ends + " (" + id + ")"));
    }

    static Trim laid(Drawn drawn, String ends) {
        Drawn.Read read = drawn.read();
        return of(Trims.on(read.roof(), usual()).layOut(), read, ends);
    }

    static Roof roof(Drawn drawn) {
        return drawn.read().roof();
    }

    static Length inches(double inches) {
        return Length.inches(inches);
    }

    static double inches(Length length) {
        return length.in(LengthUnit.INCH);
    }
}
