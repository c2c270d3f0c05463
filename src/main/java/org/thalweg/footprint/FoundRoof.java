package org.thalweg.footprint;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.thalweg.footprint.Faces.Face;
import org.thalweg.footprint.RoofOver.Bound;
import org.thalweg.footprint.RoofOver.BoundKind;
import org.thalweg.footprint.RoofOver.Corner;
import org.thalweg.footprint.RoofOver.Seam;
import org.thalweg.footprint.RoofOver.SeamKind;
import org.thalweg.footprint.RoofOver.Slope;
import org.thalweg.footprint.WallPlan.Spot;
import org.thalweg.footprint.WallPlan.Wall;

/**
 * What the rising eaves have drawn, in metres from the grid's origin: corners, surfaces (slopes and gables), and the lines
 * between them.
 */
final class FoundRoof {

    /** A seam that slopes less is level, as in the room roof: about 3.5 cm a metre. */
    static final double LEVEL = Math.tan(Math.toRadians(2));

    private static final double STEP = 1.0 / WallPlan.STEPS;

    /**
     * A slope or a gable.
     *
     * @param faces   the faces it is made of, in order
     * @param corners its ring: numbers of corners
     * @param bounds  what the lines of its ring are
     */
    record Surface(List<Integer> faces, List<Integer> corners, List<Bound> bounds) {}

    /** A line round a surface, that to its left. */
    record Line(int surface, int from, int to) {}

    private final WallPlan plan;
    private final Faces faces;
    private final List<Corner> corners = new ArrayList<>();
    private final List<Surface> surfaces = new ArrayList<>();
    /** Two lines each, one for either surface, that of the lower number first. */
    private final List<Line[]> seams = new ArrayList<>();
    /** Lines with a surface on one side only: the feet of the walls. */
    private final List<Line> rim = new ArrayList<>();

    FoundRoof(WallPlan plan, Faces faces, Nodes nodes, SlopeLines lines) {
        this.plan = plan;
        this.faces = faces;
        Map<Integer, Integer> numbers = new HashMap<>();
        List<List<SlopeLines.Line>> rings = lines.rings();
        List<Set<Integer>> made = lines.faces();
        for (int i = 0; i < rings.size(); i++) {
            // Two lines are a fold of no width: what will be a cross gable further up.
            if (rings.get(i).size() < 3) {
                continue;
            }
            List<Integer> ring = new ArrayList<>();
            List<Bound> bounds = new ArrayList<>();
            for (SlopeLines.Line line : rings.get(i)) {
                ring.add(numbers.computeIfAbsent(line.from(), node -> corner(nodes, node)));
                bounds.add(bound(line, lines, nodes));
            }
            surfaces.add(new Surface(List.copyOf(made.get(i)), ring, bounds));
        }
        findSeams();
    }

    private int corner(Nodes nodes, int node) {
        corners.add(new Corner(nodes.x(node) * STEP, nodes.y(node) * STEP, faces.height(nodes.time(node))));
        return corners.size() - 1;
    }

    private Bound bound(SlopeLines.Line line, SlopeLines lines, Nodes nodes) {
        int face = lines.face(line.slope());
        if (line.beside() == SlopeLines.NONE) {
            return new Bound(BoundKind.EAVE, faces.side(face));
        }
        int beside = lines.face(line.beside());
        Face other = faces.all().get(beside);
        if (!other.upright()) {
            return new Bound(BoundKind.SEAM, -1);
        }
        if (faces.over(face, beside)) {
            return new Bound(BoundKind.EAVE, faces.side(face));
        }
        // Seen from outside a gable has its foot to the right, and what it goes up to on the way back.
        double dx = nodes.x(line.to()) - nodes.x(line.from());
        double dy = nodes.y(line.to()) - nodes.y(line.from());
        boolean foot = dx * other.plane().b() - dy * other.plane().a() < 0;
        return new Bound(foot ? BoundKind.GABLE_FOOT : BoundKind.GABLE, faces.side(beside));
    }

    private void findSeams() {
        Map<Long, Line> lines = new HashMap<>();
        for (int surface = 0; surface < surfaces.size(); surface++) {
            for (Line line : lines(surface)) {
                if (lines.put(key(line.from, line.to), line) != null) {
                    throw RoofCheck.failed("two slopes lie on the same side of a line")
                            .stop();
                }
            }
        }
        for (int surface = 0; surface < surfaces.size(); surface++) {
            for (Line line : lines(surface)) {
                Line other = lines.get(key(line.to, line.from));
                if (other == null) {
                    rim.add(line);
                } else if (surface < other.surface) {
                    seams.add(new Line[] {line, other});
                } else if (surface == other.surface) {
                    throw SlopeLines.notSimple(side(surface), "meets itself").stop();
                }
            }
        }
    }

    private List<Line> lines(int surface) {
        List<Integer> ring = surfaces.get(surface).corners;
        return IntStream.range(0, ring.size())
                .mapToObj(i -> new Line(surface, ring.get(i), ring.get((i + 1) % ring.size())))
                .toList();
    }

    private static long key(int from, int to) {
        return ((long) from << 32) | to;
    }

    List<Corner> corners() {
        return corners;
    }

    List<Surface> surfaces() {
        return surfaces;
    }

