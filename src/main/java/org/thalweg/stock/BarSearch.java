package org.thalweg.stock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.PriorityQueue;
import java.util.Set;
import org.thalweg.stock.ColumnGeneration.Fractions;

/**
 * Where there are several sorts of bar: how many of each. If fractions take 88.6 bars of a sort, a plan has either 88 of them
 * at most, or 89 at least, and those may as well be paid for beforehand. Both are cutting problems again, each with its own
 * fractions and its own bound; the one whose bound is lowest is looked at first, so that the lowest bound of those left holds
 * for all plans. Where the bars are whole, {@link PairSearch} looks at what is cut from them.
 */
final class BarSearch {

    private static final double WHOLE = 1e-5;

    /** Of what is left, for one dive, and for what is cut from bars that are whole. */
    private static final double FOR_ONE_DIVE = 0.02;

    private static final double FOR_PAIRS = 0.2;

    private final Incumbent incumbent;
    private final Work work;
    private final int sorts;

    /** Every sort of bar twice, to buy and paid for, and at last a bar so dear that it is in no plan of use. */
    private final CuttingProblem twins;

    private final Set<Pattern> pool = new LinkedHashSet<>();
    private final PriorityQueue<Node> open =
            new PriorityQueue<>(Comparator.comparingLong(Node::bound).thenComparingInt(Node::number));
    private int nodes;

    /** No plan that was given up half-way costs less. */
    private long unfinished = Long.MAX_VALUE;

    /**
     * Plans with so many bars.
     *
     * @param number    in the order they were found
     * @param available bars to buy, bars paid for, and the one too dear
     * @param paid      what those paid for cost
     * @param solved    their fractions
     * @param bound     no such plan costs less
     */
    private record Node(int number, int[] available, long paid, Fractions solved, long bound) {}

    BarSearch(Incumbent incumbent, Set<Pattern> known, Work work) {
        this.incumbent = incumbent;
        this.work = work;
        this.sorts = incumbent.problem().barTypes();
        this.twins = incumbent.problem().withPaidTwins(incumbent.cost());
        this.pool.addAll(known);
    }

    void run() {
        int[] available = twins.available();
        enter(available, 0, List.of(), incumbent.bound());
        while (!open.isEmpty() && open.element().bound() < incumbent.cost() && !work.over()) {
            branch(open.remove());
        }
        long left = open.isEmpty() ? Long.MAX_VALUE : open.element().bound();
        incumbent.searched(Math.min(incumbent.cost(), Math.min(unfinished, left)));
    }

    private void branch(Node node) {
        int sort = mostBroken(node.solved());
        if (sort < 0) {
            cutFromWholeBars(node);
            return;
        }
        int whole = (int) Math.floor(bought(node.solved(), sort));
        List<Pattern> near = near(node.solved());
        int[] fewer = node.available().clone();
        fewer[sort] = whole;
        enter(fewer, node.paid(), near, node.bound());
        int[] more = node.available().clone();
        more[sort] -= more[sort] == CuttingProblem.UNLIMITED ? 0 : whole + 1;
        more[sorts + sort] += whole + 1;
        enter(more, node.paid() + incumbent.problem().bar(sort).cost(whole + 1), near, node.bound());
    }

    /** The fractions of what is left, a dive from there, and the node kept if plans below the best are still possible. */
    private void enter(int[] available, long paid, List<Pattern> near, long known) {
        CuttingProblem problem = twins.left(twins.wanted(), available);
        Incumbent here = below(problem, paid);
        ColumnGeneration solved = new ColumnGeneration(problem, near, pool, work);
        solved.solve(here.cost());
        here.offer(solved.certificate());
        Fractions fractions = solved.fractions();
        if (!here.proven()) {
            new Diving(here, pool, work.share(FOR_ONE_DIVE)).dive(fractions, 0);
            tell(here, paid);
        }
        long bound = Math.max(known, paid + here.bound());
        if (bound < incumbent.cost()) {
            open.add(new Node(nodes++, available, paid, fractions, bound));
        }
    }

    private void cutFromWholeBars(Node node) {
        Incumbent here = below(twins.left(twins.wanted(), node.available()), node.paid());
        new PairSearch(here, work.share(FOR_PAIRS)).run(node.solved());
        tell(here, node.paid());
        if (!here.proven()) {
            unfinished = Math.min(unfinished, node.bound());
        }
    }

    private Incumbent below(CuttingProblem problem, long paid) {
        long cost = incumbent.cost() - paid;
        return Incumbent.below(cost, problem, Bounds.best(problem, cost, work), work);
    }

    /** A plan found here is a plan of the whole, paid bars and bought ones alike. */
    private void tell(Incumbent here, long paid) {
        if (here.cost() + paid < incumbent.cost()) {
            List<Lot> lots = new ArrayList<>();
            for (Lot lot : here.lots()) {
                int type = lot.pattern().type();
                lots.add(new Lot(lot.pattern().from(type < sorts ? type : type - sorts), lot.times()));
            }
            incumbent.offer(lots, List.of());
        }
    }

    /** Patterns that were cut, from bought bars and from paid ones. */
    private List<Pattern> near(Fractions solved) {
        Set<Pattern> near = new LinkedHashSet<>();
        for (Simplex.Share share : solved.shares()) {
            Pattern pattern = share.pattern();
            near.add(pattern);
            if (pattern.type() < sorts) {
                near.add(pattern.from(sorts + pattern.type()));
            }
        }
        return List.copyOf(near);
    }

    private static double bought(Fractions solved, int sort) {
        return solved.shares().stream()
                .filter(share -> share.pattern().type() == sort)
                .mapToDouble(Simplex.Share::times)
                .sum();
    }

    /** The sort whose bars to buy are furthest from whole, or -1 when all are whole; what costs nothing needs no counting. */
    private int mostBroken(Fractions solved) {
        int found = -1;
        double most = WHOLE;
        for (int sort = 0; sort < sorts; sort++) {
            double bought = bought(solved, sort);
            double broken = Math.abs(bought - Math.rint(bought));
            if (incumbent.problem().bar(sort).cost() > 0 && broken > most) {
                most = broken;
                found = sort;
            }
        }
        return found;
    }
}
