package org.thalweg.drainage;

import java.util.Arrays;
import org.thalweg.geometry.Region;
import org.thalweg.geometry.Ring;

/**
 * The sides of a plane that fall lines over a stretch of it meet, each from its left end to its right end. Sides along
 * the fall line are left out: no water crosses them.
 */
final class SidesOver {

    /** No side. */
    static final int NONE = -1;

    private static final int LEFT = 0;
    private static final int LEFT_UP = 1;
    private static final int RIGHT = 2;
    private static final int RIGHT_UP = 3;
    private static final int EACH = 4;

    private double[] of = new double[16 * EACH];
    private int[] tag = new int[16];
    private boolean[] low = new boolean[16];
    private boolean[] rim = new boolean[16];
    private int count;

    private double[] cuts = new double[34];
    private int cutCount;

    private int bottom;

    /** Takes up the sides of a plane over a stretch, and cuts it at every corner over it. */
    void gather(Region shape, Stretch stretch) {
        count = 0;
        cutCount = 0;
        bottom = NONE;
        cut(stretch.from());
        cut(stretch.to());
        gather(shape.outer(), false, stretch);
        for (Ring opening : shape.openings()) {
            gather(opening, true, stretch);
        }
        Arrays.sort(cuts, 0, cutCount);
    }

    private void gather(Ring ring, boolean opening, Stretch stretch) {
        double from = stretch.from();
        double to = stretch.to();
        for (int i = 0; i < ring.size(); i++) {
            int j = ring.next(i);
            boolean toTheRight = ring.across(j) > ring.across(i);
            int leftEnd = toTheRight ? i : j;
            int rightEnd = toTheRight ? j : i;
            if (ring.across(rightEnd) > from && ring.across(leftEnd) < to && ring.across(i) != ring.across(j)) {
                add(ring, leftEnd, rightEnd);
                bottom = ring == stretch.ring() && i == stretch.side() ? count : bottom;
                tag[count] = ring.tag(i);
                low[count] = toTheRight;
                rim[count++] = opening;
            }
            if (ring.across(i) > from && ring.across(i) < to) {
                cut(ring.across(i));
            }
        }
    }

    private void add(Ring ring, int leftEnd, int rightEnd) {
        if (count == tag.length) {
            of = Arrays.copyOf(of, 2 * of.length);
            tag = Arrays.copyOf(tag, 2 * count);
            low = Arrays.copyOf(low, 2 * count);
            rim = Arrays.copyOf(rim, 2 * count);
        }
        int at = EACH * count;
        of[at + LEFT] = ring.across(leftEnd);
        of[at + LEFT_UP] = ring.up(leftEnd);
        of[at + RIGHT] = ring.across(rightEnd);
        of[at + RIGHT_UP] = ring.up(rightEnd);
    }

    private void cut(double across) {
        if (cutCount == cuts.length) {
            cuts = Arrays.copyOf(cuts, 2 * cutCount);
        }
        cuts[cutCount++] = across;
    }

    /** The side the stretch itself is part of. */
    int bottom() {
        return bottom;
    }

    /** How many cuts there are, the ends of the stretch with them; some may stand at one place. */
    int cuts() {
        return cutCount;
    }

    /** Across, ascending. */
    double cut(int number) {
        return cuts[number];
    }

    /** How far up a side lies at a place across it. */
    double up(int side, double across) {
        int at = EACH * side;
        return of[at + LEFT_UP] + share(side, across) * (of[at + RIGHT_UP] - of[at + LEFT_UP]);
    }

    /** How far along a side a place lies, counted from its left end; 0 to 1. */
    double share(int side, double across) {
        int at = EACH * side;
        return (across - of[at + LEFT]) / (of[at + RIGHT] - of[at + LEFT]);
    }

    /** The index of the edge a side lies on. */
    int edge(int side) {
        return tag[side];
    }

    /** Whether a side belongs to an opening. */
    boolean onOpening(int side) {
        return rim[side];
    }

    /** The next side where metal ends, or begins again, straight up from a place. */
    int nextAbove(double across, double up, boolean metalBegins) {
        int next = NONE;
        double nextUp = Double.POSITIVE_INFINITY;
        for (int i = 0; i < count; i++) {
            if (low[i] == metalBegins && spans(i, across)) {
                double here = up(i, across);
                if (here > up && here < nextUp) {
                    next = i;
                    nextUp = here;
                }
            }
        }
        return next;
    }

    private boolean spans(int side, double across) {
        return of[EACH * side + LEFT] <= across && across <= of[EACH * side + RIGHT];
    }
}
