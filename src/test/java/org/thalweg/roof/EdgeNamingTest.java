package org.thalweg.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.thalweg.finding.FindingCode;
import org.thalweg.finding.RefusalCode;
import org.thalweg.geometry.Point3;

/** Roofs drawn in plan: which name each edge gets. */
class EdgeNamingTest {

    private static final String GABLE = """
            D-----------C
            |           |
            R-----------S
            |           |
            A-----------B
            """;

    private static Drawn gable() {
        return Drawn.plan(GABLE).height(1.5, "RS").planes("ABSR", "CDRS");
    }

    @Nested
    class Gable {
        private final Drawn.Read roof = gable().read();

        @Test
        void aLevelEdgeThatBothPlanesFallAwayFromIsARidge() {
            assertThat(roof.kind("RS")).isEqualTo(EdgeKind.RIDGE);
            assertThat(roof.edge("RS").convex()).isTrue();
        }

        @Test
        void aLevelEdgeAtTheBottomOfItsPlaneIsAnEave() {
            assertThat(roof.kind("AB")).isEqualTo(EdgeKind.EAVE);
            assertThat(roof.kind("CD")).isEqualTo(EdgeKind.EAVE);
        }

        @Test
        void anEdgeAlongTheFallLineIsARake() {
            assertThat(roof.kind("BS")).isEqualTo(EdgeKind.RAKE);
            assertThat(roof.kind("SC")).isEqualTo(EdgeKind.RAKE);
            assertThat(roof.edge("BS").sides().get(0).mitre().inDegrees()).isCloseTo(90, within(1e-9));
        }

        @Test
        void edgesAreNamedInTheOrderOfPlanesAndCorners() {
            assertThat(roof.ids()).containsExactly("E1", "K1", "R1", "K2", "E2", "K3", "K4");
        }

        @Test
        void aSharedEdgeListsItsPlanesInTheirOrder() {
            assertThat(roof.planesAt("RS")).containsExactly("ABSR", "CDRS");
        }

        @Test
        void anEdgeRunsAsItsFirstPlaneRunsIt() {
            assertThat(roof.edge("RS").from()).isEqualTo(roof.drawn().corner('S'));
            assertThat(roof.edge("RS").at()).hasToString("#/planes/0/outline/2");
        }
    }

    @Test
    void anEdgeOfAPlaneDrawnClockwisePointsToTheCornerItsSideStartsAt() {
        Drawn.Read roof = Drawn.plan(GABLE).height(1.5, "RS").planes("RSBA").read();
        assertThat(roof.edge("SB").at()).hasToString("#/planes/0/outline/1");
        assertThat(roof.edge("SB").from()).isEqualTo(roof.drawn().corner('B'));
        assertThat(roof.ids()).containsExactly("T1", "K1", "E1", "K2");
    }

    @Test
    void aSlopedEdgeSharedByTwoPlanesThatFallAwayFromItIsAHip() {
        Drawn.Read roof = Drawn.plan("""
                        D---------C
                        |         |
                        |         |
                        |   R-S   |
                        |         |
                        |         |
                        A---------B
                        """)
                .height(2, "RS")
                .planes("ABSR", "BCS", "CDRS", "DAR")
                .read();
        assertThat(roof.kind("AR")).isEqualTo(EdgeKind.HIP);
        assertThat(roof.kind("BS")).isEqualTo(EdgeKind.HIP);
        assertThat(roof.kind("RS")).isEqualTo(EdgeKind.RIDGE);
        assertThat(roof.kind("DA")).isEqualTo(EdgeKind.EAVE);
        assertThat(roof.edge("AR").convex()).isTrue();
    }

    /** The wing's ridge ends in the valleys' top, at W; its planes stand on the main roof. */
    private static Drawn ell() {
        return Drawn.plan("""
                          F---Q---E
                          |       |
                          |       |
                          |       |
                D---------G   W   H---C
                |                     |
                R---------------------S
                |                     |
                |                     |
                |                     |
                A---------------------B
                """)
                .height(0, "ABCDEFGH")
                .height(4, "RS")
                .height(2, "Q")
                .move("R", p -> new Point3(p.x(), 5, 2.5))
                .move("S", p -> new Point3(p.x(), 5, 2.5))
                .move("DGHC", p -> new Point3(p.x(), 10, 0))
                .move("W", p -> new Point3(p.x(), 6, 2))
                .move("FE", p -> new Point3(p.x(), 15, 0))
                .move("Q", p -> new Point3(p.x(), 15, 2))
                .planes("ABSR", "CHWGDRS", "HEQW", "QFGW");
    }

