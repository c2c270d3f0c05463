package org.thalweg.api;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.SequenceInputStream;
import java.math.BigDecimal;
import java.net.Socket;
import java.net.http.HttpRequest.BodyPublishers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Enumeration;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.thalweg.api.Door.Answer;

/** Jobs priced again through the door: as a stream of lines and as one request. */
@QuarkusTest
class RepricingsTest {

    private static final String PATH = "/v1/repricings";
    private static final String LINES = "application/x-ndjson";
    private static final long MANY = Long.getLong("thalweg.repricings", 100_000);

    private static Answer stream(String lines) {
        return Door.send(Door.request(PATH)
                .POST(BodyPublishers.ofByteArray(lines.getBytes(UTF_8)))
                .header("Content-Type", LINES));
    }

    private static List<String> drawn(RepricingJobs drawn, int count) {
        List<String> jobs = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            jobs.add(i % 9 == 4 ? "{\"job\": \"without\"}" : drawn.job().toString());
        }
        return jobs;
    }

    private static JsonNode summary(String answer) {
        assertThat(answer).endsWith("}\n");
        List<String> lines = answer.lines().toList();
        return Door.json(lines.get(lines.size() - 1)).required("summary");
    }

    @Test
    void theStreamAndTheRequestGiveTheSameBytes() {
        RepricingJobs drawn = new RepricingJobs("quotes-hip", 21);
        List<String> jobs = drawn(drawn, 200);
        Answer lines = stream(drawn.bookLine() + "\n" + String.join("\n", jobs));
        assertThat(lines.status()).as(lines.text()).isEqualTo(200);
        assertThat(lines.type()).startsWith(LINES);
        String request = "{ \"jobs\": [" + String.join(" ,\n", jobs) + "], \"priceBook\": " + drawn.priceBook() + " }";
        Answer whole = Door.post(PATH, request);
        assertThat(whole.status()).as(whole.text()).isEqualTo(200);
        List<String> told = lines.text().lines().toList();
        assertThat(told).hasSize(201);
        assertThat(whole.text())
                .isEqualTo("{\"answers\":[" + String.join("\n,", told.subList(0, 200)) + "\n],\"summary\":"
                        + summary(lines.text()) + "}");
        assertThat(summary(lines.text()).at("/failed").intValue()).isEqualTo(22);
        assertThat(summary(lines.text()).at("/jobs").intValue()).isEqualTo(200);
    }

    @Test
    void aTotalIsThatOfTheQuote() {
        RepricingJobs drawn = new RepricingJobs("quotes-hip", 22);
        StringBuilder lines = new StringBuilder(drawn.bookLine());
        List<ObjectNode> jobs = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            jobs.add(drawn.job());
            lines.append("\r\n").append(jobs.get(i));
        }
        List<String> told = stream(lines.toString()).text().lines().toList();
        for (int i = 0; i < jobs.size(); i++) {
            JsonNode quote = Door.post("/v1/quotes", drawn.asQuote(jobs.get(i))).json();
            JsonNode answer = Door.json(told.get(i));
            assertThat(answer.path("total")).isEqualTo(quote.required("total"));
            assertThat(answer.path("job")).isEqualTo(jobs.get(i).required("job"));
        }
    }

    @Test
    void aLayoutIsPricedAsItsQuote() throws IOException {
        JsonNode quote = Door.json(Files.readString(Path.of("openapi/examples/quotes-shed.request.json")));
        ObjectNode asQuote = RepricingJobs.JSON.createObjectNode();
        asQuote.set("layout", Door.json(Files.readString(Path.of("openapi/examples/layouts-shed.request.json"))));
        asQuote.set("priceBook", quote.required("priceBook"));
        JsonNode expected = Door.post("/v1/quotes", asQuote.toString()).json();
        ObjectNode job = RepricingJobs.JSON.createObjectNode().put("job", "shed");
        job.set("layout", asQuote.required("layout"));
        ObjectNode bad = job.deepCopy();
        ((ObjectNode) bad.at("/layout/panel")).put("covers", 7);
        List<String> told = stream("{\"priceBook\":" + quote.required("priceBook") + "}\n" + job + "\n" + bad + "\n")
                .text()
                .lines()
                .toList();
        JsonNode answer = Door.json(told.get(0));
        if (expected.path("complete").booleanValue()) {
            assertThat(answer.path("total")).isEqualTo(expected.required("total"));
        } else {
            assertThat(answer.at("/problem/code").textValue()).isEqualTo("NOT_PRICED");
        }
        assertThat(Door.json(told.get(1)).at("/problem/errors/0/pointer").textValue())
                .isEqualTo("#/layout/panel/covers");
    }

    @Test
    void orderAndChunksMakeNoDifference() {
        RepricingJobs drawn = new RepricingJobs("quotes-hip", 23);
        List<String> jobs = new ArrayList<>();
        for (int i = 0; i < 300; i++) {
            jobs.add(drawn.job().toString());
        }
        String whole = stream(drawn.bookLine() + "\n" + String.join("\n", jobs)).text();
        Collections.shuffle(jobs, new Random(24));
        byte[] lines = (drawn.bookLine() + "\n\n" + String.join("\r\n \n", jobs) + "\n").getBytes(UTF_8);
        Random random = new Random(25);
        String inBits = Door.send(Door.request(PATH)
                        .POST(BodyPublishers.ofInputStream(() -> new ByteArrayInputStream(lines) {
                            @Override
                            public synchronized int read(byte[] to, int at, int length) {
                                return super.read(to, at, Math.min(length, 1 + random.nextInt(3_000)));
                            }
                        }))
                        .header("Content-Type", LINES))
                .text();
        assertThat(inBits.lines().sorted()).isEqualTo(whole.lines().sorted().toList());
        assertThat(summary(inBits)).isEqualTo(summary(whole));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            ``                                                     | 400 | EMPTY_BODY #
            {"priceBook": {}}                                      | 400 | MISSING_MEMBER #/priceBook
            {"priceBook": {"currency": "USD", "items": []}, "x":1} | 400 | UNKNOWN_MEMBER #/x
            {"priceBook": {"currency": "QQQ", "items": []}}        | 400 | UNKNOWN_VALUE #/priceBook/currency
            {"job": "a"}                                           | 400 | UNKNOWN_MEMBER #/job
            {                                                      | 400 | MALFORMED_JSON #
            """)
    void withoutABookNothingIsPriced(String line, int status, String error) {
        Answer answer = stream("\n" + line + "\n{\"job\": \"a\"}\n").isProblem(status);
        if (!line.isEmpty()) {
            assertThat(answer.errors()).contains(error);
        }
        assertThat(stream(line).isProblem(status).errors()).contains(error);
    }

    @Test
    void aLineThatIsTooLongIsToldAndTheOthersGoOn() {
        RepricingJobs drawn = new RepricingJobs("quotes-hip", 26);
        String job = drawn.job().put("job", "good").toString();
        String padded = job + " ".repeat(Limits.REPRICING_LINE_BYTES - job.getBytes(UTF_8).length);
        List<String> told = stream(drawn.bookLine() + "\n" + padded + "\n" + padded + " \n" + job)
                .text()
                .lines()
                .toList();
        assertThat(told).hasSize(4);
        assertThat(told.get(0)).startsWith("{\"job\":\"good\",\"total\"").isEqualTo(told.get(2));
        JsonNode overlong = Door.json(told.get(1));
        assertThat(overlong.required("line").intValue()).isEqualTo(3);
        assertThat(overlong.at("/problem/code").textValue()).isEqualTo("TOO_LARGE");
        assertThat(overlong.at("/problem/errors/0/limit/value").intValue()).isEqualTo(Limits.REPRICING_LINE_BYTES);
        Door.send(Door.request(PATH)
                        .POST(BodyPublishers.ofString(" ".repeat(Limits.REPRICING_LINE_BYTES) + "x\n" + job))
                        .header("Content-Type", LINES))
                .isProblem(413);
    }

    @Test
    void theContractsExampleOfAStreamIsAnsweredByItsAnswer() {
        JsonNode examples = Door.json(Door.get("/openapi?format=json").text()).at("/components/examples");
        String answer = stream(examples.at("/repriceLines/value").textValue()).text();
        assertThat(answer).isEqualTo(examples.at("/repriceLinesAnswer/value").textValue());
    }

    /** Only lines go on for as long as they like. */
    @Test
    void oneRequestIsAsLargeAsAnyOther() {
        assertThat(Door.postChunked(PATH, new byte[Limits.BODY_BYTES + 1])
                        .isProblem(413)
                        .code())
                .isEqualTo("TOO_LARGE");
        assertThat(Door.raw("POST /v1/repricings HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\n"
                        + "Content-Length: 10000000\r\n\r\n"))
                .startsWith("HTTP/1.1 413 ");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            {"priceBook": {"currency": "USD", "items": []}}                      | MISSING_MEMBER #
            {"priceBook": {"currency": "USD", "items": []}, "jobs": [], "x": 1}  | UNKNOWN_MEMBER #/x
            {"priceBook": {"currency": "USD", "items": 7}, "jobs": []}           | WRONG_TYPE #/priceBook/items
            {"priceBook": {"currency": "USD", "items": []}, "jobs": [}           | MALFORMED_JSON #
            {"jobs": [], "jobs": []}                                             | DUPLICATE_MEMBER #/jobs
            """)
    void theOutlineOfARequestIsReadAsAnyOther(String body, String error) {
        assertThat(Door.post(PATH, body).isProblem(400).errors()).contains(error);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, Limits.REPRICING_JOBS, Limits.REPRICING_JOBS + 1})
    void aRequestHasSoManyJobs(int count) {
        ArrayNode jobs = RepricingJobs.JSON.createArrayNode();
        for (int i = 0; i < count; i++) {
            jobs.addArray();
        }
        Answer answer =
                Door.post(PATH, "{\"priceBook\": {\"currency\": \"USD\", \"items\": []}, \"jobs\": " + jobs + "}");
        if (count > Limits.REPRICING_JOBS) {
            assertThat(answer.isProblem(400).errors()).containsExactly("TOO_MANY #/jobs");
        } else {
            assertThat(answer.json().at("/summary/failed").intValue()).isEqualTo(count);
            assertThat(answer.json().at("/answers")).hasSize(count);
        }
    }

    /** Bytes that go back and forth on one connection. */
    private static final class Line implements AutoCloseable {

        private final Socket socket = new Socket("localhost", RestAssured.port);

        Line() throws IOException {
            socket.setSoTimeout(20_000);
            write("POST /v1/repricings HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/x-ndjson\r\n"
                    + "Transfer-Encoding: chunked\r\n\r\n");
        }

        private void write(String text) throws IOException {
            OutputStream out = socket.getOutputStream();
            out.write(text.getBytes(UTF_8));
            out.flush();
        }

        void send(String line) throws IOException {
            write(Integer.toHexString(line.getBytes(UTF_8).length) + "\r\n" + line + "\r\n");
        }

        /** Reads until {@code text} has come. */
        String await(String text) throws IOException {
            StringBuilder came = new StringBuilder();
            InputStream in = socket.getInputStream();
            while (came.indexOf(text) < 0) {
                int c = in.read();
                if (c < 0) {
                    throw new AssertionError("only came: " + came);
                }
                came.append((char) c);
            }
            return came.toString();
        }

        @Override
        public void close() throws IOException {
            socket.close();
        }
    }

    private static String asciiJob(RepricingJobs drawn, String name) {
        return drawn.job().put("job", name) + "\n";
    }

    @Test
    void anAnswerComesBeforeTheNextJobIsSent() throws IOException {
        RepricingJobs drawn = new RepricingJobs("quotes-hip", 27);
        try (Line line = new Line()) {
            line.send(drawn.bookLine() + "\n");
            for (int i = 0; i < 5; i++) {
                line.send(asciiJob(drawn, "step-" + i));
                assertThat(line.await("}\n")).contains("\"job\":\"step-" + i + "\"");
            }
            line.write("0\r\n\r\n");
            assertThat(line.await("0\r\n\r\n")).contains("{\"summary\":").contains("\"jobs\":5,");
        }
    }

    @Test
    void aStreamThatBreaksOffHasNoSummary() throws IOException {
        RepricingJobs drawn = new RepricingJobs("quotes-hip", 28);
        try (Line line = new Line()) {
            line.send(drawn.bookLine() + "\n" + asciiJob(drawn, "first"));
            line.await("\"job\":\"first\"");
            line.write("fff\r\n{\"job\": \"cut");
            line.socket.shutdownOutput();
            String rest = new String(line.socket.getInputStream().readAllBytes(), UTF_8);
            assertThat(rest).doesNotContain("summary").doesNotContain("0\r\n\r\n");
        }
    }

    @Test
    void oneStreamTooManyIsToldToComeAgain() throws Exception {
        RepricingJobs drawn = new RepricingJobs("quotes-hip", 29);
        String job = asciiJob(drawn, "waiting");
        List<Line> streams = new ArrayList<>();
        try {
            for (int i = 0; i < Limits.REPRICING_STREAMS; i++) {
                Line line = new Line();
                streams.add(line);
                line.send(drawn.bookLine() + "\n" + job);
                line.await("\"job\":\"waiting\"");
            }
            Answer busy = stream(drawn.bookLine() + "\n" + job).isProblem(503);
            assertThat(busy.code()).isEqualTo("BUSY");
            assertThat(busy.headers().firstValue("Retry-After")).hasValue("1");
            // Nobody else waits.
            assertThat(Door.get("/v1/limits").status()).isEqualTo(200);
        } finally {
            for (Line line : streams) {
                line.close();
            }
        }
        Answer again = stream(drawn.bookLine() + "\n" + job);
        for (int tries = 0; again.status() == 503 && tries < 100; tries++) {
            Thread.sleep(100);
            again = stream(drawn.bookLine() + "\n" + job);
        }
        assertThat(summary(again.text()).at("/jobs").intValue()).isEqualTo(1);
    }

    /** As long as one likes: with {@code -Dthalweg.repricings=N} any number of jobs. */
    @Test
    void aStreamHasNoLengthOfItsOwn() {
        RepricingJobs drawn = new RepricingJobs("quotes-hip", 30);
        List<byte[]> jobs = new ArrayList<>();
        BigDecimal total = BigDecimal.ZERO;
        List<BigDecimal> totals = new ArrayList<>();
        Repricer repricer = RepricingJobs.REPRICINGS.repricer(drawn.book());
        for (int i = 0; i < 1_000; i++) {
            String job = drawn.job().toString();
            jobs.add((job + "\n").getBytes(UTF_8));
            JsonNode answer = Door.json(RepricingJobs.answer(repricer, job, 2, new RepricingSums()));
            totals.add(new BigDecimal(answer.at("/total/amount").textValue()));
        }
        for (long i = 0; i < MANY; i++) {
            total = total.add(totals.get((int) (i % jobs.size())));
        }
        long[] sent = {0};
        Enumeration<InputStream> parts = new Enumeration<>() {
            @Override
            public boolean hasMoreElements() {
                return sent[0] <= MANY;
            }

            @Override
            public InputStream nextElement() {
                byte[] line = sent[0] == 0
                        ? (drawn.bookLine() + "\n").getBytes(UTF_8)
                        : jobs.get((int) ((sent[0] - 1) % jobs.size()));
                sent[0]++;
                return new ByteArrayInputStream(line);
            }
        };
        StreamedAnswer answer = StreamedAnswer.of(Door.request(PATH)
                .POST(BodyPublishers.ofInputStream(() -> new SequenceInputStream(parts)))
                .header("Content-Type", LINES)
                .build());
        assertThat(answer.lines()).isEqualTo(MANY + 1);
        JsonNode summary = Door.json(answer.last()).required("summary");
        assertThat(summary.at("/jobs").longValue()).isEqualTo(MANY);
        assertThat(summary.at("/totals/0/total").textValue()).isEqualTo(total.toPlainString());
    }

    /**
     * A long answer of which only the last line is kept.
     *
     * @param lines how many there were
     * @param last  the last
     */
    private record StreamedAnswer(long lines, String last) {

        static StreamedAnswer of(java.net.http.HttpRequest request) {
            try {
                InputStream in = java.net.http.HttpClient.newHttpClient()
                        .send(request, java.net.http.HttpResponse.BodyHandlers.ofInputStream())
                        .body();
                BoundedLines lines = new BoundedLines(in, Limits.REPRICING_LINE_BYTES);
                byte[] last = {};
                while (lines.next()) {
                    last = lines.copy();
                }
                return new StreamedAnswer(lines.number(), new String(last, UTF_8));
            } catch (IOException | InterruptedException e) {
                throw new AssertionError(e);
            }
        }
    }
}
