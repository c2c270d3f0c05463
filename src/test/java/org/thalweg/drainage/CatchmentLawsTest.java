package org.thalweg.drainage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.DoubleStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Refused;
import org.thalweg.geometry.Frame;
import org.thalweg.geometry.Jts;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Region;
import org.thalweg.geometry.Ring;
import org.thalweg.geometry.Shapes;
import org.thalweg.geometry.Tolerance;
import org.thalweg.geometry.Vector3;
import org.thalweg.roof.Building;
import org.thalweg.roof.Edge;
import org.thalweg.roof.Edge.EdgeSide;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.Plane;
import org.thalweg.roof.Roof;
import org.thalweg.roof.Roofs;
import org.thalweg.units.Angle;
import org.thalweg.units.Area;
import org.thalweg.units.Length;

/**
 * What drains to the low sides of a plane adds up to the plane; what leaves a roof adds up to the roof; and each catchment
 * is what JTS cuts out of the plane over its side. On made-up shapes and on real buildings.
 */
class CatchmentLawsTest {

    private static final Path KEPT = Path.of("src/test/resources/buildings/buildings.jsonl");

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 60);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void crookedPlanesDrainWhole(long seed) {
        for (Region shape : Shapes.crooked(seed)) {
            Roof roof = roof(shape);
            holdSum(roof, 0, "seed " + seed);
            holdAgainstJts(roof, 0, "seed " + seed);
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void lessReachesAnEdgeHigherUp(long seed) {
        for (Region shape : Shapes.crooked(seed)) {
            Roof roof = roof(shape);
            for (int edge = 0; edge < roof.edges().size(); edge++) {
                Catchment catchment = Catchment.of(roof, 0, edge);
                double length = roof.edges().get(edge).length().metres();
                List<Double> areas = DoubleStream.iterate(0, share -> share <= 1, share -> share + 1 / 64.0)
                        .mapToObj(share -> catchment
                                .planAreaAbove(Length.metres(share * length))
                                .squareMetres())
                        .toList();
                assertThat(areas).isSortedAccordingTo((a, b) -> Double.compare(b, a));
                assertThat(areas.get(0)).isEqualTo(catchment.planArea().squareMetres());
                assertThat(areas.get(64)).isZero();
            }
        }
    }

    /** No planes lie so; records can be made that say so, and measured roofs are not trusted never to. */
    @Test
    void waterThatWouldComeRoundIsCountedOnce() {
        Region square = Shapes.region(0, 0, 1, 0, 1, 1, 0, 1);
        Roof one = roof(square);
        Plane lower = one.planes().get(0);
        Ring ring = lower.shape().outer();
        int[] turned = {2, 1, 0, 3};
        Region above = new Region(new Ring(new double[] {0, 1, 1, 0}, new double[] {0, 0, 1, 1}, turned), List.of());
        Plane upper = new Plane(
                "above",
                lower.frame(),
                above,
                lower.slope(),
                false,
                lower.area(),
                lower.planArea(),
                Length.ZERO,
                Origin.REQUEST);
        List<Edge> edges = one.edges().stream()
                .map(edge -> new Edge(
                        edge.id(),
                        EdgeKind.PITCH_BREAK,
                        List.of(new EdgeSide(0, Angle.ZERO), new EdgeSide(1, Angle.ZERO)),
                        edge.from(),
                        edge.to(),
                        edge.length(),
                        edge.slope(),
                        edge.bend(),
                        false,
                        edge.at()))
                .toList();
        Roof round = new Roof(List.of(lower, upper), edges, List.of(), Tolerance.DEFAULT);
        Catchment catchment = Catchment.of(round, 0, ring.tag(0));
        assertThat(catchment.directPlanArea().squareMetres()).isCloseTo(Math.cos(Math.PI / 6), within(1e-12));
        assertThat(catchment.planArea().squareMetres()).isCloseTo(2 * Math.cos(Math.PI / 6), within(1e-12));
    }

    @Test
    void theBuildingsKeptHereDrainWhole() {
        Tally tally = new Tally();
        Building.in(KEPT, "").forEach(tally::hold);
        assertThat(tally.buildings).isEqualTo(36);
        assertThat(tally.planes).isGreaterThan(200);
        assertThat(tally.valleys).isGreaterThan(20);
        assertThat(tally.fed).as("edges that planes further up drain to").isPositive();
        assertThat(tally.leaky).isEmpty();
    }

    /** Every building of a folder of folders: run with {@code -Dthalweg.buildings=FOLDER}. Prints the counts. */
    @Test
    @EnabledIfSystemProperty(named = "thalweg.buildings", matches = ".+")
    void everyBuildingOfAFolderDrainsWhole() {
        Tally tally = new Tally();
        Building.inFolder().forEach(tally::hold);
        System.out.println(tally);
        assertThat(tally.buildings).isPositive();
        assertThat(tally.leaky).isEmpty();
    }

    private static final class Tally {

        private int buildings;
        private int planes;
        private int valleys;
        private int fed;
        private double worst;
        private final List<String> leaky = new ArrayList<>();
        private final Map<String, Integer> refused = new TreeMap<>();

        void hold(Building building) {
            Roof roof;
            try {
                roof = Roofs.read(building.survey());
            } catch (Refused e) {
                e.refusals().forEach(refusal -> refused.merge(refusal.code().name(), 1, Integer::sum));
                return;
            }
            buildings++;
            double fallen = 0;
            for (int p = 0; p < roof.planes().size(); p++) {
                Plane plane = roof.planes().get(p);
                if (!plane.level()) {
                    planes++;
                    fallen += plane.planArea().squareMetres();
                    worst = Math.max(worst, holdSum(roof, p, building.id()));
                    if (plane.shape().openings().isEmpty()) {
                        holdAgainstJts(roof, p, building.id());
                    }
                }
            }
            valleys += (int) roof.edges().stream()
                    .filter(edge -> edge.kind() == EdgeKind.VALLEY)
                    .count();
            for (int p = 0; p < roof.planes().size(); p++) {
                for (int edge : lowEdges(roof, p)) {
                    Catchment catchment = Catchment.of(roof, p, edge);
                    fed += catchment.planArea().equals(catchment.directPlanArea()) ? 0 : 1;
                }
            }
            double left = leaving(roof);
            if (Math.abs(left - fallen) > 1e-9 * fallen) {
                leaky.add("%s: %s m2 of %s".formatted(building.id(), left, fallen));
            }
        }

        @Override
        public String toString() {
            return "buildings %d, refused %s, planes %d, valleys %d, edges fed from above %d, worst sum %.1e, leaky %s"
                    .formatted(buildings, refused, planes, valleys, fed, worst, leaky);
        }
    }

    /** Returns by how much of the plane the sum is out. */
    private static double holdSum(Roof roof, int plane, String name) {
        double whole = roof.planes().get(plane).planArea().squareMetres();
        double sum = 0;
        for (int edge : lowEdges(roof, plane)) {
            if (!(onOpening(roof, plane, edge) && !roof.edges().get(edge).shared())) {
                sum += Catchment.of(roof, plane, edge).directPlanArea().squareMetres();
            }
        }
        assertThat(sum).as("%s, plane %d", name, plane).isCloseTo(whole, within(1e-9 * whole));
        return Math.abs(sum / whole - 1);
    }

    /** All that ends at edges it does not run over: at eaves, in valleys, at walls. */
    private static double leaving(Roof roof) {
        double sum = 0;
        for (int p = 0; p < roof.planes().size(); p++) {
            for (int edge : lowEdges(roof, p)) {
                boolean passesRound =
                        onOpening(roof, p, edge) && !roof.edges().get(edge).shared();
                if (!passesRound && !runsOn(roof, p, edge)) {
                    sum += Catchment.of(roof, p, edge).planArea().squareMetres();
                }
            }
        }
        return sum;
    }

    /** Whether another plane takes the water up below the edge and leads it on. */
    private static boolean runsOn(Roof roof, int plane, int edge) {
        return switch (roof.edges().get(edge).kind()) {
            case PITCH_BREAK, FLUSH, HIP ->
                roof.edges().get(edge).sides().stream()
                        .anyMatch(side -> side.plane() != plane
                                && !roof.planes().get(side.plane()).level()
                                && sides(roof.planes().get(side.plane()).shape(), edge, false) > 0);
            default -> false;
        };
    }

    private static List<Integer> lowEdges(Roof roof, int plane) {
        List<Integer> edges = new ArrayList<>();
        Region shape = roof.planes().get(plane).shape();
        for (int edge = 0; edge < roof.edges().size(); edge++) {
            if (!roof.planes().get(plane).level() && sides(shape, edge, true) > 0) {
                edges.add(edge);
            }
        }
        return edges;
    }

    /** How many sides of an edge have their metal above, or below. */
    private static int sides(Region shape, int edge, boolean low) {
        int found = sides(shape.outer(), edge, low);
        for (Ring opening : shape.openings()) {
            found += sides(opening, edge, low);
        }
        return found;
    }

    private static int sides(Ring ring, int edge, boolean low) {
        int found = 0;
        for (int i = 0; i < ring.size(); i++) {
            double run = ring.across(ring.next(i)) - ring.across(i);
            found += ring.tag(i) == edge && (low ? run > 0 : run < 0) ? 1 : 0;
        }
        return found;
    }

    private static boolean onOpening(Roof roof, int plane, int edge) {
        Region shape = roof.planes().get(plane).shape();
        return sides(shape.outer(), edge, true) == 0 && sides(shape, edge, true) > 0;
    }

    /**
     * Between any two neighbouring corners, what JTS leaves of the plane's outline is a stack of trapezoids. The one whose
     * lower end lies on a side, less the openings in it, is what that side catches there.
     */
    private static void holdAgainstJts(Roof roof, int plane, String name) {
        Region shape = roof.planes().get(plane).shape();
        Polygon outline = Jts.polygon(new Region(shape.outer(), List.of()));
        Polygon metal = Jts.polygon(shape);
        double[] cuts = DoubleStream.concat(
                        acrosses(shape.outer()), shape.openings().stream().flatMapToDouble(CatchmentLawsTest::acrosses))
                .sorted()
                .distinct()
                .toArray();
        double[] caught = new double[shape.outer().size()];
        for (int c = 1; c < cuts.length; c++) {
            if (cuts[c] - cuts[c - 1] > 1e-7) {
                Envelope band = new Envelope(
                        cuts[c - 1],
                        cuts[c],
                        shape.outer().leastUp() - 1,
                        shape.outer().mostUp() + 1);
                Geometry slab = Jts.FACTORY.toGeometry(band);
                Geometry stack = Jts.areas(OverlayNGRobust.overlay(outline, slab, OverlayNG.INTERSECTION));
                Geometry metalHere = Jts.areas(OverlayNGRobust.overlay(metal, slab, OverlayNG.INTERSECTION));
                for (int i = 0; i < stack.getNumGeometries(); i++) {
                    Geometry piece = stack.getGeometryN(i);
                    int side = sideUnder(shape.outer(), piece);
                    caught[side] += OverlayNGRobust.overlay(metalHere, piece, OverlayNG.INTERSECTION)
                            .getArea();
                }
            }
        }
        double flat = roof.planes().get(plane).slope().cos();
        double whole = roof.planes().get(plane).planArea().squareMetres();
        for (int side = 0; side < caught.length; side++) {
            if (shape.outer().across(shape.outer().next(side)) > shape.outer().across(side)) {
                double ours = Catchment.of(roof, plane, shape.outer().tag(side))
                        .directPlanArea()
                        .squareMetres();
                assertThat(ours)
                        .as("%s, plane %d, side %d", name, plane, side)
                        .isCloseTo(caught[side] * flat, within(1e-6 * Math.max(whole, 1)));
            }
        }
    }

    private static DoubleStream acrosses(Ring ring) {
        return DoubleStream.iterate(0, i -> i < ring.size(), i -> i + 1).map(i -> ring.across((int) i));
    }

    /** The low side nearest to the lower end of a trapezoid, in its middle. */
    private static int sideUnder(Ring ring, Geometry piece) {
        Envelope box = piece.getEnvelopeInternal();
        double middle = (box.getMinX() + box.getMaxX()) / 2;
        Geometry upright = Jts.FACTORY
                .toGeometry(new Envelope(middle, middle, box.getMinY() - 1, box.getMaxY() + 1))
                .intersection(piece);
        double bottom = upright.getEnvelopeInternal().getMinY();
        int nearest = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < ring.size(); i++) {
            int j = ring.next(i);
            if (ring.across(i) <= middle && middle <= ring.across(j) && ring.across(i) < ring.across(j)) {
                double share = (middle - ring.across(i)) / (ring.across(j) - ring.across(i));
                double off = Math.abs(ring.up(i) + share * (ring.up(j) - ring.up(i)) - bottom);
                if (off < least) {
                    least = off;
                    nearest = i;
                }
            }
        }
        return nearest;
    }

    /** A roof of one plane of 30°, none of whose edges meets another plane. */
    private static Roof roof(Region shape) {
        Angle slope = Angle.degrees(30);
        Frame frame = new Frame(
                new Point3(0, 0, 0),
                new Vector3(1, 0, 0),
                new Vector3(0, slope.cos(), slope.sin()),
                new Vector3(0, -slope.sin(), slope.cos()));
        List<Edge> edges = new ArrayList<>();
        Ring outer = tagged(shape.outer(), EdgeKind.ANGLED_EAVE, frame, edges);
        List<Ring> openings = shape.openings().stream()
                .map(opening -> tagged(opening, EdgeKind.OPENING, frame, edges))
                .toList();
        Region tagged = new Region(outer, openings);
        Plane plane = new Plane(
                "plane",
                frame,
                tagged,
                slope,
                false,
                new Area(tagged.area()),
                new Area(tagged.area() * slope.cos()),
                Length.ZERO,
                Origin.REQUEST);
        return new Roof(List.of(plane), edges, List.of(), Tolerance.DEFAULT);
    }

    private static Ring tagged(Ring ring, EdgeKind kind, Frame frame, List<Edge> edges) {
        int n = ring.size();
        double[] across = new double[n];
        double[] up = new double[n];
        int[] tag = new int[n];
        for (int i = 0; i < n; i++) {
            across[i] = ring.across(i);
            up[i] = ring.up(i);
            tag[i] = edges.size();
            Point3 from = frame.inWorld(ring.corner(i));
            Point3 to = frame.inWorld(ring.corner(ring.next(i)));
            Vector3 run = to.minus(from);
            edges.add(new Edge(
                    kind.letter() + edges.size(),
                    kind,
                    List.of(new EdgeSide(
                            0, Angle.atan2(Math.abs(run.dot(frame.up())), Math.abs(run.dot(frame.across()))))),
                    from,
                    to,
                    Length.metres(run.length()),
                    Angle.atan2(Math.abs(run.z()), Math.hypot(run.x(), run.y())),
                    Angle.ZERO,
                    false,
                    Origin.REQUEST));
        }
        return new Ring(across, up, tag);
    }
}
