package org.thalweg.footprint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;
import org.thalweg.finding.Refused;
import org.thalweg.finding.Source;
import org.thalweg.footprint.FootprintSurvey.Side;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Tolerance;
import org.thalweg.roof.Edge;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.Plane;
import org.thalweg.roof.PlaneOutline;
import org.thalweg.roof.PlaneOutline.OpeningOutline;
import org.thalweg.roof.Roof;
import org.thalweg.roof.RoofSurvey;
import org.thalweg.roof.Roofs;
import org.thalweg.units.Length;
import org.thalweg.units.Pitch;

/** From walls to a survey: names, places in the request, walls, openings, and corners that are where they ought to be. */
class RoofedFootprintTest {

    private static final List<WallSide> HOUSE = Plans.ring(0, 0, 10, 0, 10, 4, 0, 4);

    @Test
    void aSlopeIsCalledAsItsSideAndItsEdgesKnowTheWallTheyRunAlong() {
        List<WallSide> ring = Plans.pitched(HOUSE, "6:12", "gable", "6:12", "6:12");
        Roof roof = Roofs.read(RoofedFootprint.of(survey(Footprint.of(ring), Map.of(0, "south", 1, "gable"))));
        assertThat(roof.planes().stream().map(Plane::id)).containsExactly("south", "side2", "side3");
        assertThat(roof.edges().stream().filter(edge -> !edge.shared()).map(RoofedFootprintTest::told))
                .containsExactly(
                        "eave south #/walls/0",
                        "rake gable #/walls/1",
                        "eave side2 #/walls/2",
                        "rake gable #/walls/1",
                        "eave side3 #/walls/3");
        assertThat(roof.edges().stream().filter(Edge::shared))
                .hasSize(3)
                .allSatisfy(edge -> assertThat(edge.at().called()).isEmpty());
        assertThat(edge(roof, EdgeKind.RIDGE).at().pointer()).isEqualTo("#/walls/0");
    }

    private static String told(Edge edge) {
        return edge.kind().wire() + " " + edge.at().called().orElse("?") + " "
                + edge.at().pointer();
    }

    /** A wing of 6 m by 4 m against the gable of a house of 10 m by 8 m. */
    @Test
    void anOverhangOverALowerRoofIsRefused() {
        List<WallSide> ring = Plans.pitched(
                Plans.ring(0, 0, 10, 0, 10, 2, 16, 2, 16, 6, 10, 6, 10, 8, 0, 8),
                "6:12",
                "gable",
                "6:12",
                "gable",
                "6:12",
                "gable",
                "6:12",
                "gable");
        assertThat(Roofs.read(RoofedFootprint.of(survey(Footprint.of(ring), Map.of()))).edges().stream()
                        .filter(edge -> edge.kind() == EdgeKind.SIDE_WALL))
                .hasSize(2);
        List<WallSide> out = new ArrayList<>(ring);
        out.set(1, ring.get(1).overhanging(0.3));
        out.set(5, ring.get(5).overhanging(0.3));
        Refused refused =
                catchThrowableOfType(Refused.class, () -> RoofedFootprint.of(survey(Footprint.of(out), Map.of())));
        assertThat(refused.refusals()).extracting(Refusal::code).containsOnly(RefusalCode.OVERHANG_OVER_ROOF);
        assertThat(refused.refusals().get(0).detail()).contains("side 1");
        // The gable's free parts may stand out where no roof is under them.
        List<WallSide> free = new ArrayList<>(ring);
        free.set(7, ring.get(7).overhanging(0.3));
        assertThat(RoofedFootprint.of(survey(Footprint.of(free), Map.of())).planes())
                .hasSize(4);
    }

