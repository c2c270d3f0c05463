package org.thalweg.drainage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.thalweg.drainage.InnerCorner.catchment;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thalweg.roof.Drawn;
import org.thalweg.roof.EdgeKind;
import org.thalweg.units.Length;

/** What drains to an edge, on drawn roofs; areas seen from above, square metres, counted on the drawing. */
class CatchmentTest {

    private static double area(Drawn.Read read, String ends, String plane) {
        return catchment(read, ends, plane).planArea().squareMetres();
    }

    private static double direct(Drawn.Read read, String ends, String plane) {
        return catchment(read, ends, plane).directPlanArea().squareMetres();
    }

    private static double above(Catchment catchment, double along) {
        return catchment.planAreaAbove(Length.metres(along)).squareMetres();
    }

    @Test
    void aValleyTakesTheCornerWhoseFallLinesEndOnIt() {
        Drawn.Read read = InnerCorner.read();
        assertThat(read.kind("VW")).isEqualTo(EdgeKind.VALLEY);
        assertThat(area(read, "VW", "VBCW")).isCloseTo(8, within(1e-12));
        assertThat(area(read, "VW", "VWDE")).isCloseTo(8, within(1e-12));
        assertThat(area(read, "VB", "VBCW")).isCloseTo(16, within(1e-12));
        assertThat(area(read, "VE", "VWDE")).isCloseTo(24, within(1e-12));
    }

    @Test
    void halfWayUpAQuarterOfATriangleIsStillToCome() {
        Catchment catchment = catchment(InnerCorner.read(), "VW", "VBCW");
        double all = catchment.planArea().squareMetres();
        assertThat(above(catchment, 3)).isCloseTo(2, within(1e-12));
        assertThat(above(catchment, 0)).isEqualTo(all);
        assertThat(above(catchment, -1)).isEqualTo(all);
        assertThat(above(catchment, 6)).isCloseTo(0, within(1e-12));
        assertThat(above(catchment, 7)).isZero();
    }

    @ParameterizedTest
    @CsvSource({"VBCW, VWDE", "VWDE, VBCW"})
    void alongIsCountedFromTheLowerEndWhicheverPlaneNamesTheEdge(String first, String second) {
        Drawn.Read read = InnerCorner.drawn().planes(first, second).read();
        assertThat(above(catchment(read, "VW", "VBCW"), 1)).isCloseTo(8 * 25 / 36.0, within(1e-12));
        assertThat(above(catchment(read, "VW", "VWDE"), 1)).isCloseTo(8 * 25 / 36.0, within(1e-12));
    }

    @Test
    void aRidgeAndARakeCatchNothing() {
        Drawn.Read read = InnerCorner.read();
        assertThat(area(read, "WC", "VBCW")).isZero();
        assertThat(area(read, "BC", "VBCW")).isZero();
    }

    /** 1 m wide and half a metre up the plan, a metre below the ridge. */
    private static Drawn chimney() {
        return InnerCorner.drawn()
                .corner('k', 2, 8.5, 1.25)
                .corner('l', 3, 8.5, 1.25)
                .corner('m', 3, 9, 1.5)
                .corner('n', 2, 9, 1.5);
    }

    @Test
    void waterPassesRoundAChimneyAndTheChimneyIsNotCounted() {
        Drawn.Read read = chimney().planes("VBCW klmn", "VWDE").read();
        assertThat(area(read, "VW", "VBCW")).isCloseTo(7.5, within(1e-12));
        assertThat(direct(read, "VW", "VBCW")).isCloseTo(7.5, within(1e-12));
        assertThat(area(read, "mn", "VBCW")).as("above the chimney").isCloseTo(1, within(1e-12));
        assertThat(area(read, "kl", "VBCW")).as("below the chimney").isZero();
    }

    @Test
    void aChimneysUpstandNamedAHeadWallStillLetsWaterPassRound() {
        Drawn.Read read = chimney()
                .planes("VBCW klmn", "VWDE")
                .named("mn", EdgeKind.HEAD_WALL)
                .read();
        assertThat(area(read, "VW", "VBCW")).isCloseTo(7.5, within(1e-12));
    }

    @Test
    void aPatchOfThePlaneInAnOpeningCarriesTheWaterOn() {
        Drawn.Read read = chimney().planes("VBCW klmn", "VWDE", "klmn").read();
        assertThat(read.kind("kl")).isEqualTo(EdgeKind.FLUSH);
        assertThat(area(read, "VW", "VBCW")).isCloseTo(8, within(1e-12));
        assertThat(direct(read, "VW", "VBCW")).isCloseTo(8 - 1.5, within(1e-12));
    }

    /** A gabled dormer 4 m wide whose front stands 1 m up a plane of 12 m by 6 m, all 6:12. */
    @Test
    void theValleysOfADormerTakeWhatComesDownAndBelowItOnlyItsOwnStripIsLeft() {
        Drawn.Read read = Drawn.plan("")
                .corner('A', 0, 0, 0)
                .corner('B', 12, 0, 0)
                .corner('C', 12, 6, 3)
                .corner('D', 0, 6, 3)
                .corner('f', 4, 1, 0.5)
                .corner('g', 8, 1, 0.5)
                .corner('h', 8, 2, 1)
                .corner('p', 6, 4, 2)
                .corner('q', 4, 2, 1)
                .corner('s', 4, 1, 1)
                .corner('t', 6, 1, 2)
                .corner('u', 8, 1, 1)
                .planes("ABCD fghpq", "qstp", "tuhp")
                .read();
        assertThat(read.kind("pq")).isEqualTo(EdgeKind.VALLEY);
        assertThat(area(read, "pq", "ABCD")).isCloseTo(6, within(1e-12));
        assertThat(area(read, "hp", "ABCD")).isCloseTo(6, within(1e-12));
        assertThat(area(read, "pq", "qstp")).isCloseTo(2, within(1e-12));
        assertThat(area(read, "hp", "tuhp")).isCloseTo(2, within(1e-12));
        assertThat(area(read, "AB", "ABCD")).isCloseTo(48 + 4, within(1e-12));
    }

