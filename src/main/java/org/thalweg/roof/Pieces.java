package org.thalweg.roof;

import java.util.Arrays;
import java.util.List;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;
import org.thalweg.finding.Refused;
import org.thalweg.geometry.Order;
import org.thalweg.geometry.PlanGrid;
import org.thalweg.geometry.Vector3;
import org.thalweg.units.Count;

/**
 * The sides of all rings, cut where a corner of another ring touches them: a dormer that stands on the eave, a wing
 * whose ridge ends in the middle of the main roof's.
 *
 * <pre>
 *   A ----------- B        A --- C ------ B      one side of the plane below,
 *        C ------              C ------          two pieces of it
 * </pre>
 *
 * <p>A cut moves nothing: in its plane a side stays as straight as it was, and the cut lies on it beside the corner that
 * made it, at most a tolerance off.
 */
final class Pieces {

    /**
     * Most cuts of a roof: twice as many as it may have corners at the door. Every plane of a real roof is cut a few times;
     * planes heaped on one line by mistake are cut by each other, and their number goes up with its square.
     */
    static final int MOST_CUTS = 40_000;

    /** The first piece of each slot, and at the end how many pieces there are. */
    final int[] first;

    /** The slot each piece is part of the side of. */
    final int[] slot;

    /** The joined corners each piece runs between. */
    final int[] from;

    final int[] to;

    /** How far along its side each piece starts, from 0 to 1. */
    final double[] start;

    private final Corners corners;
    private final Outlines outlines;

    /** The corners that cut each side, side by side in the order of the slots. */
    private int[] cutCorner = new int[16];

    private double[] cutAt = new double[16];
    private int cuts;

    Pieces(List<PlaneOutline> planes, Corners corners, Outlines outlines, PlanGrid grid) {
        this.corners = corners;
        this.outlines = outlines;
        first = new int[outlines.slots() + 1];
        if (outlines.plane.length > 1) {
            findCuts(planes, grid);
        } else {
            Arrays.setAll(first, s -> s);
        }
        int count = outlines.slots() + cuts;
        slot = new int[count];
        from = new int[count];
        to = new int[count];
        start = new double[count];
        fill();
    }

    private void findCuts(List<PlaneOutline> planes, PlanGrid grid) {
        int[] ringOf = rings();
        int[] found = new int[corners.count];
        for (int s = 0; s < outlines.slots(); s++) {
            int a = outlines.corner[s];
            int b = outlines.corner[outlines.next(s)];
            int near = grid.along(corners.x[a], corners.y[a], corners.x[b], corners.y[b], corners.reach, found);
            int firstCut = cuts;
            for (int i = 0; i < near; i++) {
                if (found[i] != a && found[i] != b && ringOf[found[i]] != outlines.ring[s]) {
                    touch(a, b, found[i]);
                }
            }
            if (cuts > firstCut) {
                sortCuts(firstCut);
                keepApart(firstCut, corners.distance(a, b));
            }
            if (cuts > MOST_CUTS) {
                throw tooMany(planes.get(outlines.plane[outlines.ring[s]]));
            }
            first[s + 1] = first[s] + 1 + cuts - firstCut;
        }
    }

    private static Refused tooMany(PlaneOutline plane) {
        return new Refused(Refusal.of(
                RefusalCode.TOO_CROWDED,
                plane.at(),
                "Up to this plane, corners of other planes lie on the roof's sides more than {limit} times. Leave out planes"
                        + " that lie over each other.",
                new Count(MOST_CUTS + 1L),
                new Count(MOST_CUTS)));
    }

    /** The ring of each joined corner, −1 for one that several rings carry. */
    private int[] rings() {
        int[] ringOf = new int[corners.count];
        Arrays.fill(ringOf, -2);
        for (int s = 0; s < outlines.slots(); s++) {
            int corner = outlines.corner[s];
            boolean other = ringOf[corner] != -2 && ringOf[corner] != outlines.ring[s];
            ringOf[corner] = other ? -1 : outlines.ring[s];
        }
        return ringOf;
    }

    /** Notes a cut where corner c lies within reach of the line from a to b, between its ends. */
    private void touch(int a, int b, int c) {
        double dx = corners.x[b] - corners.x[a];
        double dy = corners.y[b] - corners.y[a];
        double dz = corners.z[b] - corners.z[a];
        double wx = corners.x[c] - corners.x[a];
        double wy = corners.y[c] - corners.y[a];
        double wz = corners.z[c] - corners.z[a];
        double at = (wx * dx + wy * dy + wz * dz) / (dx * dx + dy * dy + dz * dz);
        double px = wx - at * dx;
        double py = wy - at * dy;
        double pz = wz - at * dz;
        if (at > 0 && at < 1 && px * px + py * py + pz * pz <= corners.reach * corners.reach) {
            if (cuts == cutAt.length) {
                cutCorner = Arrays.copyOf(cutCorner, 2 * cuts);
                cutAt = Arrays.copyOf(cutAt, 2 * cuts);
            }
            cutCorner[cuts] = c;
            cutAt[cuts] = at;
            cuts++;
        }
    }

    private void sortCuts(int firstCut) {
        int[] corner = Arrays.copyOfRange(cutCorner, firstCut, cuts);
        double[] at = Arrays.copyOfRange(cutAt, firstCut, cuts);
        int[] order = Order.of(at.length, (i, j) -> at[i] != at[j] ? at[i] < at[j] : corner[i] < corner[j]);
        for (int i = 0; i < order.length; i++) {
            cutCorner[firstCut + i] = corner[order[i]];
            cutAt[firstCut + i] = at[order[i]];
        }
    }

    /** Drops cuts that would leave a piece no longer than corners may stand apart and be one. */
    private void keepApart(int firstCut, double length) {
        int kept = firstCut;
        double last = 0;
        for (int i = firstCut; i < cuts; i++) {
            if ((cutAt[i] - last) * length > corners.reach && (1 - cutAt[i]) * length > corners.reach) {
                last = cutAt[i];
                cutCorner[kept] = cutCorner[i];
                cutAt[kept] = cutAt[i];
                kept++;
            }
        }
        cuts = kept;
    }

    private void fill() {
        int piece = 0;
        int cut = 0;
        for (int s = 0; s < outlines.slots(); s++) {
            int last = first[s + 1] - 1;
            slot[piece] = s;
            from[piece] = outlines.corner[s];
            while (piece < last) {
                to[piece] = cutCorner[cut];
                piece++;
                slot[piece] = s;
                from[piece] = cutCorner[cut];
                start[piece] = cutAt[cut];
                cut++;
            }
            to[piece++] = outlines.corner[outlines.next(s)];
        }
    }

    int count() {
        return from.length;
    }

    /** The plane a piece belongs to. */
    int plane(int piece) {
        return outlines.plane[outlines.ring[slot[piece]]];
    }

    /** Whether a piece is part of the rim of an opening. */
    boolean onOpening(int piece) {
        return outlines.isOpening(outlines.ring[slot[piece]]);
    }

    /** The whole side a piece is part of, from its first corner to its last; metres. */
    Vector3 side(int piece) {
        return corners.step(outlines.corner[slot[piece]], outlines.corner[outlines.next(slot[piece])]);
    }
}
