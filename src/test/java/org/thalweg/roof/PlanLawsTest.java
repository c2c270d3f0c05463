package org.thalweg.roof;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.thalweg.finding.Origin;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Tolerance;
import org.thalweg.geometry.Vector3;
import org.thalweg.roof.PlanPlane.Fall;
import org.thalweg.roof.PlanSurvey.Given;
import org.thalweg.roof.PlanSurvey.NamedSide;
import org.thalweg.roof.PlaneOutline.OpeningOutline;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;
import org.thalweg.units.Pitch;

/**
 * What must not change when a plan is moved, turned, mirrored, scaled, shuffled or drawn from another corner; and that a roof
 * in space and its plan are one roof.
 */
class PlanLawsTest {

    private static final double TURN = Math.toRadians(37);

    /** A gable with a dormer and its walls, a porch below the eave, and a garage behind a wall with a height of its own. */
    private static PlanSurvey house() {
        return new PlanDrawing()
                .plane("south", 6, 0, 0, 12, 0, 12, 4, 0, 4)
                .opening("hole", 4, 1, 6, 1, 6, 3, 5, 3.5, 4, 3)
                .plane("north", 6, 12, 8, 0, 8, 0, 4, 12, 4)
                .plane("left", 3, 4, 3, 4, 1, 5, 1, 5, 3.5)
                .plane("right", 3, 6, 1, 6, 3, 5, 3.5, 5, 1)
                .plane("porch", 3, 2, -2, 4, -2, 4, 0, 2, 0)
                .plane("garage", 4, -3, 8, -3, 1, 0, 1, 0, 8)
                .named("south", Optional.of("hole"), 0, EdgeKind.HEAD_WALL)
                .named("south", Optional.of("hole"), 1, EdgeKind.SIDE_WALL)
                .named("south", Optional.of("hole"), 4, EdgeKind.SIDE_WALL)
                .named("garage", 2, EdgeKind.HEAD_WALL)
                .height("south", 0, 3)
                .height("garage", 0, 2)
                .survey();
    }

    static Stream<UnaryOperator<Point3>> movings() {
        return Stream.of(
                p -> new Point3(p.x() + 1e6, p.y() - 1e6, 0),
                p -> new Point3(
                        p.x() * Math.cos(TURN) - p.y() * Math.sin(TURN),
                        p.x() * Math.sin(TURN) + p.y() * Math.cos(TURN),
                        0),
                p -> new Point3(-p.x(), p.y(), 0),
                p -> new Point3(p.y() + 1e6, p.x() + 1e6, 0));
    }

    @ParameterizedTest
    @MethodSource("movings")
    void movingTurningAndMirroringAPlanChangesNoHeight(UnaryOperator<Point3> moving) {
        RoofSurvey before = RaisedPlan.of(house());
        PlanSurvey plan = house();
        RoofSurvey after = RaisedPlan.of(changed(
                plan,
                plane -> withRings(plane, ring -> ring.stream().map(moving).toList())));
        assertHeights(after, before, 1, 1e-9);
        assertThat(kinds(Roofs.read(after))).isEqualTo(kinds(Roofs.read(before)));
    }

    @Test
    void scalingAPlanScalesItsHeights() {
        PlanSurvey plan = house();
        PlanSurvey scaled = new PlanSurvey(
                plan.planes().stream()
                        .map(plane -> withRings(plane, ring -> ring.stream()
                                .map(p -> new Point3(3 * p.x(), 3 * p.y(), 0))
                                .toList()))
                        .toList(),
                plan.heights().stream()
                        .map(given -> new Given(
                                given.plane(),
                                given.corner(),
                                Length.metres(3 * given.z().metres()),
                                given.at()))
                        .toList(),
                plan.named(),
                new Tolerance(0.003),
                plan.leastSlope(),
                plan.leastSlopeSource());
        assertHeights(RaisedPlan.of(scaled), RaisedPlan.of(plan), 3, 1e-11);
    }

    @Test
    void shufflingThePlanesChangesNoHeight() {
        PlanSurvey plan = house();
        Map<String, PlaneOutline> before = byId(RaisedPlan.of(plan));
        Random random = new Random(3);
        for (int i = 0; i < 50; i++) {
            List<PlanPlane> shuffled = new ArrayList<>(plan.planes());
            Collections.shuffle(shuffled, random);
            Map<String, PlaneOutline> after = byId(RaisedPlan.of(with(plan, shuffled)));
            before.forEach(
                    (id, plane) -> assertSame(requireNonNull(after.get(id)).outline(), plane.outline(), 1, 1e-11));
        }
    }