    @Test
    void ofSidesInLineTheFirstThatHasANameGivesIt() {
        List<WallSide> ring = Plans.ring(0, 0, 5, 0, 10, 0, 10, 4, 0, 4);
        assertThat(ids(survey(Footprint.of(ring), Map.of()))).containsExactly("side0", "side2", "side3", "side4");
        assertThat(ids(survey(Footprint.of(ring), Map.of(1, "porch")))).startsWith("porch", "side2");
    }

    @Test
    void sidesOfACourtyardAreNamedToo() {
        Footprint plan =
                new Footprint(Plans.ring(0, 0, 12, 0, 12, 12, 0, 12), List.of(Plans.ring(4, 4, 8, 4, 8, 8, 4, 8)));
        Roof roof = Roofs.read(RoofedFootprint.of(survey(plan, Map.of(5, "yard"))));
        assertThat(roof.planes()).hasSize(8);
        assertThat(roof.planes().stream().map(Plane::id)).contains("yard").doesNotHaveDuplicates();
        assertThat(roof.edges().stream()
                        .filter(edge -> edge.kind() == EdgeKind.VALLEY)
                        .count())
                .isEqualTo(4);
    }

    @Test
    void eavesStandWhereTheCallerHasThem() {
        RoofSurvey survey = RoofedFootprint.of(survey(Footprint.of(HOUSE), Map.of()));
        assertThat(survey.planes().get(0).outline())
                .containsExactly(new Point3(0, 0, 3), new Point3(10, 0, 3), new Point3(8, 2, 4), new Point3(2, 2, 4));
    }

    /** Against a house: the top of a shed is a head wall, its side a side wall, and the other side stays a rake. */
    @Test
    void alongAWallThatGoesOnLinesAreNamed() {
        List<WallSide> ring = Plans.pitched(HOUSE, "6:12", "gable", "gable", "gable");
        FootprintSurvey plain = survey(Footprint.of(ring), Map.of());
        List<Side> sides = new ArrayList<>(plain.sides());
        for (int walled : new int[] {1, 2}) {
            Side side = sides.get(walled);
            sides.set(
                    walled,
                    new Side(side.id(), side.own(), side.told(), true, side.at(), side.saidAt(), side.pitchAt()));
        }
        Roof roof = Roofs.read(RoofedFootprint.of(with(plain, sides, List.of())));
        assertThat(roof.edges().stream().map(RoofedFootprintTest::told))
                .containsExactly(
                        "eave side0 #/walls/0",
                        "sideWall side1 #/walls/1",
                        "headWall side2 #/walls/2",
                        "rake side3 #/walls/3");
    }

    @Test
    void anOpeningIsPutUpOntoItsSlope() {
        // In the north slope, near the hip that it shares with the east slope.
        FootprintSurvey survey =
                withOpenings(survey(Footprint.of(HOUSE), Map.of()), opening("hatch", 8.4, 2.5, 8.4, 3, 7.9, 3));
        RoofSurvey read = RoofedFootprint.of(survey);
        PlaneOutline north = read.planes().get(2);
        assertThat(north.openings()).hasSize(1);
        List<Point3> rim = north.openings().get(0).outline();
        double[] heights = {3.75, 3.5, 3.5};
        for (int i = 0; i < 3; i++) {
            assertThat(rim.get(i).z()).isCloseTo(heights[i], within(1e-12));
        }
        assertThat(Roofs.read(read).planes().get(2).planArea().squareMetres()).isCloseTo(16 - 0.125, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.5, 3.5, -1})
    void anOpeningThatLiesInNoSlopeIsRefused(double y) {
        FootprintSurvey survey =
                withOpenings(survey(Footprint.of(HOUSE), Map.of()), opening("hatch", 4, y, 5, y, 5, y + 1, 4, y + 1));
        Refusal refusal = refused(survey).get(0);
        assertThat(refusal.code()).isEqualTo(RefusalCode.OPENING_OUTSIDE);
        assertThat(refusal.at().pointer()).startsWith("#/openings/0/");
    }

