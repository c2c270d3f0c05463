package org.thalweg.valley;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.thalweg.finding.Finding;
import org.thalweg.finding.FindingCode;
import org.thalweg.geometry.Jts;
import org.thalweg.geometry.Point2;
import org.thalweg.units.Length;
import org.thalweg.valley.PanBlank.Fold;
import org.thalweg.valley.PanBlank.Slit;

/** Every piece of a pan, and all of them together, against the same pan cut by JTS. */
class PanPiecesTest {

    private static final double NOTHING = 1e-9;

    static LongStream hundreds() {
        return LongStream.rangeClosed(1, 6).map(i -> 100 * i);
    }

    private static List<AnyPan> pans(long firstSeed) {
        return LongStream.range(firstSeed, firstSeed + 100).mapToObj(AnyPan::of).toList();
    }

    @ParameterizedTest(name = "seeds from {0}")
    @MethodSource("hundreds")
    void everyBlankIsWhatItsSpanLeavesOfTheWholePan(long firstSeed) {
        for (AnyPan pan : pans(firstSeed)) {
            Geometry whole = pan.shape();
            assertThat(whole.getArea()).as("seed %d", pan.seed()).isCloseTo(pan.area(), within(1e-8 * pan.area()));
            for (PanPiece piece : pan.laid().pieces()) {
                Polygon blank = AnyPan.placed(piece);
                assertThat(blank.isValid()).as("seed %d %s", pan.seed(), blank).isTrue();
                assertThat(Orientation.isCCW(blank.getExteriorRing().getCoordinateSequence()))
                        .isTrue();
                double from = piece.from().metres();
                Geometry span = band(whole, from, from + piece.length().metres());
                assertThat(OverlayNGRobust.overlay(blank, span, OverlayNG.SYMDIFFERENCE)
                                .getArea())
                        .as("seed %d %s", pan.seed(), piece.mark())
                        .isLessThan(1e-8 * (1 + blank.getArea()));
            }
        }
    }

    @ParameterizedTest(name = "seeds from {0}")
    @MethodSource("hundreds")
    void thePiecesTogetherAreThePanAndTheyOverlapByTheirLaps(long firstSeed) {
        for (AnyPan pan : pans(firstSeed)) {
            Geometry whole = pan.shape();
            List<PanPiece> pieces = pan.laid().pieces();
            double sum = 0;
            double laps = 0;
            double all = 0;
            for (PanPiece piece : pieces) {
                sum += piece.length().metres();
                laps += piece.lap().metres();
                all += AnyPan.placed(piece).getArea();
                if (piece.lap().metres() > 0) {
                    double from = piece.from().metres();
                    all -= band(whole, from, from + piece.lap().metres()).getArea();
                    assertThat(piece.lap().metres()).isCloseTo(pan.spec().lap().metres(), within(NOTHING));
                    assertThat(from).as("seed %d", pan.seed()).isGreaterThanOrEqualTo(-NOTHING);
                    assertThat(from + piece.lap().metres())
                            .as("seed %d", pan.seed())
                            .isLessThanOrEqualTo(pan.length() + NOTHING);
                }
            }
            Envelope extent = whole.getEnvelopeInternal();
            assertThat(pieces.get(0).lap().metres()).isZero();
            assertThat(pieces.get(0).from().metres())
                    .as("seed %d", pan.seed())
                    .isCloseTo(extent.getMinY(), within(1e-7));
            assertThat(sum - laps).as("seed %d", pan.seed()).isCloseTo(extent.getHeight(), within(2e-7));
            assertThat(all).as("seed %d", pan.seed()).isCloseTo(whole.getArea(), within(1e-8 * (1 + whole.getArea())));
        }
    }

