package org.thalweg.fastening;

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
            return new EvenRow(1, Length.metres(line.metres() / 2), Length.ZERO);
        }
        long intervals = tolerance.ceil(free, maxSpacing.metres());
        return new EvenRow((int) intervals + 1, edgeDistance, Length.metres(free / intervals));
    }
}
