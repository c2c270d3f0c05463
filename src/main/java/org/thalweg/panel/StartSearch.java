package org.thalweg.panel;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.thalweg.geometry.Region;
import org.thalweg.geometry.Ring;
import org.thalweg.geometry.Tolerance;

/**
 * The start offset that orders the least metal: first without slivers if that can be, then by ordered length, then by
 * fewest different lengths, then the smallest offset.
 *
 * <p>No blind grid. Between two offsets at which a rib passes a corner, every place where a piece may end (see {@link Ends})
 * moves straight with the offset, so it is known from two samples; what is ordered changes only where a length passes a
 * whole increment. Those places and the ends are all the candidates there are. A length that only just reaches an increment needs no more of
 * them, so the best of an interval is always found at one of its candidates and not only near it.
 *
 * <p>Known limits: a panel that a lap parts side by side is counted as one, and where hems of two pieces of a strip run into
 * each other a length may bend between two breaks.
 */
final class StartSearch {

    /** A finer increment than this many steps over a piece's change is not followed step by step. */
    private static final int MOST_STEPS = 4096;

    private final PlaneStrips strips;
    private final PanelSpec spec;
    private final EndLaps laps;
    private final Tolerance tolerance;

    private Choice best = Choice.NONE;

    private record Choice(double offset, boolean sliver, double ordered, int lengths) {

        static final Choice NONE = new Choice(0, true, Double.POSITIVE_INFINITY, Integer.MAX_VALUE);

        boolean betterThan(Choice other, Tolerance tolerance) {
            if (sliver != other.sliver) {
                return !sliver;
            }
            if (!tolerance.same(ordered, other.ordered)) {
                return ordered < other.ordered;
            }
            return lengths != other.lengths ? lengths < other.lengths : offset < other.offset;
        }
    }

    private StartSearch(PlaneStrips strips, PanelSpec spec, EndLaps laps, Tolerance tolerance) {
        this.strips = strips;
        this.spec = spec;
        this.laps = laps;
        this.tolerance = tolerance;
    }

    /** The offset, in [0, cover). Metres. */
    static double leastWaste(PlaneStrips strips, PanelSpec spec, EndLaps laps, Tolerance tolerance) {
        return new StartSearch(strips, spec, laps, tolerance).search();
    }

    /** About how many offsets are looked at on a plane whose sides cross ribs this often: pieces times increments. */
    static double steps(double crossings, PanelSpec spec) {
        double increment = spec.orderIncrement().metres();
        double each = increment > 0 ? Math.min(MOST_STEPS, 2 * spec.cover().metres() / increment) : 1;
        return crossings * each;
    }

    private double search() {
        double[] corners = corners();
        double[] breaks = breaks(corners);
        double[] slivers = slivers(corners);
        for (int i = 0; i < breaks.length; i++) {
            weigh(breaks[i], sample(breaks[i]));
            double next = i + 1 < breaks.length ? breaks[i + 1] : spec.cover().metres();
            if (next - breaks[i] > 4 * tolerance.hair()) {
                between(breaks[i], next, slivers);
            }
        }
        return best.offset;
    }

    /** How far every corner lies from the end where laying starts. */
    private double[] corners() {
        Doubles found = new Doubles();
        for (Region region : strips.corners()) {
            addCorners(region.outer(), found);
            region.openings().forEach(opening -> addCorners(opening, found));
        }
        return found.toArray();
    }

    private void addCorners(Ring ring, Doubles found) {
        for (int i = 0; i < ring.size(); i++) {
            found.add(Math.abs(ring.across(i) - strips.leadingEnd()));
        }
    }

    /** Offsets in [0, cover) at which a rib passes a corner; ascending, 0 among them. */
    private double[] breaks(double[] corners) {
        double cover = spec.cover().metres();
        Doubles found = new Doubles();
        found.add(0);
        for (double corner : corners) {
            double offset = intoCover(corner);
            if (offset < cover - tolerance.hair()) {
                found.add(offset);
            }
        }
        double[] sorted = found.toArray();
        Arrays.sort(sorted);
        int kept = 1;
        for (double at : sorted) {
            if (!tolerance.same(at, sorted[kept - 1])) {
                sorted[kept++] = at;
            }
        }
        return Arrays.copyOf(sorted, kept);
    }

    /** Offsets in [0, cover) at which a piece becomes a sliver or stops being one. */
    private double[] slivers(double[] corners) {
        Doubles found = new Doubles();
        for (double corner : corners) {
            found.add(intoCover(corner + spec.narrowestRip().metres()));
            found.add(intoCover(corner - spec.narrowestRip().metres()));
        }
        return found.toArray();
    }

    private double intoCover(double at) {
        double cover = spec.cover().metres();
        return at - Math.floor(at / cover) * cover;
    }