    /** The grid is a micrometre wide; corners are exact all the same. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 1.6e6})
    void cornersAreNotOnTheGridButWhereTheWallsHaveThem(double away) {
        double x = away + 0.1234567;
        double y = away - 0.7654321;
        double turn = Math.atan2(3, 7);
        List<WallSide> ring = new ArrayList<>();
        double[] run = {0, 0, 7.1, 0, 7.1, 4.3, 0, 4.3};
        for (int i = 0; i < 8; i += 2) {
            ring.add(WallSide.sloped(
                    x + run[i] * Math.cos(turn) - run[i + 1] * Math.sin(turn),
                    y + run[i] * Math.sin(turn) + run[i + 1] * Math.cos(turn),
                    new Pitch(7, 12)));
        }
        RoofSurvey survey = RoofedFootprint.of(survey(Footprint.of(ring), Map.of()));
        // A double that counts millions of metres has steps of a quarter of a nanometre.
        double exact = away == 0 ? 1e-13 : 1e-9;
        Point3 ridge = survey.planes().get(0).outline().get(2);
        double along = 7.1 - 2.15;
        assertThat(ridge.x()).isCloseTo(x + along * Math.cos(turn) - 2.15 * Math.sin(turn), within(exact));
        assertThat(ridge.y()).isCloseTo(y + along * Math.sin(turn) + 2.15 * Math.cos(turn), within(exact));
        assertThat(ridge.z()).isCloseTo(3 + 2.15 * 7 / 12, within(exact));
        for (int i = 0; i < 4; i++) {
            assertThat(survey.planes().get(i).outline().get(0).x())
                    .isCloseTo(ring.get(i).x(), within(exact));
        }
    }

    private static final Pitch SIX = new Pitch(6, 12);

    /**
     * Roofs of {@link RisingSidesTest}, by hand there, turned so that nothing is on the grid; the house is 12 m by 6 m and its
     * eaves stand at 3 m.
     */
    static Stream<Arguments> risingSides() {
        List<WallSide> house = Plans.ring(0, 0, 12, 0, 12, 6, 0, 6);
        List<WallSide> dutch = new ArrayList<>(house);
        dutch.set(1, dutch.get(1).then(new WallSide.Change(1, Optional.empty())));
        List<WallSide> clipped = new ArrayList<>(house);
        clipped.set(1, clipped.get(1).eaveAt(1));
        List<WallSide> mansard = Plans.ring(new Pitch(24, 12), 0, 0, 12, 0, 12, 6, 0, 6).stream()
                .map(side -> side.then(change(2, SIX)))
                .toList();
        List<WallSide> cross = List.of(
                WallSide.sloped(0, 0, SIX).eaveAt(1),
                WallSide.gable(5, 0).crossing(SIX),
                WallSide.sloped(7, 0, SIX).eaveAt(1),
                WallSide.sloped(12, 0, SIX),
                WallSide.sloped(12, 6, SIX),
                WallSide.sloped(0, 6, SIX));
        return Stream.of(
                Arguments.of(dutch, List.of("side0", "side1", "side2", "side3"), new double[][] {
                    {10, 2, 4}, {10, 4, 4}, {10, 3, 4.5}, {3, 3, 4.5}
                }),
                Arguments.of(clipped, List.of("side0", "side1", "side2", "side3"), new double[][] {
                    {12, 2, 4}, {12, 4, 4}, {11, 3, 4.5}
                }),
                Arguments.of(
                        mansard,
                        List.of(
                                "side0",
                                "side0.above1",
                                "side1",
                                "side1.above1",
                                "side2",
                                "side2.above1",
                                "side3",
                                "side3.above1"),
                        new double[][] {{11, 1, 5}, {11, 5, 5}, {9, 3, 6}, {3, 3, 6}}),
                Arguments.of(
                        cross,
                        List.of("side0", "side1.start", "side1.end", "side3", "side4", "side5"),
                        new double[][] {{5, 0, 4}, {7, 0, 4}, {6, 0, 4.5}, {6, 1, 4.5}}));
    }

