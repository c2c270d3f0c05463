package org.thalweg.fastening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.thalweg.fastening.ValleyRows.RowKind;
import org.thalweg.finding.Finding;
import org.thalweg.finding.FindingCode;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Tolerance;
import org.thalweg.panel.Lead;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.EdgeTreatment;
import org.thalweg.roof.EdgeTreatments;
import org.thalweg.roof.PlaneOutline;
import org.thalweg.roof.Roof;
import org.thalweg.roof.RoofSurvey;
import org.thalweg.roof.Roofs;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;
import org.thalweg.units.Pitch;
import org.thalweg.valley.ValleyLayout;
import org.thalweg.valley.ValleySide;

/** Fasteners on roofs of several planes, in inches. */
class FastenedRoofsTest {

    private static final double PRECISE = 1e-9;

    private static Point3 p(double x, double y, double z) {
        return new Point3(x * 0.0254, y * 0.0254, z * 0.0254);
    }

    private static PlaneOutline plane(String id, Point3... corners) {
        return new PlaneOutline(id, List.of(corners), List.of(), Origin.REQUEST, Origin.REQUEST);
    }

    private static Roof read(List<PlaneOutline> planes) {
        return Roofs.read(
                new RoofSurvey(planes, List.of(), Tolerance.DEFAULT, new Pitch(0.25, 12), Source.COMMON_PRACTICE));
    }

    /** Two planes that rise 120 to a ridge from eaves that meet at a square inner corner, at (0 0). */
    private static List<PlaneOutline> innerCorner(double tanNorth, double tanWest) {
        double y = 120 / tanNorth;
        double x = 120 / tanWest;
        return List.of(
                plane("north", p(0, 0, 0), p(360, 0, 0), p(360, y, 120), p(-x, y, 120)),
                plane("west", p(0, -360, 0), p(0, 0, 0), p(-x, y, 120), p(-x, -360, 120)));
    }

    /** A hip roof of 6:12, 480 by 240 in plan, with a gabled wing 144 wide that comes 120 out of its long side. */
    private static List<PlaneOutline> hipWithWing() {
        return List.of(
                plane(
                        "south",
                        p(0, 0, 0),
                        p(150, 0, 0),
                        p(222, 72, 36),
                        p(294, 0, 0),
                        p(480, 0, 0),
                        p(360, 120, 60),
                        p(120, 120, 60)),
                plane("north", p(480, 240, 0), p(0, 240, 0), p(120, 120, 60), p(360, 120, 60)),
                plane("west", p(0, 240, 0), p(0, 0, 0), p(120, 120, 60)),
                plane("east", p(480, 0, 0), p(480, 240, 0), p(360, 120, 60)),
                plane("wing west", p(150, 0, 0), p(150, -120, 0), p(222, -120, 36), p(222, 72, 36)),
                plane("wing east", p(294, -120, 0), p(294, 0, 0), p(222, 72, 36), p(222, -120, 36)));
    }

    private static List<PlaneOutline> moved(List<PlaneOutline> planes, UnaryOperator<Point3> to) {
        return planes.stream()
                .map(plane -> plane(plane.id(), plane.outline().stream().map(to).toArray(Point3[]::new)))
                .toList();
    }

    private static double in(Length length) {
        return length.in(LengthUnit.INCH);
    }

    private static List<FastenerRow> rows(FastenerRows all, FastenerKind kind, int plane) {
        return all.rows().stream()
                .filter(row -> row.kind() == kind && row.plane() == plane)
                .toList();
    }

