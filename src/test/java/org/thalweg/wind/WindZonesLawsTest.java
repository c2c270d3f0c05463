package org.thalweg.wind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.algorithm.Angle;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Ring;
import org.thalweg.roof.Building;
import org.thalweg.roof.Edge;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.Plane;
import org.thalweg.roof.PlaneOutline;
import org.thalweg.roof.Roof;
import org.thalweg.roof.Roofs;
import org.thalweg.units.Length;

/** Zones against a slow oracle that looks at one place after the other, and what holds of the zones of every roof. */
class WindZonesLawsTest {

    private static final Path KEPT = Path.of("src/test/resources/buildings/buildings.jsonl");

    private static final Set<EdgeKind> RIM = Set.of(
            EdgeKind.EAVE,
            EdgeKind.HIGH_EAVE,
            EdgeKind.RAKE,
            EdgeKind.ANGLED_EAVE,
            EdgeKind.ANGLED_RAKE,
            EdgeKind.STACKED);
    private static final Set<EdgeKind> CRESTS = Set.of(EdgeKind.RIDGE, EdgeKind.HIP);
    private static final Set<EdgeKind> BENDS = Set.of(EdgeKind.PITCH_BREAK, EdgeKind.FLUSH, EdgeKind.EXPANSION_JOINT);

    /** What the room's javadoc says, place by place, with JTS for what is near and what turns. Roofs without walls. */
    private record Oracle(Roof roof, double width) {

        /** Every line a plane has, each as the edges that run on from each other. */
        List<List<Edge>> lines(int plane) {
            boolean flat = flat(plane);
            Set<Integer> one = new HashSet<>(Set.of(plane));
            for (int before = 0; before < one.size(); ) {
                before = one.size();
                for (Edge edge : roof.edges()) {
                    boolean through = BENDS.contains(edge.kind()) || (flat && CRESTS.contains(edge.kind()));
                    if (through
                            && edge.shared()
                            && edge.sides().stream().anyMatch(side -> one.contains(side.plane()))) {
                        edge.sides().forEach(side -> one.add(side.plane()));
                    }
                }
                if (before == one.size()) {
                    break;
                }
            }
            List<Edge> left = new ArrayList<>();
            for (Edge edge : roof.edges()) {
                boolean counts = RIM.contains(edge.kind()) || (!flat && CRESTS.contains(edge.kind()));
                if (counts
                        && plan(edge.from()).distance(plan(edge.to())) > 0.001
                        && edge.sides().stream().anyMatch(side -> one.contains(side.plane()))) {
                    left.add(edge);
                }
            }
            return grown(left);
        }

        private List<List<Edge>> grown(List<Edge> left) {
            List<List<Edge>> lines = new ArrayList<>();
            while (!left.isEmpty()) {
                List<Edge> line = new ArrayList<>(List.of(left.remove(0)));
                for (int i = 0; i < line.size(); i++) {
                    Edge grown = line.get(i);
                    List<Edge> next = left.stream()
                            .filter(edge -> sort(edge) == sort(grown) && turn(edge, grown) < Math.toRadians(30))
                            .toList();
                    line.addAll(next);
                    left.removeAll(next);
                }
                lines.add(line);
            }
            return lines;
        }

        private static int sort(Edge edge) {
            return RIM.contains(edge.kind()) ? 0 : edge.kind() == EdgeKind.RIDGE ? 1 : 2;
        }

        /** By how much a walker turns who goes along the one and on along the other; more than any where they do not meet. */
        private static double turn(Edge one, Edge other) {
            return common(one, other)
                    .map(at -> Math.PI - Angle.angleBetween(plan(away(one, at)), plan(at), plan(away(other, at))))
                    .orElse(10.0);
        }

        private static Optional<Point3> common(Edge one, Edge other) {
            for (Point3 at : List.of(one.to(), one.from())) {
                if (at.distance(other.from()) <= 0.001 || at.distance(other.to()) <= 0.001) {
                    return Optional.of(at);
                }
            }
            return Optional.empty();
        }

        private static Point3 away(Edge edge, Point3 at) {
            return edge.from().distance(at) <= 0.001 ? edge.to() : edge.from();
        }

        private boolean flat(int plane) {
            return Math.toDegrees(roof.planes().get(plane).slope().radians()) < 7.00005;
        }

