package org.thalweg.footprint;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.thalweg.footprint.NoRoof.Reason;
import org.thalweg.footprint.RoofOver.Bound;
import org.thalweg.footprint.RoofOver.BoundKind;
import org.thalweg.footprint.RoofOver.Corner;
import org.thalweg.footprint.RoofOver.CrossGable;
import org.thalweg.footprint.RoofOver.Part;
import org.thalweg.footprint.RoofOver.Rises;
import org.thalweg.footprint.RoofOver.Seam;
import org.thalweg.footprint.RoofOver.SeamKind;
import org.thalweg.footprint.RoofOver.Slope;
import org.thalweg.footprint.WallSide.Change;
import org.thalweg.geometry.Tolerance;
import org.thalweg.units.Pitch;

/**
 * Sides that change further up, stand higher than others, or carry a cross gable: corners worked out by hand. A house of 12 m by 6
 * m, the outline from (0, 0) along x; 6:12 unless told otherwise, so height is half the run.
 */
class RisingSidesTest {

    private static final Pitch SIX = new Pitch(6, 12);

    private static List<WallSide> house() {
        return new ArrayList<>(Plans.ring(0, 0, 12, 0, 12, 6, 0, 6));
    }

    private static Slope slope(RoofOver roof, int side, Part part) {
        return roof.slopes().stream()
                .filter(one -> one.sides().contains(side) && one.part().equals(part))
                .findFirst()
                .orElseThrow();
    }

    private static List<Corner> ring(RoofOver roof, Slope slope) {
        return slope.corners().stream().map(roof.corners()::get).toList();
    }

    private static void isRing(List<Corner> ring, double... expected) {
        List<Corner> wanted = IntStream.range(0, expected.length / 3)
                .mapToObj(i -> new Corner(expected[3 * i], expected[3 * i + 1], expected[3 * i + 2]))
                .toList();
        assertThat(ring).hasSameSizeAs(wanted);
        // A ring may start anywhere.
        int start = IntStream.range(0, ring.size())
                .filter(i -> near(ring.get(i), wanted.get(0)))
                .findFirst()
                .orElseThrow(() -> new AssertionError(ring + " has no " + wanted.get(0)));
        SoftAssertions all = new SoftAssertions();
        for (int i = 0; i < wanted.size(); i++) {
            Corner corner = ring.get((start + i) % ring.size());
            all.assertThat(near(corner, wanted.get(i)))
                    .as("%s for %s", corner, wanted.get(i))
                    .isTrue();
        }
        all.assertAll();
    }

    private static boolean near(Corner one, Corner other) {
        return Math.abs(one.x() - other.x()) < 2e-6
                && Math.abs(one.y() - other.y()) < 2e-6
                && Math.abs(one.height() - other.height()) < 2e-6;
    }

    private static List<BoundKind> bounds(Slope slope) {
        return slope.bounds().stream().map(Bound::kind).toList();
    }

    /** A hip end that goes up as a gable from 1 m on: 2 m in, where the roof is 6 - 2·2 = 2 m wide. */
    @Test
    void aDutchGable() {
        List<WallSide> ring = house();
        ring.set(1, ring.get(1).then(new Change(1, Optional.empty())));
        RoofOver roof = Plans.roof(ring);
        isRing(ring(roof, slope(roof, 1, new Rises(0))), 12, 0, 0, 12, 6, 0, 10, 4, 1, 10, 2, 1);
        assertThat(bounds(slope(roof, 1, new Rises(0))))
                .containsExactlyInAnyOrder(BoundKind.EAVE, BoundKind.SEAM, BoundKind.GABLE_FOOT, BoundKind.SEAM);
        isRing(ring(roof, slope(roof, 0, new Rises(0))), 0, 0, 0, 12, 0, 0, 10, 2, 1, 10, 3, 1.5, 3, 3, 1.5);
        assertThat(slope(roof, 0, new Rises(0)).bounds()).contains(new Bound(BoundKind.GABLE, 1));
        assertThat(roof.slopes()).hasSize(4);
    }

