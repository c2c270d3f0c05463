package org.thalweg.valley;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.thalweg.finding.Finding;
import org.thalweg.finding.FindingCode;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Point3;
import org.thalweg.roof.PanelHold;
import org.thalweg.roof.Roof;
import org.thalweg.units.Length;
import org.thalweg.units.Pitch;
import org.thalweg.valley.PanBlank.Fold;

/** What must not change when a roof is mirrored, moved, turned or scaled, and what must grow when something else does. */
class ValleyLawsTest {

    private static final double NOTHING = 1e-9;

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 200);
    }

    /** Pitches, corner and length of a valley made up from a seed. */
    private record Case(double rise1, double rise2, double corner, double length, PanSpec pan) {

        static Case of(long seed) {
            Random random = new Random(seed);
            return new Case(
                    1 + 20 * random.nextDouble(),
                    1 + 20 * random.nextDouble(),
                    25 + 140 * random.nextDouble(),
                    10 + 500 * random.nextDouble(),
                    widening(Pans.pan(40 + 20 * random.nextDouble(), Optional.empty()), random.nextInt(2) / 96.0, 1));
        }

        ValleyLayout laid() {
            return Pans.fixed(Pans.corner(rise1, rise2, corner, length), pan);
        }

        ValleyLayout mirrored() {
            return Pans.fixed(Pans.corner(rise2, rise1, corner, length), pan);
        }
    }

    private static PanSpec widening(PanSpec pan, double widening, double times) {
        return new PanSpec(
                times(pan.coilWidth(), times),
                times(pan.ribLeg(), times),
                times(pan.edgeReturn(), times),
                pan.holdBack().map(length -> times(length, times)),
                pan.cover().map(length -> times(length, times)),
                new Pitch(widening, 1),
                times(pan.pieceLength(), times),
                times(pan.shortestPiece(), times),
                times(pan.lap(), times),
                times(pan.pastEave(), times),
                times(pan.wallTurnUp(), times),
                times(pan.ribPastEave(), times),
                times(pan.ribPastTop(), times),
                times(pan.ribPastValley(), times),
                times(pan.cleatLength(), times));
    }

    private static Length times(Length length, double times) {
        return Length.metres(length.metres() * times);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void mirroringARoofSwapsTheSidesAndNothingElse(long seed) {
        Case made = Case.of(seed);
        assertAlike(made.laid(), made.mirrored(), true, 1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"UT", "TS", "BM"})
    void mirroringTheBoathouseSwapsTheSidesOfItsValleys(String ends) {
        assertAlike(boathouse(ends, p -> p), boathouse(ends, p -> new Point3(-p.x(), p.y(), p.z())), true, 1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"UT", "TS", "BM"})
    void movingAndTurningTheBoathouseChangesNothing(String ends) {
        double turn = Math.toRadians(37);
        assertAlike(
                boathouse(ends, p -> p),
                boathouse(
                        ends,
                        p -> new Point3(
                                p.x() * Math.cos(turn) - p.y() * Math.sin(turn) + 1_000,
                                p.x() * Math.sin(turn) + p.y() * Math.cos(turn) - 2_000,
                                p.z() + 50)),
                false,
                1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"UT", "TS", "BM"})
    void scalingRoofAndPanScalesEveryLength(String ends) {
        Sketch large = Sketch.boathouse(p -> new Point3(3 * p.x(), 3 * p.y(), 3 * p.z()));
        Roof roof = large.read();
        PanSpec pan = Pans.pan(48, Optional.of(Length.inches(12.75)));
        Sketch small = Sketch.boathouse(p -> p);
        assertAlike(
                Pans.laid(small.edge(small.read(), ends), pan),
                Pans.laid(large.edge(roof, ends), widening(pan, 0, 3)),
                false,
                3);
    }

    private static ValleyLayout boathouse(String ends, UnaryOperator<Point3> moved) {
        Sketch boathouse = Sketch.boathouse(moved);
        Roof roof = boathouse.read();
        return Pans.laid(boathouse.edge(roof, ends), Pans.pan());
    }

    /** Lines are compared by their marks and heights, which no frame's origin changes. */
    private static void assertAlike(ValleyLayout a, ValleyLayout b, boolean swapped, double scale) {
        assertSame(a.edge().length(), b.edge().length(), scale);
        assertThat(b.bendAtLow().radians()).isCloseTo(a.bendAtLow().radians(), within(NOTHING));
        assertThat(b.edge().edge().slope().radians())
                .isCloseTo(a.edge().edge().slope().radians(), within(NOTHING));
        assertAlike(a.left(), swapped ? b.right() : b.left(), scale);
        assertAlike(a.right(), swapped ? b.left() : b.right(), scale);
        assertThat(b.pieces()).hasSameSizeAs(a.pieces());
        for (int i = 0; i < a.pieces().size(); i++) {
            PanPiece here = a.pieces().get(i);
            PanPiece there = b.pieces().get(i);
            assertSame(here.from(), there.from(), scale);
            assertSame(here.length(), there.length(), scale);
            assertSame(here.lap(), there.lap(), scale);
            assertAlike(here.blank(), there.blank(), swapped ? -scale : scale, scale);
        }
    }

    private static void assertAlike(PanBlank a, PanBlank b, double acrossScale, double scale) {
        assertThat(b.outline()).hasSameSizeAs(a.outline());
        // A mirrored outline starts at another corner when two are lowest.
        for (Point2 corner : a.outline()) {
            double nearest = b.outline().stream()
                    .mapToDouble(
                            c -> Math.hypot(c.across() - acrossScale * corner.across(), c.up() - scale * corner.up()))
                    .min()
                    .orElseThrow();
            assertThat(nearest).isLessThan(NOTHING);
        }
        assertThat(b.folds()).hasSameSizeAs(a.folds());
        int n = a.folds().size();
        for (int i = 0; i < n; i++) {
            Fold here = a.folds().get(i);
            Fold there = b.folds().get(acrossScale < 0 ? n - 1 - i : i);
            assertThat(there.kind()).isEqualTo(here.kind());
            assertThat(there.up()).isEqualTo(here.up());
            assertThat(there.angle().radians()).isCloseTo(here.angle().radians(), within(NOTHING));
            assertSame(here.from(), there.from(), acrossScale, scale);
            assertSame(here.to(), there.to(), acrossScale, scale);
        }
        assertThat(b.slits()).hasSameSizeAs(a.slits());
        for (int i = 0; i < a.slits().size(); i++) {
            assertSame(a.slits().get(i).from(), b.slits().get(i).from(), acrossScale, scale);
            assertSame(a.slits().get(i).to(), b.slits().get(i).to(), acrossScale, scale);
        }
    }

    private static void assertAlike(ValleySide a, ValleySide b, double scale) {
        assertThat(b.seen().mitre().radians()).isCloseTo(a.seen().mitre().radians(), within(NOTHING));
        assertThat(b.seen().pitch().radians()).isCloseTo(a.seen().pitch().radians(), within(NOTHING));
        assertSame(a.seen().run(), b.seen().run(), scale);
        assertThat(b.seen().bottom().kind()).isEqualTo(a.seen().bottom().kind());
        assertThat(b.seen().top().kind()).isEqualTo(a.seen().top().kind());
        assertSame(a.heldBack(), b.heldBack(), scale);
        assertSame(a.heldBackAtTop(), b.heldBackAtTop(), scale);
        assertAlike(a.chalkLine(), b.chalkLine(), scale);
        assertAlike(a.panEdge(), b.panEdge(), scale);
        if (scale == 1) {
            assertThat(b.riseAcrossCover().isPresent())
                    .isEqualTo(a.riseAcrossCover().isPresent());
            a.riseAcrossCover()
                    .ifPresent(rise -> assertSame(rise, b.riseAcrossCover().orElseThrow(), 1));
            assertSame(a.cover(), b.cover(), 1);
            assertAlike(a.fastenerLine(), b.fastenerLine(), 1);
            assertAlike(a.panScrewLine(), b.panScrewLine(), 1);
        }
    }

    private static void assertAlike(Optional<OffsetLine> a, Optional<OffsetLine> b, double scale) {
        assertThat(b.isPresent()).isEqualTo(a.isPresent());
        if (a.isEmpty()) {
            return;
        }
        OffsetLine here = a.get();
        OffsetLine there = b.orElseThrow();
        assertSame(here.length(), there.length(), scale);
        assertThat(there.from().up()).isCloseTo(scale * here.from().up(), within(NOTHING));
        assertThat(there.to().up()).isCloseTo(scale * here.to().up(), within(NOTHING));
        assertAlike(here.lower(), there.lower(), scale);
        assertAlike(here.upper(), there.upper(), scale);
    }

    private static void assertAlike(OffsetLine.Mark a, OffsetLine.Mark b, double scale) {
        assertSame(a.up(), b.up(), scale);
        assertSame(a.out(), b.out(), scale);
        assertThat(b.along().isPresent()).isEqualTo(a.along().isPresent());
        a.along().ifPresent(along -> assertSame(along, b.along().orElseThrow(), scale));
    }

    private static void assertSame(Length a, Length b, double scale) {
        assertThat(b.metres()).isCloseTo(scale * a.metres(), within(NOTHING));
    }

    private static void assertSame(Point2 a, Point2 b, double acrossScale, double scale) {
        assertThat(b.across()).isCloseTo(acrossScale * a.across(), within(NOTHING));
        assertThat(b.up()).isCloseTo(scale * a.up(), within(NOTHING));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void equalPitchesGiveEqualSides(long seed) {
        Case made = Case.of(seed);
        ValleyLayout laid = new Case(made.rise1, made.rise1, made.corner, made.length, made.pan).laid();
        assertAlike(laid, laid, true, 1);
        assertThat(laid.left().seen().plan().inDegrees()).isCloseTo(made.corner / 2, within(1e-7));
    }

    /** With the hold-back given, every inch of coil is half an inch of cover. */
    @Test
    void aWiderCoilReachesFurtherUnderThePanels() {
        Roof roof = Pans.corner(6, 8, 90, 200);
        double before = Double.NEGATIVE_INFINITY;
        for (double coil = 36; coil <= 60; coil += 0.5) {
            ValleyLayout laid = Pans.fixed(roof, Pans.pan(coil, Optional.of(Length.inches(10))));
            double cover = Pans.inches(laid.left().cover());
            assertThat(cover).isCloseTo(coil / 2 - 5.25 - 10, within(1e-9)).isGreaterThan(before);
            assertThat(laid.findings().stream().anyMatch(f -> f.code() == FindingCode.COVER_TOO_SMALL))
                    .as("coil %s", coil)
                    .isEqualTo(coil < 42.5);
            before = cover;
        }
    }

    /** The coil a finding asks for is just wide enough, and an inch less is not. */
    @Test
    void theCoilThatAFindingAsksForWouldDo() {
        Roof roof = Pans.corner(6, 8, 90, 200);
        Finding finding = only(Pans.fixed(roof, Pans.pan(38, Optional.of(Length.inches(10)))));
        Length needed = (Length) finding.needed().get(0).figure();
        assertThat(finding.needed().get(0).name()).isEqualTo("coilWidth");
        assertThat(Pans.inches(needed)).isCloseTo(42.5, within(1e-9));
        assertThat(Pans.fixed(roof, Pans.pan(Pans.inches(needed), Optional.of(Length.inches(10))))
                        .findings())
                .isEmpty();
    }

    private static Finding only(ValleyLayout laid) {
        assertThat(laid.findings()).hasSize(1);
        return laid.findings().get(0);
    }

    /** A pan that is held back too little, lapped too little and laid too flat says each once, with figures. */
    @Test
    void whatIsWrongIsFoundOnceEach() {
        PanSpec pan = Pans.pan(24, Optional.of(Length.inches(1)));
        PanSpec tight = new PanSpec(
                pan.coilWidth(),
                pan.ribLeg(),
                pan.edgeReturn(),
                pan.holdBack(),
                Optional.empty(),
                new Pitch(0, 12),
                pan.pieceLength(),
                pan.shortestPiece(),
                Length.inches(4),
                pan.pastEave(),
                pan.wallTurnUp(),
                pan.ribPastEave(),
                pan.ribPastTop(),
                pan.ribPastValley(),
                pan.cleatLength());
        List<Finding> findings = Valleys.layOut(
                        Pans.valley(Pans.corner(0.3, 0.3, 90, 200)),
                        tight,
                        PanelHold.FIXED,
                        Pans.asked(),
                        Pans.TOLERANCE)
                .findings();
        assertThat(findings)
                .extracting(Finding::code)
                .containsExactly(
                        FindingCode.VALLEY_TOO_FLAT,
                        FindingCode.COVER_TOO_SMALL,
                        FindingCode.EXPOSURE_TOO_SMALL,
                        FindingCode.PAN_LAP_TOO_SMALL);
        assertThat(findings).allSatisfy(f -> {
            assertThat(f.actual()).isPresent();
            assertThat(f.limit()).isPresent();
        });
    }
}
