package org.thalweg.trim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.thalweg.trim.TrimJobs.inches;
import static org.thalweg.trim.TrimJobs.laid;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thalweg.finding.Finding;
import org.thalweg.finding.FindingCode;
import org.thalweg.roof.Drawn;
import org.thalweg.roof.EdgeKind;
import org.thalweg.trim.Meeting.How;
import org.thalweg.trim.TrimShape.Turn;
import org.thalweg.units.Length;

/**
 * Trims of drawn roofs, cut by cut. Angles of 6:12 hips and valleys are the worked ones: they run at 48.1897° from the eave in
 * their planes and bend 36.8699°. [geometry]
 */
class TrimsTest {

    private static final Offset<Double> PRINTED = within(0.00005);
    private static final double SLOPE = 26.56505;
    private static final double HIP_IN_PLANE = 48.1897;

    @Test
    void aHippedRoofGetsATrimAlongEveryEdge() {
        assertThat(Trims.on(TrimJobs.roof(TrimJobs.hipped(TrimJobs::still)), TrimJobs.usual())
                        .layOut())
                .extracting(trim -> trim.edge().id() + " " + trim.profile().name())
                .containsExactly(
                        "E1 eave drip",
                        "H1 hip cap",
                        "R1 ridge cap",
                        "H2 hip cap",
                        "E2 eave drip",
                        "H3 hip cap",
                        "E3 eave drip",
                        "H4 hip cap",
                        "E4 eave drip");
    }

    /** Deck legs meet over the hip, faces on a plumb line, and the kick, 3/8 in out, at 45° in plan. */
    @Test
    void eavesAreMitredRoundAnOutsideCorner() {
        Trim eave = laid(TrimJobs.hipped(TrimJobs::still), "AB");
        for (TrimEnd end : List.of(eave.start(), eave.finish())) {
            assertThat(end.first().how()).isEqualTo(How.MITRED);
            assertThat(end.last()).isEqualTo(end.first());
            assertThat(end.last().kind()).isEqualTo(EdgeKind.EAVE);
            assertThat(end.last().plan().inDegrees()).isCloseTo(90, PRINTED);
            assertThat(end.last().planMitre().inDegrees()).isCloseTo(45, PRINTED);
            assertThat(end.last().angle().inDegrees()).isCloseTo(90, PRINTED);
            assertThat(end.last().inside()).isFalse();
            assertCuts(end, 90 - HIP_IN_PLANE, 0, 26.5651);
            assertThat(inches(end.cuts().get(0).inner())).isCloseTo(-3.5777, PRINTED);
            assertThat(inches(end.cuts().get(2).outer())).isCloseTo(0.375, PRINTED);
            assertThat(inches(end.reach())).isCloseTo(0.375, PRINTED);
            assertThat(inches(end.depth())).isCloseTo(3.9527, PRINTED);
        }
        assertThat(eave.start().hand()).isEqualTo(Hand.LEFT);
        assertThat(eave.finish().hand()).isEqualTo(Hand.RIGHT);
        assertThat(eave.hand()).isEmpty();
    }

    @Test
    void atAnInsideCornerTheSameCutsLeanTheOtherWay() {
        Trim eave = laid(TrimJobs.winged(TrimJobs::still), "DE");
        TrimEnd inner = eave.start().last().inside() ? eave.start() : eave.finish();
        assertThat(inner.last().inside()).isTrue();
        assertThat(inner.last().planMitre().inDegrees()).isCloseTo(45, PRINTED);
        assertCuts(inner, HIP_IN_PLANE - 90, 0, -26.5651);
        assertThat(inches(inner.reach()))
                .as("the deck leg runs on under the valley")
                .isCloseTo(3.5777, PRINTED);
    }

    /** At hips between 6:12 and 12:12 each deck leg is cut along the hip: 65.9052° and 35.2644° from its eave. */
    @ParameterizedTest
    @CsvSource({"AB, 65.9052", "BC, 35.2644"})
    void eavesUnderUnequalPitchesMeetOverTheHip(String ends, double hip) {
        Trim eave = laid(TrimJobs.steepEnds(TrimJobs::still), ends);
        assertThat(eave.start().cuts().get(0).cut().inDegrees()).isCloseTo(90 - hip, PRINTED);
        assertThat(eave.start().cuts().get(1).cut().inDegrees()).isCloseTo(0, PRINTED);
        assertThat(eave.finish().cuts().get(0).cut().inDegrees()).isCloseTo(90 - hip, PRINTED);
    }