    /** A gable end whose wall goes up to 1 m and no further: the slope above it takes the tip off the gable. */
    @Test
    void aClippedGable() {
        List<WallSide> ring = house();
        ring.set(1, ring.get(1).eaveAt(1));
        RoofOver roof = Plans.roof(ring);
        isRing(ring(roof, slope(roof, 1, new Rises(0))), 12, 2, 1, 12, 4, 1, 11, 3, 1.5);
        isRing(ring(roof, slope(roof, 0, new Rises(0))), 0, 0, 0, 12, 0, 0, 12, 2, 1, 11, 3, 1.5, 3, 3, 1.5);
        assertThat(slope(roof, 1, new Rises(0)).bounds()).contains(new Bound(BoundKind.EAVE, 1));
        assertThat(slope(roof, 0, new Rises(0)).bounds()).contains(new Bound(BoundKind.GABLE, 1));
    }

    /** Eaves of 3 m and 4 m: the ridge of a gable roof lies where 3 + y/2 = 4 + (6 - y)/2, at y = 4. */
    @Test
    void eavesAtTwoHeights() {
        List<WallSide> ring = Plans.pitched(house(), "6:12", "gable", "6:12", "gable");
        ring = List.of(ring.get(0).eaveAt(3), ring.get(1), ring.get(2).eaveAt(4), ring.get(3));
        RoofOver roof = Plans.roof(ring);
        isRing(ring(roof, slope(roof, 0, new Rises(0))), 0, 0, 3, 12, 0, 3, 12, 4, 5, 0, 4, 5);
        isRing(ring(roof, slope(roof, 2, new Rises(0))), 12, 6, 4, 0, 6, 4, 0, 4, 5, 12, 4, 5);
    }

    /** All sides steep to 2 m, 1 m in, and flat above: a mansard. The upper house is 10 m by 4 m. */
    @Test
    void aMansard() {
        Pitch steep = new Pitch(24, 12);
        List<WallSide> ring = Plans.ring(steep, 0, 0, 12, 0, 12, 6, 0, 6).stream()
                .map(side -> side.then(new Change(2, Optional.of(SIX))))
                .toList();
        RoofOver roof = Plans.roof(ring);
        isRing(ring(roof, slope(roof, 0, new Rises(0))), 0, 0, 0, 12, 0, 0, 11, 1, 2, 1, 1, 2);
        isRing(ring(roof, slope(roof, 0, new Rises(1))), 1, 1, 2, 11, 1, 2, 9, 3, 3, 3, 3, 3);
        isRing(ring(roof, slope(roof, 1, new Rises(1))), 11, 1, 2, 11, 5, 2, 9, 3, 3);
        assertThat(roof.seams().stream().map(Seam::kind))
                .filteredOn(kind -> kind == SeamKind.PITCH_BREAK)
                .hasSize(4);
    }

    /** Eaves that kick out: 3:12 for the first metre of height, 4 m in, then 12:12 for the last 2 m of an 12 m wide house. */
    @Test
    void flaredEaves() {
        List<WallSide> ring = Plans.ring(new Pitch(3, 12), 0, 0, 20, 0, 20, 12, 0, 12).stream()
                .map(side -> side.then(new Change(1, Optional.of(new Pitch(12, 12)))))
                .toList();
        RoofOver roof = Plans.roof(ring);
        isRing(ring(roof, slope(roof, 0, new Rises(1))), 4, 4, 1, 16, 4, 1, 14, 6, 3, 6, 6, 3);
        assertThat(roof.seams().stream().map(Seam::kind))
                .filteredOn(kind -> kind == SeamKind.PITCH_BREAK)
                .hasSize(4);
    }

