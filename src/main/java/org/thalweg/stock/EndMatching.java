package org.thalweg.stock;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The shortest run when every panel may be turned end for end. A panel is then a pair of offsets, and a run pairs each end
 * with an end of the next panel at the cost of their difference. The coil itself is one panel more, with two square ends.
 *
 * <p>Sorting all ends and pairing neighbours is the cheapest pairing; it may close several rings. Every pairing that is one
 * ring must cross some of the gaps between pairs, each an even number of times; so the rings are joined by the cheapest
 * gaps, each paid twice, as in a least spanning tree. That is exact. [geometry; held against all orders in the tests]
 */
final class EndMatching {

    private final List<MitredPanel> panels;
    private final int ends;
    private final long[] offsets;
    private final int[] sorted;
    private final int[] mate;
    private final Rings rings;

    private EndMatching(List<MitredPanel> panels) {
        this.panels = panels;
        this.ends = 2 * panels.size() + 2;
        this.offsets = new long[ends];
        for (int i = 0; i < panels.size(); i++) {
            offsets[2 * i] = panels.get(i).left();
            offsets[2 * i + 1] = panels.get(i).right();
        }
        this.sorted = IntStream.range(0, ends)
                .boxed()
                .sorted(Comparator.comparingLong((Integer end) -> offsets[end]).thenComparingInt(end -> end))
                .mapToInt(end -> end)
                .toArray();
        this.mate = new int[ends];
        this.rings = new Rings(panels.size() + 1);
    }

    static CoilRun run(List<MitredPanel> panels) {
        EndMatching matching = new EndMatching(panels);
        matching.pairNeighbours();
        matching.joinRings();
        return matching.walk();
    }

    private void pairNeighbours() {
        for (int i = 0; i < ends; i += 2) {
            pair(sorted[i], sorted[i + 1]);
            rings.join(sorted[i] / 2, sorted[i + 1] / 2);
        }
    }

    private void pair(int end, int other) {
        mate[end] = other;
        mate[other] = end;
    }

    /** Cheapest gap first; below an unpaid gap ends are paired downward, above it upward, so each join costs the gap twice. */
    private void joinRings() {
        Integer[] gaps = new Integer[ends / 2 - 1];
        Arrays.setAll(gaps, i -> 2 * i + 1);
        Arrays.sort(gaps, Comparator.comparingLong((Integer i) -> offsets[sorted[i + 1]] - offsets[sorted[i]]));
        for (int gap : gaps) {
            int below = sorted[gap];
            int above = sorted[gap + 1];
            if (rings.join(below / 2, above / 2)) {
                int belowMate = mate[below];
                int aboveMate = mate[above];
                pair(belowMate, above);
                pair(below, aboveMate);
            }
        }
    }

    private CoilRun walk() {
        List<MitredPanel> lying = new ArrayList<>();
        List<Boolean> turned = new ArrayList<>();
        int coil = ends - 1;
        for (int end = mate[coil]; end / 2 != coil / 2; end = mate[end ^ 1]) {
            MitredPanel panel = panels.get(end / 2);
            turned.add(end % 2 == 1);
            lying.add(end % 2 == 1 ? panel.turned() : panel);
        }
        return CoilRun.of(lying, turned);
    }
}
