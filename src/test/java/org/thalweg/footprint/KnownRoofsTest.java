package org.thalweg.footprint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.thalweg.footprint.NoRoof.Reason;
import org.thalweg.footprint.RoofOver.Corner;
import org.thalweg.footprint.RoofOver.Seam;
import org.thalweg.footprint.RoofOver.SeamKind;
import org.thalweg.footprint.RoofOver.Slope;
import org.thalweg.units.Pitch;

/** Roofs that anyone can draw with a ruler: corners worked out by hand. Pitch 6:12, so height is half the run. */
class KnownRoofsTest {

    @Test
    void aHipRoofHasARidgeOverTheMiddle() {
        RoofOver roof = Plans.roof(Plans.ring(0, 0, 10, 0, 10, 4, 0, 4));
        assertThat(Plans.inner(roof)).containsExactlyInAnyOrder(new Corner(2, 2, 1), new Corner(8, 2, 1));
        assertThat(kinds(roof)).isEqualTo(Map.of(SeamKind.RIDGE, 1L, SeamKind.HIP, 4L));
    }

    @Test
    void aSquareHasAPeak() {
        RoofOver roof = Plans.roof(Plans.ring(0, 0, 4, 0, 4, 4, 0, 4));
        assertThat(Plans.inner(roof)).containsExactly(new Corner(2, 2, 1));
        assertThat(kinds(roof)).isEqualTo(Map.of(SeamKind.HIP, 4L));
    }

    @Test
    void wingsOfOneWidthShareAPeakOfTheirRidges() {
        RoofOver roof = Plans.roof(Plans.ring(0, 0, 10, 0, 10, 4, 4, 4, 4, 9, 0, 9));
        assertThat(Plans.inner(roof))
                .containsExactlyInAnyOrder(new Corner(8, 2, 1), new Corner(2, 2, 1), new Corner(2, 7, 1));
        assertThat(kinds(roof)).isEqualTo(Map.of(SeamKind.RIDGE, 2L, SeamKind.HIP, 5L, SeamKind.VALLEY, 1L));
    }

    @Test
    void aNarrowWingRunsItsRidgeIntoTheSlopeOfTheWideOne() {
        RoofOver roof = Plans.roof(Plans.ring(0, 0, 12, 0, 12, 6, 8, 6, 8, 11, 4, 11, 4, 6, 0, 6));
        assertThat(Plans.inner(roof))
                .containsExactlyInAnyOrder(
                        new Corner(3, 3, 1.5), new Corner(9, 3, 1.5), new Corner(6, 4, 1), new Corner(6, 9, 1));
        // Left and right of the wing the eave is in one line: one slope of two sides.
        assertThat(roof.slopes().stream().map(Slope::sides))
                .contains(List.of(2, 6))
                .hasSize(7);
        assertThat(kinds(roof)).isEqualTo(Map.of(SeamKind.RIDGE, 2L, SeamKind.HIP, 6L, SeamKind.VALLEY, 2L));
    }

    @Test
    void threeWingsRoundAYard() {
        RoofOver roof = Plans.roof(Plans.ring(0, 0, 12, 0, 12, 10, 8, 10, 8, 4, 4, 4, 4, 10, 0, 10));
        assertThat(Plans.inner(roof))
                .containsExactlyInAnyOrder(
                        new Corner(2, 2, 1), new Corner(10, 2, 1), new Corner(2, 8, 1), new Corner(10, 8, 1));
        assertThat(kinds(roof)).isEqualTo(Map.of(SeamKind.RIDGE, 3L, SeamKind.HIP, 6L, SeamKind.VALLEY, 2L));
    }

    @Test
    void fourWingsMeetInOnePoint() {
        RoofOver roof =
                Plans.roof(Plans.ring(4, 0, 8, 0, 8, 4, 12, 4, 12, 8, 8, 8, 8, 12, 4, 12, 4, 8, 0, 8, 0, 4, 4, 4));
        assertThat(Plans.inner(roof))
                .containsExactlyInAnyOrder(
                        new Corner(6, 6, 1),
                        new Corner(6, 2, 1),
                        new Corner(6, 10, 1),
                        new Corner(2, 6, 1),
                        new Corner(10, 6, 1));
        assertThat(kinds(roof)).isEqualTo(Map.of(SeamKind.RIDGE, 4L, SeamKind.HIP, 8L, SeamKind.VALLEY, 4L));
    }

