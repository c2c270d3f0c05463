package org.thalweg.stock;

import java.util.List;

/**
 * What a buyer needs to check a bound: the lengths (with kerf), the counts, the bars, the price list, and two tables. It
 * shares nothing with the solver. The first table finds, for each sort of bar, the most that pieces on it can be worth; that
 * may not be above what the list says. The second finds the least cost of bars that are worth as much as all pieces.
 */
final class PriceCheck {

    private PriceCheck() {}

    /**
     * The bound, worked out from the plan's price list alone.
     *
     * @throws AssertionError when the list calls a bar worth less than it can be
     */
    static long bound(CuttingCase asked, CuttingPlan plan) {
        Certificate list = plan.certificate();
        for (int k = 0; k < asked.stock().size(); k++) {
            StockBar bar = asked.stock().get(k);
            long most = most(plan.priced(), list.prices(), bar.length() + asked.kerf());
            if (most > list.worths().get(k)) {
                throw new AssertionError("pieces worth %d fit on %s".formatted(most, bar));
            }
        }
        long worth = 0;
        int pieces = plan.priced().stream().mapToInt(CuttingPlan.Kind::count).sum();
        for (int kind = 0; kind < plan.priced().size(); kind++) {
            worth += list.prices().get(kind) * plan.priced().get(kind).count();
        }
        return leastCost(asked.stock(), list.worths(), worth, pieces, plan.cost());
    }

    /** The least cost, up to {@code highest}, of bars that are worth so much together; never more bars than pieces. */
    static long leastCost(List<StockBar> stock, List<Long> worths, long worth, int pieces, long highest) {
        int step = Math.max(
                1, stock.stream().mapToInt(bar -> Math.toIntExact(bar.cost())).reduce(0, PriceCheck::gcd));
        long[] most = new long[Math.toIntExact(highest / step) + 1];
        for (int k = 0; k < stock.size(); k++) {
            int cost = Math.toIntExact(stock.get(k).cost() / step);
            boolean limited = stock.get(k).count().orElse(Integer.MAX_VALUE) < pieces;
            if (!limited && cost > 0) {
                for (int spent = cost; spent < most.length; spent++) {
                    most[spent] = Math.max(most[spent], most[spent - cost] + worths.get(k));
                }
            }
            int copies = limited || cost == 0 ? Math.min(stock.get(k).count().orElse(0), pieces) : 0;
            for (int copy = 0; copy < copies; copy++) {
                for (int spent = most.length - 1; spent >= cost; spent--) {
                    most[spent] = Math.max(most[spent], most[spent - cost] + worths.get(k));
                }
            }
        }
        int spent = 0;
        while (spent < most.length && most[spent] < worth) {
            spent++;
        }
        return (long) spent * step;
    }

    private static int gcd(int a, int b) {
        return b == 0 ? a : gcd(b, a % b);
    }

    /** The most that pieces of these kinds, none more often than it is wanted, are worth on so much room. */
    static long most(List<CuttingPlan.Kind> kinds, List<Long> prices, long room) {
        long[] best = new long[Math.toIntExact(room) + 1];
        for (int kind = 0; kind < kinds.size(); kind++) {
            int length = Math.toIntExact(kinds.get(kind).length());
            long fits = Math.min(kinds.get(kind).count(), room / length);
            for (int copy = 0; copy < fits; copy++) {
                for (int used = best.length - 1; used >= length; used--) {
                    best[used] = Math.max(best[used], best[used - length] + prices.get(kind));
                }
            }
        }
        return best[best.length - 1];
    }
}
