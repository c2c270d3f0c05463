package org.thalweg.geometry;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.thalweg.geometry.RingChecks.Conflict;
import org.thalweg.geometry.RingChecks.Fault;

/** The sides of all rings of a shape, one after the other. Side i starts at corner i. */
final class Sides {
    final Ring[] rings;

    /** The first side of each ring, and at the end how many sides there are. */
    final int[] first;

    final double[] x;
    final double[] y;

    /** The ring of each side. */
    final int[] ring;

    /** The side after each side, and the one before it, around its ring. */
    final int[] next;

    final int[] before;

    private final double hair;

    Sides(Region shape, double hair) {
        this.hair = hair;
        rings = new Ring[1 + shape.openings().size()];
        first = new int[rings.length + 1];
        for (int r = 0; r < rings.length; r++) {
            rings[r] = r == 0 ? shape.outer() : shape.openings().get(r - 1);
            first[r + 1] = first[r] + rings[r].size();
        }
        int count = first[rings.length];
        x = new double[count];
        y = new double[count];
        ring = new int[count];
        next = new int[count];
        before = new int[count];
        for (int r = 0; r < rings.length; r++) {
            for (int i = 0; i < rings[r].size(); i++) {
                int side = first[r] + i;
                x[side] = rings[r].across(i);
                y[side] = rings[r].up(i);
                ring[side] = r;
                next[side] = first[r] + rings[r].next(i);
                before[next[side]] = side;
            }
        }
    }

    /** Every two sides compared; the first conflict of each ring with itself or, otherwise, with earlier rings. */
    List<Conflict> conflicts(boolean withItself) {
        @Nullable Conflict[] found = new Conflict[rings.length];
        for (int j = 1; j < x.length; j++) {
            for (int i = 0; i < j && found[ring[j]] == null; i++) {
                if (withItself == (ring[i] == ring[j])) {
                    found[ring[j]] = conflict(j, i);
                }
            }
        }
        List<Conflict> present = new ArrayList<>();
        for (Conflict conflict : found) {
            if (conflict != null) {
                present.add(conflict);
            }
        }
        return present;
    }

    /** What two sides have against each other. */
    @Nullable
    Conflict conflict(int side, int other) {
        Fault fault = fault(Math.max(side, other), Math.min(side, other));
        return fault == null ? null : conflict(fault, side, other);
    }

    /** The same, when it is known what. */
    Conflict conflict(Fault fault, int side, int other) {
        int i = Math.max(side, other);
        int j = Math.min(side, other);
        return new Conflict(fault, ring[i], i - first[ring[i]], ring[j], j - first[ring[j]]);
    }

    /**
     * Letters as in the picture: side i runs from a to b, side j from c to d.
     *
     * <pre>
     *        d
     *        |
     *   a ---+--- b
     *        |
     *        c
     * </pre>
     */
    private @Nullable Fault fault(int i, int j) {
        int a = i;
        int b = next[i];
        int c = j;
        int d = next[j];
        int cFromI = turn(a, b, c);
        int dFromI = turn(a, b, d);
        if (cFromI == dFromI && cFromI != 0) {
            return null;
        }
        int aFromJ = turn(c, d, a);
        int bFromJ = turn(c, d, b);
        if (aFromJ == bFromJ && aFromJ != 0) {
            return null;
        }
        if (cFromI * dFromI < 0 && aFromJ * bFromJ < 0) {
            return Fault.CROSSES;
        }
        if ((cFromI == 0 && dFromI == 0) || (aFromJ == 0 && bFromJ == 0)) {
            if (overlap(i, j) > hair) {
                return Fault.RUNS_ALONG;
            }
        }
        return passesThrough(i, j, cFromI, dFromI, aFromJ, bFromJ) ? Fault.CROSSES : null;
    }

    /** Whether a ring passes through a side, or through another ring, exactly at a corner. */
    private boolean passesThrough(int i, int j, int cFromI, int dFromI, int aFromJ, int bFromJ) {
        if (same(i, j)) {
            return crossAtCorner(i, j);
        }
        if (cFromI == 0 && inside(j, i)) {
            return turn(i, next[i], before[j]) * dFromI < 0;
        }
        return aFromJ == 0 && inside(i, j) && turn(j, next[j], before[i]) * bFromJ < 0;
    }

    /** Where r lies, seen along the line from p to q: 1 to the left, −1 to the right, 0 within a hair of it. */
    int turn(int p, int q, int r) {
        double dx = x[q] - x[p];
        double dy = y[q] - y[p];
        double twice = dx * (y[r] - y[p]) - dy * (x[r] - x[p]);
        // |dx| + |dy| is the side's length or up to 1.4 times it; near enough for a hair, and no root to draw.
        double near = hair * (Math.abs(dx) + Math.abs(dy));
        return twice > near ? 1 : twice < -near ? -1 : 0;
    }

    /** Whether a corner lies to the left of another; of two above each other the lower one does. */
    boolean leftOf(int a, int b) {
        return x[a] != x[b] ? x[a] < x[b] : y[a] < y[b];
    }

