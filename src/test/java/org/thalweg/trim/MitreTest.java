package org.thalweg.trim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.thalweg.geometry.Point3;
import org.thalweg.roof.Drawn;
import org.thalweg.roof.EdgeKind;
import org.thalweg.trim.CutEnds.Arm;
import org.thalweg.trim.TrimShape.Turn;
import org.thalweg.units.Length;

/** Mitred trims set up in the world: cut ends come together, whatever the profile. */
class MitreTest {

    private static final double NOTHING = 1e-9;

    /** Everything mirrors at such corners: caps, kerbs, eaves of one pitch, rakes to a peak. */
    @ParameterizedTest
    @ValueSource(strings = {"hipped", "winged"})
    void cutEndsOfTrimsThatMirrorEachOtherCoincide(String which) {
        Drawn drawn = which.equals("hipped") ? TrimJobs.hipped(TrimJobs::still) : TrimJobs.winged(TrimJobs::still);
        List<Trim> trims = Trims.on(TrimJobs.roof(drawn), TrimJobs.usual()).layOut();
        int mitres = 0;
        for (Trim trim : trims) {
            for (Arm arm : CutEnds.arms(trim)) {
                if (arm.mitred()) {
                    assertThat(CutEnds.gap(arm, CutEnds.met(arm, trims).orElseThrow()))
                            .as("%s %s", trim.edge().id(), arm.meeting())
                            .isLessThan(NOTHING);
                    mitres++;
                }
            }
        }
        // Two sides of two ends: eaves at both, hips at their heads, the ridge at both.
        assertThat(mitres).isEqualTo(which.equals("hipped") ? 4 * 4 + 4 * 2 + 4 : MITRES_OF_WINGS);
    }

    /** Six eaves at both ends, five hips at their heads, two ridges at both but for the sides where they end on the valley. */
    private static final int MITRES_OF_WINGS = 6 * 4 + 5 * 2 + 2 * 4 - 2;

    @Test
    void cutEndsRoundAKerbCoincide() {
        List<Trim> trims = Trims.on(TrimJobs.roof(TrimJobs.gabled(TrimJobs::still)), TrimJobs.usual())
                .layOut();
        List<Arm> round = trims.stream()
                .filter(trim -> trim.edge().kind() == EdgeKind.OPENING)
                .flatMap(trim -> CutEnds.arms(trim).stream())
                .toList();
        assertThat(round).hasSize(16).allSatisfy(arm -> assertThat(
                        CutEnds.gap(arm, CutEnds.met(arm, trims).orElseThrow()))
                .isLessThan(NOTHING));
    }

    /**
     * Profiles made up from a seed, as many legs as they like, bent every way: round an equal-pitched roof, and on the sides of
     * caps, they still come together in the mitre plane.
     */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void cutEndsOfAnyProfileCoincide(long seed) {
        Random random = new Random(seed);
        Map<EdgeKind, TrimOrder> orders = new EnumMap<>(EdgeKind.class);
        TrimShape cap = symmetrical(random);
        orders.put(EdgeKind.EAVE, new TrimOrder(Optional.of(made(random, random.nextDouble() * 3)), Length.ZERO));
        orders.put(EdgeKind.HIP, new TrimOrder(Optional.of(cap), Length.ZERO));
        orders.put(EdgeKind.RIDGE, new TrimOrder(Optional.of(cap), Length.ZERO));
        List<Trim> trims = Trims.on(
                        TrimJobs.roof(TrimJobs.hipped(TrimJobs::still)), TrimJobs.spec(orders, Hand.LEFT, false, 1))
                .layOut();
        for (Trim trim : trims) {
            for (Arm arm : CutEnds.arms(trim)) {
                if (arm.mitred()) {
                    assertThat(CutEnds.gap(arm, CutEnds.met(arm, trims).orElseThrow()))
                            .as("%s %s", trim.edge().id(), arm.meeting())
                            .isLessThan(NOTHING);
                }
            }
        }
    }

    private static TrimShape made(Random random, double height) {
        int legs = 2 + random.nextInt(4);
        int atEdge = random.nextInt(legs - 1);
        return new TrimShape(
                "any",
                random.doubles(legs, 0.5, 6).mapToObj(Length::inches).toList(),
                turns(random, legs - 1, atEdge),
                atEdge,
                Length.inches(height),
                Optional.empty(),
                Optional.empty());
    }

    private static List<Turn> turns(Random random, int count, int atEdge) {
        return IntStream.range(0, count)
                .mapToObj(i -> i == atEdge ? Turn.OF_EDGE : Turn.degrees(random.nextDouble() * 200 - 100))
                .toList();
    }

    /** The same on both sides of its crown, so that caps mirror each other. */
    private static TrimShape symmetrical(Random random) {
        Length lip = Length.inches(0.5 + random.nextDouble());
        Length leg = Length.inches(3 + 6 * random.nextDouble());
        Turn turn = Turn.degrees(random.nextDouble() * 200 - 100);
        return new TrimShape(
                "any cap",
                List.of(lip, leg, leg, lip),
                List.of(turn, Turn.OF_EDGE, turn),
                1,
                Length.inches(random.nextDouble() * 3),
                Optional.empty(),
                Optional.empty());
    }

