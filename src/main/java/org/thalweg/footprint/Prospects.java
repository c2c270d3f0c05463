package org.thalweg.footprint;

import java.util.Arrays;

/**
 * The planes an inner corner may run into, the earliest first by a lower bound of the time: a heap of bare numbers, because a
 * corner has as many as there are planes, and most of them never matter.
 */
final class Prospects {

    private final Eaves.Joint corner;
    private double[] earliest = new double[16];
    private int[] plane = new int[16];
    private int size;

    Prospects(Eaves.Joint corner) {
        this.corner = corner;
    }

    Eaves.Joint corner() {
        return corner;
    }

    boolean isEmpty() {
        return size == 0;
    }

    /** No meeting of those still here is before this. */
    double earliest() {
        return earliest[0];
    }

    void add(double time, int number) {
        if (size == plane.length) {
            earliest = Arrays.copyOf(earliest, 2 * size);
            plane = Arrays.copyOf(plane, 2 * size);
        }
        earliest[size] = time;
        plane[size++] = number;
    }

    /** Once all are added. */
    void order() {
        for (int i = size / 2 - 1; i >= 0; i--) {
            sink(i);
        }
    }

    /** Takes out the first: the number of its plane. */
    int take() {
        int first = plane[0];
        size--;
        earliest[0] = earliest[size];
        plane[0] = plane[size];
        sink(0);
        return first;
    }

    private void sink(int from) {
        int i = from;
        while (true) {
            int child = 2 * i + 1;
            if (child + 1 < size && earliest[child + 1] < earliest[child]) {
                child++;
            }
            if (child >= size || earliest[i] <= earliest[child]) {
                return;
            }
            double time = earliest[i];
            int number = plane[i];
            earliest[i] = earliest[child];
            plane[i] = plane[child];
            earliest[child] = time;
            plane[child] = number;
            i = child;
        }
    }
}
