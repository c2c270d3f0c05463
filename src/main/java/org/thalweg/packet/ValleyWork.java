package org.thalweg.packet;

import java.util.ArrayList;
import java.util.List;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;
import org.thalweg.finding.Refused;
import org.thalweg.geometry.Ring;
import org.thalweg.roof.Edge;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.Plane;
import org.thalweg.roof.Roof;
import org.thalweg.units.Count;
import org.thalweg.valley.PanSpec;

/** Bounds what the valleys of one request may cost, before any is laid out. */
public final class ValleyWork {

    /** Most pieces of pan, all valleys together. */
    public static final int MOST_PIECES = 5_000;

    /** Most steps along sides of planes, in following water and panels up from valleys: about a second. */
    public static final int MOST_STEPS = 50_000_000;

    private ValleyWork() {}

    /**
     * @param at where in the request the valleys stand
     * @throws Refused when laying out all of {@code edges} is more than one request may cost
     */
    static void check(Roof roof, List<Integer> edges, PanSpec pan, Origin at) {
        double piece = pan.pieceLength().metres() - pan.lap().metres();
        double pieces = 0;
        double steps = 0;
        for (int edge : edges) {
            Edge of = roof.edges().get(edge);
            if (of.kind() == EdgeKind.VALLEY) {
                pieces += 1 + Math.ceil(of.length().metres() / piece);
            }
            for (Edge.EdgeSide side : of.sides()) {
                steps += steps(roof.planes().get(side.plane()), edge);
            }
        }
        List<Refusal> refusals = new ArrayList<>(0);
        refuse(
                at,
                pieces,
                MOST_PIECES,
                "The valleys take {actual} pieces of pan; at most {limit} are laid out.",
                refusals);
        refuse(
                at,
                steps,
                MOST_STEPS,
                "Following the water to the valleys takes {actual} steps; at most {limit} are done.",
                refusals);
        if (!refusals.isEmpty()) {
            throw new Refused(refusals);
        }
    }

    private static void refuse(Origin at, double actual, int limit, String sentence, List<Refusal> refusals) {
        if (actual > limit) {
            refusals.add(Refusal.of(
                    RefusalCode.TOO_MANY_PIECES,
                    at,
                    sentence + " Check the units and the length of the pieces, or lay the roof in parts.",
                    new Count((long) actual),
                    new Count(limit)));
        }
    }

    /** As many as the plane has sides, for each corner that lies over the edge. */
    private static double steps(Plane plane, int edge) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        int sides = 0;
        List<Ring> rings = new ArrayList<>(plane.shape().openings());
        rings.add(plane.shape().outer());
        for (Ring ring : rings) {
            sides += ring.size();
            for (int i = 0; i < ring.size(); i++) {
                if (ring.tag(i) == edge) {
                    least = Math.min(ring.across(i), ring.across(ring.next(i)));
                    most = Math.max(ring.across(i), ring.across(ring.next(i)));
                }
            }
        }
        long over = 2;
        for (Ring ring : rings) {
            for (int i = 0; i < ring.size(); i++) {
                if (ring.across(i) >= least && ring.across(i) <= most) {
                    over++;
                }
            }
        }
        return (double) over * sides;
    }
}
