package org.thalweg.stock;

import java.util.Arrays;
import java.util.List;

/** What is cut from one bar: how many pieces of which kinds, longest first. Written down as pairs (kind, count). */
final class Pattern implements Comparable<Pattern> {

    private final int type;
    private final int[] pairs;

    private Pattern(int type, int[] pairs) {
        this.type = type;
        this.pairs = pairs;
    }

    /** From the count of every kind. */
    static Pattern of(int type, int[] counts) {
        int[] pairs = new int[2 * counts.length];
        int size = 0;
        for (int kind = 0; kind < counts.length; kind++) {
            if (counts[kind] > 0) {
                pairs[size++] = kind;
                pairs[size++] = counts[kind];
            }
        }
        return new Pattern(type, Arrays.copyOf(pairs, size));
    }

    /** All pieces of a few bars, from one bar. */
    static Pattern joined(int type, List<Pattern> few, int kinds) {
        int[] counts = new int[kinds];
        for (Pattern bar : few) {
            for (int i = 0; i < bar.size(); i++) {
                counts[bar.kind(i)] += bar.count(i);
            }
        }
        return of(type, counts);
    }

    static Pattern ofOne(int type, int kind, int count) {
        return new Pattern(type, new int[] {kind, count});
    }

    /** The same pieces from another sort of bar. */
    Pattern from(int otherType) {
        return new Pattern(otherType, pairs);
    }

    /** The sort of bar it is cut from. */
    int type() {
        return type;
    }

    /** How many kinds are on it. */
    int size() {
        return pairs.length / 2;
    }

    int kind(int i) {
        return pairs[2 * i];
    }

    int count(int i) {
        return pairs[2 * i + 1];
    }

    int countOf(int kind) {
        for (int i = 0; i < size(); i++) {
            if (kind(i) == kind) {
                return count(i);
            }
        }
        return 0;
    }

    /** What the pieces on it are worth. */
    long worth(long[] prices) {
        long worth = 0;
        for (int i = 0; i < size(); i++) {
            worth += prices[kind(i)] * count(i);
        }
        return worth;
    }

    long used(CuttingProblem problem) {
        long used = 0;
        for (int i = 0; i < size(); i++) {
            used += problem.length(kind(i)) * count(i);
        }
        return used;
    }

    /** How often it can be cut before a kind, or the bars, run out. */
    int times(int[] wanted, int[] available) {
        int times = available[type];
        for (int i = 0; i < size(); i++) {
            times = Math.min(times, wanted[kind(i)] / count(i));
        }
        return times;
    }

    /** Takes what it cuts, so many times, off what is left. */
    void take(int times, int[] wanted, int[] available) {
        for (int i = 0; i < size(); i++) {
            wanted[kind(i)] -= times * count(i);
        }
        if (available[type] != CuttingProblem.UNLIMITED) {
            available[type] -= times;
        }
    }

    /** By sort of bar; then the one with the longer piece, or with more of them, first. */
    @Override
    public int compareTo(Pattern other) {
        if (type != other.type) {
            return Integer.compare(type, other.type);
        }
        int i = Arrays.mismatch(pairs, other.pairs);
        if (i < 0 || i == pairs.length || i == other.pairs.length) {
            return Integer.compare(other.pairs.length, pairs.length);
        }
        return i % 2 == 0 ? Integer.compare(pairs[i], other.pairs[i]) : Integer.compare(other.pairs[i], pairs[i]);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Pattern pattern && pattern.type == type && Arrays.equals(pattern.pairs, pairs);
    }

    @Override
    public int hashCode() {
        return 31 * type + Arrays.hashCode(pairs);
    }
}
