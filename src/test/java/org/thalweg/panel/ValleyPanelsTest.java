package org.thalweg.panel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Region;
import org.thalweg.geometry.Tolerance;
import org.thalweg.roof.Building;
import org.thalweg.roof.Edge;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.EdgeTreatment;
import org.thalweg.roof.EdgeTreatments;
import org.thalweg.roof.PlaneOutline;
import org.thalweg.roof.Roof;
import org.thalweg.roof.RoofSurvey;
import org.thalweg.roof.Roofs;
import org.thalweg.units.Length;
import org.thalweg.units.Pitch;

/**
 * Panels cut at valleys and hips, on roofs read as any roof is. Inches on the drawn roofs. Rises across a panel are those of
 * {@code w · tan φ}, tan φ = tan α / cos θ, worked out for a square corner:
 *
 * <pre>
 *   6:12 both     φ = 48.1897°            18 in: 20.1246
 *   6:12, 8:12    φ = 56.1455°, 42.0311°  18 in: 26.8328, 16.2250
 * </pre>
 *
 * <p>The angles are those of {@code published/unequal-pitch-hip-valley.csv}.
 */
class ValleyPanelsTest {

    private static final Tolerance TOLERANCE = Tolerance.DEFAULT;
    private static final double COVER = 18;
    private static final double HOLD_BACK = 12.75;
    private static final double PRECISE = 1e-9;

    private static final Path KEPT = Path.of("src/test/resources/buildings/buildings.jsonl");

    /**
     * Two planes that fall to a valley at a square inner corner, seen from above; the foot of the valley at (0 0), the ridges
     * where both have risen 120.
     *
     * <pre>
     *   (-b  L) ------------------ ridge of "north", level
     *   |      \                        "west" rises to the left of its eave, from x = 0 to x = -120 / tan 2
     *   |  west \      north            "north" rises up the page from its eave, from y = 0 to y = 120 / tan 1
     *   |        \
     *   |         (0 0) ---------- eave of "north"
     *   |          |
     *   ridge      eave of "west"
     * </pre>
     */
    private static List<PlaneOutline> innerCorner(double tanNorth, double tanWest) {
        double y = 120 / tanNorth;
        double x = 120 / tanWest;
        return List.of(
                plane("north", p(0, 0, 0), p(360, 0, 0), p(360, y, 120), p(-x, y, 120)),
                plane("west", p(0, -360, 0), p(0, 0, 0), p(-x, y, 120), p(-x, -360, 120)));
    }

    /** The same turned over: a hip that comes down to an outer corner at (0 0). */
    private static List<PlaneOutline> outerCorner(double tanSouth, double tanEast) {
        double y = 120 / tanSouth;
        double x = 120 / tanEast;
        return List.of(
                plane("south", p(-360, 0, 0), p(0, 0, 0), p(-x, y, 120), p(-360, y, 120)),
                plane("east", p(0, 0, 0), p(0, 360, 0), p(-x, 360, 120), p(-x, y, 120)));
    }

    /** The part of a main roof of 6:12 between two cross gables of 6:12, 240 apart: eave 240 wide, wider further up. */
    private static List<PlaneOutline> betweenGables() {
        return List.of(
                plane(
                        "main",
                        p(-120, 0, 0),
                        p(120, 0, 0),
                        p(216, 96, 48),
                        p(216, 144, 72),
                        p(-216, 144, 72),
                        p(-216, 96, 48)),
                plane("right", p(120, -200, 0), p(216, -200, 48), p(216, 96, 48), p(120, 0, 0)),
                plane("left", p(-120, 0, 0), p(-216, 96, 48), p(-216, -200, 48), p(-120, -200, 0)));
    }

    /** A triangle of 6:12 whose whole foot is a point: it falls between two planes that run their water beside it. */
    private static List<PlaneOutline> butterfly() {
        return List.of(
                plane("infill", p(0, 0, 0), p(96, 96, 48), p(-96, 96, 48)),
                plane("right", p(0, 0, 0), p(0, -100, 0), p(96, -100, 48), p(96, 96, 48)),
                plane("left", p(0, 0, 0), p(-96, 96, 48), p(-96, -100, 48), p(0, -100, 0)));
    }

