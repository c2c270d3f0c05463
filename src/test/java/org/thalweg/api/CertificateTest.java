package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.thalweg.api.Door.Answer;

/** The bound of every answer is proven again by someone who has only the request and the answer. */
@QuarkusTest
class CertificateTest {

    private static final int JOBS = 200;
    private static final double[] INCHES = {96, 120, 126, 144, 240};
    private static final double[] MILLIMETRES = {2500, 3000, 4000, 6000};

    static IntStream seeds() {
        return IntStream.range(0, JOBS);
    }

    private static JsonNode cut(JsonNode request) {
        Answer answer = Door.post("/v1/stock-cuts", request.toString());
        assertThat(answer.status()).as(answer.text()).isEqualTo(200);
        return answer.json();
    }

    private static JsonNode boathouse() throws IOException {
        return Door.json(Files.readString(Path.of("openapi", "examples", "stock-cuts-boathouse.request.json")));
    }

    @Test
    void theBoundOfTheExampleIsProven() throws IOException {
        JsonNode request = boathouse();
        JsonNode answer = cut(request);
        assertThat(BuyersCheck.bound(request, answer))
                .isEqualTo(answer.path("lowerBound").asLong());
        assertThat(answer.path("lowerBound")).isEqualTo(answer.path("cost"));
    }

    /** The page on certificates does these sums by hand. */
    @Test
    void theListOfTheExampleIsTheOneThatIsWorkedByHand() throws IOException {
        JsonNode certificate = cut(boathouse()).path("certificate");
        assertThat(certificate.path("prices").findValuesAsText("price"))
                .containsExactly("246", "246", "105", "82", "46");
        assertThat(certificate.path("worths").findValuesAsText("worth")).containsExactly("105", "210", "246");
        assertThat(certificate.path("worth").asLong()).isEqualTo(2231);
        assertThat(Files.readString(Path.of("openapi", "certificates.md"))).contains("2231", "2034 · 15 = 30510");
    }

    @Test
    void inMillimetresTheExampleIsCutTheSame() throws IOException {
        ObjectNode request = (ObjectNode) boathouse();
        JsonNode here = cut(request);
        ((ObjectNode) request.path("units")).put("length", "mm");
        request.path("stock").forEach(CertificateTest::toMillimetres);
        request.path("pieces").forEach(CertificateTest::toMillimetres);
        request.put("kerf", 0.125 * 25.4).put("keepableOffcut", 18 * 25.4);
        JsonNode there = cut(request);
        assertThat(there.path("cost")).isEqualTo(here.path("cost"));
        assertThat(there.path("bars").findValuesAsText("id"))
                .isNotEmpty()
                .isEqualTo(here.path("bars").findValuesAsText("id"));
        assertThat(there.at("/certificate/prices")).isEqualTo(here.at("/certificate/prices"));
        assertThat(there.at("/certificate/stepsPerUnit").asLong()).isEqualTo(320);
    }

    private static void toMillimetres(JsonNode thing) {
        ((ObjectNode) thing).put("length", thing.path("length").asDouble() * 25.4);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void theOrderOfPiecesChangesNoCost(long seed) throws IOException {
        JsonNode request = boathouse();
        ArrayNode pieces = (ArrayNode) request.path("pieces");
        List<JsonNode> shuffled = new ArrayList<>();
        pieces.forEach(shuffled::add);
        Collections.shuffle(shuffled, new Random(seed));
        pieces.removeAll().addAll(shuffled);
        JsonNode answer = cut(request);
        assertThat(answer.path("cost").asLong()).isEqualTo(30_510);
        assertThat(BuyersCheck.bound(request, answer)).isEqualTo(30_510);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void theBoundOfAJobIsProven(int seed) {
        JsonNode request = job(seed);
        JsonNode answer = cut(request);
        assertThat(answer.path("unplaced")).isEmpty();
        long bound = BuyersCheck.bound(request, answer);
        long lowest = answer.path("lowerBound").asLong();
        assertThat(lowest).isLessThanOrEqualTo(answer.path("cost").asLong());
        if (answer.path("proof").asText().equals("certificate")) {
            assertThat(bound).isEqualTo(lowest);
        } else {
            assertThat(bound).isPositive().isLessThan(lowest);
        }
    }

    /** A bar said to be worth less than what fits on it, a price too high, a piece left out: each would prove too much. */
    @ParameterizedTest
    @ValueSource(strings = {"worth", "price", "count", "pieces"})
    void aFalseListProvesNothing(String member) throws IOException {
        JsonNode request = boathouse();
        ObjectNode answer = (ObjectNode) cut(request);
        String list = member.equals("worth") ? "/certificate/worths/1" : "/certificate/prices/0";
        ObjectNode forged = (ObjectNode) answer.at(list);
        switch (member) {
            case "pieces" -> forged.putArray("pieces");
            case "worth" -> forged.put(member, forged.path(member).asLong() - 1);
            default -> forged.put(member, 2 * forged.path(member).asLong() + 1);
        }
        assertThatThrownBy(() -> BuyersCheck.bound(request, answer)).isInstanceOf(AssertionError.class);
    }

    /** One to three lengths, with and without costs, kerf, off-cuts on the rack, pieces together and apart. */
    private static ObjectNode job(int seed) {
        Random random = new Random(51_000 + seed);
        boolean inches = seed % 2 == 0;
        double[] lengths = inches ? INCHES : MILLIMETRES;
        ObjectNode job = (ObjectNode) Door.json("{\"units\": {\"length\": \"%s\", \"area\": \"m2\", \"mass\": \"kg\"}}"
                .formatted(inches ? "in" : "mm"));
        ArrayNode stock = job.putArray("stock");
        int first = random.nextInt(lengths.length);
        int sorts = seed % 4 < 2 ? 1 : 1 + random.nextInt(3);
        for (int i = 0; i < sorts; i++) {
            ObjectNode bar =
                    stock.addObject().put("id", "bar " + i).put("length", lengths[(first + i) % lengths.length]);
            if (seed % 8 > 3) {
                bar.put(
                        "cost",
                        Math.round(bar.path("length").asDouble() * (8 + random.nextInt(5)) / (inches ? 1 : 25)));
            }
        }
        double shortest = IntStream.range(0, sorts)
                .mapToDouble(i -> stock.get(i).path("length").asDouble())
                .min()
                .orElseThrow();
        if (seed % 5 == 0) {
            stock.addObject()
                    .put("id", "rest")
                    .put("kind", "rack")
                    .put("length", shortest / 2)
                    .put("count", 3);
        }
        job.put("kerf", seed % 3 == 0 ? 0 : inches ? 0.125 : 3);
        ArrayNode pieces = job.putArray("pieces");
        int kinds = 3 + random.nextInt(28);
        for (int i = 0; i < kinds; i++) {
            double length = shortest * (0.03 + 0.85 * random.nextDouble());
            double marked = inches ? Math.ceil(length * 16) / 16 : Math.ceil(length);
            pieces.addObject().put("id", "p" + i).put("length", marked).put("count", 1 + random.nextInt(9));
        }
        if (seed % 7 == 0) {
            ((ObjectNode) pieces.get(0)).put("length", shortest / 8).put("count", 2);
            ((ObjectNode) pieces.get(1)).put("length", shortest / 4).put("count", 1);
            job.putArray("together").addArray().add("p0").add("p1");
        }
        if (seed % 11 == 0) {
            job.putArray("apart").addArray().add("p2");
        }
        return job;
    }
}
