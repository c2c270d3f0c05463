package org.thalweg.fastening;

import java.util.ArrayList;
import java.util.List;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Tolerance;
import org.thalweg.units.Length;

/**
 * Fasteners along a straight line, evenly spaced: the fewest that keep neighbours at or under the greatest spacing, with one
 * at the edge distance from each end. A line too short for two has one in its middle.
 *
 * @param count   how many; 1 or more
 * @param first   from the line's start to the first one
 * @param spacing between neighbours; 0 when there is only one
 */
public record EvenRow(int count, Length first, Length spacing) {

    /**
     * The row along one line.
     *
     * @param line         along the real line
     * @param maxSpacing   above 0
     * @param edgeDistance from each end of the line; 0 or more
     */
    public static EvenRow along(Length line, Length maxSpacing, Length edgeDistance, Tolerance tolerance) {
        double free = line.metres() - 2 * edgeDistance.metres();
        if (free <= tolerance.metres()) {
            return middle(line);
        }
        long intervals = tolerance.ceil(free, maxSpacing.metres());
        return new EvenRow((int) intervals + 1, edgeDistance, Length.metres(free / intervals));
    }

    /**
     * The row between two places that may have a fastener themselves: the first stands at the one, the last at the other. One
     * in the middle where two would stand nearer than {@code nearest}.
     *
     * @param free       from the one place to the other; 0 or more
     * @param maxSpacing above 0
     * @param nearest    0 or more
     */
    static EvenRow between(Length free, Length maxSpacing, Length nearest, Tolerance tolerance) {
        double least = Math.min(nearest.metres(), maxSpacing.metres());
        return free.metres() < least - tolerance.hair()
                ? middle(free)
                : along(free, maxSpacing, Length.ZERO, tolerance);
    }

    /** One in the middle. */
    static EvenRow middle(Length line) {
        return new EvenRow(1, Length.metres(line.metres() / 2), Length.ZERO);
    }

    /** Where they stand on the line the row was made for. */
    List<Point2> places(Point2 from, Point2 to) {
        double length = from.distance(to);
        List<Point2> places = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            double share = length > 0 ? (first.metres() + i * spacing.metres()) / length : 0;
            places.add(new Point2(
                    from.across() + share * (to.across() - from.across()), from.up() + share * (to.up() - from.up())));
        }
        return places;
    }
}
