package org.thalweg.geometry;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Whether a shape is one that can be cut from metal: no side crosses or runs along another, every opening lies inside
 * and apart from the others.
 *
 * <p>Rings may touch themselves and each other in single points: a skylight may stand with a corner on the ridge, an
 * outline may pinch. A touch is a corner within a {@link Tolerance#hair} of a side or of another corner, from which the
 * ring goes back to the side it came from.
 *
 * <p>Known limits: sides are compared in the order of their near ends, so a ring of n short sides takes about n log n
 * steps and one of n sides that all lie side by side takes n².
 */
public final class RingChecks {

    /** What is wrong with a ring. */
    public enum Fault {
        /** Two sides cross. */
        CROSSES,
        /** Two sides run along each other, or one turns back on itself. */
        RUNS_ALONG,
        /** A corner of an opening lies outside the outer ring. */
        OUTSIDE,
        /** An opening lies in another. */
        WITHIN
    }

    /**
     * One reason why a shape can't be cut.
     *
     * @param fault     what is wrong
     * @param ring      the ring to put right: 0 the outer ring, 1 … the openings
     * @param side      its side, or the corner that side starts at
     * @param otherRing the ring it is at odds with, the same one or an earlier one
     * @param otherSide that ring's side, smaller than {@code side} if the ring is the same; 0 for OUTSIDE and WITHIN
     */
    public record Conflict(Fault fault, int ring, int side, int otherRing, int otherSide) {}

    private RingChecks() {}

    /**
     * What is wrong with a shape: at most one conflict a ring, in the order of the rings. Rings that are at odds with
     * themselves come alone, for nothing else can be said of them.
     *
     * @param shape rings of at least three corners; may run either way round
     */
    public static List<Conflict> of(Region shape, Tolerance tolerance) {
        if (shape.openings().isEmpty() && bulges(shape.outer(), tolerance.hair())) {
            return List.of();
        }
        Sides sides = new Sides(shape, tolerance.hair());
        List<Conflict> conflicts = sides.conflicts(true);
        if (conflicts.isEmpty() && sides.rings.length > 1) {
            conflicts = sides.conflicts(false);
            if (conflicts.isEmpty()) {
                conflicts = sides.strays();
            }
        }
        return conflicts;
    }

    /** Whether a triangle or quadrilateral turns left at every corner: then it is simple, and most roof planes are. */
    private static boolean bulges(Ring ring, double hair) {
        int size = ring.size();
        if (size > 4) {
            return false;
        }
        for (int i = 0; i < size; i++) {
            int j = ring.next(i);
            int k = ring.next(j);
            double x = ring.across(j) - ring.across(i);
            double y = ring.up(j) - ring.up(i);
            double turn = x * (ring.up(k) - ring.up(i)) - y * (ring.across(k) - ring.across(i));
            if (turn <= hair * (Math.abs(x) + Math.abs(y))) {
                return false;
            }
        }
        return true;
    }

    /** The sides of all rings of a shape, one after the other. Side i starts at corner i. */
    private static final class Sides {
        final Ring[] rings;
        /** The first side of each ring, and at the end how many sides there are. */
        final int[] first;

        private final double hair;
        private final double[] x;
        private final double[] y;
        private final int[] ring;
        private final int[] next;
        private final int[] before;

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

        /** Crossings of rings with themselves, or of each ring with earlier ones; the first found of each ring. */
        List<Conflict> conflicts(boolean withItself) {
            @Nullable Conflict[] found = new Conflict[rings.length];
            Sweep sweep = new Sweep();
            for (int a = 0; a < x.length; a++) {
                int i = sweep.order[a];
                double reach = sweep.far[a] + hair;
                for (int b = a + 1; b < x.length && sweep.near[b] <= reach; b++) {
                    if (sweep.low[b] > sweep.high[a] + hair || sweep.low[a] > sweep.high[b] + hair) {
                        continue;
                    }
                    int j = sweep.order[b];
                    if (withItself != (ring[i] == ring[j]) || found[Math.max(ring[i], ring[j])] != null) {
                        continue;
                    }
                    Conflict conflict = conflict(Math.max(i, j), Math.min(i, j));
                    if (conflict != null) {
                        found[conflict.ring] = conflict;
                        if (rings.length == 1) {
                            return List.of(conflict);
                        }
                    }
                }
            }
            return present(found);
        }

        private static List<Conflict> present(@Nullable Conflict[] found) {
            List<Conflict> present = new ArrayList<>();
            for (Conflict conflict : found) {
                if (conflict != null) {
                    present.add(conflict);
                }
            }
            return present;
        }

        private @Nullable Conflict conflict(int side, int other) {
            Fault fault = fault(side, other);
            return fault == null
                    ? null
                    : new Conflict(
                            fault, ring[side], side - first[ring[side]], ring[other], other - first[ring[other]]);
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
        private int turn(int p, int q, int r) {
            double dx = x[q] - x[p];
            double dy = y[q] - y[p];
            double twice = dx * (y[r] - y[p]) - dy * (x[r] - x[p]);
            // |dx| + |dy| is the side's length or up to 1.4 times it; near enough for a hair, and no root to draw.
            double near = hair * (Math.abs(dx) + Math.abs(dy));
            return twice > near ? 1 : twice < -near ? -1 : 0;
        }

        private boolean same(int corner, int other) {
            return Math.abs(x[corner] - x[other]) <= hair && Math.abs(y[corner] - y[other]) <= hair;
        }

        /** Whether a corner on the line of a side lies between its ends, not on them. */
        private boolean inside(int corner, int side) {
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
            return (x[next[side]] - x[side]) * (x[corner] - x[side])
                    + (y[next[side]] - y[side]) * (y[corner] - y[side]);
        }

        /** Whether two rings, or two turns of one, that meet in a corner come out on the other side. */
        private boolean crossAtCorner(int i, int j) {
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

        /** Sides in the order of their near ends, along the direction in which they are shorter for the shape. */
        private final class Sweep {
            final int[] order;
            final double[] near;
            final double[] far;
            final double[] low;
            final double[] high;

            Sweep() {
                boolean acrossFirst = spread(x) <= spread(y);
                double[] p = acrossFirst ? x : y;
                double[] q = acrossFirst ? y : x;
                order = Order.of(p.length, (a, b) -> Math.min(p[a], p[next[a]]) < Math.min(p[b], p[next[b]]));
                near = new double[p.length];
                far = new double[p.length];
                low = new double[p.length];
                high = new double[p.length];
                for (int a = 0; a < p.length; a++) {
                    int i = order[a];
                    near[a] = Math.min(p[i], p[next[i]]);
                    far[a] = Math.max(p[i], p[next[i]]);
                    low[a] = Math.min(q[i], q[next[i]]);
                    high[a] = Math.max(q[i], q[next[i]]);
                }
            }

            /** How often the sides together would reach from end to end. */
            private double spread(double[] p) {
                double sum = 0;
                double least = p[0];
                double most = p[0];
                for (int i = 0; i < p.length; i++) {
                    sum += Math.abs(p[next[i]] - p[i]);
                    least = Math.min(least, p[i]);
                    most = Math.max(most, p[i]);
                }
                return sum / (most - least);
            }
        }
    }
}
