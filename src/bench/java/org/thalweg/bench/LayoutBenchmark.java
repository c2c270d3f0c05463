package org.thalweg.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.thalweg.geometry.Ring;
import org.thalweg.panel.PanelLayout;
import org.thalweg.panel.Panels;
import org.thalweg.panel.Start;
import org.thalweg.roof.EdgeTreatments;
import org.thalweg.roof.Plane;
import org.thalweg.roof.Roof;
import org.thalweg.roof.RoofSurvey;
import org.thalweg.roof.Roofs;
import org.thalweg.units.Length;

/** Reading a roof and laying its panels, ours beside a library overlay of every strip. Run by {@code mvn -Pbench}. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(1)
public class LayoutBenchmark {

    private static final Start OFFSET = new Start.Offset(Length.metres(0.1));

    private final GeometryFactory factory = new GeometryFactory();
    private final RoofSurvey survey = SixPlaneHouse.survey();
    private final Roof roof = Roofs.read(survey);

    @Benchmark
    public Roof readRoof() {
        return Roofs.read(survey);
    }

    /** Panels on the roof lines, nothing set back. */
    @Benchmark
    public PanelLayout layPlain() {
        return lay(roof, EdgeTreatments.PLAIN, OFFSET);
    }

    /** Panels set back at valleys, ridges and hips, hemmed everywhere. */
    @Benchmark
    public PanelLayout layTreated() {
        return lay(roof, SixPlaneHouse.treatments(), OFFSET);
    }

    /** From the survey to hemmed panels: the main job. */
    @Benchmark
    public PanelLayout readAndLayTreated() {
        return lay(Roofs.read(survey), SixPlaneHouse.treatments(), OFFSET);
    }

    /** The main job with the start searched on every plane. */
    @Benchmark
    public PanelLayout readAndLayLeastWaste() {
        return lay(Roofs.read(survey), SixPlaneHouse.treatments(), new Start.LeastWaste());
    }

    private static PanelLayout lay(Roof roof, EdgeTreatments treatments, Start start) {
        return Panels.layOut(
                roof,
                SixPlaneHouse.spec(),
                treatments.of(roof),
                SixPlaneHouse.laying(roof.planes().size(), start));
    }

    /** The library way to what {@link #layPlain} does: every strip overlaid on its plane, and the pieces measured. */
    @Benchmark
    public List<Envelope> layPlainByOverlay() {
        List<Envelope> blanks = new ArrayList<>();
        for (Plane plane : roof.planes()) {
            Polygon polygon = polygon(plane.shape().outer());
            Envelope all = polygon.getEnvelopeInternal();
            double first = 0.1 - SixPlaneHouse.COVER;
            for (double x = first; x < all.getMaxX(); x += SixPlaneHouse.COVER) {
                Geometry strip = factory.toGeometry(
                        new Envelope(x, x + SixPlaneHouse.COVER, all.getMinY() - 1, all.getMaxY() + 1));
                Geometry pieces = OverlayNGRobust.overlay(polygon, strip, OverlayNG.INTERSECTION);
                for (int i = 0; i < pieces.getNumGeometries(); i++) {
                    blanks.add(pieces.getGeometryN(i).getEnvelopeInternal());
                }
            }
        }
        return blanks;
    }

    private Polygon polygon(Ring ring) {
        Coordinate[] corners = new Coordinate[ring.size() + 1];
        for (int i = 0; i <= ring.size(); i++) {
            int corner = i == ring.size() ? 0 : i;
            corners[i] = new Coordinate(ring.across(corner), ring.up(corner));
        }
        return factory.createPolygon(corners);
    }
}
