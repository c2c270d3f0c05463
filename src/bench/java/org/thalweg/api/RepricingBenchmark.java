package org.thalweg.api;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.validation.Validation;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.thalweg.api.json.PostedReader;

/**
 * Saved jobs priced again, bytes to bytes, beside plain Jackson on the same bytes: stepping over the tokens, taking the value of every
 * one, and making a tree of them, each time writing an answer of the same form. Jobs a second, on one core.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(1)
public class RepricingBenchmark {

    private static final int JOBS = 1_000;

    private final ObjectMapper mapper = new ObjectMapper();
    private final JsonFactory factory = new JsonFactory();
    private final List<byte[]> jobs = new ArrayList<>();
    private final Repricings repricings = new Repricings(
            new PostedReader(Validation.buildDefaultValidatorFactory()), mapper, new Engine());
    private Optional<Repricer> repricer = Optional.empty();

    /** The takeoff of {@code quotes-hip} with other quantities in every job. */
    @Setup
    public void load() throws IOException {
        JsonNode example =
                mapper.readTree(Files.readAllBytes(Path.of("openapi", "examples", "quotes-hip.request.json")));
        ObjectNode book = mapper.createObjectNode().set("priceBook", example.required("priceBook"));
        repricer = Optional.of(repricings.repricer(repricings.book(mapper.writeValueAsBytes(book))));
        Random random = new Random(1);
        for (int i = 0; i < JOBS; i++) {
            ObjectNode takeoff = example.required("takeoff").deepCopy();
            vary((ArrayNode) takeoff.required("orderLines"), random);
            ObjectNode job = mapper.createObjectNode().put("job", "job-" + i).set("takeoff", takeoff);
            job.putObject("was").put("amount", "10000.00").put("currency", "EUR");
            jobs.add(mapper.writeValueAsBytes(job));
        }
    }

    private static void vary(ArrayNode lines, Random random) {
        for (JsonNode line : lines) {
            double more = random.nextInt(1_000_000) / 1000.0;
            ((ObjectNode) line).put("ordered", line.required("ordered").doubleValue() + Math.rint(more));
            ((ObjectNode) line).put("net", Math.rint(1000 * line.required("net").doubleValue() + more) / 1000);
        }
    }

    @Benchmark
    @OperationsPerInvocation(JOBS)
    public RepricingSums reprice() throws IOException {
        RepricingSums sums = new RepricingSums();
        Repricer worker = repricer.orElseThrow();
        OutputStream out = OutputStream.nullOutputStream();
        for (byte[] job : jobs) {
            worker.answer(job, 0, job.length, 1, sums, out);
        }
        if (sums.failed() > 0) {
            throw new IllegalStateException("every job has its prices");
        }
        return sums;
    }

    @Benchmark
    @OperationsPerInvocation(JOBS)
    public int tokens() throws IOException {
        int tokens = 0;
        for (byte[] job : jobs) {
            try (JsonParser json = factory.createParser(job)) {
                while (json.nextToken() != null) {
                    tokens++;
                }
            }
            answer("job-1");
        }
        return tokens;
    }

    @Benchmark
    @OperationsPerInvocation(JOBS)
    public int values() throws IOException {
        int taken = 0;
        for (byte[] job : jobs) {
            try (JsonParser json = factory.createParser(job)) {
                for (JsonToken token = json.nextToken(); token != null; token = json.nextToken()) {
                    if (token == JsonToken.VALUE_STRING) {
                        taken += json.getText().length();
                    } else if (token.isNumeric()) {
                        taken += json.getDecimalValue().scale();
                    }
                }
            }
            answer("job-1");
        }
        return taken;
    }

    @Benchmark
    @OperationsPerInvocation(JOBS)
    public int tree() throws IOException {
        int members = 0;
        for (byte[] job : jobs) {
            JsonNode read = mapper.readTree(job);
            members += read.size();
            answer(read.required("job").textValue());
        }
        return members;
    }

    private void answer(String job) throws IOException {
        try (JsonGenerator json = factory.createGenerator(OutputStream.nullOutputStream())) {
            json.writeStartObject();
            json.writeStringField("job", job);
            money(json, "total");
            money(json, "was");
            money(json, "change");
            json.writeEndObject();
        }
    }

    private static void money(JsonGenerator json, String name) throws IOException {
        json.writeObjectFieldStart(name);
        json.writeStringField("amount", "10000.00");
        json.writeStringField("currency", "EUR");
        json.writeEndObject();
    }
}
