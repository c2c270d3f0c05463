package org.thalweg.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.thalweg.stock.CoilRun.PlacedPanel;

class CoilPlanTest {

    private static MitredPanel panel(String id, long lower, long left, long right) {
        return new MitredPanel(id, lower, left, right);
    }

    private static List<String> ids(CoilRun run) {
        return run.panels().stream().map(placed -> placed.panel().id()).toList();
    }

    @Test
    void panelsWithParallelMitresShareACut() {
        CoilPlan plan = CoilPlan.of(List.of(panel("a", 100, 0, 20), panel("b", 80, 20, 0)), Turning.FORBIDDEN);
        assertThat(ids(plan.best())).containsExactly("a", "b");
        assertThat(plan.best().panels().get(1).from()).isEqualTo(100);
        assertThat(plan.best().length()).isEqualTo(180);
        assertThat(plan.bothEdges()).isEqualTo(2 * 180);
        assertThat(plan.eachSquare()).isEqualTo(120 + 80);
    }

    @Test
    void turningAPanelSwapsItsEndsWithTheirSigns() {
        MitredPanel turned = panel("a", 100, 5, -20).turned();
        assertThat(turned).isEqualTo(panel("a", 75, -20, 5));
        assertThat(turned.blank()).isEqualTo(panel("a", 100, 5, -20).blank()).isEqualTo(100);
    }

    @Test
    void twoAlikePanelsMitredAtOneEndShareACutOnlyIfOneIsTurned() {
        List<MitredPanel> alike = List.of(panel("a", 100, 0, 20), panel("b", 100, 0, 20));
        assertThat(CoilPlan.of(alike, Turning.ALLOWED).best().length()).isEqualTo(220);
        assertThat(CoilPlan.of(alike, Turning.FORBIDDEN).best().length()).isEqualTo(240);
    }

    @Test
    void mirroredPanelsNeverShareASlantedCut() {
        List<MitredPanel> mirrored = List.of(panel("a", 100, 0, 20), panel("b", 120, 0, -20));
        CoilPlan plan = CoilPlan.of(mirrored, Turning.ALLOWED);
        assertThat(plan.best().length()).isEqualTo(plan.eachSquare()).isEqualTo(240);
    }

    @Test
    void keepingTheLayingOrderCostsWhatTheBestOrderSaves() {
        List<MitredPanel> laid =
                List.of(panel("a", 100, 0, 30), panel("b", 100, 0, 10), panel("c", 100, 30, 0), panel("d", 100, 10, 0));
        CoilPlan plan = CoilPlan.of(laid, Turning.FORBIDDEN);
        assertThat(ids(plan.inOrder())).containsExactly("a", "b", "c", "d");
        assertThat(plan.best().length()).isEqualTo(400);
        assertThat(plan.bothEdges()).isEqualTo(2 * 400);
        // Half of 30 is lost between a and b, half of 20 between b and c, half of 10 between c and d.
        assertThat(plan.inOrder().length()).isEqualTo(400 + 15 + 10 + 5);
        assertThat(plan.costOfOrder()).isEqualTo(30);
    }

    @Test
    void noPanelsTakeNoCoil() {
        CoilPlan plan = CoilPlan.of(List.of(), Turning.ALLOWED);
        assertThat(plan.best().length()).isZero();
        assertThat(CoilPlan.of(List.of(), Turning.FORBIDDEN).best().panels()).isEmpty();
    }

    @Test
    void aPanelWithoutMetalIsRefused() {
        assertThatThrownBy(() -> panel("a", 10, 11, 0)).hasMessageContaining("a: edges of 10 and -1");
    }

