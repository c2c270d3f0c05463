package org.thalweg.geometry;

import java.util.Arrays;

/** Gathers the corners of a ring, leaving out those that repeat the one before. */
final class RingBuilder {

    private double[] across = new double[8];
    private double[] up = new double[8];
    private int[] tag = new int[8];
    private int size;

    /** Starts anew. */
    RingBuilder empty() {
        size = 0;
        return this;
    }

    /** The next corner, and what the side after it lies on. A corner that repeats the last only changes that side. */
    void add(double a, double u, int t) {
        if (size > 0 && across[size - 1] == a && up[size - 1] == u) {
            tag[size - 1] = t;
            return;
        }
        if (size == across.length) {
            across = Arrays.copyOf(across, size * 2);
            up = Arrays.copyOf(up, size * 2);
            tag = Arrays.copyOf(tag, size * 2);
        }
        across[size] = a;
        up[size] = u;
        tag[size++] = t;
    }

    /** What the side after the last corner lies on, after all. */
    void retag(int t) {
        tag[size - 1] = t;
    }

    /**
     * Takes out corners where the ring turns back on itself along a line that runs straight up, as it does where a side of
     * the shape lies on the cutting line.
     */
    void dropSpikes() {
        for (int i = 0, quiet = 0; size > 2 && quiet < size; i = i + 1 < size ? i + 1 : 0) {
            int before = i == 0 ? size - 1 : i - 1;
            int after = i + 1 == size ? 0 : i + 1;
            boolean upright = across[before] == across[i] && across[i] == across[after];
            if (upright && (up[i] - up[before]) * (up[after] - up[i]) <= 0) {
                boolean beyond = (up[after] - up[before]) * (up[i] - up[before]) < 0;
                if (beyond || up[after] == up[before]) {
                    tag[before] = tag[i];
                }
                remove(i);
                i = Math.max(0, i - 2);
                quiet = 0;
            } else {
                quiet++;
            }
        }
    }

    private void remove(int corner) {
        size--;
        System.arraycopy(across, corner + 1, across, corner, size - corner);
        System.arraycopy(up, corner + 1, up, corner, size - corner);
        System.arraycopy(tag, corner + 1, tag, corner, size - corner);
    }

    /** The ring; a last corner that repeats the first is left out. */
    Ring closed() {
        if (size > 1 && across[size - 1] == across[0] && up[size - 1] == up[0]) {
            size--;
        }
        return new Ring(Arrays.copyOf(across, size), Arrays.copyOf(up, size), Arrays.copyOf(tag, size));
    }
}