    @Test
    void aCourtyardInTheMiddleHasARidgeAllRound() {
        RoofOver roof = Plans.roof(
                new Footprint(Plans.ring(0, 0, 12, 0, 12, 12, 0, 12), List.of(Plans.ring(4, 4, 8, 4, 8, 8, 4, 8))));
        assertThat(Plans.inner(roof))
                .containsExactlyInAnyOrder(
                        new Corner(2, 2, 1), new Corner(10, 2, 1), new Corner(10, 10, 1), new Corner(2, 10, 1));
        assertThat(kinds(roof)).isEqualTo(Map.of(SeamKind.RIDGE, 4L, SeamKind.HIP, 4L, SeamKind.VALLEY, 4L));
    }

    @Test
    void slopesRunThroughToGables() {
        RoofOver roof =
                Plans.roof(Plans.pitched(Plans.ring(0, 0, 10, 0, 10, 4, 0, 4), "6:12", "gable", "6:12", "gable"));
        assertThat(Plans.inner(roof)).containsExactlyInAnyOrder(new Corner(0, 2, 1), new Corner(10, 2, 1));
        assertThat(roof.slopes().stream().map(Slope::sides)).containsExactly(List.of(0), List.of(2));
        assertThat(kinds(roof)).isEqualTo(Map.of(SeamKind.RIDGE, 1L));
    }

    @Test
    void theRidgeOfAGableRoofLeansToTheSteeperSlope() {
        RoofOver roof =
                Plans.roof(Plans.pitched(Plans.ring(0, 0, 10, 0, 10, 4, 0, 4), "6:12", "gable", "18:12", "gable"));
        // 0.5 · 3 m = 1.5 · 1 m.
        assertThat(Plans.inner(roof)).containsExactlyInAnyOrder(new Corner(0, 3, 1.5), new Corner(10, 3, 1.5));
    }

    @Test
    void oneSlopeBetweenThreeGablesIsAShed() {
        RoofOver roof =
                Plans.roof(Plans.pitched(Plans.ring(0, 0, 10, 0, 10, 4, 0, 4), "6:12", "gable", "gable", "gable"));
        assertThat(roof.slopes()).hasSize(1);
        assertThat(Plans.inner(roof)).containsExactlyInAnyOrder(new Corner(10, 4, 2), new Corner(0, 4, 2));
    }

    @Test
    void aWingWithAGableRunsItsRidgeIntoTheSlope() {
        RoofOver roof = Plans.roof(Plans.pitched(
                Plans.ring(0, 0, 12, 0, 12, 6, 8, 6, 8, 11, 4, 11, 4, 6, 0, 6),
                "6:12",
                "gable",
                "6:12",
                "6:12",
                "gable",
                "6:12",
                "6:12",
                "gable"));
        assertThat(Plans.inner(roof))
                .containsExactlyInAnyOrder(
                        new Corner(0, 3, 1.5), new Corner(12, 3, 1.5), new Corner(6, 4, 1), new Corner(6, 11, 1));
        assertThat(kinds(roof)).isEqualTo(Map.of(SeamKind.RIDGE, 2L, SeamKind.VALLEY, 2L));
    }

    /**
     * Lower pitch wins. A narrow wing with walls of 6:12 to the left and 12:12 to the right, and a main eave of 12:12 to the
     * left of it and 6:12 to the right, all by hand: where the wing's slopes have met, at 1 m, the main eaves left and right
     * are in one line if the valleys end at one place.
     */
    @Test
    void theFlatterOfTwoEavesInLineGoesOnOverTheSteeper() {
        // Left eave: 12:12 from y = 5, right eave: 6:12 from y = 6. At height 1 both are at y = 4; the wing, 4 m wide
        // with
        // slopes of 6:12, has its ridge at x = 6 and height 1. There the flatter eave goes on over the steeper.
        RoofOver roof = Plans.roof(Plans.pitched(
                Plans.ring(0, 0, 12, 0, 12, 6, 8, 6, 8, 11, 4, 11, 4, 5, 0, 5),
                "6:12",
                "6:12",
                "6:12",
                "6:12",
                "6:12",
                "6:12",
                "12:12",
                "6:12"));
        Seam broken = roof.seams().stream()
                .filter(seam -> seam.kind() == SeamKind.PITCH_BREAK)
                .findFirst()
                .orElseThrow();
        assertThat(List.of(roof.corners().get(broken.from()), roof.corners().get(broken.to())))
                .containsExactlyInAnyOrder(new Corner(6, 4, 1), new Corner(2, 4, 1));
        assertThat(roof.slopes().get(broken.left()).sides()).containsExactly(2);
        assertThat(roof.slopes().get(broken.right()).sides()).containsExactly(6);
        assertThat(roof.slopes().stream()
                        .mapToDouble(slope -> planArea(roof, slope))
                        .sum())
                .isCloseTo(12 * 6 - 4 + 4 * 5, within(1e-9));
    }