        private boolean corner(Edge one, Edge other, int plane) {
            if (turn(one, other) < Math.toRadians(30) || common(one, other).isEmpty()) {
                return false;
            }
            if (one.kind() == EdgeKind.RIDGE && other.kind() == EdgeKind.RIDGE) {
                return false;
            }
            Point3 at = common(one, other).orElseThrow();
            boolean hip = !flat(plane)
                    && Math.toDegrees(roof.planes().get(plane).slope().radians()) < 25.00005
                    && roof.edges().stream()
                            .anyMatch(edge -> edge.kind() == EdgeKind.HIP
                                    && ownHip(edge, plane)
                                    && (edge.from().distance(at) <= 0.001
                                            || edge.to().distance(at) <= 0.001));
            return !hip && (!RIM.contains(one.kind()) || !RIM.contains(other.kind()) || outer(one, other, at));
        }

        private boolean ownHip(Edge hip, int plane) {
            return lines(plane).stream().anyMatch(line -> line.contains(hip));
        }

        /** The rim has the roof on its left. */
        private static boolean outer(Edge one, Edge other, Point3 at) {
            boolean oneComes = one.to().distance(at) <= 0.001;
            boolean otherComes = other.to().distance(at) <= 0.001;
            if (oneComes == otherComes) {
                return true;
            }
            Edge comes = oneComes ? one : other;
            Edge goes = oneComes ? other : one;
            return Orientation.index(plan(comes.from()), plan(comes.to()), plan(goes.to())) > 0;
        }

        /** How far a place is from being in each zone: below 0 inside. */
        double[] margins(int plane, Point3 place, List<List<Edge>> lines, List<List<List<Edge>>> corners) {
            double edge = Double.POSITIVE_INFINITY;
            for (List<Edge> line : lines) {
                edge = Math.min(edge, far(line, place) - width);
            }
            double corner = Double.POSITIVE_INFINITY;
            for (List<List<Edge>> pair : corners) {
                corner = Math.min(corner, Math.max(far(pair.get(0), place), far(pair.get(1), place)) - width);
            }
            return new double[] {edge, corner};
        }

        List<List<List<Edge>>> corners(int plane, List<List<Edge>> lines) {
            List<List<List<Edge>>> corners = new ArrayList<>();
            for (List<Edge> line : lines) {
                for (List<Edge> other : lines) {
                    for (Edge one : line) {
                        for (Edge two : other) {
                            if (one != two && corner(one, two, plane)) {
                                corners.add(line == other ? List.of(List.of(one), List.of(two)) : List.of(line, other));
                            }
                        }
                    }
                }
            }
            return corners;
        }

        private static double far(List<Edge> line, Point3 place) {
            return line.stream()
                    .mapToDouble(edge -> Distance.pointToSegment(plan(place), plan(edge.from()), plan(edge.to())))
                    .min()
                    .orElseThrow();
        }

        private static Coordinate plan(Point3 place) {
            return new Coordinate(place.x(), place.y());
        }
    }

    /** Lines up every plane half a metre apart, looked at every 7 cm; places nearer than a micrometre to a border are left out. */
    private static int compare(Roof roof, double width, String what) {
        WindZones zones = WindZones.of(roof, Length.metres(width));
        Oracle oracle = new Oracle(roof, width);
        int looked = 0;
        for (int p = 0; p < roof.planes().size(); p++) {
            Plane plane = roof.planes().get(p);
            Ring ring = plane.shape().outer();
            List<List<Edge>> lines = oracle.lines(p);
            List<List<List<Edge>>> corners = oracle.corners(p, lines);
            for (double across = 0.1; across < ring.mostAcross(); across += 0.5) {
                Point2 from = new Point2(across, ring.leastUp());
                Point2 to = new Point2(across, ring.mostUp());
                List<ZoneStretch> stretches = zones.along(p, plane.frame(), from, to);
                areTheWhole(stretches, ring.mostUp() - ring.leastUp());
                for (double up = 0.01; up < ring.mostUp(); up += 0.07) {
                    Point2 place = new Point2(across, up);
                    double[] margins = oracle.margins(p, plane.frame().inWorld(place), lines, corners);
                    if (Math.abs(margins[0]) > 1e-6 && Math.abs(margins[1]) > 1e-6) {
                        WindZone expected =
                                margins[1] < 0 ? WindZone.CORNER : margins[0] < 0 ? WindZone.EDGE : WindZone.FIELD;
                        assertThat(in(stretches, up))
                                .as("%s plane %d at %s", what, p, place)
                                .isEqualTo(expected);
                        assertThat(zones.at(p, place)).as(what).isEqualTo(expected);
                        looked++;
                    }
                }
            }
        }
        return looked;
    }

