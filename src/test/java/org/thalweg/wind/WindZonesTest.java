package org.thalweg.wind;

import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;
import org.thalweg.finding.Refused;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Point3;
import org.thalweg.roof.Drawn;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.Plane;
import org.thalweg.roof.PlaneOutline;
import org.thalweg.roof.Roof;
import org.thalweg.units.Length;

/** Zones by hand, one metre wide. Lines run from south to north in plan and are told as they go, in plan. */
class WindZonesTest {

    /** tan of 3:12 (14.04°), of 5.76:12 (25.64°) and of 1:12 (4.76°). */
    private static final double LOW = 0.25;

    private static final double ABOVE_25 = 0.48;
    private static final double FLAT = 1 / 12.0;

    /** The line over one plane from (x, from) to (x, to): {@code "corner 1.00 edge 3.00 …"}, each to where it ends in plan. */
    private static String along(Roof roof, String id, double x, double from, double to) {
        int plane = roof.planes().stream().map(Plane::id).toList().indexOf(id);
        Plane own = roof.planes().get(plane);
        Point2 start = onPlane(own, x, from);
        Point2 end = onPlane(own, x, to);
        double perMetre = Math.abs(to - from) / start.distance(end);
        return WindZones.of(roof, Length.metres(1)).along(plane, own.frame(), start, end).stream()
                .map(stretch -> "%s %.2f"
                        .formatted(
                                stretch.zone().wire(),
                                from + (to > from ? 1 : -1) * stretch.to().metres() * perMetre))
                .collect(joining(", "));
    }

    /** Straight up from a place in plan onto a plane. */
    private static Point2 onPlane(Plane plane, double x, double y) {
        Point3 origin = plane.frame().origin();
        double z = origin.z()
                - (plane.frame().outward().x() * (x - origin.x())
                                + plane.frame().outward().y() * (y - origin.y()))
                        / plane.frame().outward().z();
        return plane.frame().onPlane(new Point3(x, y, z));
    }

