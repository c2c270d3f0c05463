package org.thalweg.fastening;

import java.util.Arrays;

/** What is left of a straight line when parts of it are taken away: stretches in ascending order, apart from each other. */
final class Stretches {

    /** What is no longer than this is no stretch. Metres. */
    private final double hair;

    /** From, to, from, to … along the line, metres. */
    private double[] ends = new double[8];

    private double[] spare = new double[8];
    private int size;

    Stretches(double hair) {
        this.hair = hair;
    }

    /** Starts anew with one stretch; with none where {@code to} does not lie beyond {@code from}. */
    void start(double from, double to) {
        ends[0] = from;
        ends[1] = to;
        size = to - from > hair ? 2 : 0;
    }

    /** One more, wherever it lies. */
    void add(double from, double to) {
        if (size + 2 > ends.length) {
            ends = Arrays.copyOf(ends, 2 * ends.length);
        }
        ends[size] = from;
        ends[size + 1] = to;
        size += 2;
    }

    /** Puts those that were added in order, and makes one of those that are no further apart than a hair. */
    void join() {
        sort();
        int kept = 0;
        for (int i = 0; i < size; i += 2) {
            if (kept > 0 && ends[i] <= ends[kept - 1] + hair) {
                ends[kept - 1] = Math.max(ends[kept - 1], ends[i + 1]);
            } else {
                ends[kept] = ends[i];
                ends[kept + 1] = ends[i + 1];
                kept += 2;
            }
        }
        size = kept;
    }

    /** By hand: they are few, and nearly in order. */
    private void sort() {
        for (int i = 2; i < size; i += 2) {
            double from = ends[i];
            double to = ends[i + 1];
            int j = i;
            for (; j > 0 && ends[j - 2] > from; j -= 2) {
                ends[j] = ends[j - 2];
                ends[j + 1] = ends[j - 1];
            }
            ends[j] = from;
            ends[j + 1] = to;
        }
    }

    int count() {
        return size / 2;
    }

    double from(int stretch) {
        return ends[2 * stretch];
    }

    double to(int stretch) {
        return ends[2 * stretch + 1];
    }

    /** The longest stretch, the first of equals. There must be one. */
    int longest() {
        int longest = 0;
        for (int i = 1; i < count(); i++) {
            if (to(i) - from(i) > to(longest) - from(longest)) {
                longest = i;
            }
        }
        return longest;
    }

    /** Keeps only what lies between two places. */
    void keep(double from, double to) {
        if (size > 0 && (from > ends[0] || to < ends[size - 1])) {
            int kept = 0;
            for (int i = 0; i < size; i += 2) {
                double start = Math.max(ends[i], from);
                double end = Math.min(ends[i + 1], to);
                if (end - start > hair) {
                    ends[kept] = start;
                    ends[kept + 1] = end;
                    kept += 2;
                }
            }
            size = kept;
        }
    }

    /** Keeps only what lies between the first and the second place, the third and the fourth …; ascending. */
    void keep(double[] places, int count) {
        if (count == 2) {
            keep(places[0], places[1]);
            return;
        }
        int kept = 0;
        for (int i = 0; i < size; i += 2) {
            for (int j = 0; j + 1 < count; j += 2) {
                double start = Math.max(ends[i], places[j]);
                double end = Math.min(ends[i + 1], places[j + 1]);
                if (end - start > hair) {
                    kept = put(kept, start, end);
                }
            }
        }
        swap(kept);
    }

    /** Keeps only what others have too. */
    void keep(Stretches others) {
        keep(others.ends, others.size);
    }

    /** Takes out what lies between two places. */
    void drop(double from, double to) {
        int kept = 0;
        for (int i = 0; i < size; i += 2) {
            if (Math.min(from, ends[i + 1]) - ends[i] > hair) {
                kept = put(kept, ends[i], Math.min(from, ends[i + 1]));
            }
            if (ends[i + 1] - Math.max(to, ends[i]) > hair) {
                kept = put(kept, Math.max(to, ends[i]), ends[i + 1]);
            }
        }
        swap(kept);
    }

    /** Takes as much from both ends of every stretch. */
    void shorten(double by) {
        int kept = 0;
        for (int i = 0; i < size; i += 2) {
            if (ends[i + 1] - ends[i] - 2 * by > hair) {
                kept = put(kept, ends[i] + by, ends[i + 1] - by);
            }
        }
        swap(kept);
    }

    private int put(int at, double start, double end) {
        if (at + 2 > spare.length) {
            spare = Arrays.copyOf(spare, 2 * spare.length);
        }
        spare[at] = start;
        spare[at + 1] = end;
        return at + 2;
    }

    private void swap(int kept) {
        double[] last = ends;
        ends = spare;
        spare = last;
        size = kept;
    }
}
