package org.thalweg.stock;

import java.util.Arrays;
import java.util.BitSet;

/**
 * The bounded knapsack by dynamic programming: for every room up to the largest bar, the most that pieces on it can be worth.
 * Lengths are first divided by what divides them all. Its size is known before it is made.
 */
final class PricingTable {

    /** Largest table: rooms times lots, one bit each, and one number a room. */
    private static final long MOST_ENTRIES = 100_000_000;

    private static final long MOST_ROOMS = 2_000_000;

    private final CuttingProblem problem;
    private final long step;
    private final int rooms;
    private final int lots;
    private long[] most = {};
    private BitSet[] takes = {};
    private int[] lotKind = {};
    private int[] lotCount = {};

    PricingTable(CuttingProblem problem) {
        this.problem = problem;
        long divisor = 0;
        int count = 0;
        for (int kind = 0; kind < problem.kinds(); kind++) {
            if (problem.wanted(kind) > 0) {
                divisor = CuttingProblem.gcd(problem.length(kind), divisor);
                count += 32 - Integer.numberOfLeadingZeros(bound(kind));
            }
        }
        this.step = Math.max(1, divisor);
        this.lots = count;
        this.rooms = (int) Math.min(Integer.MAX_VALUE - 1L, largest() / step) + 1;
    }

    private long largest() {
        long largest = 0;
        for (int type = 0; type < problem.barTypes(); type++) {
            largest = Math.max(largest, problem.bar(type).room());
        }
        return largest;
    }

    private int bound(int kind) {
        return (int) Math.min(problem.wanted(kind), largest() / problem.length(kind));
    }

    long entries() {
        return (long) rooms * lots;
    }

    boolean affordable() {
        return rooms <= MOST_ROOMS && entries() <= MOST_ENTRIES;
    }

    /** A kind that is wanted b times comes in lots of 1, 2, 4, … and the rest, so that any count up to b can be taken. */
    private void makeLots() {
        lotKind = new int[lots];
        lotCount = new int[lots];
        int lot = 0;
        for (int kind = 0; kind < problem.kinds(); kind++) {
            int left = problem.wanted(kind) > 0 ? bound(kind) : 0;
            for (int size = 1; left > 0; size *= 2) {
                lotKind[lot] = kind;
                lotCount[lot++] = Math.min(size, left);
                left -= Math.min(size, left);
            }
        }
        takes = new BitSet[lots];
        Arrays.setAll(takes, i -> new BitSet(rooms));
        most = new long[rooms];
    }

    /** False when the work was over before the table was full. */
    boolean fill(long[] prices, Work work) {
        if (takes.length == 0) {
            makeLots();
        }
        Arrays.fill(most, 0);
        for (int lot = 0; lot < lots && !work.over(); lot++) {
            takes[lot].clear();
            add(lot, prices[lotKind[lot]] * lotCount[lot]);
            work.spend(rooms);
        }
        return !work.over();
    }

    private void add(int lot, long price) {
        int length = length(lot);
        BitSet take = takes[lot];
        for (int room = rooms - 1; room >= length; room--) {
            if (most[room - length] + price > most[room]) {
                most[room] = most[room - length] + price;
                take.set(room);
            }
        }
    }

    /** A lot longer than any bar is never taken; its length is cut down to what an int holds. */
    private int length(int lot) {
        return (int) Math.min(Integer.MAX_VALUE, problem.length(lotKind[lot]) / step * lotCount[lot]);
    }

    long worth(int type) {
        return most[room(type)];
    }

    private int room(int type) {
        return (int) (problem.bar(type).room() / step);
    }

    /** How many of each kind make the worth. */
    int[] pattern(int type) {
        int[] counts = new int[problem.kinds()];
        int room = room(type);
        for (int lot = lots - 1; lot >= 0; lot--) {
            if (takes[lot].get(room)) {
                counts[lotKind[lot]] += lotCount[lot];
                room -= length(lot);
            }
        }
        return counts;
    }
}