    private static Point3 p(double x, double y, double z) {
        return new Point3(x * 0.0254, y * 0.0254, z * 0.0254);
    }

    private static PlaneOutline plane(String id, Point3... corners) {
        return new PlaneOutline(id, List.of(corners), List.of(), Origin.REQUEST, Origin.REQUEST);
    }

    private static Roof read(List<PlaneOutline> planes) {
        return Roofs.read(new RoofSurvey(planes, List.of(), TOLERANCE, new Pitch(0.25, 12), Source.COMMON_PRACTICE));
    }

    private static List<PlaneOutline> mirrored(List<PlaneOutline> planes) {
        UnaryOperator<Point3> mirror = c -> new Point3(-c.x(), c.y(), c.z());
        return planes.stream()
                .map(plane ->
                        plane(plane.id(), plane.outline().stream().map(mirror).toArray(Point3[]::new)))
                .toList();
    }

    private static EdgeTreatments at(EdgeKind kind, double setback, double atTop, double hem) {
        return new EdgeTreatments(
                Map.of(
                        kind,
                        new EdgeTreatment(
                                Length.inches(setback), Length.inches(atTop), Length.inches(hem), Length.ZERO)),
                Map.of());
    }

    private static EdgeTreatments heldBack(double setback) {
        return at(EdgeKind.VALLEY, setback, setback, 0);
    }

    private static List<PlanePanels> lay(Roof roof, EdgeTreatments treatments, Lead lead) {
        PlaneLaying laying = new PlaneLaying(lead, new Start.Offset(Length.ZERO), Optional.empty());
        return Panels.layOut(
                        roof,
                        Flat.cover(COVER * 0.0254),
                        treatments.of(roof),
                        roof.planes().stream().map(plane -> laying).toList())
                .planes();
    }

    /** One cut of one panel, with the edge it is for. */
    private record EdgeCut(Roof roof, PlanePanels plane, Panel panel, Cut cut) {

        Edge edge() {
            return roof.edges().get(cut.edge());
        }

        /** How far an end of the cut stands from the line of its edge, inches. */
        double off(Point2 end) {
            Point2 place = new Point2(
                    panel.place().across() + end.across(), panel.place().up() + end.up());
            Point3 world = plane.frame().inWorld(place);
            Point3 from = edge().from();
            Point3 to = edge().to();
            return world.minus(from).cross(to.minus(from)).length() / to.distance(from) / 0.0254;
        }

        /** How far up the edge an end of the cut stands, from 0 at its lower end to 1 at its upper. */
        double along(Point2 end) {
            Point3 low = edge().from().z() < edge().to().z() ? edge().from() : edge().to();
            Point3 high = low.equals(edge().from()) ? edge().to() : edge().from();
            Point3 world = plane.frame()
                    .inWorld(new Point2(
                            panel.place().across() + end.across(), panel.place().up() + end.up()));
            return world.minus(low).dot(high.minus(low)) / Math.pow(high.distance(low), 2);
        }

        boolean fullWidth() {
            return cut.left(TOLERANCE).isPresent()
                    && cut.right(COVER * 0.0254, TOLERANCE).isPresent();
        }

        double riseInches() {
            return cut.rise() / 0.0254;
        }
    }

    private static List<EdgeCut> cuts(Roof roof, List<PlanePanels> planes, EdgeKind kind) {
        List<EdgeCut> cuts = new ArrayList<>();
        for (PlanePanels plane : planes) {
            for (Panel panel : plane.panels()) {
                for (Cut cut : panel.cuts()) {
                    if (cut.edge() >= 0 && roof.edges().get(cut.edge()).kind() == kind) {
                        cuts.add(new EdgeCut(roof, plane, panel, cut));
                    }
                }
            }
        }
        return cuts;
    }

    private static String id(EdgeCut cut) {
        return cut.roof.planes().get(cut.plane.plane()).id();
    }

