package org.thalweg.stock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A plan made cheaper a few bars at a time: some bars are taken out and their pieces cut anew, for which few bars the dives
 * nearly always find the best (large neighbourhood search). Where costs are free numbers there are many plans just above the
 * best, and this finds its way down among them. Which bars are taken follows from a count, not from chance.
 */
final class Recutting {

    private static final int FEWEST = 3;
    private static final int MOST = 12;

    /** So many tries in a row that found nothing, for each bar of the plan, end it. */
    private static final int TRIES_PER_BAR = 30;

    /** Of what a piece of recutting may cost, in steps. */
    private static final double STEPS_EACH = 3_000_000;

    private final Incumbent incumbent;
    private final long[] prices;
    private final Work work;
    private List<Pattern> bars = List.of();
    private long draw = 1;

    Recutting(Incumbent incumbent, Work work) {
        this.incumbent = incumbent;
        this.prices = incumbent.certificate().prices().stream()
                .mapToLong(price -> price)
                .toArray();
        this.work = work;
    }

    void run() {
        takeApart();
        int tries = 0;
        while (!incumbent.proven() && !work.over() && tries < TRIES_PER_BAR * bars.size()) {
            int size = Math.min(bars.size(), FEWEST + tries % (MOST - FEWEST + 1));
            tries = recut(choose(size)) ? 0 : tries + 1;
        }
    }

    /** The plan bar by bar, those first whose pieces are worth least for their cost. */
    private void takeApart() {
        bars = new ArrayList<>();
        for (Lot lot : incumbent.lots()) {
            for (int i = 0; i < lot.times(); i++) {
                bars.add(lot.pattern());
            }
        }
        bars.sort(Comparator.comparingDouble(this::worthOfCost).thenComparing(bar -> bar));
    }

    private double worthOfCost(Pattern bar) {
        return (double) bar.worth(prices) / incumbent.problem().bar(bar.type()).cost();
    }

    /** Numbers that look like chance and are the same every time (Knuth's constants). */
    private int draw(int below) {
        draw = draw * 6364136223846793005L + 1442695040888963407L;
        return (int) ((draw >>> 33) % below);
    }

    /** Bars that lose much are taken more often. */
    private Set<Integer> choose(int size) {
        Set<Integer> chosen = new LinkedHashSet<>();
        while (chosen.size() < size) {
            int reach = 1 + draw(bars.size());
            chosen.add(draw(reach));
        }
        return chosen;
    }

    private boolean recut(Set<Integer> chosen) {
        CuttingProblem problem = incumbent.problem();
        int[] wanted = new int[problem.kinds()];
        int[] available = problem.available();
        List<Lot> kept = new ArrayList<>();
        List<Lot> out = new ArrayList<>();
        for (int i = 0; i < bars.size(); i++) {
            Pattern bar = bars.get(i);
            if (chosen.contains(i)) {
                out.add(new Lot(bar, 1));
                bar.take(-1, wanted, new int[available.length]);
            } else {
                kept.add(new Lot(bar, 1));
                bar.take(1, new int[wanted.length], available);
            }
        }
        Incumbent better = cut(problem.left(wanted, available), out);
        work.spend(20L * bars.size());
        if (better.cost() >= Lot.cost(out, problem)) {
            return false;
        }
        incumbent.offer(kept, better.lots());
        takeApart();
        return true;
    }

    private Incumbent cut(CuttingProblem few, List<Lot> out) {
        Incumbent best = new Incumbent(few, Bounds.best(few, Lot.cost(out, few), work), work);
        best.offer(out, List.of());
        Set<Pattern> pool = new LinkedHashSet<>();
        out.forEach(lot -> pool.add(lot.pattern()));
        Work some = work.atMost(STEPS_EACH);
        ColumnGeneration solved = new ColumnGeneration(few, List.of(), pool, some);
        solved.solve(best.cost());
        if (solved.bound() < best.cost()) {
            new Diving(best, pool, some).dive(solved.fractions(), 1);
        }
        return best;
    }
}
