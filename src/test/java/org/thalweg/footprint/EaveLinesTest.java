package org.thalweg.footprint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.thalweg.footprint.NoRoof.Reason;
import org.thalweg.footprint.RoofOver.Corner;
import org.thalweg.units.Length;
import org.thalweg.units.Pitch;

/** Eaves moved out from their walls: corners by hand. */
class EaveLinesTest {

    @Test
    void aPlanWithoutOverhangsIsLeftAlone() {
        Footprint walls = Footprint.of(Plans.ring(0.1, 0.2, 10.3, 0.2, 10.3, 4.7));
        assertThat(EaveLines.of(walls)).isSameAs(walls);
    }

    @Test
    void aRectangleGrowsAllRound() {
        assertCorners(moved(0.5, 0, 0, 10, 0, 10, 4, 0, 4), -0.5, -0.5, 10.5, -0.5, 10.5, 4.5, -0.5, 4.5);
    }

    @Test
    void soDoesOneDrawnTheOtherWayRound() {
        assertCorners(moved(0.5, 0, 4, 10, 4, 10, 0, 0, 0), -0.5, 4.5, 10.5, 4.5, 10.5, -0.5, -0.5, -0.5);
    }

    @Test
    void anInnerCornerMovesOutToo() {
        assertCorners(
                moved(0.5, 0, 0, 10, 0, 10, 4, 4, 4, 4, 9, 0, 9),
                -0.5,
                -0.5,
                10.5,
                -0.5,
                10.5,
                4.5,
                4.5,
                4.5,
                4.5,
                9.5,
                -0.5,
                9.5);
    }

    /** A triangle of 3, 4 and 5 has a circle of 1 in it round (1, 1): moved out by 1 it is twice as large round that. */
    @Test
    void cornersThatAreNotSquareRunOnFurther() {
        assertCorners(moved(1, 0, 0, 4, 0, 0, 3), -1, -1, 7, -1, -1, 5);
    }

    @Test
    void inACourtyardEavesMoveIntoTheYard() {
        for (boolean round : new boolean[] {true, false}) {
            List<WallSide> yard = standingOut(Plans.ring(4, 4, 8, 4, 8, 8, 4, 8), 0.5);
            if (round) {
                Collections.reverse(yard);
            }
            Footprint eaves = EaveLines.of(new Footprint(Plans.ring(0, 0, 12, 0, 12, 12, 0, 12), List.of(yard)));
            assertThat(eaves.outline()).isEqualTo(Plans.ring(0, 0, 12, 0, 12, 12, 0, 12));
            assertThat(eaves.courtyards().get(0).stream().map(side -> List.of(side.x(), side.y())))
                    .containsExactlyInAnyOrder(
                            List.of(4.5, 4.5), List.of(7.5, 4.5), List.of(7.5, 7.5), List.of(4.5, 7.5));
        }
    }

    @Test
    void everySideHasItsOwnOverhang() {
        List<WallSide> ring = Plans.ring(0, 0, 10, 0, 10, 4, 0, 4);
        double[] out = {1, 0, 0.5, 2};
        for (int i = 0; i < 4; i++) {
            ring.set(i, ring.get(i).overhanging(out[i]));
        }
        assertCorners(EaveLines.of(Footprint.of(ring)).outline(), -2, -1, 10, -1, 10, 4.5, -2, 4.5);
    }

    @Test
    void aCornerInLineMovesSquareAndOneGivenTwiceMovesWithItsTwin() {
        assertCorners(
                moved(0.5, 0, 0, 5, 0, 10, 0, 10, 4, 0, 4, 0, 0),
                -0.5,
                -0.5,
                5,
                -0.5,
                10.5,
                -0.5,
                10.5,
                4.5,
                -0.5,
                4.5,
                -0.5,
                -0.5);
    }