    @ParameterizedTest(name = "{0}:12 and {1}:12, held back {2} in: {3} and {4} in across 18 in")
    @CsvSource({
        "6, 6, 0, 20.1246, 20.1246",
        "6, 6, 12.75, 20.1246, 20.1246",
        "6, 8, 0, 26.8328, 16.2250",
        "6, 8, 12.75, 26.8328, 16.2250",
        "12, 12, 12.75, 25.4558, 25.4558",
        "6, 12, 12.75, 40.2492, 12.7279"
    })
    void everyFullCutAtAValleyRisesByTheCoverTimesTheTangentOfItsMitre(
            double north, double west, double holdBack, double northRise, double westRise) {
        Roof roof = read(innerCorner(north / 12, west / 12));

        List<EdgeCut> cuts = cuts(roof, lay(roof, heldBack(holdBack), Lead.LEFT), EdgeKind.VALLEY);

        List<EdgeCut> full = cuts.stream().filter(EdgeCut::fullWidth).toList();
        assertThat(full).extracting(ValleyPanelsTest::id).contains("north", "west");
        assertThat(full).allSatisfy(cut -> assertThat(cut.riseInches())
                .isCloseTo(id(cut).equals("north") ? northRise : westRise, within(5e-5)));
    }

    /** A hip's panels step by the same figures, and lean the other way. */
    @ParameterizedTest(name = "{0}:12 and {1}:12, set back {2} in: {3} and {4} in across 18 in")
    @CsvSource({"6, 6, 0, 20.1246, 20.1246", "6, 8, 1, 26.8328, 16.2250", "6, 8, -0.5, 26.8328, 16.2250"})
    void everyFullCutAtAHipRisesByTheSameFigures(
            double south, double east, double setback, double southRise, double eastRise) {
        Roof roof = read(outerCorner(south / 12, east / 12));

        List<EdgeCut> cuts = cuts(roof, lay(roof, at(EdgeKind.HIP, setback, setback, 0), Lead.LEFT), EdgeKind.HIP);

        List<EdgeCut> full = cuts.stream().filter(EdgeCut::fullWidth).toList();
        assertThat(full).extracting(ValleyPanelsTest::id).contains("south", "east");
        assertThat(full).allSatisfy(cut -> {
            assertThat(cut.riseInches()).isCloseTo(id(cut).equals("south") ? southRise : eastRise, within(5e-5));
            assertThat(cut.cut.end()).isEqualTo(Cut.End.UPPER);
        });
        assertThat(cuts).allSatisfy(cut -> {
            assertThat(cut.off(cut.cut.from())).isCloseTo(Math.abs(setback), within(PRECISE / 0.0254));
            assertThat(cut.off(cut.cut.to())).isCloseTo(Math.abs(setback), within(PRECISE / 0.0254));
        });
    }

    @ParameterizedTest(name = "{0}:12 and {1}:12, hem {2} in")
    @CsvSource({"6, 6, 0", "6, 8, 0", "6, 12, 0", "6, 6, 1", "6, 8, 1"})
    void bothEndsOfEveryCutAtAValleyStandAtTheHoldBackLessTheHem(double north, double west, double hem) {
        Roof roof = read(innerCorner(north / 12, west / 12));

        List<EdgeCut> cuts =
                cuts(roof, lay(roof, at(EdgeKind.VALLEY, HOLD_BACK, HOLD_BACK, hem), Lead.LEFT), EdgeKind.VALLEY);

        assertThat(cuts).extracting(ValleyPanelsTest::id).contains("north", "west");
        assertThat(cuts).allSatisfy(cut -> {
            assertThat(cut.off(cut.cut.from())).isCloseTo(HOLD_BACK - hem, within(PRECISE / 0.0254));
            assertThat(cut.off(cut.cut.to())).isCloseTo(HOLD_BACK - hem, within(PRECISE / 0.0254));
        });
    }

