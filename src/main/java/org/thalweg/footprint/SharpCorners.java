package org.thalweg.footprint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.thalweg.footprint.RoofOver.Bound;
import org.thalweg.footprint.RoofOver.BoundKind;
import org.thalweg.footprint.RoofOver.Corner;
import org.thalweg.footprint.RoofOver.CrossGable;
import org.thalweg.footprint.RoofOver.Rises;
import org.thalweg.footprint.RoofOver.Slope;
import org.thalweg.units.Pitch;

/**
 * A roof is found on a grid of micrometres; here its corners go from the grid to where the caller's walls and pitches have
 * them. Nothing is decided anew: each corner takes the smallest step that puts it into all the slopes and walls that meet
 * there (least squares), and stays where it was if that is further than the grid can be off.
 */
final class SharpCorners {

    /** No step from the grid is longer, in metres: ten of its steps, a hundredth of how closely roofs are measured. */
    private static final double FURTHEST = 1e-5;

    /** Beside 1, the weight of not moving at all: directions that no slope and no wall tells are left alone. */
    private static final double STAYING = 1e-9;

    /** One long, square to a plane; the plane is where its product with a place is {@code at}. */
    private record Meets(double x, double y, double z, double at) {}

    private final RoofOver roof;
    private final double originX;
    private final double originY;
    private final List<Line> lines = new ArrayList<>();
    private final Map<Place, WallSide> walls = new HashMap<>();

    private SharpCorners(Footprint eaves, RoofOver roof) {
        this.roof = roof;
        originX = eaves.outline().stream().mapToDouble(WallSide::x).min().orElseThrow();
        originY = eaves.outline().stream().mapToDouble(WallSide::y).min().orElseThrow();
        for (List<WallSide> ring : eaves.rings()) {
            boolean inLeft = Footprint.turnsLeft(ring) == lines.isEmpty();
            int n = ring.size();
            for (int i = 0; i < n; i++) {
                lines.add(line(ring.get((i + n - 1) % n), ring.get(i), ring.get((i + 1) % n), inLeft));
                walls.put(place(ring.get(i).x(), ring.get(i).y()), ring.get(i));
            }
        }
    }

    /** The corners of a roof, in its order. */
    static List<Corner> of(Footprint eaves, RoofOver roof) {
        return new SharpCorners(eaves, roof).corners();
    }

    /**
     * A side: where it starts and which way it runs, and which way is into the roof.
     *
     * @param before the side that ends where it starts
     * @param x      of its start, from the origin
     * @param wayX   along it, one long
     * @param inX    into the roof, one long
     */
    private record Line(
            WallSide before,
            WallSide side,
            WallSide after,
            double x,
            double y,
            double length,
            double wayX,
            double wayY,
            double inX,
            double inY) {

        /** How far into the roof a place is. */
        double into(double placeX, double placeY) {
            return inX * (placeX - x) + inY * (placeY - y);
        }

        Meets rising(Level level, Pitch pitch) {
            return plane(inX, inY, inX * x + inY * y + level.run(), level.height(), pitch);
        }

        Meets upright(double run) {
            return new Meets(inX, inY, 0, inX * x + inY * y + run);
        }

        /** A slope of the cross gable that ends at this side: it rises from the corner on, along the wall. */
        Meets crossing(boolean atStart, Pitch pitch) {
            double start = wayX * x + wayY * y;
            return atStart
                    ? plane(wayX, wayY, start, before.eave(), pitch)
                    : plane(-wayX, -wayY, -start - length, after.eave(), pitch);
        }

        /** {@code height} high where the product with the way up is {@code from}. */
        private static Meets plane(double upX, double upY, double from, double height, Pitch pitch) {
            double tan = pitch.tan();
            double one = Math.hypot(1, tan);
            return new Meets(tan * upX / one, tan * upY / one, -1 / one, (tan * from - height) / one);
        }

        /** Whether after so many changes a slope of this pitch rises from it. */
        boolean risesAgain(int changes, Pitch pitch) {
            List<Level> levels = levels();
            return changes < levels.size() && levels.get(changes).pitch().equals(Optional.of(pitch));
        }

        /** Where each part of what rises from the side begins, from the eave up. */
        List<Level> levels() {
            List<Level> levels = new ArrayList<>();
            levels.add(new Level(0, side.eave(), side.pitch()));
            for (WallSide.Change change : side.above()) {
                Level below = levels.get(levels.size() - 1);
                double run = below.pitch()
                        .map(pitch -> (change.height() - below.height()) / pitch.tan())
                        .orElse(0.0);
                levels.add(new Level(below.run() + run, change.height(), change.pitch()));
            }
            return levels;
        }
    }

    /**
     * @param run    how far into the roof it begins, metres
     * @param height how high
     * @param pitch  none: it goes up as a gable
     */
    private record Level(double run, double height, Optional<Pitch> pitch) {}