    /**
     * Unequal pitches, rakes to eaves, walls: the legs next to the bend are cut on one line, though one may reach further along
     * it.
     */
    @Test
    void cutsOfLegsThatMeetLieOnOneLine() {
        Set<EdgeKind> kinds = EnumSet.noneOf(EdgeKind.class);
        for (Drawn drawn : TrimJobs.all(TrimJobs::still)) {
            List<Trim> trims = Trims.on(TrimJobs.roof(drawn), TrimJobs.usual()).layOut();
            for (Trim trim : trims) {
                for (Arm arm : CutEnds.arms(trim)) {
                    if (arm.mitred()) {
                        Arm met = CutEnds.met(arm, trims).orElseThrow();
                        assertThat(CutEnds.outOfLine(arm, met))
                                .as("%s %s", trim.edge().id(), arm.meeting())
                                .isLessThan(NOTHING);
                        kinds.add(trim.edge().kind());
                    }
                }
            }
        }
        assertThat(kinds)
                .contains(EdgeKind.EAVE, EdgeKind.RAKE, EdgeKind.RIDGE, EdgeKind.HIP, EdgeKind.OPENING)
                .contains(EdgeKind.SIDE_WALL, EdgeKind.HEAD_WALL, EdgeKind.HIGH_EAVE);
    }

    /** Rakes of 6:12 and 6.1:12, a third of a degree from in line, with covers that do not quite lie in one line: one cut for both. */
    @Test
    void rakesAlmostInLineAreCutByOnePlane() {
        Drawn.Read read = Drawn.plan("")
                .corner('A', 0, 0, 0)
                .corner('B', 4, 0, 0)
                .corner('C', 4, 4, 2)
                .corner('D', 0, 4, 2)
                .corner('E', 4, 8, 2 + 4 * 6.1 / 12)
                .corner('F', 0, 8, 2 + 4 * 6.1 / 12)
                .planes("ABCD", "DCEF")
                .read();
        List<Trim> trims = Trims.on(read.roof(), TrimJobs.usual()).layOut();
        for (Arm arm : CutEnds.arms(TrimJobs.of(trims, read, "BC"))) {
            if (!arm.atStart() && arm.mitred()) {
                assertThat(CutEnds.outOfLine(arm, CutEnds.met(arm, trims).orElseThrow()))
                        .isLessThan(NOTHING);
            }
        }
        assertThat(TrimJobs.of(trims, read, "BC").finish().last().how()).isEqualTo(Meeting.How.MITRED);
    }

    /** The cut angle is that of the leg lying flat: its cut, its girth and what it reaches make a right triangle. */
    @Test
    void aCutIsAsLongAsItIsInTheWorld() {
        for (Drawn drawn : TrimJobs.all(TrimJobs::still)) {
            for (Trim trim : Trims.on(TrimJobs.roof(drawn), TrimJobs.usual()).layOut()) {
                for (LegCut cut : trim.start().cuts()) {
                    Point3 inner = trim.seat()
                            .inWorld(
                                    trim.section().get(cut.leg()),
                                    Length.metres(-cut.inner().metres()));
                    Point3 outer = trim.seat()
                            .inWorld(
                                    trim.section().get(cut.leg() + 1),
                                    Length.metres(-cut.outer().metres()));
                    double girth = trim.profile().girths().get(cut.leg()).metres();
                    assertThat(inner.distance(outer))
                            .isCloseTo(girth / cut.cut().cos(), within(NOTHING));
                    assertThat(cut.outer().metres() - cut.inner().metres())
                            .isCloseTo(girth * cut.cut().tan(), within(NOTHING));
                }
            }
        }
    }

    /** Eaves that meet at any angle in plan, inside or outside, of one pitch: half the turn in plan, 0 in line. */
    @ParameterizedTest
    @ValueSource(doubles = {40, 90, 120, 150, 179.5, 180.5, 200, 270, 320})
    void eavesAreMitredAtHalfOfWhatTheyTurn(double cornerDeg) {
        double half = Math.toRadians(cornerDeg / 2);
        double tan = 0.5;
        // Hip or valley runs from the corner at half of the angle; both planes rise off their eaves alike.
        double x = 4 * Math.cos(half);
        double y = 4 * Math.sin(half);
        double cos = Math.cos(2 * half);
        double sin = Math.sin(2 * half);
        Drawn.Read read = Drawn.plan("")
                .corner('O', 0, 0, 0)
                .corner('A', 9, 0, 0)
                .corner('P', x, y, tan * y)
                .corner('B', 9 * cos, 9 * sin, 0)
                .planes("OAP", "OPB")
                .read();
        List<Trim> trims = Trims.on(read.roof(), TrimJobs.usual()).layOut();
        Trim eave = TrimJobs.of(trims, read, "OA");
        Meeting meeting = eave.start().last();
        assertThat(meeting.planMitre().inDegrees()).isCloseTo(Math.abs(90 - cornerDeg / 2), within(NOTHING));
        assertThat(meeting.inside()).isEqualTo(cornerDeg > 180);
        double turn = (180 - cornerDeg) / 2;
        // The kick stands 3/8 in out of the face.
        double kick = 0.375 * Math.tan(Math.toRadians(turn));
        assertThat(TrimJobs.inches(eave.start().cuts().get(2).outer())).isCloseTo(kick, within(1e-6));
        for (Arm arm : CutEnds.arms(eave)) {
            if (arm.mitred() && arm.atStart()) {
                assertThat(CutEnds.gap(arm, CutEnds.met(arm, trims).orElseThrow()))
                        .isLessThan(NOTHING);
            }
        }
    }
}