    /** By fall instead of by eave, and without names, which count corners. */
    @Test
    void theCornerARingStartsAtAndTheWayRoundItRunsChangeNoHeight() {
        PlanSurvey hipped = new PlanDrawing()
                .plane("south", 6, 0, 0, 10, 0, 7, 3, 3, 3)
                .plane("east", 6, 10, 0, 10, 6, 7, 3)
                .plane("north", 6, 10, 6, 0, 6, 3, 3, 7, 3)
                .plane("west", 6, 0, 6, 0, 0, 3, 3)
                .height("south", 0, 2)
                .survey();
        double[] falls = {270, 0, 90, 180};
        Map<String, Integer> edges = kinds(Roofs.read(RaisedPlan.of(hipped)));
        Random random = new Random(5);
        for (int i = 0; i < 100; i++) {
            List<PlanPlane> turned = new ArrayList<>();
            int given = 0;
            for (int p = 0; p < 4; p++) {
                List<Point3> ring =
                        new ArrayList<>(hipped.planes().get(p).drawn().outline());
                Point3 first = ring.get(0);
                Collections.rotate(ring, random.nextInt(ring.size()));
                if (random.nextBoolean()) {
                    Collections.reverse(ring);
                }
                given = p == 0 ? ring.indexOf(first) : given;
                PlanPlane plane = withRings(hipped.planes().get(p), same -> ring);
                turned.add(new PlanPlane(plane.drawn(), plane.pitch(), new PlanPlane.Toward(Angle.degrees(falls[p]))));
            }
            Given height = new Given("south", given, Length.metres(2), Origin.REQUEST);
            PlanSurvey drawn = new PlanSurvey(
                    turned,
                    List.of(height),
                    List.of(),
                    hipped.tolerance(),
                    hipped.leastSlope(),
                    hipped.leastSlopeSource());
            RoofSurvey raised = RaisedPlan.of(drawn);
            raised.planes().forEach(plane -> plane.outline()
                    .forEach(corner -> assertThat(corner.z()).isCloseTo(corner.y() == 3 ? 3.5 : 2, within(1e-12))));
            assertThat(kinds(Roofs.read(raised))).isEqualTo(edges);
        }
    }

    static Stream<Building> buildings() {
        return Building.in(Path.of("src/test/resources/buildings/buildings.jsonl"), "");
    }

    /**
     * Planes of real buildings are uneven, so each is first laid flat where it stands. In the plan every plane has a height of
     * its own and every side is a wall, so that nothing is moved; read again, the two are the same planes and edges.
     */
    @ParameterizedTest
    @MethodSource("buildings")
    void aRealBuildingDrawnInPlanIsTheSameInSpace(Building building) {
        RoofSurvey uneven = building.survey();
        Roof read = Roofs.read(uneven);
        List<PlaneOutline> flat = new ArrayList<>();
        List<PlanPlane> planes = new ArrayList<>();
        List<Given> heights = new ArrayList<>();
        List<NamedSide> walls = new ArrayList<>();
        for (int p = 0; p < uneven.planes().size(); p++) {
            PlaneOutline outline =
                    laidFlat(uneven.planes().get(p), read.planes().get(p));
            flat.add(outline);
            planes.add(planned(outline, read.planes().get(p).frame().outward()));
            heights.add(new Given(
                    outline.id(), 0, Length.metres(outline.outline().get(0).z()), outline.at()));
            wall(walls, outline.id(), Optional.empty(), outline.outline());
            outline.openings().forEach(hole -> wall(walls, outline.id(), Optional.of(hole.id()), hole.outline()));
        }
        RoofSurvey space =
                new RoofSurvey(flat, List.of(), uneven.tolerance(), uneven.leastSlope(), uneven.leastSlopeSource());
        RoofSurvey raised = RaisedPlan.of(new PlanSurvey(
                planes, heights, walls, uneven.tolerance(), uneven.leastSlope(), uneven.leastSlopeSource()));
        assertHeights(raised, space, 1, 1e-9);
        Roof found = Roofs.read(new RoofSurvey(
                raised.planes(), List.of(), uneven.tolerance(), uneven.leastSlope(), uneven.leastSlopeSource()));
        Roof expected = Roofs.read(space);
        assertThat(kinds(found)).isEqualTo(kinds(expected));
        for (int p = 0; p < flat.size(); p++) {
            double area = expected.planes().get(p).area().squareMetres();
            assertThat(found.planes().get(p).area().squareMetres()).isCloseTo(area, within(1e-9 * area));
        }
        for (int e = 0; e < expected.edges().size(); e++) {
            double length = expected.edges().get(e).length().metres();
            assertThat(found.edges().get(e).length().metres()).isCloseTo(length, within(1e-9 * length));
            assertThat(found.edges().get(e).kind())
                    .isEqualTo(expected.edges().get(e).kind());
        }
    }

