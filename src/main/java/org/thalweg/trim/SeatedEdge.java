package org.thalweg.trim;

import java.util.List;
import java.util.Optional;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Vector3;
import org.thalweg.roof.Edge;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.Roof;
import org.thalweg.trim.RingSides.RingSide;
import org.thalweg.units.Angle;

/**
 * An edge that gets a trim.
 *
 * @param index   in {@link Roof#edges}
 * @param edge    the edge
 * @param family  which trims it runs on into
 * @param first   the edge in the ring of its first plane: that of the left one of a cap, of the upper one of a pitch break
 * @param second  the edge in the ring of its second plane, for trims on two planes
 * @param sameWay whether the first ring runs the way the trim does
 * @param seat    how the trim sits
 * @param shape   its profile
 * @param section its mould lines; see {@link TrimShape#section}
 */
record SeatedEdge(
        int index,
        Edge edge,
        Family family,
        RingSide first,
        Optional<RingSide> second,
        boolean sameWay,
        Seat seat,
        TrimShape shape,
        List<Point2> section) {

    /** A wall or a rim that slopes less runs from left to right; as for the kinds of edge. [common practice] */
    private static final Angle LEVEL = Angle.degrees(2);

    /** A fascia that leans away from the plane by less than this, under a plane all but upright, is taken as square to it. */
    private static final double LEAST_LEAN = 1e-3;

    /** The edge with its trim; nothing where its kind or the job gives it none, or it lacks a second plane. */
    static Optional<SeatedEdge> of(Roof roof, RingSides rings, int index, TrimSpec spec) {
        Edge edge = roof.edges().get(index);
        Optional<Family> family = Family.of(edge.kind());
        Optional<TrimOrder> order = spec.order(edge.kind());
        List<RingSide> sides = rings.of(index);
        if (family.isEmpty() || order.isEmpty() || (family.get().onTwoPlanes() && sides.size() != 2)) {
            return Optional.empty();
        }
        return Optional.of(new Seating(roof, rings, index, family.get(), sides).seated(order.get(), spec));
    }

    /** Where the bend at the edge lies in section. */
    Point2 fold() {
        return section.get(shape.atEdge() + 1);
    }

    /** Whether a leg lies beyond the bend at the edge. */
    boolean beyond(int leg) {
        return leg > shape.atEdge();
    }

    /** The way off the roof plane or face on one side of that bend. */
    Vector3 face(boolean beyond) {
        return beyond ? seat.upBeyond() : seat.up();
    }

    Point3 corner(boolean atStart) {
        return atStart ? seat.start() : seat.finish();
    }

    /** Out through one end. */
    Vector3 out(boolean atStart) {
        return atStart ? seat.along().times(-1) : seat.along();
    }

    /** The edge in the ring of the plane on one side of the bend; the first plane's where beyond it is none. */
    RingSide ringSide(boolean beyond) {
        return beyond ? second.orElse(first) : first;
    }

    /** Whether that ring's side starts where the trim does. Two rings run along one edge in opposite ways. */
    boolean ringSameWay(boolean beyond) {
        return (beyond && second.isPresent()) != sameWay;
    }

    /** Works out how a trim sits. */
    private record Seating(Roof roof, RingSides rings, int index, Family family, List<RingSide> sides) {

        SeatedEdge seated(TrimOrder order, TrimSpec spec) {
            Edge edge = roof.edges().get(index);
            boolean level = runsLevel(edge);
            Vector3 way = edge.to().minus(edge.from()).unit();
            boolean forward = level ? leftToRight(way) : way.z() >= 0;
            Vector3 along = forward ? way : way.times(-1);
            RingSide first = firstSide(along);
            boolean sameWay = rings.direction(first).dot(along) > 0;
            Vector3 up = offPlane(first, along);
            Vector3 across = sameWay ? along.cross(up) : up.cross(along);
            Optional<RingSide> second =
                    family.onTwoPlanes() ? Optional.of(sides.get(sides.get(0) == first ? 1 : 0)) : Optional.empty();
            Angle bend = second.map(side -> bendTo(offPlane(side, along), across, up))
                    .orElseGet(() -> bendToFace(across, up));
            Seat seat = new Seat(
                    forward ? edge.from() : edge.to(),
                    forward ? edge.to() : edge.from(),
                    along,
                    across,
                    up,
                    bend,
                    level,
                    !sameWay);
            TrimShape shape = order.shape().orElseGet(() -> usual(edge.kind(), bend, spec));
            return new SeatedEdge(
                    index, edge, family, first, second, sameWay, seat, shape, shape.section(bend, fold(bend, shape)));
        }

        private static TrimShape usual(EdgeKind kind, Angle bend, TrimSpec spec) {
            return kind == EdgeKind.HIP
                    ? UsualShapes.hipCap(spec.seamHeight(), spec.hipLeg())
                    : UsualShapes.of(kind, bend, spec.seamHeight(), spec.ventedRidge())
                            .orElseThrow();
        }

        private static boolean runsLevel(Edge edge) {
            return switch (edge.kind()) {
                case EAVE, HIGH_EAVE, RIDGE, PITCH_BREAK -> true;
                case SIDE_WALL, HEAD_WALL, OPENING -> edge.slope().compareTo(LEVEL) <= 0;
                default -> false;
            };
        }

        /** Seen from the first plane looking up the slope; along a plane's fall line, as its ring runs. */
        private boolean leftToRight(Vector3 way) {
            RingSide side = sides.get(0);
            double right = way.dot(roof.planes().get(side.plane()).frame().across());
            double along = roof.edges().get(index).length().metres();
            return Math.abs(right * along) > roof.tolerance().hair()
                    ? right > 0
                    : rings.direction(side).dot(way) > 0;
        }

        /** Of a cap the plane to the left; of a pitch break the upper one, whose outward way leads down. */
        private RingSide firstSide(Vector3 along) {
            RingSide one = sides.get(0);
            if (!family.onTwoPlanes()) {
                return one;
            }
            RingSide other = sides.get(1);
            boolean keep = family == Family.CAP
                    ? rings.direction(one).dot(along) > 0
                    : outward(one).z() <= outward(other).z();
            return keep ? one : other;
        }

        private Vector3 outward(RingSide side) {
            return rings.direction(side)
                    .cross(roof.planes().get(side.plane()).frame().outward());
        }

        /** Outward off the plane and square to the edge, whose corners may stand off the plane a little. */
        private Vector3 offPlane(RingSide side, Vector3 along) {
            Vector3 outward = roof.planes().get(side.plane()).frame().outward();
            return outward.plus(along.times(-outward.dot(along))).unit();
        }

        private static Angle bendTo(Vector3 otherUp, Vector3 across, Vector3 up) {
            return Angle.atan2(-otherUp.dot(across), otherUp.dot(up));
        }

        /** To a fascia that hangs plumb, to a wall that stands plumb, to a kerb that stands square to its plane. */
        private Angle bendToFace(Vector3 across, Vector3 up) {
            return switch (family) {
                case WALL -> Angle.atan2(up.z(), across.z());
                case OPENING -> Angle.degrees(90);
                default -> Angle.atan2(-up.z(), -across.z());
            };
        }

        /** Over both planes alike; or over the one and in the face of the fascia, the wall or the kerb. */
        private Point2 fold(Angle bend, TrimShape shape) {
            double height = shape.height().metres();
            if (family.onTwoPlanes()) {
                return new Point2(-height * Math.tan(bend.radians() / 2), height);
            }
            return new Point2(Math.abs(bend.sin()) < LEAST_LEAN ? 0 : height * bend.cos() / bend.sin(), height);
        }
    }
}