    @Test
    void aSlopedEdgeSharedByTwoPlanesThatFallTowardsItIsAValley() {
        Drawn.Read roof = ell().read();
        assertThat(roof.kind("WG")).isEqualTo(EdgeKind.VALLEY);
        assertThat(roof.kind("WH")).isEqualTo(EdgeKind.VALLEY);
        assertThat(roof.kind("QW")).isEqualTo(EdgeKind.RIDGE);
        assertThat(roof.edge("WG").convex()).isFalse();
        assertThat(roof.roof().findings()).isEmpty();
    }

    @Test
    void aShedHasAHighEave() {
        Drawn.Read roof = Drawn.plan(GABLE).height(1, "RS").planes("ABSR").read();
        assertThat(roof.kind("RS")).isEqualTo(EdgeKind.HIGH_EAVE);
        assertThat(roof.kind("AB")).isEqualTo(EdgeKind.EAVE);
    }

    @Test
    void aLevelEdgeThatOnePlaneFallsToAndOneAwayFromIsAPitchBreak() {
        Drawn.Read flatter = Drawn.plan(GABLE)
                .height(0.5, "RS")
                .height(2, "CD")
                .planes("ABSR", "RSCD")
                .read();
        Drawn.Read steeper = Drawn.plan(GABLE)
                .height(1.5, "RS")
                .height(2, "CD")
                .planes("ABSR", "RSCD")
                .read();
        assertThat(flatter.kind("RS")).isEqualTo(EdgeKind.PITCH_BREAK);
        assertThat(flatter.edge("RS").convex()).isFalse();
        assertThat(steeper.kind("RS")).isEqualTo(EdgeKind.PITCH_BREAK);
        assertThat(steeper.edge("RS").convex()).isTrue();
    }

    @Test
    void aLevelEdgeThatBothPlanesFallToIsALevelValley() {
        Drawn.Read roof = Drawn.plan(GABLE)
                .height(1, "ABCD")
                .height(0, "RS")
                .planes("ABSR", "CDRS")
                .read();
        assertThat(roof.kind("RS")).isEqualTo(EdgeKind.LEVEL_VALLEY);
        assertThat(roof.codes()).containsExactly(FindingCode.LEVEL_VALLEY);
    }

    @Test
    void planesThatLieInOneAreFlush() {
        Drawn.Read roof = Drawn.plan(GABLE)
                .height(1, "RS")
                .height(2, "CD")
                .planes("ABSR", "RSCD")
                .read();
        assertThat(roof.kind("RS")).isEqualTo(EdgeKind.FLUSH);
    }

    @Test
    void anEdgeAtASlantIsAnAngledEaveBelowItsPlaneAndAnAngledRakeAbove() {
        Drawn.Read roof = Drawn.plan("""
                        D-------C
                        |       |
                        |       |
                        |       |
                        A-------B
                        """)
                .height(0, "A")
                .height(4, "C")
                .move("B", p -> new Point3(p.x(), p.y(), 8.0 / 3))
                .move("D", p -> new Point3(p.x(), p.y(), 4.0 / 3))
                .planes("ABCD")
                .read();
        assertThat(roof.kind("AB")).isEqualTo(EdgeKind.ANGLED_EAVE);
        assertThat(roof.kind("DA")).isEqualTo(EdgeKind.ANGLED_EAVE);
        assertThat(roof.kind("BC")).isEqualTo(EdgeKind.ANGLED_RAKE);
        assertThat(roof.kind("CD")).isEqualTo(EdgeKind.ANGLED_RAKE);
    }

    @Test
    void aLevelPlaneHasEavesAllRound() {
        Drawn.Read roof = Drawn.plan(GABLE).planes("ABCD").read();
        assertThat(roof.kinds()).containsOnly(EdgeKind.EAVE);
    }

    @Test
    void aLevelPlaneMeetsAnotherInAPitchBreak() {
        Drawn.Read mansard =
                Drawn.plan(GABLE).height(2, "CDRS").planes("ABSR", "RSCD").read();
        assertThat(mansard.kind("RS")).isEqualTo(EdgeKind.PITCH_BREAK);
        assertThat(mansard.edge("RS").convex()).isTrue();
    }

    /** 1/4:12: the hips slope 0.84°, less than many a ridge is out. */
    @Test
    void theHipsOfAnAlmostLevelRoofAreHips() {
        Drawn.Read roof = Drawn.plan("""
                        D-----------C
                        |           |
                        |           |
                        |     P     |
                        |           |
                        |           |
                        A-----------B
                        """)
                .height(1.0 / 8, "P")
                .move("ABCD", p -> new Point3(p.x() < 6 ? 0 : 12, p.y() < 3 ? -3 : 9, 0))
                .planes("ABP", "BCP", "CDP", "DAP")
                .read();
        assertThat(roof.edge("AP").slope().inDegrees()).isCloseTo(0.84, within(0.01));
        assertThat(roof.kind("AP")).isEqualTo(EdgeKind.HIP);
    }

