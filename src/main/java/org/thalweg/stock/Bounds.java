package org.thalweg.stock;

import java.util.Arrays;
import java.util.function.LongUnaryOperator;

/**
 * Lower bounds in microseconds, for one sort of bar. Each is a dual feasible function: a price by length alone such that
 * lengths that fit on a bar together never cost more than the bar. The area bound, Martello and Toth's L2 (as the best of
 * two families) and those of Fekete and Schepers, and of Carlier, Clautiaux and Moukrim, are all of this form, so each of
 * them comes with its {@link Certificate}.
 */
final class Bounds {

    /** Rounding to k-ths beyond this finds nothing in practice. [common practice, no source] */
    private static final int FINEST = 20;

    private static final long LARGEST_SUM = 1L << 58;

    private final CuttingProblem problem;
    private final long room;
    private Certificate best;

    private Bounds(CuttingProblem problem) {
        this.problem = problem;
        this.room = problem.bar(0).room();
        this.best = certificate(length -> length, room);
    }

    /** The best of all families. */
    static Certificate best(CuttingProblem problem) {
        return problem.plain() ? new Bounds(problem).search() : area(problem);
    }

    private Certificate search() {
        for (int k = 1; k <= FINEST; k++) {
            offer(roundedToParts(k), room * k);
        }
        for (int kind = 0; kind < problem.kinds(); kind++) {
            long alpha = problem.length(kind);
            if (2 * alpha <= room) {
                offer(withoutShort(alpha), room);
                offer(countedIn(alpha), 2 * (room / alpha));
            }
        }
        return best;
    }

    /** Short pieces cost nothing, so those that leave room for nothing else cost a bar. [published: Martello, Toth 1990] */
    private LongUnaryOperator withoutShort(long alpha) {
        return length -> length > room - alpha ? room : length < alpha ? 0 : length;
    }

    /** Whole (k+1)-ths of a bar count as k-ths. [published: Fekete, Schepers 2001, u(k)] */
    private LongUnaryOperator roundedToParts(int k) {
        return length -> (k + 1) * length % room == 0 ? length * k : (k + 1) * length / room * room;
    }

    /** How many pieces of a length are lost. [published: Carlier, Clautiaux, Moukrim 2007, f0] */
    private LongUnaryOperator countedIn(long alpha) {
        long whole = room / alpha;
        return length -> 2 * length > room
                ? 2 * (whole - (room - length) / alpha)
                : 2 * length == room ? whole : 2 * (length / alpha);
    }

    private void offer(LongUnaryOperator price, long scale) {
        Certificate offered = certificate(price, scale);
        if (offered.bound(problem) > best.bound(problem)) {
            best = offered;
        }
    }

    private Certificate certificate(LongUnaryOperator price, long scale) {
        long[] prices = new long[problem.kinds()];
        Arrays.setAll(prices, kind -> price.applyAsLong(problem.length(kind)));
        return Certificate.of(prices, new long[problem.barTypes()], scale);
    }

    /** Metal at the price of the bars that give most of it for their cost; limited bars that give more are charged for it. */
    private static Certificate area(CuttingProblem problem) {
        long step = step(problem);
        long scale = 1;
        for (int type = 0; type < problem.barTypes(); type++) {
            CuttingProblem.BarType bar = problem.bar(type);
            if (!bar.limited()) {
                scale = Math.max(scale, Math.floorDiv(bar.room() * step - 1, bar.cost()) + 1);
            }
        }
        long[] prices = new long[problem.kinds()];
        Arrays.setAll(prices, kind -> problem.length(kind) * step);
        long[] charges = new long[problem.barTypes()];
        for (int type = 0; type < charges.length; type++) {
            charges[type] = Math.max(
                    0,
                    problem.bar(type).room() * step - scale * problem.bar(type).cost());
        }
        return Certificate.of(prices, charges, scale);
    }

    /** As fine as the costs ask for and sums in a long allow. */
    private static long step(CuttingProblem problem) {
        long widest = 1;
        for (int type = 0; type < problem.barTypes(); type++) {
            widest = Math.max(widest, problem.bar(type).room());
        }
        return Math.max(1, Math.min(problem.dearest(), LARGEST_SUM / widest / Math.max(1, problem.pieces())));
    }
}