    /**
     * A whole panel at 6:12, cut at φ with cos φ = 2/3: 27 in along the slant, 1.125 in of it at each rib, so 24.75 in, seven
     * intervals at most 4 apart [common practice]. At 6:12 against 12:12 cos φ = 1/√6: 40.4166 in, eleven. The screws of whole
     * panels are those that a valley looked at alone is told.
     */
    @Test
    void wholePanelsAtAValleyTakeTheScrewsThatItIsToldAlone() {
        for (double west : new double[] {0.5, 1}) {
            FasteningCase asked = Fastened.of(read(innerCorner(0.5, west))).asked(FasteningRules.INCHES);
            ValleyLayout valley = asked.valleys().get(0);
            FastenerRows all = FastenerRows.of(asked);
            for (ValleyRows.Row alone :
                    ValleyRows.of(valley, FasteningRules.INCHES.ofValley(), Fastened.COVER, Tolerance.DEFAULT)) {
                ValleySide side = alone.onLeft() ? valley.left() : valley.right();
                if (alone.kind() == RowKind.VALLEY) {
                    List<FastenerRow> whole = rows(
                                    all, FastenerKind.VALLEY, side.seen().plane())
                            .stream()
                            .filter(row -> Math.abs(row.row().spacing().metres()
                                            - alone.row().spacing().metres())
                                    < PRECISE)
                            .toList();
                    assertThat(whole).hasSizeGreaterThan(3).allSatisfy(row -> assertThat(row.count())
                            .isEqualTo(alone.row().count()));
                }
            }
        }
        FastenerRow whole = rows(Fastened.of(read(innerCorner(0.5, 0.5))).rows(), FastenerKind.VALLEY, 0)
                .get(3);
        assertThat(whole.count()).isEqualTo(8);
        assertThat(in(whole.row().spacing())).isCloseTo(24.75 / 7, within(PRECISE));
    }

    /** The pan's edges are fastened where the valley looked at alone has them. */
    @Test
    void thePansEdgesAreFastenedAsTheValleyIsToldAlone() {
        FasteningCase asked = Fastened.of(read(innerCorner(0.5, 8 / 12.0))).asked(FasteningRules.INCHES);
        List<FastenerRow> edges = FastenerRows.of(asked).rows().stream()
                .filter(row -> row.kind() == FastenerKind.PAN_EDGE)
                .toList();
        List<ValleyRows.Row> alone = ValleyRows.of(
                        asked.valleys().get(0), FasteningRules.INCHES.ofValley(), Fastened.COVER, Tolerance.DEFAULT)
                .stream()
                .filter(row -> row.kind() == RowKind.PAN_EDGE)
                .toList();
        assertThat(edges).hasSize(2);
        assertThat(edges)
                .extracting(row -> row.count() + " at " + Math.rint(in(row.row().spacing()) * 1e6))
                .containsExactlyInAnyOrderElementsOf(alone.stream()
                        .map(row -> row.row().count() + " at "
                                + Math.rint(in(row.row().spacing()) * 1e6))
                        .toList());
    }

    /** A coil of 34 in leaves a flat of 11 3/4: an inch inside it is 2 in inside the water way of panels held back 12 3/4. */
    @Test
    void aPanTooNarrowToFastenOutOfTheWaterIsAFindingAndNotFastenedThere() {
        Fastened laid = Fastened.of(read(innerCorner(0.5, 0.5)));
        FasteningCase asked = laid.asked(FasteningRules.INCHES, Fastened.pan(34, 12.75, 0));
        FastenerRows all = FastenerRows.of(asked);
        assertThat(all.count(FastenerKind.PAN_EDGE)).isZero();
        assertThat(all.findings())
                .filteredOn(finding -> finding.code() == FindingCode.FASTENER_IN_WATER_WAY)
                .hasSize(2)
                .allSatisfy(finding -> {
                    assertThat(in((Length) finding.actual().orElseThrow())).isCloseTo(10.75, within(PRECISE));
                    assertThat(finding.limit()).contains(Fastened.HELD_BACK);
                });
    }

