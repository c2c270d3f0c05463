package org.thalweg.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The linear programme of all patterns there are, none of them written down before it is needed (Gilmore and Gomory 1961):
 * the prices of the pieces are asked for the pattern worth most, until none is worth more than its bar. In each round the
 * prices, rounded to whole numbers, are a {@link Certificate} too (Farley 1990), so nothing proven here rests on doubles.
 */
final class ColumnGeneration {

    /** Prices are told to this many steps of the dearest bar, or as near as a long and a double both hold. */
    private static final long FINEST = 1L << 30;

    private static final long LARGEST = 1L << 50;

    /** All prices together stay below this, so that sums fit a long, and a double too, which is what many readers of JSON have. */
    private static final long LARGEST_SUM = 1L << 53;

    /** Looking whether a known pattern may be cut. */
    private static final long STEPS_A_PATTERN = 40;

    /** No piece is priced above so many of the dearest bars. */
    private static final int MOST_PRICE = 4;

    private final CuttingProblem problem;
    private final Set<Pattern> pool;
    private final Work work;
    private final Simplex simplex;
    private final PatternPricing pricing;
    private final long scale;
    private final long dearestPrice;
    private final long[] prices;
    private final long[] uppers;
    private Certificate best;
    private long bound;

    /**
     * @param near patterns of an answer that is near; the programme is solved with these first
     * @param pool patterns known; those that fit what is wanted are used, new ones are added
     */
    ColumnGeneration(CuttingProblem problem, List<Pattern> near, Set<Pattern> pool, Work work) {
        this.problem = problem;
        this.pool = pool;
        this.work = work;
        this.simplex = new Simplex(problem, work);
        this.pricing = new PatternPricing(problem, work);
        this.scale = scale();
        this.dearestPrice = LARGEST_SUM / Math.max(1, problem.pieces());
        this.prices = new long[problem.kinds()];
        this.uppers = new long[problem.barTypes()];
        this.best = Certificate.of(prices, uppers);
        work.spend(STEPS_A_PATTERN * (near.size() + pool.size()));
        near.stream().filter(problem::allows).forEach(simplex::add);
        simplex.optimise();
        pool.stream().filter(problem::allows).forEach(simplex::add);
    }

    private long scale() {
        long dearest = problem.dearest();
        long pieces = MOST_PRICE * Math.max(1L, problem.pieces());
        return Math.max(1, Math.min(Math.min(FINEST, LARGEST / dearest), LARGEST_SUM / dearest / pieces));
    }

    /** Runs until the fractions are cheapest, or until it is clear that no plan costs less than {@code enough}. */
    void solve(long enough) {
        boolean more = true;
        while (more && !work.over()) {
            simplex.optimise();
            more = round() && bound < enough && bound < ceiling();
        }
        bound = Math.max(bound, best.bound(problem, work));
    }

    /** Cost of the cheapest fractions so far, rounded up: more than this the linear programme can't prove. */
    private long ceiling() {
        return (long) Math.ceil(simplex.value() - 1e-6);
    }

    /** Asks for patterns worth more than their bars; false when there are none, or no time to ask for all bars. */
    private boolean round() {
        for (int kind = 0; kind < problem.kinds(); kind++) {
            double price = Math.min(simplex.price(kind), MOST_PRICE * problem.dearest());
            prices[kind] = Math.min(dearestPrice, Math.max(0, (long) Math.floor(price * scale)));
        }
        pricing.price(prices);
        List<Pattern> found = new ArrayList<>();
        for (int type = 0; type < problem.barTypes(); type++) {
            CuttingProblem.BarType bar = problem.bar(type);
            if (work.over()) {
                return false;
            }
            if (bar.available() > 0) {
                pricing.fill(type);
                long allowed = bar.cost() * scale;
                if (pricing.worth() > allowed + simplex.charge(type) * scale + scale * 1e-7) {
                    if (pool.add(pricing.pattern())) {
                        found.add(pricing.pattern());
                    }
                }
                uppers[type] = pricing.upper();
            }
        }
        offerPrices();
        found.forEach(simplex::add);
        return !found.isEmpty();
    }

    /** By parts of bars, which is quicker than whole bars and never above. */
    private void offerPrices() {
        long worth = 0;
        for (int kind = 0; kind < prices.length; kind++) {
            worth += prices[kind] * problem.wanted(kind);
        }
        long offered = new Cover(problem, uppers).leastInParts(worth);
        work.spend(8L * (prices.length + uppers.length));
        if (offered > bound) {
            bound = offered;
            best = Certificate.of(prices, uppers);
        }
    }

    long bound() {
        return bound;
    }

    Certificate certificate() {
        return best;
    }

    /** What was found, without the matrix it was found with: searches keep many of these at a time. */
    Fractions fractions() {
        return new Fractions(simplex.value(), bound, simplex.shares(), pool);
    }

    /**
     * Bars cut in fractions.
     *
     * @param value  cost of the fractions
     * @param bound  no plan costs less
     * @param shares patterns and how often each is cut
     * @param pool   all patterns known
     */
    record Fractions(double value, long bound, List<Simplex.Share> shares, Set<Pattern> pool) {}
}
