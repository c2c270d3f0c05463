package org.thalweg.valley;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.thalweg.finding.Origin;
import org.thalweg.geometry.Jts;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Point3;
import org.thalweg.roof.Edge;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.PanelHold;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;
import org.thalweg.units.Pitch;
import org.thalweg.valley.SlopedEdge.End;

/**
 * A pan as strange as they come, made up from a seed: ends of any kind at 1° to 359°, valleys from an inch to a hundred metres,
 * coils from narrow to wide, laps up to nearly the whole piece. And its shape as JTS cuts it from a strip, one half-plane for
 * each thing it ends on.
 */
record AnyPan(long seed, SlopedEdge edge, PanSpec spec) {

    private static final double FAR = 20_000;

    private static final List<EdgeKind> KINDS = List.of(
            EdgeKind.EAVE,
            EdgeKind.RIDGE,
            EdgeKind.VALLEY,
            EdgeKind.HIP,
            EdgeKind.SIDE_WALL,
            EdgeKind.HEAD_WALL,
            EdgeKind.RAKE,
            EdgeKind.ANGLED_EAVE,
            EdgeKind.FLUSH,
            EdgeKind.PITCH_BREAK);

    static AnyPan of(long seed) {
        Random random = new Random(seed);
        double piece = between(random, 0.4, 8);
        double lap = random.nextInt(4) == 0 ? piece * between(random, 0.8, 0.999) : between(random, 0.02, piece / 2);
        double longest = Math.min(100, 50 * (piece - lap));
        double length =
                random.nextInt(3) == 0 ? between(random, 0.025, 0.5) : between(random, 0.5, Math.max(1, longest));
        return new AnyPan(seed, edge(random, length), spec(random, piece, lap));
    }

    private static double between(Random random, double least, double most) {
        return least + random.nextDouble() * (most - least);
    }

    private static PanSpec spec(Random random, double piece, double lap) {
        double leg = between(random, 0.01, 0.15);
        double edgeReturn = random.nextInt(3) == 0 ? 0 : between(random, 0.005, 0.05);
        double flat = between(random, 0.05, 1.2);
        return new PanSpec(
                Length.metres(2 * (leg + edgeReturn + flat)),
                Length.metres(leg),
                Length.metres(edgeReturn),
                Optional.empty(),
                Optional.empty(),
                new Pitch(0, 12),
                Length.metres(piece),
                Length.metres(between(random, 0, piece)),
                Length.metres(lap),
                Length.metres(random.nextInt(2) * between(random, 0, 0.2)),
                Length.metres(random.nextInt(2) * between(random, 0, 0.2)),
                Length.metres(random.nextInt(3) * 0.05),
                Length.metres(random.nextInt(3) * 0.05),
                Length.metres(random.nextInt(3) * 0.3),
                Length.metres(3));
    }

    private static SlopedEdge edge(Random random, double length) {
        Edge edge = new Edge(
                "V1",
                EdgeKind.VALLEY,
                List.of(),
                new Point3(0, 0, 0),
                new Point3(length, 0, 0),
                Length.metres(length),
                Angle.degrees(20),
                Angle.degrees(between(random, 1, 120)),
                false,
                Origin.REQUEST);
        return new SlopedEdge(0, edge, side(random, true, length), side(random, false, length));
    }

    private static SlopedEdge.Side side(Random random, boolean onLeft, double length) {
        Angle mitre = Angle.degrees(between(random, 1, 90));
        double across = length * mitre.cos();
        return new SlopedEdge.Side(
                onLeft ? 0 : 1,
                onLeft ? "left" : "right",
                Angle.degrees(between(random, 1, 70)),
                mitre,
                onLeft,
                new Point2(0, 0),
                new Point2(onLeft ? across : -across, length * mitre.sin()),
                end(random),
                end(random),
                Length.ZERO);
    }

    private static End end(Random random) {
        EdgeKind kind = KINDS.get(random.nextInt(KINDS.size()));
        double corner = random.nextInt(5) == 0
                ? List.of(90.0, 180.0, 1.0, 179.0, 178.5, 270.0).get(random.nextInt(6))
                : between(random, 1, random.nextBoolean() ? 180 : 359);
        return new End(0, "X", kind, Angle.degrees(corner), Length.metres(between(random, 0.1, 30)));
    }

    double length() {
        return edge.length().metres();
    }

    double flat() {
        return spec.coilWidth().metres() / 2
                - spec.ribLeg().metres()
                - spec.edgeReturn().metres();
    }

    ValleyLayout laid() {
        return Valleys.layOut(edge, spec, PanelHold.FIXED, Pans.asked(), Pans.TOLERANCE);
    }

    /** The rib, both flats and both returns; across from the middle, up from the foot. */
    Geometry shape() {
        return union(union(half(edge.left()), half(edge.right())), rib());
    }

    double ribFrom() {
        double past = (meets(edge.left().bottom(), edge.right().bottom()) ? spec.ribPastValley() : spec.ribPastEave())
                .metres();
        return -Math.max(
                past,
                Math.max(alongLow(edge.left().bottom()), alongLow(edge.right().bottom())));
    }

