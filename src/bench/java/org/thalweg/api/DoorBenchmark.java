package org.thalweg.api;

import jakarta.validation.Validation;
import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.thalweg.api.json.PostedReader;
import org.thalweg.api.wire.LayoutRequest;
import org.thalweg.packet.LayoutCase;
import org.thalweg.packet.Layouts;
import org.thalweg.units.Units;

/** A layout from the bytes of its request to the bytes of its answer, beside reading and writing as much JSON plainly. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(1)
public class DoorBenchmark {

    @Param({"layouts-shed", "layouts-hip"})
    private String example = "";

    private final PostedReader reader = new PostedReader(
            Validation.buildDefaultValidatorFactory());
    private Optional<Exchange> exchange = Optional.empty();

    @Setup
    public void load() throws IOException {
        exchange = Optional.of(new Exchange(example));
    }

    @Benchmark
    public byte[] layOut() {
        var posted = reader.read(exchange().request, LayoutRequest.class);
        LayoutRequest asked = (LayoutRequest) posted.request();
        Units units = asked.units().units();
        LayoutCase layoutCase = LayoutReader.read(asked);
        return exchange().write(new LayoutWriter(units)
                .answer(Layouts.layOut(layoutCase), layoutCase, asked, "thalweg/0", posted.digest()));
    }

    @Benchmark
    public byte[] echo() {
        return exchange().echo();
    }

    private Exchange exchange() {
        return exchange.orElseThrow();
    }
}
