package org.thalweg.footprint;

import java.util.ArrayList;
import java.util.List;
import org.thalweg.footprint.Faces.Face;
import org.thalweg.footprint.FoundRoof.Line;
import org.thalweg.footprint.FoundRoof.Surface;
import org.thalweg.footprint.NoRoof.Reason;
import org.thalweg.footprint.RoofOver.Corner;
import org.thalweg.footprint.WallPlan.Wall;

/**
 * What every roof must pass before it is answered, by sums that know nothing of how it was found. A roof passes if
 *
 * <ul>
 *   <li>every slope is a simple ring, wound counter-clockwise, that runs along the walls it rises from, or begins where the
 *       slope or the wall under it ends;
 *   <li>every corner of a slope is as high as its distance from where that slope begins times its pitch, and every corner of a
 *       gable stands over its line. Surfaces that meet share corners, so they agree in height along every seam;
 *   <li>lines with a surface on one side only are the feet of the walls, and all of them. With the first rule this means that
 *       slopes lie side by side, and with the next that they are just the plan: the roof is one height everywhere, and nothing
 *       above is lower than what is below;
 *   <li>the plan areas of all slopes add up to the plan's, and of each slope the true area is the plan area over the cosine;
 *   <li>no corner is below where its surface begins or above where it changes, and where a slope goes on over another that
 *       rises the same way it is the flatter;
 *   <li>corners - lines + surfaces = 1 - courtyards (Euler).
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
    private final Faces faces;
    private final FoundRoof roof;
    private final List<Wall[]> walls = new ArrayList<>();

    private RoofCheck(WallPlan plan, Faces faces, FoundRoof roof) {
        this.plan = plan;
        this.faces = faces;
        this.roof = roof;
        for (List<Wall> ring : plan.rings()) {
            for (int i = 0; i < ring.size(); i++) {
                walls.add(new Wall[] {ring.get(i), ring.get((i + 1) % ring.size())});
            }
        }
    }

    /** Stops with {@link Reason#CHECK_FAILED} or {@link Reason#SLOPE_NOT_SIMPLE} where a roof does not pass. */
    static void check(WallPlan plan, Faces faces, FoundRoof roof) {
        RoofCheck check = new RoofCheck(plan, faces, roof);
        for (int i = 0; i < roof.surfaces().size(); i++) {
            check.beginsWhereItShould(i);
            check.isSimple(i);
            check.isAsHighAsFar(i);
        }
        check.rim();
        check.areas();
        check.breaks();
        check.euler();
    }

    private void beginsWhereItShould(int surface) {
        for (int number : roof.surfaces().get(surface).faces()) {
            Face face = faces.all().get(number);
            boolean wholeWall = face.part() instanceof RoofOver.Rises && !faces.goesOver(number);
            if (!hasLine(surface, walls.get(face.wall()), face.from(), wholeWall)) {
                throw failed(surface, "does not begin where it should").stop();
            }
        }
    }

    /** Whether a surface has a line along a wall, or, not for a whole wall, a level one or a point at a height. */
    private boolean hasLine(int surface, Wall[] wall, double height, boolean wholeWall) {
        List<Integer> ring = roof.surfaces().get(surface).corners();
        for (int i = 0; i < ring.size(); i++) {
            int to = ring.get((i + 1) % ring.size());
            if (wholeWall
                    ? isAt(roof.corners().get(ring.get(i)), wall[0])
                            && isAt(roof.corners().get(to), wall[1])
                    : Math.abs(roof.corners().get(ring.get(i)).height() - height) <= NEAR) {
                return true;
            }
        }
        return false;
    }

    private boolean isAt(Corner place, Wall wall) {
        return place.x() * WallPlan.STEPS == wall.onX()
                && place.y() * WallPlan.STEPS == wall.onY()
                && place.height() == faces.base();
    }

    private void isSimple(int surface) {
        List<Corner> ring = roof.surfaces().get(surface).corners().stream()
                .map(number -> seenSquare(roof.face(surface), roof.corners().get(number)))
                .toList();
        int n = ring.size();
        for (int i = 0; i < n; i++) {
            Corner a = ring.get(i);
            Corner b = ring.get((i + 1) % n);
            for (int k = i + 2; k < n && (i > 0 || k < n - 1); k++) {
                if (cross(a, b, ring.get(k), ring.get((k + 1) % n))) {
                    throw SlopeLines.notSimple(roof.side(surface), "crosses itself")
                            .stop();
                }
            }
        }
    }

    /** A slope is looked at from above, a gable from outside: along it, and up. */
    private static Corner seenSquare(Face face, Corner place) {
        if (!face.upright()) {
            return place;
        }
        double a = (double) face.plane().a();
        double b = (double) face.plane().b();
        return new Corner((b * place.x() - a * place.y()) / Math.hypot(a, b), place.height(), 0);
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

    private void isAsHighAsFar(int surface) {
        Face face = roof.face(surface);
        double begins = faces.distance(roof.surfaces().get(surface).faces().get(0));
        double ends = endsAt(surface);
        for (int number : roof.surfaces().get(surface).corners()) {
            Corner place = roof.corners().get(number);
            double far = inward(face, place) - begins;
            if (face.upright()) {
                if (!(Math.abs(far) <= NEAR)) {
                    throw failed(surface, "stands %.9f m off its line".formatted(far))
                            .stop();
                }
            } else {
                double tan = face.pitch().orElseThrow().tan();
                double height = face.from() + far * tan;
                if (!(Math.abs(height - place.height()) <= (NEAR + 2 * PART * Math.abs(height)) * Math.max(1, tan))) {
                    throw failed(
                                    surface,
                                    "is %.9f m high where its pitch makes %.9f m".formatted(place.height(), height))
                            .stop();
                }
            }
            if (!(place.height() >= face.from() - NEAR)) {
                throw failed(surface, "reaches below its eave").stop();
            }
            if (!(place.height() <= ends + NEAR)) {
                throw failed(surface, "goes on where it should change").stop();
            }
        }
    }

    /** The height at which the last of its faces changes, metres: of those that became one the first side's goes on. */
    private double endsAt(int surface) {
        return roof.surfaces().get(surface).faces().stream()
                .mapToDouble(
                        face -> faces.changes(face) ? faces.all().get(face + 1).from() : Double.MAX_VALUE)
                .max()
                .orElseThrow();
    }

    /** How far a place is from the line on which the face's lowest begins. */
    private static double inward(Face face, Corner place) {
        double a = (double) face.plane().a();
        double b = (double) face.plane().b();
        double along = a * place.x() + b * place.y() - (double) face.plane().c() / WallPlan.STEPS;
        return along / Math.hypot(a, b);
    }

    private static Corner corner(Wall wall) {
        return new Corner(wall.onX() / WallPlan.STEPS, wall.onY() / WallPlan.STEPS, 0);
    }

    private void rim() {
        for (Line line : roof.rim()) {
            Corner from = roof.corners().get(line.from());
            Corner to = roof.corners().get(line.to());
            if (!onWall(from, to)) {
                throw failed(line.surface(), "ends neither at a wall nor at another slope")
                        .stop();
            }
        }
        if (roof.rim().size() != walls.size()) {
            throw failed("%d of its lines end at walls, of which there are %d"
                            .formatted(roof.rim().size(), walls.size()))
                    .stop();
        }
    }

    /** Whether a line is the foot of a wall. */
    private boolean onWall(Corner from, Corner to) {
        for (Wall[] wall : walls) {
            if (isAt(from, wall[0]) && isAt(to, wall[1])) {
                return true;
            }
        }
        return false;
    }

    private static double distance(Corner a, Corner b) {
        return Math.hypot(b.x() - a.x(), b.y() - a.y());
    }

    private void areas() {
        double planArea = 0;
        for (Wall[] wall : walls) {
            Corner a = corner(wall[0]);
            Corner b = corner(wall[1]);
            planArea += (a.x() * b.y() - b.x() * a.y()) / 2;
        }
        double sum = 0;
        double size = 0;
        for (int i = 0; i < roof.surfaces().size(); i++) {
            if (roof.face(i).upright()) {
                continue;
            }
            Surface surface = roof.surfaces().get(i);
            double tan = roof.face(i).pitch().orElseThrow().tan();
            Corner first = roof.corners().get(surface.corners().get(0));
            double[] twice = new double[3];
            double reach = 0;
            for (int k = 1; k + 1 < surface.corners().size(); k++) {
                Corner b = roof.corners().get(surface.corners().get(k));
                Corner c = roof.corners().get(surface.corners().get(k + 1));
                double[] p = {b.x() - first.x(), b.y() - first.y(), b.height() - first.height()};
                double[] q = {c.x() - first.x(), c.y() - first.y(), c.height() - first.height()};
                twice[0] += p[1] * q[2] - p[2] * q[1];
                twice[1] += p[2] * q[0] - p[0] * q[2];
                twice[2] += p[0] * q[1] - p[1] * q[0];
                reach = Math.max(reach, Math.hypot(distance(first, b), b.height() - first.height()));
            }
            double area = twice[2] / 2;
            double trueArea = Math.hypot(Math.hypot(twice[0], twice[1]), twice[2]) / 2;
            double overCosine = area * Math.hypot(1, tan);
            // A corner may be a micrometre off, over the whole reach of the slope.
            double slack = 4 * NEAR * reach * Math.max(1, tan) + PART * trueArea;
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
        for (Line[] seam : roof.seams()) {
            Face left = roof.face(seam[0].surface());
            Face right = roof.face(seam[1].surface());
            boolean inLine =
                    left.plane().turnTo(right.plane()) == 0 && left.plane().runsWith(right.plane());
            if (inLine && !left.upright() && !right.upright() && !faces.handOver(left.plane(), right.plane())) {
                double leftTan = left.pitch().orElseThrow().tan();
                double rightTan = right.pitch().orElseThrow().tan();
                boolean leftAbove = roof.rises(seam[0].surface(), seam[1]);
                if (leftAbove ? leftTan > rightTan : rightTan > leftTan) {
                    throw failed(seam[0].surface(), "goes on over a flatter one")
                            .stop();
                }
            }
        }
    }

    private void euler() {
        int lines = roof.seams().size() + roof.rim().size();
        int characteristic = roof.corners().size() - lines + roof.surfaces().size();
        if (characteristic != 2 - plan.rings().size()) {
            throw failed("%d corners, %d lines and %d surfaces over %d rings do not add up"
                            .formatted(
                                    roof.corners().size(),
                                    lines,
                                    roof.surfaces().size(),
                                    plan.rings().size()))
                    .stop();
        }
    }

    private NoRoof failed(int surface, String what) {
        return NoRoof.because(Reason.CHECK_FAILED, roof.side(surface), FAILED + "the slope of {side} " + what + ".");
    }

    static NoRoof failed(String what) {
        return NoRoof.because(Reason.CHECK_FAILED, FAILED + what + ".");
    }
}
