package org.thalweg.bench;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.thalweg.fastening.FastenerRow;
import org.thalweg.fastening.FastenerRows;
import org.thalweg.fastening.FasteningCase;
import org.thalweg.fastening.FasteningRules;
import org.thalweg.fastening.FixedPoint;
import org.thalweg.fastening.HeldPanels;
import org.thalweg.fastening.Seams;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Point2;
import org.thalweg.panel.Panels;
import org.thalweg.panel.Start;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.PanelHold;
import org.thalweg.roof.Roof;
import org.thalweg.roof.Roofs;
import org.thalweg.units.Length;
import org.thalweg.units.Pitch;
import org.thalweg.valley.PanSpec;
import org.thalweg.valley.SlopedEdge;
import org.thalweg.valley.ValleyLayout;
import org.thalweg.valley.Valleys;

/** Fastening the six-plane house and its 152 panels. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(1)
public class FasteningBenchmark {

    private static final PanSpec PAN = new PanSpec(
            Length.metres(1.22),
            Length.metres(0.11),
            Length.metres(0.025),
            Optional.of(Length.metres(0.32)),
            Optional.empty(),
            new Pitch(0, 12),
            Length.metres(3),
            Length.metres(0.3),
            Length.metres(0.2),
            Length.metres(0.012),
            Length.metres(0.102),
            Length.metres(0.05),
            Length.metres(0.05),
            Length.metres(0.6),
            Length.metres(3));

    private final FasteningCase asked = asked();

    private static FasteningCase asked() {
        Roof roof = Roofs.read(SixPlaneHouse.survey());
        return new FasteningCase(
                roof,
                SixPlaneHouse.spec(),
                Panels.layOut(
                        roof,
                        SixPlaneHouse.spec(),
                        SixPlaneHouse.treatments().of(roof),
                        SixPlaneHouse.laying(roof.planes().size(), new Start.Offset(Length.metres(0.1)))),
                SixPlaneHouse.treatments().of(roof),
                Collections.nCopies(roof.edges().size(), PanelHold.FIXED),
                valleys(roof),
                FasteningRules.METRIC,
                FixedPoint.EAVE);
    }

    private static List<ValleyLayout> valleys(Roof roof) {
        Valleys.ValleyAsked common = new Valleys.ValleyAsked(
                Length.metres(SixPlaneHouse.COVER),
                Length.metres(0.05),
                Length.metres(0.025),
                new Pitch(0.25, 12),
                Source.REQUEST);
        List<ValleyLayout> valleys = new ArrayList<>();
        for (int i = 0; i < roof.edges().size(); i++) {
            if (roof.edges().get(i).kind() == EdgeKind.VALLEY) {
                valleys.add(Valleys.layOut(
                        SlopedEdge.of(roof, i).orElseThrow(), PAN, PanelHold.FIXED, common, roof.tolerance()));
            }
        }
        return valleys;
    }

    /** Every row, its places not yet worked out. */
    @Benchmark
    public FastenerRows rows() {
        return FastenerRows.of(asked);
    }

    @Benchmark
    public Seams clips() {
        return Seams.of(asked);
    }

    @Benchmark
    public HeldPanels fixedPoints() {
        return HeldPanels.of(asked);
    }

    /** Rows and clips with the place of every one. */
    @Benchmark
    public List<Point2> places() {
        List<Point2> places = new ArrayList<>(2_000);
        for (FastenerRow row : FastenerRows.of(asked).rows()) {
            places.addAll(row.places());
        }
        Seams.of(asked).seams().forEach(seam -> places.addAll(seam.places()));
        return places;
    }
}