    private static Roof roof(List<PlaneOutline> planes) {
        return Houses.read(planes);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "6    | edge 1.00, field 3.00, edge 4.00",
                "0.9  | corner 1.00, edge 3.00, corner 4.00",
                "1    | corner 1.00, edge 3.00, corner 4.00",
                "1.01 | edge 1.00, field 3.00, edge 4.00",
                "11.5 | corner 1.00, edge 3.00, corner 4.00"
            })
    void aGableHasEdgesAtEaveRakeAndRidgeAndCornersWhereTheyMeet(double x, String zones) {
        assertThat(along(roof(Houses.gable(LOW)), "south", x, 0, 4)).isEqualTo(zones);
    }

    @Test
    void aLineDownTheRoofHasTheSameZonesInTheOtherOrder() {
        assertThat(along(roof(Houses.gable(LOW)), "south", 6, 4, 0)).isEqualTo("edge 3.00, field 1.00, edge 0.00");
    }

    /** ASCE 7: a gable of 7° or less is a flat roof: strips along its rim, corners at its corners, nothing at the ridge. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"6 | edge 1.00, field 4.00", "0.5 | corner 1.00, edge 4.00"})
    void aFlatRoofHasZonesAtItsRimOnly(double x, String zones) {
        assertThat(along(roof(Houses.gable(FLAT)), "south", x, 0, 4)).isEqualTo(zones);
    }

    /** 7° exactly is still flat. */
    @Test
    void aRoofOfSevenDegreesIsFlat() {
        assertThat(along(roof(Houses.gable(Math.tan(Math.toRadians(7)))), "south", 6, 0, 4))
                .isEqualTo("edge 1.00, field 4.00");
        assertThat(along(roof(Houses.gable(Math.tan(Math.toRadians(7.01)))), "south", 6, 0, 4))
                .isEqualTo("edge 1.00, field 3.00, edge 4.00");
    }

    /** At x = 3 the hip y = x is √2 level metres up and down the line from where the strip beside it begins and ends. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "3 | 3 | edge 1.00, field 1.59, edge 3.00",
                "6 | 4 | edge 1.00, field 3.00, edge 4.00",
                "1 | 1 | edge 1.00"
            })
    void aHipRoofUpTo25DegreesHasNoCorners(double x, double top, String zones) {
        assertThat(along(roof(Houses.hip(LOW)), "south", x, 0, top)).isEqualTo(zones);
    }

    /** At x = 2 the place on the hip is √2 of a metre from the strip's lower border: within 1 of both below 1. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"2 | 2 | edge 0.59, corner 1.00, edge 2.00", "6 | 4 | edge 1.00, field 3.00, edge 4.00"})
    void aSteeperHipRoofHasCornersWhereHipsMeetEaves(double x, double top, String zones) {
        assertThat(along(roof(Houses.hip(ABOVE_25)), "south", x, 0, top)).isEqualTo(zones);
    }

    /** A hip roof of 4.76° is a flat roof; the eave of the east end counts on the south side too. */
    @Test
    void aFlatHipRoofHasCornersOfBothItsEaves() {
        Roof roof = roof(Houses.hip(FLAT));
        assertThat(along(roof, "south", 0.9, 0, 0.9)).isEqualTo("corner 0.90");
        assertThat(along(roof, "south", 1.5, 0, 1.5)).isEqualTo("edge 1.00, field 1.50");
    }

    /** The valley from (4, 0) to (6, 2): no strip along it, no corner where the eaves meet inside. */
    @Test
    void anInnerCornerIsNoCornerAndAValleyNoEdge() {
        Roof roof = roof(Houses.hipWithWing(ABOVE_25));
        assertThat(along(roof, "south", 3.9, 0, 0.5)).isEqualTo("edge 0.50");
        assertThat(along(roof, "wing west", 4.2, -1.5, 0.2)).isEqualTo("edge 0.20");
        assertThat(along(roof, "south", 5.2, 1.3, 3.5)).isEqualTo("field 3.00, edge 3.50");
        assertThat(along(roof, "wing west", 4.5, -4, 0)).isEqualTo("corner -3.00, edge 0.00");
    }

    private static Drawn flat() {
        return Drawn.plan("""
                D       C



                A   E   B
                """).move("ABCDE", p -> new Point3(p.x(), p.y(), p.y() * 0.25));
    }

    @Test
    void aWallIsAnEdgeAndMakesNoCorner() {
        Roof roof = flat().planes("ABCD")
                .named("BC", EdgeKind.SIDE_WALL)
                .named("CD", EdgeKind.HEAD_WALL)
                .read()
                .roof();
        assertThat(along(roof, "ABCD", 0.5, 0, 4)).isEqualTo("corner 1.00, edge 4.00");
        assertThat(along(roof, "ABCD", 7.5, 0, 4)).isEqualTo("edge 4.00");
        assertThat(along(roof, "ABCD", 4, 0, 4)).isEqualTo("edge 1.00, field 3.00, edge 4.00");
    }

    @Test
    void anEaveInTwoPiecesHasNoCornerInTheMiddle() {
        Roof roof = flat().planes("AEBCD").read().roof();
        assertThat(along(roof, "AEBCD", 4, 0, 4)).isEqualTo("edge 1.00, field 3.00, edge 4.00");
    }

    /** The last piece of the eave is shorter than the corner is wide: the corner reaches along the one before it. */
    @Test
    void aCornerIsAsLargeWhateverPiecesItsEavesComeIn() {
        Roof roof = flat().corner('E', 7.8, 0, 0).planes("AEBCD").read().roof();
        assertThat(along(roof, "AEBCD", 7.05, 0, 4)).isEqualTo("corner 1.00, edge 3.00, corner 4.00");
    }

    /** The upper plane is half a metre deep; the ridge's strip reaches over its lower edge into the plane below. */
    @Test
    void aPlaneInTwoHasTheZonesOfTheWhole() {
        Roof roof = roof(Houses.gableInTwo(LOW));
        assertThat(along(roof, "lower", 6, 0, 3.5)).isEqualTo("edge 1.00, field 3.00, edge 3.50");
        assertThat(along(roof, "lower", 0.5, 0, 3.5)).isEqualTo("corner 1.00, edge 3.00, corner 3.50");
        assertThat(along(roof, "upper", 0.5, 3.5, 4)).isEqualTo("corner 4.00");
    }

    @Test
    void aPlaceOnABorderIsInTheHigherZone() {
        Roof roof = roof(Houses.gable(LOW));
        WindZones zones = WindZones.of(roof, Length.metres(1));
        Plane south = roof.planes().get(0);
        assertThat(zones.at(0, onPlane(south, 1, 1))).isEqualTo(WindZone.CORNER);
        assertThat(zones.at(0, onPlane(south, 6, 1))).isEqualTo(WindZone.EDGE);
        assertThat(zones.at(0, onPlane(south, 6, 1.0001))).isEqualTo(WindZone.FIELD);
    }

    /** A wheel of spokes that are one roof at its rim; twice as many edges as spokes meet at the hub. */
    private static List<PlaneOutline> wheel(int spokes) {
        List<PlaneOutline> planes = new ArrayList<>();
        Point3 hub = new Point3(0, 0, 0);
        for (int i = 0; i < spokes; i++) {
            planes.add(Houses.plane("spoke " + i, hub, onWheel(i, spokes, 30), onWheel(i + 0.5, spokes, 30)));
            planes.add(Houses.plane(
                    "rim " + i,
                    onWheel(i + 0.5, spokes, 20),
                    onWheel(i + 0.5, spokes, 30),
                    onWheel(i + 1, spokes, 30),
                    onWheel(i + 1, spokes, 20)));
        }
        return planes;
    }

    private static Point3 onWheel(double spoke, int spokes, double radius) {
        double turn = 2 * Math.PI * (spoke % spokes) / spokes;
        double x = radius * Math.cos(turn);
        return new Point3(x, radius * Math.sin(turn), x / 10);
    }

    /** 640 edges meet in one place: 204,480 pairs. */
    @Test
    void moreEdgesThatMeetThanAreLookedAtAreRefused() {
        Roof roof = roof(wheel(320));
        assertThatThrownBy(() -> WindZones.of(roof, Length.metres(1)))
                .isInstanceOfSatisfying(Refused.class, refused -> assertThat(refused.refusals())
                        .extracting(Refusal::code)
                        .containsExactly(RefusalCode.WIND_TOO_LARGE));
        Roof smaller = roof(wheel(300));
        assertThat(WindZones.of(smaller, Length.metres(1)).steps(0)).isGreaterThan(600);
    }
}
