package org.thalweg.footprint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.thalweg.footprint.RoofOver.Bound;
import org.thalweg.footprint.RoofOver.BoundKind;
import org.thalweg.footprint.RoofOver.Corner;
import org.thalweg.footprint.RoofOver.Slope;
import org.thalweg.footprint.WallSide.Change;
import org.thalweg.units.Pitch;

/**
 * Over an outline without inner corners a place is as high as the lowest of its sides lets it be: each lets it be as high as its
 * own section, drawn square to the wall, is there. A cross gable stands on top, as high as its own two slopes are, up to where its side is higher. An oracle that knows neither eaves nor time; heights are compared at places all over the plan. It holds where all
 * sides are still there at the last change (what its neighbours have covered by then does not come back where they get
 * steeper), and where cross gables end in the slope they stand on: one that lies across a hip keeps the slopes beside it
 * apart, wherever their planes would go.
 */
class ConvexRisingTest {

    private static final int PLANS = 600;

    @Test
    void aPlaceIsAsHighAsTheLowestSectionIsThere() {
        int compared = 0;
        int changed = 0;
        for (int seed = 0; seed < PLANS; seed++) {
            Random random = new Random(seed);
            List<WallSide> ring = madeUp(random);
            if (!(Footprints.roofOver(Footprint.of(ring)) instanceof RoofOver roof)) {
                throw new AssertionError("seed %d: %s".formatted(seed, Footprints.roofOver(Footprint.of(ring))));
            }
            if (!holds(ring, roof)) {
                continue;
            }
            for (int i = 0; i < 40; i++) {
                double x = -10 + 20 * random.nextDouble();
                double y = -8 + 16 * random.nextDouble();
                double expected = height(ring, x, y);
                Optional<Slope> over = roof.slopes().stream()
                        .filter(slope -> Plans.covers(roof, slope, x, y))
                        .findFirst();
                if (expected > 0 && over.isPresent()) {
                    double found = heightOf(roof, over.get(), x, y);
                    // A place on a gable has two heights.
                    double slack = Math.abs(height(ring, x + 1e-5, y) - expected)
                            + Math.abs(height(ring, x, y + 1e-5) - expected);
                    assertThat(found)
                            .as("seed %d at %f %f %s", seed, x, y, over.get())
                            .isCloseTo(expected, within(1e-4 + slack));
                    compared++;
                    changed += over.get().part().equals(new RoofOver.Rises(0)) ? 0 : 1;
                }
            }
        }
        assertThat(compared).isGreaterThan(3 * PLANS);
        assertThat(changed).isGreaterThan(PLANS / 2);
    }

    private static boolean holds(List<WallSide> ring, RoofOver roof) {
        double last = ring.stream()
                .flatMapToDouble(side -> DoubleStream.concat(
                        DoubleStream.of(side.eave()), side.above().stream().mapToDouble(Change::height)))
                .max()
                .orElse(0);
        boolean gablesEnd = roof.slopes().stream()
                .allMatch(slope -> slope.part() instanceof RoofOver.Rises
                        || slope.corners().size() == 3);
        return gablesEnd
                && IntStream.range(0, ring.size())
                        .filter(side -> ring.get(side).cross().isEmpty())
                        .allMatch(side -> top(roof, side) >= last - 1e-6);
    }

    /** How high what rises from a side goes. */
    private static double top(RoofOver roof, int side) {
        double top = 0;
        for (Slope slope : roof.slopes()) {
            for (int i = 0; i < slope.corners().size(); i++) {
                Corner corner = roof.corners().get(slope.corners().get(i));
                boolean along = slope.bounds().get(i).equals(new Bound(BoundKind.GABLE, side));
                top = slope.sides().contains(side) || along ? Math.max(top, corner.height()) : top;
            }
        }
        return top;
    }

