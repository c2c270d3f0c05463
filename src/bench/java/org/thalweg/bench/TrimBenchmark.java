package org.thalweg.bench;

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
import org.thalweg.roof.Roof;
import org.thalweg.roof.Roofs;
import org.thalweg.trim.BendAllowance;
import org.thalweg.trim.Hand;
import org.thalweg.trim.Trim;
import org.thalweg.trim.TrimOrder;
import org.thalweg.trim.TrimSpec;
import org.thalweg.trim.TrimStock;
import org.thalweg.trim.Trims;
import org.thalweg.units.Length;

/** Trimming every edge of a roof of six planes, blanks and all. Run by {@code mvn -Pbench}. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(1)
public class TrimBenchmark {

    private static final TrimSpec SPEC = new TrimSpec(
            Length.millimetres(25),
            false,
            Length.millimetres(150),
            new TrimSpec.Sheet(
                    Length.millimetres(0.7), Length.millimetres(0.7), BendAllowance.USUAL, Length.millimetres(1220)),
            new TrimStock(Length.metres(3), Length.metres(0.3)),
            Length.millimetres(25),
            Hand.LEFT,
            TrimOrder.usual());

    private final Roof roof = Roofs.read(SixPlaneHouse.survey());

    @Benchmark
    public List<Trim> trim() {
        return Trims.on(roof, SPEC).layOut();
    }
}
