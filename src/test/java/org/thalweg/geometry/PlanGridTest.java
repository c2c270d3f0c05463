package org.thalweg.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlanGridTest {

    /** Against looking at every place. Spread evenly, in a row, in a column, in a heap with one far off. */
    @ParameterizedTest(name = "{0} places, seed {1}, {2}")
    @CsvSource({
        "5, 1, even",
        "24, 2, even",
        "25, 3, even",
        "400, 4, even",
        "400, 5, row",
        "400, 6, column",
        "400, 7, heap",
        "400, 8, coarse",
        "30, 9, one"
    })
    void everyPlaceBesideALineIsFoundOnce(int count, long seed, String spread) {
        Random lot = new Random(seed);
        double[] x = new double[count];
        double[] y = new double[count];
        for (int i = 0; i < count; i++) {
            x[i] = spread.equals("column") || spread.equals("one") ? 3 : lot.nextDouble() * 100;
            y[i] = spread.equals("row") || spread.equals("one") ? -4 : lot.nextDouble() * 30;
            if (spread.equals("heap") && i > 0) {
                x[i] /= 1e4;
                y[i] /= 1e4;
            }
            if (spread.equals("coarse")) {
                x[i] = Math.rint(x[i] / 10) * 10;
                y[i] = Math.rint(y[i] / 10) * 10;
            }
        }
        PlanGrid grid = new PlanGrid(x, y, count);
        int[] found = new int[count];
        for (int i = 0; i < 300; i++) {
            int a = lot.nextInt(count);
            int b = i % 3 == 0 ? a : lot.nextInt(count);
            double reach = i % 2 == 0 ? 0.001 : 2;
            int near = grid.along(x[a], y[a], x[b], y[b], reach, found);
            Set<Integer> places = new HashSet<>();
            Arrays.stream(found, 0, near).forEach(places::add);
            assertThat(places).hasSize(near);
            for (int p = 0; p < count; p++) {
                if (distance(x[p], y[p], x[a], y[a], x[b], y[b]) <= reach) {
                    assertThat(places).contains(p);
                }
            }
        }
    }

    private static double distance(double px, double py, double ax, double ay, double bx, double by) {
        double dx = bx - ax;
        double dy = by - ay;
        double square = dx * dx + dy * dy;
        double t = square == 0 ? 0 : Math.max(0, Math.min(1, ((px - ax) * dx + (py - ay) * dy) / square));
        return Math.hypot(px - ax - t * dx, py - ay - t * dy);
    }
}
