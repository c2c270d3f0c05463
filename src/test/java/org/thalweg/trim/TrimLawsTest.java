package org.thalweg.trim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.thalweg.geometry.Point3;
import org.thalweg.roof.Drawn;
import org.thalweg.roof.EdgeKind;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;

/** What must not change when a roof is mirrored, moved, turned or scaled, and what its pieces add up to. */
class TrimLawsTest {

    private static final double NOTHING = 1e-9;
    private static final int ROOFS = 6;

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5})
    void aMirroredRoofSwapsHandsAndNothingElse(int which) {
        List<Trim> here = laid(which, TrimJobs::still, TrimJobs.usual());
        List<Trim> there = laid(which, TrimJobs::mirrored, TrimJobs.spec(TrimOrder.usual(), Hand.RIGHT, false, 1));
        assertThat(there).hasSameSizeAs(here);
        for (int i = 0; i < here.size(); i++) {
            Trim one = here.get(i);
            Trim other = there.get(i);
            assertThat(other.edge().id()).isEqualTo(one.edge().id());
            assertThat(other.hand()).isEqualTo(one.hand().map(Hand::other));
            boolean turned = one.seat().level();
            // Of a sloped cap the left leg becomes the right one; everything else keeps its first leg.
            boolean reversed = !turned && one.edge().kind() == EdgeKind.HIP;
            assertMirrored(one.start(), turned ? other.finish() : other.start(), reversed);
            assertMirrored(one.finish(), turned ? other.start() : other.finish(), reversed);
            assertSamePieces(one, other, 1, turned);
        }
    }

    private static void assertMirrored(TrimEnd one, TrimEnd other, boolean reversed) {
        // To turn a cap end for end is to mirror it once more.
        assertThat(other.hand()).isEqualTo(reversed ? one.hand() : one.hand().other());
        assertSame(one.first(), reversed ? other.last() : other.first());
        assertSame(one.last(), reversed ? other.first() : other.last());
        int legs = one.cuts().size();
        assertThat(other.cuts()).hasSize(legs);
        for (int leg = 0; leg < legs; leg++) {
            LegCut cut = other.cuts().get(reversed ? legs - 1 - leg : leg);
            LegCut same = reversed
                    ? new LegCut(
                            leg, cut.outer(), cut.inner(), new Angle(-cut.cut().radians()))
                    : cut;
            assertSame(one.cuts().get(leg), same, 1);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5})
    void movingAndTurningARoofChangesNothing(int which) {
        double turn = Math.toRadians(37);
        List<Trim> here = laid(which, TrimJobs::still, TrimJobs.usual());
        List<Trim> there = laid(
                which,
                p -> new Point3(
                        p.x() * Math.cos(turn) - p.y() * Math.sin(turn) + 1_000,
                        p.x() * Math.sin(turn) + p.y() * Math.cos(turn) - 2_000,
                        p.z() + 50),
                TrimJobs.usual());
        assertAlike(here, there, 1);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5})
    void aRoofAndItsTrimsThreeTimesAsLargeHaveThriceTheLengths(int which) {
        List<Trim> here = laid(which, TrimJobs::still, TrimJobs.spec(TrimJobs.fixed(1), Hand.LEFT, false, 1));
        assertThat(here).isNotEmpty();
        List<Trim> there = laid(
                which,
                p -> new Point3(3 * p.x(), 3 * p.y(), 3 * p.z()),
                TrimJobs.spec(TrimJobs.fixed(3), Hand.LEFT, false, 3));
        assertAlike(here, there, 3);
    }

    private static void assertAlike(List<Trim> here, List<Trim> there, double scale) {
        assertThat(there).hasSameSizeAs(here);
        for (int i = 0; i < here.size(); i++) {
            Trim one = here.get(i);
            Trim other = there.get(i);
            assertThat(other.edge().id()).isEqualTo(one.edge().id());
            assertThat(other.hand()).isEqualTo(one.hand());
            assertSame(one.start(), other.start(), scale);
            assertSame(one.finish(), other.finish(), scale);
            assertSame(one.flat().width(), other.flat().width(), scale);
            assertSamePieces(one, other, scale, false);
        }
    }

    private static void assertSame(TrimEnd one, TrimEnd other, double scale) {
        assertThat(other.hand()).isEqualTo(one.hand());
        assertSame(one.first(), other.first());
        assertSame(one.last(), other.last());
        for (int leg = 0; leg < one.cuts().size(); leg++) {
            assertSame(one.cuts().get(leg), other.cuts().get(leg), scale);
        }
    }

    private static void assertSame(Meeting one, Meeting other) {
        assertThat(other.how()).isEqualTo(one.how());
        assertThat(other.id()).isEqualTo(one.id());
        assertThat(other.inside()).isEqualTo(one.inside());
        assertThat(other.plan().radians()).isCloseTo(one.plan().radians(), within(NOTHING));
        assertThat(other.angle().radians()).isCloseTo(one.angle().radians(), within(NOTHING));
    }

    private static void assertSame(LegCut one, LegCut other, double scale) {
        assertThat(other.leg()).isEqualTo(one.leg());
        assertSame(one.inner(), other.inner(), scale);
        assertSame(one.outer(), other.outer(), scale);
        assertThat(other.cut().radians()).isCloseTo(one.cut().radians(), within(NOTHING));
    }

    private static void assertSamePieces(Trim one, Trim other, double scale, boolean turned) {
        assertSame(one.run(), other.run(), scale);
        assertThat(other.pieces()).hasSameSizeAs(one.pieces());
        for (int i = 0; i < one.pieces().size(); i++) {
            TrimPiece here = one.pieces().get(i);
            TrimPiece there = other.pieces().get(i);
            assertSame(here.length(), there.length(), scale);
            assertSame(here.lap(), there.lap(), scale);
            Length from = turned
                    ? Length.metres(one.edge().length().metres()
                            - there.from().metres()
                            - there.length().metres())
                    : there.from();
            assertSame(here.from(), from, scale);
        }
    }

    private static void assertSame(Length one, Length other, double scale) {
        assertThat(other.metres()).isCloseTo(scale * one.metres(), within(scale * NOTHING));
    }

    @Test
    void piecesLessTheirLapsAreTheRunAndFollowEachOther() {
        for (int which = 0; which < ROOFS; which++) {
            for (Hand from : Hand.values()) {
                for (Trim trim : laid(which, TrimJobs::still, TrimJobs.spec(TrimOrder.usual(), from, true, 1))) {
                    assertHolds(trim);
                }
            }
        }
    }

    @Test
    void thePiecesOfARoofAreKnownBeforehand() {
        for (int which = 0; which < ROOFS; which++) {
            Trims trims = Trims.on(TrimJobs.roof(TrimJobs.all(TrimJobs::still).get(which)), TrimJobs.usual());
            int pieces = trims.layOut().stream()
                    .mapToInt(trim -> trim.pieces().size())
                    .sum();
            assertThat(pieces).isPositive();
            assertThat(trims.pieceCount()).isEqualTo(pieces);
        }
    }

    /** From one reach to the other without a gap, each over the one before. */
    static void assertHolds(Trim trim) {
        double sum = 0;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < trim.pieces().size(); i++) {
            TrimPiece piece = trim.pieces().get(i);
            double from = piece.from().metres();
            double to = from + piece.length().metres();
            sum += piece.length().metres() - piece.lap().metres();
            if (i > 0) {
                TrimPiece before = trim.pieces().get(i - 1);
                double end = before.from().metres() + before.length().metres();
                double over = from > before.from().metres()
                        ? end - from
                        : to - before.from().metres();
                assertThat(over).isCloseTo(piece.lap().metres(), within(NOTHING));
            }
            low = Math.min(low, from);
            high = Math.max(high, to);
        }
        if (!trim.pieces().isEmpty()) {
            assertThat(sum).isCloseTo(trim.run().metres(), within(NOTHING * (1 + sum)));
            assertThat(-low).isCloseTo(trim.start().reach().metres(), within(NOTHING));
            assertThat(high - trim.edge().length().metres())
                    .isCloseTo(trim.finish().reach().metres(), within(NOTHING * (1 + sum)));
        }
    }

    private static List<Trim> laid(int which, UnaryOperator<Point3> moved, TrimSpec spec) {
        Drawn drawn = TrimJobs.all(moved).get(which);
        return Trims.on(TrimJobs.roof(drawn), spec).layOut();
    }
}
