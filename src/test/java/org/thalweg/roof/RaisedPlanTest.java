package org.thalweg.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;
import org.thalweg.geometry.Point3;
import org.thalweg.units.Angle;
import org.thalweg.units.Pitch;

/** Plans raised to roofs: what follows from one height, and what is refused. */
class RaisedPlanTest {

    private static final Pattern CLOSES = Pattern.compile("A pitch of ([0-9.]+):12 would close it");

    /** A hipped house of 10 by 6 whose ends have another pitch than its sides: the ridge ends where both rise alike. */
    private static PlanDrawing hipped(double side, double end) {
        return hipped(side, end, end);
    }

    private static PlanDrawing hipped(double side, double end, double west) {
        double in = 3 * side / end;
        return new PlanDrawing()
                .plane("south", side, 0, 0, 10, 0, 10 - in, 3, in, 3)
                .plane("east", end, 10, 0, 10, 6, 10 - in, 3)
                .plane("north", side, 10, 6, 0, 6, in, 3, 10 - in, 3)
                .plane("west", west, 0, 6, 0, 0, in, 3);
    }

    /** A house with an opening in its south plane, over which a dormer stands: its front and its cheeks are walls. */
    private static PlanDrawing dormer() {
        return new PlanDrawing()
                .plane("south", 6, 0, 0, 10, 0, 10, 6, 0, 6)
                .opening("hole", 4, 1, 6, 1, 6, 3, 5, 4, 4, 3)
                .plane("left", 6, 4, 3, 4, 1, 5, 1, 5, 4)
                .plane("right", 6, 6, 1, 6, 3, 5, 4, 5, 1)
                .height("south", 0, 3);
    }

    private static PlanDrawing walledDormer() {
        return dormer().named("south", Optional.of("hole"), 0, EdgeKind.HEAD_WALL)
                .named("south", Optional.of("hole"), 1, EdgeKind.SIDE_WALL)
                .named("south", Optional.of("hole"), 4, EdgeKind.SIDE_WALL);
    }

    /** By hand: 6:12 over 3 m rises 1.5 m; true area is plan area over the cosine of the slope. */
    @ParameterizedTest
    @CsvSource({"6,6", "6,8", "4,12"})
    void everyPlaneHasItsPitchAndItsTrueArea(double side, double end) {
        Roof roof = hipped(side, end).height("south", 0, 2.5).read();
        double in = 3 * side / end;
        double[] pitch = {side, end, side, end};
        double[] plan = {3 * (10 - in), 3 * in, 3 * (10 - in), 3 * in};
        for (int p = 0; p < 4; p++) {
            Plane plane = roof.planes().get(p);
            assertThat(plane.slope().radians()).isCloseTo(Math.atan(pitch[p] / 12), within(1e-12));
            assertThat(plane.planArea().squareMetres()).isCloseTo(plan[p], within(1e-12 * plan[p]));
            assertThat(plane.area().squareMetres())
                    .isCloseTo(plan[p] * Math.hypot(1, pitch[p] / 12), within(1e-11 * plan[p]));
        }
        Edge ridge = only(roof, EdgeKind.RIDGE);
        assertThat(ridge.from().z()).isCloseTo(2.5 + 3 * side / 12, within(1e-12));
        assertThat(roof.edges().stream().filter(e -> e.kind() == EdgeKind.HIP)).hasSize(4);
        assertThat(roof.edges().stream().filter(e -> e.kind() == EdgeKind.EAVE)).hasSize(4);
        assertThat(roof.edges()).hasSize(9);
    }

    @ParameterizedTest
    @ValueSource(strings = {"south 0", "south 2", "east 1", "north 3", "west 2"})
    void anyCornerMayBeTheOneWhoseHeightIsGiven(String given) {
        String[] named = given.split(" ");
        RoofSurvey eaves = RaisedPlan.of(hipped(6, 8).height("south", 0, 0).survey());
        int corner = Integer.parseInt(named[1]);
        double z = eaves.planes().stream()
                .filter(p -> p.id().equals(named[0]))
                .findFirst()
                .orElseThrow()
                .outline()
                .get(corner)
                .z();
        RoofSurvey again =
                RaisedPlan.of(hipped(6, 8).height(named[0], corner, z + 4).survey());
        assertHeights(again, eaves, 4);
    }

