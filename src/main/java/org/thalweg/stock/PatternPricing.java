package org.thalweg.stock;

import java.util.Arrays;
import java.util.BitSet;

/**
 * The pieces worth most on one bar: a knapsack in which every kind may be taken as often as it is wanted. First by a search
 * through the kinds in the order of what they pay for their length; where that takes longer than a {@link PricingTable}
 * would, by the table; where the table would be too big, or knows nothing of
 * pieces that must stay apart, the answer is the best found with a true upper bound.
 */
final class PatternPricing {

    /** A search that gives up may have looked at this many choices for each entry of the table that is asked instead. */
    private static final double CHOICES_PER_ENTRY = 0.3;

    private static final long MOST_CHOICES = 3_000_000;

    /** So many searches in a row gave up: the table is asked at once. */
    private static final int PATIENCE = 3;

    private final CuttingProblem problem;
    private final Work work;
    private final PricingTable table;
    private final int[] order;
    private final double[] pays;
    private final long[] shortest;

    private int gaveUp;
    private boolean filled;
    private long[] prices = {};
    private int type;
    private long worth;
    private long upper;
    private long choices;
    private long mostChoices;
    private final int[] taken;
    private final BitSet held = new BitSet();
    private int[] best;

    PatternPricing(CuttingProblem problem, Work work) {
        this.problem = problem;
        this.work = work;
        this.table = new PricingTable(problem);
        int active = 0;
        int[] kinds = new int[problem.kinds()];
        for (int kind = 0; kind < problem.kinds(); kind++) {
            if (problem.wanted(kind) > 0) {
                kinds[active++] = kind;
            }
        }
        this.order = Arrays.copyOf(kinds, active);
        this.pays = new double[problem.kinds()];
        this.shortest = new long[active + 1];
        this.taken = new int[problem.kinds()];
        this.best = new int[problem.kinds()];
    }

    /** What pieces are worth from now on; to be told anew when any of it changes. */
    void price(long[] piecePrices) {
        prices = piecePrices;
        filled = false;
        sort();
        work.spend(10L * order.length);
    }

    /** Fills a bar of a type for the most; {@link #worth}, {@link #upper} and {@link #pattern} tell what was found. */
    void fill(int barType) {
        type = barType;
        worth = 0;
        best = new int[problem.kinds()];
        boolean affordable = table.affordable();
        if (!affordable || !problem.free() || gaveUp < PATIENCE) {
            search(affordable);
        } else {
            askTable();
        }
    }

    /** What the pattern found is worth. */
    long worth() {
        return worth;
    }

    /** No pattern is worth more; the same as {@link #worth} when the search was finished. */
    long upper() {
        return upper;
    }

    Pattern pattern() {
        return Pattern.of(type, best);
    }

    private void search(boolean affordable) {
        long room = problem.bar(type).room();
        choices = 0;
        long enough = affordable && problem.free() ? (long) (table.entries() * CHOICES_PER_ENTRY) + 1000 : MOST_CHOICES;
        mostChoices = Math.min(enough, MOST_CHOICES);
        choose(0, room, 0);
        work.spend(6 * choices + problem.kinds());
        if (choices < mostChoices) {
            upper = worth;
            gaveUp = 0;
        } else if (affordable) {
            gaveUp++;
            askTable();
        } else {
            upper = paidAtBest();
        }
    }

    /** As if the whole bar were of the kind that pays best for its length; up by more than doubles round off. */
    private long paidAtBest() {
        double most = 0;
        for (int kind : order) {
            most = Math.max(most, (double) prices[kind] / problem.length(kind));
        }
        return (long) (problem.bar(type).room() * most * (1 + 1e-14)) + 1;
    }

    private void askTable() {
        filled = filled || table.fill(prices, work);
        if (!filled) {
            upper = paidAtBest();
            return;
        }
        upper = table.worth(type);
        int[] asked = table.pattern(type);
        if (problem.allows(Pattern.of(type, asked))) {
            worth = upper;
            best = asked;
        }
    }

    /** By what a kind pays for its length, best first; nearly sorted from the last time. */
    private void sort() {
        for (int kind : order) {
            pays[kind] = (double) prices[kind] / problem.length(kind);
        }
        for (int i = 1; i < order.length; i++) {
            int kind = order[i];
            int j = i;
            while (j > 0 && pays[order[j - 1]] < pays[kind]) {
                order[j] = order[j - 1];
                j--;
            }
            order[j] = kind;
        }
        shortest[order.length] = Long.MAX_VALUE;
        for (int i = order.length - 1; i >= 0; i--) {
            shortest[i] = Math.min(shortest[i + 1], problem.length(order[i]));
        }
    }

    /** Whole units: a choice that cannot bring one unit more is dropped; half a unit covers what doubles round off. */
    private void choose(int from, long room, long soFar) {
        if (soFar > worth) {
            worth = soFar;
            best = taken.clone();
        }
        for (int i = from; room >= shortest[i]; i++) {
            int kind = order[i];
            if (soFar + room * pays[kind] < worth + 0.5 || ++choices >= mostChoices) {
                return;
            }
            long length = problem.length(kind);
            if (length > room || prices[kind] == 0 || problem.clashes(kind, held)) {
                continue;
            }
            int most = problem.mostIn(kind, room);
            held.set(kind);
            for (int count = most; count > 0; count--) {
                taken[kind] = count;
                choose(i + 1, room - count * length, soFar + count * prices[kind]);
            }
            held.clear(kind);
            taken[kind] = 0;
        }
    }
}
