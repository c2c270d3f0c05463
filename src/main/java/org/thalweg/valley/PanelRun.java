package org.thalweg.valley;

import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Ring;
import org.thalweg.geometry.Tolerance;
import org.thalweg.roof.Plane;
import org.thalweg.units.Length;

/**
 * The longest panel that can end at an edge: the longest fall line from it up to where the plane ends or is broken by an
 * opening. Between two neighbouring corners, seen along the slope, that length changes evenly, so the longest lies over a
 * corner or an end of the edge.
 */
final class PanelRun {

    private final Plane plane;
    private final Point2 foot;
    private final Point2 head;
    private final double slope;
    private final double hair;

    private PanelRun(Plane plane, Point2 foot, Point2 head, double hair) {
        this.plane = plane;
        this.foot = foot;
        this.head = head;
        this.slope = (head.up() - foot.up()) / (head.across() - foot.across());
        this.hair = hair;
    }

    /** Nothing long where no panel ends at the edge: it runs along the ribs, or the plane falls away from it. */
    static Length longest(Plane plane, Point2 foot, Point2 head, boolean onLeft, Tolerance tolerance) {
        double least = Math.min(foot.across(), head.across());
        double most = Math.max(foot.across(), head.across());
        // Rings have their metal to the left. The left plane's climbs the edge, the right one's comes down it, so metal
        // lies
        // above the edge where the ring runs to the right.
        boolean metalAbove = onLeft == head.across() > foot.across();
        if (!metalAbove || most - least <= tolerance.hair()) {
            return Length.ZERO;
        }
        return Length.metres(new PanelRun(plane, foot, head, tolerance.hair()).longest(least, most));
    }

    private double longest(double least, double most) {
        double longest = Math.max(longestAt(least, least, most), longestAt(most, least, most));
        for (int i = 0; i < plane.shape().outer().size(); i++) {
            longest = Math.max(longest, longestAt(plane.shape().outer().across(i), least, most));
        }
        for (Ring opening : plane.shape().openings()) {
            for (int i = 0; i < opening.size(); i++) {
                longest = Math.max(longest, longestAt(opening.across(i), least, most));
            }
        }
        return longest;
    }

    /** Just left and just right of a place, where the fall line may meet different sides. */
    private double longestAt(double across, double least, double most) {
        if (across < least - hair || across > most + hair) {
            return 0;
        }
        double left = across - least <= 2 * hair ? 0 : run(across, -1);
        double right = most - across <= 2 * hair ? 0 : run(across, 1);
        return Math.max(left, right);
    }

    private double run(double across, int beside) {
        double from = foot.up() + (across - foot.across()) * slope;
        double first = first(plane.shape().outer(), across, beside, from, Double.POSITIVE_INFINITY);
        for (Ring opening : plane.shape().openings()) {
            first = first(opening, across, beside, from, first);
        }
        return first == Double.POSITIVE_INFINITY ? 0 : first - from;
    }

    /** The lowest place above {@code from} where a side that runs over both {@code across} and a bit beside it is met. */
    private double first(Ring ring, double across, int beside, double from, double lowest) {
        double first = lowest;
        for (int i = 0; i < ring.size(); i++) {
            int j = ring.next(i);
            double near = across + beside * 2 * hair;
            if (ring.across(i) < near != ring.across(j) < near && !own(ring.corner(i), ring.corner(j))) {
                double up = ring.up(i)
                        + (across - ring.across(i)) * (ring.up(j) - ring.up(i)) / (ring.across(j) - ring.across(i));
                double upNear = ring.up(i)
                        + (near - ring.across(i)) * (ring.up(j) - ring.up(i)) / (ring.across(j) - ring.across(i));
                double low = from + (near - across) * slope;
                if (upNear > low) {
                    first = Math.min(first, up);
                }
            }
        }
        return first;
    }

    /** Whether a side is the edge itself. No distance tells: at a sharp corner the next side is as near as one likes. */
    private boolean own(Point2 a, Point2 b) {
        return (a.equals(foot) && b.equals(head)) || (a.equals(head) && b.equals(foot));
    }
}
