package org.thalweg.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.thalweg.finding.Origin;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Tolerance;

class CornersTest {

    private static Corners of(List<Point3> points) {
        return new Corners(
                List.of(new PlaneOutline("p", points, List.of(), Origin.REQUEST, Origin.REQUEST)), Tolerance.DEFAULT);
    }

    /** Corners in heaps about as wide as the tolerance, against the rule followed by hand. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void everyCornerJoinsTheFirstKeptWithinTheTolerance(long seed) {
        Random lot = new Random(seed);
        List<Point3> points = new ArrayList<>();
        for (int i = 0; i < 600; i++) {
            points.add(new Point3(
                    lot.nextInt(4) * 5 + lot.nextInt(6) * 0.0004,
                    lot.nextInt(3) * 4 + lot.nextInt(6) * 0.0004,
                    lot.nextInt(2) * 3 + lot.nextInt(6) * 0.0004));
        }
        Corners corners = of(points);
        List<Point3> kept = new ArrayList<>();
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            order.add(i);
        }
        order.sort(Comparator.comparing(points::get, BY_PLACE));
        for (int i : order) {
            int joins = 0;
            while (joins < kept.size() && kept.get(joins).distance(points.get(i)) > 0.001 + 1e-8) {
                joins++;
            }
            if (joins == kept.size()) {
                kept.add(points.get(i));
            }
            assertThat(corners.joined[i]).isEqualTo(joins);
        }
        assertThat(corners.count).isEqualTo(kept.size());
    }

    private static final Comparator<Point3> BY_PLACE =
            Comparator.comparingDouble(Point3::x).thenComparingDouble(Point3::y).thenComparingDouble(Point3::z);

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, -1.1e9})
    void aCornerThatIsNowhereIsABugOfTheDoor(double x) {
        assertThatIllegalArgumentException().isThrownBy(() -> of(List.of(new Point3(0, 0, 0), new Point3(x, 0, 0))));
    }

    @Test
    void theOrderOfTheCornersChangesNoPlace() {
        Random lot = new Random(4);
        List<Point3> points = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            points.add(new Point3(lot.nextInt(20) * 0.0006, lot.nextInt(20) * 0.0006, 0));
        }
        List<Point3> shuffled = new ArrayList<>(points);
        Collections.shuffle(shuffled, lot);
        Corners one = of(points);
        Corners other = of(shuffled);
        assertThat(other.count).isEqualTo(one.count);
        assertThat(other.x).containsExactly(one.x);
        assertThat(other.y).containsExactly(one.y);
    }

    @Test
    void cornersExactlyAToleranceApartAreOneHoweverTheyAreRounded() {
        for (double at : new double[] {0, 0.1, 0.3, 0.7, 81_234.567, 1_000_000.1}) {
            assertThat(of(List.of(new Point3(at, 0, 0), new Point3(at + 0.001, 0, 0))).count)
                    .isEqualTo(1);
            assertThat(of(List.of(new Point3(at, 0, 0), new Point3(at + 0.00101, 0, 0))).count)
                    .isEqualTo(2);
        }
    }
}
