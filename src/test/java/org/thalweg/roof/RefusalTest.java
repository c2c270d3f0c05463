package org.thalweg.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;
import org.thalweg.geometry.Point3;
import org.thalweg.units.Angle;
import org.thalweg.units.Count;
import org.thalweg.units.Length;

/** What is no roof, and how that is said. */
class RefusalTest {

    private static final String SHED = """
            D-----------C
            |           |
            |           |
            |           |
            A-----------B
            """;

    private static final String WITH_OPENINGS = """
            D-----------------C
            |                 |
            |  N--M   H--G    | Z
            |  |  |   |  |    |
            |  K--L   E--F    | Y
            |                 |
            A-----------------B
            """;

    private static Drawn shed() {
        return Drawn.plan(SHED).height(2, "CD");
    }

    private static Drawn withOpenings() {
        return Drawn.plan(WITH_OPENINGS).height(0, "ABCD");
    }

    private static Refusal only(Drawn drawn) {
        List<Refusal> refusals = drawn.refusals();
        assertThat(refusals).hasSize(1);
        return refusals.get(0);
    }

    @Test
    void aRingMayRepeatItsFirstCornerAtTheEnd() {
        assertThat(shed().planes("ABCDA").read().roof().edges()).hasSize(4);
    }

    @Test
    void twoCornersAreTooFew() {
        Refusal refusal = only(shed().planes("ABA"));
        assertThat(refusal.code()).isEqualTo(RefusalCode.TOO_FEW_CORNERS);
        assertThat(refusal.at()).hasToString("#/planes/0/outline");
        assertThat(refusal.actual()).isEqualTo(Optional.of(new Count(2)));
        assertThat(refusal.limit()).isEqualTo(Optional.of(new Count(3)));
    }

    @Test
    void aRingWithNoCornersIsRefusedToo() {
        assertThat(only(shed().planes("")).actual()).isEqualTo(Optional.of(new Count(0)));
    }

    @Test
    void cornersWithinTheToleranceAreOne() {
        Drawn drawn = shed().corner('E', 0.0007, 0, 0).planes("ABE");
        assertThat(only(drawn).code()).isEqualTo(RefusalCode.TOO_FEW_CORNERS);
        assertThat(shed().corner('E', 0.0007, 0, 0)
                        .planes("AEBCD")
                        .read()
                        .roof()
                        .edges())
                .hasSize(4);
    }

    @Test
    void anOpeningOfTwoCornersIsRefusedWhereItStands() {
        Refusal refusal = only(withOpenings().planes("ABCD KLMN EF"));
        assertThat(refusal.code()).isEqualTo(RefusalCode.TOO_FEW_CORNERS);
        assertThat(refusal.at()).hasToString("#/planes/0/openings/1/outline");
    }

    private static Drawn zigzag() {
        return Drawn.plan("""
                D-----------C
                |           |
                |   F   E   |
                |           |
                A-----------B
                """);
    }

    @Test
    void aRingThatCrossesItselfNamesBothSidesAsTheCallerCountsThem() {
        Refusal refusal = only(zigzag().planes("ABFCED"));
        assertThat(refusal.code()).isEqualTo(RefusalCode.RING_CROSSES_ITSELF);
        assertThat(refusal.at()).hasToString("#/planes/0/outline/4");
        assertThat(refusal.detail())
                .startsWith("Side 4 (corner 4 to 5) crosses side 2 (corner 2 to 3)")
                .contains("counted from 0");
    }

    @Test
    void aRingDrawnTheOtherWayRoundNamesTheSameSides() {
        Refusal refusal = only(zigzag().planes("DECFBA"));
        assertThat(refusal.at()).hasToString("#/planes/0/outline/2");
        assertThat(refusal.detail()).startsWith("Side 2 (corner 2 to 3) crosses side 0 (corner 0 to 1)");
    }

    /** Two corners swapped: the lobes are as large as each other, and the ring encloses nothing. */
    @Test
    void aBowTieNamesItsCrossing() {
        Refusal refusal = only(shed().planes("ABDC"));
        assertThat(refusal.code()).isEqualTo(RefusalCode.RING_CROSSES_ITSELF);
        assertThat(refusal.at()).hasToString("#/planes/0/outline/3");
        assertThat(refusal.detail()).startsWith("Side 3 (corner 3 to 0) crosses side 1 (corner 1 to 2)");
    }

