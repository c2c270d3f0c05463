package org.thalweg.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class PairedBlanksTest {

    private static MitredPanel panel(String id, long lower, long left, long right) {
        return new MitredPanel(id, lower, left, right);
    }

    @Test
    void twoPanelsWithParallelMitresComeHeadToHeadOutOfOneBlank() {
        PairedBlanks pairs =
                PairedBlanks.of(List.of(panel("a", 100, 0, 20), panel("b", 100, 20, 0)), Turning.FORBIDDEN);
        assertThat(pairs.blanks()).hasSize(1);
        assertThat(pairs.length()).isEqualTo(200);
    }

    @Test
    void handedRibsKeepTwoAlikePanelsApart() {
        List<MitredPanel> alike = List.of(panel("a", 100, 0, 20), panel("b", 100, 0, 20));
        assertThat(PairedBlanks.of(alike, Turning.FORBIDDEN).blanks()).hasSize(2);
        assertThat(PairedBlanks.of(alike, Turning.ALLOWED).blanks()).hasSize(1);
    }

    /** Taking the best pair first, b with c, saves 30 and leaves a and d alone; a with b and c with d save 20 + 20. */
    @Test
    void theBestPairIsNotAlwaysMade() {
        List<MitredPanel> chain = List.of(
                panel("a", 100, 0, -20), panel("b", 100, -30, 30), panel("c", 100, 30, 20), panel("d", 100, 20, 0));
        PairedBlanks pairs = PairedBlanks.of(chain, Turning.FORBIDDEN);
        assertThat(pairs.blanks()).hasSize(2);
        assertThat(pairs.proven()).isTrue();
        assertThat(pairs.length())
                .isEqualTo(chain.stream().mapToLong(MitredPanel::blank).sum() - 40);
    }

    @ParameterizedTest
    @EnumSource(Turning.class)
    void noPairsTakeLessCoil(Turning turning) {
        Random random = new Random(3);
        for (int round = 0; round < 1_000; round++) {
            List<MitredPanel> panels = new ArrayList<>();
            for (int i = 0; i < 1 + round % 8; i++) {
                long left = random.nextInt(41) - 20;
                long right = random.nextInt(41) - 20;
                panels.add(panel("p" + i, 40 + random.nextInt(60), left, right));
            }
            PairedBlanks pairs = PairedBlanks.of(panels, turning);
            assertThat(pairs.blanks().stream()
                            .flatMap(blank -> blank.run().panels().stream())
                            .map(placed -> placed.panel().id()))
                    .containsExactlyInAnyOrderElementsOf(
                            panels.stream().map(MitredPanel::id).toList());
            assertThat(pairs.length()).as("%s", panels).isEqualTo(shortest(panels, turning));
        }
    }

    /** The first panel alone, or with any other; what is left likewise. A blank for two is as long as their shortest run. */
    private static long shortest(List<MitredPanel> panels, Turning turning) {
        if (panels.isEmpty()) {
            return 0;
        }
        MitredPanel first = panels.get(0);
        List<MitredPanel> others = panels.subList(1, panels.size());
        long least = first.blank() + shortest(others, turning);
        for (MitredPanel other : others) {
            List<MitredPanel> left = new ArrayList<>(others);
            left.remove(other);
            long both = CoilPlan.of(List.of(first, other), turning).best().length();
            least = Math.min(least, both + shortest(left, turning));
        }
        return least;
    }

    /** Any weights, few different, on graphs thick and thin, so that odd rings come up inside odd rings. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void noMatchingIsHeavier(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 1_000; round++) {
            int nodes = 2 + random.nextInt(10);
            int heaviest = 1 + random.nextInt(12);
            int thickness = 1 + random.nextInt(4);
            long[][] weights = new long[nodes][nodes];
            for (int i = 0; i < nodes; i++) {
                for (int j = 0; j < i; j++) {
                    weights[i][j] = random.nextInt(4) < thickness ? random.nextInt(heaviest + 1) : 0;
                    weights[j][i] = weights[i][j];
                }
            }
            int[] mates = Matching.heaviest(weights);
            long weight = 0;
            for (int i = 0; i < nodes; i++) {
                assertThat(mates[i] < 0 || mates[mates[i]] == i).isTrue();
                weight += mates[i] > i ? weights[i][mates[i]] : 0;
            }
            assertThat(weight).isEqualTo(heaviest(weights));
        }
    }

    /** Over all sets of nodes, smallest first. */
    private static long heaviest(long[][] weights) {
        int nodes = weights.length;
        long[] best = new long[1 << nodes];
        for (int set = 1; set < best.length; set++) {
            int first = Integer.numberOfTrailingZeros(set);
            best[set] = best[set & ~(1 << first)];
            for (int other = first + 1; other < nodes; other++) {
                if ((set & 1 << other) != 0) {
                    best[set] = Math.max(best[set], weights[first][other] + best[set & ~(1 << first) & ~(1 << other)]);
                }
            }
        }
        return best[best.length - 1];
    }

    @Test
    void tooManyPanelsToMatchArePairedByGreedAndSaySo() {
        Random random = new Random(9);
        List<MitredPanel> many = new ArrayList<>();
        for (int i = 0; i <= PairedBlanks.MOST_MATCHED; i++) {
            many.add(panel("p" + i, 500, random.nextInt(401) - 200, random.nextInt(401) - 200));
        }
        PairedBlanks greedy = PairedBlanks.of(many, Turning.ALLOWED);
        assertThat(greedy.proven()).isFalse();
        PairedBlanks exact = PairedBlanks.of(many.subList(0, PairedBlanks.MOST_MATCHED), Turning.ALLOWED);
        assertThat(exact.proven()).isTrue();
        long square = many.stream().mapToLong(MitredPanel::blank).sum();
        assertThat(greedy.length()).isLessThan(square);
        assertThat(exact.length() + many.get(PairedBlanks.MOST_MATCHED).blank()).isLessThan(greedy.length());
    }
}