    /** The panel of a plane that covers a place along its eave, inches from its frame's origin. */
    private static Panel panelAt(Roof roof, List<PlanePanels> planes, String plane, double across) {
        return planes.stream()
                .filter(laid -> roof.planes().get(laid.plane()).id().equals(plane))
                .flatMap(laid -> laid.panels().stream())
                .filter(panel -> panel.place().across() < across * 0.0254
                        && across * 0.0254 < panel.place().across() + COVER * 0.0254)
                .findFirst()
                .orElseThrow();
    }

    private static Cut valleyCut(Roof roof, Panel panel) {
        return panel.cuts().stream()
                .filter(cut -> roof.edges().get(cut.edge()).kind() == EdgeKind.VALLEY)
                .findFirst()
                .orElseThrow();
    }

    /**
     * Equal pitches, 6:12: tan φ = √5 / 2, cos φ = 2 / 3. Held back 12.75 the edge leaves the eave 12.75 / sin φ = 17.1059 from
     * the foot and stands 12.75 / cos φ = 19.1250 up at the rib that runs from the foot. Laid from the far end, 360 off, a rib
     * runs from the foot, so the first panel's corner is cut off from 17.1059 along its end to 19.1250 up its rib.
     */
    @Test
    void theFirstPanelAtTheFootOfAValleyHasItsCornerCutOff() {
        Roof roof = read(innerCorner(0.5, 0.5));

        Panel north = panelAt(roof, lay(roof, heldBack(HOLD_BACK), Lead.RIGHT), "north", 240 + 9);
        Panel west = panelAt(roof, lay(roof, heldBack(HOLD_BACK), Lead.LEFT), "west", 360 - 9);

        Cut left = valleyCut(roof, north);
        assertThat(left.end()).isEqualTo(Cut.End.LOWER);
        assertThat(left.left(TOLERANCE).orElseThrow() / 0.0254).isCloseTo(19.125, within(1e-9));
        assertThat(left.right(COVER * 0.0254, TOLERANCE)).isEmpty();
        assertThat(left.to().up()).isZero();
        assertThat(left.to().across() / 0.0254).isCloseTo(17.1059, within(5e-5));
        Cut right = valleyCut(roof, west);
        assertThat(right.end()).isEqualTo(Cut.End.LOWER);
        assertThat(right.right(COVER * 0.0254, TOLERANCE).orElseThrow() / 0.0254)
                .isCloseTo(19.125, within(1e-9));
        assertThat(right.left(TOLERANCE)).isEmpty();
        assertThat(right.from().up()).isZero();
        assertThat(right.from().across() / 0.0254).isCloseTo(18 - 17.1059, within(5e-5));
    }

    /**
     * 6:12 and 8:12. In the plane of 6:12 the edge leaves the eave 15.3530 from the foot and stands 22.8870 up at the foot's rib.
     * In that of 8:12 it leaves the eave 19.0431 from the foot, in the second panel; the rib between the two, 1.0431 on, crosses
     * it at 1.0431 · 0.901388 = 0.9402, the foot's rib at 17.1652: a full mitre of 16.2250 in the first panel.
     */
    @Test
    void atUnequalPitchesEachPlaneHasItsOwnCorner() {
        Roof roof = read(innerCorner(6.0 / 12, 8.0 / 12));
        List<PlanePanels> fromLeft = lay(roof, heldBack(HOLD_BACK), Lead.LEFT);

        Cut north = valleyCut(roof, panelAt(roof, lay(roof, heldBack(HOLD_BACK), Lead.RIGHT), "north", 180 + 9));
        Cut second = valleyCut(roof, panelAt(roof, fromLeft, "west", 360 - 27));
        Cut first = valleyCut(roof, panelAt(roof, fromLeft, "west", 360 - 9));

        assertThat(north.from().up() / 0.0254).isCloseTo(22.8870, within(5e-5));
        assertThat(north.to().across() / 0.0254).isCloseTo(15.3530, within(5e-5));
        assertThat(second.from().across() / 0.0254).isCloseTo(36 - 19.0431, within(5e-5));
        assertThat(second.to().up() / 0.0254).isCloseTo(0.9402, within(5e-5));
        assertThat(first.from().up() / 0.0254).isZero();
        assertThat(first.to().up() / 0.0254).isCloseTo(17.1652 - 0.9402, within(1e-4));
    }