    @Test
    void aRidgeMeasuredOneDegreeOutIsStillARidge() {
        double out = 12 * Math.tan(Math.toRadians(1));
        Drawn.Read roof = gable().read();
        Drawn.Read uneven = Drawn.plan(GABLE)
                .height(3, "R")
                .height(3 + out, "S")
                .planes("ABR", "BSR", "CDR", "CRS")
                .read();
        assertThat(uneven.edge("RS").slope().inDegrees()).isCloseTo(1, within(1e-9));
        assertThat(uneven.kind("RS")).isEqualTo(roof.kind("RS")).isEqualTo(EdgeKind.RIDGE);
    }

    @Nested
    class HalfWay {
        /** The lean-to on the right meets the eave BC of the roof on the left only from M to N. */
        private final Drawn.Read roof = Drawn.plan("""
                        D-----C
                        |     |
                        |     N--P
                        |     |  |
                        |     M--O
                        |     |
                        A-----B
                        """)
                .height(2, "AD")
                .height(1, "BC")
                .height(1, "MN")
                .height(0.8, "OP")
                .planes("ABCD", "MOPN")
                .read();

        @Test
        void anEdgeMetHalfWayIsSplitThere() {
            assertThat(roof.kind("MN")).isEqualTo(EdgeKind.PITCH_BREAK);
            assertThat(roof.planesAt("MN")).containsExactly("ABCD", "MOPN");
            assertThat(roof.kind("BM")).isEqualTo(EdgeKind.EAVE);
            assertThat(roof.kind("NC")).isEqualTo(EdgeKind.EAVE);
        }

        @Test
        void thePlaneHasACornerWhereOneEdgeEndsAndTheNextBegins() {
            assertThat(roof.plane("ABCD").shape().outer().size()).isEqualTo(6);
            assertThat(roof.plane("ABCD").area().squareMetres()).isCloseTo(6 * Math.sqrt(37), within(1e-12));
        }

        @Test
        void bothHalvesPointToTheCornerTheCallersSideStartsAt() {
            assertThat(roof.edge("BM").at()).hasToString("#/planes/0/outline/1");
            assertThat(roof.edge("NC").at()).hasToString("#/planes/0/outline/1");
        }
    }

    @Test
    void anEdgeThatIsOnlyTouchedStaysOne() {
        Drawn.Read roof = Drawn.plan("""
                        D-----C
                        |     | P
                        |     M
                        |     | O
                        A-----B
                        """)
                .height(2, "AD")
                .height(1, "BCM")
                .height(0.8, "OP")
                .planes("ABCD", "MOP")
                .read();
        assertThat(roof.kind("BC")).isEqualTo(EdgeKind.EAVE);
        assertThat(roof.plane("ABCD").shape().outer().size()).isEqualTo(4);
    }

    /** M is a corner of the plane below and lies half-way along the ridge of the plane above. */
    @Test
    void aCornerThatACallerDrewEndsAnEdge() {
        Drawn.Read roof =
                Drawn.plan("""
                        D-----------C
                        |           |
                        R-----M-----S
                        |           |
                        A-----------B
                        """).height(1.5, "RSM").planes("ABSMR", "CDRS").read();
        assertThat(roof.kind("RM")).isEqualTo(EdgeKind.RIDGE);
        assertThat(roof.kind("MS")).isEqualTo(EdgeKind.RIDGE);
    }

    @Test
    void theRimOfAHoleIsAnOpening() {
        Drawn.Read roof = skylight().read();
        assertThat(roof.kind("KL")).isEqualTo(EdgeKind.OPENING);
        assertThat(roof.kind("NK")).isEqualTo(EdgeKind.OPENING);
        assertThat(roof.ids()).containsExactly("E1", "K1", "T1", "K2", "O1", "O2", "O3", "O4");
        assertThat(roof.edge("LM").at()).hasToString("#/planes/0/openings/0/outline/1");
    }

    private static Drawn skylight() {
        return Drawn.plan("""
                D-----------C
                |           |
                |  N--M     |
                |  |  |     |
                |  K--L     |
                |           |
                A-----------B
                """).height(6, "CD").height(4, "MN").height(2, "KL").planes("ABCD KLMN");
    }

