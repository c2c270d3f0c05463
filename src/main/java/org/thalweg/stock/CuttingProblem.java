package org.thalweg.stock;

import java.util.Arrays;
import java.util.BitSet;

/**
 * What is to be cut from what, in whole numbers. Kinds are pieces that are alike, longest first; rooms are what fits on a bar.
 * Lengths and rooms hold the kerf. Every kind fits on some sort of bar without limit. Some kinds may have to stay apart: never two of them on one bar. Does not change.
 */
final class CuttingProblem {

    /** As many bars as anybody wants. */
    static final int UNLIMITED = Integer.MAX_VALUE;

    /** Costs from here up are all alike: bars that nobody has, each dearer than a whole plan. Two of these still fit a long. */
    static final long DEAREST_PLAN = 1L << 60;

    private final long[] lengths;
    private final int[] wanted;
    private final BarType[] bars;
    private final BitSet[] apart;
    private final boolean free;

    /**
     * A sort of bar.
     *
     * @param room      what fits on it, grid steps, kerf added; above 0
     * @param cost      of one, whole units, 0 only for bars that are limited
     * @param available how many there are
     */
    record BarType(long room, long cost, int available) {
        boolean limited() {
            return available != UNLIMITED;
        }

        /** Cost of so many. */
        long cost(long count) {
            return cost > 0 && count > DEAREST_PLAN / cost ? DEAREST_PLAN : cost * count;
        }
    }

    /** Any piece may lie beside any other. */
    CuttingProblem(long[] lengths, int[] wanted, BarType... bars) {
        this(lengths.clone(), wanted.clone(), bars.clone(), nobodyApart(lengths.length));
    }

    /** The same with kinds that stay apart: those with the same number, above 0, also from others of their own. */
    CuttingProblem apartBy(int[] group) {
        BitSet[] more = copy(0);
        for (int kind = 0; kind < kinds(); kind++) {
            for (int other = 0; other < kinds() && group[kind] > 0; other++) {
                more[kind].set(other, more[kind].get(other) || group[kind] == group[other]);
            }
        }
        return new CuttingProblem(lengths, wanted, bars, more);
    }

    private CuttingProblem(long[] lengths, int[] wanted, BarType[] bars, BitSet[] apart) {
        this.lengths = lengths;
        this.wanted = wanted;
        this.bars = bars;
        this.apart = apart;
        this.free = Arrays.stream(apart).allMatch(BitSet::isEmpty);
    }

    private static BitSet[] nobodyApart(int kinds) {
        BitSet[] apart = new BitSet[kinds];
        Arrays.setAll(apart, kind -> new BitSet());
        return apart;
    }

    int kinds() {
        return lengths.length;
    }

    long length(int kind) {
        return lengths[kind];
    }

    int wanted(int kind) {
        return wanted[kind];
    }

    int barTypes() {
        return bars.length;
    }

    BarType bar(int type) {
        return bars[type];
    }

    /** Most pieces of a kind that one bar of a type can give. */
    int most(int kind, int type) {
        return mostIn(kind, bars[type].room());
    }

    /** Most pieces of a kind that so much room can give. */
    int mostIn(int kind, long room) {
        return (int) Math.min(apart[kind].get(kind) ? Math.min(1, wanted[kind]) : wanted[kind], room / lengths[kind]);
    }

    /** Whether any piece may lie beside any other. */
    boolean free() {
        return free;
    }

    /** Whether a kind may not lie on a bar that holds these other kinds. */
    boolean clashes(int kind, BitSet held) {
        return !free && apart[kind].intersects(held);
    }

    /** Whether a bar may be cut so: nothing more than is wanted, nothing beside what it must be apart from. */
    boolean allows(Pattern pattern) {
        for (int i = 0; i < pattern.size(); i++) {
            int kind = pattern.kind(i);
            if (pattern.count(i) > wanted[kind] || pattern.count(i) > 1 && apart[kind].get(kind)) {
                return false;
            }
            for (int j = i + 1; !free && j < pattern.size(); j++) {
                if (apart[kind].get(pattern.kind(j))) {
                    return false;
                }
            }
        }
        return bars[pattern.type()].available() > 0;
    }

