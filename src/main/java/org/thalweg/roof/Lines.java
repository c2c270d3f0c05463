package org.thalweg.roof;

import java.util.Arrays;
import org.thalweg.geometry.Vector3;
import org.thalweg.units.Angle;

/**
 * Which pieces lie on the same line, and what that makes of them.
 *
 * <p>Outer rings run counter-clockwise seen from above, so two neighbours run along the side they share in opposite
 * directions; two that run the same way lie on the same side of it, one stacked over the other. Where more than two
 * planes meet, the two that run opposite ways and bend least are neighbours (ties: the first in the order of the
 * planes), and the others are an edge of their own, stacked.
 */
final class Lines {

    /** Bends whose cosines differ by less are equal: rounding noise of unit vectors, far under a second of arc. */
    private static final double SAME_COSINE = 1e-12;

    /** The line each piece lies on. */
    final int[] line;

    /** The next piece on the same line, in the order of the planes; −1 for the last. */
    final int[] nextOnLine;

    /** The first piece on each line. */
    final int[] firstPiece;

    /** How many pieces lie on each line. */
    final int[] pieceCount;

    /** How many planes meet there in all; 0 where no more than two do, −1 for those that found no neighbour there. */
    final int[] crowd;

    /** What each line is. */
    final EdgeKind[] kind;

    final Angle[] slope;
    final Angle[] bend;

    /** Whether the two planes of a line turn away from each other. */
    final boolean[] convex;

    /** For each piece, the angle in its plane from the level line. */
    final Angle[] mitre;

    /** How many lines there are. */
    int count;

    private final Pieces pieces;
    private final PlaneFit[] fits;

    Lines(Pieces pieces, PlaneFit[] fits) {
        this.pieces = pieces;
        this.fits = fits;
        int most = pieces.count();
        line = new int[most];
        nextOnLine = new int[most];
        firstPiece = new int[most];
        pieceCount = new int[most];
        crowd = new int[most];
        kind = new EdgeKind[most];
        slope = new Angle[most];
        bend = new Angle[most];
        convex = new boolean[most];
        mitre = new Angle[most];
        Arrays.fill(nextOnLine, -1);
        gather();
        for (int l = count - 1; l >= 0; l--) {
            if (pieceCount[l] > 2) {
                pairInCrowd(l);
            }
        }
        for (int l = 0; l < count; l++) {
            name(l);
        }
    }

    /** Puts pieces between the same two corners on one line. */
    private void gather() {
        int size = Integer.highestOneBit(Math.max(4, pieces.count())) * 2;
        int[] bucket = new int[size];
        int[] nextInBucket = new int[pieces.count()];
        int[] lastPiece = new int[pieces.count()];
        Arrays.fill(bucket, -1);
        for (int p = 0; p < pieces.count(); p++) {
            int low = Math.min(pieces.from[p], pieces.to[p]);
            int high = Math.max(pieces.from[p], pieces.to[p]);
            int at = (int) (((low * 0x9E3779B97F4A7C15L + high) * 0xC2B2AE3D27D4EB4FL) >>> 40) & (size - 1);
            int l = bucket[at];
            while (l >= 0 && !between(firstPiece[l], low, high)) {
                l = nextInBucket[l];
            }
            if (l < 0) {
                l = count++;
                firstPiece[l] = p;
                nextInBucket[l] = bucket[at];
                bucket[at] = l;
            } else {
                nextOnLine[lastPiece[l]] = p;
            }
            lastPiece[l] = p;
            line[p] = l;
            pieceCount[l]++;
        }
    }

    private boolean between(int piece, int low, int high) {
        return Math.min(pieces.from[piece], pieces.to[piece]) == low
                && Math.max(pieces.from[piece], pieces.to[piece]) == high;
    }

    /** Leaves two neighbours on a crowded line and moves the others to a line of their own. */
    private void pairInCrowd(int crowded) {
        crowd[crowded] = pieceCount[crowded];
        int one = -1;
        int other = -1;
        double best = Double.NEGATIVE_INFINITY;
        for (int p = firstPiece[crowded]; p >= 0; p = nextOnLine[p]) {
            for (int q = nextOnLine[p]; q >= 0; q = nextOnLine[q]) {
                double cosine = fit(p).outward().dot(fit(q).outward());
                if (opposite(p, q) && cosine > best + SAME_COSINE) {
                    best = cosine;
                    one = p;
                    other = q;
                }
            }
        }
        if (one >= 0) {
            part(crowded, one, other);
        }
    }

    private void part(int crowded, int one, int other) {
        int moved = count++;
        crowd[moved] = -1;
        int last = -1;
        int next;
        for (int p = firstPiece[crowded]; p >= 0; p = next) {
            next = nextOnLine[p];
            if (p != one && p != other) {
                line[p] = moved;
                pieceCount[moved]++;
                if (last < 0) {
                    firstPiece[moved] = p;
                } else {
                    nextOnLine[last] = p;
                }
                nextOnLine[p] = -1;
                last = p;
            }
        }
        firstPiece[crowded] = one;
        nextOnLine[one] = other;
        nextOnLine[other] = -1;
        pieceCount[crowded] = 2;
    }

    private boolean opposite(int p, int q) {
        return pieces.from[p] == pieces.to[q];
    }

    private PlaneFit fit(int piece) {
        return fits[pieces.plane(piece)];
    }

    private void name(int l) {
        int one = firstPiece[l];
        int other = nextOnLine[one];
        Vector3 run = run(l);
        slope[l] = Angle.atan2(Math.abs(run.z()), Math.hypot(run.x(), run.y()));
        bend[l] = Angle.ZERO;
        for (int p = one; p >= 0; p = nextOnLine[p]) {
            mitre[p] = fit(p).mitre(run);
        }
        if (pieceCount[l] == 2) {
            bend(l, one, other, run);
        }
        if (crowd[l] < 0 || pieceCount[l] > 2 || (other >= 0 && !opposite(one, other))) {
            kind[l] = EdgeKind.STACKED;
        } else if (other < 0) {
            kind[l] = EdgeKinds.alone(slope[l], view(one, run), pieces.onOpening(one));
        } else {
            Angle turn = angle(fit(one).across(), fit(other).across());
            kind[l] = EdgeKinds.shared(slope[l], view(one, run), view(other, run.times(-1)), bend[l], convex[l], turn);
        }
    }

    /** The direction of a line as its first piece runs it: that of the longest side it is part of. */
    private Vector3 run(int l) {
        int first = firstPiece[l];
        Vector3 longest = pieces.side(first);
        for (int p = nextOnLine[first]; p >= 0; p = nextOnLine[p]) {
            Vector3 side = pieces.side(p);
            if (side.dot(side) > longest.dot(longest)) {
                longest = opposite(first, p) ? side.times(-1) : side;
            }
        }
        return longest;
    }

    /**
     * With {@code one} to the left of the run, the planes turn away from each other when the cross product of their
     * normals points along it: so on a ridge, where both lean outward.
     */
    private void bend(int l, int one, int other, Vector3 run) {
        Vector3 left = fit(one).outward();
        Vector3 right = fit(other).outward();
        bend[l] = angle(left, right);
        convex[l] = opposite(one, other) && left.cross(right).dot(run) > 0;
    }

    private static Angle angle(Vector3 one, Vector3 other) {
        return Angle.atan2(one.cross(other).length(), one.dot(other));
    }

    private EdgeKinds.View view(int piece, Vector3 run) {
        PlaneFit fit = fit(piece);
        return new EdgeKinds.View(fit.level(), mitre[piece], run.dot(fit.across()) > 0);
    }
}
