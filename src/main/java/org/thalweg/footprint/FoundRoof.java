package org.thalweg.footprint;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.thalweg.footprint.RoofOver.Bound;
import org.thalweg.footprint.RoofOver.BoundKind;
import org.thalweg.footprint.RoofOver.Corner;
import org.thalweg.footprint.RoofOver.Seam;
import org.thalweg.footprint.RoofOver.SeamKind;
import org.thalweg.footprint.RoofOver.Slope;
import org.thalweg.footprint.WallPlan.Wall;

/** What the rising eaves have drawn, in metres from the grid's origin: corners, slopes, and the lines between them. */
final class FoundRoof {

    /** A seam that slopes less is level, as in the room roof: about 3.5 cm a metre. */
    private static final double LEVEL = Math.tan(Math.toRadians(2));

    /** A line round a slope, the slope to its left. */
    record Line(int slope, int from, int to) {}

    private final WallPlan plan;
    private final List<Corner> corners = new ArrayList<>();
    private final List<Slope> slopes = new ArrayList<>();
    /** For each slope, the walls it rises from. */
    private final List<List<Integer>> walls = new ArrayList<>();

    private final List<Seam> seams = new ArrayList<>();
    /** Lines with a slope on one side only: eaves, and what runs up a gable. */
    private final List<Line> rim = new ArrayList<>();

    FoundRoof(WallPlan plan, List<Wall> allWalls, Nodes nodes, SlopeLines lines) {
        this.plan = plan;
        double step = 1.0 / WallPlan.STEPS;
        double rise = plan.heightOfTime() * step;
        Map<Integer, Integer> numbers = new HashMap<>();
        List<List<SlopeLines.Line>> rings = lines.rings();
        for (int i = 0; i < rings.size(); i++) {
            if (rings.get(i).isEmpty()) {
                continue;
            }
            List<Integer> ring = new ArrayList<>();
            List<Bound> bounds = new ArrayList<>();
            for (SlopeLines.Line line : rings.get(i)) {
                int node = line.from();
                Integer number = numbers.get(node);
                if (number == null) {
                    number = corners.size();
                    numbers.put(node, number);
                    corners.add(new Corner(nodes.x(node) * step, nodes.y(node) * step, nodes.time(node) * rise));
                }
                ring.add(number);
                bounds.add(bound(line, lines, allWalls));
            }
            List<Integer> own = new ArrayList<>();
            List<Integer> sides = new ArrayList<>();
            for (int wall = i; wall < allWalls.size(); wall++) {
                if (lines.slopeOf(wall) == i) {
                    own.add(wall);
                    sides.addAll(allWalls.get(wall).sides());
                }
            }
            sides.sort(null);
            walls.add(own);
            slopes.add(new Slope(
                    sides, new RoofOver.Rises(0), allWalls.get(i).pitch().orElseThrow(), ring, bounds));
        }
        findSeams(allWalls);
    }

    private static Bound bound(SlopeLines.Line line, SlopeLines lines, List<Wall> allWalls) {
        if (line.beside() == SlopeLines.NONE) {
            return new Bound(BoundKind.EAVE, allWalls.get(line.slope()).sides().get(0));
        }
        return lines.isUpright(line.beside())
                ? new Bound(BoundKind.GABLE, allWalls.get(line.beside()).sides().get(0))
                : new Bound(BoundKind.SEAM, -1);
    }

    private void findSeams(List<Wall> allWalls) {
        Map<Long, Line> lines = new HashMap<>();
        for (int slope = 0; slope < slopes.size(); slope++) {
            List<Integer> ring = slopes.get(slope).corners();
            for (int i = 0; i < ring.size(); i++) {
                int from = ring.get(i);
                int to = ring.get((i + 1) % ring.size());
                if (lines.put(key(from, to), new Line(slope, from, to)) != null) {
                    throw RoofCheck.failed("two slopes lie on the same side of a line")
                            .stop();
                }
            }
        }
        for (int slope = 0; slope < slopes.size(); slope++) {
            List<Integer> ring = slopes.get(slope).corners();
            for (int i = 0; i < ring.size(); i++) {
                int from = ring.get(i);
                int to = ring.get((i + 1) % ring.size());
                Line other = lines.get(key(to, from));
                if (other == null) {
                    rim.add(new Line(slope, from, to));
                } else if (slope < other.slope) {
                    seams.add(new Seam(kind(allWalls, slope, other.slope, from, to), slope, other.slope, from, to));
                } else if (slope == other.slope) {
                    throw SlopeLines.notSimple(slopes.get(slope).sides().get(0), "meets itself")
                            .stop();
                }
            }
        }
    }

    private static long key(int from, int to) {
        return ((long) from << 32) | to;
    }

    private SeamKind kind(List<Wall> allWalls, int left, int right, int from, int to) {
        double dx = corners.get(to).x() - corners.get(from).x();
        double dy = corners.get(to).y() - corners.get(from).y();
        double run = Math.hypot(dx, dy);
        double[] leftUp = gradient(allWalls, left);
        double[] rightUp = gradient(allWalls, right);
        // Square to the seam, from the left slope to the right one.
        double up = leftUp[0] * dy - leftUp[1] * dx;
        double on = rightUp[0] * dy - rightUp[1] * dx;
        if (up < on) {
            return SeamKind.VALLEY;
        }
        if (Math.abs(corners.get(to).height() - corners.get(from).height()) > LEVEL * run) {
            return SeamKind.HIP;
        }
        return (up > 0 && on > 0) || (up < 0 && on < 0) ? SeamKind.PITCH_BREAK : SeamKind.RIDGE;
    }

    /** How much a slope rises along x and along y. */
    private double[] gradient(List<Wall> allWalls, int slope) {
        Wall wall = allWalls.get(walls.get(slope).get(0));
        Wall end = plan.after(walls.get(slope).get(0));
        double dx = end.x() - wall.x();
        double dy = end.y() - wall.y();
        double tan = slopes.get(slope).pitch().tan() / Math.hypot(dx, dy);
        return new double[] {-dy * tan, dx * tan};
    }

    List<Corner> corners() {
        return corners;
    }

    List<Slope> slopes() {
        return slopes;
    }

    List<Integer> walls(int slope) {
        return walls.get(slope);
    }

    List<Seam> seams() {
        return seams;
    }

    List<Line> rim() {
        return rim;
    }

    /** The same where the caller's plan is. */
    RoofOver placed(RoofOver.Ways ways) {
        List<Corner> moved = corners.stream()
                .map(corner -> new Corner(corner.x() + plan.originX(), corner.y() + plan.originY(), corner.height()))
                .toList();
        return new RoofOver(moved, slopes, seams, ways);
    }
}