    /** Held back 12 3/4 in at the foot and nearer the low further up, the pan is fastened from where its edge lies dry. */
    @Test
    void aValleyThatWidensDownwardIsFastenedWhereItsPanIsDry() {
        Roof roof = read(innerCorner(0.5, 0.5));
        double length = roof.edges().stream()
                .filter(edge -> edge.kind() == EdgeKind.VALLEY)
                .findFirst()
                .orElseThrow()
                .length()
                .in(LengthUnit.INCH);
        double atTop = 12.75 - length / 96 / 2;
        Map<EdgeKind, EdgeTreatment> ends = Map.of(
                EdgeKind.VALLEY, new EdgeTreatment(Fastened.HELD_BACK, Length.inches(atTop), Length.ZERO, Length.ZERO));
        FasteningCase asked = Fastened.of(roof)
                .treated(new EdgeTreatments(ends, Map.of()))
                .asked(FasteningRules.INCHES, Fastened.pan(37.5, 12.75, 0.125));
        FastenerRows all = FastenerRows.of(asked);
        List<FastenerRow> edge = rows(all, FastenerKind.PAN_EDGE, 0);
        assertThat(edge).hasSize(1);
        // The flat is 13.5 wide and fastened 12.5 from the low: dry from 48 in up the low, and an inch further.
        double fromFoot = Math.min(
                upTheLow(asked, edge.get(0).from()), upTheLow(asked, edge.get(0).to()));
        assertThat(fromFoot).isCloseTo(48 + 1, within(1e-3));
        assertThat(all.findings()).extracting(Finding::code).contains(FindingCode.FASTENER_IN_WATER_WAY);
        FasteningLaws.hold(asked, "widening");
    }

    private static double upTheLow(FasteningCase asked, Point2 place) {
        ValleyLayout valley = asked.valleys().get(0);
        ValleySide side = valley.left().seen().plane() == 0 ? valley.left() : valley.right();
        double across = side.seen().head().across() - side.seen().foot().across();
        double up = side.seen().head().up() - side.seen().foot().up();
        return ((place.across() - side.seen().foot().across()) * across
                        + (place.up() - side.seen().foot().up()) * up)
                / Math.hypot(across, up)
                / 0.0254;
    }

    @Test
    void everythingOnAHipRoofWithAWingKeepsTheLaws() {
        Fastened laid = Fastened.of(read(hipWithWing())).from(Lead.LEFT, 5);
        assertThat(FasteningLaws.hold(laid.asked(FasteningRules.INCHES), "fixed"))
                .isGreaterThan(1_000);
        assertThat(FasteningLaws.hold(laid.cleated().asked(FasteningRules.METRIC), "cleated"))
                .isGreaterThan(500);
        FastenerRows rows = laid.rows();
        for (FastenerKind kind : List.of(FastenerKind.EAVE, FastenerKind.VALLEY, FastenerKind.CLOSURE)) {
            assertThat(rows.count(kind)).as(kind.wire()).isGreaterThan(50);
        }
    }

    @ParameterizedTest
    @EnumSource
    void aMirroredRoofIsFastenedAtMirroredPlaces(FastenerKind kind) {
        for (List<PlaneOutline> planes : List.of(innerCorner(0.5, 8 / 12.0), hipWithWing())) {
            UnaryOperator<Point3> mirror = place -> new Point3(-place.x(), place.y(), place.z());
            FasteningCase plain =
                    Fastened.of(read(planes)).from(Lead.LEFT, 5).longest(100).asked(FasteningRules.INCHES);
            FasteningCase mirrored = Fastened.of(read(moved(planes, mirror)))
                    .from(Lead.RIGHT, 5)
                    .longest(100)
                    .asked(FasteningRules.INCHES);
            areTheSame(Fastened.inWorld(plain, kind).stream().map(mirror).toList(), Fastened.inWorld(mirrored, kind));
            areTheSame(Fastened.clipsInWorld(plain).stream().map(mirror).toList(), Fastened.clipsInWorld(mirrored));
        }
    }

    /** A turn by 3-4-5 and a long way off. */
    @ParameterizedTest
    @EnumSource
    void aTurnedRoofIsFastenedAtTurnedPlaces(FastenerKind kind) {
        UnaryOperator<Point3> turn =
                q -> new Point3(0.8 * q.x() - 0.6 * q.y() + 300, 0.6 * q.x() + 0.8 * q.y() - 200, q.z() + 50);
        FasteningCase plain = Fastened.of(read(hipWithWing())).asked(FasteningRules.INCHES);
        FasteningCase turned = Fastened.of(read(moved(hipWithWing(), turn))).asked(FasteningRules.INCHES);
        areTheSame(Fastened.inWorld(plain, kind).stream().map(turn).toList(), Fastened.inWorld(turned, kind));
    }

