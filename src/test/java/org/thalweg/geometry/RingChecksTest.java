package org.thalweg.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.thalweg.geometry.RingChecks.Conflict;
import org.thalweg.geometry.RingChecks.Fault;

/** Small shapes with a known fault, and large ones that must not take long. */
class RingChecksTest {

    /** Corners as across, up, across, up … */
    private static Ring ring(double... corners) {
        double[] across = new double[corners.length / 2];
        double[] up = new double[corners.length / 2];
        for (int i = 0; i < across.length; i++) {
            across[i] = corners[2 * i];
            up[i] = corners[2 * i + 1];
        }
        return new Ring(across, up, new int[across.length]);
    }

    private static List<Conflict> check(Ring outer, Ring... openings) {
        return RingChecks.of(new Region(outer, List.of(openings)), Tolerance.DEFAULT);
    }

    private static final Ring SQUARE = ring(0, 0, 10, 0, 10, 10, 0, 10);

    @Test
    void aSquareIsGoodEitherWayRound() {
        assertThat(check(SQUARE)).isEmpty();
        assertThat(check(ring(0, 10, 10, 10, 10, 0, 0, 0))).isEmpty();
    }

    @Test
    void crossingSidesAreNamed() {
        assertThat(check(ring(0, 0, 10, 0, 0, 10, 10, 10))).containsExactly(new Conflict(Fault.CROSSES, 0, 3, 0, 1));
    }

    @Test
    void aCornerOnASideIsATouchIfTheRingGoesBack() {
        assertThat(check(ring(0, 0, 10, 0, 10, 10, 5, 0, 0, 10))).isEmpty();
    }

    @Test
    void aCornerOnASideIsACrossingIfTheRingGoesThrough() {
        assertThat(check(ring(0, 0, 10, 0, 10, 10, 5, 0, 5, -5, 0, -5)))
                .extracting(Conflict::fault)
                .containsExactly(Fault.CROSSES);
    }

    @Test
    void twoCornersInOnePlaceTouchIfTheirTurnsLieBesideEachOther() {
        assertThat(check(ring(0, 0, 5, 5, 10, 0, 10, 10, 5, 5, 0, 10))).isEmpty();
    }

    @Test
    void twoCornersInOnePlaceCrossIfOneTurnGoesThroughTheOther() {
        assertThat(check(ring(0, 0, 5, 5, 10, 10, 10, 0, 5, 5, 0, 10)))
                .containsExactly(new Conflict(Fault.CROSSES, 0, 4, 0, 1));
    }

    @Test
    void aSideMayNotRunAlongAnother() {
        assertThat(check(ring(0, 0, 10, 0, 10, 10, 8, 10, 8, 0, 2, 0, 2, 10, 0, 10)))
                .extracting(Conflict::fault)
                .containsExactly(Fault.RUNS_ALONG);
    }

    @Test
    void aSpikeRunsAlongItself() {
        assertThat(check(ring(0, 0, 10, 0, 15, 0, 10, 0, 10, 10)))
                .extracting(Conflict::fault)
                .containsExactly(Fault.RUNS_ALONG);
    }

    @Test
    void aCornerInAStraightLineIsNoFault() {
        assertThat(check(ring(0, 0, 5, 0, 10, 0, 10, 5, 10, 10, 0, 10))).isEmpty();
    }

    @Test
    void aHairAsideIsATouchAndTwoHairsThroughIsACrossing() {
        double hair = Tolerance.DEFAULT.hair();
        assertThat(check(ring(0, 0, 10, 0, 10, 10, 5, -0.5 * hair, 0, 10))).isEmpty();
        assertThat(check(ring(0, 0, 10, 0, 10, 10, 5, -3 * hair, 0, 10)))
                .extracting(Conflict::fault)
                .containsExactly(Fault.CROSSES);
    }

    @Test
    void eachOpeningIsNamedOnce() {
        assertThat(check(
                        SQUARE,
                        ring(1, 1, 1, 2, 2, 2, 2, 1),
                        ring(8, 8, 8, 12, 9, 12, 9, 8),
                        ring(1.5, 1.5, 1.5, 3, 3, 3, 3, 1.5),
                        ring(20, 20, 20, 21, 21, 21)))
                .extracting(conflict -> conflict.ring() + " " + conflict.fault() + " " + conflict.otherRing())
                .containsExactly("2 CROSSES 0", "3 CROSSES 1");
    }

    @Test
    void openingsOutsideAndInsideEachOtherAreFoundWhenNothingCrosses() {
        assertThat(check(
                        SQUARE,
                        ring(1, 1, 1, 5, 5, 5, 5, 1),
                        ring(2, 2, 2, 3, 3, 3, 3, 2),
                        ring(20, 20, 20, 21, 21, 21)))
                .containsExactly(new Conflict(Fault.WITHIN, 2, 0, 1, 0), new Conflict(Fault.OUTSIDE, 3, 0, 0, 0));
    }

    @Test
    void anOpeningWithEveryCornerOnTheOutlineIsInside() {
        assertThat(check(SQUARE, ring(5, 0, 0, 5, 5, 10, 10, 5))).isEmpty();
        assertThat(check(ring(0, 0, 10, 0, 5, 5, 10, 10, 0, 10), ring(10, 0, 5, 5, 10, 10)))
                .extracting(Conflict::fault)
                .containsExactly(Fault.RUNS_ALONG);
    }

    /** A comb on the skew, whose hundred thousand sides are mostly as long as it is wide; then two teeth crossed. */
    @Test
    void aHundredThousandSidesAreSwept() {
        List<Double> comb = new ArrayList<>();
        for (int tooth = 0; tooth < 25_000; tooth++) {
            add(comb, 1_000, 2 * tooth * 0.05);
            add(comb, 1, 2 * tooth * 0.05);
            add(comb, 1, (2 * tooth + 1) * 0.05);
            add(comb, 1_000, (2 * tooth + 1) * 0.05);
        }
        add(comb, 1_001, 49_999 * 0.05);
        add(comb, 1_001, 0);
        assertThat(check(skewed(comb))).isEmpty();
        comb.set(4_001, comb.get(4_001) + 0.08);
        List<Conflict> conflicts = check(skewed(comb));
        assertThat(conflicts).extracting(Conflict::fault).containsExactly(Fault.CROSSES);
        assertThat(conflicts.get(0).side()).isBetween(1_995, 2_005);
    }

    private static void add(List<Double> corners, double across, double up) {
        corners.add(across);
        corners.add(up);
    }

    private static Ring skewed(List<Double> corners) {
        double[] turned = new double[corners.size()];
        for (int i = 0; i < turned.length; i += 2) {
            turned[i] = 0.8 * corners.get(i) - 0.6 * corners.get(i + 1);
            turned[i + 1] = 0.6 * corners.get(i) + 0.8 * corners.get(i + 1);
        }
        return ring(turned);
    }
}
