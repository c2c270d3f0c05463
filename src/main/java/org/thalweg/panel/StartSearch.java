package org.thalweg.panel;

import java.util.ArrayList;
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
 * <p>No blind grid. Between two offsets at which a rib passes a corner, every piece's length is a straight function of the
 * offset, so it is known from two samples; what is ordered changes only where a length passes a whole increment. Those
 * places and the ends are all the candidates there are. A length that only just reaches an increment needs no more of
 * them, so the best of an interval is always found at one of its candidates and not only near it.
 *
 * <p>Known limits: a panel that a lap parts side by side is counted as one, and a hem that closes a notch in a single
 * piece may bend a length between two breaks.
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

    private double search() {
        double[] breaks = breaks();
        for (int i = 0; i < breaks.length; i++) {
            weigh(breaks[i], sample(breaks[i]));
            double next = i + 1 < breaks.length ? breaks[i + 1] : spec.cover().metres();
            if (next - breaks[i] > 4 * tolerance.hair()) {
                between(breaks[i], next);
            }
        }
        return best.offset;
    }

    /** Offsets in [0, cover) at which a rib passes a corner, or a piece becomes a sliver; ascending. */
    private double[] breaks() {
        double cover = spec.cover().metres();
        double narrow = spec.narrowestRip().metres();
        List<Double> found = new ArrayList<>();
        found.add(0.0);
        for (Region region : strips.corners()) {
            addBreaks(region.outer(), narrow, found);
            region.openings().forEach(opening -> addBreaks(opening, narrow, found));
        }
        double[] sorted = found.stream()
                .mapToDouble(at -> at - Math.floor(at / cover) * cover)
                .filter(at -> at < cover - tolerance.hair())
                .sorted()
                .toArray();
        int kept = 1;
        for (double at : sorted) {
            if (!tolerance.same(at, sorted[kept - 1])) {
                sorted[kept++] = at;
            }
        }
        return Arrays.copyOf(sorted, kept);
    }

    private void addBreaks(Ring ring, double narrow, List<Double> found) {
        for (int i = 0; i < ring.size(); i++) {
            double fromStart = Math.abs(ring.across(i) - strips.leadingEnd());
            found.add(fromStart);
            found.add(fromStart + narrow);
            found.add(fromStart - narrow);
        }
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

    private record Sample(double[] lengths, double[] widths) {}

    private Sample sample(double offset) {
        List<PlaneStrips.Blank> blanks = strips.at(offset);
        blanks.sort(BY_SIDE);
        double[] lengths = new double[blanks.size()];
        double[] widths = new double[blanks.size()];
        for (int i = 0; i < lengths.length; i++) {
            lengths[i] = blanks.get(i).length();
            widths[i] = blanks.get(i).width();
        }
        return new Sample(lengths, widths);
    }

    /** Every offset strictly between two breaks at which what is ordered can change. */
    private void between(double from, double to) {
        double third = (to - from) / 3;
        Sample a = sample(from + third);
        Sample b = sample(to - third);
        if (a.lengths.length != b.lengths.length) {
            throw new IllegalStateException("pieces changed from %d to %d with no corner between the ribs of %s and %s"
                    .formatted(a.lengths.length, b.lengths.length, from, to));
        }
        double[] grow = new double[a.lengths.length];
        double[] widen = new double[a.lengths.length];
        for (int i = 0; i < grow.length; i++) {
            grow[i] = (b.lengths[i] - a.lengths[i]) / third;
            widen[i] = (b.widths[i] - a.widths[i]) / third;
        }
        double hair = tolerance.hair();
        double[] offsets = offsets(from, to, from + third, a.lengths, grow);
        Sample at = new Sample(new double[grow.length], new double[grow.length]);
        for (double offset : offsets) {
            if (offset > from + hair && offset < to - hair) {
                for (int i = 0; i < grow.length; i++) {
                    at.lengths[i] = a.lengths[i] + (offset - from - third) * grow[i];
                    at.widths[i] = a.widths[i] + (offset - from - third) * widen[i];
                }
                weigh(offset, at);
            }
        }
    }

    private double[] offsets(double from, double to, double at, double[] lengths, double[] grow) {
        double increment = spec.orderIncrement().metres();
        List<Double> offsets = new ArrayList<>();
        offsets.add((from + to) / 2);
        for (int i = 0; i < lengths.length; i++) {
            double start = lengths[i] + (from - at) * grow[i];
            double end = lengths[i] + (to - at) * grow[i];
            if (tolerance.same(start, end)) {
                continue;
            }
            double least = Math.min(start, end);
            double most = Math.max(start, end);
            for (int pieces = laps.pieces(least); pieces <= laps.pieces(most); pieces++) {
                double overlapped = (pieces - 1) * spec.endLap().metres();
                double longest =
                        pieces == 1 ? spec.longest().metres() : spec.endLap().metres() + pieces * spec.usable();
                offsets.add(at + (longest - lengths[i]) / grow[i]);
                double steps = increment > 0 ? (most - least) / increment : Double.POSITIVE_INFINITY;
                if (steps <= MOST_STEPS) {
                    for (long k = tolerance.ceil(least + overlapped, increment);
                            k * increment <= most + overlapped;
                            k++) {
                        offsets.add(at + (k * increment - overlapped - lengths[i]) / grow[i]);
                    }
                }
            }
        }
        return offsets.stream()
                .mapToDouble(Double::doubleValue)
                .sorted()
                .distinct()
                .toArray();
    }

    private void weigh(double offset, Sample sample) {
        double ordered = 0;
        boolean sliver = false;
        double[] lengths = new double[sample.lengths.length];
        for (int i = 0; i < lengths.length; i++) {
            lengths[i] = laps.ordered(sample.lengths[i]);
            ordered += lengths[i];
            sliver |= sample.widths[i] < spec.narrowestRip().metres() - tolerance.hair();
        }
        Choice choice = new Choice(offset, sliver, ordered, 0);
        if (sliver == best.sliver && ordered > best.ordered + tolerance.hair() || sliver && !best.sliver) {
            return;
        }
        choice = new Choice(offset, sliver, ordered, different(lengths));
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
}