    double ribTo() {
        double past =
                (meets(edge.left().top(), edge.right().top()) ? spec.ribPastValley() : spec.ribPastTop()).metres();
        return length()
                + Math.max(
                        past,
                        Math.max(
                                alongLow(edge.left().top()),
                                alongLow(edge.right().top())));
    }

    /** By the sum of its parts: two legs, and what each side's two lines leave of flat and return. */
    double area() {
        return 2 * spec.ribLeg().metres() * (ribTo() - ribFrom()) + area(edge.left()) + area(edge.right());
    }

    private double area(SlopedEdge.Side side) {
        double atLow = length() + alongLow(side.bottom()) + alongLow(side.top());
        double perOut = -cot(leans(side.bottom())) - cot(leans(side.top()));
        double atEdge = atLow + flat() * perOut;
        if (atEdge >= 0) {
            return flat() * (atLow + atEdge) / 2 + spec.edgeReturn().metres() * atEdge;
        }
        return atLow * (atLow / -perOut) / 2;
    }

    private static double cot(double angle) {
        return Math.cos(angle) / Math.sin(angle);
    }

    private static boolean meets(End left, End right) {
        return left.kind() == EdgeKind.VALLEY || right.kind() == EdgeKind.VALLEY;
    }

    private Geometry rib() {
        double leg = spec.ribLeg().metres();
        return polygon(-leg, ribFrom(), leg, ribFrom(), leg, ribTo(), -leg, ribTo());
    }

    private Geometry half(SlopedEdge.Side side) {
        double leg = spec.ribLeg().metres();
        Geometry flat = polygon(0, -FAR, flat(), -FAR, flat(), FAR, 0, FAR);
        flat = OverlayNGRobust.overlay(flat, inside(side.bottom(), 0, 1), OverlayNG.INTERSECTION);
        flat = OverlayNGRobust.overlay(flat, inside(side.top(), length(), -1), OverlayNG.INTERSECTION);
        double from = flat() * cot(leans(side.bottom())) - alongLow(side.bottom());
        double to = length() + alongLow(side.top()) - flat() * cot(leans(side.top()));
        double outer = flat() + spec.edgeReturn().metres();
        if (to > from && outer > flat()) {
            flat = union(flat, polygon(flat(), from, outer, from, outer, to, flat(), to));
        }
        for (Coordinate corner : flat.getCoordinates()) {
            corner.x = (side.onLeft() ? -1 : 1) * (leg + corner.x);
        }
        flat.geometryChanged();
        return flat;
    }

    /** What lies on the metal's side of the line an end lies on, moved out by how far the pan runs past it. */
    private Geometry inside(End end, double at, int inward) {
        double angle = leans(end);
        double past = past(end);
        double[] along = {Math.sin(angle), Math.cos(angle)};
        double[] in = {-Math.cos(angle), Math.sin(angle)};
        double[] corners = new double[8];
        int[][] signs = {{-1, 0}, {1, 0}, {1, 1}, {-1, 1}};
        for (int i = 0; i < 4; i++) {
            double t = -past * in[0] + signs[i][0] * FAR * along[0] + signs[i][1] * FAR * in[0];
            double s = -past * in[1] + signs[i][0] * FAR * along[1] + signs[i][1] * FAR * in[1];
            corners[2 * i] = t;
            corners[2 * i + 1] = at + inward * s;
        }
        return polygon(corners);
    }

    /** How far it runs past what it ends on, square to that. */
    private double past(End end) {
        if (end.kind() == EdgeKind.VALLEY) {
            return spec.lap().metres();
        }
        if (end.corner().inDegrees() > 179 + 1e-9) {
            return spec.lap().metres();
        }
        return switch (end.kind()) {
            case EAVE, ANGLED_EAVE -> spec.pastEave().metres();
            case SIDE_WALL, HEAD_WALL -> spec.wallTurnUp().metres();
            case FLUSH, PITCH_BREAK -> spec.lap().metres();
            default -> 0;
        };
    }

    private double alongLow(End end) {
        return past(end) / Math.sin(leans(end));
    }

    /** Angle from the low to the line it ends on: what the plane ends on, half-way to another valley, or square. */
    private static double leans(End end) {
        if (end.kind() == EdgeKind.VALLEY) {
            return end.corner().radians() / 2;
        }
        return end.corner().inDegrees() > 179 + 1e-9
                ? Math.PI / 2
                : end.corner().radians();
    }

    private static Geometry union(Geometry a, Geometry b) {
        return OverlayNGRobust.overlay(a, b, OverlayNG.UNION);
    }

    static Polygon polygon(double... corners) {
        int n = corners.length / 2;
        Coordinate[] ring = new Coordinate[n + 1];
        for (int i = 0; i <= n; i++) {
            ring[i] = new Coordinate(corners[2 * (i % n)], corners[2 * (i % n) + 1]);
        }
        return Jts.FACTORY.createPolygon(ring);
    }

    /** A piece where it lies in the pan. */
    static Polygon placed(PanPiece piece) {
        List<Point2> outline = piece.blank().outline();
        double[] corners = new double[2 * outline.size()];
        for (int i = 0; i < outline.size(); i++) {
            corners[2 * i] = outline.get(i).across();
            corners[2 * i + 1] = outline.get(i).up() + piece.from().metres();
        }
        return polygon(corners);
    }
}
