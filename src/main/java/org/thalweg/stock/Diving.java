package org.thalweg.stock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.thalweg.stock.ColumnGeneration.Fractions;

/**
 * From fractions to bars: cut the whole times of every pattern, then the one nearest to a whole bar, solve again for what is
 * left, and so on down. Where a dive can't end below the best plan it stops, and a few times it takes the second or third
 * choice instead (limited discrepancy search).
 */
final class Diving {

    private final Incumbent incumbent;
    private final Set<Pattern> pool;
    private final Work work;

    Diving(Incumbent incumbent, Set<Pattern> pool, Work work) {
        this.incumbent = incumbent;
        this.pool = pool;
        this.work = work;
    }

    /** Dives with at most so many choices that are not the first. */
    void dive(Fractions solved, int discrepancies) {
        descend(incumbent.problem(), solved, List.of(), discrepancies);
    }

    private boolean stop() {
        return incumbent.proven() || work.over();
    }

    private void descend(CuttingProblem left, Fractions solved, List<Lot> chosen, int discrepancies) {
        List<Simplex.Share> shares = new ArrayList<>(solved.shares());
        shares.sort(Comparator.comparingDouble((Simplex.Share share) -> -fraction(share)));
        int choices = Math.min(discrepancies + 1, shares.size());
        for (int choice = 0; choice < choices && !stop(); choice++) {
            int[] wanted = left.wanted();
            int[] available = left.available();
            List<Lot> more = new ArrayList<>(chosen);
            takeWhole(shares, wanted, available, more);
            take(shares.get(choice).pattern(), 1, wanted, available, more);
            enter(left.left(wanted, available), more, discrepancies - choice);
        }
    }

    private static double fraction(Simplex.Share share) {
        return share.times() - Math.floor(share.times() + 1e-6);
    }

    private static void takeWhole(List<Simplex.Share> shares, int[] wanted, int[] available, List<Lot> chosen) {
        for (Simplex.Share share : shares) {
            take(share.pattern(), (int) Math.floor(share.times() + 1e-6), wanted, available, chosen);
        }
    }

    private static void take(Pattern pattern, int times, int[] wanted, int[] available, List<Lot> chosen) {
        int taken = Math.min(times, pattern.times(wanted, available));
        if (taken > 0) {
            pattern.take(taken, wanted, available);
            chosen.add(new Lot(pattern, taken));
        }
    }

    /** What is left: by rule of thumb first, then by its own fractions if these may still lead to a cheaper plan. */
    private void enter(CuttingProblem left, List<Lot> chosen, int discrepancies) {
        if (left.pieces() == 0) {
            incumbent.offer(chosen, List.of());
            return;
        }
        incumbent.offer(chosen, GreedyFill.longestFirst(left, work));
        incumbent.offer(chosen, GreedyFill.fullest(left, work));
        long enough = incumbent.cost() - Lot.cost(chosen, incumbent.problem());
        if (stop() || Bounds.best(left, enough, work).bound(left, work) >= enough) {
            return;
        }
        Fractions solved = solve(left, enough);
        if (solved.bound() < enough) {
            descend(left, solved, chosen, discrepancies);
        }
    }

    private Fractions solve(CuttingProblem left, long enough) {
        ColumnGeneration solved = new ColumnGeneration(left, List.of(), pool, work);
        solved.solve(enough);
        return solved.fractions();
    }
}
