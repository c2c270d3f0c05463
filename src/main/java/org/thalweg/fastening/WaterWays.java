package org.thalweg.fastening;

import java.util.ArrayList;
import java.util.List;
import org.thalweg.geometry.Region;
import org.thalweg.geometry.Ring;
import org.thalweg.geometry.Tolerance;
import org.thalweg.roof.Edge;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.EdgeTreatment;

/**
 * Where water runs on a plane beside its valleys: from each low to where the panels stop short of it, square to the low,
 * and at its ends as far as the plane reaches.
 * Nothing is fastened there, not even what little metal may lie in it at a corner of the plane.
 */
final class WaterWays {

    /** Sides that turn by less than a degree run on straight. */
    private static final double STRAIGHT = Math.sin(Math.toRadians(1));

    /** Each as a convex ring, from the low inward. */
    private final List<Ring> ways = new ArrayList<>(0);

    WaterWays(Region deck, List<Edge> edges, List<EdgeTreatment> treatments, Tolerance tolerance) {
        addAlong(deck.outer(), edges, treatments, tolerance);
        for (Ring opening : deck.openings()) {
            addAlong(opening, edges, treatments, tolerance);
        }
    }

    private void addAlong(Ring ring, List<Edge> edges, List<EdgeTreatment> treatments, Tolerance tolerance) {
        for (int side = 0; side < ring.size(); side++) {
            EdgeKind kind = edges.get(ring.tag(side)).kind();
            if (kind == EdgeKind.VALLEY || kind == EdgeKind.LEVEL_VALLEY) {
                add(ring, side, treatments.get(ring.tag(side)), tolerance);
            }
        }
    }

    private void add(Ring ring, int side, EdgeTreatment treatment, Tolerance tolerance) {
        int next = ring.next(side);
        boolean falls = ring.up(side) - ring.up(next) > tolerance.metres();
        boolean rises = ring.up(next) - ring.up(side) > tolerance.metres();
        double atStart = (falls ? treatment.setbackAtTop() : treatment.setback()).metres() - tolerance.hair();
        double atEnd = (rises ? treatment.setbackAtTop() : treatment.setback()).metres() - tolerance.hair();
        if (Math.max(atStart, atEnd) > 0) {
            ways.add(wide(ring, side, Math.max(0, atStart), Math.max(0, atEnd)));
        }
    }

    private static Ring wide(Ring ring, int side, double atStart, double atEnd) {
        int next = ring.next(side);
        int before = side == 0 ? ring.size() - 1 : side - 1;
        double across = ring.across(next) - ring.across(side);
        double up = ring.up(next) - ring.up(side);
        double length = Math.hypot(across, up);
        double onAcross = across / length;
        double onUp = up / length;
        double perUp = (atEnd - atStart) / length;
        double flareStart = flare(ring, side, before, -onAcross, -onUp, -1);
        double flareEnd = flare(ring, next, ring.next(next), onAcross, onUp, 1);
        // Off the low where its open width, going on as it does, meets what the plane ends on.
        double offStart = atStart / Math.max(0.5, 1 + perUp * flareStart);
        double offEnd = atEnd / Math.max(0.5, 1 - perUp * flareEnd);
        double outStart = offStart * flareStart;
        double outEnd = offEnd * flareEnd;
        return new Ring(
                new double[] {
                    ring.across(side),
                    ring.across(next),
                    ring.across(next) - offEnd * onUp + outEnd * onAcross,
                    ring.across(side) - offStart * onUp - outStart * onAcross
                },
                new double[] {
                    ring.up(side),
                    ring.up(next),
                    ring.up(next) + offEnd * onAcross + outEnd * onUp,
                    ring.up(side) + offStart * onAcross - outStart * onUp
                },
                new int[4]);
    }

    /**
     * How much further out past the end of the low a way reaches for each length off it: at an obtuse corner, as where a
     * valley comes down to an eave, as far as the plane does.
     *
     * @param onAcross the way the low runs on past this end; one long
     * @param hand     1 if metal lies to the left of that way, −1 if to the right
     */
    private static double flare(Ring ring, int corner, int beyond, double onAcross, double onUp, int hand) {
        double across = ring.across(beyond) - ring.across(corner);
        double up = ring.up(beyond) - ring.up(corner);
        double on = across * onAcross + up * onUp;
        double off = hand * (up * onAcross - across * onUp);
        return on > 0 && off > STRAIGHT * Math.hypot(across, up) ? on / off : 0;
    }

    /** Takes them out of a line. */
    void takeOutOf(RowLine line) {
        ways.forEach(line::outside);
    }
}
