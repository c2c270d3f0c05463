package org.thalweg.geometry;

/**
 * Numbers of things (corners, sides) put in order without a box around each: a roof is read many thousand times an
 * hour and has a few dozen corners, so the boxes would cost more than the sorting.
 */
public final class Order {

    /** Runs this short are put in order by hand. */
    private static final int SHORT_RUN = 24;

    /** Whether thing {@code a} comes before thing {@code b}. Must be a strict order. */
    @FunctionalInterface
    public interface Before {
        boolean test(int a, int b);
    }

    private Order() {}

    /** The numbers 0 … count − 1 in order; equals keep the order of their numbers. */
    public static int[] of(int count, Before before) {
        int[] order = new int[count];
        for (int i = 0; i < count; i++) {
            order[i] = i;
        }
        sort(order, new int[count > SHORT_RUN ? count : 0], 0, count, before);
        return order;
    }

    private static void sort(int[] order, int[] spare, int from, int to, Before before) {
        if (to - from <= SHORT_RUN) {
            sortByHand(order, from, to, before);
            return;
        }
        int middle = (from + to) >>> 1;
        sort(order, spare, from, middle, before);
        sort(order, spare, middle, to, before);
        if (before.test(order[middle], order[middle - 1])) {
            merge(order, spare, from, middle, to, before);
        }
    }

    private static void sortByHand(int[] order, int from, int to, Before before) {
        for (int i = from + 1; i < to; i++) {
            int moving = order[i];
            int j = i;
            for (; j > from && before.test(moving, order[j - 1]); j--) {
                order[j] = order[j - 1];
            }
            order[j] = moving;
        }
    }

    private static void merge(int[] order, int[] spare, int from, int middle, int to, Before before) {
        System.arraycopy(order, from, spare, from, middle - from);
        int left = from;
        int right = middle;
        for (int i = from; left < middle; i++) {
            boolean takeRight = right < to && before.test(order[right], spare[left]);
            order[i] = takeRight ? order[right++] : spare[left++];
        }
    }
}