    /**
     * Which piece of a strip is the lowest may change between two samples; which sides it has may not, and a straight side
     * crosses a strip once.
     */
    private static final Comparator<PlaneStrips.Blank> BY_SIDE = Comparator.comparingInt(PlaneStrips.Blank::strip)
            .thenComparingInt(blank -> leastTag(blank.finished().outer()));

    private static int leastTag(Ring ring) {
        int least = Integer.MAX_VALUE;
        for (int i = 0; i < ring.size(); i++) {
            if (ring.tag(i) >= 0) {
                least = Math.min(least, ring.tag(i));
            }
        }
        return least;
    }

    private Ends sample(double offset) {
        List<PlaneStrips.Blank> blanks = strips.at(offset);
        blanks.sort(BY_SIDE);
        return Ends.of(blanks, spec.cover().metres(), tolerance);
    }

    /** Every offset strictly between two breaks at which what is ordered can change. */
    private void between(double from, double to, double[] slivers) {
        double third = (to - from) / 3;
        Ends a = sample(from + third);
        Ends b = sample(to - third);
        if (a.pieces() != b.pieces()) {
            // Corners within rounding of each other and of a rib: nothing is known in between but the samples.
            weigh(from + third, a);
            weigh(to - third, b);
            return;
        }
        Ends grow = a.growth(b, third);
        Doubles offsets = new Doubles();
        offsets.add((from + to) / 2);
        for (double sliver : slivers) {
            offsets.add(sliver);
        }
        for (int piece = 0; piece < a.pieces(); piece++) {
            for (int high = 0; high < Ends.KINDS; high++) {
                for (int low = 0; low < Ends.KINDS; low++) {
                    addSteps(
                            a.between(piece, high, low),
                            grow.between(piece, high, low),
                            from + third,
                            from,
                            to,
                            offsets);
                }
            }
        }
        double hair = tolerance.hair();
        Ends at = a.blank();
        double[] candidates = offsets.toArray();
        Arrays.sort(candidates);
        double last = from;
        for (double offset : candidates) {
            if (offset > last + hair && offset < to - hair) {
                at.set(a, grow, offset - from - third);
                weigh(offset, at);
                last = offset;
            }
        }
    }

    /**
     * Adds the offsets at which a length passes a whole increment or needs one more lap.
     *
     * @param length at the offset {@code at}
     * @param grow   how much it grows with the offset
     */
    private void addSteps(double length, double grow, double at, double from, double to, Doubles offsets) {
        double start = length + (from - at) * grow;
        double end = length + (to - at) * grow;
        if (!Double.isFinite(length) || tolerance.same(start, end)) {
            return;
        }
        double least = Math.max(0, Math.min(start, end));
        double most = Math.max(start, end);
        double increment = spec.orderIncrement().metres();
        for (int pieces = laps.pieces(least); pieces <= laps.pieces(most); pieces++) {
            double overlapped = (pieces - 1) * spec.endLap().metres();
            double longest =
                    pieces == 1 ? spec.longest().metres() : spec.endLap().metres() + pieces * spec.usable();
            offsets.add(at + (longest - length) / grow);
            if (increment > 0 && (most - least) / increment <= MOST_STEPS) {
                for (long k = tolerance.ceil(least + overlapped, increment); k * increment <= most + overlapped; k++) {
                    offsets.add(at + (k * increment - overlapped - length) / grow);
                }
            }
        }
    }

    private void weigh(double offset, Ends sample) {
        boolean sliver = sample.narrowest() < spec.narrowestRip().metres() - tolerance.hair();
        if (sliver && !best.sliver) {
            return;
        }
        double most = sliver == best.sliver ? best.ordered + tolerance.hair() : Double.POSITIVE_INFINITY;
        double[] lengths = new double[sample.pieces()];
        double ordered = 0;
        for (int i = 0; i < lengths.length; i++) {
            lengths[i] = laps.ordered(sample.length(i));
            ordered += lengths[i];
            if (ordered > most) {
                return;
            }
        }
        Choice choice = new Choice(offset, sliver, ordered, different(lengths));
        if (choice.betterThan(best, tolerance)) {
            best = choice;
        }
    }

    private int different(double[] lengths) {
        Arrays.sort(lengths);
        int different = 0;
        for (int i = 0; i < lengths.length; i++) {
            if (i == 0 || !tolerance.same(lengths[i], lengths[i - 1])) {
                different++;
            }
        }
        return different;
    }

    /** A growing list of numbers. */
    private static final class Doubles {

        private double[] numbers = new double[32];
        private int size;

        void add(double number) {
            if (size == numbers.length) {
                numbers = Arrays.copyOf(numbers, size * 2);
            }
            numbers[size++] = number;
        }

        double[] toArray() {
            return Arrays.copyOf(numbers, size);
        }
    }
}