    /** In the plane they share, ridge and hip stand 131.81° apart; half of what that lacks of a straight line is 24.0948°. */
    @Test
    void aRidgeCapIsMitredToTheHipCapsOnBothItsPlanes() {
        Trim ridge = laid(TrimJobs.hipped(TrimJobs::still), "KL");
        assertThat(ridge.profile().bends()).singleElement().satisfies(bend -> {
            assertThat(bend.turn().inDegrees()).isCloseTo(2 * SLOPE, PRINTED);
            assertThat(bend.up()).isFalse();
        });
        for (TrimEnd end : List.of(ridge.start(), ridge.finish())) {
            for (Meeting meeting : List.of(end.first(), end.last())) {
                assertThat(meeting.how()).isEqualTo(How.MITRED);
                assertThat(meeting.kind()).isEqualTo(EdgeKind.HIP);
                assertThat(meeting.plan().inDegrees()).isCloseTo(135, PRINTED);
                assertThat(meeting.angle().inDegrees()).isCloseTo(180 - HIP_IN_PLANE, PRINTED);
                assertThat(meeting.mitre().inDegrees()).isCloseTo(HIP_IN_PLANE / 2, PRINTED);
            }
            assertThat(end.first().edge()).isNotEqualTo(end.last().edge());
            assertCuts(end, HIP_IN_PLANE / 2, -HIP_IN_PLANE / 2);
            // The crown stops at the corner, raised straight up, and the edge of each leg of 6 in 2.6833 in before it.
            assertThat(inches(end.reach())).isCloseTo(0, PRINTED);
            assertThat(inches(end.cuts().get(0).inner())).isCloseTo(-2.6833, PRINTED);
            assertThat(inches(end.cuts().get(1).outer())).isCloseTo(-2.6833, PRINTED);
        }
    }

    @Test
    void aHipCapMeetsRidgeAndHipAtItsHeadAndIsCutAlongTheEavesAtItsFoot() {
        Trim hip = laid(TrimJobs.hipped(TrimJobs::still), "AK");
        assertThat(hip.seat().level()).isFalse();
        assertThat(hip.profile().bends().get(0).turn().inDegrees()).isCloseTo(36.8699, PRINTED);
        assertThat(List.of(hip.finish().first().kind(), hip.finish().last().kind()))
                .containsExactlyInAnyOrder(EdgeKind.RIDGE, EdgeKind.HIP);
        for (Meeting foot : List.of(hip.start().first(), hip.start().last())) {
            assertThat(foot.how()).isEqualTo(How.ENDS_ON);
            assertThat(foot.kind()).isEqualTo(EdgeKind.EAVE);
            assertThat(foot.plan().inDegrees()).isCloseTo(45, PRINTED);
            assertThat(foot.angle().inDegrees()).isCloseTo(HIP_IN_PLANE, PRINTED);
        }
        // The eaves fall away from the corner: the legs stop short of its crown like an arrow's head, an inch past the
        // eave.
        assertCuts(hip.start(), 90 - HIP_IN_PLANE, HIP_IN_PLANE - 90);
        // An inch past the eave is 1.3416 in along the hip; the crown stands 1.75 · tan 18.4349° outside of each plane
        // it is cut
        // with, which is another 0.5217 in.
        assertThat(inches(hip.start().cuts().get(0).outer())).isCloseTo(1.8634, PRINTED);
        assertThat(inches(hip.start().cuts().get(1).inner())).isCloseTo(1.8634, PRINTED);
    }

    /** Gable of 6:12 and 8:12: top legs end over the ridge, fasciae half-way between the rakes. */
    @Test
    void rakesAreMitredAtThePeak() {
        Trim front = laid(TrimJobs.gabled(TrimJobs::still), "BL");
        assertThat(front.hand()).contains(Hand.RIGHT);
        assertThat(front.edge().kind()).isEqualTo(EdgeKind.RAKE);
        Meeting peak = front.finish().last();
        assertThat(peak.kind()).isEqualTo(EdgeKind.RAKE);
        assertThat(peak.plan().inDegrees()).isCloseTo(180, PRINTED);
        assertThat(peak.planMitre().inDegrees()).isCloseTo(0, PRINTED);
        double bothSlopes = SLOPE + 33.69007;
        assertThat(peak.angle().inDegrees()).isCloseTo(180 - bothSlopes, PRINTED);
        List<LegCut> cuts = front.finish().cuts();
        assertThat(cuts.get(1).cut().inDegrees()).as("top leg").isCloseTo(0, PRINTED);
        // The fasciae hang into the gable, so their lower lines meet before the peak.
        assertThat(cuts.get(2).cut().inDegrees()).as("fascia").isCloseTo(-bothSlopes / 2, PRINTED);
    }

