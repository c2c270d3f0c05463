package org.thalweg.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Cuts a shape into strips along parallel lines that run up the slope, as panels do between their ribs.
 *
 * <pre>
 *        |  ____ |            Walk every ring once. Where a side crosses a line, note the crossing: the
 *        |_/    \|__          run of corners so far ends in one strip, the next begins in its neighbour.
 *       /|       |  \         On each line the crossings, sorted upward, bound the metal in pairs, so each
 *      /_|_______|___\        run that ends on a line goes on at the other crossing of its pair.
 *   strip 0  1       2
 * </pre>
 *
 * <p>A corner on a line counts as lying right of it. Corners within a hair of a line are put on it first, so a plane
 * that is a whole number of covers wide has no panel a nanometre wide. Neighbours share the very same crossing, bit for
 * bit. The pieces are disjoint and together are the shape, but for that hair.
 */
public final class StripCutter {

    /**
     * What is left of a shape between two neighbouring lines.
     *
     * @param strip 0 is the strip right of the first line
     * @param shape one piece; sides on a line have the line's tag unless a side of the shape itself lies there
     */
    public record Piece(int strip, Region shape) {}

    private final double[] lines;
    private final int lineTag;
    private final double hair;

    // Runs: corners of the shape in order, all in one strip. Run r holds corners runStart[r] .. runStart[r + 1].
    private double[] across;
    private double[] up;
    private int[] tag;
    private int corners;
    private int[] runStart;
    private int[] runStrip;
    private int[] runEndsAt;
    private boolean[] taken;
    private int runs;

    // Crossings of sides with lines.
    private int[] crossingLine;
    private double[] crossingUp;
    private double[] crossingSlope;
    private boolean[] rightward;
    private int[] runStartingAt;
    private int[] partner = new int[0];
    private int crossings;

    private final RingBuilder linked = new RingBuilder();

    // Sides that lie on a line with the metal to their left; a strip's right end then is a roof edge, not a rib.
    private final List<LineSide> lineSides = new ArrayList<>(2);

    private record LineSide(int line, double lower, double upper, int tag) {}

    private StripCutter(double[] lines, int lineTag, Tolerance tolerance) {
        this.lines = lines;
        this.lineTag = lineTag;
        this.hair = tolerance.hair();
        // Room for a convex shape, whose sides cross each line twice; others make it grow.
        int twice = 2 * lines.length + 2;
        across = new double[3 * twice];
        up = new double[3 * twice];
        tag = new int[3 * twice];
        runStart = new int[twice + 2];
        runStrip = new int[twice + 2];
        runEndsAt = new int[twice + 2];
        taken = new boolean[twice + 2];
        crossingLine = new int[twice];
        crossingUp = new double[twice];
        crossingSlope = new double[twice];
        rightward = new boolean[twice];
        runStartingAt = new int[twice];
    }

    /**
     * Cuts {@code shape} along {@code lines}.
     *
     * @param shape     lies between the first and the last line
     * @param lines     across, strictly ascending, at least two, metres
     * @param lineTag   what sides made on a line are tagged
     * @param tolerance how close a corner must be to a line to be put on it
     * @return pieces by strip, then from the lowest up, then from the left
     */
    public static List<Piece> cut(Region shape, double[] lines, int lineTag, Tolerance tolerance) {
        return new StripCutter(lines, lineTag, tolerance).cut(shape);
    }

    private List<Piece> cut(Region shape) {
        List<Piece> pieces = new ArrayList<>();
        List<Piece> openings = new ArrayList<>(0);
        walk(shape.outer(), pieces, openings);
        for (Ring opening : shape.openings()) {
            walk(opening, pieces, openings);
        }
        pairCrossings();
        linkRuns(pieces);
        openLeftLines(pieces, openings);
        pieces.sort(StripCutter::inOrder);
        return openings.isEmpty() ? pieces : withOpenings(pieces, openings);
    }

    /** Where a side of the shape lies on the left line of a strip, with the metal left of it, the strip's own metal ends there. */
    private void openLeftLines(List<Piece> pieces, List<Piece> openings) {
        lineSides.stream().mapToInt(LineSide::line).distinct().sorted().forEach(strip -> {
            List<Ring> rings = new ArrayList<>();
            taken(strip, pieces, rings);
            if (rings.isEmpty()) {
                return;
            }
            taken(strip, openings, rings);
            for (Ring ring : LeftLineSplicer.splice(lines[strip], rings)) {
                (ring.signedArea() > 0 ? pieces : openings).add(new Piece(strip, new Region(ring, List.of())));
            }
        });
    }

    private static void taken(int strip, List<Piece> from, List<Ring> rings) {
        from.removeIf(piece -> piece.strip == strip && rings.add(piece.shape.outer()));
    }

    private static int inOrder(Piece a, Piece b) {
        if (a.strip != b.strip) {
            return Integer.compare(a.strip, b.strip);
        }
        Ring ringA = a.shape.outer();
        Ring ringB = b.shape.outer();
        int byUp = Double.compare(ringA.leastUp(), ringB.leastUp());
        return byUp != 0 ? byUp : Double.compare(ringA.leastAcross(), ringB.leastAcross());
    }

