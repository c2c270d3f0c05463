package org.thalweg.drainage;

import java.util.ArrayList;
import java.util.List;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Ring;
import org.thalweg.roof.Edge;
import org.thalweg.roof.Edge.EdgeSide;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.Plane;
import org.thalweg.roof.Roof;

/**
 * Follows fall lines up a roof from an edge. Between two neighbouring corners, seen along the slope, every fall line meets
 * the same sides, so a stretch of an edge is cut at each corner over it and followed up once for each part.
 *
 * <p>A stretch costs as many steps as its plane has sides, times the corners over it.
 */
final class FallLines {

    private final Roof roof;
    private final Bands bands = new Bands();
    private final List<Stretch> stretches = new ArrayList<>(1);
    private final SidesOver over = new SidesOver();

    FallLines(Roof roof) {
        this.roof = roof;
    }

    /** What was followed so far. */
    Bands bands() {
        return bands;
    }

    /** Follows the fall lines up from an edge of a plane; returns how many bands lie on the plane itself. */
    int follow(int plane, int edge) {
        begin(plane, edge);
        int own = stretches.size();
        int direct = 0;
        for (int i = 0; i < stretches.size(); i++) {
            follow(stretches.get(i));
            direct = i < own ? bands.count() : direct;
        }
        return direct;
    }

    private void begin(int plane, int edge) {
        Edge of = roof.edges().get(edge);
        double length = of.length().metres();
        Plane in = roof.planes().get(plane);
        if (in.level()) {
            return;
        }
        for (Ring ring : rings(in)) {
            for (int side = low(ring, edge, 0); side >= 0; side = low(ring, edge, side + 1)) {
                boolean leftIsLower = isLowerEnd(in.frame().inWorld(ring.corner(side)), of);
                stretches.add(new Stretch(
                        plane,
                        ring,
                        side,
                        ring.across(side),
                        ring.across(ring.next(side)),
                        leftIsLower ? 0 : length,
                        leftIsLower ? length : 0,
                        null));
            }
        }
    }

    /**
     * Whether a plane lies left of one of its edges, seen from above looking up the edge: metal lies to the left of a side,
     * so its side then runs upward.
     */
    static boolean liesLeft(Roof roof, int plane, int edge) {
        Plane of = roof.planes().get(plane);
        for (Ring ring : rings(of)) {
            for (int i = 0; i < ring.size(); i++) {
                if (ring.tag(i) == edge) {
                    return isLowerEnd(
                            of.frame().inWorld(ring.corner(i)), roof.edges().get(edge));
                }
            }
        }
        throw new IllegalArgumentException("plane %s has no edge %s".formatted(of.id(), edge));
    }

    private static boolean isLowerEnd(Point3 end, Edge edge) {
        boolean startsThere = end.distance(edge.from()) <= end.distance(edge.to());
        boolean startsLow = edge.from().z() <= edge.to().z();
        return startsThere == startsLow;
    }

    static List<Ring> rings(Plane plane) {
        List<Ring> openings = plane.shape().openings();
        if (openings.isEmpty()) {
            return List.of(plane.shape().outer());
        }
        List<Ring> rings = new ArrayList<>(openings.size() + 1);
        rings.add(plane.shape().outer());
        rings.addAll(openings);
        return rings;
    }

    /**
     * The first side from {@code start} on that lies on an edge and has its metal above: it runs to the right, for metal
     * lies to its left. −1 if there is none.
     */
    static int low(Ring ring, int edge, int start) {
        for (int i = start; i < ring.size(); i++) {
            if (ring.tag(i) == edge && ring.across(ring.next(i)) > ring.across(i)) {
                return i;
            }
        }
        return -1;
    }

    private void follow(Stretch stretch) {
        Plane plane = roof.planes().get(stretch.plane());
        over.gather(plane.shape(), stretch);
        double seenFromAbove = plane.slope().cos();
        for (int i = 1; i < over.cuts(); i++) {
            if (over.cut(i) > over.cut(i - 1)) {
                follow(stretch, over.cut(i - 1), over.cut(i), seenFromAbove);
            }
        }
    }

    /** Follows one part of a stretch, over which no corner lies, past every opening until the metal ends for good. */
    private void follow(Stretch stretch, double from, double to, double seenFromAbove) {
        double middle = (from + to) / 2;
        int bottom = over.bottom();
        while (bottom != SidesOver.NONE) {
            int top = over.nextAbove(middle, over.up(bottom, middle), false);
            if (top == SidesOver.NONE) {
                return;
            }
            double flat = (to - from) * seenFromAbove;
            bands.add(
                    stretch.along(from),
                    stretch.along(to),
                    flat * Math.max(0, over.up(top, from) - over.up(bottom, from)),
                    flat * Math.max(0, over.up(top, to) - over.up(bottom, to)));
            cross(stretch, top, from, to);
            bottom = over.onOpening(top) ? pastOpening(top, middle) : SidesOver.NONE;
        }
    }

    /** The upper rim of the opening over its lower rim, if water above it passes round: nothing fills the opening there. */
    private int pastOpening(int lowerRim, double across) {
        int upperRim = over.nextAbove(across, over.up(lowerRim, across), true);
        boolean open = upperRim != SidesOver.NONE
                && !roof.edges().get(over.edge(upperRim)).shared();
        return open ? upperRim : SidesOver.NONE;
    }

    /** Notes the neighbour across the side where metal ended, if its water runs on over it. */
    private void cross(Stretch stretch, int top, double from, double to) {
        int number = over.edge(top);
        Edge edge = roof.edges().get(number);
        if (!edge.shared() || !runsOver(edge.kind()) || stretch.crosses(number)) {
            return;
        }
        for (EdgeSide side : edge.sides()) {
            Plane plane = roof.planes().get(side.plane());
            if (!plane.level()) {
                for (Ring ring : rings(plane)) {
                    int low = low(ring, number, 0);
                    if (low >= 0) {
                        add(beyond(stretch, side.plane(), ring, low, top, from, to));
                        return;
                    }
                }
            }
        }
    }

    /** Both planes see the edge from left to right alike, so a place is as far along it in one as in the other. */
    private Stretch beyond(Stretch stretch, int plane, Ring ring, int side, int top, double from, double to) {
        double start = ring.across(side);
        double width = ring.across(ring.next(side)) - start;
        return new Stretch(
                plane,
                ring,
                side,
                start + over.share(top, from) * width,
                start + over.share(top, to) * width,
                stretch.along(from),
                stretch.along(to),
                stretch);
    }

    /** Parts that follow each other up to the same side of a neighbour are one stretch of it. */
    private void add(Stretch next) {
        int last = stretches.size() - 1;
        if (stretches.get(last).endsAt(next)) {
            stretches.set(last, stretches.get(last).joined(next));
        } else if (next.to() > next.from()) {
            stretches.add(next);
        }
    }

    /** Whether water that falls to such an edge runs over it, if the plane on its other side falls away. */
    private static boolean runsOver(EdgeKind kind) {
        return switch (kind) {
            case PITCH_BREAK, FLUSH, HIP, EXPANSION_JOINT -> true;
            // A pan carries it off, a wall stands in its way, it falls on both sides or there is no plane beyond.
            case VALLEY,
                    RIDGE,
                    LEVEL_VALLEY,
                    EAVE,
                    HIGH_EAVE,
                    RAKE,
                    ANGLED_EAVE,
                    ANGLED_RAKE,
                    SIDE_WALL,
                    HEAD_WALL,
                    OPENING,
                    STACKED -> false;
        };
    }
}
