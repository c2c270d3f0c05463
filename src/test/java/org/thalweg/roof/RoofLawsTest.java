package org.thalweg.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Ring;
import org.thalweg.geometry.Tolerance;

/** What must not change when a roof is moved, turned, mirrored, scaled, shuffled or drawn from another corner. */
class RoofLawsTest {

    private static final double TURN = Math.toRadians(37);

    /** Roofs whose corners meet exactly, by name. */
    static Stream<RoofSurvey> drawn() {
        Drawn ell = Drawn.plan("""
                        F---Q---E
                        |       |
                        |       |
                D-------G---W---H---C
                |                   |
                R-------------------S
                |                   |
                A-------------------B
                """)
                .move("R", p -> new Point3(0, 5, 2.5))
                .move("S", p -> new Point3(20, 5, 2.5))
                .move("DGHC", p -> new Point3(p.x(), 10, 0))
                .move("W", p -> new Point3(p.x(), 6, 2))
                .move("FE", p -> new Point3(p.x(), 15, 0))
                .move("Q", p -> new Point3(p.x(), 15, 2))
                .planes("ABSR", "CHWGDRS", "HEQW", "QFGW");
        Drawn hipped = Drawn.plan("""
                        D---------------C
                        |               |
                        |   N---M       |
                        |   |   |       |
                        |   R---S       |
                        |               |
                        |               |
                        A---------------B
                        """)
                .height(3, "RSMN")
                .height(0.4, "BC")
                .move("BC", p -> new Point3(p.x() - 2, p.y(), 0))
                .planes("ABSR", "BCMS", "CDNM", "DARN", "RSMN");
        Drawn holed = Drawn.plan("""
                        D-----------C---X
                        |           |   |
                        |     T     |   |
                        |  K-----L  Y---Z
                        |           |
                        A-----------B
                        """)
                .height(5, "CD")
                .height(3, "T")
                .height(2, "KL")
                .height(2, "YZ")
                .height(5, "X")
                .corner('P', 6, 2, 3)
                .planes("ABCD KLT", "KPT", "PLT", "YZXC");
        return Stream.of(ell.survey(), hipped.survey(), holed.survey());
    }

    /** The same, and real buildings, whose corners meet within the tolerance. */
    static Stream<RoofSurvey> all() {
        Stream<RoofSurvey> real = Building.in(Path.of("src/test/resources/buildings/buildings.jsonl"), "")
                .map(Building::survey);
        return Stream.concat(drawn(), real);
    }

    @ParameterizedTest(name = "[{index}]")
    @MethodSource("drawn")
    void movingARoofAThousandKilometresChangesNoNumber(RoofSurvey survey) {
        assertSame(survey, moved(survey, p -> new Point3(p.x() + 1_000_000, p.y() - 1_000_000, p.z() + 1_000)), 1);
    }

    @ParameterizedTest(name = "[{index}]")
    @MethodSource("drawn")
    void turningARoofInPlanChangesNoNumber(RoofSurvey survey) {
        assertSame(
                survey,
                moved(
                        survey,
                        p -> new Point3(
                                p.x() * Math.cos(TURN) - p.y() * Math.sin(TURN),
                                p.x() * Math.sin(TURN) + p.y() * Math.cos(TURN),
                                p.z())),
                1);
    }

    @ParameterizedTest(name = "[{index}]")
    @MethodSource("drawn")
    void mirroringARoofChangesNoNumber(RoofSurvey survey) {
        assertSame(survey, moved(survey, p -> new Point3(-p.x(), p.y(), p.z())), 1);
    }

    @ParameterizedTest(name = "[{index}]")
    @MethodSource("drawn")
    void scalingARoofScalesItsLengths(RoofSurvey survey) {
        RoofSurvey scaled = moved(survey, p -> new Point3(3 * p.x(), 3 * p.y(), 3 * p.z()));
        assertSame(
                survey,
                new RoofSurvey(
                        scaled.planes(),
                        scaled.named(),
                        new Tolerance(0.003),
                        scaled.leastSlope(),
                        scaled.leastSlopeSource()),
                3);
    }

    @ParameterizedTest(name = "[{index}]")
    @MethodSource("all")
    void shufflingThePlanesChangesNoNumber(RoofSurvey survey) {
        List<PlaneOutline> shuffled = new ArrayList<>(survey.planes());
        Collections.shuffle(shuffled, new Random(7));
        assertSame(survey, with(survey, shuffled), 1);
    }

    @ParameterizedTest(name = "[{index}]")
    @MethodSource("all")
    void startingRingsElsewhereChangesNoNumber(RoofSurvey survey) {
        assertSame(
                survey,
                redrawn(survey, ring -> {
                    List<Point3> turned = new ArrayList<>(ring);
                    Collections.rotate(turned, ring.size() / 2);
                    return turned;
                }),
                1);
    }