    /** Notes the runs and crossings of one ring; a ring that crosses no line is a piece, or an opening of one, whole. */
    private void walk(Ring ring, List<Piece> pieces, List<Piece> openings) {
        int n = ring.size();
        double[] x = new double[n];
        int[] strip = new int[n];
        for (int i = 0; i < n; i++) {
            strip[i] = strip(ring.across(i));
            x[i] = onLine(ring.across(i), strip[i]);
            if (strip[i] + 1 < lines.length && x[i] == lines[strip[i] + 1]) {
                strip[i]++;
            }
        }
        int first = 0;
        while (first < n && strip[first] == strip[ring.next(first)]) {
            first++;
        }
        if (first == n) {
            if (strip[0] < lines.length - 1) {
                double area = ring.signedArea();
                Region region = new Region(ring.across(x), List.of());
                (area > 0 ? pieces : openings).add(new Piece(strip[0], region));
                for (int i = 0; i < n; i++) {
                    noteLineSide(ring, x, i, ring.next(i));
                }
            }
            return;
        }
        int firstCrossing = crossings;
        for (int step = 0; step < n; step++) {
            int i = first + step < n ? first + step : first + step - n;
            int j = ring.next(i);
            if (step > 0) {
                corner(x[i], ring.up(i), ring.tag(i));
            }
            noteLineSide(ring, x, i, j);
            int stepBy = Integer.signum(strip[j] - strip[i]);
            for (int s = strip[i]; s != strip[j]; s += stepBy) {
                int line = stepBy > 0 ? s + 1 : s;
                int crossing = crossing(ring, x, i, j, line, stepBy > 0);
                if (crossing > firstCrossing) {
                    corner(lines[line], crossingUp[crossing], lineTag);
                    endRun(s, crossing);
                }
                runStartingAt[crossing] = runs;
                corner(lines[line], crossingUp[crossing], ring.tag(i));
            }
        }
        // The walk began in the middle of a side that crosses lines; the last run ends at that side's first crossing.
        corner(x[first], ring.up(first), ring.tag(first));
        corner(lines[crossingLine[firstCrossing]], crossingUp[firstCrossing], lineTag);
        endRun(strip[first], firstCrossing);
    }

    private int strip(double position) {
        int last = lines.length - 1;
        int guess = (int) ((position - lines[0]) / (lines[1] - lines[0]));
        guess = Math.max(0, Math.min(last, guess));
        while (guess > 0 && lines[guess] > position) {
            guess--;
        }
        while (guess < last && lines[guess + 1] <= position) {
            guess++;
        }
        return guess;
    }

    private double onLine(double position, int strip) {
        if (Math.abs(position - lines[strip]) <= hair) {
            return lines[strip];
        }
        return strip + 1 < lines.length && Math.abs(position - lines[strip + 1]) <= hair ? lines[strip + 1] : position;
    }

    private void noteLineSide(Ring ring, double[] x, int i, int j) {
        if (x[i] == x[j] && ring.up(j) > ring.up(i)) {
            int line = strip(x[i]);
            if (lines[line] == x[i]) {
                lineSides.add(new LineSide(line, ring.up(i), ring.up(j), ring.tag(i)));
            }
        }
    }

    private void corner(double a, double u, int t) {
        if (corners > (runs == 0 ? 0 : runStart[runs]) && across[corners - 1] == a && up[corners - 1] == u) {
            tag[corners - 1] = t;
            return;
        }
        if (corners == across.length) {
            across = Arrays.copyOf(across, corners * 2);
            up = Arrays.copyOf(up, corners * 2);
            tag = Arrays.copyOf(tag, corners * 2);
        }
        across[corners] = a;
        up[corners] = u;
        tag[corners++] = t;
    }

    private void endRun(int strip, int crossing) {
        if (runs + 2 > runStart.length) {
            runStart = Arrays.copyOf(runStart, runs * 2 + 2);
            runStrip = Arrays.copyOf(runStrip, runs * 2 + 2);
            runEndsAt = Arrays.copyOf(runEndsAt, runs * 2 + 2);
            taken = Arrays.copyOf(taken, runs * 2 + 2);
        }
        runStrip[runs] = strip;
        runEndsAt[runs] = crossing;
        runs++;
        runStart[runs] = corners;
    }

    private int crossing(Ring ring, double[] x, int i, int j, int line, boolean toTheRight) {
        if (crossings == crossingLine.length) {
            crossingLine = Arrays.copyOf(crossingLine, crossings * 2);
            crossingUp = Arrays.copyOf(crossingUp, crossings * 2);
            crossingSlope = Arrays.copyOf(crossingSlope, crossings * 2);
            rightward = Arrays.copyOf(rightward, crossings * 2);
            runStartingAt = Arrays.copyOf(runStartingAt, crossings * 2);
        }
        // Always from the left corner to the right one, so that both ways along a side give the same figure.
        int left = toTheRight ? i : j;
        int right = toTheRight ? j : i;
        double slope = (ring.up(right) - ring.up(left)) / (x[right] - x[left]);
        crossingLine[crossings] = line;
        crossingSlope[crossings] = slope;
        crossingUp[crossings] =
                x[right] == lines[line] ? ring.up(right) : ring.up(left) + (lines[line] - x[left]) * slope;
        rightward[crossings] = toTheRight;
        return crossings++;
    }