    @ParameterizedTest
    @MethodSource("risingSides")
    void sidesThatRiseInTheirOwnWayAreNamedAndExact(List<WallSide> ring, List<String> ids, double[][] corners) {
        double cos = Math.cos(0.3);
        double sin = Math.sin(0.3);
        List<WallSide> turned = ring.stream()
                .map(side -> side.from(cos * side.x() - sin * side.y(), sin * side.x() + cos * side.y()))
                .toList();
        RoofSurvey read = RoofedFootprint.of(survey(Footprint.of(turned), Map.of()));
        assertThat(read.planes().stream().map(PlaneOutline::id)).containsExactlyElementsOf(ids);
        List<Point3> found = read.planes().stream()
                .flatMap(plane -> plane.outline().stream())
                .toList();
        for (double[] xyz : corners) {
            Point3 wanted = new Point3(cos * xyz[0] - sin * xyz[1], sin * xyz[0] + cos * xyz[1], xyz[2]);
            assertThat(found)
                    .anySatisfy(corner -> assertThat(corner.distance(wanted)).isLessThan(1e-12));
        }
    }

    /** The front of {@link RisingSidesTest#aSlopeMayBeginInTwoPlaces}. */
    @Test
    void slopesOfOneSideThatArePartedAreToldApartByName() {
        List<WallSide> ring = Plans.ring(0, 0, 12, 0, 12, 6, 8, 6, 6, 2, 4, 6, 0, 6).stream()
                .map(side -> side.then(change(0.75, new Pitch(9, 12))))
                .toList();
        assertThat(ids(survey(Footprint.of(ring), Map.of())))
                .contains("side0", "side0.above1", "side0.above1.2")
                .doesNotHaveDuplicates();
    }

    @Test
    void whereAGableGoesUpFromASlopeTheSlopeEndsAtAHeadWall() {
        List<WallSide> ring = new ArrayList<>(Plans.ring(0, 0, 12, 0, 12, 6, 0, 6));
        ring.set(1, ring.get(1).then(new WallSide.Change(1, Optional.empty())));
        Roof roof = Roofs.read(RoofedFootprint.of(survey(Footprint.of(ring), Map.of(1, "east"))));
        assertThat(told(edge(roof, EdgeKind.HEAD_WALL))).isEqualTo("headWall east #/walls/1");
        assertThat(told(edge(roof, EdgeKind.RAKE))).isEqualTo("rake east #/walls/1");
    }