    private static WindZone in(List<ZoneStretch> stretches, double at) {
        return stretches.stream()
                .filter(stretch -> stretch.to().metres() >= at)
                .findFirst()
                .orElseThrow()
                .zone();
    }

    private static void areTheWhole(List<ZoneStretch> stretches, double length) {
        double at = 0;
        for (int i = 0; i < stretches.size(); i++) {
            assertThat(stretches.get(i).from().metres()).isEqualTo(at);
            at = stretches.get(i).to().metres();
            assertThat(at).isGreaterThan(stretches.get(i).from().metres());
            if (i > 0) {
                assertThat(stretches.get(i).zone())
                        .isNotEqualTo(stretches.get(i - 1).zone());
            }
        }
        assertThat(at).isEqualTo(length);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.25, 0.48, 0.8})
    void housesHaveTheZonesThatASlowSearchFinds(double tan) {
        for (double width : new double[] {0.9, 1.3, 3}) {
            assertThat(compare(Houses.read(Houses.hipWithWing(tan)), width, "hip with wing"))
                    .isGreaterThan(1_000);
            assertThat(compare(Houses.read(Houses.hip(tan)), width, "hip")).isGreaterThan(1_000);
            assertThat(compare(Houses.read(Houses.gableInTwo(tan)), width, "gable"))
                    .isGreaterThan(1_000);
        }
    }

    @Test
    void theBuildingsKeptHereHaveTheZonesThatASlowSearchFinds() {
        int[] looked = {0};
        Building.in(KEPT, "").forEach(building -> {
            Roof roof = Roofs.read(building.survey());
            looked[0] += compare(roof, 0.9144, building.id());
        });
        assertThat(looked[0]).isGreaterThan(50_000);
    }

    /** Every line of the one, mirrored: the same lengths in the same zones. */
    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.25, 0.48})
    void aMirroredRoofHasMirroredZones(double tan) {
        UnaryOperator<Point3> mirror = p -> new Point3(-p.x(), p.y(), p.z());
        List<PlaneOutline> planes = Houses.hipWithWing(tan);
        Roof plain = Houses.read(planes);
        Roof mirrored = Houses.read(Houses.moved(planes, mirror));
        for (int p = 0; p < planes.size(); p++) {
            Ring ring = plain.planes().get(p).shape().outer();
            for (double across = 0.05; across < ring.mostAcross(); across += 0.37) {
                List<ZoneStretch> one = line(plain, p, across);
                List<ZoneStretch> other = line(mirrored, p, ring.mostAcross() - across);
                assertThat(other).hasSameSizeAs(one);
                for (int i = 0; i < one.size(); i++) {
                    assertThat(other.get(i).zone()).isEqualTo(one.get(i).zone());
                    assertThat(other.get(i).to().metres())
                            .isCloseTo(one.get(i).to().metres(), within(1e-9));
                }
            }
        }
    }

    private static List<ZoneStretch> line(Roof roof, int plane, double across) {
        Plane own = roof.planes().get(plane);
        Ring ring = own.shape().outer();
        return WindZones.of(roof, Length.metres(1.1))
                .along(plane, own.frame(), new Point2(across, 0), new Point2(across, ring.mostUp()));
    }

    @Test
    void aWiderStripTakesNoPlaceToALowerZone() {
        Roof roof = Houses.read(Houses.hipWithWing(0.48));
        WindZones narrow = WindZones.of(roof, Length.metres(0.95));
        WindZones wide = WindZones.of(roof, Length.metres(1.4));
        for (int p = 0; p < roof.planes().size(); p++) {
            Ring ring = roof.planes().get(p).shape().outer();
            for (double across = 0; across < ring.mostAcross(); across += 0.21) {
                for (double up = 0; up < ring.mostUp(); up += 0.17) {
                    Point2 place = new Point2(across, up);
                    assertThat(wide.at(p, place)).isGreaterThanOrEqualTo(narrow.at(p, place));
                }
            }
        }
    }
}