    /**
     * A plane of 3:12 between two parallel valleys that rise 30 over 240 across and 120 on in plan: below it a plane that falls
     * back towards it, above it a steeper one. tan φ = 120 · √17/16 / 240 with √(1 + tan² φ) = 9 / 8, so each hold-back takes
     * 12.75 · 9 / 8 off a rib, which is 200 · √17 / 4 long from valley to valley.
     */
    private static List<PlaneOutline> betweenParallelValleys() {
        return List.of(
                plane("middle", p(0, 0, 0), p(240, 120, 30), p(240, 320, 80), p(0, 200, 50)),
                plane("below", p(0, 0, 0), p(240, 0, 60), p(240, 120, 30)),
                plane("above", p(0, 200, 50), p(240, 320, 80), p(0, 320, 200)));
    }

    @Test
    void panelsBetweenTwoValleysAreMitredAtBothEnds() {
        Roof roof = read(betweenParallelValleys());
        List<PlanePanels> planes = lay(roof, heldBack(HOLD_BACK), Lead.LEFT);

        List<Panel> middle = planes.get(0).panels();

        assertThat(middle).hasSize(14);
        double rise = COVER * Math.sqrt(17) / 8;
        double rib = 200 * Math.sqrt(17) / 4 - 2 * HOLD_BACK * 9 / 8;
        assertThat(middle.subList(0, 13)).allSatisfy(panel -> {
            assertThat(panel.cuts()).extracting(Cut::end).containsExactly(Cut.End.LOWER, Cut.End.UPPER);
            Cut lower = panel.cuts().get(0);
            Cut upper = panel.cuts().get(1);
            assertThat(lower.left(TOLERANCE).orElseThrow() / 0.0254).isCloseTo(0, within(1e-9));
            assertThat(lower.right(COVER * 0.0254, TOLERANCE).orElseThrow() / 0.0254)
                    .isCloseTo(rise, within(1e-9));
            assertThat(upper.left(TOLERANCE).orElseThrow() / 0.0254).isCloseTo(rib, within(1e-9));
            assertThat(upper.right(COVER * 0.0254, TOLERANCE).orElseThrow() / 0.0254)
                    .isCloseTo(rib + rise, within(1e-9));
        });
        assertThat(cuts(roof, planes, EdgeKind.VALLEY)).allSatisfy(cut -> {
            assertThat(cut.off(cut.cut.from())).isCloseTo(HOLD_BACK, within(PRECISE / 0.0254));
            assertThat(cut.off(cut.cut.to())).isCloseTo(HOLD_BACK, within(PRECISE / 0.0254));
        });
    }

    /** The panel in the middle of the infill is cut by both valleys to a point 12.75 / cos φ = 19.1250 over the foot. */
    @Test
    void aPanelBetweenTheFeetOfTwoValleysIsCutToAPoint() {
        Roof roof = read(butterfly());
        PlaneLaying centred = new PlaneLaying(Lead.LEFT, new Start.Centred(), Optional.empty());

        PlanePanels infill = Panels.layOut(
                        roof,
                        Flat.cover(COVER * 0.0254),
                        heldBack(HOLD_BACK).of(roof),
                        List.of(centred, centred, centred))
                .planes()
                .get(0);

        Panel middle = infill.panels().get(infill.panels().size() / 2);
        assertThat(middle.place().up() / 0.0254).isCloseTo(19.125, within(1e-9));
        assertThat(middle.cuts()).extracting(Cut::end).containsExactly(Cut.End.LOWER, Cut.End.LOWER, Cut.End.UPPER);
        Cut left = middle.cuts().get(0);
        Cut right = middle.cuts().get(1);
        assertThat(left.left(TOLERANCE).orElseThrow() / 0.0254).isCloseTo(20.1246 / 2, within(5e-5));
        assertThat(left.to().across() / 0.0254).isCloseTo(9, within(1e-9));
        assertThat(right.from()).isEqualTo(left.to());
        assertThat(right.right(COVER * 0.0254, TOLERANCE).orElseThrow() / 0.0254)
                .isCloseTo(20.1246 / 2, within(5e-5));
    }

