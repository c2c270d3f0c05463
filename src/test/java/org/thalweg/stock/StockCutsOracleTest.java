package org.thalweg.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/** Against slow and obvious ways, on small jobs: every way to put pieces on bars, and a library's integer programme. */
class StockCutsOracleTest {

    private static final Budget LONG = Budget.steps(5_000_000_000L);
    private static final Budget SHORT = Budget.steps(100_000_000);

    /** Several stock lengths, some limited, some on the rack, a kerf, and pieces that must be apart. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void noWayToPutPiecesOnBarsIsCheaper(long seed) {
        Random random = new Random(seed);
        int apart = 0;
        for (int round = 0; round < 60; round++) {
            CuttingCase asked = small(random);
            CuttingPlan plan = Plans.lawful(asked);
            long least = EveryWay.leastCost(asked);
            if (least == EveryWay.NO_WAY) {
                assertThat(plan.unplaced()).isNotEmpty();
            } else {
                assertThat(plan.unplaced()).as("%s", asked).isEmpty();
                assertThat(plan.cost()).as("%s", asked).isEqualTo(least);
                assertThat(plan.proven()).as("%s", asked).isTrue();
            }
            apart += asked.pieces().stream().anyMatch(piece -> piece.apart().isPresent()) ? 1 : 0;
        }
        assertThat(apart).isPositive();
    }

    private static CuttingCase small(Random random) {
        List<StockBar> stock = new ArrayList<>();
        for (int i = 0; i <= random.nextInt(3); i++) {
            boolean limited = random.nextInt(3) == 0;
            stock.add(new StockBar(
                    "s" + i,
                    30 + random.nextInt(50),
                    limited ? random.nextInt(40) : 20 + random.nextInt(40),
                    limited ? OptionalInt.of(1 + random.nextInt(3)) : OptionalInt.empty()));
        }
        List<CutPiece> pieces = new ArrayList<>();
        int left = 7;
        for (int i = 0; left > 0 && i < 6; i++) {
            int count = 1 + random.nextInt(Math.min(2, left));
            Optional<String> word = random.nextInt(4) == 0 ? Optional.of("w" + random.nextInt(2)) : Optional.empty();
            pieces.add(new CutPiece("p" + i, 5 + random.nextInt(30), count, Optional.empty(), word));
            left -= count;
        }
        return new CuttingCase(stock, pieces, random.nextInt(4), 10, LONG);
    }

    /** Three stock lengths, 3 or 4 lengths of piece, up to 20 pieces; patterns to which no piece can be added. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void theIntegerProgrammeOfAllPatternsCostsTheSame(long seed) {
        CuttingCase asked = several(new Random(100 + seed), 3 + (int) seed % 2, 5, LONG);
        CuttingPlan plan = Plans.lawful(asked);
        assertThat(plan.cost()).isEqualTo(Math.round(AllPatterns.leastCost(asked, true)));
        assertThat(plan.proven()).isTrue();
        assertThat(PriceCheck.bound(asked, plan)).isLessThanOrEqualTo(plan.cost());
    }

    /** Where the price list proves less than the plan costs, how many bars of each sort was searched: with nothing left out. */
    @Test
    void theSearchOverBarsLeavesNothingOut() {
        int searched = 0;
        for (int seed = 0; seed < 40; seed++) {
            CuttingCase asked = several(new Random(300 + seed), 3 + seed % 2, 6, LONG);
            CuttingPlan plan = Plans.lawful(asked);
            assertThat(plan.cost()).as("%s", asked).isEqualTo(Math.round(AllPatterns.leastCost(asked, true)));
            assertThat(plan.proven()).as("%s", asked).isTrue();
            searched += plan.proof() == CuttingPlan.Proof.SEARCH ? 1 : 0;
        }
        assertThat(searched).isGreaterThan(5);
    }

    /** 4 to 7 lengths of piece, up to 150 pieces: the price list proves no less than the linear programme of all patterns. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void thePriceListProvesAsMuchAsFractionsOfAllPatterns(long seed) {
        CuttingCase asked = several(new Random(200 + seed), 4 + (int) seed % 4, 30, SHORT);
        CuttingPlan plan = Plans.lawful(asked);
        double fractions = AllPatterns.leastCost(asked, false);
        assertThat(plan.cost()).isGreaterThanOrEqualTo((long) Math.ceil(fractions - 1e-6));
        assertThat(PriceCheck.bound(asked, plan)).isBetween((long) Math.ceil(fractions - 1e-6), plan.cost());
        assertThat(plan.gap()).isLessThanOrEqualTo(plan.cost() / 100);
    }

    private static CuttingCase several(Random random, int kinds, int most, Budget budget) {
        List<StockBar> stock = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            stock.add(StockBar.of("s" + i, 100 + random.nextInt(60), 50 + random.nextInt(40)));
        }
        List<CutPiece> pieces = new ArrayList<>();
        for (int i = 0; i < kinds; i++) {
            pieces.add(CutPiece.of("p" + i, 26 + random.nextInt(50), 1 + random.nextInt(most)));
        }
        return new CuttingCase(stock, pieces, random.nextInt(3), 10, budget);
    }

    /** Pieces one after the other, each on every open bar that has room and on every new one. */
    private static final class EveryWay {

