package org.thalweg.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.thalweg.stock.CutBar.PlacedPiece;
import org.thalweg.stock.CuttingPlan.Reason;
import org.thalweg.stock.CuttingPlan.Unplaced;

class StockCutsTest {

    private static final Budget SHORT = Budget.steps(200_000_000);

    private static CuttingCase asked(List<StockBar> stock, long kerf, CutPiece... pieces) {
        return new CuttingCase(stock, List.of(pieces), kerf, 100, SHORT);
    }

    private static CutPiece together(String id, long length, int count, String word) {
        return new CutPiece(id, length, count, Optional.of(word), Optional.empty());
    }

    private static CutPiece apart(String id, long length, int count, String word) {
        return new CutPiece(id, length, count, Optional.empty(), Optional.of(word));
    }

    static List<RackCase> racks() {
        return RackCase.all();
    }

    @ParameterizedTest
    @MethodSource("racks")
    void aPlanIsNoDearerThanTheOneThatStandsBesideItsCase(RackCase rack) {
        CuttingCase asked = rack.asked(SHORT);
        CuttingPlan plan = Plans.lawful(asked);
        rack.reference().ifPresent(cost -> assertThat(plan.cost()).isLessThanOrEqualTo(cost));
        if (plan.unplaced().isEmpty()) {
            long bound = PriceCheck.bound(asked, plan);
            assertThat(bound == plan.lowerBound()).isEqualTo(plan.proof() == CuttingPlan.Proof.CERTIFICATE);
            assertThat(bound).isBetween(plan.cost() - plan.cost() / 1000, plan.lowerBound());
            assertThat(plan.gap()).isLessThanOrEqualTo(plan.cost() / 1000);
        }
    }

    @Test
    void threePiecesOverHalfABarDoNotFitOnTwoAndThatIsProven() {
        CuttingPlan plan = Plans.lawful(RackCase.named("feasibility_item_length_over_half_capacity_too_few_bins")
                .asked(SHORT));
        assertThat(plan.unplaced()).containsExactly(new Unplaced("0", 1, Reason.TOO_FEW_BARS));
        assertThat(plan.proven()).isFalse();
    }

    @Test
    void everyCaseButThatOneIsCutWhole() {
        assertThat(racks()).hasSize(13);
        assertThat(racks().stream()
                        .filter(rack ->
                                !StockCuts.cut(rack.asked(SHORT)).unplaced().isEmpty())
                        .map(RackCase::name))
                .containsExactly("feasibility_item_length_over_half_capacity_too_few_bins");
    }

    @Test
    void piecesLieOnTheirBarWithAKerfBehindEach() {
        CuttingPlan plan = Plans.lawful(asked(
                List.of(StockBar.of("ten-foot", 1920, 1)), 2, CutPiece.of("a", 700, 1), CutPiece.of("b", 500, 2)));
        assertThat(plan.bars())
                .containsExactly(new CutBar(
                        "ten-foot",
                        1920,
                        1,
                        List.of(
                                new PlacedPiece("a", 0, 700),
                                new PlacedPiece("b", 702, 1202),
                                new PlacedPiece("b", 1204, 1704)),
                        1920 - 1706,
                        true,
                        0));
    }

    @Test
    void theLastPieceOfABarMayEndFlush() {
        CuttingPlan plan = Plans.lawful(asked(List.of(StockBar.of("bar", 1002, 1)), 2, CutPiece.of("half", 500, 2)));
        assertThat(plan.barCount()).isEqualTo(1);
        assertThat(plan.bars().get(0).offcut()).isZero();
        assertThat(Plans.lawful(asked(List.of(StockBar.of("bar", 1001, 1)), 2, CutPiece.of("half", 500, 2)))
                        .barCount())
                .isEqualTo(2);
    }

    @Test
    void barsCutAlikeAreCounted() {
        CuttingPlan plan = Plans.lawful(asked(List.of(StockBar.of("bar", 1000, 7)), 0, CutPiece.of("half", 500, 9)));
        assertThat(plan.bars()).extracting(CutBar::count).containsExactly(4, 1);
        assertThat(plan.cost()).isEqualTo(35);
        assertThat(plan.proven()).isTrue();
    }

