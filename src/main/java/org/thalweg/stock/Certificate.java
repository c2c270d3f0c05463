package org.thalweg.stock;

import java.util.List;
import java.util.stream.LongStream;

/**
 * Why no plan is cheaper: a price for every kind of piece, and for every sort of bar what the pieces on one bar are worth at
 * most, however it is cut. All bars of a plan together must be worth as much as all pieces. (Linear programming duality in
 * whole numbers; nothing has to be believed but sums.)
 *
 * <p>Law: any pieces that fit on a bar of sort k, none more often than it is wanted and none beside what it must be apart from,
 * are worth no more than worth(k). So any
 * plan costs at least as much as the cheapest bars, no more of a sort than there are, whose worths together reach
 * Σ price · count. With one sort of bar that cost 1 each these are Σ price · count / worth bars, rounded up.
 *
 * @param prices a price for every kind, longest first; each 0 or more
 * @param worths for every sort of bar, in the order of the request, the most that pieces on one are worth; 0 or more
 */
public record Certificate(List<Long> prices, List<Long> worths) {

    public Certificate {
        prices = List.copyOf(prices);
        worths = List.copyOf(worths);
    }

    static Certificate of(long[] prices, long[] worths) {
        return new Certificate(
                LongStream.of(prices).boxed().toList(),
                LongStream.of(worths).boxed().toList());
    }

    /** The same in the smallest whole numbers: what it proves depends on no scale. */
    Certificate reduced() {
        long common = LongStream.concat(
                        prices.stream().mapToLong(price -> price),
                        worths.stream().mapToLong(worth -> worth))
                .reduce(0, CuttingProblem::gcd);
        long divisor = Math.max(1, common);
        return new Certificate(
                prices.stream().map(price -> price / divisor).toList(),
                worths.stream().map(worth -> worth / divisor).toList());
    }

    /** Least cost of any plan that cuts all pieces. */
    long bound(CuttingProblem problem, Work work) {
        long[] most = worths.stream().mapToLong(worth -> worth).toArray();
        return new Cover(problem, most).least(worth(problem), work);
    }

    private long worth(CuttingProblem problem) {
        long worth = 0;
        for (int kind = 0; kind < problem.kinds(); kind++) {
            worth = Math.addExact(worth, Math.multiplyExact(prices.get(kind), (long) problem.wanted(kind)));
        }
        return worth;
    }
}
