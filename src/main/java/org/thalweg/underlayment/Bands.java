package org.thalweg.underlayment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.thalweg.geometry.Region;
import org.thalweg.geometry.Ring;
import org.thalweg.geometry.Side;
import org.thalweg.geometry.StripCutter;
import org.thalweg.geometry.Tolerance;

/**
 * How far a shape runs within each of many courses. Courses lap, so they are cut in passes of courses that do not.
 *
 * <p>Shapes are handed over turned: what the courses run along is {@code up}, what they follow each other in {@code across}.
 */
final class Bands {

    /** One connected part of a shape within a course, from end to end along it. Metres. */
    record Stretch(double from, double to) {}

    private final Region turned;
    private final double exposure;
    private final double width;
    private final Tolerance tolerance;
    private final List<List<Stretch>> bands = new ArrayList<>();

    private Bands(Region turned, Roll roll, int courses, Tolerance tolerance) {
        this.turned = turned;
        this.exposure = roll.exposure();
        this.width = roll.width().metres();
        this.tolerance = tolerance;
        for (int i = 0; i < courses; i++) {
            bands.add(new ArrayList<>(1));
        }
    }

    /**
     * The stretches of each course, from the least place along it; those that overlap are one.
     *
     * @param turned  the shape; the first course starts at 0 across
     * @param courses how many; 1 or more
     */
    static List<List<Stretch>> of(Region turned, Roll roll, int courses, Tolerance tolerance) {
        Bands all = new Bands(turned, roll, courses, tolerance);
        int passes = (int) Math.max(1, tolerance.ceil(all.width, all.exposure));
        for (int first = 0; first < Math.min(passes, courses); first++) {
            all.cut(first, passes);
        }
        return all.bands.stream().map(all::joined).toList();
    }

    /** Every so-manieth course, from the {@code first} on: no two of them lie over each other. */
    private void cut(int first, int every) {
        int count = (bands.size() - 1 - first) / every + 1;
        List<Double> lines = new ArrayList<>(2 * count + 2);
        int[] courseOf = new int[2 * count + 2];
        // Half a period below, so that lines are about as far apart as the first two: that is how strips are guessed.
        lines.add(Math.min(turned.outer().leastAcross(), first * exposure) - every * exposure / 2);
        for (int course = first; course < bands.size(); course += every) {
            double from = course * exposure;
            if (from - lines.get(lines.size() - 1) <= tolerance.hair()) {
                lines.remove(lines.size() - 1);
            }
            courseOf[lines.size()] = course + 1;
            lines.add(from);
            lines.add(from + width);
        }
        lines.add(Math.max(turned.outer().mostAcross(), lines.get(lines.size() - 1)) + 1);
        double[] places = lines.stream().mapToDouble(Double::doubleValue).toArray();
        for (StripCutter.Piece piece : StripCutter.cut(turned, places, Side.LAP, tolerance)) {
            if (courseOf[piece.strip()] > 0) {
                Ring ring = piece.shape().outer();
                bands.get(courseOf[piece.strip()] - 1).add(new Stretch(ring.leastUp(), ring.mostUp()));
            }
        }
    }

    private List<Stretch> joined(List<Stretch> found) {
        found.sort(Comparator.comparingDouble(Stretch::from));
        List<Stretch> joined = new ArrayList<>(found.size());
        for (Stretch next : found) {
            if (next.to - next.from <= tolerance.hair()) {
                continue;
            }
            Stretch last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
            if (last != null && next.from <= last.to + tolerance.metres()) {
                joined.set(joined.size() - 1, new Stretch(last.from, Math.max(last.to, next.to)));
            } else {
                joined.add(next);
            }
        }
        return joined;
    }
}