    /** The rake cover lies a seam higher than the drip: on the roof each runs to the edge; their fasciae close on a plumb line. */
    @Test
    void aRakeAndAnEaveCloseOnAPlumbLine() {
        Trim rake = laid(TrimJobs.gabled(TrimJobs::still), "BL");
        Trim eave = laid(TrimJobs.gabled(TrimJobs::still), "AB");
        assertThat(rake.start().first().how()).isEqualTo(How.ENDS_ON);
        assertThat(rake.start().last().how()).isEqualTo(How.MITRED);
        assertThat(rake.start().last().kind()).isEqualTo(EdgeKind.EAVE);
        assertThat(rake.start().last().planMitre().inDegrees()).isCloseTo(45, PRINTED);
        assertThat(rake.start().last().angle().inDegrees()).isCloseTo(90, PRINTED);
        assertThat(rake.start().cuts().get(1).cut().inDegrees()).as("top leg").isCloseTo(0, PRINTED);
        // Square to the rake is down and uphill, so the lower line must reach further to come under the corner.
        assertThat(rake.start().cuts().get(2).cut().inDegrees()).as("plumb cut").isCloseTo(SLOPE, PRINTED);
        assertThat(eave.finish().cuts().get(0).cut().inDegrees()).as("deck").isCloseTo(0, PRINTED);
        assertThat(eave.finish().cuts().get(1).cut().inDegrees()).as("face").isCloseTo(0, PRINTED);
    }

    /** A caller's rake edge that lies on the deck like the eave's: both legs are cut at half of a right angle. */
    @Test
    void aRakeEdgeOnTheDeckIsMitredToTheEaveThere() {
        Map<EdgeKind, TrimOrder> orders = new EnumMap<>(TrimOrder.usual());
        orders.put(EdgeKind.RAKE, new TrimOrder(Optional.of(angle(4, 2)), inches(3)));
        Drawn.Read read = TrimJobs.gabled(TrimJobs::still).read();
        List<Trim> trims = Trims.on(read.roof(), TrimJobs.spec(orders, Hand.LEFT, false, 1))
                .layOut();
        Trim rake = TrimJobs.of(trims, read, "BL");
        Trim eave = TrimJobs.of(trims, read, "AB");
        assertThat(rake.start().first().how()).isEqualTo(How.MITRED);
        assertThat(rake.start().first().mitre().inDegrees()).isCloseTo(45, PRINTED);
        assertThat(rake.start().cuts().get(0).cut().inDegrees()).isCloseTo(45, PRINTED);
        assertThat(eave.finish().cuts().get(0).cut().inDegrees()).isCloseTo(45, PRINTED);
    }

    private static TrimShape angle(double onRoof, double face) {
        return new TrimShape(
                "angle",
                List.of(inches(onRoof), inches(face)),
                List.of(Turn.OF_EDGE),
                0,
                Length.ZERO,
                Optional.empty(),
                Optional.empty());
    }

    @Test
    void aRidgeCapEndsSquareAtTheRakesAnInchPast() {
        Trim ridge = laid(TrimJobs.gabled(TrimJobs::still), "KL");
        for (TrimEnd end : List.of(ridge.start(), ridge.finish())) {
            assertThat(end.first().how()).isEqualTo(How.ENDS_ON);
            assertThat(end.first().kind()).isEqualTo(EdgeKind.RAKE);
            assertCuts(end, 0, 0);
            assertThat(inches(end.reach())).isCloseTo(1, PRINTED);
        }
    }

    /** Base legs at half of a right angle; the upstands are square to the plane and close on the corner of the kerb. */
    @Test
    void theFlashingOfAKerbRunsRoundIt() {
        for (String side : List.of("PQ", "QR", "RS", "SP")) {
            Trim kerb = laid(TrimJobs.gabled(TrimJobs::still), side);
            assertThat(kerb.edge().kind()).isEqualTo(EdgeKind.OPENING);
            for (TrimEnd end : List.of(kerb.start(), kerb.finish())) {
                assertThat(end.first().how()).isEqualTo(How.MITRED);
                assertThat(end.first().inside())
                        .as("the roof goes round the corner")
                        .isTrue();
                assertThat(end.cuts().get(1).cut().inDegrees()).as("base").isCloseTo(-45, PRINTED);
                assertThat(end.cuts().get(2).cut().inDegrees()).as("upstand").isCloseTo(0, PRINTED);
                assertThat(inches(end.reach())).as("the outer line of the base").isCloseTo(4, PRINTED);
            }
        }
    }

