package org.thalweg.roof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Refused;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Ring;
import org.thalweg.geometry.Tolerance;
import org.thalweg.units.Pitch;

/** Whatever is drawn is read as a good roof or refused with reasons; nothing else ever happens. */
class AnythingDrawnTest {

    /**
     * Planes over a coarse grid, so that they touch, lie over each other and share sides often; their heights follow one
     * of a few slopes, so that many can be read; {@code jitter} in tolerances.
     */
    @ParameterizedTest(name = "{1} planes, corners put {2} tolerances out, seed {0}")
    @CsvSource({"1, 2, 0", "2, 3, 0.4", "3, 6, 0", "4, 6, 0.7", "5, 12, 0", "6, 12, 1.5", "7, 40, 0.2"})
    void whateverIsDrawnIsReadOrRefused(long seed, int planes, double jitter) {
        Random lot = new Random(seed);
        int read = 0;
        int refused = 0;
        for (int i = 0; i < 3_000; i++) {
            try {
                assertGood(Roofs.read(survey(lot, planes, jitter)));
                read++;
            } catch (Refused e) {
                assertThat(e.refusals()).isNotEmpty();
                refused++;
            }
        }
        assertThat(read).isGreaterThan(20);
        assertThat(refused).isGreaterThan(20);
    }

    private static RoofSurvey survey(Random lot, int planes, double jitter) {
        List<PlaneOutline> outlines = new ArrayList<>();
        int bad = lot.nextInt(4);
        for (int p = 0; p < planes; p++) {
            Origin at = Origin.REQUEST.at("planes").at(p);
            double alongX = lot.nextInt(3) * 0.5 - 0.5;
            double alongY = lot.nextInt(3) * 0.5 - 0.5;
            int x = lot.nextInt(4);
            int y = lot.nextInt(4);
            int width = 1 + lot.nextInt(4);
            int depth = 1 + lot.nextInt(4);
            List<Point3> ring = new ArrayList<>();
            int[][] square = {{x, y}, {x + width, y}, {x + width, y + depth}, {x, y + depth}};
            for (int[] corner : square) {
                boolean astray = p < bad && lot.nextInt(6) == 0;
                double cx = corner[0] + (astray ? lot.nextInt(5) - 2 : 0) + out(lot, jitter);
                double cy = corner[1] + (astray ? lot.nextInt(5) - 2 : 0) + out(lot, jitter);
                ring.add(new Point3(cx, cy, alongX * cx + alongY * cy + out(lot, jitter)));
            }
            List<PlaneOutline.OpeningOutline> openings = new ArrayList<>();
            if (lot.nextInt(5) == 0) {
                openings.add(new PlaneOutline.OpeningOutline("hole", hole(x, y, alongX, alongY), at.at("hole")));
            }
            outlines.add(new PlaneOutline("p" + p, ring, openings, at, at.at("outline")));
        }
        return new RoofSurvey(outlines, List.of(), Tolerance.DEFAULT, new Pitch(0.25, 12), Source.COMMON_PRACTICE);
    }

    private static double out(Random lot, double jitter) {
        return (lot.nextDouble() - 0.5) * 2 * jitter * Tolerance.DEFAULT.metres();
    }

    private static List<Point3> hole(int x, int y, double alongX, double alongY) {
        List<Point3> hole = new ArrayList<>();
        for (double[] corner : new double[][] {{0.25, 0.25}, {0.75, 0.25}, {0.5, 1}}) {
            double cx = x + corner[0];
            double cy = y + corner[1];
            hole.add(new Point3(cx, cy, alongX * cx + alongY * cy));
        }
        return hole;
    }

    private static void assertGood(Roof roof) {
        for (Plane plane : roof.planes()) {
            assertThat(plane.area().squareMetres()).isPositive();
            assertThat(plane.slope().inDegrees()).isBetween(0.0, 89.0);
            assertGood(plane.shape().outer(), roof);
            assertThat(plane.shape().outer().signedArea()).isPositive();
            for (Ring opening : plane.shape().openings()) {
                assertGood(opening, roof);
                assertThat(opening.signedArea()).isNegative();
            }
        }
        for (Edge edge : roof.edges()) {
            assertThat(edge.length().metres()).isPositive();
            assertThat(edge.slope().inDegrees()).isBetween(0.0, 90.0);
            assertThat(edge.bend().inDegrees()).isBetween(0.0, 180.0);
        }
        assertThat(roof.edges().stream().map(Edge::id)).doesNotHaveDuplicates();
    }

    private static void assertGood(Ring ring, Roof roof) {
        assertThat(ring.size()).isGreaterThanOrEqualTo(3);
        for (int i = 0; i < ring.size(); i++) {
            assertThat(ring.across(i)).isNotNegative().isFinite();
            assertThat(ring.up(i)).isNotNegative().isFinite();
            assertThat(ring.tag(i)).isBetween(0, roof.edges().size() - 1);
            int next = ring.next(i);
            assertThat(Math.hypot(ring.across(next) - ring.across(i), ring.up(next) - ring.up(i)))
                    .isGreaterThan(roof.tolerance().metres() / 2);
        }
    }
}
