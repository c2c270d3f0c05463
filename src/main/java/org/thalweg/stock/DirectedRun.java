package org.thalweg.stock;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntToLongFunction;
import java.util.stream.IntStream;

/**
 * The shortest run when no panel may be turned, because its ribs are handed. Right ends and left ends are sorted apart and
 * paired in order; what closes several rings is mended by exchanges of neighbours, a least spanning tree of them, in an order
 * that keeps their costs apart. Exact. [published: Gilmore and Gomory 1964, Sequencing a one state-variable machine]
 */
final class DirectedRun {

    private final List<MitredPanel> panels;
    private final int count;

    /** Panels by right end and by left end; the number after the last panel is the coil, square at both ends. */
    private final int[] byRight;

    private final int[] byLeft;

    private DirectedRun(List<MitredPanel> panels) {
        this.panels = panels;
        this.count = panels.size() + 1;
        this.byRight = sorted(this::right);
        this.byLeft = sorted(this::left);
    }

    static CoilRun run(List<MitredPanel> panels) {
        DirectedRun run = new DirectedRun(panels);
        int[] paired = run.mended(run.exchanges());
        return run.walk(paired);
    }

    private long right(int panel) {
        return panel == panels.size() ? 0 : panels.get(panel).right();
    }

    private long left(int panel) {
        return panel == panels.size() ? 0 : panels.get(panel).left();
    }

    private int[] sorted(IntToLongFunction offset) {
        return IntStream.range(0, count)
                .boxed()
                .sorted(Comparator.comparingLong((Integer panel) -> offset.applyAsLong(panel))
                        .thenComparingInt(panel -> panel))
                .mapToInt(panel -> panel)
                .toArray();
    }

    /** Places at which a pair and the next are exchanged so that all is one ring. */
    private List<Integer> exchanges() {
        Rings rings = new Rings(count);
        for (int i = 0; i < count; i++) {
            rings.join(byRight[i], byLeft[i]);
        }
        Integer[] places = new Integer[count - 1];
        Arrays.setAll(places, i -> i);
        Arrays.sort(places, Comparator.comparingLong(this::price));
        List<Integer> chosen = new ArrayList<>();
        for (int place : places) {
            if (rings.join(byRight[place], byRight[place + 1])) {
                chosen.add(place);
            }
        }
        return chosen;
    }

    /** Half of what an exchange costs: the way that both pairs leave free between them. */
    private long price(int i) {
        long from = Math.max(right(byRight[i]), left(byLeft[i]));
        long to = Math.min(right(byRight[i + 1]), left(byLeft[i + 1]));
        return Math.max(0, to - from);
    }

    /** Where the left end is the higher one, exchanges go from the top down, then the others from the bottom up. */
    private int[] mended(List<Integer> exchanges) {
        int[] paired = IntStream.range(0, count).toArray();
        Collections.sort(exchanges);
        for (int i = exchanges.size() - 1; i >= 0; i--) {
            if (leftIsHigher(exchanges.get(i))) {
                exchange(paired, exchanges.get(i));
            }
        }
        for (int place : exchanges) {
            if (!leftIsHigher(place)) {
                exchange(paired, place);
            }
        }
        return paired;
    }

    private boolean leftIsHigher(int i) {
        return left(byLeft[i]) >= right(byRight[i]);
    }

    private static void exchange(int[] paired, int i) {
        int kept = paired[i];
        paired[i] = paired[i + 1];
        paired[i + 1] = kept;
    }

    private CoilRun walk(int[] paired) {
        int[] next = new int[count];
        for (int i = 0; i < count; i++) {
            next[byRight[i]] = byLeft[paired[i]];
        }
        List<MitredPanel> lying = new ArrayList<>();
        int coil = panels.size();
        for (int panel = next[coil]; panel != coil; panel = next[panel]) {
            lying.add(panels.get(panel));
        }
        return CoilRun.of(lying, Collections.nCopies(lying.size(), false));
    }
}
