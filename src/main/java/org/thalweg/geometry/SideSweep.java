package org.thalweg.geometry;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.thalweg.geometry.RingChecks.Conflict;
import org.thalweg.geometry.RingChecks.Fault;

/**
 * Looks for a crossing in a shape of many sides by sweeping a line over it from left to right. [published: Shamos and Hoey,
 * Geometric intersection problems, 1976; from memory]
 *
 * <p>The line meets the sides in an order from low to high that changes only at corners. Two sides that cross are
 * neighbours in that order just before they do, so it is enough to compare sides when they become neighbours.
 *
 * <p>Rings may touch in corners, so at each corner the chains that meet there (two sides of a ring in a corner, or one
 * side that passes) are also looked at all round: they cross if, going round, one begins inside another and ends outside.
 */
final class SideSweep {

    private static final int NONE = -1;

    private final Sides sides;
    private final SideOrder order;

    /** Sides that pass the corner at hand between their ends. */
    private int[] passing = new int[4];

    private int passingCount;

    SideSweep(Sides sides) {
        this.sides = sides;
        order = new SideOrder(sides);
    }

    /** One conflict, or none. */
    List<Conflict> first() {
        int[] corners = Order.of(sides.x.length, sides::leftOf);
        for (int from = 0, to; from < corners.length; from = to) {
            to = from + 1;
            while (to < corners.length && !sides.leftOf(corners[from], corners[to])) {
                to++;
            }
            Conflict conflict = at(corners, from, to);
            if (conflict != null) {
                return List.of(conflict);
            }
        }
        return List.of();
    }

    /** Sweeps over the corners from {@code from} to {@code to} in order, which are all in one place. */
    private @Nullable Conflict at(int[] corners, int from, int to) {
        Conflict conflict = null;
        for (int c = from; c < to && conflict == null; c++) {
            conflict = end(corners[c]);
        }
        if (conflict == null) {
            findPassing(corners[from]);
            conflict = allRound(corners, from, to);
        }
        for (int c = from; c < to && conflict == null; c++) {
            conflict = start(corners[c]);
        }
        return conflict;
    }

    /** Takes out the sides that end at a corner. */
    private @Nullable Conflict end(int corner) {
        Conflict conflict = null;
        for (int side : new int[] {sides.before[corner], corner}) {
            int farEnd = side == corner ? sides.next[corner] : side;
            if (conflict == null && sides.leftOf(farEnd, corner)) {
                int below = order.below(side);
                int above = order.above(side);
                order.remove(side);
                conflict = compare(below, above);
            }
        }
        return conflict;
    }

    /** Puts in the sides that start at a corner. */
    private @Nullable Conflict start(int corner) {
        Conflict conflict = null;
        for (int side : new int[] {sides.before[corner], corner}) {
            int farEnd = side == corner ? sides.next[corner] : side;
            if (conflict == null && sides.leftOf(corner, farEnd)) {
                order.insert(side);
                conflict = compare(order.below(side), side);
                conflict = conflict != null ? conflict : compare(side, order.above(side));
            }
        }
        return conflict;
    }

    private @Nullable Conflict compare(int below, int above) {
        return below == NONE || above == NONE ? null : sides.conflict(below, above);
    }

    private void findPassing(int corner) {
        passingCount = 0;
        int under = order.under(corner);
        for (int side = under; side != NONE && passes(corner, side); side = order.below(side)) {
            addPassing(side);
        }
        int over = under == NONE ? order.lowest() : order.above(under);
        for (int side = over; side != NONE && passes(corner, side); side = order.above(side)) {
            addPassing(side);
        }
    }

    private boolean passes(int corner, int side) {
        return sides.turn(side, sides.next[side], corner) == 0 && sides.inside(corner, side);
    }

    private void addPassing(int side) {
        if (passingCount == passing.length) {
            passing = Arrays.copyOf(passing, 2 * passingCount);
        }
        passing[passingCount++] = side;
    }

    /**
     * Looks at all chains that meet in a place: going round it, chains that only touch are met like brackets, each closed
     * before the one around it is.
     */
    private @Nullable Conflict allRound(int[] corners, int from, int to) {
        int count = to - from + passingCount;
        if (count < 2) {
            return null;
        }
        int place = corners[from];
        int[] chain = new int[count];
        double[] angle = new double[2 * count];
        for (int i = 0; i < count; i++) {
            boolean corner = i < to - from;
            chain[i] = corner ? corners[from + i] : passing[i - (to - from)];
            int back = corner ? sides.before[chain[i]] : chain[i];
            angle[2 * i] = angle(place, back);
            angle[2 * i + 1] = angle(place, sides.next[chain[i]]);
        }
        int[] round = Order.of(2 * count, (i, j) -> angle[i] < angle[j]);
        int[] open = new int[2 * count];
        int depth = 0;
        for (int ray : round) {
            if (depth > 0 && open[depth - 1] == ray / 2) {
                depth--;
            } else {
                open[depth++] = ray / 2;
            }
        }
        return depth == 0 ? null : crossing(chain, open, depth);
    }

    private double angle(int from, int to) {
        return Math.atan2(sides.y[to] - sides.y[from], sides.x[to] - sides.x[from]);
    }

    /** Between the two ends of a chain that stand closest together, only one end of each other chain is left. */
    private Conflict crossing(int[] chain, int[] open, int depth) {
        int[] seen = new int[chain.length];
        Arrays.fill(seen, NONE);
        int start = 0;
        int least = Integer.MAX_VALUE;
        for (int i = 0; i < depth; i++) {
            int before = seen[open[i]];
            if (before != NONE && i - before < least) {
                least = i - before;
                start = before;
            }
            seen[open[i]] = i;
        }
        return sides.conflict(Fault.CROSSES, chain[open[start]], chain[open[start + 1]]);
    }
}