    private static void wall(List<NamedSide> walls, String plane, Optional<String> opening, List<Point3> ring) {
        for (int side = 0; side < ring.size(); side++) {
            Point3 from = ring.get(side);
            Point3 to = ring.get((side + 1) % ring.size());
            if (Math.hypot(to.x() - from.x(), to.y() - from.y()) > 0.0011) {
                walls.add(new NamedSide(plane, opening, side, EdgeKind.SIDE_WALL, Origin.REQUEST));
            }
        }
    }

    private static PlaneOutline laidFlat(PlaneOutline uneven, Plane plane) {
        Vector3 outward = plane.frame().outward();
        Point3 origin = plane.frame().origin();
        UnaryOperator<List<Point3>> drop = ring -> ring.stream()
                .map(p -> new Point3(
                        p.x(),
                        p.y(),
                        origin.z()
                                - (outward.x() * (p.x() - origin.x()) + outward.y() * (p.y() - origin.y()))
                                        / outward.z()))
                .toList();
        return withRings(uneven, drop);
    }

    /** Water runs where a plane's outward side leans. */
    private static PlanPlane planned(PlaneOutline outline, Vector3 outward) {
        double lean = Math.hypot(outward.x(), outward.y());
        Fall fall = new PlanPlane.Toward(Angle.atan2(outward.y(), outward.x()));
        PlaneOutline drawn = withRings(
                outline,
                ring -> ring.stream().map(p -> new Point3(p.x(), p.y(), 0)).toList());
        return new PlanPlane(drawn, new Pitch(lean, outward.z()), fall);
    }

    private static PlanSurvey changed(PlanSurvey plan, Function<PlanPlane, PlanPlane> change) {
        return with(plan, plan.planes().stream().map(change).toList());
    }

    private static PlanSurvey with(PlanSurvey plan, List<PlanPlane> planes) {
        return new PlanSurvey(
                planes, plan.heights(), plan.named(), plan.tolerance(), plan.leastSlope(), plan.leastSlopeSource());
    }

    private static PlanPlane withRings(PlanPlane plane, UnaryOperator<List<Point3>> change) {
        return new PlanPlane(withRings(plane.drawn(), change), plane.pitch(), plane.fall());
    }

    private static PlaneOutline withRings(PlaneOutline plane, UnaryOperator<List<Point3>> change) {
        List<OpeningOutline> openings = plane.openings().stream()
                .map(hole -> new OpeningOutline(hole.id(), change.apply(hole.outline()), hole.outlineAt()))
                .toList();
        return new PlaneOutline(plane.id(), change.apply(plane.outline()), openings, plane.at(), plane.outlineAt());
    }

    private static Map<String, PlaneOutline> byId(RoofSurvey survey) {
        Map<String, PlaneOutline> planes = new TreeMap<>();
        survey.planes().forEach(plane -> planes.put(plane.id(), plane));
        return planes;
    }

    private static void assertHeights(RoofSurvey found, RoofSurvey expected, double times, double near) {
        assertThat(found.planes()).hasSameSizeAs(expected.planes());
        for (int p = 0; p < expected.planes().size(); p++) {
            PlaneOutline one = found.planes().get(p);
            PlaneOutline other = expected.planes().get(p);
            assertSame(one.outline(), other.outline(), times, near);
            for (int o = 0; o < other.openings().size(); o++) {
                assertSame(
                        one.openings().get(o).outline(), other.openings().get(o).outline(), times, near);
            }
        }
    }

    private static void assertSame(List<Point3> found, List<Point3> expected, double times, double near) {
        assertThat(found).hasSameSizeAs(expected);
        for (int c = 0; c < expected.size(); c++) {
            assertThat(found.get(c).z()).isCloseTo(times * expected.get(c).z(), within(near));
        }
    }

    /** How many edges there are of each kind. */
    private static Map<String, Integer> kinds(Roof roof) {
        Map<String, Integer> kinds = new TreeMap<>();
        roof.edges().forEach(edge -> kinds.merge(edge.kind().wire(), 1, Integer::sum));
        return kinds;
    }
}