    @Test
    void whatIsOnTheRackIsCutFirst() {
        CuttingPlan plan = Plans.lawful(asked(
                List.of(StockBar.of("new", 3000, 4500), StockBar.onRack("rest", 1100, 2)),
                3,
                CutPiece.of("a", 1050, 3)));
        assertThat(plan.bars()).extracting(CutBar::stock).containsExactly("new", "rest");
        assertThat(plan.bars()).extracting(CutBar::count).containsExactly(1, 2);
        assertThat(plan.cost()).isEqualTo(4500);
        assertThat(plan.proven()).isTrue();
    }

    @Test
    void anOffcutLongEnoughToKeepIsValuedAtItsPartOfTheBar() {
        CuttingPlan plan = Plans.lawful(asked(List.of(StockBar.of("bar", 3000, 4500)), 0, CutPiece.of("a", 1000, 1)));
        assertThat(plan.bars().get(0).kept()).isTrue();
        assertThat(plan.keptValue()).isEqualTo(3000);
        assertThat(Plans.lawful(asked(List.of(StockBar.of("bar", 3000, 4500)), 0, CutPiece.of("a", 2901, 1)))
                        .keptValue())
                .isZero();
    }

    @Test
    void theCheaperOfTwoLengthsIsTaken() {
        List<StockBar> stock = List.of(StockBar.of("long", 6000, 130), StockBar.of("short", 3000, 60));
        assertThat(Plans.lawful(asked(stock, 0, CutPiece.of("a", 3000, 4))).cost())
                .isEqualTo(240);
        assertThat(Plans.lawful(asked(stock, 0, CutPiece.of("a", 2000, 3))).cost())
                .isEqualTo(130);
    }

    private static CuttingPlan tenAndTwenty(OptionalInt twenties, CutPiece... pieces) {
        return Plans.lawful(
                asked(List.of(StockBar.of("ten", 1000, 10), new StockBar("twenty", 2000, 20, twenties)), 0, pieces));
    }

    @Test
    void atOneCostOneLongBarIsTakenForTwoShortOnes() {
        CuttingPlan plan = tenAndTwenty(OptionalInt.empty(), CutPiece.of("a", 900, 7));
        assertThat(plan.bars()).extracting(CutBar::stock).containsExactly("ten", "twenty");
        assertThat(plan.bars()).extracting(CutBar::count).containsExactly(1, 3);
        assertThat(plan.cost()).isEqualTo(70);
        assertThat(plan.proven()).isTrue();
    }

    @Test
    void noMoreLongBarsAreTakenThanThereAreAndWhatIsApartStaysApart() {
        assertThat(tenAndTwenty(OptionalInt.of(2), CutPiece.of("a", 900, 7)).barCount())
                .isEqualTo(5);
        assertThat(tenAndTwenty(OptionalInt.empty(), apart("a", 900, 6, "w")).barCount())
                .isEqualTo(6);
    }

    @Test
    void oneBarIsTakenForThree() {
        List<StockBar> stock = List.of(StockBar.of("eight", 800, 8), StockBar.of("twenty-four", 2400, 24));
        CuttingPlan plan = Plans.lawful(asked(stock, 0, CutPiece.of("a", 800, 4)));
        assertThat(plan.bars()).extracting(CutBar::stock).containsExactly("eight", "twenty-four");
        assertThat(plan.cost()).isEqualTo(32);
    }

