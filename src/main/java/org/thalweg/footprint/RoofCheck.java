package org.thalweg.footprint;

import java.util.List;
import org.thalweg.footprint.NoRoof.Reason;
import org.thalweg.footprint.RoofOver.Corner;
import org.thalweg.footprint.RoofOver.Seam;
import org.thalweg.footprint.RoofOver.SeamKind;
import org.thalweg.footprint.RoofOver.Slope;
import org.thalweg.footprint.WallPlan.Wall;

/**
 * What every roof must pass before it is answered, by sums that know nothing of how it was found. A roof passes if
 *
 * <ul>
 *   <li>every slope is a simple ring, wound counter-clockwise, that runs along the walls it rises from;
 *   <li>every corner of a slope is as high as its distance from that slope's wall times its pitch. Slopes that meet share
 *       corners, so their planes agree in height along every seam;
 *   <li>lines with a slope on one side only lie on walls and are as long as all walls together. With the first rule this
 *       means that slopes lie side by side, and with the next that they are just the plan: the roof is one height
 *       everywhere, and nothing above is lower than what is below;
 *   <li>the plan areas of all slopes add up to the plan's, and of each slope the true area is the plan area over the cosine;
 *   <li>no corner is below the eaves, and at a pitch break the flatter slope is above;
 *   <li>corners - lines + slopes = 1 - courtyards (Euler).
 * </ul>
 */
final class RoofCheck {

    /** A micrometre. Corners are known a thousand times better. */
    private static final double NEAR = 1e-6;

    private static final String FAILED =
            "A roof was found and did not pass its checks, so it is not answered. This is a fault of"
                    + " the service; draw the roof as points and planes, and report the request. What did not pass: ";

    /** Of an area, or of a height: what sums of doubles lose. */
    private static final double PART = 1e-9;

    private final WallPlan plan;
    private final List<Wall> walls;
    private final FoundRoof roof;

    private RoofCheck(WallPlan plan, List<Wall> walls, FoundRoof roof) {
        this.plan = plan;
        this.walls = walls;
        this.roof = roof;
    }

    /** Stops with {@link Reason#CHECK_FAILED} or {@link Reason#SLOPE_NOT_SIMPLE} where a roof does not pass. */
    static void check(WallPlan plan, List<Wall> walls, FoundRoof roof) {
        RoofCheck check = new RoofCheck(plan, walls, roof);
        for (int i = 0; i < roof.slopes().size(); i++) {
            check.standsOnItsWalls(i);
            check.isSimple(i);
            check.isAsHighAsFar(i);
        }
        check.rim();
        check.areas();
        check.breaks();
        check.euler();
    }

    private void standsOnItsWalls(int slope) {
        List<Integer> ring = roof.slopes().get(slope).corners();
        for (int wall : roof.walls(slope)) {
            boolean found = false;
            for (int i = 0; i < ring.size() && !found; i++) {
                found = isAt(ring.get(i), walls.get(wall)) && isAt(ring.get((i + 1) % ring.size()), plan.after(wall));
            }
            if (!found) {
                throw failed(slope, "does not stand on its wall").stop();
            }
        }
    }

    private boolean isAt(int corner, Wall wall) {
        Corner place = roof.corners().get(corner);
        return place.x() * WallPlan.STEPS == wall.x() && place.y() * WallPlan.STEPS == wall.y() && place.height() == 0;
    }

    private void isSimple(int slope) {
        List<Integer> ring = roof.slopes().get(slope).corners();
        int n = ring.size();
        for (int i = 0; i < n; i++) {
            Corner a = roof.corners().get(ring.get(i));
            Corner b = roof.corners().get(ring.get((i + 1) % n));
            for (int k = i + 2; k < n && (i > 0 || k < n - 1); k++) {
                if (cross(a, b, roof.corners().get(ring.get(k)), roof.corners().get(ring.get((k + 1) % n)))) {
                    throw SlopeLines.notSimple(side(slope), "crosses itself").stop();
                }
            }
        }
    }

    /** Whether two lines cross by more than a micrometre. */
    private static boolean cross(Corner a, Corner b, Corner c, Corner d) {
        if (Math.max(a.x(), b.x()) < Math.min(c.x(), d.x())
                || Math.max(c.x(), d.x()) < Math.min(a.x(), b.x())
                || Math.max(a.y(), b.y()) < Math.min(c.y(), d.y())
                || Math.max(c.y(), d.y()) < Math.min(a.y(), b.y())) {
            return false;
        }
        return apart(a, b, c, d) && apart(c, d, a, b);
    }

    private static boolean apart(Corner a, Corner b, Corner c, Corner d) {
        double one = offLine(a, b, c);
        double other = offLine(a, b, d);
        return Math.min(one, other) < -NEAR && Math.max(one, other) > NEAR;
    }

