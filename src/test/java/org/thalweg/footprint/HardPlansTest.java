package org.thalweg.footprint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.thalweg.footprint.RoofOver.Corner;
import org.thalweg.footprint.RoofOver.Seam;
import org.thalweg.footprint.RoofOver.SeamKind;
import org.thalweg.units.Pitch;

/** Plans that are known to be hard, drawn for this; that each has a roof means that it has passed every check. */
class HardPlansTest {

    @Test
    void concaveCourtyardOfUnequalPitches() {
        List<WallSide> outline = Plans.pitched(Plans.ring(0, 0, 30, 0, 30, 20, 0, 20), "4:12", "9:12", "6:12", "12:12");
        List<WallSide> yard = Plans.pitched(
                Plans.ring(8, 6, 22, 6, 22, 14, 16, 14, 15, 9, 14, 14, 8, 14),
                "6:12",
                "3:12",
                "8:12",
                "14:12",
                "5:12",
                "7:12",
                "10:12");
        RoofOver roof = Plans.roof(new Footprint(outline, List.of(yard)));
        assertThat(roof.slopes()).hasSize(11);
    }

    @ParameterizedTest
    @ValueSource(ints = {3, 8, 16, 40})
    void aStarWhoseEavesAllMeetAtOnce(int points) {
        List<WallSide> ring = new ArrayList<>();
        for (int i = 0; i < 2 * points; i++) {
            double angle = Math.PI * i / points;
            double radius = i % 2 == 0 ? 10 : 6;
            ring.add(WallSide.sloped(radius * Math.cos(angle), radius * Math.sin(angle), new Pitch(6, 12)));
        }
        assertThat(Plans.roof(ring).slopes()).hasSize(2 * points);
    }

    /**
     * Four wings turned by 27 or by 34 degrees and stretched, so that corners stay whole but lengths of sides are roots of 5 and
     * of 13: their eaves meet in the middle at one instant, which only exact signs can tell.
     */
    @ParameterizedTest
    @CsvSource({"2, 1", "3, 2", "7, 3"})
    void fourTurnedWingsMeetInOnePoint(int p, int q) {
        double[] xy = {4, 0, 8, 0, 8, 4, 12, 4, 12, 8, 8, 8, 8, 12, 4, 12, 4, 8, 0, 8, 0, 4, 4, 4};
        for (int i = 0; i < xy.length; i += 2) {
            double x = xy[i];
            xy[i] = p * x - q * xy[i + 1];
            xy[i + 1] = q * x + p * xy[i + 1];
        }
        RoofOver roof = Plans.roof(Plans.ring(xy));
        assertThat(Plans.inner(roof)).hasSize(5);
        assertThat(roof.ways().exact()).isPositive();
        assertThat(Plans.inner(roof)).anySatisfy(corner -> {
            assertThat(corner.x()).isCloseTo(6 * p - 6 * q, within(1e-12));
            assertThat(corner.y()).isCloseTo(6 * q + 6 * p, within(1e-12));
            assertThat(corner.height()).isCloseTo(Math.hypot(p, q), within(1e-12));
        });
    }

    @Test
    void twoSidesAlmostInLine() {
        for (double off : new double[] {1e-3, 1e-4, 1e-5, 3e-6, 1e-6, 1e-7}) {
            for (int sign : new int[] {1, -1}) {
                for (String pitch : new String[] {"6:12", "6.001:12"}) {
                    List<WallSide> ring = Plans.pitched(
                            Plans.ring(0, 0, 5, sign * off, 10, 0, 10, 4, 0, 4), "6:12", pitch, "6:12", "6:12", "6:12");
                    Rise rise = Footprints.roofOver(Footprint.of(ring));
                    if (off < 2e-6 && !pitch.equals("6:12")) {
                        assertThat(((NoRoof) rise).reason()).isEqualTo(NoRoof.Reason.PITCHES_IN_LINE);
                    } else {
                        assertThat(rise).as("%s %s %s", off, sign, pitch).isInstanceOf(RoofOver.class);
                    }
                }
            }
        }
    }

    @Test
    void cornersAlmostAtOnePlace() {
        for (double apart : new double[] {1e-3, 1e-4, 1e-5, 1e-6, 1e-7}) {
            RoofOver roof = Plans.roof(Plans.ring(0, 0, 10, 0, 10, 4, 10 - apart, 4 + apart / 3, 0, 4));
            assertThat(roof.slopes()).hasSize(apart < 5e-6 ? 4 : 5);
            assertThat(Plans.heightAt(
                            Footprint.of(Plans.ring(0, 0, 10, 0, 10, 4, 10 - apart, 4 + apart / 3, 0, 4)),
                            roof,
                            5,
                            1.5))
                    .isCloseTo(0.75, within(1e-6));
        }
    }