    @Test
    void aFallAndAnEaveSayTheSame() {
        double[] south = {0, 0, 10, 0, 10, 3, 0, 3};
        for (PlanPlane.Fall fall : List.of(
                new PlanPlane.ToEave(1, 0),
                new PlanPlane.ToEave(4, 1),
                new PlanPlane.Toward(Angle.degrees(270)),
                new PlanPlane.Toward(Angle.degrees(270 - 360)))) {
            double[] ring = {0, 0, 10, 0, 10, 3, 0, 3, 0, 0};
            assertHeights(
                    RaisedPlan.of(new PlanDrawing()
                            .plane("a", new Pitch(6, 12), fall, ring)
                            .height("a", 0, 1)
                            .survey()),
                    RaisedPlan.of(new PlanDrawing()
                            .plane("a", 6, south)
                            .height("a", 0, 1)
                            .survey()),
                    0);
        }
    }

    @Test
    void aLevelPlaneNeedsNoFallAndAnswersItsFinding() {
        Roof roof = new PlanDrawing()
                .plane("flat", new Pitch(0, 12), new PlanPlane.Nowhere(), 0, 0, 5, 0, 5, 5, 0, 5)
                .plane("steep", 6, 0, -3, 5, -3, 5, 0, 0, 0)
                .height("steep", 0, 1)
                .read();
        assertThat(roof.planes().get(0).level()).isTrue();
        assertThat(only(roof, EdgeKind.PITCH_BREAK).from().z()).isCloseTo(2.5, within(1e-12));
    }

    /** The porch's ridge ends midway in the main roof's slope, and two of its corners on the eave. */
    @Test
    void heightsGoOnWhereACornerLiesOnASideOfAnother() {
        Roof roof = new PlanDrawing()
                .plane("main", 6, 0, 0, 10, 0, 10, 5, 0, 5)
                .plane("porch", 3, 4, -2, 6, -2, 6, 0, 4, 0)
                .height("main", 3, 4.5)
                .read();
        Edge met = only(roof, EdgeKind.PITCH_BREAK);
        assertThat(met.from().z()).isCloseTo(2, within(1e-12));
        assertThat(met.to().z()).isCloseTo(2, within(1e-12));
        assertThat(met.length().metres()).isCloseTo(2, within(1e-12));
    }

    @Test
    void alongAWallPlanesDoNotMeetAndAtItsEndTheyDoWhereTheyShareAnotherSide() {
        Roof roof = walledDormer().read();
        assertThat(roof.edges().stream().filter(e -> e.kind() == EdgeKind.VALLEY))
                .hasSize(2);
        assertThat(roof.edges().stream().filter(e -> e.kind() == EdgeKind.SIDE_WALL))
                .hasSize(2);
        // South at y = 4 stands at 3 + 2 = 5, and the dormer's ridge runs level from there.
        Edge ridge = only(roof, EdgeKind.RIDGE);
        assertThat(ridge.from().z()).isCloseTo(5, within(1e-12));
        assertThat(ridge.to().z()).isCloseTo(5, within(1e-12));
        // Its eaves stand level with the lower ends of the valleys, at y = 3: a metre over the roof beside its front.
        assertThat(roof.edges().stream()
                        .filter(e -> e.kind() == EdgeKind.EAVE && e.from().y() > 0))
                .hasSize(2)
                .allSatisfy(eave -> assertThat(eave.from().z()).isCloseTo(4.5, within(1e-12)));
    }

    @Test
    void withoutItsWallsADormerIsRefusedWhereItDoesNotFit() {
        List<Refusal> refusals = dormer().refusals();
        assertThat(refusals).extracting(Refusal::code).containsOnly(RefusalCode.HEIGHTS_DISAGREE);
        assertThat(refusals.get(0).at()).hasToString("#/planes/1/outline/0");
        assertThat(refusals.get(0).detail()).contains("No pitch of this plane alone", "\"edges\"");
    }

    /** A garage against a house: a wall between them, so the garage has a height of its own. */
    @Test
    void aLowerRoofAgainstAWallTakesAHeightOfItsOwn() {
        PlanDrawing house = new PlanDrawing()
                .plane("house", 6, 0, 0, 10, 0, 10, 4, 0, 4)
                .plane("garage", 6, 10, 0, 14, 0, 14, 3, 10, 3)
                .named("garage", 3, EdgeKind.SIDE_WALL)
                .height("house", 0, 5);
        assertThat(house.refusals()).singleElement().satisfies(refusal -> {
            assertThat(refusal.code()).isEqualTo(RefusalCode.PLANE_WITHOUT_HEIGHT);
            assertThat(refusal.at()).hasToString("#/planes/1");
        });
        RoofSurvey raised = RaisedPlan.of(house.height("garage", 0, 2.5).survey());
        assertThat(raised.planes().get(1).outline().get(0).z()).isEqualTo(2.5);
        assertThat(raised.planes().get(0).outline().get(0).z()).isEqualTo(5);
    }