    @ParameterizedTest(name = "seeds from {0}")
    @MethodSource("hundreds")
    void noPieceIsTooLongOrTooShortWithoutAFinding(long firstSeed) {
        for (AnyPan pan : pans(firstSeed)) {
            ValleyLayout laid = pan.laid();
            double most = pan.spec().pieceLength().metres();
            double least = pan.spec().shortestPiece().metres();
            assertThat(count(laid, FindingCode.PAN_PIECE_TOO_LONG))
                    .as("seed %d", pan.seed())
                    .isEqualTo(laid.pieces().stream()
                            .filter(p -> p.length().metres() > most + NOTHING)
                            .count());
            assertThat(count(laid, FindingCode.PAN_PIECE_TOO_SHORT))
                    .as("seed %d", pan.seed())
                    .isEqualTo(laid.pieces().stream()
                            .filter(p -> p.length().metres() < least - NOTHING)
                            .count());
        }
    }

    /** What hangs below the foot and a lap, or what runs past the head and a lap, or a valley too short for any lap. */
    @ParameterizedTest(name = "seeds from {0}")
    @MethodSource("hundreds")
    void noPieceIsTooLongUnlessAnEndMakesItSo(long firstSeed) {
        for (AnyPan pan : pans(firstSeed)) {
            ValleyLayout laid = pan.laid();
            Envelope extent = pan.shape().getEnvelopeInternal();
            double piece = pan.spec().pieceLength().metres();
            double lap = pan.spec().lap().metres();
            boolean foot = lap - extent.getMinY() > piece;
            boolean head = extent.getMaxY() - pan.length() + lap > piece;
            if (pan.length() >= lap && !foot && !head) {
                assertThat(count(laid, FindingCode.PAN_PIECE_TOO_LONG))
                        .as("seed %d", pan.seed())
                        .isZero();
            }
        }
    }

    @ParameterizedTest(name = "seeds from {0}")
    @MethodSource("hundreds")
    void everyBlankStartsAtItsLowestPointAndIsAsLongAsItSays(long firstSeed) {
        for (AnyPan pan : pans(firstSeed)) {
            for (PanPiece piece : pan.laid().pieces()) {
                Point2 first = piece.blank().outline().get(0);
                assertThat(first.up()).as("seed %d", pan.seed()).isCloseTo(0, within(1e-7));
                assertThat(piece.blank().outline())
                        .allSatisfy(c -> assertThat(c.up()).isGreaterThan(first.up() - 1e-7));
                double highest = piece.blank().outline().stream()
                        .mapToDouble(Point2::up)
                        .max()
                        .orElseThrow();
                assertThat(highest)
                        .as("seed %d", pan.seed())
                        .isCloseTo(piece.length().metres(), within(1e-7));
            }
        }
    }

    @ParameterizedTest(name = "seeds from {0}")
    @MethodSource("hundreds")
    void foldsLieOnTheMetalAndSlitsOnTheCrown(long firstSeed) {
        for (AnyPan pan : pans(firstSeed)) {
            double leg = pan.spec().ribLeg().metres();
            for (PanPiece piece : pan.laid().pieces()) {
                Polygon blank = AnyPan.placed(piece);
                double from = piece.from().metres();
                String seed = "seed " + pan.seed() + " " + piece.mark();
                for (Fold fold : piece.blank().folds()) {
                    onMetal(blank, from, fold.from(), seed + " " + fold);
                    onMetal(blank, from, fold.to(), seed + " " + fold);
                    double off = Math.abs(fold.from().across());
                    double offAbove = Math.abs(fold.to().across());
                    switch (fold.kind()) {
                        case CROWN ->
                            assertThat(off).as(seed).isEqualTo(offAbove).isZero();
                        case LOW -> assertThat(off).as(seed).isEqualTo(offAbove).isEqualTo(leg);
                        case RETURN ->
                            assertThat(off).as(seed).isEqualTo(offAbove).isCloseTo(leg + pan.flat(), within(NOTHING));
                        case WALL ->
                            assertThat(Math.min(off, offAbove)).as(seed).isGreaterThanOrEqualTo(leg - NOTHING);
                    }
                }
                for (Slit slit : piece.blank().slits()) {
                    assertThat(slit.from().across()).isZero();
                    assertThat(slit.to().across()).isZero();
                    onMetal(blank, from, slit.from(), seed + " " + slit);
                    onMetal(blank, from, slit.to(), seed + " " + slit);
                    assertThat(slit.to().up())
                            .as(seed)
                            .isGreaterThan(slit.from().up());
                }
            }
        }
    }

