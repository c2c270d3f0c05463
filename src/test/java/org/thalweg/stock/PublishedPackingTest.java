package org.thalweg.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Against published instances of one-dimensional bin packing whose least number of bins others have proven. Sources: see
 * {@code ATTRIBUTION.md} beside the file.
 */
class PublishedPackingTest {

    private static final Path KEPT = Path.of("src/test/resources/binpacking/instances.jsonl");

    /** About a minute. */
    private static final Budget LONG = Budget.steps(60_000_000_000L);

    static List<PackingInstance> kept() {
        return PackingInstance.in(KEPT);
    }

    @ParameterizedTest
    @MethodSource("kept")
    void theFewestBinsAreFoundAndProven(PackingInstance instance) {
        CuttingCase asked = instance.asked(LONG);
        CuttingPlan plan = Plans.lawful(asked);
        assertThat(plan.cost()).isEqualTo(instance.optimum());
        assertThat(plan.barCount()).isEqualTo(instance.optimum());
        assertThat(plan.proven()).isTrue();
        assertThat(plan.late()).isFalse();
    }

    @ParameterizedTest
    @MethodSource("kept")
    void thePriceListProvesTheBoundToOneWhoOnlyAdds(PackingInstance instance) {
        CuttingCase asked = instance.asked(LONG);
        CuttingPlan plan = StockCuts.cut(asked);
        long bound = PriceCheck.bound(asked, plan);
        if (plan.proof() == CuttingPlan.Proof.CERTIFICATE) {
            assertThat(bound).isEqualTo(plan.lowerBound());
        } else {
            assertThat(bound).isEqualTo(plan.lowerBound() - 1);
        }
    }

    @ParameterizedTest
    @MethodSource("kept")
    void aKerfOnPieceAndBarChangesNothing(PackingInstance instance) {
        CuttingPlan plan = Plans.lawful(instance.askedWithKerf(3, LONG));
        assertThat(plan.cost()).isEqualTo(instance.optimum());
        assertThat(plan.proven()).isTrue();
    }

    /** Every instance of a folder: run with {@code -Dthalweg.packing=FOLDER}. Prints what is found and proven, set by set. */
    @Test
    @EnabledIfSystemProperty(named = "thalweg.packing", matches = ".+")
    void everyInstanceOfAFolderIsCutFromTheFewestBins() {
        Map<String, Tally> sets = new TreeMap<>();
        for (PackingInstance instance : PackingInstance.inFolder()) {
            long start = System.nanoTime();
            CuttingPlan plan = Plans.lawful(instance.asked(LONG));
            sets.computeIfAbsent(instance.set(), set -> new Tally())
                    .add(instance, plan, (System.nanoTime() - start) / 1_000_000);
        }
        sets.forEach((set, tally) -> System.out.println(set + " " + tally));
        assertThat(sets).isNotEmpty();
        assertThat(sets.values()).allSatisfy(tally -> {
            assertThat(tally.found).isEqualTo(tally.instances);
            assertThat(tally.wrongBound).isZero();
        });
    }

    private static final class Tally {
        private int instances;
        private int found;
        private int proven;
        private int bySearch;
        private int wrongBound;
        private long milliseconds;
        private long slowest;

        void add(PackingInstance instance, CuttingPlan plan, long took) {
            instances++;
            found += plan.cost() == instance.optimum() ? 1 : 0;
            proven += plan.proven() ? 1 : 0;
            bySearch += plan.proof() == CuttingPlan.Proof.SEARCH ? 1 : 0;
            wrongBound += plan.lowerBound() > instance.optimum() ? 1 : 0;
            milliseconds += took;
            slowest = Math.max(slowest, took);
        }

        @Override
        public String toString() {
            return "%d instances: %d at the optimum, %d proven (%d by search), %d ms in all, slowest %d ms"
                    .formatted(instances, found, proven, bySearch, milliseconds, slowest);
        }
    }
}
