package org.thalweg.bench;

import java.util.Collections;
import java.util.List;
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
import org.thalweg.fastening.FastenerRows;
import org.thalweg.fastening.FasteningCase;
import org.thalweg.fastening.FasteningRules;
import org.thalweg.fastening.FixedPoint;
import org.thalweg.geometry.Tolerance;
import org.thalweg.panel.Panels;
import org.thalweg.panel.Start;
import org.thalweg.roof.PanelHold;
import org.thalweg.roof.Roof;
import org.thalweg.roof.Roofs;
import org.thalweg.sealing.Sealing;
import org.thalweg.sealing.SealingCase;
import org.thalweg.sealing.SealingRules;
import org.thalweg.underlayment.Roll;
import org.thalweg.underlayment.Underlay;
import org.thalweg.units.Length;

/** The sheets under the six-plane house, and what seals its 152 panels; its valleys' pans left out. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(1)
public class SealingBenchmark {

    private static final Roll ROLL = new Roll(
            Length.metres(1),
            Length.metres(22),
            Length.millimetres(51),
            Length.millimetres(102),
            Length.millimetres(1829));

    private final Roof roof = Roofs.read(SixPlaneHouse.survey());
    private final FasteningCase asked = asked(roof);
    private final FastenerRows rows = FastenerRows.of(asked);

    private static FasteningCase asked(Roof roof) {
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
                List.of(),
                FasteningRules.METRIC,
                FixedPoint.EAVE);
    }

    /** Its rows of fasteners, to hold the others against. */
    @Benchmark
    public FastenerRows rows() {
        return FastenerRows.of(asked);
    }

    @Benchmark
    public Sealing sealing() {
        return Sealing.of(new SealingCase(rows, List.of(), List.of(), SealingRules.METRIC, Tolerance.DEFAULT));
    }

    @Benchmark
    public Underlay underlay() {
        return Underlay.of(roof, ROLL);
    }
}