    private static void onMetal(Polygon blank, double from, Point2 place, String what) {
        assertThat(blank.distance(Jts.FACTORY.createPoint(new Coordinate(place.across(), place.up() + from))))
                .as(what)
                .isLessThan(1e-7);
    }

    /** Legs are parted once at each end of the rib that meets no other valley, whatever the pieces. */
    @ParameterizedTest(name = "seeds from {0}")
    @MethodSource("hundreds")
    void thePanIsSlitOnceAtEachOpenEndOfItsRib(long firstSeed) {
        for (AnyPan pan : pans(firstSeed)) {
            List<double[]> slits = pan.laid().pieces().stream()
                    .flatMap(p -> p.blank().slits().stream().map(s -> new double[] {
                        s.from().up() + p.from().metres(),
                        s.to().up() + p.from().metres()
                    }))
                    .toList();
            boolean below = !pan.edge().meetsValleyBelow() && pan.ribFrom() < 0;
            boolean above = !pan.edge().meetsValleyAbove() && pan.ribTo() > pan.length();
            assertThat(slits).as("seed %d", pan.seed()).hasSize((below ? 1 : 0) + (above ? 1 : 0));
            if (below) {
                assertThat(slits.get(0)[0]).isCloseTo(pan.ribFrom(), within(NOTHING));
                assertThat(slits.get(0)[1]).isCloseTo(0, within(NOTHING));
            }
            if (above) {
                double[] last = slits.get(slits.size() - 1);
                assertThat(last[0]).isCloseTo(pan.length(), within(NOTHING));
                assertThat(last[1]).isCloseTo(pan.ribTo(), within(NOTHING));
            }
        }
    }

    private static Geometry band(Geometry whole, double from, double to) {
        return OverlayNGRobust.overlay(
                whole, AnyPan.polygon(-10, from, 10, from, 10, to, -10, to), OverlayNG.INTERSECTION);
    }

    private static long count(ValleyLayout laid, FindingCode code) {
        return laid.findings().stream()
                .map(Finding::code)
                .filter(c -> c == code)
                .count();
    }

    /** 300 in and 16.7705 in of tails, 2 in of rib past the top: (318.7705 − 8) / (120 − 8) = 2.77, so three. */
    @Test
    void anOrdinaryValleyTakesTheFewestPiecesThatReach() {
        ValleyLayout laid = Pans.fixed(Pans.corner(6, 6, 90, 300), Pans.pan(120, 0));
        assertThat(laid.pieces()).extracting(PanPiece::mark).containsExactly("V1-1", "V1-2", "V1-3");
        assertThat(laid.pieces().stream().map(p -> Pans.inches(p.length())))
                .satisfiesExactly(
                        first -> assertThat(first).isCloseTo(120, within(1e-9)),
                        second -> assertThat(second).isCloseTo(120, within(1e-9)),
                        third -> assertThat(third).isCloseTo(318.7705 - 240 + 16, within(0.00005)));
        assertThat(laid.findings()).isEmpty();
    }

