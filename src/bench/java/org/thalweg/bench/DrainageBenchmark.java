package org.thalweg.bench;

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
import org.thalweg.drainage.Catchment;
import org.thalweg.drainage.Channel;
import org.thalweg.drainage.PanRoom;
import org.thalweg.drainage.ValleyWater;
import org.thalweg.drainage.WaterCase;
import org.thalweg.drainage.WaterSide;
import org.thalweg.finding.Place;
import org.thalweg.finding.Source;
import org.thalweg.roof.Edge;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.Roof;
import org.thalweg.roof.Roofs;
import org.thalweg.units.Length;
import org.thalweg.units.Rainfall;

/** The water of one valley of the six-plane house; the plane of 7 corners on one side, of 4 on the other. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class DrainageBenchmark {

    private final Roof roof = Roofs.read(SixPlaneHouse.survey());
    private final Edge valley = roof.edges().stream()
            .filter(edge -> edge.kind() == EdgeKind.VALLEY)
            .findFirst()
            .orElseThrow();
    private final int edge = roof.edges().indexOf(valley);

    @Benchmark
    public Catchment catchment() {
        return Catchment.of(roof, valley.sides().get(0).plane(), edge);
    }

    /** Both sides, three stations. */
    @Benchmark
    public ValleyWater valleyWater() {
        PanRoom room = new PanRoom(
                Length.metres(0.3),
                Length.metres(0.3),
                Length.metres(0.025),
                Length.metres(0.1),
                Length.metres(0.28),
                Source.REQUEST);
        return ValleyWater.of(new WaterCase(
                new Place(Place.Kind.EDGE, valley.id(), valley.at()),
                valley.length(),
                valley.slope(),
                List.of(
                        WaterSide.of(roof, valley.sides().get(0).plane(), edge),
                        WaterSide.of(roof, valley.sides().get(1).plane(), edge)),
                room,
                List.of(Length.ZERO, Length.metres(2), Length.metres(4)),
                Optional.of(Rainfall.perHour(Length.millimetres(150))),
                Channel.ROUGHNESS,
                roof.tolerance()));
    }
}