    /** 2,500 times for either way of turning, up to 7 panels, small offsets so that many are equal. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void noOrderAndNoTurningTakesLessCoil(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 500; round++) {
            List<MitredPanel> panels =
                    some(random, 1 + random.nextInt(round % 25 == 0 ? 7 : 6), 1 + random.nextInt(30));
            for (Turning turning : Turning.values()) {
                CoilRun best = CoilPlan.of(panels, turning).best();
                assertLawful(panels, best, turning);
                assertThat(best.length()).as("%s", panels).isEqualTo(AllRuns.shortest(panels, turning));
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Turning.class)
    void noTurningTakesLessCoilInTheLayingOrder(Turning turning) {
        Random random = new Random(7);
        for (int round = 0; round < 2_000; round++) {
            List<MitredPanel> panels = some(random, 1 + random.nextInt(6), 1 + random.nextInt(30));
            CoilRun inOrder = CoilPlan.of(panels, turning).inOrder();
            assertLawful(panels, inOrder, turning);
            assertThat(ids(inOrder))
                    .isEqualTo(panels.stream().map(MitredPanel::id).toList());
            assertThat(inOrder.length()).isEqualTo(AllRuns.shortestInOrder(panels, turning));
        }
    }

    private static List<MitredPanel> some(Random random, int count, int offsets) {
        List<MitredPanel> panels = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            long left = random.nextInt(2 * offsets + 1) - offsets;
            long right = random.nextInt(2 * offsets + 1) - offsets;
            panels.add(panel("p" + i, Math.max(1, left - right) + random.nextInt(40), left, right));
        }
        return panels;
    }

    /** Every panel once, as asked for or turned; none over another on either edge of the coil. */
    private static void assertLawful(List<MitredPanel> panels, CoilRun run, Turning turning) {
        List<MitredPanel> asAsked = run.panels().stream()
                .map(placed -> placed.turned() ? placed.panel().turned() : placed.panel())
                .toList();
        assertThat(asAsked).containsExactlyInAnyOrderElementsOf(panels);
        long lower = 0;
        long upper = 0;
        for (PlacedPanel placed : run.panels()) {
            MitredPanel panel = placed.panel();
            assertThat(turning == Turning.ALLOWED || !placed.turned()).isTrue();
            assertThat(placed.from()).isGreaterThanOrEqualTo(lower);
            assertThat(placed.from() + panel.left()).isGreaterThanOrEqualTo(upper);
            lower = placed.from() + panel.lower();
            upper = placed.from() + panel.left() + panel.upper();
        }
        assertThat(run.length()).isGreaterThanOrEqualTo(Math.max(lower, upper));
    }

    /** All orders and all turnings, panel by panel pushed against the one before it. */
    private static final class AllRuns {

        private final List<MitredPanel> panels;
        private final boolean turn;
        private final boolean anyOrder;
        private final boolean[] used;
        private long shortest = Long.MAX_VALUE;

        private AllRuns(List<MitredPanel> panels, Turning turning, boolean anyOrder) {
            this.panels = panels;
            this.turn = turning == Turning.ALLOWED;
            this.anyOrder = anyOrder;
            this.used = new boolean[panels.size()];
        }

        static long shortest(List<MitredPanel> panels, Turning turning) {
            AllRuns all = new AllRuns(panels, turning, true);
            all.add(0, 0, 0);
            return all.shortest;
        }

        static long shortestInOrder(List<MitredPanel> panels, Turning turning) {
            AllRuns all = new AllRuns(panels, turning, false);
            all.add(0, 0, 0);
            return all.shortest;
        }

        private void add(int count, long lower, long upper) {
            if (count == panels.size()) {
                shortest = Math.min(shortest, Math.max(lower, upper));
                return;
            }
            for (int i = anyOrder ? 0 : count; i < (anyOrder ? panels.size() : count + 1); i++) {
                if (!used[i]) {
                    used[i] = true;
                    MitredPanel panel = panels.get(i);
                    push(count, lower, upper, panel.lower(), panel.left(), panel.right());
                    if (turn) {
                        push(count, lower, upper, panel.upper(), panel.right(), panel.left());
                    }
                    used[i] = false;
                }
            }
        }

        private void push(int count, long lower, long upper, long along, long left, long right) {
            long at = Math.max(lower, upper - left);
            add(count + 1, at + along, at + along + right);
        }
    }

    @Test
    void aRunOfFiveThousandPanelsIsFoundAtOnce() {
        List<MitredPanel> many = some(new Random(11), 5_000, 10_000);
        for (Turning turning : Turning.values()) {
            CoilPlan plan = CoilPlan.of(many, turning);
            assertLawful(many, plan.best(), turning);
            assertThat(plan.best().length()).isLessThan(plan.inOrder().length());
            assertThat(plan.inOrder().length()).isLessThanOrEqualTo(plan.eachSquare());
        }
    }
}