    /** Random jobs whose costs go with the length: no two bars can be one, and the cost is what it was. */
    @Test
    void noTwoBarsOfAPlanCouldBeOneOfTheirCost() {
        Random random = new Random(21);
        for (int round = 0; round < 200; round++) {
            List<StockBar> stock =
                    List.of(StockBar.of("8", 800, 8), StockBar.of("12", 1200, 12), StockBar.of("20", 2000, 20));
            List<CutPiece> pieces = new ArrayList<>();
            for (int i = 0; i < 1 + random.nextInt(8); i++) {
                pieces.add(CutPiece.of("p" + i, 50 + random.nextInt(1000), 1 + random.nextInt(6)));
            }
            CuttingPlan plan = Plans.lawful(new CuttingCase(stock, pieces, 0, 100, Budget.steps(2_000_000)));
            List<CutBar> bars = plan.bars().stream()
                    .flatMap(bar -> Collections.nCopies(bar.count(), bar).stream())
                    .toList();
            for (int i = 0; i < bars.size(); i++) {
                for (int j = 0; j < i; j++) {
                    long length = bars.get(i).length() + bars.get(j).length();
                    long used = length - bars.get(i).offcut() - bars.get(j).offcut();
                    assertThat(stock).noneMatch(bar -> bar.length() >= used && 100 * bar.cost() <= length);
                }
            }
        }
    }

    @Test
    void piecesThatBelongTogetherComeFromOneBarSideBySide() {
        CuttingCase asked = asked(
                List.of(StockBar.of("bar", 1000, 1)),
                0,
                together("face", 300, 2, "front"),
                together("cap", 200, 1, "front"),
                CutPiece.of("x", 700, 1),
                CutPiece.of("y", 400, 1));
        CuttingPlan plan = Plans.lawful(asked);
        assertThat(plan.barCount()).isEqualTo(3);
        assertThat(plan.proven()).isTrue();
        assertThat(plan.bars())
                .anySatisfy(bar ->
                        assertThat(bar.pieces()).extracting(PlacedPiece::id).containsSequence("face", "face", "cap"));
    }

    @Test
    void piecesThatMustBeApartAreOnBarsOfTheirOwn() {
        CuttingPlan plan = Plans.lawful(asked(
                List.of(StockBar.of("bar", 1000, 1)),
                0,
                apart("left", 100, 2, "handed"),
                apart("right", 200, 1, "handed"),
                CutPiece.of("x", 700, 3)));
        assertThat(plan.barCount()).isEqualTo(3);
        assertThat(plan.bars()).allSatisfy(bar -> assertThat(bar.pieces())
                .filteredOn(piece -> !piece.id().equals("x"))
                .hasSizeLessThan(2));
    }

    @Test
    void aPieceLongerThanEveryBarIsLeftAndTheOthersAreCut() {
        CuttingPlan plan = Plans.lawful(
                asked(List.of(StockBar.of("bar", 1000, 1)), 3, CutPiece.of("a", 1001, 2), CutPiece.of("b", 1000, 1)));
        assertThat(plan.unplaced()).containsExactly(new Unplaced("a", 2, Reason.TOO_LONG));
        assertThat(plan.barCount()).isEqualTo(1);
        assertThat(plan.proven()).isTrue();
        assertThat(plan.priced()).extracting(CuttingPlan.Kind::pieces).containsExactly(List.of("b"));
    }

    @Test
    void nothingFitsAndNothingIsCut() {
        CuttingPlan plan = Plans.lawful(asked(List.of(), 0, CutPiece.of("a", 10, 2)));
        assertThat(plan.bars()).isEmpty();
        assertThat(plan.unplaced()).containsExactly(new Unplaced("a", 2, Reason.TOO_LONG));
    }

    @Test
    void withoutAnyTimeToThinkThereIsAPlanWithABound() {
        PackingInstance hard = PublishedPackingTest.kept().get(0);
        CuttingPlan plan = Plans.lawful(hard.asked(Budget.steps(0)));
        assertThat(plan.unplaced()).isEmpty();
        assertThat(plan.lowerBound()).isEqualTo(hard.optimum());
        assertThat(plan.gap()).isBetween(1L, 4L);
        assertThat(PriceCheck.bound(hard.asked(SHORT), plan)).isEqualTo(plan.lowerBound());
    }