    private static Drawn pitchBreak() {
        return InnerCorner.drawn()
                .corner('f', 8, 12, 2.5)
                .corner('e', 0, 12, 2.5)
                .planes("VBCW", "VWDE", "WCfe");
    }

    @Test
    void whatComesOverAPitchBreakRunsOnDownToTheValley() {
        Drawn.Read read = pitchBreak().read();
        assertThat(read.kind("WC")).isEqualTo(EdgeKind.PITCH_BREAK);
        Catchment catchment = catchment(read, "VW", "VBCW");
        assertThat(catchment.planArea().squareMetres()).isCloseTo(8 + 8, within(1e-12));
        assertThat(catchment.directPlanArea().squareMetres()).isCloseTo(8, within(1e-12));
        assertThat(above(catchment, 3)).isCloseTo(2 + 4, within(1e-12));
        assertThat(area(read, "VB", "VBCW")).isCloseTo(16 + 8, within(1e-12));
        assertThat(area(read, "VW", "VWDE")).isCloseTo(8, within(1e-12));
    }

    @Test
    void aWallAtThePitchBreakKeepsTheWaterAboveIt() {
        Drawn.Read read = pitchBreak().named("WC", EdgeKind.HEAD_WALL).read();
        assertThat(area(read, "VW", "VBCW")).isCloseTo(8, within(1e-12));
    }

    @Test
    void anExpansionJointLetsWaterOver() {
        Drawn.Read read = pitchBreak().named("WC", EdgeKind.EXPANSION_JOINT).read();
        assertThat(area(read, "VW", "VBCW")).isCloseTo(16, within(1e-12));
    }

    @Test
    void onePlaneDrawnAsTwoTrianglesDrainsAsOne() {
        Drawn.Read read = Drawn.plan("""
                D     C



                A     B
                """).height(2, "CD").planes("ABC", "ACD").read();
        assertThat(read.kind("AC")).isEqualTo(EdgeKind.FLUSH);
        assertThat(area(read, "AB", "ABC")).isCloseTo(24, within(1e-12));
        assertThat(direct(read, "AB", "ABC")).isCloseTo(12, within(1e-12));
        assertThat(area(read, "AC", "ACD")).isCloseTo(12, within(1e-12));
        assertThat(area(read, "AC", "ABC")).isZero();
    }

    /**
     * The upper plane falls along (−1, −4) to the hip and, west of the line y = 4x, over its own side; the lower plane falls
     * away from the hip.
     */
    @Test
    void waterThatFallsToAHipRunsOnOverIt() {
        Drawn.Read read = Drawn.plan("""
                P   W



                V   Q
                """)
                .height(2, "W")
                .height(1.6, "P")
                .planes("VQW", "VWP")
                .read();
        assertThat(read.kind("VW")).isEqualTo(EdgeKind.HIP);
        assertThat(area(read, "VW", "VWP")).isCloseTo(6, within(1e-12));
        assertThat(area(read, "PV", "VWP")).isCloseTo(2, within(1e-12));
        assertThat(direct(read, "VQ", "VQW")).isCloseTo(8, within(1e-12));
        assertThat(area(read, "VQ", "VQW")).isCloseTo(8 + 6, within(1e-12));
        assertThat(above(catchment(read, "VQ", "VQW"), 2)).isCloseTo(6 + 1.5, within(1e-12));
    }

    /** Water falls off the upper arm of a U lying on its side; the eave below does not get it. */
    @Test
    void metalAcrossAGapIsNotCounted() {
        Drawn.Read read = Drawn.plan("""
                H         G

                    E     F

                    C     D

                A         B
                """)
                .height(1, "CD")
                .height(2, "EF")
                .height(3, "GH")
                .planes("ABDCEFGH")
                .read();
        assertThat(area(read, "AB", "ABDCEFGH")).isCloseTo(24 + 12, within(1e-12));
        assertThat(area(read, "EF", "ABDCEFGH")).isCloseTo(12, within(1e-12));
        assertThat(area(read, "CD", "ABDCEFGH")).isZero();
    }

    @Test
    void aLevelPlaneHasNoFallLine() {
        Drawn.Read read = Drawn.plan("""
                D   C

                A   B
                """).planes("ABCD").read();
        Catchment catchment = catchment(read, "AB", "ABCD");
        assertThat(catchment.level()).isTrue();
        assertThat(catchment.planArea().squareMetres()).isZero();
        assertThat(catchment(InnerCorner.read(), "VW", "VBCW").level()).isFalse();
    }

    @Test
    void ofALevelPlaneAboveNothingIsKnown() {
        Drawn.Read read = InnerCorner.drawn()
                .corner('f', 8, 12, 2)
                .corner('e', 0, 12, 2)
                .planes("VBCW", "VWDE", "WCfe")
                .read();
        assertThat(read.kind("WC")).isEqualTo(EdgeKind.PITCH_BREAK);
        assertThat(area(read, "VW", "VBCW")).isCloseTo(8, within(1e-12));
    }
}
