package org.thalweg.valley;

import java.util.Optional;
import org.thalweg.finding.Place;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Ring;
import org.thalweg.geometry.Tolerance;
import org.thalweg.roof.Edge;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.Plane;
import org.thalweg.roof.Roof;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;

/**
 * A valley or a hip as a crew sees it that stands at its foot and looks up.
 *
 * @param index its index in {@link Roof#edges}
 * @param edge  the edge
 * @param left  the plane to the left
 * @param right the plane to the right
 */
public record SlopedEdge(int index, Edge edge, Side left, Side right) {

    /**
     * One of its two planes.
     *
     * @param plane  index in {@link Roof#planes}
     * @param id     the plane's id
     * @param pitch  θ, the plane's slope
     * @param mitre  φ, the angle in the plane from the level line to the edge, in (0°, 90°]
     * @param onLeft whether it is the plane to the left
     * @param foot   the edge's lower end; plane frame, metres
     * @param head   its upper end
     * @param bottom what the plane ends on at the foot
     * @param top    what it ends on at the head
     * @param run    the longest panel that can end at the edge: the longest fall line up from it to where the plane ends or an
     *               opening breaks it; 0 where none can
     */
    public record Side(
            int plane,
            String id,
            Angle pitch,
            Angle mitre,
            boolean onLeft,
            Point2 foot,
            Point2 head,
            End bottom,
            End top,
            Length run) {

        /** α, the angle in plan from the eave to the edge: tan α = tan φ · cos θ, in (0°, 90°]. [geometry] */
        public Angle plan() {
            return Angle.atan2(mitre.sin() * pitch.cos(), mitre.cos());
        }

        /** How much a cut across a panel of this cover rises: w · tan φ; nothing when the edge runs along the ribs. [geometry] */
        public Optional<Length> rise(Length cover, Tolerance tolerance) {
            return cover.metres() * mitre.cos() <= tolerance.hair()
                    ? Optional.empty()
                    : Optional.of(Length.metres(cover.metres() * mitre.tan()));
        }

        /** The place {@code t} off the edge and {@code s} up it; plane frame, metres. */
        Point2 at(double t, double s) {
            double dx = head.across() - foot.across();
            double dy = head.up() - foot.up();
            double length = Math.hypot(dx, dy);
            double outX = (onLeft ? -dy : dy) / length;
            double outY = (onLeft ? dx : -dx) / length;
            return new Point2(foot.across() + s * dx / length + t * outX, foot.up() + s * dy / length + t * outY);
        }
    }

    /**
     * What a plane ends on at one end of the edge.
     *
     * @param edge   index in {@link Roof#edges} of the plane's next edge there
     * @param id     that edge's name
     * @param kind   what it is
     * @param corner ω, the angle from the edge we look at to that one, through the plane's metal, in (0°, 360°)
     * @param reach  how long that edge is
     */
    public record End(int edge, String id, EdgeKind kind, Angle corner, Length reach) {}

    /** The edge, if it has a plane on each side; one on which only stacked or level planes meet has not. */
    public static Optional<SlopedEdge> of(Roof roof, int index) {
        Edge edge = roof.edges().get(index);
        Side left = null;
        Side right = null;
        for (Edge.EdgeSide side : edge.sides()) {
            Side seen = side(roof, index, side);
            if (seen.onLeft() && left == null) {
                left = seen;
            } else if (!seen.onLeft() && right == null) {
                right = seen;
            }
        }
        return left == null || right == null ? Optional.empty() : Optional.of(new SlopedEdge(index, edge, left, right));
    }

    public Length length() {
        return edge.length();
    }

    /**
     * How far the metal of a pan is turned from flat at each low: 90° + δ/2, so that the two legs of the rib touch and stand
     * half-way between the flats. [geometry]
     */
    Angle bendAtLow() {
        return new Angle((Math.PI + edge.bend().radians()) / 2);
    }

    /** Whether another valley goes on from its foot on either plane. */
    boolean meetsValleyBelow() {
        return left.bottom().kind() == EdgeKind.VALLEY || right.bottom().kind() == EdgeKind.VALLEY;
    }

    /** Whether another valley goes on from its head on either plane. */
    boolean meetsValleyAbove() {
        return left.top().kind() == EdgeKind.VALLEY || right.top().kind() == EdgeKind.VALLEY;
    }

    public Place place() {
        return new Place(Place.Kind.EDGE, edge.id(), edge.at());
    }

    /** A ring has its metal to the left, so the plane whose ring climbs the edge is the one to the left. */
    private static Side side(Roof roof, int index, Edge.EdgeSide side) {
        Plane plane = roof.planes().get(side.plane());
        Ring ring = plane.shape().outer();
        int at = sideOf(ring, index);
        for (int i = 0; at < 0; i++) {
            ring = plane.shape().openings().get(i);
            at = sideOf(ring, index);
        }
        int next = ring.next(at);
        boolean climbs = ring.up(next) > ring.up(at);
        End start = end(roof, ring, at == 0 ? ring.size() - 1 : at - 1, at, at);
        End finish = end(roof, ring, next, next, at);
        Point2 foot = ring.corner(climbs ? at : next);
        Point2 head = ring.corner(climbs ? next : at);
        return new Side(
                side.plane(),
                plane.id(),
                plane.slope(),
                side.mitre(),
                climbs,
                foot,
                head,
                climbs ? start : finish,
                climbs ? finish : start,
                PanelRun.longest(plane, foot, head, climbs, roof.tolerance()));
    }

    private static int sideOf(Ring ring, int edge) {
        for (int i = 0; i < ring.size(); i++) {
            if (ring.tag(i) == edge) {
                return i;
            }
        }
        return -1;
    }

    /**
     * @param other  the ring's side that meets the edge
     * @param corner where it does
     * @param own    the ring's side on the edge
     */
    private static End end(Roof roof, Ring ring, int other, int corner, int own) {
        int tag = ring.tag(other);
        Edge edge = roof.edges().get(tag);
        int out = corner == own ? own : other;
        int in = corner == own ? other : own;
        double outX = ring.across(ring.next(out)) - ring.across(out);
        double outY = ring.up(ring.next(out)) - ring.up(out);
        double backX = ring.across(in) - ring.across(ring.next(in));
        double backY = ring.up(in) - ring.up(ring.next(in));
        double turn = Math.atan2(outX * backY - outY * backX, outX * backX + outY * backY);
        return new End(tag, edge.id(), edge.kind(), new Angle(turn < 0 ? turn + 2 * Math.PI : turn), edge.length());
    }
}
