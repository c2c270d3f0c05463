package org.thalweg.footprint;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.thalweg.footprint.NoRoof.Reason;
import org.thalweg.footprint.WallSide.Change;
import org.thalweg.units.Count;
import org.thalweg.units.Length;
import org.thalweg.units.Pitch;

/**
 * The walls on a grid of whole numbers, from the least x and y of the outline on, rings wound with the roof to their left. A
 * corner within the tolerance of the line between its neighbours, with sides that rise alike, is no corner: the sides are
 * one wall. A side shorter than that is none. Corners between a gable and a side in line with it are put on that line.
 */
final class WallPlan {

    /** Steps of the grid in a metre: one is about 1 µm, and a binary fraction, so that 0.25 m stays what it is. */
    static final int STEPS = 1 << 20;

    static final int MOST_SIDES = 2_000;
    /** 2^30 steps: what {@link EavePlane} can hold. Metres. */
    static final double LARGEST = 1024;
    /** Our own bounds: nobody roofs at less than 1 in 100, and steeper than 50 to 1 is a wall. */
    static final double LEAST_TAN = 0.01;

    static final double MOST_TAN = 50;

    /**
     * How the roof rises from a wall. Two that are equal rise alike.
     *
     * @param pitch none: it goes up as a gable
     * @param eave  where that begins, metres; 0 for a gable
     * @param above what it becomes further up
     * @param cross of the slopes that end at a gable in line with another wall
     */
    record Form(Optional<Pitch> pitch, double eave, List<Change> above, Optional<Pitch> cross) {

        static Form of(WallSide side) {
            boolean sloped = side.pitch().isPresent();
            return new Form(
                    side.pitch(), sloped ? side.eave() : 0, side.above(), sloped ? Optional.empty() : side.cross());
        }

        boolean gable() {
            return pitch.isEmpty();
        }

        /** All it has. */
        List<Pitch> pitches() {
            return Stream.of(Stream.of(pitch, cross), above.stream().map(Change::pitch))
                    .flatMap(all -> all)
                    .flatMap(Optional::stream)
                    .toList();
        }

        /** What becomes of it and where, the eave first; nothing for a gable all the way up. */
        List<Change> changes() {
            List<Change> changes = new ArrayList<>();
            pitch.ifPresent(slope -> changes.add(new Change(eave, pitch)));
            changes.addAll(above);
            return changes;
        }
    }

    /**
     * @param sides  numbers of the sides that are this wall, in order
     * @param passed the corners between them, on the wall
     * @param x      of its first corner, steps
     * @param y      of its first corner, steps
     * @param onX    of its first corner, put from the grid onto the line it runs on, steps
     * @param onY    of its first corner, put onto the line
     */
    record Wall(List<Integer> sides, List<Spot> passed, long x, long y, double onX, double onY, Form form) {

        Wall with(Wall more) {
            List<Integer> all = new ArrayList<>(sides);
            all.addAll(more.sides);
            List<Spot> corners = new ArrayList<>(passed);
            corners.add(new Spot(more.x, more.y));
            corners.addAll(more.passed);
            return new Wall(all, corners, x, y, onX, onY, form);
        }

        Wall at(long otherX, long otherY) {
            return new Wall(sides, passed, otherX, otherY, (double) otherX, (double) otherY, form);
        }

        /** The same with its first corner on a line that passes it within a step. */
        Wall on(WallLine line) {
            double off =
                    (double) (line.a * x + line.b * y - line.c) / ((double) line.a * line.a + (double) line.b * line.b);
            return new Wall(sides, passed, x, y, x - off * line.a, y - off * line.b, form);
        }
    }

    /** A place on the grid. */
    record Spot(long x, long y) {}

    /** Where a wall runs: a·x + b·y = c, a and b without a common factor, the roof where the left is greater. */
    record WallLine(long a, long b, long c) {

        static WallLine of(Wall from, Wall to) {
            long dx = to.x - from.x;
            long dy = to.y - from.y;
            long factor = BigInteger.valueOf(dx).gcd(BigInteger.valueOf(dy)).longValue();
            long a = -dy / factor;
            long b = dx / factor;
            return new WallLine(a, b, a * from.x + b * from.y);
        }

        /** Square to it through a corner, the roof on the side where this line goes on to, or comes from. */
        WallLine across(Wall corner, boolean onward) {
            long toX = onward ? b : -b;
            long toY = onward ? -a : a;
            return new WallLine(toX, toY, toX * corner.x + toY * corner.y);
        }
    }

    private final double originX;
    private final double originY;
    private final double tolerance;
    private final BitSet apart = new BitSet();
    private final List<List<Wall>> rings = new ArrayList<>();
    private final List<Boolean> turned = new ArrayList<>();
    private final List<List<WallLine>> lines = new ArrayList<>();

    private WallPlan(Footprint footprint) {
        originX = footprint.outline().stream().mapToDouble(WallSide::x).min().orElseThrow();
        originY = footprint.outline().stream().mapToDouble(WallSide::y).min().orElseThrow();
        // Half a step is lost by rounding, at either end.
        tolerance = Math.max(1, footprint.tolerance().metres() * STEPS);
        int first = 0;
        for (List<WallSide> ring : footprint.rings()) {
            List<Wall> walls = snapped(ring, first);
            lines.add(InLine.align(walls, tolerance));
            rings.add(walls);
            first += ring.size();
        }
        PlanChecks.check(rings);
    }