    /** A dormer that stands in a hole of the main plane: its sides meet the rim, front to back. */
    @Test
    void aRimThatAnotherPlaneStandsInIsAnEdgeLikeAnyOther() {
        Drawn.Read roof = Drawn.plan("""
                        D-----------C
                        |           |
                        |     T     |
                        |           |
                        |   K P L   |
                        |           |
                        A-----------B
                        """)
                .height(6, "CD")
                .height(4, "TP")
                .height(2, "KL")
                .planes("ABCD KLT", "KPT", "PLT")
                .read();
        assertThat(roof.kind("KT")).isEqualTo(EdgeKind.VALLEY);
        assertThat(roof.kind("LT")).isEqualTo(EdgeKind.VALLEY);
        assertThat(roof.kind("PT")).isEqualTo(EdgeKind.RIDGE);
        assertThat(roof.planesAt("KT")).containsExactly("ABCD", "KPT");
    }

    @Test
    void planesOnTheSameSideOfALineAreStacked() {
        Drawn.Read roof = Drawn.plan(GABLE)
                .height(1, "CD")
                .height(2, "RS")
                .planes("ABCD", "ABSR")
                .read();
        assertThat(roof.kind("AB")).isEqualTo(EdgeKind.STACKED);
        assertThat(roof.planesAt("AB")).containsExactly("ABCD", "ABSR");
        assertThat(roof.codes()).containsExactly(FindingCode.STACKED_PLANES);
    }

    @Nested
    class Crowded {
        /** Two planes below the line RS, one above: the flatter one below bends less. */
        private final Drawn.Read roof = Drawn.plan(GABLE)
                .height(2, "CD")
                .height(1, "RS")
                .corner('E', 0, -1, -3)
                .corner('F', 12, -1, -3)
                .planes("EFSR", "CDRS", "ABSR")
                .read();

        @Test
        void theTwoThatBendLeastAreNeighbours() {
            assertThat(roof.edges("RS")).hasSize(2);
            Edge pair =
                    roof.edges("RS").stream().filter(Edge::shared).findFirst().orElseThrow();
            assertThat(pair.kind()).isEqualTo(EdgeKind.FLUSH);
            assertThat(pair.sides()).extracting(Edge.EdgeSide::plane).containsExactly(1, 2);
        }

        @Test
        void theOtherIsStacked() {
            Edge other = roof.edges("RS").stream()
                    .filter(e -> !e.shared())
                    .findFirst()
                    .orElseThrow();
            assertThat(other.kind()).isEqualTo(EdgeKind.STACKED);
            assertThat(other.sides()).extracting(Edge.EdgeSide::plane).containsExactly(0);
        }

        @Test
        void aFindingSaysSoOnce() {
            assertThat(roof.codes()).containsExactly(FindingCode.CROWDED_EDGE);
        }
    }

    @Test
    void aNamedEdgeIsWhatItsCallerSays() {
        Drawn.Read roof = gable().named("AB", EdgeKind.HEAD_WALL).read();
        assertThat(roof.kind("AB")).isEqualTo(EdgeKind.HEAD_WALL);
        assertThat(roof.edge("AB").id()).isEqualTo("W1");
        assertThat(roof.kind("CD")).isEqualTo(EdgeKind.EAVE);
    }

    @Test
    void aNameHoldsForEveryEdgeOnTheLineBetweenItsPoints() {
        Drawn.Read roof = Drawn.plan("""
                        D-----------C
                        |           |
                        A---M---N---B
                        """)
                .height(1, "CD")
                .planes("AMNBCD")
                .named("BA", EdgeKind.SIDE_WALL)
                .read();
        assertThat(roof.kind("AM")).isEqualTo(EdgeKind.SIDE_WALL);
        assertThat(roof.kind("MN")).isEqualTo(EdgeKind.SIDE_WALL);
        assertThat(roof.kind("NB")).isEqualTo(EdgeKind.SIDE_WALL);
        assertThat(roof.kind("BC")).isEqualTo(EdgeKind.RAKE);
    }

    /** A neighbour's corner M stands on the eave; the wall runs from there. */
    @Test
    void aNameMayHoldForHalfASideThatSomethingTouches() {
        Drawn.Read roof = Drawn.plan("""
                        D-----------C
                        |           |
                        A-----M-----B
                             P O
                        """)
                .height(1, "CD")
                .height(-1, "OP")
                .planes("ABCD", "MPO")
                .named("MB", EdgeKind.HEAD_WALL)
                .read();
        assertThat(roof.kind("MB")).isEqualTo(EdgeKind.HEAD_WALL);
        assertThat(roof.kind("AM")).isEqualTo(EdgeKind.EAVE);
    }

    @Test
    void aNameThatNamesNoEdgeIsRefused() {
        assertThat(gable().named("AC", EdgeKind.SIDE_WALL)
                        .named("AB", EdgeKind.EAVE)
                        .refusals())
                .singleElement()
                .satisfies(refusal -> {
                    assertThat(refusal.code()).isEqualTo(RefusalCode.NO_SUCH_EDGE);
                    assertThat(refusal.at()).hasToString("#/edges/0");
                });
    }
}