    /** Slope of 9:12, 36.8699°: the wall of a chimney stands plumb, so at its side the upstand is cut at the slope. */
    @Test
    void theFlashingsOfAChimneyCloseOnPlumbLines() {
        Drawn leaning = TrimJobs.leaning(TrimJobs::still);
        Trim side = laid(leaning, "QR");
        assertThat(side.seat().bend().inDegrees()).isCloseTo(90, PRINTED);
        assertThat(side.start().last().how()).isEqualTo(How.MITRED);
        // Square to the slope is up and downhill, so the upper line stops short at the lower end.
        assertThat(side.start().cuts().get(2).cut().inDegrees()).isCloseTo(-36.8699, PRINTED);
        assertThat(side.finish().cuts().get(2).cut().inDegrees()).isCloseTo(36.8699, PRINTED);
        Trim below = laid(leaning, "PQ");
        assertThat(below.seat().bend().inDegrees()).as("apron").isCloseTo(90 - 36.8699, PRINTED);
        assertThat(below.start().cuts().get(2).cut().inDegrees()).isCloseTo(0, PRINTED);
        assertThat(laid(leaning, "RS").seat().bend().inDegrees()).as("back").isCloseTo(90 + 36.8699, PRINTED);
    }

    @Test
    void aSideWallFlashingEndsAtTheEaveAndRunsOnAsTheSlopeChanges() {
        Drawn leaning = TrimJobs.leaning(TrimJobs::still);
        Trim lower = laid(leaning, "BC");
        assertThat(lower.hand()).contains(Hand.RIGHT);
        assertThat(lower.start().first().how()).isEqualTo(How.ENDS_ON);
        assertThat(lower.start().first().kind()).isEqualTo(EdgeKind.EAVE);
        assertThat(lower.start().cuts().get(1).cut().inDegrees()).as("base").isCloseTo(0, PRINTED);
        // The lower slope is 4:12, 18.4349°; the wall's leg is cut plumb over the eave.
        assertThat(lower.start().cuts().get(2).cut().inDegrees()).as("wall").isCloseTo(-18.4349, PRINTED);
        assertThat(lower.finish().last().how()).isEqualTo(How.MITRED);
        assertThat(lower.finish().last().kind()).isEqualTo(EdgeKind.SIDE_WALL);
        // Half of the 18.4349° by which the two slopes differ, in the wall they both run along.
        assertThat(lower.finish().last().mitre().inDegrees()).isCloseTo((36.8699 - 18.4349) / 2, PRINTED);
        assertThat(Math.abs(lower.finish().cuts().get(2).cut().inDegrees())).isCloseTo(9.2175, PRINTED);
        assertThat(lower.finish().cuts().get(1).cut().inDegrees()).as("base").isCloseTo(0, PRINTED);
    }

    @Test
    void aPitchBreakFlashingHasItsFirstLegUnderTheUpperPlane() {
        Trim pitchBreak = laid(TrimJobs.leaning(TrimJobs::still), "CD");
        assertThat(pitchBreak.edge().kind()).isEqualTo(EdgeKind.PITCH_BREAK);
        assertThat(pitchBreak.seat().bend().inDegrees())
                .as("up: the lower slope is flatter")
                .isCloseTo(18.4349, PRINTED);
        assertThat(pitchBreak.seat().across().y()).as("towards the eave").isNegative();
        assertThat(pitchBreak.start().first().kind()).as("the left end").isEqualTo(EdgeKind.RAKE);
        assertThat(pitchBreak.finish().first().kind()).isEqualTo(EdgeKind.SIDE_WALL);
        assertThat(inches(pitchBreak.start().reach())).as("past the rake").isCloseTo(1, PRINTED);
        assertThat(inches(pitchBreak.finish().reach())).as("up to the wall").isCloseTo(0, PRINTED);
    }