    /** A cross gable 4 m wide over the middle of a long side: its ridge, 1 m high, runs 2 m in. */
    @Test
    void aCrossGable() {
        List<WallSide> ring = List.of(
                WallSide.sloped(0, 0, SIX),
                WallSide.gable(4, 0).crossing(SIX),
                WallSide.sloped(8, 0, SIX),
                WallSide.sloped(12, 0, SIX),
                WallSide.sloped(12, 6, SIX),
                WallSide.sloped(0, 6, SIX));
        RoofOver roof = Plans.roof(ring);
        isRing(ring(roof, slope(roof, 1, new CrossGable(true))), 4, 0, 0, 6, 0, 1, 6, 2, 1);
        isRing(ring(roof, slope(roof, 1, new CrossGable(false))), 8, 0, 0, 6, 2, 1, 6, 0, 1);
        assertThat(bounds(slope(roof, 1, new CrossGable(true))))
                .containsExactlyInAnyOrder(BoundKind.GABLE, BoundKind.SEAM, BoundKind.SEAM);
        isRing(
                ring(roof, slope(roof, 0, new Rises(0))),
                0,
                0,
                0,
                4,
                0,
                0,
                6,
                2,
                1,
                8,
                0,
                0,
                12,
                0,
                0,
                9,
                3,
                1.5,
                3,
                3,
                1.5);
        assertThat(slope(roof, 0, new Rises(0)).sides()).containsExactly(0, 2);
        assertThat(roof.seams().stream().map(Seam::kind))
                .filteredOn(kind -> kind == SeamKind.VALLEY)
                .hasSize(2);
        // Read the other way round a side starts at what was its end.
        List<WallSide> reversed = List.of(
                WallSide.sloped(12, 0, SIX),
                WallSide.gable(8, 0).crossing(SIX),
                WallSide.sloped(4, 0, SIX),
                WallSide.sloped(0, 0, SIX),
                WallSide.sloped(0, 6, SIX),
                WallSide.sloped(12, 6, SIX));
        RoofOver mirrored = Plans.roof(reversed);
        isRing(ring(mirrored, slope(mirrored, 1, new CrossGable(false))), 4, 0, 0, 6, 0, 1, 6, 2, 1);
    }

    /** The same steeper, 12:12: 2 m high, over the main ridge of 1.5 m, so its ridge runs into the far slope. */
    @Test
    void aCrossGableOverTheRidgeRunsThroughIt() {
        List<WallSide> ring = List.of(
                WallSide.sloped(0, 0, SIX),
                WallSide.gable(4, 0).crossing(new Pitch(12, 12)),
                WallSide.sloped(8, 0, SIX),
                WallSide.sloped(12, 0, SIX),
                WallSide.sloped(12, 6, SIX),
                WallSide.sloped(0, 6, SIX));
        Rise rise = Footprints.roofOver(Footprint.of(ring));
        assertThat(rise).isInstanceOf(RoofOver.class);
        RoofOver roof = (RoofOver) rise;
        assertThat(roof.corners()).anyMatch(corner -> near(corner, new Corner(6, 0, 2)));
    }

    /** A gable over the first half of a side: its outer slope is that of the side round the corner. */
    @Test
    void aCrossGableAtACorner() {
        List<WallSide> ring = List.of(
                WallSide.gable(0, 0).crossing(SIX),
                WallSide.sloped(4, 0, SIX),
                WallSide.sloped(12, 0, SIX),
                WallSide.sloped(12, 6, SIX),
                WallSide.sloped(0, 6, SIX));
        RoofOver roof = Plans.roof(ring);
        isRing(ring(roof, slope(roof, 0, new CrossGable(false))), 4, 0, 0, 2, 2, 1, 2, 0, 1);
        assertThat(roof.slopes()).hasSize(5);
    }

    /** A cross gable on a side whose eave stands at 1 m, other eaves at 0. */
    @Test
    void aCrossGableOnAHigherEave() {
        List<WallSide> ring = List.of(
                WallSide.sloped(0, 0, SIX).eaveAt(1),
                WallSide.gable(5, 0).crossing(SIX),
                WallSide.sloped(7, 0, SIX).eaveAt(1),
                WallSide.sloped(12, 0, SIX),
                WallSide.sloped(12, 6, SIX),
                WallSide.sloped(0, 6, SIX));
        RoofOver roof = Plans.roof(ring);
        isRing(ring(roof, slope(roof, 1, new CrossGable(true))), 5, 0, 1, 6, 0, 1.5, 6, 1, 1.5);
    }