    /** The hem's inch lies square to the edge; along a rib it is 1 / cos φ = 1.5, from the cut to where the hem is folded. */
    @Test
    void aHemIsNotchedAtARibFromTheCutToTheFinishedEdge() {
        Roof roof = read(innerCorner(0.5, 0.5));

        List<EdgeCut> full =
                cuts(roof, lay(roof, at(EdgeKind.VALLEY, HOLD_BACK, HOLD_BACK, 1), Lead.LEFT), EdgeKind.VALLEY).stream()
                        .filter(EdgeCut::fullWidth)
                        .toList();

        assertThat(full).hasSizeGreaterThan(20).allSatisfy(cut -> {
            double notch = cut.cut.notch(0.0254);
            assertThat(notch / 0.0254).isCloseTo(1.5, within(1e-9));
            Point2 fold = new Point2(cut.cut.from().across(), cut.cut.from().up() + notch);
            assertThat(corners(cut.panel.finished()))
                    .as("left rib of %s", cut.panel.mark())
                    .anySatisfy(corner -> assertThat(corner.distance(fold)).isLessThan(PRECISE));
        });
    }

    private static List<Point2> corners(Region shape) {
        return IntStream.range(0, shape.outer().size())
                .mapToObj(shape.outer()::corner)
                .toList();
    }

    static Stream<Arguments> roofs() {
        return Stream.of(
                arguments("inner corner", innerCorner(6.0 / 12, 8.0 / 12)),
                arguments("outer corner", outerCorner(6.0 / 12, 8.0 / 12)),
                arguments("between gables", betweenGables()),
                arguments("butterfly", butterfly()),
                arguments("between parallel valleys", betweenParallelValleys()));
    }

    private static final EdgeTreatments TREATED = new EdgeTreatments(
            Map.of(
                    EdgeKind.EAVE, inches(-1, -1, 1),
                    EdgeKind.VALLEY, inches(12.75, 8, 1),
                    EdgeKind.RIDGE, inches(1, 1, 1),
                    EdgeKind.HIP, inches(1, 1, 0.5)),
            Map.of());

