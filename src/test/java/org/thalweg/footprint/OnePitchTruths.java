package org.thalweg.footprint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.thalweg.footprint.RoofOver.Corner;
import org.thalweg.footprint.RoofOver.Seam;
import org.thalweg.footprint.RoofOver.SeamKind;
import org.thalweg.footprint.RoofOver.Slope;

/**
 * What is true of any roof of one pitch, by a few lines of geometry and no roof to compare with.
 *
 * <ul>
 *   <li>Every side has its slope; sides share one only if they lie in one line.
 *   <li>True area is plan area over the cosine of the pitch, of every slope and of the whole plan.
 *   <li>From every corner of the plan one line goes up: a valley from an inner corner, a hip from an outer one. It halves the
 *       corner, so it is as far from either side as the sine of half the inner angle times its run, and slopes
 *       atan(tan(pitch) · sin(half the inner angle)).
 *   <li>Any seam of two slopes halves their eaves, and slopes atan(tan(pitch) · cos(half the angle between the directions in
 *       which the two rise)).
 * </ul>
 */
final class OnePitchTruths {

    /** Metres: corners are put on a grid of about 1 µm, one step off at most where a wall was made straight. */
    private static final double GRID = 3e-6;
    /** Seams this short may point anywhere, because of the grid. */
    private static final double SHORT = 1e-4;

    private static final double LEVEL = Math.tan(Math.toRadians(2));

    /** A side with the roof to its left. */
    private record Side(double x, double y, double endX, double endY) {

        double length() {
            return Math.hypot(endX - x, endY - y);
        }

        /** Above 0 if another turns left from this one: the sine of the turn. */
        double turnTo(Side next) {
            return ((endX - x) * (next.endY - next.y) - (endY - y) * (next.endX - next.x)) / length() / next.length();
        }

        double cosine(Side other) {
            return ((endX - x) * (other.endX - other.x) + (endY - y) * (other.endY - other.y))
                    / length()
                    / other.length();
        }

        double off(double placeX, double placeY) {
            return ((endX - x) * (placeY - y) - (endY - y) * (placeX - x)) / length();
        }
    }

    private final Footprint plan;
    private final RoofOver roof;
    private final double tan;
    private final List<Side> sides = new ArrayList<>();
    /** The slope of every side, and the line of every slope. */
    private final int[] slopeOf;

    private final List<Side> lines = new ArrayList<>();

    private OnePitchTruths(Footprint plan, RoofOver roof) {
        this.plan = plan;
        this.roof = roof;
        tan = plan.outline().get(0).pitch().orElseThrow().tan();
        for (List<WallSide> ring : plan.rings()) {
            boolean left = area(ring) > 0 == (ring == plan.outline());
            for (int i = 0; i < ring.size(); i++) {
                WallSide a = ring.get(i);
                WallSide b = ring.get((i + 1) % ring.size());
                sides.add(left ? new Side(a.x(), a.y(), b.x(), b.y()) : new Side(b.x(), b.y(), a.x(), a.y()));
            }
        }
        slopeOf = new int[sides.size()];
    }

    /** How many corners and how many seams were looked at. */
    record Looked(int corners, int seams) {}

    static Looked hold(Footprint plan, RoofOver roof) {
        OnePitchTruths truths = new OnePitchTruths(plan, roof);
        truths.everySideHasItsSlope();
        truths.areas();
        return new Looked(truths.corners(), truths.seams());
    }

    private void everySideHasItsSlope() {
        List<Integer> found = new ArrayList<>();
        for (int number = 0; number < roof.slopes().size(); number++) {
            Slope slope = roof.slopes().get(number);
            found.addAll(slope.sides());
            assertThat(slope.pitch().tan()).isEqualTo(tan);
            Side line = line(slope.sides());
            lines.add(line);
            for (int side : slope.sides()) {
                slopeOf[side] = number;
                Side one = sides.get(side);
                assertThat(Math.max(Math.abs(line.off(one.x, one.y)), Math.abs(line.off(one.endX, one.endY))))
                        .as("sides %s are in line", slope.sides())
                        .isLessThan(GRID);
                assertThat(line.cosine(one)).as("side %d", side).isPositive();
            }
        }
        assertThat(found).as("sides of slopes").hasSameSizeAs(sides).doesNotHaveDuplicates();
    }

    /** From the first end to the last end of sides in line: what a short one says of their line is blurred. */
    private Side line(List<Integer> numbers) {
        Side first = sides.get(numbers.get(0));
        Side low = first;
        Side high = first;
        for (int number : numbers) {
            Side one = sides.get(number);
            low = along(first, one) < along(first, low) ? one : low;
            high = along(first, one) > along(first, high) ? one : high;
        }
        return new Side(low.x, low.y, high.endX, high.endY);
    }

    private static double along(Side first, Side other) {
        return (first.endX - first.x) * (other.x - first.x) + (first.endY - first.y) * (other.y - first.y);
    }

