package org.thalweg.api;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.validation.Validation;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
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
    private final ObjectMapper mapper = new ObjectMapper();
    private byte[] request = {};
    private byte[] answer = {};
    private Optional<ValleyCase> asked = Optional.empty();

    @Setup
    public void load() throws IOException {
        mapper.findAndRegisterModules();
        new AnswerMapper().customize(mapper);
        request = Files.readAllBytes(Path.of("openapi", "examples", example + ".request.json"));
        answer = Files.readAllBytes(Path.of("openapi", "examples", example + ".answer.json"));
        asked = Optional.of(ValleyReader.read(
                (ValleyRequest) reader.read(request, ValleyRequest.class).request()));
    }

    /** Reads the roof of two (or three) planes and lays out the valley. */
    @Benchmark
    public ValleyJob compute() {
        return ValleyJobs.layOut(asked.orElseThrow());
    }

    @Benchmark
    public byte[] layOut() {
        var posted = reader.read(request, ValleyRequest.class);
        ValleyRequest valley = (ValleyRequest) posted.request();
        Units units = valley.units().units();
        ValleyCase read = ValleyReader.read(valley);
        return write(new ValleyAloneWriter(units)
                .answer(ValleyJobs.layOut(read), read, valley, "thalweg/0", posted.digest()));
    }

    /** The peer: the request read as a tree, the answer read as a tree and written again. */
    @Benchmark
    public byte[] echo() {
        try {
            mapper.readTree(request);
            return write(mapper.readTree(answer));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private byte[] write(Object written) {
        try {
            return mapper.writeValueAsBytes(written);
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }
}
