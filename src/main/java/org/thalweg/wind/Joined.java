package org.thalweg.wind;

/** Things put together two by two, and which then belong together. */
final class Joined {

    private final int[] to;

    Joined(int count) {
        to = new int[count];
        for (int i = 0; i < count; i++) {
            to[i] = i;
        }
    }

    /** The first of all that belong together. */
    int first(int thing) {
        int first = thing;
        while (to[first] != first) {
            to[first] = to[to[first]];
            first = to[first];
        }
        return first;
    }

    void join(int one, int other) {
        int first = Math.min(first(one), first(other));
        int second = Math.max(first(one), first(other));
        to[second] = first;
    }

    boolean same(int one, int other) {
        return first(one) == first(other);
    }
}