    @Test
    void aRepeatedCornerDoesNotShiftTheNumbers() {
        Refusal refusal = only(shed().planes("AABDC"));
        assertThat(refusal.at()).hasToString("#/planes/0/outline/4");
        assertThat(refusal.detail()).startsWith("Side 4 (corner 4 to 0) crosses side 2 (corner 2 to 3)");
    }

    @Test
    void aSpikeRunsAlongItself() {
        Refusal refusal = only(shed().corner('E', 12, 7, 3.5).planes("ABECD"));
        assertThat(refusal.code()).isEqualTo(RefusalCode.RING_CROSSES_ITSELF);
        assertThat(refusal.detail()).startsWith("Side 2 (corner 2 to 3) runs along side 1 (corner 1 to 2)");
    }

    @Test
    void cornersOnOneLineAreNoPlane() {
        Refusal refusal = only(shed().corner('E', 5, 0, 0).planes("AEB"));
        assertThat(refusal.code()).isEqualTo(RefusalCode.RING_CROSSES_ITSELF);
        assertThat(refusal.detail()).contains("runs along");
    }

    @Test
    void aPlaneNarrowerThanTheToleranceEnclosesNothing() {
        Refusal refusal = only(shed().corner('E', 6, 0.0009, 0).planes("ABE"));
        assertThat(refusal.code()).isEqualTo(RefusalCode.RING_CROSSES_ITSELF);
        assertThat(refusal.at()).hasToString("#/planes/0/outline");
        assertThat(refusal.detail()).contains("encloses nothing");
    }

    @Test
    void aRingMayTouchItselfInAPoint() {
        Drawn pinched = Drawn.plan("""
                        D-----------C
                        |           |
                        |   H   G   |
                        |           |
                        A-----E-----B
                        """).planes("AEHGEBCD");
        assertThat(pinched.refusals()).isEmpty();
    }

    @Test
    void aWallIsNoRoof() {
        Refusal refusal =
                only(shed().move("CD", p -> new Point3(p.x(), 0.02, 2)).planes("ABCD"));
        assertThat(refusal.code()).isEqualTo(RefusalCode.PLANE_UPRIGHT);
        assertThat(refusal.limit()).isEqualTo(Optional.of(Angle.degrees(89)));
        assertThat(shed().move("CD", p -> new Point3(p.x(), 0.04, 2))
                        .planes("ABCD")
                        .refusals())
                .isEmpty();
    }

    @Test
    void aTwistedPlaneIsRefusedAtItsFurthestCorner() {
        Refusal refusal =
                only(shed().move("C", p -> new Point3(p.x(), p.y(), 2.4)).planes("ABCD"));
        assertThat(refusal.code()).isEqualTo(RefusalCode.PLANE_NOT_FLAT);
        assertThat(refusal.actual().orElseThrow()).isInstanceOf(Length.class);
        // AC × BD = (−1.6, −52.8, 96), 109.5737 long; along it the corners stand at 0, −19.2, 0 and −19.2.
        assertThat(((Length) refusal.actual().orElseThrow()).metres()).isCloseTo(9.6 / 109.5737, within(1e-7));
        // 1 % of the side of a square of 109.5737 / 2 square metres.
        assertThat(((Length) refusal.limit().orElseThrow()).metres()).isCloseTo(0.07402, within(1e-5));
    }

    @Test
    void anOpeningOffItsPlaneIsRefusedAtItsCorner() {
        Refusal refusal = only(withOpenings().height(1, "M").planes("ABCD KLMN"));
        assertThat(refusal.code()).isEqualTo(RefusalCode.PLANE_NOT_FLAT);
        assertThat(refusal.at()).hasToString("#/planes/0/openings/0/outline/2");
    }

    @Test
    void anOpeningThatCrossesTheOutlineIsOutside() {
        Refusal refusal = only(withOpenings().planes("ABCD EFYZ"));
        assertThat(refusal.code()).isEqualTo(RefusalCode.OPENING_OUTSIDE);
        assertThat(refusal.at().pointer()).startsWith("#/planes/0/openings/0/outline/");
        assertThat(refusal.detail()).contains("of the outline").contains("notch");
    }