    /** The first of its faces; all rise alike. */
    Face face(int surface) {
        return faces.all().get(surfaces.get(surface).faces.get(0));
    }

    int side(int surface) {
        return faces.side(surfaces.get(surface).faces.get(0));
    }

    List<Line[]> seams() {
        return seams;
    }

    List<Line> rim() {
        return rim;
    }

    SeamKind kind(Line line, Line other) {
        Corner from = corners.get(line.from);
        Corner to = corners.get(line.to);
        double dx = to.x() - from.x();
        double dy = to.y() - from.y();
        double up = across(line.surface, line);
        double on = across(other.surface, line);
        boolean level = Math.abs(to.height() - from.height()) <= LEVEL * Math.hypot(dx, dy);
        boolean inLine = face(line.surface).plane().turnTo(face(other.surface).plane()) == 0;
        if (up * on > 0 && (inLine || (level && up > on))) {
            return SeamKind.PITCH_BREAK;
        }
        if (up < on) {
            return SeamKind.VALLEY;
        }
        return level ? SeamKind.RIDGE : SeamKind.HIP;
    }

    /** Whether a slope rises away from a line round another slope that it shares, on to its own side. */
    boolean rises(int surface, Line shared) {
        // The other slope lies to the left of its line.
        return across(surface, shared) > 0;
    }

    /** How a slope rises square to a line, from its left to its right, times the line's length in plan. */
    private double across(int surface, Line line) {
        Corner from = corners.get(line.from);
        Corner to = corners.get(line.to);
        Face face = face(surface);
        double a = (double) face.plane().a();
        double b = (double) face.plane().b();
        double tan = face.pitch().orElseThrow().tan() / Math.hypot(a, b);
        return a * tan * (to.y() - from.y()) - b * tan * (to.x() - from.x());
    }

    /** The same where the caller's plan is, gables left out, eaves parted where sides are told apart. */
    RoofOver placed(RoofOver.Ways ways) {
        List<Corner> moved = new ArrayList<>();
        corners.forEach(corner -> moved.add(moved(corner)));
        List<Slope> slopes = new ArrayList<>();
        int[] number = new int[surfaces.size()];
        for (int i = 0; i < number.length; i++) {
            number[i] = slopes.size();
            if (!face(i).upright()) {
                slopes.add(slope(surfaces.get(i), moved));
            }
        }
        List<Seam> between = new ArrayList<>();
        for (Line[] seam : seams) {
            if (!face(seam[0].surface).upright() && !face(seam[1].surface).upright()) {
                between.add(new Seam(
                        kind(seam[0], seam[1]),
                        number[seam[0].surface],
                        number[seam[1].surface],
                        seam[0].from,
                        seam[0].to));
            }
        }
        return new RoofOver(moved, slopes, between, ways);
    }

    private Corner moved(Corner corner) {
        return new Corner(corner.x() + plan.originX(), corner.y() + plan.originY(), corner.height());
    }

    private Slope slope(Surface surface, List<Corner> moved) {
        List<Integer> ring = new ArrayList<>();
        List<Bound> bounds = new ArrayList<>();
        for (int i = 0; i < surface.corners.size(); i++) {
            ring.add(surface.corners.get(i));
            bounds.add(surface.bounds.get(i));
            if (surface.bounds.get(i).kind() == BoundKind.EAVE) {
                int to = surface.corners.get((i + 1) % surface.corners.size());
                part(surface, i, to, ring, bounds, moved);
            }
        }
        Face face = faces.all().get(surface.faces.get(0));
        List<Integer> sides = surface.faces.stream()
                .map(number -> faces.walls().get(faces.all().get(number).wall()))
                .flatMap(wall -> wall.sides().stream())
                .sorted()
                .toList();
        return new Slope(sides, face.part(), face.pitch().orElseThrow(), ring, bounds);
    }

    /** Adds the corners between sides of one wall to its eave, those of sides that are told apart. */
    private void part(Surface surface, int at, int to, List<Integer> ring, List<Bound> bounds, List<Corner> moved) {
        Corner start = corners.get(surface.corners.get(at));
        Corner end = corners.get(to);
        double dx = end.x() - start.x();
        double dy = end.y() - start.y();
        int first = surface.bounds.get(at).side();
        Wall wall = surface.faces.stream()
                .map(number -> faces.walls().get(faces.all().get(number).wall()))
                .filter(one -> one.sides().get(0) == first)
                .findFirst()
                .orElseThrow();
        for (int i = 0; i < wall.passed().size(); i++) {
            Spot spot = wall.passed().get(i);
            double part =
                    ((spot.x() * STEP - start.x()) * dx + (spot.y() * STEP - start.y()) * dy) / (dx * dx + dy * dy);
            int before = wall.sides().get(i);
            int after = wall.sides().get(i + 1);
            if (plan.isApart(before) || plan.isApart(after)) {
                if (part > 0 && part < 1) {
                    ring.add(moved.size());
                    moved.add(moved(new Corner(start.x() + part * dx, start.y() + part * dy, start.height())));
                    bounds.add(new Bound(BoundKind.EAVE, after));
                } else if (part <= 0) {
                    bounds.set(bounds.size() - 1, new Bound(BoundKind.EAVE, after));
                }
            }
        }
    }
}