    /** A level deck with one plane rising from its back and one falling from its side: over the first break, under the second. */
    @Test
    void aLegOverThePanelsOfAPlaneDoesNotMeetOneUnderThem() {
        Drawn deck = Drawn.plan("")
                .corner('A', 0, 0, 0)
                .corner('B', 4, 0, 0)
                .corner('C', 4, 4, 0)
                .corner('D', 0, 4, 0)
                .corner('E', 4, 8, 2)
                .corner('F', 0, 8, 2)
                .corner('G', 8, 0, -2)
                .corner('H', 8, 4, -2)
                .planes("ABCD", "DCEF", "BGHC");
        Trim back = laid(deck, "CD");
        Trim side = laid(deck, "BC");
        Meeting over = back.start().last().kind() == EdgeKind.PITCH_BREAK
                ? back.start().last()
                : back.finish().last();
        assertThat(over.kind()).isEqualTo(EdgeKind.PITCH_BREAK);
        assertThat(over.how()).isEqualTo(How.ENDS_ON);
        assertThat(List.of(side.start().first(), side.finish().first()))
                .filteredOn(meeting -> meeting.kind() == EdgeKind.PITCH_BREAK)
                .extracting(Meeting::how)
                .containsExactly(How.ENDS_ON);
    }

    @Test
    void anEaveThatGoesOnInLineIsCutSquare() {
        Drawn.Read read = TrimJobs.parted(TrimJobs::still).read();
        List<Trim> trims = Trims.on(read.roof(), TrimJobs.usual()).layOut();
        for (TrimEnd end : List.of(
                TrimJobs.of(trims, read, "AB").finish(),
                TrimJobs.of(trims, read, "BC").start())) {
            assertThat(end.first().how()).isEqualTo(How.MITRED);
            assertThat(end.first().plan().inDegrees()).isCloseTo(180, PRINTED);
            assertThat(end.first().planMitre().inDegrees()).isCloseTo(0, PRINTED);
            assertCuts(end, 0, 0, 0);
            assertThat(end.reach().metres()).isCloseTo(0, within(1e-9));
        }
    }

    /** A free peak of 6:12: the cover bends 90° and the slope, and its fascia hangs plumb. */
    @Test
    void aPeakCoverBendsMoreThanSquare() {
        Trim peak = laid(TrimJobs.parted(TrimJobs::still), "DE");
        assertThat(peak.profile().name()).isEqualTo("peak cover");
        assertThat(peak.seat().bend().inDegrees()).isCloseTo(-90 - SLOPE, PRINTED);
        assertThat(peak.start().hand()).as("seen from behind").isEqualTo(Hand.RIGHT);
    }

    /** 12 m is 472.44 in, and 3/8 in at either end: five pieces of 120 in that lap 3 in, the last 5.19 in and so lengthened. */
    @Test
    void piecesOfAnEaveAreLaidFromTheLeft() {
        Trim eave = laid(TrimJobs.hipped(TrimJobs::still), "AB");
        assertThat(inches(eave.run())).isCloseTo(473.1909, PRINTED);
        assertThat(eave.pieces()).extracting(TrimPiece::mark).containsExactly("E1-1", "E1-2", "E1-3", "E1-4", "E1-5");
        assertThat(eave.pieces())
                .extracting(piece -> Math.round(1000 * inches(piece.length())) / 1000.0)
                .containsExactly(120.0, 120.0, 120.0, 113.191, 12.0);
        assertThat(inches(eave.pieces().get(0).from())).isCloseTo(-0.375, PRINTED);
        assertThat(inches(eave.pieces().get(1).from())).isCloseTo(116.625, PRINTED);
        assertThat(inches(eave.pieces().get(1).lap())).isCloseTo(3, PRINTED);
        assertThat(eave.findings()).isEmpty();
    }

    @Test
    void orFromTheRightIfSoAsked() {
        Drawn.Read read = TrimJobs.hipped(TrimJobs::still).read();
        Trim eave = TrimJobs.of(
                Trims.on(read.roof(), TrimJobs.spec(TrimOrder.usual(), Hand.RIGHT, false, 1))
                        .layOut(),
                read,
                "AB");
        TrimPiece first = eave.pieces().get(0);
        assertThat(inches(first.from()) + inches(first.length())).isCloseTo(472.4409 + 0.375, PRINTED);
        assertThat(inches(eave.pieces().get(4).from())).isCloseTo(-0.375, PRINTED);
    }

    @Test
    void piecesOfAHipAreLaidFromBelow() {
        Trim hip = laid(TrimJobs.hipped(TrimJobs::still), "AK");
        assertThat(hip.seat().start().z()).isZero();
        assertThat(hip.pieces().get(0).from().metres()).isNegative();
        assertThat(hip.pieces().get(1).from()).isGreaterThan(hip.pieces().get(0).from());
    }

