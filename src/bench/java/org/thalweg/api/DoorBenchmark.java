package org.thalweg.api;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.validation.Validation;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
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
    private final ObjectMapper mapper = new ObjectMapper();
    private byte[] request = {};
    private byte[] answer = {};

    @Setup
    public void load() throws IOException {
        mapper.findAndRegisterModules();
        new AnswerMapper().customize(mapper);
        request = Files.readAllBytes(Path.of("openapi", "examples", example + ".request.json"));
        answer = Files.readAllBytes(Path.of("openapi", "examples", example + ".answer.json"));
    }

    @Benchmark
    public byte[] layOut() {
        var posted = reader.read(request, LayoutRequest.class);
        LayoutRequest asked = (LayoutRequest) posted.request();
        Units units = asked.units().units();
        LayoutCase layoutCase = LayoutReader.read(asked);
        return write(new LayoutWriter(units)
                .answer(Layouts.layOut(layoutCase), layoutCase, asked, "thalweg/0", posted.digest()));
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