    /** Every roof that is found is read: as flat as may be, and the footprint's area in all. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5})
    void everyRoofThatIsFoundIsReadAndCoversTheWalls(int kind) {
        int read = 0;
        for (int seed = 0; seed < 150; seed++) {
            Random random = new Random(1_000L * kind + seed);
            Footprint plan = madeUp(kind, random);
            if (!(Footprints.roofOver(plan) instanceof RoofOver)) {
                continue;
            }
            Roof roof = Roofs.read(RoofedFootprint.of(survey(plan, Map.of())));
            double area = roof.planes().stream()
                    .mapToDouble(plane -> plane.planArea().squareMetres())
                    .sum();
            Footprint eaves = EaveLines.of(plan);
            double walls = Stream.concat(Stream.of(eaves.outline()), eaves.courtyards().stream())
                    .mapToDouble(RoofedFootprintTest::area)
                    .reduce((outline, yard) -> outline - yard)
                    .orElseThrow();
            // Corners within the tolerance, a millimetre, become one.
            assertThat(area).as("kind %d seed %d", kind, seed).isCloseTo(walls, within(1e-3 * Math.sqrt(walls)));
            assertThat(roof.planes())
                    .allSatisfy(plane -> assertThat(plane.off().metres()).isLessThan(1e-3));
            read++;
        }
        assertThat(read).isGreaterThan(100);
    }

    private static Footprint madeUp(int kind, Random random) {
        Pitch pitch = new Pitch(2 + random.nextInt(12), 12);
        if (kind == 0) {
            return Footprint.of(Plans.star(random, 3 + random.nextInt(30), 3, 12, pitch));
        }
        if (kind == 4 || kind == 5) {
            return Footprint.of(Plans.star(random, 3 + random.nextInt(12), 6, 12, pitch).stream()
                    .map(side -> kind == 4
                            ? side.then(change(0.7, new Pitch(1 + random.nextInt(12), 12)))
                            : side.eaveAt(random.nextInt(3) / 2.0))
                    .toList());
        }
        if (kind == 1) {
            return Footprint.of(Plans.star(random, 3 + random.nextInt(12), 6, 12, pitch).stream()
                    .map(side -> side.overhanging(0.3))
                    .toList());
        }
        List<List<WallSide>> rings = new ArrayList<>();
        for (List<int[]> ring :
                Plans.squares(random, 3 + random.nextInt(6), 3 + random.nextInt(6), 4 + random.nextInt(20))) {
            double[] xy = ring.stream()
                    .flatMapToDouble(corner -> DoubleStream.of(3 * corner[0], 3 * corner[1]))
                    .toArray();
            rings.add(Plans.ring(pitch, xy).stream()
                    .map(side -> kind == 2 ? side.overhanging(0.4) : side)
                    .toList());
        }
        return new Footprint(rings.get(0), rings.subList(1, rings.size()));
    }

    private static double area(List<WallSide> ring) {
        double twice = 0;
        for (int i = 0; i < ring.size(); i++) {
            WallSide next = ring.get((i + 1) % ring.size());
            twice += ring.get(i).x() * next.y() - ring.get(i).y() * next.x();
        }
        return Math.abs(twice) / 2;
    }

    @Test
    void whyThereIsNoRoofIsToldOfTheCallersSides() {
        Refusal crossing = refused(survey(Footprint.of(Plans.ring(0, 0, 10, 8, 10, 0, 0, 8)), Map.of(0, "south")))
                .get(0);
        assertThat(crossing.code()).isEqualTo(RefusalCode.RINGS_CROSS);
        assertThat(crossing.at().pointer()).isEqualTo("#/walls/2");
        assertThat(crossing.detail()).startsWith("Side 2 and 'south' cross or touch.");
    }

    @Test
    void everyPitchThatIsNoneAndEveryHeightOutOfOrderIsToldAtOnce() {
        List<WallSide> ring = new ArrayList<>(Plans.pitched(HOUSE, "0:12", "6:12", "1200:12", "gable"));
        Pitch flat = new Pitch(2, 12);
        ring.set(1, ring.get(1).then(change(2, flat)).then(change(1, flat)));
        ring.set(0, ring.get(0).then(change(-1, flat)));
        List<Refusal> refusals = refused(survey(Footprint.of(ring), Map.of()));
        assertThat(refusals.stream()
                        .map(refusal -> refusal.code() + " " + refusal.at().pointer()))
                .containsExactly(
                        "PITCH_EXTREME #/sides/0/pitch",
                        "PITCH_EXTREME #/sides/2/pitch",
                        "HEIGHTS_OUT_OF_ORDER #/sides/0/above/0/height",
                        "HEIGHTS_OUT_OF_ORDER #/sides/1/above/1/height");
        assertThat(refusals.get(3).actual()).contains(Length.metres(4));
        assertThat(refusals.get(3).limit()).contains(Length.metres(5));
    }

    /** All steep to 1.5 m, 3 m in, where the house ends: the upper slopes of the long sides would have no width. */
    @Test
    void aSlopeOfNoWidthIsLeftOut() {
        List<WallSide> mansard = Plans.ring(0, 0, 12, 0, 12, 6.0005, 0, 6.0005).stream()
                .map(side -> side.then(change(1.5, new Pitch(3, 12))))
                .toList();
        RoofOver found = Plans.roof(mansard);
        assertThat(found.slopes()).hasSize(8);
        Roof roof = Roofs.read(RoofedFootprint.of(survey(Footprint.of(mansard), Map.of())));
        assertThat(roof.planes().stream().map(Plane::id)).containsExactly("side0", "side1", "side2", "side3");
        assertThat(edge(roof, EdgeKind.RIDGE).length().metres()).isCloseTo(6, within(0.001));
        assertThat(roof.edges()).hasSize(9);
    }

