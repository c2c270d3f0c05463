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
     * A corner of the roof.
     *
     * @param x      metres
     * @param y      metres
     * @param height metres, at the level eaves are measured from
     */
    public record Corner(double x, double y, double height) {}

    /**
     * A slope: one plane of the roof.
     *
     * @param sides   the sides it rises from, one or, where sides in one line have one pitch, several
     * @param part    which of the slopes over its sides it is
     * @param pitch   how steep it is
     * @param corners its ring, counter-clockwise seen from above: numbers of corners
     * @param bounds  what the lines of its ring are, each from the corner of the same place to the next
     */
    public record Slope(List<Integer> sides, Part part, Pitch pitch, List<Integer> corners, List<Bound> bounds) {

        public Slope {
            sides = List.copyOf(sides);
            corners = List.copyOf(corners);
            bounds = List.copyOf(bounds);
        }
    }

    /** Where a slope lies over its side. */
    public sealed interface Part permits Rises, CrossGable {}

    /** Rises from the eave (0), or from a change of the side further up: 1 for the first one. */
    public record Rises(int changes) implements Part {}

    /** One of the two slopes of a cross gable that ends at the side: at its first corner, or at its last. */
    public record CrossGable(boolean atStart) implements Part {}

    /**
     * What a line round a slope is.
     *
     * @param kind what stands or hangs there
     * @param side the side whose wall is there; -1 for a seam
     */
    public record Bound(BoundKind kind, int side) {}

    /** What a line round a slope is. */
    public enum BoundKind {
        /** Another slope is on its other side. */
        SEAM,
        /** The slope begins here. */
        EAVE,
        /** It runs along the wall of a gable, which ends under it: up the gable, or level at the top of a shed. */
        GABLE,
        /** The slope ends here and a gable goes up from it. */
        GABLE_FOOT
    }

    /**
     * A line where two slopes meet.
     *
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
     * How it was found.
     *
     * @param meetings how many places where eaves met
     * @param exact    how many signs had to be decided in whole numbers because doubles could not tell
     */
    public record Ways(int meetings, long exact) {}
}
