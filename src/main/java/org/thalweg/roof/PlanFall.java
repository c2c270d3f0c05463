package org.thalweg.roof;

import java.util.List;
import java.util.Optional;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;
import org.thalweg.geometry.Point3;
import org.thalweg.units.Count;

/**
 * The direction in plan in which water runs on a plane, one long; nothing (0, 0) on a level plane that was given none.
 *
 * @param x to the right
 * @param y up the page
 */
record PlanFall(double x, double y) {

    /** Rounding noise of a sine. */
    private static final double NOISE = 1e-15;

    private static final PlanFall NONE = new PlanFall(0, 0);

    /** Reads the fall of a plane; notes what is wrong with it and then answers {@link #NONE}. */
    static PlanFall of(PlanPlane plane, double reach, List<Refusal> refusals) {
        if (plane.fall() instanceof PlanPlane.Toward toward) {
            return new PlanFall(
                    whole(toward.direction().cos()), whole(toward.direction().sin()));
        }
        if (plane.fall() instanceof PlanPlane.ToEave eave) {
            Optional<Refusal> wrong = wrong(plane.drawn(), eave, reach);
            wrong.ifPresent(refusals::add);
            return wrong.isPresent() ? NONE : overSide(plane.drawn().outline(), eave, reach);
        }
        return NONE;
    }

    /** So that a fall along an axis is along it to the last digit. */
    private static double whole(double value) {
        return Math.abs(value) < NOISE ? 0 : value;
    }

    private static Optional<Refusal> wrong(PlaneOutline plane, PlanPlane.ToEave eave, double reach) {
        List<Point3> ring = plane.outline();
        int greater = Math.max(eave.corner(), eave.other());
        if (greater >= ring.size()) {
            return Optional.of(Refusal.of(
                    RefusalCode.NO_SUCH_CORNER,
                    plane.at().at("eave").at(eave.corner() == greater ? 0 : 1),
                    "Corner {actual} is not in the outline; the last one is {limit}. Corners are counted from 0.",
                    new Count(greater),
                    new Count(ring.size() - 1L)));
        }
        int size = corners(ring, reach);
        int from = eave.corner() % size;
        int to = eave.other() % size;
        boolean neighbours = (from + 1) % size == to || (to + 1) % size == from;
        return neighbours && length(ring.get(from), ring.get(to)) > reach
                ? Optional.empty()
                : Optional.of(Refusal.of(
                        RefusalCode.NOT_A_SIDE,
                        plane.at().at("eave"),
                        "No side of the outline runs between these two corners. Name two neighbouring corners, counted from 0,"
                                + " the side's two ends."));
    }

    private static PlanFall overSide(List<Point3> ring, PlanPlane.ToEave eave, double reach) {
        int size = corners(ring, reach);
        int from = eave.corner() % size;
        int to = eave.other() % size;
        boolean inOrder = (from + 1) % size == to;
        Point3 start = ring.get(inOrder ? from : to);
        Point3 end = ring.get(inOrder ? to : from);
        double length = length(start, end);
        // The metal of a ring that runs counter-clockwise is to the left of its sides, and water runs to the right.
        double right = twiceTheArea(ring) >= 0 ? 1 / length : -1 / length;
        return new PlanFall((end.y() - start.y()) * right + 0.0, (start.x() - end.x()) * right + 0.0);
    }

    /** How many corners a ring has, its first one not counted again where it is repeated at the end. */
    private static int corners(List<Point3> ring, double reach) {
        int size = ring.size();
        while (size > 1 && length(ring.get(size - 1), ring.get(0)) <= reach) {
            size--;
        }
        return size;
    }

    private static double length(Point3 from, Point3 to) {
        return Math.hypot(to.x() - from.x(), to.y() - from.y());
    }

    private static double twiceTheArea(List<Point3> ring) {
        Point3 origin = ring.get(0);
        double sum = 0;
        for (int i = 1; i + 1 < ring.size(); i++) {
            Point3 p = ring.get(i);
            Point3 q = ring.get(i + 1);
            sum += (p.x() - origin.x()) * (q.y() - origin.y()) - (q.x() - origin.x()) * (p.y() - origin.y());
        }
        return sum;
    }

    /** How far along the fall a step leads; metres. */
    double along(double stepX, double stepY) {
        return x * stepX + y * stepY;
    }
}