    /** A clock that runs away at the second look. */
    @Test
    void theClockIsALastResortAndSaysSo() {
        long[] time = {0};
        Budget strict = new Budget(Long.MAX_VALUE, 10, () -> time[0]++ * 1_000);
        CuttingPlan plan = Plans.lawful(RackCase.named("2023-08-01").asked(strict));
        assertThat(plan.late()).isTrue();
        assertThat(plan.lowerBound()).isPositive();
        assertThat(Plans.lawful(RackCase.named("2023-08-01").asked(SHORT)).late())
                .isFalse();
    }

    @Test
    void aDeadlineIsCountedWorkWithAClockFarBehindIt() {
        Budget budget = Budget.milliseconds(50, () -> 0);
        assertThat(budget.steps()).isEqualTo(25_000_000);
        assertThat(budget.nanos()).isEqualTo(100_000_000);
        assertThat(Budget.milliseconds(Integer.MAX_VALUE, () -> 0).nanos()).isPositive();
    }

    /** With nothing to think, nothing is cut short: the clock may do what it likes. */
    @Test
    void aDeadlineOfNothingIsNeverLate() {
        long[] time = {0};
        Budget none = Budget.milliseconds(0, () -> time[0]++ * 1_000_000_000);
        CuttingPlan plan = Plans.lawful(everythingThatMakesItHard(60, none));
        assertThat(plan.unplaced()).isEmpty();
        assertThat(plan.late()).isFalse();
    }

    /** Looks are counted in steps between them: 20 million are about 40 ms. What is over the budget is the first plan. */
    @Test
    void theClockIsLookedAtOftenAndTheCountKept() {
        for (int sorts : new int[] {2, 20, 60}) {
            long budget = 150_000_000;
            Work[] work = new Work[1];
            long[] lookedAt = {0};
            long[] longest = {0};
            Budget watched = new Budget(budget, Long.MAX_VALUE, () -> {
                long spent = work[0] == null ? 0 : work[0].spent();
                longest[0] = Math.max(longest[0], spent - lookedAt[0]);
                lookedAt[0] = spent;
                return 0;
            });
            work[0] = new Work(watched);
            CuttingSolver.solve(new PieceKinds(everythingThatMakesItHard(sorts, watched)).problem(), work[0]);
            assertThat(work[0].spent()).isBetween(budget, budget + 50_000_000);
            assertThat(longest[0]).isLessThan(20_000_000);
        }
    }

    @Test
    void aThousandLengthsWithEverythingThatMakesItHardStillHaveAPlan() {
        CuttingPlan plan = Plans.lawful(everythingThatMakesItHard(20, Budget.steps(25_000_000)));
        assertThat(plan.unplaced()).isEmpty();
        assertThat(plan.gap()).isLessThan(plan.cost() / 20);
    }

    /** A thousand lengths, a third of them apart from others, many sorts of limited bars. */
    private static CuttingCase everythingThatMakesItHard(int sorts, Budget budget) {
        List<CutPiece> pieces = new ArrayList<>();
        List<StockBar> stock = new ArrayList<>(List.of(StockBar.of("new", 60_000, 3_000)));
        for (int i = 0; i < CuttingCase.MOST_KINDS; i++) {
            long length = 1_000 + i * 7919L % 20_000;
            pieces.add(i % 3 == 0 ? apart("p" + i, length, 1, "w" + i % 30) : CutPiece.of("p" + i, length, 2));
        }
        for (int i = 1; i < sorts; i++) {
            long length = 20_000 + 777L * i;
            stock.add(new StockBar("old" + i, length, length / 20 + i % 7, OptionalInt.of(3)));
        }
        return new CuttingCase(stock, pieces, 3, 1, budget);
    }

    @Test
    void theSameRequestGivesTheSamePlan() {
        CuttingCase asked = RackCase.named("2023-08-01").asked(Budget.steps(50_000_000));
        assertThat(StockCuts.cut(asked)).isEqualTo(StockCuts.cut(asked));
    }

