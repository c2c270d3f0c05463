package org.thalweg.footprint;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The lines round every slope, noted one by one as eaves rise, each with the slope to its left; then put together to rings. */
final class SlopeLines {

    private final int[] united;
    private final boolean[] upright;
    private final List<int[]> lines = new ArrayList<>();

    /** @param upright which slopes are gables: their lines are not kept */
    SlopeLines(boolean[] upright) {
        this.upright = upright.clone();
        united = new int[upright.length];
        Arrays.setAll(united, i -> i);
    }

    /** A line with the slope to its left, from one node to another. */
    void add(int slope, int from, int to) {
        if (!upright[slope]) {
            lines.add(new int[] {slope, from, to});
        }
    }

    /** Two slopes turned out to be one. */
    void unite(int one, int other) {
        int a = slopeOf(one);
        int b = slopeOf(other);
        united[Math.max(a, b)] = Math.min(a, b);
    }

    /** The number of the slope this one became part of; itself, if of none. */
    int slopeOf(int slope) {
        int root = slope;
        while (united[root] != root) {
            root = united[root];
        }
        return root;
    }

    /** The ring of nodes round every slope by its number; empty for those that are gables or part of another. */
    List<List<Integer>> rings() {
        List<List<int[]>> bySlope = new ArrayList<>();
        for (int i = 0; i < united.length; i++) {
            bySlope.add(new ArrayList<>());
        }
        for (int[] line : lines) {
            bySlope.get(slopeOf(line[0])).add(line);
        }
        List<List<Integer>> rings = new ArrayList<>();
        for (int slope = 0; slope < united.length; slope++) {
            rings.add(ring(slope, bySlope.get(slope)));
        }
        return rings;
    }

    private static List<Integer> ring(int slope, List<int[]> lines) {
        List<Integer> ring = new ArrayList<>();
        if (lines.isEmpty()) {
            return ring;
        }
        Map<Integer, Integer> next = new HashMap<>();
        for (int[] line : lines) {
            if (next.put(line[1], line[2]) != null) {
                throw notSimple(slope, "touches itself");
            }
        }
        int start = lines.get(0)[1];
        int node = start;
        do {
            ring.add(node);
            Integer to = next.remove(node);
            if (to == null) {
                throw notSimple(slope, "is not closed");
            }
            node = to;
        } while (node != start);
        if (!next.isEmpty()) {
            throw notSimple(slope, "surrounds another part of the roof");
        }
        return ring;
    }

    private static NoRoof.Stop notSimple(int slope, String what) {
        return new NoRoof.Stop(NoRoof.because(
                NoRoof.Reason.SLOPE_NOT_SIMPLE, slope, "the slope of side %d %s".formatted(slope, what)));
    }
}