    /** By hand: the west end rises 3 m · 5/12 = 1.25 m where the sides rise 1.5 m. */
    @Test
    void heightsThatDisagreeAreToldAtTheCornerWithThePitchThatCloses() {
        List<Refusal> refusals = hipped(6, 6, 5).height("south", 0, 2).refusals();
        assertThat(refusals).singleElement().satisfies(refusal -> {
            assertThat(refusal.code()).isEqualTo(RefusalCode.HEIGHTS_DISAGREE);
            assertThat(refusal.at()).hasToString("#/planes/3/outline/2");
            assertThat(refusal.told())
                    .extracting(told -> told.figure().toString())
                    .hasSize(2);
            assertThat(refusal.detail()).contains("#/planes/0", "A pitch of 6:12 would close it");
        });
    }

    @Test
    void whereNoPitchClosesNoneIsTold() {
        // The east eave is not level with the south's: turned round one end it would have to fall the other way.
        PlanDrawing twisted = new PlanDrawing()
                .plane("south", 6, 0, 0, 10, 0, 7, 3, 3, 3)
                .plane("east", new Pitch(6, 12), new PlanPlane.Toward(Angle.degrees(180)), 10, 0, 10, 6, 7, 3)
                .height("south", 0, 0);
        assertThat(twisted.refusals()).singleElement().satisfies(refusal -> assertThat(refusal.detail())
                .contains("No pitch of this plane alone would close it."));
    }

    /** Hipped houses of any size and pitches, one end of which is off: posted with the pitch told, they are roofs. */
    @Test
    void thePitchThatIsToldCloses() {
        Random random = new Random(20_261_126);
        for (int i = 0; i < 500; i++) {
            double side = 1 + 11 * random.nextDouble();
            double end = side * (0.7 + random.nextDouble());
            double off = end * (0.5 + random.nextDouble());
            if (Math.abs(off - end) < 0.05) {
                continue;
            }
            double turn = 2 * Math.PI * random.nextDouble();
            double far = 1e5 * random.nextDouble();
            PlanDrawing wrong = moved(hipped(side, end, off), turn, far).height("south", 0, 2);
            List<Refusal> refusals = wrong.refusals();
            assertThat(refusals).hasSize(1);
            Matcher told = CLOSES.matcher(refusals.get(0).detail());
            assertThat(told.find()).as(refusals.get(0).detail()).isTrue();
            double closing = Double.parseDouble(told.group(1));
            assertThat(closing).isCloseTo(end, within(0.02));
            PlanPlane west = wrong.planes.remove(3);
            wrong.add(new PlanPlane(west.drawn(), new Pitch(closing, 12), west.fall()));
            assertThat(wrong.refusals()).isEmpty();
            assertThat(wrong.read().edges()).hasSize(9);
        }
    }

    /** The porch hangs on the west end, which is off: only the west end is told. */
    @Test
    void aPlaneRaisedByOneThatIsOffIsNotHeldToAccount() {
        PlanDrawing house =
                hipped(6, 6, 5).plane("porch", 3, -2, 6, -2, 2, 0, 2, 0, 6).height("south", 0, 2);
        assertThat(house.refusals()).extracting(r -> r.at().pointer()).containsExactly("#/planes/3/outline/2");
    }

    @Test
    void twoHeightsOfOnePlaneMustAgree() {
        assertThat(hipped(6, 6).height("south", 0, 2).height("south", 2, 3.5).refusals())
                .isEmpty();
        assertThat(hipped(6, 6).height("south", 0, 2).height("south", 2, 3.6).refusals())
                .singleElement()
                .satisfies(refusal -> {
                    assertThat(refusal.code()).isEqualTo(RefusalCode.HEIGHTS_DISAGREE);
                    assertThat(refusal.at()).hasToString("#/heights/1");
                });
    }

    @Test
    void heightsThatDifferByLessThanTheToleranceAreOne() {
        PlanDrawing near = hipped(6, 6, 6.002).height("south", 0, 2);
        assertThat(near.read().edges()).hasSize(9);
        assertThat(near.tolerance(0.0001).refusals()).hasSize(1);
    }