    @Test
    void ridgesAreVentedIfSoAskedAndThenLapOverTheHips() {
        Drawn.Read read = TrimJobs.hipped(TrimJobs::still).read();
        List<Trim> trims = Trims.on(read.roof(), TrimJobs.spec(TrimOrder.usual(), Hand.LEFT, true, 1))
                .layOut();
        Trim ridge = TrimJobs.of(trims, read, "KL");
        assertThat(ridge.profile().name()).isEqualTo("vented ridge cap");
        assertThat(ridge.start().first().how()).as("an inch above the hip caps").isEqualTo(How.ENDS_ON);
        assertThat(ridge.start().first().kind()).isEqualTo(EdgeKind.HIP);
        Trim hip = TrimJobs.of(trims, read, "AK");
        assertThat(List.of(hip.finish().first().how(), hip.finish().last().how()))
                .containsExactlyInAnyOrder(How.ENDS_ON, How.MITRED);
    }

    @Test
    void kindsThatAreNotOrderedGetNothingAndNothingIsMitredToThem() {
        Map<EdgeKind, TrimOrder> orders = new EnumMap<>(TrimOrder.usual());
        orders.remove(EdgeKind.HIP);
        Drawn.Read read = TrimJobs.hipped(TrimJobs::still).read();
        List<Trim> trims = Trims.on(read.roof(), TrimJobs.spec(orders, Hand.LEFT, false, 1))
                .layOut();
        assertThat(trims).noneMatch(trim -> trim.edge().kind() == EdgeKind.HIP);
        assertThat(TrimJobs.of(trims, read, "KL").start().first().how()).isEqualTo(How.ENDS_ON);
    }

    /** Stubs of 2 in beside a coil of 20 in for caps of 26. */
    @Test
    void whatCanNotBeMadeIsFound() {
        Map<EdgeKind, TrimOrder> orders = new EnumMap<>(TrimOrder.usual());
        orders.put(EdgeKind.RIDGE, new TrimOrder(Optional.of(angle(13, 13)), inches(4)));
        Drawn narrow = Drawn.plan("")
                .corner('A', 0, 0, 0)
                .corner('B', 0.05, 0, 0)
                .corner('C', 0.05, 4, 0)
                .corner('D', 0, 4, 0)
                .corner('K', 0, 2, 1)
                .corner('L', 0.05, 2, 1)
                .planes("ABLK", "CDKL");
        Drawn.Read read = narrow.read();
        Trim ridge = TrimJobs.of(
                Trims.on(read.roof(), TrimJobs.spec(orders, Hand.LEFT, false, 1))
                        .layOut(),
                read,
                "KL");
        assertThat(ridge.findings())
                .extracting(Finding::code)
                .containsExactly(FindingCode.TRIM_WIDER_THAN_COIL, FindingCode.TRIM_PIECE_TOO_SHORT);
        assertThat(inches((Length) ridge.findings().get(1).actual().orElseThrow()))
                .as("50 mm and an inch past either rake")
                .isCloseTo(50 / 25.4 + 2, PRINTED);
    }

    /** A notch of 15 mm (0.59 in) in an eave: the kicks of the drip along it stop 3/8 in short of either corner. */
    @Test
    void cutsThatCrossOnAShortEdgeAreFound() {
        Drawn.Read read = Drawn.plan("")
                .corner('A', 0, 0, 0)
                .corner('B', 4, 0, 0)
                .corner('C', 4, 4, 2)
                .corner('D', 0, 4, 2)
                .corner('N', 2.0, 0, 0)
                .corner('O', 2.0, 0.015, 0.0075)
                .corner('P', 2.015, 0.015, 0.0075)
                .corner('Q', 2.015, 0, 0)
                .planes("ANOPQBCD")
                .read();
        Trim notch = TrimJobs.of(Trims.on(read.roof(), TrimJobs.usual()).layOut(), read, "OP");
        assertThat(notch.findings())
                .extracting(Finding::code)
                .containsExactly(FindingCode.TRIM_ENDS_CROSS, FindingCode.TRIM_PIECE_TOO_SHORT);
        assertThat(inches((Length) notch.findings().get(0).actual().orElseThrow()))
                .isCloseTo(15 / 25.4 - 0.75, PRINTED);
    }

    private static void assertCuts(TrimEnd end, double... degrees) {
        assertThat(end.cuts()).hasSize(degrees.length);
        for (int leg = 0; leg < degrees.length; leg++) {
            assertThat(end.cuts().get(leg).cut().inDegrees()).as("leg %d", leg).isCloseTo(degrees[leg], PRINTED);
        }
    }
}