    /** 31 corners, walls square to each other, three courtyards, corners in line; far from the origin of its map. */
    @Test
    void aPlanOf31CornersWithThreeCourtyardsFarAway() {
        double[] xy = {
            0, 0, 10, 0, 20, 0, 30, 0, 30, 8, 34, 8, 34, 14, 30, 14, 30, 22, 24, 22, 24, 26, 20, 26, 16, 26, 16, 22, 6,
            22, 0, 22, 0, 12, 0, 6
        };
        Footprint plan = new Footprint(
                moved(xy),
                List.of(
                        moved(4, 4, 8, 4, 8, 8, 4, 8),
                        moved(12, 6, 18, 6, 18, 12, 15, 12, 12, 12),
                        moved(22, 10, 26, 10, 26, 16, 22, 16)));
        assertThat(plan.sides()).isEqualTo(31);
        RoofOver roof = Plans.roof(plan);
        assertThat(roof.slopes().stream()
                        .flatMap(slope -> slope.sides().stream())
                        .sorted()
                        .toList())
                .isEqualTo(Stream.iterate(0, side -> side + 1).limit(31).toList());
    }

    private static List<WallSide> moved(double... xy) {
        double[] far = xy.clone();
        for (int i = 0; i < far.length; i++) {
            far[i] += i % 2 == 0 ? 1_612_345.25 : 5_012_345.5;
        }
        return Plans.ring(far);
    }

    @ParameterizedTest
    @ValueSource(ints = {420, 2000})
    void outlinesOfManyCorners(int corners) {
        RoofOver roof = Plans.roof(Plans.star(new Random(1), corners, 30, 50, new Pitch(6, 12)));
        assertThat(roof.slopes()).hasSize(corners);
    }

    /** 250 teeth turned by a tangent of 3/4, every side flatter from 1 cm on: no two lengths of sides are kin on the grid. */
    @Test
    void aTurnedCombWhoseSidesAllChangeIsWithinItsBound() {
        List<WallSide> ring = new ArrayList<>(List.of(turned(0, 0), turned(125, 0)));
        for (int tooth = 249; tooth >= 0; tooth--) {
            double x = tooth / 2.0;
            ring.addAll(List.of(turned(x + 0.5, 10), turned(x + 0.4, 10), turned(x + 0.4, 5), turned(x, 5)));
        }
        assertThat(Footprints.roofOver(Footprint.of(ring))).isInstanceOf(RoofOver.class);
    }

    private static WallSide turned(double x, double y) {
        return WallSide.sloped(0.8 * x - 0.6 * y, 0.6 * x + 0.8 * y, new Pitch(6, 12))
                .then(new WallSide.Change(0.01, Optional.of(new Pitch(5, 12))));
    }

    static Stream<String> rows() throws IOException {
        return Files.readAllLines(Path.of("src/test/resources/published/unequal-pitch-hip-valley.csv")).stream()
                .filter(line -> Character.isDigit(line.charAt(0)));
    }

    /** The hip at an outer corner and the valley at an inner one, of two pitches, as printed. */
    @ParameterizedTest
    @MethodSource("rows")
    void hipsAndValleysOfUnequalPitchesRunAsPrinted(String line) {
        String[] row = line.split(",", 7);
        Pitch one = new Pitch(Double.parseDouble(row[0]), 12);
        Pitch two = new Pitch(Double.parseDouble(row[1]), 12);
        double corner = Double.parseDouble(row[2]);
        double plan = Double.parseDouble(row[3]);
        double slope = Double.parseDouble(row[5]);
        double turn = Math.toRadians(180 - corner);
        // From (0, 0) along x to (20, 0), then turned left by 180° less the corner, then home.
        double[] end = {20 + 20 * Math.cos(turn), 20 * Math.sin(turn)};
        RoofOver hip = Plans.roof(List.of(
                WallSide.sloped(0, 0, one),
                WallSide.sloped(20, 0, two),
                WallSide.sloped(end[0], end[1], one),
                WallSide.sloped(0, 30, two)));
        runs(hip, SeamKind.HIP, 0, 1, 20, 0, 180 - plan, slope);
        // The same two walls seen from behind: the roof on their other side meets in a valley.
        RoofOver valley = Plans.roof(List.of(
                WallSide.sloped(end[0], end[1], two),
                WallSide.sloped(20, 0, one),
                WallSide.sloped(0, 0, two),
                WallSide.sloped(0, -60, one),
                WallSide.sloped(80, -60, two),
                WallSide.sloped(80, end[1], one)));
        runs(valley, SeamKind.VALLEY, 0, 1, 20, 0, -plan, slope);
    }

    private static void runs(
            RoofOver roof, SeamKind kind, int left, int right, double x, double y, double degrees, double slope) {
        Seam seam = roof.seams().stream()
                .filter(one -> one.left() == left && one.right() == right)
                .filter(one -> near(roof.corners().get(one.from()), x, y)
                        || near(roof.corners().get(one.to()), x, y))
                .findFirst()
                .orElseThrow();
        assertThat(seam.kind()).isEqualTo(kind);
        Corner from = roof.corners().get(seam.from());
        Corner to = roof.corners().get(seam.to());
        Corner low = near(from, x, y) ? from : to;
        Corner high = low == from ? to : from;
        double run = Math.hypot(high.x() - low.x(), high.y() - low.y());
        assertThat(Math.toDegrees(Math.atan2(high.y() - low.y(), high.x() - low.x())))
                .isCloseTo(degrees, within(2e-5));
        assertThat(Math.toDegrees(Math.atan(high.height() / run))).isCloseTo(slope, within(2e-5));
    }

    private static boolean near(Corner corner, double x, double y) {
        return Math.hypot(corner.x() - x, corner.y() - y) < 1e-6;
    }
}