    static WallPlan of(Footprint footprint) {
        if (footprint.sides() > MOST_SIDES) {
            throw NoRoof.because(
                            Reason.TOO_MANY_SIDES,
                            "{actual} sides in all, {limit} at most. Leave out corners in line, or ask for"
                                    + " parts of the roof by themselves.")
                    .with(new Count(footprint.sides()), new Count(MOST_SIDES))
                    .stop();
        }
        int number = 0;
        for (List<WallSide> ring : footprint.rings()) {
            if (ring.size() < 3) {
                throw tooFew(number, ring.size());
            }
            for (WallSide side : ring) {
                check(side, footprint.outline().get(0), number++);
            }
        }
        return new WallPlan(footprint);
    }

    private static void check(WallSide side, WallSide first, int number) {
        double far = Math.max(Math.abs(side.x() - first.x()), Math.abs(side.y() - first.y()));
        if (far > LARGEST / 2) {
            throw NoRoof.because(
                            Reason.TOO_LARGE,
                            number,
                            "{side} starts {actual} from the first corner along x or y, {limit} at most. Check the unit.")
                    .with(Length.metres(far), Length.metres(LARGEST / 2))
                    .stop();
        }
        side.pitch().ifPresent(pitch -> check(pitch, number));
        side.cross().ifPresent(pitch -> check(pitch, number));
        double before = Double.NEGATIVE_INFINITY;
        for (Change change : Form.of(side).changes()) {
            change.pitch().ifPresent(pitch -> check(pitch, number));
            if (!(change.height() > before)) {
                throw NoRoof.because(
                                Reason.HEIGHTS_OUT_OF_ORDER,
                                number,
                                "{side} changes at a height of {actual}, not above {limit}, where the slope below begins.")
                        .with(Length.metres(change.height()), Length.metres(before))
                        .stop();
            }
            before = change.height();
        }
    }

    private static void check(Pitch pitch, int side) {
        double tan = pitch.tan();
        if (!(tan >= LEAST_TAN && tan <= MOST_TAN)) {
            throw NoRoof.because(
                            Reason.PITCH_EXTREME,
                            side,
                            "{side} has a pitch of {actual}, {limit} at %s. A side whose wall goes straight up is a gable."
                                    .formatted(tan > 1 ? "most" : "least"))
                    .with(pitch, new Pitch(12 * (tan > 1 ? MOST_TAN : LEAST_TAN), 12))
                    .stop();
        }
    }

    private List<Wall> snapped(List<WallSide> ring, int first) {
        List<Wall> walls = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            WallSide side = ring.get(i);
            apart.set(first + i, side.apart());
            long x = Math.round((side.x() - originX) * STEPS);
            long y = Math.round((side.y() - originY) * STEPS);
            walls.add(new Wall(List.of(first + i), List.of(), x, y, (double) x, (double) y, Form.of(side)));
        }
        InLine.join(walls, tolerance);
        if (walls.size() < 3) {
            throw tooFew(first, walls.size());
        }
        boolean outline = rings.isEmpty();
        boolean turn = PlanChecks.turnsLeft(walls) != outline;
        turned.add(turn);
        List<Wall> wound = InLine.straightened(turn ? reversed(walls) : walls, tolerance);
        if (wound.size() < 3) {
            throw tooFew(first, wound.size());
        }
        return wound;
    }

    /** The same ring the other way round: a wall starts at what was its end. */
    private static List<Wall> reversed(List<Wall> walls) {
        List<Wall> reversed = new ArrayList<>();
        int n = walls.size();
        for (int i = n - 1; i >= 0; i--) {
            Wall end = walls.get((i + 1) % n);
            reversed.add(walls.get(i).at(end.x, end.y));
        }
        return reversed;
    }

    List<List<Wall>> rings() {
        return rings;
    }

    /** Where every wall of a ring runs. */
    List<WallLine> lines(int ring) {
        return lines.get(ring);
    }

    /** Whether a side's eave is told apart from that of one in line with it. */
    boolean isApart(int side) {
        return apart.get(side);
    }

    /** Whether a ring runs against the caller's order. */
    boolean turned(int ring) {
        return turned.get(ring);
    }

    double originX() {
        return originX;
    }

    double originY() {
        return originY;
    }

    /** Least x, least y, most x, most y of the outline, steps. */
    double[] box() {
        double[] box = {Double.MAX_VALUE, Double.MAX_VALUE, 0, 0};
        for (Wall wall : rings.get(0)) {
            box[0] = Math.min(box[0], (double) wall.x);
            box[1] = Math.min(box[1], (double) wall.y);
            box[2] = Math.max(box[2], (double) wall.x);
            box[3] = Math.max(box[3], (double) wall.y);
        }
        return box;
    }

    private static NoRoof.Stop tooFew(int side, int corners) {
        return NoRoof.because(
                        Reason.TOO_FEW_CORNERS,
                        side,
                        "This ring has {actual} corners that are apart and not in line, {limit} at least.")
                .with(new Count(corners), new Count(3))
                .stop();
    }
}
