package org.thalweg.footprint;

import java.util.List;
import org.thalweg.units.Pitch;

/**
 * The roof over a plan of walls.
 *
 * @param corners every corner of the roof
 * @param slopes  in the order of their first sides
 * @param seams   where two slopes meet, in the order of the slopes
 * @param ways    how it was found
 */
public record RoofOver(List<Corner> corners, List<Slope> slopes, List<Seam> seams, Ways ways) implements Rise {

    public RoofOver {
        corners = List.copyOf(corners);
        slopes = List.copyOf(slopes);
        seams = List.copyOf(seams);
    }

    /**
     * @param x      metres
     * @param y      metres
     * @param height above the eave, metres
     */
    public record Corner(double x, double y, double height) {}

    /**
     * @param sides   the sides it rises from, one or, where sides in one line have one pitch, several
     * @param pitch   how steep it is
     * @param corners its ring, counter-clockwise seen from above: numbers of corners
     */
    public record Slope(List<Integer> sides, Pitch pitch, List<Integer> corners) {

        public Slope {
            sides = List.copyOf(sides);
            corners = List.copyOf(corners);
        }
    }

    /**
     * @param kind  what a crew calls it
     * @param left  number of the slope to its left
     * @param right number of the slope to its right
     * @param from  number of a corner
     * @param to    number of a corner
     */
    public record Seam(SeamKind kind, int left, int right, int from, int to) {}

    /** What a crew calls the line where two slopes meet. */
    public enum SeamKind {
        /** Level; both slopes fall away from it. */
        RIDGE,
        /** Both slopes fall away from it, and it falls too. */
        HIP,
        /** Both slopes fall towards it. */
        VALLEY,
        /** Level; one slope ends and a flatter one goes on. */
        PITCH_BREAK
    }

    /**
     * @param meetings how many places where eaves met
     * @param exact    how many signs had to be decided in whole numbers because doubles could not tell
     */
    public record Ways(int meetings, long exact) {}
}