    /** How far c lies to the left of the line from a to b. */
    private static double offLine(Corner a, Corner b, Corner c) {
        double length = Math.hypot(b.x() - a.x(), b.y() - a.y());
        double twice = (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
        return length > 0 ? twice / length : 0;
    }

    private void isAsHighAsFar(int slope) {
        Slope found = roof.slopes().get(slope);
        Corner start = corner(walls.get(roof.walls(slope).get(0)));
        Corner end = corner(plan.after(roof.walls(slope).get(0)));
        double tan = found.pitch().tan();
        for (int number : found.corners()) {
            Corner place = roof.corners().get(number);
            double height = offLine(start, end, place) * tan;
            if (!(Math.abs(height - place.height()) <= (NEAR + 2 * PART * Math.abs(height)) * Math.max(1, tan))) {
                throw failed(slope, "is %.9f m high where its pitch makes %.9f m".formatted(place.height(), height))
                        .stop();
            }
            if (!(place.height() >= 0)) {
                throw failed(slope, "reaches below its eave").stop();
            }
        }
    }

    private static Corner corner(Wall wall) {
        return new Corner((double) wall.x() / WallPlan.STEPS, (double) wall.y() / WallPlan.STEPS, 0);
    }

    private void rim() {
        double length = 0;
        double perimeter = 0;
        for (int i = 0; i < walls.size(); i++) {
            perimeter += distance(corner(walls.get(i)), corner(plan.after(i)));
        }
        for (FoundRoof.Line line : roof.rim()) {
            Corner from = roof.corners().get(line.from());
            Corner to = roof.corners().get(line.to());
            length += distance(from, to);
            boolean eave = from.height() == 0 && to.height() == 0;
            if (!eave && !onGable(from, to)) {
                throw failed(line.slope(), "ends neither at a wall nor at another slope")
                        .stop();
            }
        }
        if (!(Math.abs(length - perimeter) <= NEAR + PART * perimeter)) {
            throw failed("its rim is %.9f m long, its walls %.9f m".formatted(length, perimeter))
                    .stop();
        }
    }

    private boolean onGable(Corner from, Corner to) {
        for (int i = 0; i < walls.size(); i++) {
            if (walls.get(i).pitch().isEmpty()) {
                Corner start = corner(walls.get(i));
                Corner end = corner(plan.after(i));
                if (onLine(start, end, from) && onLine(start, end, to)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean onLine(Corner start, Corner end, Corner place) {
        return distance(start, place) + distance(place, end) <= distance(start, end) + NEAR
                && Math.abs(offLine(start, end, place)) <= NEAR;
    }

    private static double distance(Corner a, Corner b) {
        return Math.hypot(b.x() - a.x(), b.y() - a.y());
    }

    private void areas() {
        double planArea = 0;
        for (int i = 0; i < walls.size(); i++) {
            Corner a = corner(walls.get(i));
            Corner b = corner(plan.after(i));
            planArea += (a.x() * b.y() - b.x() * a.y()) / 2;
        }
        double sum = 0;
        double size = 0;
        for (int i = 0; i < roof.slopes().size(); i++) {
            Slope slope = roof.slopes().get(i);
            Corner first = roof.corners().get(slope.corners().get(0));
            double[] twice = new double[3];
            double reach = 0;
            for (int k = 1; k + 1 < slope.corners().size(); k++) {
                Corner b = roof.corners().get(slope.corners().get(k));
                Corner c = roof.corners().get(slope.corners().get(k + 1));
                double[] p = {b.x() - first.x(), b.y() - first.y(), b.height() - first.height()};
                double[] q = {c.x() - first.x(), c.y() - first.y(), c.height() - first.height()};
                twice[0] += p[1] * q[2] - p[2] * q[1];
                twice[1] += p[2] * q[0] - p[0] * q[2];
                twice[2] += p[0] * q[1] - p[1] * q[0];
                reach = Math.max(reach, Math.hypot(distance(first, b), b.height()));
            }
            double area = twice[2] / 2;
            double trueArea = Math.hypot(Math.hypot(twice[0], twice[1]), twice[2]) / 2;
            double overCosine = area * Math.hypot(1, slope.pitch().tan());
            // A corner may be a micrometre off, over the whole reach of the slope.
            double slack = 4 * NEAR * reach * Math.max(1, slope.pitch().tan()) + PART * trueArea;
            if (!(area > -slack) || !(Math.abs(trueArea - overCosine) <= slack)) {
                throw failed(i, "has %.9f m², by its pitch %.9f m²".formatted(trueArea, overCosine))
                        .stop();
            }
            sum += area;
            size += Math.abs(area);
        }
        if (!(Math.abs(sum - planArea) <= NEAR + PART * size)) {
            throw failed("its slopes cover %.9f m² of a plan of %.9f m²".formatted(sum, planArea))
                    .stop();
        }
    }

    private void breaks() {
        for (Seam seam : roof.seams()) {
            if (seam.kind() == SeamKind.PITCH_BREAK) {
                double left = lowest(seam.left());
                double right = lowest(seam.right());
                double height = roof.corners().get(seam.from()).height();
                if (!(height >= Math.max(left, right) - NEAR)) {
                    throw failed(seam.left(), "breaks below its eave").stop();
                }
            }
        }
    }

    private double lowest(int slope) {
        return roof.slopes().get(slope).corners().stream()
                .mapToDouble(number -> roof.corners().get(number).height())
                .min()
                .orElseThrow();
    }

    private void euler() {
        int lines = roof.seams().size() + roof.rim().size();
        int characteristic = roof.corners().size() - lines + roof.slopes().size();
        if (characteristic != 2 - plan.rings().size()) {
            throw failed("%d corners, %d lines and %d slopes over %d rings do not add up"
                            .formatted(
                                    roof.corners().size(),
                                    lines,
                                    roof.slopes().size(),
                                    plan.rings().size()))
                    .stop();
        }
    }

    private int side(int slope) {
        return roof.slopes().get(slope).sides().get(0);
    }

    private NoRoof failed(int slope, String what) {
        return NoRoof.because(Reason.CHECK_FAILED, side(slope), FAILED + "the slope of {side} " + what + ".");
    }

    static NoRoof failed(String what) {
        return NoRoof.because(Reason.CHECK_FAILED, FAILED + what + ".");
    }
}