    private Line line(WallSide before, WallSide from, WallSide to, boolean inLeft) {
        double dx = to.x() - from.x();
        double dy = to.y() - from.y();
        double length = Math.hypot(dx, dy);
        double wayX = dx / Math.max(length, Double.MIN_NORMAL);
        double wayY = dy / Math.max(length, Double.MIN_NORMAL);
        int left = inLeft ? 1 : -1;
        return new Line(
                before,
                from,
                to,
                from.x() - originX,
                from.y() - originY,
                length,
                wayX,
                wayY,
                -wayY * left,
                wayX * left);
    }

    private List<Corner> corners() {
        List<List<Meets>> met = new ArrayList<>();
        roof.corners().forEach(corner -> met.add(new ArrayList<>()));
        for (Slope slope : roof.slopes()) {
            int n = slope.corners().size();
            Optional<Meets> own = meets(slope);
            for (int i = 0; i < n; i++) {
                int from = slope.corners().get(i);
                int to = slope.corners().get((i + 1) % n);
                own.ifPresent(met.get(from)::add);
                for (Meets wall :
                        meets(slope, slope.bounds().get(i), roof.corners().get(from))) {
                    met.get(from).add(wall);
                    met.get(to).add(wall);
                }
            }
        }
        List<Corner> corners = new ArrayList<>();
        for (Corner corner : roof.corners()) {
            corners.add(sharp(corner, met.get(corners.size())));
        }
        return corners;
    }

    private Optional<Meets> meets(Slope slope) {
        if (slope.part() instanceof CrossGable gable) {
            return Optional.of(lines.get(slope.sides().get(0)).crossing(gable.atStart(), slope.pitch()));
        }
        int changes = ((Rises) slope.part()).changes();
        // Of sides in one line that change further up in unlike ways, one goes on over all.
        return slope.sides().stream()
                .map(lines::get)
                .filter(line -> line.risesAgain(changes, slope.pitch()))
                .max(Comparator.comparingDouble(Line::length))
                .map(line -> line.rising(line.levels().get(changes), slope.pitch()));
    }

    private List<Meets> meets(Slope slope, Bound bound, Corner near) {
        if (bound.kind() == BoundKind.SEAM) {
            return List.of();
        }
        Line line = lines.get(bound.side());
        if (bound.kind() == BoundKind.EAVE
                && slope.part() instanceof Rises rises
                && line.risesAgain(rises.changes(), slope.pitch())) {
            Level level = line.levels().get(rises.changes());
            return List.of(line.upright(level.run()), new Meets(0, 0, 1, level.height()));
        }
        // A wall under a high eave and a gable further up may be of one side: it is the one that is near.
        double into = line.into(near.x() - originX, near.y() - originY);
        return line.levels().stream()
                .filter(level -> level.pitch().isEmpty() || level.run() == 0)
                .map(Level::run)
                .min(Comparator.comparingDouble(run -> Math.abs(run - into)))
                .map(run -> List.of(line.upright(run)))
                .orElseThrow();
    }

    private Corner sharp(Corner corner, List<Meets> met) {
        WallSide below = walls.get(place(corner.x(), corner.y()));
        double x = below == null ? corner.x() : below.x();
        double y = below == null ? corner.y() : below.y();
        double[] step = step(x - originX, y - originY, corner.height(), met);
        boolean near = Math.hypot(step[0], Math.hypot(step[1], step[2])) <= FURTHEST;
        return near
                ? new Corner(x + step[0], y + step[1], corner.height() + step[2])
                : new Corner(x, y, corner.height());
    }

    /** The least step from a place that leads into all planes, as near as can be, by the normal equations. */
    private static double[] step(double x, double y, double z, List<Meets> met) {
        double[][] sums = {{STAYING, 0, 0}, {0, STAYING, 0}, {0, 0, STAYING}};
        double[] off = new double[3];
        for (Meets plane : met) {
            double[] square = {plane.x(), plane.y(), plane.z()};
            double missing = plane.at() - (plane.x() * x + plane.y() * y + plane.z() * z);
            for (int i = 0; i < 3; i++) {
                off[i] += square[i] * missing;
                for (int k = 0; k < 3; k++) {
                    sums[i][k] += square[i] * square[k];
                }
            }
        }
        return solve(sums, off);
    }

    /** Gauss; a matrix whose products with itself are above 0 needs no other pivots. */
    private static double[] solve(double[][] matrix, double[] right) {
        for (int i = 0; i < 3; i++) {
            for (int row = i + 1; row < 3; row++) {
                double times = matrix[row][i] / matrix[i][i];
                for (int k = i; k < 3; k++) {
                    matrix[row][k] -= times * matrix[i][k];
                }
                right[row] -= times * right[i];
            }
        }
        double[] solved = new double[3];
        for (int i = 2; i >= 0; i--) {
            double left = right[i];
            for (int k = i + 1; k < 3; k++) {
                left -= matrix[i][k] * solved[k];
            }
            solved[i] = left / matrix[i][i];
        }
        return solved;
    }

    /** A place on the grid of {@link WallPlan}, where a wall and the roof over it have the same corners. */
    private record Place(long x, long y) {}

    private Place place(double x, double y) {
        return new Place(Math.round((x - originX) * WallPlan.STEPS), Math.round((y - originY) * WallPlan.STEPS));
    }
}