    private boolean same(int corner, int other) {
        return Math.abs(x[corner] - x[other]) <= hair && Math.abs(y[corner] - y[other]) <= hair;
    }

    /** Whether a corner on the line of a side lies between its ends, not on them. */
    boolean inside(int corner, int side) {
        int end = next[side];
        double dx = x[end] - x[side];
        double dy = y[end] - y[side];
        double t = dx * (x[corner] - x[side]) + dy * (y[corner] - y[side]);
        return t > 0 && t < dx * dx + dy * dy && !same(corner, side) && !same(corner, end);
    }

    /** Length two sides in one line have in common, measured along the longer; metres, at most 0 if none. */
    private double overlap(int i, int j) {
        boolean longerI = lengthSquared(i) >= lengthSquared(j);
        int base = longerI ? i : j;
        int other = longerI ? j : i;
        double length = Math.sqrt(lengthSquared(base));
        double from = along(base, other) / length;
        double to = along(base, next[other]) / length;
        return Math.min(length, Math.max(from, to)) - Math.max(0, Math.min(from, to));
    }

    private double lengthSquared(int side) {
        return along(side, next[side]);
    }

    private double along(int side, int corner) {
        return (x[next[side]] - x[side]) * (x[corner] - x[side]) + (y[next[side]] - y[side]) * (y[corner] - y[side]);
    }

    /** Whether two rings, or two turns of one, that meet in a corner come out on the other side. */
    boolean crossAtCorner(int i, int j) {
        return between(i, next[i], before[i], before[j]) != between(i, next[i], before[i], next[j]);
    }

    /** Whether from {@code at} the corner {@code seen} lies in the turn from {@code from} leftwards to {@code to}. */
    private boolean between(int at, int from, int to, int seen) {
        boolean leftOfFrom = cross(at, from, seen) > 0;
        boolean rightOfTo = cross(at, seen, to) > 0;
        return cross(at, from, to) >= 0 ? leftOfFrom && rightOfTo : leftOfFrom || rightOfTo;
    }

    private double cross(int at, int p, int q) {
        return (x[p] - x[at]) * (y[q] - y[at]) - (y[p] - y[at]) * (x[q] - x[at]);
    }

    /** Openings that lie outside the outer ring or in another opening, when no sides cross. */
    List<Conflict> strays() {
        List<Conflict> strays = new ArrayList<>();
        for (int r = 1; r < rings.length; r++) {
            int outside = cornerAt(r, 0, -1);
            if (outside >= 0) {
                strays.add(new Conflict(Fault.OUTSIDE, r, outside, 0, 0));
            }
            for (int s = 1; s < r && outside < 0; s++) {
                if (apart(rings[r], rings[s])) {
                    continue;
                }
                int within = cornerAt(r, s, 1);
                if (within >= 0 || cornerAt(s, r, 1) >= 0) {
                    strays.add(new Conflict(Fault.WITHIN, r, Math.max(0, within), s, 0));
                    break;
                }
            }
        }
        return strays;
    }

    /**
     * A corner of ring r that lies inside (1) or outside (−1) ring s. As no sides cross, the first corner that is not
     * on ring s decides for all; if all are on it the middles of the sides are asked.
     *
     * @return the corner, or −1 if there is none
     */
    private int cornerAt(int r, int s, int wanted) {
        Ring asked = rings[r];
        for (int i = 0; i < asked.size(); i++) {
            int where = where(s, asked.across(i), asked.up(i));
            if (where != 0) {
                return where == wanted ? i : -1;
            }
        }
        for (int i = 0; i < asked.size(); i++) {
            int j = asked.next(i);
            int where = where(s, (asked.across(i) + asked.across(j)) / 2, (asked.up(i) + asked.up(j)) / 2);
            if (where != 0) {
                return where == wanted ? i : -1;
            }
        }
        return -1;
    }

    /** 1 inside ring r, −1 outside, 0 within a hair of it. Counts the sides above the point. */
    private int where(int r, double px, double py) {
        boolean inside = false;
        for (int i = first[r]; i < first[r + 1]; i++) {
            int j = next[i];
            double dx = x[j] - x[i];
            double dy = y[j] - y[i];
            double twice = dx * (py - y[i]) - dy * (px - x[i]);
            if (Math.abs(twice) <= hair * (Math.abs(dx) + Math.abs(dy)) && beside(i, j, px, py)) {
                return 0;
            }
            if ((x[i] <= px) != (x[j] <= px) && (dx > 0) == (twice < 0)) {
                inside = !inside;
            }
        }
        return inside ? 1 : -1;
    }

    private boolean beside(int i, int j, double px, double py) {
        return px >= Math.min(x[i], x[j]) - hair
                && px <= Math.max(x[i], x[j]) + hair
                && py >= Math.min(y[i], y[j]) - hair
                && py <= Math.max(y[i], y[j]) + hair;
    }

    private static boolean apart(Ring a, Ring b) {
        return a.leastAcross() > b.mostAcross()
                || b.leastAcross() > a.mostAcross()
                || a.leastUp() > b.mostUp()
                || b.leastUp() > a.mostUp();
    }
}
