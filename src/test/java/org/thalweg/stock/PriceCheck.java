package org.thalweg.stock;

import java.math.BigInteger;
import java.util.List;

/**
 * What a buyer needs to check a bound: the lengths (with kerf), the counts, the bars, the price list, and a table. It shares
 * nothing with the solver. For each sort of bar the table finds the most that pieces on it can be worth; if that is never
 * more than scale · cost + charge, no plan costs less than the sum below.
 */
final class PriceCheck {

    private PriceCheck() {}

    /**
     * The bound, worked out from the plan's price list alone.
     *
     * @throws AssertionError when the price list proves nothing
     */
    static long bound(CuttingCase asked, CuttingPlan plan) {
        Certificate list = plan.certificate();
        BigInteger scale = BigInteger.valueOf(list.scale());
        BigInteger worth = BigInteger.ZERO;
        for (int kind = 0; kind < plan.priced().size(); kind++) {
            worth = worth.add(
                    times(list.prices().get(kind), plan.priced().get(kind).count()));
        }
        for (int k = 0; k < asked.stock().size(); k++) {
            StockBar bar = asked.stock().get(k);
            BigInteger allowed = scale.multiply(BigInteger.valueOf(bar.cost()))
                    .add(BigInteger.valueOf(list.charges().get(k)));
            BigInteger most = BigInteger.valueOf(most(plan.priced(), list.prices(), bar.length() + asked.kerf()));
            if (most.compareTo(allowed) > 0) {
                throw new AssertionError("pieces worth %d fit on a bar of %s".formatted(most, allowed));
            }
            worth = worth.subtract(
                    times(list.charges().get(k), charged(bar, list.charges().get(k))));
        }
        BigInteger[] bars = worth.divideAndRemainder(scale);
        return bars[1].signum() > 0 ? bars[0].longValueExact() + 1 : Math.max(0, bars[0].longValueExact());
    }

    private static int charged(StockBar bar, long charge) {
        if (charge < 0 || charge > 0 && bar.count().isEmpty()) {
            throw new AssertionError("a charge of %d for %s".formatted(charge, bar));
        }
        return bar.count().orElse(0);
    }

    private static BigInteger times(long a, int b) {
        return BigInteger.valueOf(a).multiply(BigInteger.valueOf(b));
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
