package org.thalweg.stock;

import java.util.Arrays;

/**
 * The cheapest bars that are worth so much together: a small knapsack the other way round, with as many unknowns as there are
 * sorts of bar. Those that give most worth for their cost are tried first.
 */
final class Cover {

    /** Choices after which parts of bars have to do. */
    private static final int MOST_CHOICES = 20_000;

    private static final long STEPS_A_CHOICE = 20;

    private final CuttingProblem problem;
    private final long[] worths;
    private final int[] order;
    private long best;
    private int choices;

    Cover(CuttingProblem problem, long[] worths) {
        this.problem = problem;
        this.worths = worths;
        int[] useful = new int[problem.barTypes()];
        int count = 0;
        for (int type = 0; type < useful.length; type++) {
            if (worths[type] > 0 && problem.bar(type).available() > 0) {
                int at = count++;
                while (at > 0 && costOfWorth(useful[at - 1]) > costOfWorth(type)) {
                    useful[at] = useful[at - 1];
                    at--;
                }
                useful[at] = type;
            }
        }
        this.order = Arrays.copyOf(useful, count);
    }

    private double costOfWorth(int type) {
        return (double) problem.bar(type).cost() / worths[type];
    }

    long least(long worth, Work work) {
        best = CuttingProblem.DEAREST_PLAN;
        choices = 0;
        choose(0, worth, 0);
        work.spend(STEPS_A_CHOICE * (choices + order.length));
        return choices > MOST_CHOICES ? leastInParts(worth) : best;
    }

    long leastInParts(long worth) {
        long step = problem.costStep();
        return roundedUp(inParts(0, worth) / step) * step;
    }

    /** Up, but for what doubles may have added. */
    private static long roundedUp(double cost) {
        return (long) Math.min(CuttingProblem.DEAREST_PLAN, Math.ceil(cost - Math.max(1e-6, cost * 1e-12)));
    }

    private double inParts(int from, long worth) {
        double cost = 0;
        long left = worth;
        for (int i = from; i < order.length && left > 0; i++) {
            int type = order[i];
            long whole = Math.min(problem.bar(type).available(), left / worths[type]);
            left -= whole * worths[type];
            cost += (double) whole * problem.bar(type).cost();
            if (left > 0 && whole < problem.bar(type).available()) {
                return cost + left * costOfWorth(type);
            }
        }
        return left > 0 ? Double.MAX_VALUE : cost;
    }

    private void choose(int i, long worth, long cost) {
        if (worth <= 0) {
            best = Math.min(best, cost);
            return;
        }
        if (i == order.length || ++choices > MOST_CHOICES || cost + roundedUp(inParts(i, worth)) >= best) {
            return;
        }
        int type = order[i];
        long most = Math.min(problem.bar(type).available(), (worth - 1) / worths[type] + 1);
        for (long count = most; count >= 0 && choices <= MOST_CHOICES; count--) {
            choose(
                    i + 1,
                    worth - count * worths[type],
                    Math.min(
                            CuttingProblem.DEAREST_PLAN,
                            cost + problem.bar(type).cost(count)));
        }
    }
}