    /** Turned by an angle whose tangent is 3/4 and measured to the millimetre, corners in line are not quite. */
    @Test
    void aCrossGableMeasuredToTheMillimetre() {
        double[] xy = {0, 0, 4, 0, 8.3, 0, 12, 0, 12, 6, 0, 6};
        List<WallSide> ring = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            double x = Math.round((Math.cos(0.3) * xy[i] - Math.sin(0.3) * xy[i + 1]) * 1000) / 1000.0;
            double y = Math.round((Math.sin(0.3) * xy[i] + Math.cos(0.3) * xy[i + 1]) * 1000) / 1000.0;
            ring.add(i == 2 ? WallSide.gable(x, y).crossing(SIX) : WallSide.sloped(x, y, SIX));
        }
        RoofOver roof = Plans.roof(new Footprint(ring, List.of(), new Tolerance(0.001)));
        assertThat(roof.slopes()).hasSize(6);
        assertThat(slope(roof, 0, new Rises(0)).sides()).containsExactly(0, 2);
    }

    /**
     * The upper slope of the front is parted before it begins: the corner at (6, 4) comes down to the front's eave at y = 2 and 0.5 m
     * further up, and so there are two slopes above the change.
     */
    @Test
    void aSlopeMayBeginInTwoPlaces() {
        List<WallSide> ring = Plans.ring(0, 0, 12, 0, 12, 6, 8, 6, 6, 2, 4, 6, 0, 6).stream()
                .map(side -> side.then(new Change(0.75, Optional.of(new Pitch(9, 12)))))
                .toList();
        RoofOver roof = Plans.roof(ring);
        assertThat(roof.slopes().stream()
                        .filter(slope ->
                                slope.sides().contains(0) && slope.part().equals(new Rises(1))))
                .hasSize(2);
        assertThat(roof.slopes().stream()
                        .filter(slope ->
                                slope.sides().contains(0) && slope.part().equals(new Rises(0))))
                .hasSize(1);
    }

    /** The front eave, 3:12, comes to y = 2 at 0.5 m, just where and when the eave of the wall set back 2 m begins. */
    @Test
    void anEaveThatComesAlongWhereAHigherOneBeginsIsOneSlopeWithIt() {
        Pitch three = new Pitch(3, 12);
        List<WallSide> ring = new ArrayList<>(Plans.ring(three, 0, 0, 8, 0, 8, 2, 16, 2, 16, 10, 0, 10));
        ring.set(2, ring.get(2).eaveAt(0.5));
        RoofOver roof = Plans.roof(ring);
        assertThat(roof.slopes().get(0).sides()).containsExactly(0, 2);
    }

    /** Half a millimetre off the line is in line where corners are measured to the millimetre. */
    @Test
    void pitchesInLineAreToldByTheTolerance() {
        List<WallSide> ring =
                Plans.pitched(Plans.ring(0, 0, 5, 0.0005, 12, 0, 12, 6, 0, 6), "6:12", "8:12", "6:12", "6:12", "6:12");
        assertThat(Footprints.roofOver(new Footprint(ring, List.of(), new Tolerance(0.001))))
                .isInstanceOfSatisfying(
                        NoRoof.class, none -> assertThat(none.reason()).isEqualTo(Reason.PITCHES_IN_LINE));
        assertThat(Plans.roof(ring).slopes()).hasSize(5);
    }

    /** Sides in line with one pitch are one slope; where they are told apart its eave has a corner between them. */
    @Test
    void eavesToldApart() {
        List<WallSide> ring = new ArrayList<>(Plans.ring(0, 0, 5, 0, 8, 0, 12, 0, 12, 6, 0, 6));
        assertThat(ring(Plans.roof(ring), Plans.roof(ring).slopes().get(0))).hasSize(4);
        ring.set(2, ring.get(2).toldApart());
        RoofOver roof = Plans.roof(ring);
        isRing(ring(roof, roof.slopes().get(0)), 0, 0, 0, 8, 0, 0, 12, 0, 0, 9, 3, 1.5, 3, 3, 1.5);
        assertThat(roof.slopes().get(0).bounds())
                .contains(new Bound(BoundKind.EAVE, 0), new Bound(BoundKind.EAVE, 2))
                .doesNotContain(new Bound(BoundKind.EAVE, 1));
    }

    @Test
    void whatCannotRiseIsRefused() {
        List<WallSide> falling = house();
        falling.set(0, falling.get(0).then(new Change(-1, Optional.empty())));
        assertThat(Plans.refused(falling, List.of())).isEqualTo(Reason.HEIGHTS_OUT_OF_ORDER);
        List<WallSide> level = house();
        level.set(0, level.get(0).then(new Change(1, Optional.of(new Pitch(0, 12)))));
        assertThat(Plans.refused(level, List.of())).isEqualTo(Reason.PITCH_EXTREME);
        // Every side of a mansard goes up as a gable: nothing closes.
        List<WallSide> open = house().stream()
                .map(side -> side.then(new Change(1, Optional.empty())))
                .toList();
        assertThat(Plans.refused(open, List.of())).isEqualTo(Reason.NEVER_CLOSES);
    }
}
