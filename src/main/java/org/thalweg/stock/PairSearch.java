package org.thalweg.stock;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.thalweg.stock.ColumnGeneration.Fractions;

/**
 * The last gap, by branch and price (Ryan and Foster 1981; Vance 1994 for cutting): choose two kinds that lie together in
 * fractions. Either some bar holds both, then one piece of each is made one piece; or no bar holds both, then they stay
 * apart. Both are cutting problems again, each with its own fractions and its own bound, and nothing is left out.
 */
final class PairSearch {

    /** Copying a pattern into the pool of the next problem and looking whether it is allowed there. */
    private static final long STEPS_A_PATTERN = 100;

    /** Copying what a kind must be apart from, for the next problem. */
    private static final long STEPS_A_KIND = 100;

    private final Incumbent incumbent;
    private final Work work;

    /** For every kind made of two, which two; pieces as asked for have none. */
    private final List<int[]> halves = new ArrayList<>();

    PairSearch(Incumbent incumbent, Work work) {
        this.incumbent = incumbent;
        this.work = work;
    }

    /** Looks at all there is below the best plan, as far as the work allows; tells the incumbent what it found or ruled out. */
    void run(Fractions root) {
        if (branch(incumbent.problem(), root)) {
            incumbent.searched(incumbent.cost());
        }
    }

    /** True when no plan of this problem is cheaper than the incumbent now is. */
    private boolean search(CuttingProblem problem, List<Pattern> near, Set<Pattern> pool) {
        if (work.over()) {
            return false;
        }
        Fractions solved = solve(problem, near, pool);
        return solved.bound() >= incumbent.cost() || branch(problem, solved);
    }

    private Fractions solve(CuttingProblem problem, List<Pattern> near, Set<Pattern> pool) {
        work.spend(STEPS_A_PATTERN * pool.size());
        Set<Pattern> allowed = new LinkedHashSet<>();
        pool.stream().filter(problem::allows).forEach(allowed::add);
        ColumnGeneration solved = new ColumnGeneration(problem, near, allowed, work);
        solved.solve(incumbent.cost());
        return solved.fractions();
    }

    private boolean branch(CuttingProblem problem, Fractions solved) {
        if (work.over()) {
            return false;
        }
        Pairs pairs = new Pairs(problem, solved.shares());
        work.spend(4L * problem.kinds() * problem.kinds());
        if (pairs.whole()) {
            if (solved.value() < incumbent.cost() - 0.5) {
                incumbent.offer(lots(solved.shares()), List.of());
            }
            return solved.bound() >= incumbent.cost();
        }
        List<Pattern> near =
                solved.shares().stream().map(Simplex.Share::pattern).toList();
        return together(problem, pairs, near, solved.pool())
                && (incumbent.proven() || search(problem.apart(pairs.kind(), pairs.other()), near, solved.pool()));
    }

    private boolean together(CuttingProblem problem, Pairs pairs, List<Pattern> near, Set<Pattern> pool) {
        int kinds = problem.kinds();
        work.spend(2 * STEPS_A_PATTERN * pool.size() + STEPS_A_KIND * kinds);
        halves.add(new int[] {pairs.kind(), pairs.other()});
        Set<Pattern> joined = new LinkedHashSet<>(pool);
        pool.forEach(pattern -> addJoined(pattern, pairs, kinds, joined));
        Set<Pattern> nearJoined = new LinkedHashSet<>(near);
        near.forEach(pattern -> addJoined(pattern, pairs, kinds, nearJoined));
        boolean all =
                search(problem.joined(pairs.kind(), pairs.other(), incumbent.cost()), List.copyOf(nearJoined), joined);
        halves.remove(halves.size() - 1);
        return all;
    }

    /** The same bar with the two pieces made one. */
    private static void addJoined(Pattern pattern, Pairs pairs, int kinds, Set<Pattern> joined) {
        if (pairs.holdsBoth(pattern)) {
            int[] counts = new int[kinds + 1];
            for (int i = 0; i < pattern.size(); i++) {
                counts[pattern.kind(i)] = pattern.count(i);
            }
            counts[pairs.kind()]--;
            counts[pairs.other()]--;
            counts[kinds] = 1;
            joined.add(Pattern.of(pattern.type(), counts));
        }
    }

    private List<Lot> lots(List<Simplex.Share> shares) {
        List<Lot> lots = new ArrayList<>();
        int[] wanted = incumbent.problem().wanted();
        for (Simplex.Share share : shares) {
            for (int i = (int) Math.round(share.times()); i > 0; i--) {
                Pattern pattern = Pattern.of(share.pattern().type(), asAskedFor(share.pattern(), wanted));
                lots.add(new Lot(pattern, 1));
            }
        }
        return lots;
    }

    /** Kinds made of two taken apart again; what is cut already is not cut twice. */
    private int[] asAskedFor(Pattern pattern, int[] wanted) {
        int kinds = wanted.length;
        int[] counts = new int[kinds + halves.size()];
        for (int i = 0; i < pattern.size(); i++) {
            counts[pattern.kind(i)] = pattern.count(i);
        }
        for (int kind = counts.length - 1; kind >= kinds; kind--) {
            counts[halves.get(kind - kinds)[0]] += counts[kind];
            counts[halves.get(kind - kinds)[1]] += counts[kind];
        }
        int[] asked = Arrays.copyOf(counts, kinds);
        for (int kind = 0; kind < kinds; kind++) {
            asked[kind] = Math.min(asked[kind], wanted[kind]);
            wanted[kind] -= asked[kind];
        }
        return asked;
    }
}