    private static EdgeTreatment inches(double setback, double atTop, double hem) {
        return new EdgeTreatment(Length.inches(setback), Length.inches(atTop), Length.inches(hem), Length.ZERO);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("roofs")
    void aMirroredRoofLaidFromTheOtherSideHasTheMirroredPanels(String name, List<PlaneOutline> planes) {
        Roof roof = read(planes);
        Roof mirror = read(mirrored(planes));

        List<PlanePanels> here = lay(roof, TREATED, Lead.LEFT);
        List<PlanePanels> there = lay(mirror, TREATED, Lead.RIGHT);

        assertThat(there).hasSameSizeAs(here);
        for (int i = 0; i < here.size(); i++) {
            assertMirrored(here.get(i).panels(), there.get(i).panels());
        }
    }

    @Test
    void atEqualPitchesThePanelsLeftOfTheValleyAreThoseRightOfItMirrored() {
        Roof roof = read(innerCorner(0.5, 0.5));

        List<Panel> right = lay(roof, TREATED, Lead.RIGHT).get(0).panels();
        List<Panel> left = lay(roof, TREATED, Lead.LEFT).get(1).panels();

        assertThat(right.size()).isGreaterThan(30);
        assertMirrored(right, left);
    }

    private static void assertMirrored(List<Panel> here, List<Panel> there) {
        assertThat(there).hasSameSizeAs(here);
        for (int i = 0; i < here.size(); i++) {
            Panel a = here.get(i);
            Panel b = there.get(i);
            assertThat(b.strip()).isEqualTo(a.strip());
            assertThat(b.blankLength()).isEqualTo(a.blankLength());
            assertThat(b.place().up()).isCloseTo(a.place().up(), within(PRECISE));
            assertThat(sortedCuts(b.cuts())).hasSameSizeAs(a.cuts());
            List<Cut> cutsHere =
                    sortedCuts(a.cuts().stream().map(ValleyPanelsTest::mirrored).toList());
            List<Cut> cutsThere = sortedCuts(b.cuts());
            for (int c = 0; c < cutsHere.size(); c++) {
                assertThat(cutsThere.get(c).end()).isEqualTo(cutsHere.get(c).end());
                assertThat(cutsThere.get(c).from().distance(cutsHere.get(c).from()))
                        .isLessThan(PRECISE);
                assertThat(cutsThere.get(c).to().distance(cutsHere.get(c).to())).isLessThan(PRECISE);
            }
        }
    }

    private static List<Cut> sortedCuts(List<Cut> cuts) {
        return cuts.stream()
                .sorted(Comparator.comparing(Cut::end)
                        .thenComparingLong(cut -> Math.round(cut.from().across() * 1e6))
                        .thenComparingLong(cut -> Math.round(cut.from().up() * 1e6)))
                .toList();
    }

    private static Cut mirrored(Cut cut) {
        Point2 from =
                new Point2(COVER * 0.0254 - cut.from().across(), cut.from().up());
        Point2 to = new Point2(COVER * 0.0254 - cut.to().across(), cut.to().up());
        return switch (cut.end()) {
            case LOWER, UPPER -> new Cut(cut.end(), cut.edge(), to, from);
            case LEFT -> new Cut(Cut.End.RIGHT, cut.edge(), from, to);
            case RIGHT -> new Cut(Cut.End.LEFT, cut.edge(), from, to);
        };
    }

    /** 12.75 at the foot, 8 at the head, in between in proportion; the hem's inch less, as the hem runs along that line. */
    @ParameterizedTest(name = "{0}:12 and {1}:12")
    @CsvSource({"6, 6", "6, 8", "6, 12", "3, 12"})
    void aValleyOpenWiderTowardTheEaveIsCutInProportion(double north, double west) {
        Roof roof = read(innerCorner(north / 12, west / 12));

        List<EdgeCut> cuts = cuts(roof, lay(roof, at(EdgeKind.VALLEY, 12.75, 8, 0), Lead.LEFT), EdgeKind.VALLEY);

        assertThat(cuts).extracting(ValleyPanelsTest::id).contains("north", "west");
        assertThat(cuts)
                .allSatisfy(cut -> Stream.of(cut.cut.from(), cut.cut.to()).forEach(end -> assertThat(cut.off(end))
                        .isCloseTo(12.75 - 4.75 * cut.along(end), within(PRECISE / 0.0254))));
    }

    /**
     * 6:12 both: in the plane the valley runs from the foot, (0 0), to (-240 268.3282), 360 long; to its right is
     * (0.745356 0.666667). The edge runs from (9.5033 8.5) to (-234.0372 273.6615): it leaves the eave 17.3102 from the foot and
     * meets the ridge 229.1387 left of it.
     */
    @Test
    void aValleyOpenWiderTowardTheEaveMeetsEaveAndRidgeWhereItsLineDoes() {
        Roof roof = read(innerCorner(0.5, 0.5));

        Region north = lay(roof, at(EdgeKind.VALLEY, 12.75, 8, 0), Lead.LEFT)
                .get(0)
                .finished()
                .get(0);

        List<Double> across = IntStream.range(0, north.outer().size())
                .mapToObj(i -> north.outer().across(i) / 0.0254 - 240)
                .sorted()
                .toList();
        assertThat(across).hasSize(4);
        assertThat(across.get(0)).isCloseTo(-229.1387, within(5e-5));
        assertThat(across.get(1)).isCloseTo(17.3102, within(5e-5));
    }

    /**
     * Real buildings, 11 of them with valleys, some in pieces. Foot and top in metres, then how many cuts are square to their
     * edge: where the edge goes on in line under another name the panels make a step, also from one piece of a valley to the next
     * when each piece is open wider at its own foot; and where a tooth shorter than the set-back has gone, the edge is not drawn
     * out past its own end. Of valleys open wider at the foot, pieces shorter than the hold-back are not looked at: a tenth of a
     * metre on a piece of 27 mm is no edge a crew could cut.
     */
    @ParameterizedTest(name = "{0} m at the foot, {1} m at the top")
    @CsvSource({"0.3, 0.3, 7", "0.3, 0.2, 11"})
    void onRealBuildingsBothEndsOfEveryCutAtAValleyStandAtTheHoldBack(double foot, double top, int square) {
        EdgeTreatments treatments = new EdgeTreatments(
                Map.of(
                        EdgeKind.VALLEY, Flat.tapered(foot, top),
                        EdgeKind.EAVE, Flat.treatment(-0.025, 0, 0),
                        EdgeKind.RIDGE, Flat.treatment(0.025, 0, 0),
                        EdgeKind.HIP, Flat.treatment(0.025, 0, 0)),
                Map.of());
        List<InPlane> cuts = Building.in(KEPT, "")
                .map(building -> Roofs.read(building.survey()))
                .flatMap(roof -> cuts(roof, lay(roof, treatments, Lead.LEFT), EdgeKind.VALLEY).stream())
                .map(InPlane::of)
                .filter(cut -> foot == top || cut.low.distance(cut.high) > foot)
                .toList();

        assertThat(cuts).hasSizeGreaterThan(360);
        assertThat(cuts.stream().filter(InPlane::square)).hasSize(square);
        assertThat(cuts.stream().filter(cut -> !cut.square() && cut.astray(foot, top) > PRECISE))
                .isEmpty();
    }

    /** A cut beside its edge as the plane has it, the edge from its lower end up; plane frame. Real planes are not quite flat. */
    private record InPlane(Point2 low, Point2 high, boolean metalLeft, Point2 from, Point2 to) {

        static InPlane of(EdgeCut cut) {
            Region shape = cut.roof.planes().get(cut.plane.plane()).shape();
            return Stream.concat(Stream.of(shape.outer()), shape.openings().stream())
                    .flatMap(ring -> IntStream.range(0, ring.size())
                            .filter(side -> ring.tag(side) == cut.cut.edge())
                            .mapToObj(side -> of(ring.corner(side), ring.corner(ring.next(side)), cut)))
                    .findFirst()
                    .orElseThrow();
        }

        private static InPlane of(Point2 start, Point2 end, EdgeCut cut) {
            boolean rises = end.up() > start.up();
            return new InPlane(
                    rises ? start : end,
                    rises ? end : start,
                    rises,
                    onPlane(cut, cut.cut.from()),
                    onPlane(cut, cut.cut.to()));
        }

        private static Point2 onPlane(EdgeCut cut, Point2 point) {
            Point2 place = cut.panel.place();
            return new Point2(place.across() + point.across(), place.up() + point.up());
        }

        /** How far a place lies off the edge's line, to where the metal is. */
        double off(Point2 place) {
            double left = ((high.across() - low.across()) * (place.up() - low.up())
                            - (high.up() - low.up()) * (place.across() - low.across()))
                    / low.distance(high);
            return metalLeft ? left : -left;
        }

        /** How far up the edge a place lies, from 0 at its lower end to 1 at its upper. */
        double along(Point2 place) {
            return ((high.across() - low.across()) * (place.across() - low.across())
                            + (high.up() - low.up()) * (place.up() - low.up()))
                    / Math.pow(low.distance(high), 2);
        }

        /** How far the worse of its ends stands from where it should, metres. */
        double astray(double foot, double top) {
            return Stream.of(from, to)
                    .mapToDouble(end -> Math.abs(off(end) - foot - (top - foot) * along(end)))
                    .max()
                    .orElseThrow();
        }

        /** Within the degree that sides in line may turn. */
        boolean square() {
            return Math.abs(along(to) - along(from)) * low.distance(high)
                    <= from.distance(to) * Math.sin(Math.toRadians(1));
        }
    }
}