    @ParameterizedTest(name = "[{index}]")
    @MethodSource("all")
    void drawingRingsTheOtherWayRoundChangesNoNumber(RoofSurvey survey) {
        assertSame(
                survey,
                redrawn(survey, ring -> {
                    List<Point3> reversed = new ArrayList<>(ring);
                    Collections.reverse(reversed);
                    return reversed;
                }),
                1);
    }

    @ParameterizedTest(name = "[{index}]")
    @MethodSource("all")
    void theSidesOfThePlanesAreTheSidesOfTheEdges(RoofSurvey survey) {
        Roof roof = Roofs.read(survey);
        int sides = 0;
        for (Plane plane : roof.planes()) {
            sides += plane.shape().outer().size();
            for (Ring opening : plane.shape().openings()) {
                sides += opening.size();
            }
            assertThat(plane.shape().area()).isEqualTo(plane.area().squareMetres());
            assertThat(plane.planArea().squareMetres())
                    .isCloseTo(plane.area().squareMetres() * plane.slope().cos(), within(1e-9));
        }
        assertThat(roof.edges().stream().mapToInt(edge -> edge.sides().size()).sum())
                .isEqualTo(sides);
    }

    private static RoofSurvey moved(RoofSurvey survey, UnaryOperator<Point3> moving) {
        return redrawn(survey, ring -> ring.stream().map(moving).toList());
    }

    private static RoofSurvey redrawn(RoofSurvey survey, UnaryOperator<List<Point3>> drawing) {
        return with(
                survey,
                survey.planes().stream()
                        .map(plane -> new PlaneOutline(
                                plane.id(),
                                drawing.apply(plane.outline()),
                                plane.openings().stream()
                                        .map(o -> new PlaneOutline.OpeningOutline(
                                                o.id(), drawing.apply(o.outline()), o.outlineAt()))
                                        .toList(),
                                plane.at(),
                                plane.outlineAt()))
                        .toList());
    }

    private static RoofSurvey with(RoofSurvey survey, List<PlaneOutline> planes) {
        return new RoofSurvey(
                planes, survey.named(), survey.tolerance(), survey.leastSlope(), survey.leastSlopeSource());
    }

    private static void assertSame(RoofSurvey one, RoofSurvey other, double scale) {
        Roof expected = Roofs.read(one);
        Roof actual = Roofs.read(other);
        Map<String, Plane> planes = actual.planes().stream().collect(Collectors.toMap(Plane::id, plane -> plane));
        for (Plane plane : expected.planes()) {
            Plane same = planes.get(plane.id());
            assertThat(same).isNotNull();
            double area = plane.area().squareMetres() * scale * scale;
            assertThat(same.area().squareMetres()).isCloseTo(area, within(1e-9 * area + 1e-12));
            assertThat(same.slope().radians()).isCloseTo(plane.slope().radians(), within(1e-9));
            assertThat(same.shape().outer().size())
                    .isEqualTo(plane.shape().outer().size());
        }
        assertSameEdges(edges(expected), edges(actual), scale);
        assertThat(actual.findings().stream().map(f -> f.code().name()).sorted())
                .containsExactlyElementsOf(expected.findings().stream()
                        .map(f -> f.code().name())
                        .sorted()
                        .toList());
    }

    private static void assertSameEdges(
            Map<String, List<Edge>> expected, Map<String, List<Edge>> actual, double scale) {
        assertThat(actual.keySet()).isEqualTo(expected.keySet());
        expected.forEach((key, edges) -> {
            List<Edge> same = actual.getOrDefault(key, List.of());
            assertThat(same).as("%s", key).hasSameSizeAs(edges);
            for (int i = 0; i < edges.size(); i++) {
                double length = edges.get(i).length().metres() * scale;
                assertThat(same.get(i).length().metres()).as("%s", key).isCloseTo(length, within(1e-8));
                assertThat(same.get(i).bend().radians())
                        .as("%s", key)
                        .isCloseTo(edges.get(i).bend().radians(), within(1e-8));
                assertThat(same.get(i).convex())
                        .as("%s", key)
                        .isEqualTo(edges.get(i).convex());
            }
        });
    }

    /** Edges by kind and planes, shortest first. */
    private static Map<String, List<Edge>> edges(Roof roof) {
        return roof.edges().stream()
                .sorted(Comparator.comparing(Edge::length))
                .collect(Collectors.groupingBy(
                        edge -> edge.kind() + " of "
                                + edge.sides().stream()
                                        .map(side ->
                                                roof.planes().get(side.plane()).id())
                                        .sorted()
                                        .toList(),
                        TreeMap::new,
                        Collectors.toList()));
    }
}
