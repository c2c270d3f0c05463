package org.thalweg.stock;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** From the quickest means to the slowest, stopping at the first that proves the plan. */
final class CuttingSolver {

    /** Dives may take this part of what is left each; the search has the rest. */
    private static final double FOR_DIVES = 0.3;

    private static final double FOR_BARS = 0.5;

    private static final double FOR_RECUTTING = 0.7;

    private final Work work;
    private final Incumbent incumbent;
    private final Set<Pattern> pool = new LinkedHashSet<>();

    private CuttingSolver(CuttingProblem problem, Work work) {
        this.work = work;
        List<Lot> first = GreedyFill.longestFirst(problem, work);
        this.incumbent = new Incumbent(problem, Bounds.best(problem, Lot.cost(first, problem), work), work);
        incumbent.offer(first, List.of());
    }

    /** The best plan and the best bound that the work allows; with no work at all a rule of thumb and the area. */
    static Incumbent solve(CuttingProblem problem, Work work) {
        CuttingSolver solver = new CuttingSolver(problem, work);
        solver.solve();
        return solver.incumbent;
    }

    private void solve() {
        CuttingProblem problem = incumbent.problem();
        if (!done()) {
            incumbent.offer(GreedyFill.fullest(problem, work), List.of());
        }
        if (!done()) {
            incumbent.lots().forEach(lot -> pool.add(lot.pattern()));
            ColumnGeneration root = new ColumnGeneration(problem, List.of(), pool, work);
            root.solve(incumbent.cost());
            incumbent.offer(root.certificate());
            closeGap(root.fractions());
        }
    }

    private void closeGap(ColumnGeneration.Fractions root) {
        new Diving(incumbent, pool, work.share(FOR_DIVES)).dive(root, 0);
        if (!done() && !incumbent.problem().plain()) {
            new BarSearch(incumbent, pool, work.share(FOR_BARS)).run();
        }
        if (!done() && !incumbent.problem().plain()) {
            new Recutting(incumbent, work.share(FOR_RECUTTING)).run();
        }
        if (!done()) {
            new Diving(incumbent, pool, work.share(FOR_DIVES)).dive(root, 1);
        }
        if (!done()) {
            new PairSearch(incumbent, work).run(root);
        }
    }

    private boolean done() {
        return incumbent.proven() || work.over();
    }
}
