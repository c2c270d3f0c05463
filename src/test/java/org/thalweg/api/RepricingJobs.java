package org.thalweg.api;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;

/** Saved jobs drawn by lot from the examples of quotes, and how they are priced without a service. */
final class RepricingJobs {

    static final ObjectMapper JSON = mapper();
    static final Repricings REPRICINGS = Repricings.alone();

    private static final List<String> NAMES = List.of(
            "4711",
            "Müller & Söhne 屋",
            "a \"quoted\" one",
            "back\\slash",
            "\u007f",
            "\ud83c\udfe0 house",
            "tab\there",
            "and/or",
            "\f\b\r\n");

    private final Random random;
    private final String example;
    private final JsonNode request;

    RepricingJobs(String example, long seed) {
        this.example = example;
        this.request = example(example);
        this.random = new Random(seed);
    }

    private static ObjectMapper mapper() {
        ObjectMapper mapper = new ObjectMapper().registerModule(new Jdk8Module());
        new AnswerMapper().customize(mapper);
        return mapper;
    }

    private static JsonNode example(String name) {
        try {
            return JSON.readTree(Files.readString(Path.of("openapi", "examples", name + ".request.json")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    JsonNode priceBook() {
        return request.required("priceBook");
    }

    /** The line of the price book. */
    String bookLine() {
        return "{\"priceBook\":" + priceBook() + "}";
    }

    RepricingBook book() {
        return REPRICINGS.book(bookLine().getBytes(StandardCharsets.UTF_8));
    }

    String currency() {
        return priceBook().required("currency").textValue();
    }

    /** A saved takeoff with quantities drawn by lot, in three of four cases with what it was before. */
    ObjectNode job() {
        ObjectNode takeoff = request.required("takeoff").deepCopy();
        for (JsonNode line : takeoff.required("orderLines")) {
            ObjectNode each = (ObjectNode) line;
            for (String member : List.of("net", "lap", "ordered")) {
                each.put(member, quantity());
            }
            if (each.has("mass")) {
                ((ObjectNode) each.required("mass")).put("value", quantity());
            }
        }
        if (takeoff.has("totals")) {
            takeoff.required("totals").forEach(total -> ((ObjectNode) total).put("quantity", quantity()));
        }
        ArrayNode lines = (ArrayNode) takeoff.required("orderLines");
        if (lines.size() > 1 && random.nextInt(4) == 0) {
            lines.remove(random.nextInt(lines.size()));
        }
        ObjectNode job = JSON.createObjectNode();
        job.put(
                "job",
                random.nextInt(3) == 0 ? NAMES.get(random.nextInt(NAMES.size())) : "job-" + random.nextInt(1_000));
        job.set("takeoff", takeoff);
        if (random.nextInt(4) > 0) {
            job.set("was", money(BigDecimal.valueOf(random.nextInt(10_000_000), 2)));
        }
        return job;
    }

    ObjectNode money(BigDecimal amount) {
        return JSON.createObjectNode().put("amount", amount.toPlainString()).put("currency", currency());
    }

    private BigDecimal quantity() {
        return BigDecimal.valueOf(random.nextInt(100_000_000), random.nextInt(7));
    }

    /** The request for a quote that a job would be. */
    String asQuote(JsonNode job) {
        return "{\"takeoff\":" + job.required("takeoff") + ",\"priceBook\":" + priceBook() + "}";
    }

    /** One answer line with its line feed. */
    static String answer(Repricer repricer, String job, long line, RepricingSums sums) {
        byte[] bytes = job.getBytes(StandardCharsets.UTF_8);
        return answer(repricer, bytes, line, sums);
    }

    static String answer(Repricer repricer, byte[] job, long line, RepricingSums sums) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            repricer.answer(job, 0, job.length, line, sums, out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString(StandardCharsets.UTF_8);
    }

    @Override
    public String toString() {
        return example;
    }
}