        static final long NO_WAY = Long.MAX_VALUE;

        private final CuttingCase asked;
        private final List<CutPiece> pieces = new ArrayList<>();
        private final List<Long> room = new ArrayList<>();
        private final List<List<String>> words = new ArrayList<>();
        private final int[] used;
        private long least = NO_WAY;

        private EveryWay(CuttingCase asked) {
            this.asked = asked;
            this.used = new int[asked.stock().size()];
            asked.pieces().forEach(piece -> {
                for (int i = 0; i < piece.count(); i++) {
                    pieces.add(piece);
                }
            });
        }

        static long leastCost(CuttingCase asked) {
            EveryWay all = new EveryWay(asked);
            all.place(0, 0);
            return all.least;
        }

        private void place(int next, long cost) {
            if (cost >= least) {
                return;
            }
            if (next == pieces.size()) {
                least = cost;
                return;
            }
            for (int bar = 0; bar < room.size(); bar++) {
                placeOn(bar, next, cost);
            }
            for (int k = 0; k < used.length; k++) {
                StockBar stock = asked.stock().get(k);
                if (used[k] < stock.count().orElse(Integer.MAX_VALUE)) {
                    used[k]++;
                    room.add(stock.length());
                    words.add(new ArrayList<>());
                    placeOn(room.size() - 1, next, cost + stock.cost());
                    room.remove(room.size() - 1);
                    words.remove(words.size() - 1);
                    used[k]--;
                }
            }
        }

        /** The kerf is taken before every piece but the first. */
        private void placeOn(int bar, int next, long cost) {
            CutPiece piece = pieces.get(next);
            boolean first = words.get(bar).isEmpty();
            long left = room.get(bar) - piece.length() - (first ? 0 : asked.kerf());
            String word = piece.apart().orElse("");
            if (left >= 0 && (word.isEmpty() || !words.get(bar).contains(word))) {
                long kept = room.set(bar, left);
                words.get(bar).add(word);
                place(next + 1, cost);
                words.get(bar).remove(words.get(bar).size() - 1);
                room.set(bar, kept);
            }
        }
    }

    /** Every pattern of every bar to which no piece can be added, as an unknown of its own; a library finds the least. */
    private static final class AllPatterns {

        private final CuttingCase asked;
        private final boolean whole;
        private final ExpressionsBasedModel model = new ExpressionsBasedModel();
        private final List<Expression> wanted = new ArrayList<>();

        private AllPatterns(CuttingCase asked, boolean whole) {
            this.asked = asked;
            this.whole = whole;
            asked.pieces()
                    .forEach(piece -> wanted.add(model.newExpression(piece.id()).lower(piece.count())));
            asked.stock().forEach(bar -> add(bar, 0, bar.length() + asked.kerf(), new int[wanted.size()]));
        }

        static double leastCost(CuttingCase asked, boolean whole) {
            Optimisation.Result result = new AllPatterns(asked, whole).model.minimise();
            assertThat(result.getState().isOptimal()).isTrue();
            return result.getValue();
        }

        private void add(StockBar bar, int kind, long room, int[] counts) {
            if (kind == counts.length) {
                if (full(room, counts)) {
                    addUnknown(bar, counts);
                }
                return;
            }
            long length = asked.pieces().get(kind).length() + asked.kerf();
            int wanted = asked.pieces().get(kind).count();
            for (int count = 0; count <= wanted && count * length <= room; count++) {
                counts[kind] = count;
                add(bar, kind + 1, room - count * length, counts);
            }
            counts[kind] = 0;
        }

        private boolean full(long room, int[] counts) {
            for (int i = 0; i < counts.length; i++) {
                CutPiece piece = asked.pieces().get(i);
                if (counts[i] < piece.count() && piece.length() + asked.kerf() <= room) {
                    return false;
                }
            }
            return true;
        }

        private void addUnknown(StockBar bar, int[] counts) {
            Variable times = model.newVariable("x" + model.countVariables())
                    .integer(whole)
                    .lower(0)
                    .weight(bar.cost());
            for (int i = 0; i < counts.length; i++) {
                wanted.get(i).set(times, counts[i]);
            }
        }
    }
}
