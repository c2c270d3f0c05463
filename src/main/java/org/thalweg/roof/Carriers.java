package org.thalweg.roof;

import java.util.Arrays;

/** Which pieces start at each joined corner: every plane that carries the corner has one there. */
final class Carriers {

    private final Pieces pieces;
    private final int[] first;
    private final int[] next;

    Carriers(Corners corners, Pieces pieces) {
        this.pieces = pieces;
        first = new int[corners.count];
        next = new int[pieces.count()];
        Arrays.fill(first, -1);
        for (int p = pieces.count() - 1; p >= 0; p--) {
            next[p] = first[pieces.from[p]];
            first[pieces.from[p]] = p;
        }
    }

    /** The first piece, in the order of the planes, that starts at a corner; −1 if none does. */
    int first(int corner) {
        return first[corner];
    }

    /** The next piece that starts where {@code piece} does; −1 after the last. */
    int next(int piece) {
        return next[piece];
    }

    /** Whether one plane carries both corners. */
    boolean shared(int corner, int other) {
        for (int p = first[corner]; p >= 0; p = next[p]) {
            for (int q = first[other]; q >= 0; q = next[q]) {
                if (pieces.plane(p) == pieces.plane(q)) {
                    return true;
                }
            }
        }
        return false;
    }
}
