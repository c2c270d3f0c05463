package org.thalweg.valley;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Vector3;
import org.thalweg.roof.Edge;
import org.thalweg.roof.Roof;

/**
 * A corner of a flat, bent back onto its roof plane.
 *
 * @param out   from the low, metres
 * @param up    the low, from the foot of the valley, metres
 * @param world where it comes to lie
 */
record Bent(double out, double up, Point3 world) {

    /** Rounding. */
    static final double NOTHING = 1e-9;

    /** The corners of all flats of a valley on one side. */
    static List<Bent> flats(Roof roof, ValleyLayout laid, SlopedEdge.Side side) {
        double leg = laid.spec().ribLeg().metres();
        double flat = laid.spec().flat().metres();
        List<Bent> bent = new ArrayList<>();
        for (PanPiece piece : laid.pieces()) {
            for (Point2 corner : corners(piece.blank())) {
                double out = (side.onLeft() ? -corner.across() : corner.across()) - leg;
                double up = corner.up() + piece.from().metres();
                if (out >= -NOTHING && out <= flat + NOTHING) {
                    Point2 onPlane = side.at(out, up);
                    bent.add(new Bent(
                            out, up, roof.planes().get(side.plane()).frame().inWorld(onPlane)));
                }
            }
        }
        return bent;
    }

    /** Of the outline and of the folds of the returns: a square end has no corner of the outline there. */
    private static List<Point2> corners(PanBlank blank) {
        List<Point2> corners = new ArrayList<>(blank.outline());
        for (PanBlank.Fold fold : blank.folds()) {
            if (fold.kind() == PanBlank.FoldKind.RETURN) {
                corners.add(fold.from());
                corners.add(fold.to());
            }
        }
        return corners;
    }

    static Bent outermostLowest(List<Bent> bent) {
        return outermost(bent).stream()
                .min(Comparator.comparingDouble(Bent::up))
                .orElseThrow();
    }

    static Bent outermostHighest(List<Bent> bent) {
        return outermost(bent).stream()
                .max(Comparator.comparingDouble(Bent::up))
                .orElseThrow();
    }

    private static List<Bent> outermost(List<Bent> bent) {
        double furthest = bent.stream().mapToDouble(Bent::out).max().orElseThrow();
        return bent.stream().filter(b -> b.out() > furthest - NOTHING).toList();
    }

    /** How far it lies from the line an edge runs on. */
    double from(Edge edge) {
        return fromLine(world, edge.from(), edge.to());
    }

    static double fromLine(Point3 place, Point3 from, Point3 to) {
        Vector3 along = to.minus(from).unit();
        return place.minus(from).cross(along).length();
    }
}
