package org.thalweg.valley;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.thalweg.finding.Origin;
import org.thalweg.geometry.Frame;
import org.thalweg.geometry.Jts;
import org.thalweg.geometry.Point2;
import org.thalweg.geometry.Point3;
import org.thalweg.geometry.Region;
import org.thalweg.geometry.Ring;
import org.thalweg.geometry.Shapes;
import org.thalweg.geometry.Vector3;
import org.thalweg.roof.Building;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.Plane;
import org.thalweg.roof.Roof;
import org.thalweg.roof.Roofs;
import org.thalweg.units.Angle;
import org.thalweg.units.Area;
import org.thalweg.units.Length;

/**
 * The longest panel at an edge, against fall lines laid side by side and cut by JTS. The oracle samples beside every
 * corner too, for the longest stands over one.
 */
class PanelRunTest {

    private static final int SAMPLES = 25;
    private static final double BESIDE = 1e-6;

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 40);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void noFallLineIsLongerThanTheLongestPanelAndOneIsAsLong(long seed) {
        for (Region region : Shapes.crooked(seed)) {
            List<Ring> rings = new ArrayList<>(region.openings());
            rings.add(region.outer());
            for (Ring ring : rings) {
                for (int i = 0; i < ring.size(); i++) {
                    compare(plane(region), ring.corner(i), ring.corner(ring.next(i)), "seed " + seed + " side " + i);
                }
            }
        }
    }

    private static Plane plane(Region region) {
        Frame frame = new Frame(
                new Point3(0, 0, 0), new Vector3(1, 0, 0), new Vector3(0, 0.8, 0.6), new Vector3(0, -0.6, 0.8));
        return new Plane(
                "plane",
                frame,
                region,
                Angle.atan2(3, 4),
                false,
                new Area(region.area()),
                new Area(0.8 * region.area()),
                Length.ZERO,
                Origin.REQUEST);
    }

    /** A side as the plane's ring runs it, metal to its left. */
    private static void compare(Plane plane, Point2 from, Point2 to, String what) {
        if (from.up() == to.up()) {
            return;
        }
        boolean climbs = to.up() > from.up();
        double longest = PanelRun.longest(plane, climbs ? from : to, climbs ? to : from, climbs, Pans.TOLERANCE)
                .metres();
        double sampled = to.across() > from.across() + Pans.TOLERANCE.hair() ? sampled(plane.shape(), from, to) : 0;
        assertThat(longest).as(what).isCloseTo(sampled, within(1e-4));
    }

    private static double sampled(Region region, Point2 from, Point2 to) {
        Polygon polygon = Jts.polygon(region);
        List<Double> places = new ArrayList<>();
        for (int i = 1; i < SAMPLES; i++) {
            places.add(from.across() + (to.across() - from.across()) * i / SAMPLES);
        }
        for (Coordinate corner : polygon.getCoordinates()) {
            places.add(corner.x - BESIDE);
            places.add(corner.x + BESIDE);
        }
        double top = polygon.getEnvelopeInternal().getMaxY() + 1;
        double longest = 0;
        for (double across : places) {
            if (across > from.across() && across < to.across()) {
                double up =
                        from.up() + (to.up() - from.up()) * (across - from.across()) / (to.across() - from.across());
                longest = Math.max(longest, fromEdge(polygon, across, up, top));
            }
        }
        return longest;
    }

    /** Length of the part of a fall line that starts at the edge. */
    private static double fromEdge(Polygon polygon, double across, double up, double top) {
        Geometry cut = polygon.intersection(Jts.FACTORY.createLineString(
                new Coordinate[] {new Coordinate(across, up), new Coordinate(across, top)}));
        double length = 0;
        for (int i = 0; i < cut.getNumGeometries(); i++) {
            if (cut.getGeometryN(i) instanceof LineString line
                    && line.getEnvelopeInternal().getMinY() < up + 1e-9) {
                length = Math.max(length, line.getLength());
            }
        }
        return length;
    }

    @Test
    void valleysAndHipsOfRealBuildingsAgreeWithSampledFallLines() {
        int compared = 0;
        for (Building building : Building.in(Path.of("src/test/resources/buildings/buildings.jsonl"), "")
                .toList()) {
            Roof roof = Roofs.read(building.survey());
            for (int i = 0; i < roof.edges().size(); i++) {
                EdgeKind kind = roof.edges().get(i).kind();
                if (kind == EdgeKind.VALLEY || kind == EdgeKind.HIP) {
                    SlopedEdge edge = SlopedEdge.of(roof, i).orElseThrow();
                    for (SlopedEdge.Side side : List.of(edge.left(), edge.right())) {
                        Point2 from = side.onLeft() ? side.foot() : side.head();
                        Point2 to = side.onLeft() ? side.head() : side.foot();
                        double sampled = to.across() > from.across() + Pans.TOLERANCE.hair()
                                ? sampled(roof.planes().get(side.plane()).shape(), from, to)
                                : 0;
                        assertThat(side.run().metres())
                                .as("%s %s", building.id(), edge.edge().id())
                                .isCloseTo(sampled, within(1e-4));
                        compared++;
                    }
                }
            }
        }
        assertThat(compared).isGreaterThan(100);
    }

    /** The boathouse's south plane over its valley BM, x from 480 to 600: over B, its foot, the ridge is 192 away in plan. */
    @Test
    void thePanelAtTheFootOfAValleyReachesTheRidge() {
        Sketch boathouse = Sketch.boathouse(p -> p);
        Roof roof = boathouse.read();
        SlopedEdge valley = boathouse.edge(roof, "BM");
        assertThat(Pans.inches(valley.left().run())).isCloseTo(192 * Math.sqrt(1.25), within(1e-6));
        assertThat(Pans.inches(valley.right().run())).isCloseTo(120 * Math.sqrt(1 + 4 / 9.0), within(1e-6));
    }
}
