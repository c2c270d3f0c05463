package org.thalweg.valley;

import java.util.List;
import org.thalweg.geometry.Point2;
import org.thalweg.units.Angle;

/**
 * One piece of the pan, lying flat before it is bent.
 *
 * @param outline counter-clockwise from its lowest corner on the left; blank frame: across from the middle, along from the
 *                piece's lowest point; metres
 * @param folds   every bend, from left to right
 * @param slits   cuts that part the legs of the rib, so that they fold over its open ends
 */
public record PanBlank(List<Point2> outline, List<Fold> folds, List<Slit> slits) {

    public PanBlank {
        outline = List.copyOf(outline);
        folds = List.copyOf(folds);
        slits = List.copyOf(slits);
    }

    /** What a fold makes. */
    public enum FoldKind {
        /** The top of the rib. */
        CROWN,
        /** The foot of a leg of the rib: the low. */
        LOW,
        /** The return along an outer edge. */
        RETURN,
        /** The upstand against a wall. */
        WALL
    }

    /**
     * One bend.
     *
     * @param kind  what it makes
     * @param from  its lower end; blank frame, metres
     * @param to    its upper end
     * @param angle how far the metal is turned from flat
     * @param up    whether the outer part comes up, seen from above the roof; the crown goes down
     */
    public record Fold(FoldKind kind, Point2 from, Point2 to, Angle angle, boolean up) {}

    /**
     * One cut along the crown.
     *
     * @param from its lower end; blank frame, metres
     * @param to   its upper end
     */
    public record Slit(Point2 from, Point2 to) {}
}
