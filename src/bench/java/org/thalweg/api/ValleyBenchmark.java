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
import org.thalweg.api.wire.ValleyRequest;
import org.thalweg.packet.ValleyCase;
import org.thalweg.packet.ValleyJobs;
import org.thalweg.packet.ValleyJobs.ValleyJob;
import org.thalweg.units.Units;

/** One valley as a shop page asks for it while a customer types: its maths alone, and from bytes to bytes. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 8, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(1)
public class ValleyBenchmark {

    @Param({"valleys-square", "valleys-dormer"})
    private String example = "";

    private final PostedReader reader = new PostedReader(
            Validation.buildDefaultValidatorFactory());
    private Optional<Exchange> exchange = Optional.empty();
    private Optional<ValleyCase> asked = Optional.empty();

    @Setup
    public void load() throws IOException {
        exchange = Optional.of(new Exchange(example));
        asked = Optional.of(ValleyReader.read(
                (ValleyRequest) reader.read(exchange().request, ValleyRequest.class).request()));
    }

    /** Reads the roof of two (or three) planes and lays out the valley. */
    @Benchmark
    public ValleyJob compute() {
        return ValleyJobs.layOut(asked.orElseThrow());
    }

    @Benchmark
    public byte[] layOut() {
        var posted = reader.read(exchange().request, ValleyRequest.class);
        ValleyRequest valley = (ValleyRequest) posted.request();
        Units units = valley.units().units();
        ValleyCase read = ValleyReader.read(valley);
        return exchange().write(new ValleyAloneWriter(units)
                .answer(ValleyJobs.layOut(read), read, valley, "thalweg/0", posted.digest()));
    }

    @Benchmark
    public byte[] echo() {
        return exchange().echo();
    }

    private Exchange exchange() {
        return exchange.orElseThrow();
    }
}