    /** Sorts the crossings of each line upward, just left of the line, and joins them in pairs. */
    private void pairCrossings() {
        int[] start = new int[lines.length + 1];
        for (int c = 0; c < crossings; c++) {
            start[crossingLine[c] + 1]++;
        }
        for (int line = 0; line < lines.length; line++) {
            start[line + 1] += start[line];
        }
        int[] fill = start.clone();
        int[] order = new int[crossings];
        for (int c = 0; c < crossings; c++) {
            order[fill[crossingLine[c]]++] = c;
        }
        partner = new int[crossings];
        for (int line = 0; line < lines.length; line++) {
            sort(order, start[line], start[line + 1]);
            for (int k = start[line]; k + 1 < start[line + 1]; k += 2) {
                alternate(order, k, start[line + 1]);
                partner[order[k]] = order[k + 1];
                partner[order[k + 1]] = order[k];
            }
        }
    }

    /** Shell sort: the lists are short, and it needs no memory. */
    private void sort(int[] order, int from, int to) {
        for (int gap = 1 + (to - from) / 3; gap > 0; gap = gap == 1 ? 0 : 1 + gap / 3) {
            for (int k = from + gap; k < to; k++) {
                int moving = order[k];
                int at = k;
                while (at - gap >= from && below(moving, order[at - gap])) {
                    order[at] = order[at - gap];
                    at -= gap;
                }
                order[at] = moving;
            }
        }
    }

    private boolean below(int a, int b) {
        return crossingUp[a] < crossingUp[b] || (crossingUp[a] == crossingUp[b] && crossingSlope[a] > crossingSlope[b]);
    }

    /**
     * Going up a line, metal begins at a side that runs right and ends at one that runs left. Sides that touch may stand
     * the wrong way round by rounding; the nearest fitting crossing above takes the place.
     */
    private void alternate(int[] order, int k, int end) {
        for (int want = 0; want < 2; want++) {
            int at = k + want;
            int found = at;
            while (found < end && rightward[order[found]] != (want == 0)) {
                found++;
            }
            if (found == end) {
                throw new IllegalArgumentException("the shape is not closed on line " + lines[crossingLine[order[at]]]);
            }
            for (int m = found; m > at; m--) {
                int swap = order[m];
                order[m] = order[m - 1];
                order[m - 1] = swap;
            }
        }
    }

    private void linkRuns(List<Piece> pieces) {
        for (int run = 0; run < runs; run++) {
            if (!taken[run] && runStrip[run] < lines.length - 1) {
                Ring ring = link(run);
                if (ring.size() > 2 && ring.mostAcross() > ring.leastAcross()) {
                    pieces.add(new Piece(runStrip[run], new Region(ring, List.of())));
                }
            }
        }
    }

    private Ring link(int firstRun) {
        RingBuilder ring = linked.empty();
        int run = firstRun;
        do {
            taken[run] = true;
            for (int c = runStart[run]; c < runStart[run + 1]; c++) {
                ring.add(across[c], up[c], tag[c]);
            }
            int end = runEndsAt[run];
            if (rightward[end] && !lineSides.isEmpty()) {
                alongLine(ring, end);
            }
            run = runStartingAt[partner[end]];
        } while (run != firstRun);
        if (!lineSides.isEmpty()) {
            ring.dropSpikes();
        }
        return ring.closed();
    }

    /** The right end of a strip lies on the line from this crossing up to its partner: part of it may be a roof edge. */
    private void alongLine(RingBuilder ring, int crossing) {
        double top = crossingUp[partner[crossing]];
        double x = lines[crossingLine[crossing]];
        double at = crossingUp[crossing];
        while (at < top) {
            LineSide next = null;
            for (LineSide side : lineSides) {
                if (side.line == crossingLine[crossing]
                        && side.upper > at
                        && side.lower < top
                        && (next == null || side.lower < next.lower)) {
                    next = side;
                }
            }
            if (next == null) {
                return;
            }
            if (next.lower > at) {
                ring.add(x, next.lower, next.tag);
            } else {
                ring.retag(next.tag);
            }
            at = Math.min(next.upper, top);
            if (at < top) {
                ring.add(x, at, lineTag);
            }
        }
    }

    private static List<Piece> withOpenings(List<Piece> pieces, List<Piece> openings) {
        List<Piece> whole = new ArrayList<>(pieces.size());
        for (Piece piece : pieces) {
            List<Ring> inside = new ArrayList<>();
            for (Piece opening : openings) {
                Ring rim = opening.shape.outer();
                if (opening.strip == piece.strip && piece.shape.outer().encloses(rim)) {
                    inside.add(rim);
                }
            }
            whole.add(inside.isEmpty() ? piece : new Piece(piece.strip, new Region(piece.shape.outer(), inside)));
        }
        return whole;
    }
}