    @Test
    void anOpeningBesideItsPlaneIsOutside() {
        Refusal refusal = only(withOpenings().corner('X', 25, 3, 0).planes("ABCD YXZ"));
        assertThat(refusal.code()).isEqualTo(RefusalCode.OPENING_OUTSIDE);
        assertThat(refusal.at().pointer()).startsWith("#/planes/0/openings/0/outline/");
    }

    @Test
    void anOpeningAroundItsPlaneIsOutside() {
        assertThat(only(withOpenings().planes("KLMN ABCD")).code()).isEqualTo(RefusalCode.OPENING_OUTSIDE);
    }

    @Test
    void anOpeningAlongTheOutlineIsOutside() {
        Refusal refusal =
                only(withOpenings().corner('P', 3, 0, 0).corner('Q', 6, 0, 0).planes("ABCD PQMN"));
        assertThat(refusal.code()).isEqualTo(RefusalCode.OPENING_OUTSIDE);
        assertThat(refusal.detail()).contains("runs along");
    }

    @Test
    void anOpeningMayTouchTheOutlineInAPoint() {
        assertThat(withOpenings().corner('P', 3, 0, 0).planes("ABCD PLN").refusals())
                .isEmpty();
    }

    @Test
    void openingsThatCrossOverlap() {
        Refusal refusal = only(withOpenings().planes("ABCD KFGN EFGH"));
        assertThat(refusal.code()).isEqualTo(RefusalCode.OPENINGS_OVERLAP);
        assertThat(refusal.at().pointer()).startsWith("#/planes/0/openings/1/outline/");
    }

    @Test
    void anOpeningInAnotherOverlaps() {
        Refusal refusal = only(withOpenings()
                .corner('P', 4, 3, 0)
                .corner('Q', 5, 3, 0)
                .corner('R', 4, 3.5, 0)
                .planes("ABCD KLMN PQR"));
        assertThat(refusal.code()).isEqualTo(RefusalCode.OPENINGS_OVERLAP);
        assertThat(refusal.detail()).contains("opening 0");
    }

    @Test
    void openingsMayTouchInAPoint() {
        assertThat(withOpenings().planes("ABCD KLMN LEFGH").refusals()).isEmpty();
    }

    @Test
    void planesAndOpeningsNeedIdsOfTheirOwn() {
        assertThat(only(shed().planes("ABCD", "ABCD")).code()).isEqualTo(RefusalCode.DUPLICATE_ID);
        assertThat(only(shed().planes("ABCD", "ABCD")).at()).hasToString("#/planes/1");
        List<Refusal> openings = withOpenings().planes("ABCD KLMN KLMN").refusals();
        assertThat(openings)
                .extracting(Refusal::code)
                .containsExactly(RefusalCode.DUPLICATE_ID, RefusalCode.OPENINGS_OVERLAP);
        assertThat(openings.get(0).at()).hasToString("#/planes/0/openings/1/outline");
    }

    @Test
    void allFaultsOfAllPlanesComeAtOnce() {
        List<Refusal> refusals = shed().corner('E', 5, 0, 0)
                .corner('F', 0, 0, 3)
                .planes("ABDC", "AB", "ABCD", "AEB", "ABF")
                .refusals();
        assertThat(refusals)
                .extracting(refusal -> refusal.code() + " " + refusal.at())
                .containsExactly(
                        "RING_CROSSES_ITSELF #/planes/0/outline/3",
                        "TOO_FEW_CORNERS #/planes/1/outline",
                        "RING_CROSSES_ITSELF #/planes/3/outline/2",
                        "PLANE_UPRIGHT #/planes/4/outline");
    }

    @Test
    void everyRefusalSaysWhatToDo() {
        List<Refusal> refusals = shed().planes("ABDC", "AB").refusals();
        assertThat(refusals).allSatisfy(refusal -> assertThat(refusal.detail().split("\\. ", -1))
                .hasSizeGreaterThanOrEqualTo(2));
    }
}