    /**
     * At the head of a square 6:12 corner the flats narrow over the last 16.77 in. Pieces of 120 in with laps of 8 reach 103.23
     * and 215.23; 218 in of valley and rib must end the second at 216 − 16.77, where the flats have their full width.
     */
    @Test
    void lapsStayBelowWhereTheFlatsNarrowToTheHead() {
        List<PanPiece> pieces =
                Pans.fixed(Pans.corner(6, 6, 90, 216), Pans.pan(120, 0)).pieces();
        assertThat(pieces).hasSize(3);
        assertThat(Pans.inches(pieces.get(2).from())).isCloseTo(216 - 16.7705 - 8, within(0.00005));
        assertThat(Pans.inches(pieces.get(2).length())).isCloseTo(16.7705 + 8 + 2, within(0.00005));
        assertThat(Pans.inches(pieces.get(1).length())).isCloseTo(216 - 95.2295 - 16.7705, within(0.0001));
    }

    /** 2:12 against 18:12: the steep side narrows over the last 90 in, more than a piece of 40 has, so laps lie there. */
    @Test
    void shortPiecesLapInANarrowingHead() {
        ValleyLayout laid = Pans.fixed(Pans.corner(2, 18, 90, 300), Pans.pan(40, 0));
        PanPiece last = laid.pieces().get(laid.pieces().size() - 1);
        assertThat(Pans.inches(last.length())).isLessThanOrEqualTo(40 + 1e-9);
        assertThat(Pans.inches(last.from())).isLessThanOrEqualTo(300 - 8.0);
    }

    /** The last piece of the valley above, 26.77 in, where none under 30 can be made: its neighbour gives up what it lacks. */
    @Test
    void aLastPieceTooShortToMakeIsLengthenedByItsNeighbour() {
        PanSpec pan = shortest(Pans.pan(120, 0), 30);
        ValleyLayout laid = Pans.fixed(Pans.corner(6, 6, 90, 216), pan);
        List<PanPiece> pieces = laid.pieces();
        assertThat(pieces).hasSize(3);
        assertThat(Pans.inches(pieces.get(2).length())).isCloseTo(30, within(1e-9));
        assertThat(Pans.inches(pieces.get(2).lap())).isCloseTo(8, within(1e-9));
        assertThat(Pans.inches(pieces.get(1).from())).isCloseTo(95.2295, within(0.00005));
        assertThat(Pans.inches(pieces.get(1).length())).isCloseTo(218 - 30 + 8 - 95.2295, within(0.00005));
        assertThat(laid.findings()).isEmpty();
    }

    private static PanSpec shortest(PanSpec pan, double inches) {
        return new PanSpec(
                pan.coilWidth(),
                pan.ribLeg(),
                pan.edgeReturn(),
                pan.holdBack(),
                pan.cover(),
                pan.widening(),
                pan.pieceLength(),
                Length.inches(inches),
                pan.lap(),
                pan.pastEave(),
                pan.wallTurnUp(),
                pan.ribPastEave(),
                pan.ribPastTop(),
                pan.ribPastValley(),
                pan.cleatLength());
    }

    /** A valley shorter than its lap has no room for one. */
    @Test
    void aValleyShorterThanItsLapIsOnePiece() {
        ValleyLayout laid = Pans.fixed(Pans.corner(6, 6, 90, 5), Pans.pan(24, 0));
        assertThat(laid.pieces()).hasSize(1);
    }

    /** 2:12 against 18:12: the flats of the steep side hang far below the foot, and the first lap still lies above it. */
    @Test
    void aLongTailMakesTheFirstPieceTooLongRatherThanPuttingALapInIt() {
        ValleyLayout laid = Pans.fixed(Pans.corner(2, 18, 90, 400), Pans.pan(60, 0));
        PanPiece first = laid.pieces().get(0);
        assertThat(first.from().metres()).isLessThan(Length.inches(-60).metres());
        assertThat(Pans.inches(laid.pieces().get(1).from())).isCloseTo(0, within(1e-9));
        assertThat(laid.findings()).extracting(Finding::code).contains(FindingCode.PAN_PIECE_TOO_LONG);
        assertThat(first.blank().slits()).hasSize(1);
        assertThat(laid.pieces().get(1).blank().slits()).isEmpty();
    }
}
