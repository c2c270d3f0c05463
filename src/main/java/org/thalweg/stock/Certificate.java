package org.thalweg.stock;

import java.util.List;
import java.util.stream.LongStream;

/**
 * Why no plan is cheaper: a price for every kind of piece such that no bar, however it is cut, yields pieces worth more than
 * its cost. All pieces together are then worth no more than any plan costs. (Linear programming duality in whole numbers;
 * nothing has to be believed but sums.)
 *
 * <p>Law: for each sort of bar k and any pieces that fit on it, Σ prices ≤ {@code scale} · cost(k) + charge(k). So any plan
 * costs at least (Σ price · count − Σ charge · available) / {@code scale}, rounded up.
 *
 * @param prices  a price for every kind, longest first; each 0 or more
 * @param charges for every sort of bar, in the order of the request; above 0 only for bars that are limited: what one more
 *                would be worth
 * @param scale   how many units of price make one unit of cost; 1 or more
 */
public record Certificate(List<Long> prices, List<Long> charges, long scale) {

    public Certificate {
        prices = List.copyOf(prices);
        charges = List.copyOf(charges);
        if (scale < 1) {
            throw new IllegalArgumentException("scale (%d) must be 1 or more".formatted(scale));
        }
    }

    static Certificate of(long[] prices, long[] charges, long scale) {
        return new Certificate(
                LongStream.of(prices).boxed().toList(),
                LongStream.of(charges).boxed().toList(),
                scale);
    }

    /** Least cost of any plan that cuts all pieces. */
    long bound(CuttingProblem problem) {
        long worth = 0;
        for (int kind = 0; kind < problem.kinds(); kind++) {
            worth = Math.addExact(worth, Math.multiplyExact(prices.get(kind), (long) problem.wanted(kind)));
        }
        for (int type = 0; type < problem.barTypes(); type++) {
            if (charges.get(type) > 0) {
                worth = Math.subtractExact(worth, Math.multiplyExact(charges.get(type), (long)
                        problem.bar(type).available()));
            }
        }
        return Math.max(0, Math.floorDiv(worth + scale - 1, scale));
    }
}