    /** Whatever the angles: the moved side is its overhang away from the wall, at both of its ends. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void aMovedSideIsItsOverhangAwayFromTheWall(int seed) {
        Random random = new Random(seed);
        List<WallSide> walls = new ArrayList<>();
        for (WallSide side : Plans.star(random, 5 + seed, 8, 12, new Pitch(6, 12))) {
            walls.add(side.overhanging(0.02 + 0.05 * random.nextDouble()));
        }
        List<WallSide> eaves = EaveLines.of(Footprint.of(walls)).outline();
        int n = walls.size();
        for (int i = 0; i < n; i++) {
            WallSide from = walls.get(i);
            WallSide to = walls.get((i + 1) % n);
            double length = Math.hypot(to.x() - from.x(), to.y() - from.y());
            for (WallSide end : List.of(eaves.get(i), eaves.get((i + 1) % n))) {
                // The star runs counter-clockwise: out of it is to the right.
                double right = ((end.x() - from.x()) * (to.y() - from.y()) - (end.y() - from.y()) * (to.x() - from.x()))
                        / length;
                assertThat(right).isCloseTo(from.overhang(), within(1e-12));
            }
        }
    }

    @Test
    void theRoofRisesFromTheEavesAndTheyStayLevel() {
        RoofOver roof = Plans.roof(standingOut(Plans.ring(0, 0, 10, 0, 10, 4, 0, 4), 0.5));
        assertThat(Plans.inner(roof)).containsExactlyInAnyOrder(new Corner(2, 2, 1.25), new Corner(8, 2, 1.25));
        assertThat(roof.corners()).contains(new Corner(-0.5, -0.5, 0), new Corner(10.5, 4.5, 0));
    }

    @Test
    void aGableStandsOutToo() {
        List<WallSide> ring = Plans.pitched(Plans.ring(0, 0, 10, 0, 10, 4, 0, 4), "6:12", "gable", "6:12", "gable");
        ring.set(1, ring.get(1).overhanging(0.25));
        assertThat(Plans.inner(Plans.roof(ring)))
                .containsExactlyInAnyOrder(new Corner(0, 2, 1), new Corner(10.25, 2, 1));
    }

    @Test
    void sidesInLineWithDifferentOverhangsAreRefused() {
        List<WallSide> ring = Plans.ring(0, 0, 5, 0, 10, 0, 10, 4, 0, 4);
        ring.set(0, ring.get(0).overhanging(0.5));
        NoRoof none = refused(ring);
        assertThat(none.reason()).isEqualTo(Reason.OVERHANGS_IN_LINE);
        assertThat(none.side()).hasValue(1);
        assertThat(none.other()).hasValue(0);
        assertThat(none.actual()).contains(Length.ZERO);
        assertThat(none.limit()).contains(Length.metres(0.5));
    }

    /** A notch 1 m wide between two overhangs of 0.6 m has room for 0.5 m each. */
    @Test
    void eavesThatLeaveNoRoomForASideAreRefusedWithTheMostThereIs() {
        NoRoof none = refused(standingOut(Plans.ring(0, 0, 10, 0, 10, 6, 6, 6, 6, 3, 5, 3, 5, 6, 0, 6), 0.6));
        assertThat(none.reason()).isEqualTo(Reason.OVERHANG_TOO_WIDE);
        assertThat(none.side()).hasValue(4);
        assertThat(none.actual()).contains(Length.metres(0.6));
        assertThat(((Length) none.limit().orElseThrow()).metres()).isCloseTo(0.5, within(1e-12));
    }

    /** A yard whose mouth, 0.4 m, is narrower than its bottom: no side is left without room, but the eaves of the mouth cross. */
    @Test
    void eavesThatCrossAreRefused() {
        List<WallSide> ring =
                Plans.ring(0, 0, 10, 0, 10, 6, 5.2, 6, 5.2, 4, 7, 4, 7, 2, 3, 2, 3, 4, 4.8, 4, 4.8, 6, 0, 6);
        NoRoof none = refused(standingOut(ring, 0.3));
        assertThat(none.reason()).isEqualTo(Reason.OVERHANG_TOO_WIDE);
        assertThat(none.actual()).contains(Length.metres(0.3));
        assertThat(Footprints.roofOver(Footprint.of(standingOut(ring, 0.15)))).isInstanceOf(RoofOver.class);
    }

    @Test
    void whatIsWrongWithTheWallsIsToldOfTheWalls() {
        assertThat(refused(standingOut(Plans.ring(0, 0, 10, 8, 10, 0, 0, 8), 0.5))
                        .reason())
                .isEqualTo(Reason.RINGS_CROSS);
        assertThat(refused(standingOut(Plans.ring(0, 0, 10, 0, 20, 0), 0.5)).reason())
                .isEqualTo(Reason.TOO_FEW_CORNERS);
    }

    private static List<WallSide> standingOut(List<WallSide> ring, double metres) {
        return new ArrayList<>(
                ring.stream().map(side -> side.overhanging(metres)).toList());
    }

    private static List<WallSide> moved(double metres, double... xy) {
        return EaveLines.of(Footprint.of(standingOut(Plans.ring(xy), metres))).outline();
    }

    private static NoRoof refused(List<WallSide> ring) {
        NoRoof.Stop stop = catchThrowableOfType(NoRoof.Stop.class, () -> EaveLines.of(Footprint.of(ring)));
        assertThat(stop).isNotNull();
        return stop.why();
    }

    private static void assertCorners(List<WallSide> ring, double... xy) {
        assertThat(ring).hasSize(xy.length / 2);
        IntStream.range(0, ring.size()).forEach(i -> {
            assertThat(ring.get(i).x()).isCloseTo(xy[2 * i], within(1e-12));
            assertThat(ring.get(i).y()).isCloseTo(xy[2 * i + 1], within(1e-12));
        });
    }
}
