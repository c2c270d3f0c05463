package org.thalweg.stock;

import java.util.Arrays;

/** Which panels hang together already. */
final class Rings {

    private final int[] parent;

    Rings(int count) {
        parent = new int[count];
        Arrays.setAll(parent, i -> i);
    }

    private int root(int i) {
        int at = i;
        while (parent[at] != at) {
            parent[at] = parent[parent[at]];
            at = parent[at];
        }
        return at;
    }

    /** False when they hang together already. */
    boolean join(int i, int j) {
        int a = root(i);
        int b = root(j);
        parent[Math.max(a, b)] = Math.min(a, b);
        return a != b;
    }
}