    @Test
    void aMillionPiecesAreCutAtOnce() {
        List<CutPiece> pieces = IntStream.range(0, 40)
                .mapToObj(i -> CutPiece.of("p" + i, 311 + 97L * i, 25_000))
                .toList();
        CuttingPlan plan = Plans.lawful(new CuttingCase(List.of(StockBar.of("bar", 6000, 1)), pieces, 3, 300, SHORT));
        assertThat(plan.gap()).isLessThanOrEqualTo(1);
    }

    /** Bars that nobody has are dearer than a plan of a million of the dearest, a million times: more than a long holds. */
    @Test
    void aMillionPiecesAndOneOfTheDearestBarsForThemAreStillCounted() {
        List<StockBar> stock = new ArrayList<>();
        stock.add(new StockBar("long", 6000, CuttingCase.DEAREST, OptionalInt.of(1)));
        for (int i = 0; i < 59; i++) {
            stock.add(new StockBar("short" + i, 1000 + i, CuttingCase.DEAREST, OptionalInt.of(100_000)));
        }
        CuttingPlan plan = Plans.lawful(new CuttingCase(
                stock, List.of(CutPiece.of("a", 5900, 999_998), CutPiece.of("b", 1000, 2)), 0, 1, SHORT));
        assertThat(plan.unplaced()).containsExactly(new Unplaced("a", 999_997, Reason.TOO_FEW_BARS));
        assertThat(plan.cost()).isEqualTo(3 * CuttingCase.DEAREST);
        assertThat(plan.proven()).isFalse();
    }

    /** 2 billion rooms would be 16 GB; their number is known before any is made. */
    @Test
    void aTableOfPricesThatIsTooLargeIsNotMade() {
        long[] lengths = {1_000_003, 1_000_001};
        CuttingProblem.BarType bar = new CuttingProblem.BarType(CuttingCase.LONGEST, 1, CuttingProblem.UNLIMITED);
        PricingTable fine = new PricingTable(new CuttingProblem(lengths, new int[] {9, 9}, bar));
        assertThat(fine.affordable()).isFalse();
        assertThat(fine.entries()).isGreaterThan(CuttingCase.LONGEST);
        long[] even = {1_000_000, 500_000};
        assertThat(new PricingTable(new CuttingProblem(even, new int[] {9, 9}, bar)).affordable())
                .isTrue();
    }

    @Test
    void aGridFarTooFineStillHasAPlanAndABound() {
        List<CutPiece> pieces = new ArrayList<>();
        for (int i = 0; i < 30; i++) {
            pieces.add(CutPiece.of("p" + i, 100_000_003L + 17_000_011L * i, 1 + i % 3));
        }
        CuttingPlan plan =
                Plans.lawful(new CuttingCase(List.of(StockBar.of("bar", 2_000_000_000L, 1)), pieces, 0, 1, SHORT));
        assertThat(plan.gap()).isLessThanOrEqualTo(1);
    }

    @Test
    void whatIsBeyondCountingIsRefused() {
        List<StockBar> bar = List.of(StockBar.of("bar", 1000, 1));
        assertThatThrownBy(() -> CutPiece.of("a", 10, 0)).hasMessageContaining("piece a: length (10) and count (0)");
        assertThatThrownBy(() -> CutPiece.of("a", -1, 1)).hasMessageContaining("length (-1)");
        assertThatThrownBy(() -> new StockBar("s", 10, 1, OptionalInt.of(0))).hasMessageContaining("stock s");
        assertThatThrownBy(() -> StockBar.of("s", 10, 0)).hasMessageContaining("costs nothing and has no count");
        assertThatThrownBy(() -> asked(bar, 0, CutPiece.of("a", 10, 1_000_001))).hasMessageContaining("1000001 pieces");
        assertThatThrownBy(() -> asked(bar, 0, CutPiece.of("a", 1L << 32, 1)))
                .hasMessageContaining("longer than can be counted");
        assertThatThrownBy(() -> asked(bar, 0, CutPiece.of("a", 1, 1), CutPiece.of("a", 2, 1)))
                .hasMessageContaining("share names");
        assertThatThrownBy(() -> Budget.steps(-1)).hasMessageContaining("below 0");
    }
}