    /** Half of all square corners come out a hair obtuse once a roof is turned: their rows may not end elsewhere for that. */
    @ParameterizedTest(name = "turned by {0} degrees")
    @ValueSource(ints = {1, 36, 37, 53, 90, 111, 145, 180, 222, 307})
    void rowsEndAtSquareCornersWhereTheyDoHoweverTheRoofIsTurned(int degrees) {
        double cos = Math.cos(Math.toRadians(degrees));
        double sin = Math.sin(Math.toRadians(degrees));
        UnaryOperator<Point3> turn = q -> new Point3(cos * q.x() - sin * q.y() + 75, sin * q.x() + cos * q.y(), q.z());
        List<PlaneOutline> shed = List.of(plane("shed", p(0, 0, 0), p(150, 0, 0), p(150, 96, 24), p(0, 96, 24)));
        FasteningCase plain = Fastened.of(read(shed)).asked(FasteningRules.INCHES);
        FasteningCase turned = Fastened.of(read(moved(shed, turn))).asked(FasteningRules.INCHES);
        for (FastenerKind kind : FastenerKind.values()) {
            areTheSame(Fastened.inWorld(plain, kind).stream().map(turn).toList(), Fastened.inWorld(turned, kind));
        }
    }

    private static void areTheSame(List<Point3> some, List<Point3> others) {
        assertThat(some).hasSameSizeAs(others);
        List<Point3> left = new ArrayList<>(others);
        for (Point3 place : some) {
            Point3 nearest = left.stream()
                    .min((a, b) -> Double.compare(a.distance(place), b.distance(place)))
                    .orElseThrow();
            assertThat(nearest.distance(place)).isLessThan(1e-6);
            left.remove(nearest);
        }
    }

    /** One plane of 6:12, 180 wide, with its ridge over it; cut in two by a level line when {@code split}. */
    private static Roof gable(boolean split) {
        List<PlaneOutline> planes = new ArrayList<>();
        if (split) {
            planes.add(plane("lower", p(0, 0, 0), p(180, 0, 0), p(180, 90, 45), p(0, 90, 45)));
            planes.add(plane("upper", p(0, 90, 45), p(180, 90, 45), p(180, 200, 100), p(0, 200, 100)));
        } else {
            planes.add(plane("whole", p(0, 0, 0), p(180, 0, 0), p(180, 200, 100), p(0, 200, 100)));
        }
        planes.add(plane("back", p(180, 400, 0), p(0, 400, 0), p(0, 200, 100), p(180, 200, 100)));
        return read(planes);
    }

    private static Map<String, Integer> counts(Roof roof) {
        FasteningCase asked = Fastened.of(roof).asked(FasteningRules.INCHES);
        Map<String, Integer> counts = new TreeMap<>();
        for (FastenerRow row : FastenerRows.of(asked).rows()) {
            counts.merge(row.kind().wire(), row.count(), Integer::sum);
        }
        counts.put("clips", Seams.of(asked).clipCount());
        return counts;
    }

    /**
     * What the new edge needs: ten panels lapped with six screws each (the outer two stand an inch off the rake and take six
     * too), and an end more for either rake and every seam, which is one or two fasteners each.
     */
    @Test
    void aPitchBreakOfNothingChangesOnlyWhatItsOwnEdgeNeeds() {
        Map<String, Integer> whole = counts(gable(false));
        Map<String, Integer> split = counts(gable(true));
        assertThat(split.get("eave")).isEqualTo(whole.get("eave"));
        assertThat(split.get("closure")).isEqualTo(whole.get("closure"));
        assertThat(split.get("endLap")).isEqualTo(60);
        assertThat(split.getOrDefault("rake", 0) - whole.getOrDefault("rake", 0))
                .isBetween(0, 2 * 2);
        assertThat(split.getOrDefault("clips", 0) - whole.getOrDefault("clips", 0))
                .isBetween(0, 9 * 2);
        assertThat(split.keySet())
                .containsExactlyInAnyOrderElementsOf(Stream.concat(whole.keySet().stream(), Stream.of("endLap"))
                        .toList());
    }
}