    @Test
    void namesThatNameNothingAreToldAllAtOnce() {
        List<Refusal> refusals = walledDormer()
                .named("attic", 0, EdgeKind.SIDE_WALL)
                .named("south", 4, EdgeKind.SIDE_WALL)
                .named("south", Optional.of("skylight"), 0, EdgeKind.SIDE_WALL)
                .height("attic", 0, 3)
                .height("left", 4, 3)
                .refusals();
        assertThat(refusals)
                .extracting(refusal -> refusal.code() + " " + refusal.at().pointer())
                .containsExactlyInAnyOrder(
                        "NO_SUCH_PLANE #/edges/3/plane",
                        "NO_SUCH_EDGE #/edges/4/side",
                        "NO_SUCH_EDGE #/edges/5/opening",
                        "NO_SUCH_PLANE #/heights/1/plane",
                        "NO_SUCH_CORNER #/heights/2/corner");
    }

    @Test
    void aSideWithoutLengthCannotBeNamedOrRisenFrom() {
        assertThat(new PlanDrawing()
                        .plane("a", 6, 0, 0, 0, 0, 5, 0, 5, 5)
                        .named("a", 0, EdgeKind.HEAD_WALL)
                        .height("a", 0, 0)
                        .refusals())
                .extracting(refusal -> refusal.code() + " " + refusal.at().pointer())
                .containsExactlyInAnyOrder("NOT_A_SIDE #/planes/0/eave", "NO_SUCH_EDGE #/edges/0/side");
    }

    @Test
    void anEaveIsASideOfTheOutline() {
        double[] ring = {0, 0, 10, 0, 10, 6, 0, 6};
        assertThat(new PlanDrawing()
                        .plane("a", new Pitch(6, 12), new PlanPlane.ToEave(0, 2), ring)
                        .plane("b", new Pitch(6, 12), new PlanPlane.ToEave(4, 0), ring)
                        .height("a", 0, 0)
                        .refusals())
                .extracting(refusal -> refusal.code() + " " + refusal.at().pointer())
                .containsExactly("NOT_A_SIDE #/planes/0/eave", "NO_SUCH_CORNER #/planes/1/eave/0");
    }

    @Test
    void aWallIsNoPlaneAndAPlaneStaysWithinReach() {
        assertThat(new PlanDrawing()
                        .plane("a", 12 * 60, 0, 0, 10, 0, 10, 6, 0, 6)
                        .height("a", 0, 0)
                        .refusals())
                .extracting(Refusal::code)
                .containsExactly(RefusalCode.PLANE_UPRIGHT);
        assertThat(new PlanDrawing()
                        .plane("a", 12 * 50, 0, 0, 1e6, 0, 1e6, 1e6, 0, 1e6)
                        .height("a", 0, 0)
                        .refusals())
                .extracting(Refusal::code)
                .containsExactly(RefusalCode.HEIGHT_OUT_OF_REACH);
    }

    @Test
    void planesHeapedOnOneLineAreRefusedBeforeTheyCostMore() {
        PlanDrawing heap = new PlanDrawing();
        for (int i = 0; i < 300; i++) {
            heap.plane("p" + i, 6, i * 0.01, 0, 10 + i * 0.01, 0, 5, 5);
        }
        assertThat(heap.height("p0", 0, 0).refusals())
                .extracting(Refusal::code)
                .containsExactly(RefusalCode.TOO_CROWDED);
    }

    private static PlanDrawing moved(PlanDrawing drawing, double turn, double far) {
        PlanDrawing moved = new PlanDrawing();
        for (PlanPlane plane : drawing.planes) {
            PlaneOutline drawn = plane.drawn();
            List<Point3> outline = drawn.outline().stream()
                    .map(p -> new Point3(
                            far + p.x() * Math.cos(turn) - p.y() * Math.sin(turn),
                            -far + p.x() * Math.sin(turn) + p.y() * Math.cos(turn),
                            0))
                    .toList();
            moved.add(new PlanPlane(
                    new PlaneOutline(drawn.id(), outline, List.of(), drawn.at(), drawn.outlineAt()),
                    plane.pitch(),
                    plane.fall()));
        }
        return moved;
    }

    private static void assertHeights(RoofSurvey found, RoofSurvey expected, double higher) {
        for (int p = 0; p < expected.planes().size(); p++) {
            List<Point3> outline = expected.planes().get(p).outline();
            for (int c = 0; c < outline.size(); c++) {
                assertThat(found.planes().get(p).outline().get(c).z())
                        .isCloseTo(outline.get(c).z() + higher, within(1e-12));
            }
        }
    }

    private static Edge only(Roof roof, EdgeKind kind) {
        List<Edge> found =
                roof.edges().stream().filter(edge -> edge.kind() == kind).toList();
        assertThat(found).hasSize(1);
        return found.get(0);
    }
}
