package org.thalweg.stock;

import java.util.Arrays;
import java.util.function.LongUnaryOperator;
import java.util.stream.IntStream;

/**
 * Lower bounds in microseconds, for one sort of bar. Each is a dual feasible function: a price by length alone such that
 * lengths that fit on a bar together never cost more than the bar. The area bound, Martello and Toth's L2 (as the best of
 * two families) and those of Fekete and Schepers, and of Carlier, Clautiaux and Moukrim, are all of this form, so each of
 * them comes with its {@link Certificate}.
 */
final class Bounds {

    /** Rounding to k-ths beyond this finds nothing in practice. [common practice, no source] */
    private static final int FINEST = 20;

    /** Most of them divide. */
    private static final long STEPS_A_PRICE = 4;

    private final CuttingProblem problem;
    private final long room;
    private final long enough;
    private final long[] lengths;
    private final int[] wanted;
    private Certificate best;
    private long bars;

    private Bounds(CuttingProblem problem, long enough) {
        this.problem = problem;
        this.room = problem.bar(0).room();
        this.enough = enough / problem.bar(0).cost();
        int[] kinds = IntStream.range(0, problem.kinds())
                .filter(kind -> problem.wanted(kind) > 0)
                .toArray();
        this.lengths = Arrays.stream(kinds).mapToLong(problem::length).toArray();
        this.wanted = Arrays.stream(kinds).map(problem::wanted).toArray();
        this.best = area(problem);
        this.bars = bars(length -> length, room);
    }

    /**
     * The best of all families.
     *
     * @param enough a plan of this cost is known: a bound that reaches it is the best
     */
    static Certificate best(CuttingProblem problem, long enough, Work work) {
        work.spend(2L * problem.kinds());
        return problem.plain() ? new Bounds(problem, enough).search(work) : area(problem);
    }

    /** Pieces and bars at their length. */
    private static Certificate area(CuttingProblem problem) {
        long[] lengths = new long[problem.kinds()];
        Arrays.setAll(lengths, problem::length);
        long[] rooms = new long[problem.barTypes()];
        Arrays.setAll(rooms, type -> problem.bar(type).room());
        return Certificate.of(lengths, rooms);
    }

    private Certificate search(Work work) {
        for (int k = 1; k <= FINEST && bars < enough; k++) {
            offer(roundedToParts(k), room * k, work);
        }
        for (int i = 0; i < lengths.length && bars < enough; i++) {
            if (2 * lengths[i] <= room) {
                offer(withoutShort(lengths[i]), room, work);
                offer(countedIn(lengths[i]), 2 * (room / lengths[i]), work);
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

    private void offer(LongUnaryOperator price, long worth, Work work) {
        long offered = bars(price, worth);
        work.spend(STEPS_A_PRICE * lengths.length);
        if (offered > bars) {
            bars = offered;
            best = certificate(price, worth);
        }
    }

    /** How many bars are worth as much as all pieces. */
    private long bars(LongUnaryOperator price, long worth) {
        long all = 0;
        for (int i = 0; i < lengths.length; i++) {
            all += price.applyAsLong(lengths[i]) * wanted[i];
        }
        return (all + worth - 1) / worth;
    }

    private Certificate certificate(LongUnaryOperator price, long worth) {
        long[] prices = new long[problem.kinds()];
        Arrays.setAll(prices, kind -> price.applyAsLong(problem.length(kind)));
        return Certificate.of(prices, new long[] {worth});
    }
}