    @Test
    void sidesInLineOfOnePitchAreOneSlope() {
        RoofOver roof = Plans.roof(Plans.ring(0, 0, 5, 0, 10, 0, 10, 4, 0, 4));
        assertThat(roof.slopes().stream().map(Slope::sides))
                .containsExactly(List.of(0, 1), List.of(2), List.of(3), List.of(4));
        assertThat(Plans.inner(roof)).containsExactlyInAnyOrder(new Corner(2, 2, 1), new Corner(8, 2, 1));
    }

    @Test
    void whatIsNoPlanIsRefusedWithItsReason() {
        List<WallSide> house = Plans.ring(0, 0, 10, 0, 10, 8, 0, 8);
        assertThat(Plans.refused(Plans.ring(0, 0, 10, 0), List.of())).isEqualTo(Reason.TOO_FEW_CORNERS);
        assertThat(Plans.refused(Plans.ring(0, 0, 10, 0, 20, 0, 15, 0), List.of()))
                .isEqualTo(Reason.TOO_FEW_CORNERS);
        assertThat(Plans.refused(Plans.ring(0, 0, 10, 8, 10, 0, 0, 8), List.of()))
                .isEqualTo(Reason.RINGS_CROSS);
        assertThat(Plans.refused(house, List.of(Plans.ring(8, 2, 12, 2, 12, 4, 8, 4))))
                .isEqualTo(Reason.RINGS_CROSS);
        assertThat(Plans.refused(house, List.of(Plans.ring(0, 2, 4, 2, 4, 4)))).isEqualTo(Reason.RINGS_CROSS);
        assertThat(Plans.refused(house, List.of(Plans.ring(12, 2, 14, 2, 14, 4))))
                .isEqualTo(Reason.COURTYARD_OUTSIDE);
        assertThat(Plans.refused(house, List.of(Plans.ring(1, 1, 7, 1, 7, 7, 1, 7), Plans.ring(3, 3, 5, 3, 5, 5))))
                .isEqualTo(Reason.COURTYARD_OUTSIDE);
        assertThat(Plans.refused(Plans.ring(new Pitch(0, 12), 0, 0, 10, 0, 10, 8), List.of()))
                .isEqualTo(Reason.PITCH_EXTREME);
        assertThat(Plans.refused(Plans.ring(new Pitch(1200, 12), 0, 0, 10, 0, 10, 8), List.of()))
                .isEqualTo(Reason.PITCH_EXTREME);
        assertThat(Plans.refused(Plans.ring(0, 0, 1e7, 0, 10, 8), List.of())).isEqualTo(Reason.TOO_LARGE);
        assertThat(Plans.refused(Plans.pitched(house, "gable", "gable", "gable", "gable"), List.of()))
                .isEqualTo(Reason.NEVER_CLOSES);
        assertThat(Plans.refused(
                        Plans.pitched(
                                Plans.ring(0, 0, 5, 0, 10, 0, 10, 4, 0, 4), "6:12", "8:12", "6:12", "6:12", "6:12"),
                        List.of()))
                .isEqualTo(Reason.PITCHES_IN_LINE);
    }

    private static Map<SeamKind, Long> kinds(RoofOver roof) {
        return roof.seams().stream().collect(Collectors.groupingBy(Seam::kind, Collectors.counting()));
    }

    static double planArea(RoofOver roof, Slope slope) {
        double twice = 0;
        for (int i = 0; i < slope.corners().size(); i++) {
            Corner a = roof.corners().get(slope.corners().get(i));
            Corner b = roof.corners()
                    .get(slope.corners().get((i + 1) % slope.corners().size()));
            twice += a.x() * b.y() - b.x() * a.y();
        }
        return twice / 2;
    }
}
