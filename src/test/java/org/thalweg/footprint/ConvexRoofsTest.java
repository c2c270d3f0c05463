package org.thalweg.footprint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.thalweg.footprint.RoofOver.Corner;
import org.thalweg.footprint.RoofOver.Slope;
import org.thalweg.units.Pitch;

/**
 * Over an outline without inner corners the roof is the lowest of all planes everywhere, whatever the pitches. So each slope is
 * the outline cut by one straight line for every other plane: an oracle that knows neither eaves nor time.
 */
class ConvexRoofsTest {

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void everySlopeIsWhereItsPlaneIsTheLowest(boolean onePitch) {
        for (int seed = 0; seed < 300; seed++) {
            Random random = new Random(seed);
            List<WallSide> ring = convex(random, 3 + random.nextInt(25), onePitch);
            RoofOver roof = Plans.roof(ring);
            for (int side = 0; side < ring.size(); side++) {
                int own = side;
                double area = roof.slopes().stream()
                        .filter(slope -> slope.sides().contains(own))
                        .mapToDouble(slope -> KnownRoofsTest.planArea(roof, slope))
                        .sum();
                List<double[]> lowest = lowest(ring, side);
                assertThat(area).as("seed %d side %d", seed, side).isCloseTo(area(lowest), within(1e-4));
                Slope slope = roof.slopes().stream()
                        .filter(one -> one.sides().contains(own))
                        .findFirst()
                        .orElseThrow();
                for (int number : slope.corners()) {
                    Corner corner = roof.corners().get(number);
                    for (int other = 0; other < ring.size(); other++) {
                        // Walls are snapped to a grid of 1 µm, and the slope over a short wall turns with it.
                        assertThat(corner.height())
                                .isLessThan(
                                        Plans.inward(ring, other, corner.x(), corner.y()) * tan(ring, other) + 1e-3);
                    }
                }
            }
        }
    }

    /** Corners on a circle, far enough apart that the grid turns no wall by more than a thousandth. */
    private static List<WallSide> convex(Random random, int corners, boolean onePitch) {
        List<WallSide> ring = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * (i + 0.8 * random.nextDouble()) / corners;
            double rise = onePitch ? 7 : 2 + random.nextInt(16);
            ring.add(WallSide.sloped(10 * Math.cos(angle), 8 * Math.sin(angle), new Pitch(rise, 12)));
        }
        return ring;
    }

    private static double tan(List<WallSide> ring, int side) {
        return ring.get(side).pitch().orElseThrow().tan();
    }

    private static List<double[]> lowest(List<WallSide> ring, int side) {
        List<double[]> left = new ArrayList<>();
        ring.forEach(corner -> left.add(new double[] {corner.x(), corner.y()}));
        for (int other = 0; other < ring.size(); other++) {
            if (other == side) {
                continue;
            }
            List<double[]> kept = new ArrayList<>();
            for (int i = 0; i < left.size(); i++) {
                double[] a = left.get(i);
                double[] b = left.get((i + 1) % left.size());
                double above = under(ring, side, other, a);
                double next = under(ring, side, other, b);
                if (above >= 0) {
                    kept.add(a);
                }
                if (above > 0 && next < 0 || above < 0 && next > 0) {
                    double part = above / (above - next);
                    kept.add(new double[] {a[0] + part * (b[0] - a[0]), a[1] + part * (b[1] - a[1])});
                }
            }
            left.clear();
            left.addAll(kept);
        }
        return left;
    }

    /** By how much the plane of a side is under that of another. */
    private static double under(List<WallSide> ring, int side, int other, double[] at) {
        return Plans.inward(ring, other, at[0], at[1]) * tan(ring, other)
                - Plans.inward(ring, side, at[0], at[1]) * tan(ring, side);
    }

    private static double area(List<double[]> ring) {
        double twice = 0;
        for (int i = 0; i < ring.size(); i++) {
            double[] a = ring.get(i);
            double[] b = ring.get((i + 1) % ring.size());
            twice += a[0] * b[1] - b[0] * a[1];
        }
        return twice / 2;
    }
}