    private void areas() {
        double sum = 0;
        double planArea = 0;
        for (Side side : sides) {
            planArea += ((side.x - sides.get(0).x) * (side.endY - side.y)
                            - (side.y - sides.get(0).y) * (side.endX - side.x))
                    / 2;
        }
        for (Slope slope : roof.slopes()) {
            double area = trueArea(slope);
            sum += area;
            assertThat(area)
                    .as("area of %s", slope.sides())
                    .isCloseTo(KnownRoofsTest.planArea(roof, slope) * Math.hypot(1, tan), within(1e-7));
        }
        // A micrometre along all walls.
        double walls = sides.stream().mapToDouble(Side::length).sum();
        assertThat(sum).as("true area").isCloseTo(planArea * Math.hypot(1, tan), within(GRID * walls * (1 + tan)));
    }

    private double trueArea(Slope slope) {
        double[] twice = new double[3];
        Corner first = roof.corners().get(slope.corners().get(0));
        for (int i = 1; i + 1 < slope.corners().size(); i++) {
            Corner b = roof.corners().get(slope.corners().get(i));
            Corner c = roof.corners().get(slope.corners().get(i + 1));
            double[] p = {b.x() - first.x(), b.y() - first.y(), b.height()};
            double[] q = {c.x() - first.x(), c.y() - first.y(), c.height()};
            twice[0] += p[1] * q[2] - p[2] * q[1];
            twice[1] += p[2] * q[0] - p[0] * q[2];
            twice[2] += p[0] * q[1] - p[1] * q[0];
        }
        return Math.hypot(Math.hypot(twice[0], twice[1]), twice[2]) / 2;
    }

    private int corners() {
        int looked = 0;
        int first = 0;
        for (List<WallSide> ring : plan.rings()) {
            int n = ring.size();
            for (int i = 0; i < n; i++) {
                int one = first + i;
                int other = first + (i + 1) % n;
                // In a ring that was turned round, the side after the corner comes first.
                boolean left = sides.get(one).endX == sides.get(other).x && sides.get(one).endY == sides.get(other).y;
                if (slopeOf[one] != slopeOf[other]) {
                    corner(left ? one : other, left ? other : one);
                    looked++;
                }
            }
            first += n;
        }
        return looked;
    }

    private void corner(int before, int after) {
        Side in = sides.get(before);
        Side out = sides.get(after);
        String name = "corner at %f, %f".formatted(out.x, out.y);
        List<Seam> up = roof.seams().stream()
                .filter(seam -> isAt(seam.from(), out) || isAt(seam.to(), out))
                .toList();
        assertThat(up).as(name).hasSize(1);
        Seam seam = up.get(0);
        assertThat(List.of(seam.left(), seam.right()))
                .as(name)
                .containsExactlyInAnyOrder(slopeOf[before], slopeOf[after]);
        boolean inner = in.turnTo(out) < 0;
        double inside = Math.PI - Math.atan2(in.turnTo(out), in.cosine(out));
        double slope = tan * Math.sin(inside / 2);
        double blur = tan * GRID * (1 / in.length() + 1 / out.length());
        if (Math.abs(slope - LEVEL) > blur) {
            SeamKind outer = slope > LEVEL ? SeamKind.HIP : SeamKind.RIDGE;
            assertThat(seam.kind()).as(name).isEqualTo(inner ? SeamKind.VALLEY : outer);
        }
        if (run(seam) > SHORT) {
            assertThat(slope(seam)).as(name).isCloseTo(slope, within(blur + tan * GRID / run(seam)));
        }
    }

    private boolean isAt(int number, Side side) {
        Corner corner = roof.corners().get(number);
        return corner.height() == 0 && Math.hypot(corner.x() - side.x, corner.y() - side.y) < GRID;
    }

    private int seams() {
        int looked = 0;
        for (Seam seam : roof.seams()) {
            if (run(seam) > SHORT) {
                looked++;
                Side left = lines.get(seam.left());
                Side right = lines.get(seam.right());
                double cosine = left.cosine(right);
                double slope = tan * Math.sqrt(Math.max(0, 1 + cosine) / 2);
                double blur = tan * GRID * (1 / left.length() + 1 / right.length() + 1 / run(seam));
                assertThat(slope(seam)).as("%s of %s", seam, plan).isCloseTo(slope, within(blur));
                assertThat(seam.kind()).isNotEqualTo(SeamKind.PITCH_BREAK);
            }
        }
        return looked;
    }

    private double run(Seam seam) {
        Corner from = roof.corners().get(seam.from());
        Corner to = roof.corners().get(seam.to());
        return Math.hypot(to.x() - from.x(), to.y() - from.y());
    }

    private double slope(Seam seam) {
        double from = roof.corners().get(seam.from()).height();
        double to = roof.corners().get(seam.to()).height();
        return Math.abs(to - from) / run(seam);
    }

    private static double area(List<WallSide> ring) {
        double twice = 0;
        for (int i = 0; i < ring.size(); i++) {
            WallSide a = ring.get(i);
            WallSide b = ring.get((i + 1) % ring.size());
            twice += (a.x() - ring.get(0).x()) * (b.y() - ring.get(0).y())
                    - (b.x() - ring.get(0).x()) * (a.y() - ring.get(0).y());
        }
        return twice / 2;
    }
}