    /** 300 slopes meet in the middle of a round, where each is narrower than the tolerance in a place, but not all along. */
    @Test
    void aSlopeNarrowerThanTheToleranceInAPlaceIsRefusedAsSuch() {
        List<WallSide> round = new ArrayList<>();
        for (int i = 0; i < 300; i++) {
            double turn = 2 * Math.PI * i / 300;
            round.add(WallSide.sloped(250 * Math.cos(turn), 250 * Math.sin(turn), new Pitch(1, 12)));
        }
        Refusal refusal = refused(survey(Footprint.of(round), Map.of())).get(0);
        assertThat(refusal.code()).isEqualTo(RefusalCode.FINER_THAN_TOLERANCE);
        assertThat(refusal.at().pointer()).startsWith("#/walls/");
        assertThat(refusal.limit()).contains(Length.metres(0.001));
    }

    private static WallSide.Change change(double height, Pitch pitch) {
        return new WallSide.Change(height, Optional.of(pitch));
    }

    private static List<Refusal> refused(FootprintSurvey survey) {
        Refused refused = catchThrowableOfType(Refused.class, () -> RoofedFootprint.of(survey));
        assertThat(refused).isNotNull();
        return refused.refusals();
    }

    private static List<String> ids(FootprintSurvey survey) {
        return RoofedFootprint.of(survey).planes().stream()
                .map(PlaneOutline::id)
                .toList();
    }

    private static Edge edge(Roof roof, EdgeKind kind) {
        return roof.edges().stream()
                .filter(edge -> edge.kind() == kind)
                .findFirst()
                .orElseThrow();
    }

    private static OpeningOutline opening(String id, double... xy) {
        List<Point3> outline = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            outline.add(new Point3(xy[i], xy[i + 1], 0));
        }
        return new OpeningOutline(id, outline, Origin.REQUEST.at("openings").at(0));
    }

    /** Eaves 3 m up; sides without a name in {@code ids} have none of their own. */
    static FootprintSurvey survey(Footprint walls, Map<Integer, String> ids) {
        List<Side> sides = new ArrayList<>();
        for (int i = 0; i < walls.sides(); i++) {
            Origin saidAt = Origin.REQUEST.at("sides").at(i);
            sides.add(new Side(
                    ids.getOrDefault(i, "side" + i),
                    ids.containsKey(i),
                    ids.containsKey(i) ? "'" + ids.get(i) + "'" : "side " + i,
                    false,
                    Origin.REQUEST.at("walls").at(i),
                    saidAt,
                    saidAt.at("pitch")));
        }
        return new FootprintSurvey(
                walls,
                sides,
                Length.metres(3),
                List.of(),
                Origin.REQUEST,
                Tolerance.DEFAULT,
                new Pitch(1, 48),
                Source.REQUEST);
    }

    private static FootprintSurvey withOpenings(FootprintSurvey survey, OpeningOutline... openings) {
        return with(survey, survey.sides(), List.of(openings));
    }

    private static FootprintSurvey with(FootprintSurvey survey, List<Side> sides, List<OpeningOutline> openings) {
        return new FootprintSurvey(
                survey.walls(),
                sides,
                survey.eaveHeight(),
                openings,
                survey.at(),
                survey.tolerance(),
                survey.leastSlope(),
                survey.leastSlopeSource());
    }
}