    /** One sort of bar, as many as wanted: fewest bars is all there is to it. */
    boolean plain() {
        return bars.length == 1 && !bars[0].limited();
    }

    int pieces() {
        int pieces = 0;
        for (int count : wanted) {
            pieces += count;
        }
        return pieces;
    }

    long dearest() {
        long dearest = 1;
        for (BarType bar : bars) {
            dearest = Math.max(dearest, bar.cost());
        }
        return dearest;
    }

    /** What divides the cost of every plan. */
    long costStep() {
        long step = 0;
        for (BarType bar : bars) {
            step = gcd(bar.cost(), step);
        }
        return Math.max(1, step);
    }

    static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }

    /** Least cost above 0. */
    long cheapest() {
        long cheapest = Long.MAX_VALUE;
        for (BarType bar : bars) {
            cheapest = bar.cost() > 0 ? Math.min(cheapest, bar.cost()) : cheapest;
        }
        return cheapest;
    }

    /** The same with other counts: what is left to cut once some bars are chosen. */
    CuttingProblem left(int[] stillWanted, int[] stillAvailable) {
        BarType[] left = new BarType[bars.length];
        for (int type = 0; type < bars.length; type++) {
            left[type] = new BarType(bars[type].room(), bars[type].cost(), stillAvailable[type]);
        }
        return new CuttingProblem(lengths, stillWanted.clone(), left, apart);
    }

    /** Two kinds, or two pieces of one, that never lie on one bar. */
    CuttingProblem apart(int kind, int other) {
        BitSet[] more = copy(0);
        more[kind].set(other);
        more[other].set(kind);
        return new CuttingProblem(lengths, wanted, bars, more);
    }

    /**
     * One piece of each of two kinds made one: a kind of its own, the last, that must be apart from whatever either must.
     *
     * @param tooDear the cost of a bar made up for it where it fits on none that is without limit
     */
    CuttingProblem joined(int kind, int other, long tooDear) {
        int joined = kinds();
        BitSet[] more = copy(1);
        more[joined].or(apart[kind]);
        more[joined].or(apart[other]);
        for (int third = more[joined].nextSetBit(0); third >= 0; third = more[joined].nextSetBit(third + 1)) {
            more[third].set(joined);
        }
        long[] longer = Arrays.copyOf(lengths, joined + 1);
        longer[joined] = lengths[kind] + lengths[other];
        int[] counts = Arrays.copyOf(wanted, joined + 1);
        counts[kind]--;
        counts[other]--;
        counts[joined] = 1;
        BarType[] enough = fitsUnlimited(longer[joined]) ? bars : Arrays.copyOf(bars, bars.length + 1);
        if (enough != bars) {
            enough[bars.length] = new BarType(longer[joined], tooDear, UNLIMITED);
        }
        return new CuttingProblem(longer, counts, enough, more);
    }

    /**
     * Every sort of bar a second time, paid for, of which there are none as yet; and at last a bar without limit for any piece.
     *
     * @param tooDear what that one costs
     */
    CuttingProblem withPaidTwins(long tooDear) {
        BarType[] more = Arrays.copyOf(bars, 2 * bars.length + 1);
        for (int type = 0; type < bars.length; type++) {
            more[bars.length + type] = new BarType(bars[type].room(), 0, 0);
        }
        more[2 * bars.length] = new BarType(Arrays.stream(lengths).max().orElseThrow(), tooDear, UNLIMITED);
        return new CuttingProblem(lengths, wanted, more, apart);
    }

    private boolean fitsUnlimited(long length) {
        return Arrays.stream(bars).anyMatch(bar -> !bar.limited() && bar.room() >= length);
    }

    private BitSet[] copy(int further) {
        BitSet[] copy = nobodyApart(apart.length + further);
        for (int kind = 0; kind < apart.length; kind++) {
            copy[kind].or(apart[kind]);
        }
        return copy;
    }

    int[] wanted() {
        return wanted.clone();
    }

    int[] available() {
        int[] available = new int[bars.length];
        for (int type = 0; type < bars.length; type++) {
            available[type] = bars[type].available();
        }
        return available;
    }
}
