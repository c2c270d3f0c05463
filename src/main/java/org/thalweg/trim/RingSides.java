package org.thalweg.trim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import org.thalweg.geometry.Ring;
import org.thalweg.geometry.Vector3;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.Plane;
import org.thalweg.roof.Roof;

/** Where each edge lies in the rings of its planes, and so what comes after it there. */
final class RingSides {

    private final Roof roof;
    private final List<List<RingSide>> ofEdge;

    RingSides(Roof roof) {
        this.roof = roof;
        ofEdge = new ArrayList<>(roof.edges().size());
        roof.edges().forEach(edge -> ofEdge.add(new ArrayList<>(2)));
        for (int p = 0; p < roof.planes().size(); p++) {
            Plane plane = roof.planes().get(p);
            list(p, plane.shape().outer());
            for (Ring opening : plane.shape().openings()) {
                list(p, opening);
            }
        }
    }

    private void list(int plane, Ring ring) {
        for (int i = 0; i < ring.size(); i++) {
            ofEdge.get(ring.tag(i)).add(new RingSide(plane, ring, i));
        }
    }

    /**
     * An edge as one ring runs it, with metal to its left.
     *
     * @param plane index in {@link Roof#planes}
     * @param at    index of the side in the ring
     */
    record RingSide(int plane, Ring ring, int at) {

        int edge() {
            return ring.tag(at);
        }

        boolean same(RingSide other) {
            return plane == other.plane && ring == other.ring && at == other.at;
        }
    }

    /**
     * A ring's side that was met at a corner.
     *
     * @param side    the side
     * @param atStart whether the corner is where it starts
     */
    record Met(RingSide side, boolean atStart) {}

    /** The edge in the rings of its planes, in the order of the planes. */
    List<RingSide> of(int edge) {
        return ofEdge.get(edge);
    }

    /** Which way a ring runs along its side; in the world, one long. */
    Vector3 direction(RingSide side) {
        Ring ring = side.ring();
        int next = ring.next(side.at());
        Plane plane = roof.planes().get(side.plane());
        return plane.frame()
                .across()
                .times(ring.across(next) - ring.across(side.at()))
                .plus(plane.frame().up().times(ring.up(next) - ring.up(side.at())))
                .unit();
    }

    /** What the same ring does next at the corner where the side starts, or where it ends. */
    static Met next(RingSide side, boolean atStart) {
        Ring ring = side.ring();
        int at = atStart ? (side.at() == 0 ? ring.size() : side.at()) - 1 : ring.next(side.at());
        return new Met(new RingSide(side.plane(), ring, at), !atStart);
    }

    /**
     * The next edge wanted on the way round the corner, from plane to plane over the edges they share; nothing when another edge
     * of one plane, or a crowded one, comes first.
     */
    Optional<Met> around(RingSide from, boolean atStart, IntPredicate wanted) {
        RingSide here = from;
        boolean start = atStart;
        for (int turns = 0; turns <= roof.planes().size(); turns++) {
            Met met = next(here, start);
            int edge = met.side().edge();
            if (wanted.test(edge)) {
                return Optional.of(met);
            }
            List<RingSide> both = ofEdge.get(edge);
            if (both.size() != 2 || roof.edges().get(edge).kind() == EdgeKind.STACKED) {
                return Optional.empty();
            }
            // Two rings run along the edge they share in opposite ways: where one starts the other ends.
            here = both.get(0).same(met.side()) ? both.get(1) : both.get(0);
            start = !met.atStart();
        }
        return Optional.empty();
    }
}