    private static List<WallSide> madeUp(Random random) {
        int corners = 3 + random.nextInt(8);
        List<WallSide> ring = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * (i + 0.6 * random.nextDouble()) / corners;
            WallSide side = WallSide.sloped(10 * Math.cos(angle), 8 * Math.sin(angle), pitch(random));
            side = random.nextInt(4) == 0 ? side.eaveAt(random.nextInt(16) / 8.0) : side;
            double height = side.eave();
            // The first side has no gable, so that every roof closes.
            for (int change = random.nextInt(3); change > 0; change--) {
                height += (1 + random.nextInt(8)) / 8.0;
                boolean gable = i > 0 && change == 1 && random.nextBoolean();
                side = side.then(new Change(height, gable ? Optional.empty() : Optional.of(pitch(random))));
            }
            ring.add(side);
        }
        return crossed(ring, random);
    }

    /** Some sides that do not change get a gable over their middle. */
    private static List<WallSide> crossed(List<WallSide> ring, Random random) {
        List<WallSide> crossed = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            WallSide side = ring.get(i);
            WallSide end = ring.get((i + 1) % ring.size());
            crossed.add(side);
            if (side.above().isEmpty() && random.nextBoolean()) {
                // Binary fractions would not make these corners lie in line on the grid: they are put in line.
                double from = 0.2 + 0.2 * random.nextDouble();
                double to = 0.6 + 0.2 * random.nextDouble();
                double dx = end.x() - side.x();
                double dy = end.y() - side.y();
                crossed.add(WallSide.gable(side.x() + from * dx, side.y() + from * dy)
                        .crossing(pitch(random)));
                crossed.add(side.from(side.x() + to * dx, side.y() + to * dy));
            }
        }
        return crossed;
    }

    private static Pitch pitch(Random random) {
        return new Pitch(2 + random.nextInt(16), 12);
    }

    private static double height(List<WallSide> ring, double x, double y) {
        double lowest = Double.MAX_VALUE;
        double gables = 0;
        for (int i = 0; i < ring.size(); i++) {
            double far = Plans.inward(ring, i, x, y);
            if (far <= 0) {
                return 0;
            }
            if (ring.get(i).cross().isPresent()) {
                double height = gable(ring, i, x, y);
                boolean out = height > section(ring.get((i + 1) % ring.size()), far);
                gables = Math.max(gables, out ? height : 0);
            } else {
                lowest = Math.min(lowest, section(ring.get(i), far));
            }
        }
        return Math.max(lowest, gables);
    }

    /** How high a side lets a place be that is so far in. */
    private static double section(WallSide side, double far) {
        double height = side.eave();
        double left = far;
        Pitch pitch = side.pitch().orElseThrow();
        for (Change change : side.above()) {
            double run = (change.height() - height) / pitch.tan();
            if (left < run) {
                return height + left * pitch.tan();
            }
            left -= run;
            height = change.height();
            if (change.pitch().isEmpty()) {
                return Double.MAX_VALUE;
            }
            pitch = change.pitch().get();
        }
        return height + left * pitch.tan();
    }

    /** How high the slopes of a cross gable are over a place. */
    private static double gable(List<WallSide> ring, int gable, double x, double y) {
        WallSide from = ring.get(gable);
        WallSide to = ring.get((gable + 1) % ring.size());
        double length = Math.hypot(to.x() - from.x(), to.y() - from.y());
        double along = ((x - from.x()) * (to.x() - from.x()) + (y - from.y()) * (to.y() - from.y())) / length;
        double eave = ring.get((gable + 1) % ring.size()).eave();
        double far = Math.min(along, length - along);
        return far <= 0 ? 0 : eave + far * from.cross().orElseThrow().tan();
    }

    /** By the plane through its ring. */
    private static double heightOf(RoofOver roof, Slope slope, double x, double y) {
        double[] normal = new double[3];
        Corner first = roof.corners().get(slope.corners().get(0));
        for (int i = 1; i + 1 < slope.corners().size(); i++) {
            Corner b = roof.corners().get(slope.corners().get(i));
            Corner c = roof.corners().get(slope.corners().get(i + 1));
            double[] p = {b.x() - first.x(), b.y() - first.y(), b.height() - first.height()};
            double[] q = {c.x() - first.x(), c.y() - first.y(), c.height() - first.height()};
            normal[0] += p[1] * q[2] - p[2] * q[1];
            normal[1] += p[2] * q[0] - p[0] * q[2];
            normal[2] += p[0] * q[1] - p[1] * q[0];
        }
        return first.height() - (normal[0] * (x - first.x()) + normal[1] * (y - first.y())) / normal[2];
    }
}
