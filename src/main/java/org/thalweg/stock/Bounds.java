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

    private final CuttingProblem problem;
    private final long room;
    private Certificate best;

    private Bounds(CuttingProblem problem) {
        this.problem = problem;
        this.room = problem.bar(0).room();
        this.best = area(problem);
    }

    /** The best of all families. */
    static Certificate best(CuttingProblem problem) {
        return problem.plain() ? new Bounds(problem).search() : area(problem);
    }

    /** Pieces and bars at their length. */
    private static Certificate area(CuttingProblem problem) {
        long[] lengths = new long[problem.kinds()];
        Arrays.setAll(lengths, problem::length);
        long[] rooms = new long[problem.barTypes()];
        Arrays.setAll(rooms, type -> problem.bar(type).room());
        return Certificate.of(lengths, rooms);
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

    private void offer(LongUnaryOperator price, long worth) {
        Certificate offered = certificate(price, worth);
        if (offered.bound(problem) > best.bound(problem)) {
            best = offered;
        }
    }

    private Certificate certificate(LongUnaryOperator price, long worth) {
        long[] prices = new long[problem.kinds()];
        Arrays.setAll(prices, kind -> price.applyAsLong(problem.length(kind)));
        return Certificate.of(prices, new long[] {worth});
    }
}
