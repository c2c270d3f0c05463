package org.thalweg.geometry;

import java.util.Arrays;

/**
 * The sides that a sweep line meets, from low to high: a search tree kept flat by giving each side a rank that looks
 * random and is always the same, with every side above those of lower rank. [published: Seidel and Aragon, Randomized
 * search trees, 1996; from memory]
 */
final class SideOrder {

    private static final int NONE = -1;

    private final Sides sides;
    private final int[] low;
    private final int[] high;
    private final int[] parent;
    private final int[] below;
    private final int[] above;
    private int root = NONE;

    SideOrder(Sides sides) {
        this.sides = sides;
        int count = sides.x.length;
        low = filled(count);
        high = filled(count);
        parent = filled(count);
        below = filled(count);
        above = filled(count);
    }

    private static int[] filled(int count) {
        int[] values = new int[count];
        Arrays.fill(values, NONE);
        return values;
    }

    /** The side next below, or −1. */
    int below(int side) {
        return below[side];
    }

    /** The side next above, or −1. */
    int above(int side) {
        return above[side];
    }

    /** The lowest side, or −1. */
    int lowest() {
        int lowest = root;
        while (lowest != NONE && low[lowest] != NONE) {
            lowest = low[lowest];
        }
        return lowest;
    }

    /** The highest side that is not above a corner, or −1. */
    int under(int corner) {
        int under = NONE;
        int at = root;
        while (at != NONE) {
            boolean atOrUnder = sides.turn(left(at), right(at), corner) >= 0;
            under = atOrUnder ? at : under;
            at = atOrUnder ? high[at] : low[at];
        }
        return under;
    }

    void insert(int side) {
        int at = root;
        int over = NONE;
        boolean goHigh = false;
        while (at != NONE) {
            over = at;
            goHigh = isAbove(side, at);
            at = goHigh ? high[at] : low[at];
        }
        low[side] = NONE;
        high[side] = NONE;
        parent[side] = over;
        if (over == NONE) {
            root = side;
            join(NONE, side);
            join(side, NONE);
            return;
        }
        if (goHigh) {
            high[over] = side;
            join(side, above[over]);
            join(over, side);
        } else {
            low[over] = side;
            join(below[over], side);
            join(side, over);
        }
        while (parent[side] != NONE && rank(side) > rank(parent[side])) {
            raise(side);
        }
    }

    void remove(int side) {
        while (low[side] != NONE || high[side] != NONE) {
            boolean raiseLow = high[side] == NONE || (low[side] != NONE && rank(low[side]) > rank(high[side]));
            raise(raiseLow ? low[side] : high[side]);
        }
        replace(parent[side], side, NONE);
        join(below[side], above[side]);
    }

    private void join(int under, int over) {
        if (under != NONE) {
            above[under] = over;
        }
        if (over != NONE) {
            below[over] = under;
        }
    }

    /** Turns the tree so that a side comes above its parent. */
    private void raise(int side) {
        int down = parent[side];
        replace(parent[down], down, side);
        int moved;
        if (low[down] == side) {
            moved = high[side];
            low[down] = moved;
            high[side] = down;
        } else {
            moved = low[side];
            high[down] = moved;
            low[side] = down;
        }
        parent[down] = side;
        if (moved != NONE) {
            parent[moved] = down;
        }
    }

    private void replace(int over, int old, int side) {
        if (over == NONE) {
            root = side;
        } else if (low[over] == old) {
            low[over] = side;
        } else {
            high[over] = side;
        }
        if (side != NONE) {
            parent[side] = over;
        }
    }

    private static int rank(int side) {
        int mixed = side * 0x9E3779B1;
        mixed ^= mixed >>> 15;
        mixed *= 0x85EBCA77;
        return mixed ^ (mixed >>> 13);
    }

    /** Whether a side that starts now lies above one that started before; from a common start, by where they go. */
    private boolean isAbove(int side, int other) {
        int turn = sides.turn(left(other), right(other), left(side));
        if (turn == 0) {
            turn = sides.turn(left(other), right(other), right(side));
        }
        if (turn == 0) {
            turn = -sides.turn(left(side), right(side), right(other));
        }
        return turn != 0 ? turn > 0 : side > other;
    }

    private int left(int side) {
        int end = sides.next[side];
        return sides.leftOf(side, end) ? side : end;
    }

    private int right(int side) {
        int end = sides.next[side];
        return sides.leftOf(side, end) ? end : side;
    }
}
