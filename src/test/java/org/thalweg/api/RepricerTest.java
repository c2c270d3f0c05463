package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.thalweg.api.RepricingJobs.JSON;
import static org.thalweg.api.RepricingJobs.REPRICINGS;
import static org.thalweg.api.RepricingJobs.answer;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Jobs priced again at once and strictly, alone and among others. */
class RepricerTest {

    private static final int JOBS = 3_000;

    /** Bytes that change much in JSON. */
    private static final String MARKS = "{}[]\",:\\0123456789.-+eE \t\r/nulltruefalse\u0000\u001f\u007f\u0080\u00e9";

    static Stream<RepricingJobs> drawn() {
        return Stream.of(new RepricingJobs("quotes-hip", 1));
    }

    /** Prices every job strictly: the oracle of those that are priced at once. */
    private static Repricer strict(RepricingBook book) {
        return REPRICINGS.strictRepricer(book);
    }

    @ParameterizedTest
    @MethodSource("drawn")
    void whatIsPricedAtOnceIsPricedAsStrictly(RepricingJobs drawn) {
        RepricingBook book = drawn.book();
        Repricer quick = REPRICINGS.repricer(book);
        Repricer strict = strict(book);
        RepricingSums quickly = new RepricingSums();
        RepricingSums strictly = new RepricingSums();
        for (int i = 0; i < JOBS; i++) {
            String job = drawn.job().toString();
            assertThat(answer(quick, job, i, quickly)).as(job).isEqualTo(answer(strict, job, i, strictly));
        }
        assertThat(quickly.json()).isEqualTo(strictly.json());
        assertThat(quick.atOnce()).isGreaterThan(JOBS * 2L / 3);
        assertThat(strict.atOnce()).isZero();
    }

    /** One to three bytes changed, put in, taken out, or a stretch of them doubled or dropped. */
    @ParameterizedTest
    @MethodSource("drawn")
    void aSpoiltLineIsAnsweredAsStrictly(RepricingJobs drawn) {
        RepricingBook book = drawn.book();
        Repricer quick = REPRICINGS.repricer(book);
        Repricer strict = strict(book);
        RepricingSums sums = new RepricingSums();
        Random random = new Random(2);
        for (int i = 0; i < 2 * JOBS; i++) {
            byte[] job = drawn.job().toString().getBytes(StandardCharsets.UTF_8);
            for (int times = random.nextInt(3); times >= 0; times--) {
                job = spoilt(job, random);
            }
            assertThat(answer(quick, job, i, sums))
                    .as(new String(job, StandardCharsets.ISO_8859_1))
                    .isEqualTo(answer(strict, job, i, sums));
        }
        assertThat(sums.failed()).isBetween(JOBS / 2L, 4L * JOBS - 200);
    }

    private static byte[] spoilt(byte[] job, Random random) {
        int at = random.nextInt(job.length);
        int to = Math.min(job.length, at + random.nextInt(40));
        byte[] head = Arrays.copyOf(job, at);
        byte[] mark = MARKS.substring(0, 1 + random.nextInt(MARKS.length())).getBytes(StandardCharsets.ISO_8859_1);
        byte[] last = {mark[mark.length - 1]};
        return switch (random.nextInt(5)) {
            case 0 -> joined(head, last, Arrays.copyOfRange(job, Math.min(job.length, at + 1), job.length));
            case 1 -> joined(head, last, Arrays.copyOfRange(job, at, job.length));
            case 2 -> joined(head, Arrays.copyOfRange(job, to, job.length));
            case 3 -> joined(head, Arrays.copyOfRange(job, at, to), Arrays.copyOfRange(job, at, job.length));
            default -> joined(head, Arrays.copyOfRange(job, Math.min(job.length, at + 1), job.length));
        };
    }

    private static byte[] joined(byte[]... parts) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        for (byte[] part : parts) {
            all.writeBytes(part);
        }
        return all.toByteArray();
    }

    /** Members nobody reads hold all sorts of things; those that are no JSON are refused just as well. */
    static List<Path> texts() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src/test/resources/json-conformance"))) {
            return files.filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void whatIsPassedOverIsReadAsStrictly() throws IOException {
        RepricingJobs drawn = new RepricingJobs("quotes-hip", 3);
        RepricingBook book = drawn.book();
        Repricer quick = REPRICINGS.repricer(book);
        Repricer strict = strict(book);
        RepricingSums sums = new RepricingSums();
        byte[] job = drawn.job().put("job", "a").toString().getBytes(StandardCharsets.UTF_8);
        String before = "\"takeoff\":{";
        int at = new String(job, StandardCharsets.ISO_8859_1).indexOf(before) + before.length();
        List<Path> texts = texts();
        assertThat(texts).hasSizeGreaterThan(100);
        for (Path text : texts) {
            byte[] line = joined(
                    Arrays.copyOf(job, at),
                    "\"x\":".getBytes(StandardCharsets.UTF_8),
                    Files.readAllBytes(text),
                    ",".getBytes(StandardCharsets.UTF_8),
                    Arrays.copyOfRange(job, at, job.length));
            assertThat(answer(quick, line, 2, sums)).as("%s", text).isEqualTo(answer(strict, line, 2, sums));
        }
        assertThat(sums.failed()).isGreaterThan(texts.size());
        assertThat(quick.atOnce()).isGreaterThan(30);
    }

    @Test
    void aJobIsAnsweredAloneAsAmongOthers() {
        RepricingJobs drawn = new RepricingJobs("quotes-hip", 4);
        RepricingBook book = drawn.book();
        Repricer one = REPRICINGS.repricer(book);
        List<String> jobs = new ArrayList<>();
        List<String> answers = new ArrayList<>();
        RepricingSums whole = new RepricingSums();
        for (int i = 0; i < 300; i++) {
            String job = i % 10 == 0 ? "{\"job\": \"none\"}" : drawn.job().toString();
            jobs.add(job);
            answers.add(answer(one, job, 7, whole));
        }
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < jobs.size(); i++) {
            order.add(i);
        }
        Collections.shuffle(order, new Random(5));
        RepricingSums[] parts = {new RepricingSums(), new RepricingSums(), new RepricingSums()};
        for (int i : order) {
            assertThat(answer(REPRICINGS.repricer(book), jobs.get(i), 7, parts[i % 3]))
                    .isEqualTo(answers.get(i));
        }
        RepricingSums sum = new RepricingSums();
        for (int i : List.of(2, 0, 1)) {
            sum.add(parts[i]);
        }
        assertThat(sum.json()).isEqualTo(whole.json());
    }

    /** Everything in the sums is found again from the answers alone, with other means. */
    @Test
    void sumsAreThoseOfTheAnswers() throws IOException, NoSuchAlgorithmException {
        RepricingJobs drawn = new RepricingJobs("quotes-hip", 6);
        Repricer repricer = REPRICINGS.repricer(drawn.book());
        RepricingSums sums = new RepricingSums();
        BigDecimal total = BigDecimal.ZERO;
        BigDecimal was = BigDecimal.ZERO;
        BigDecimal change = BigDecimal.ZERO;
        long compared = 0;
        long failed = 0;
        BigInteger hash = BigInteger.ZERO;
        for (int i = 0; i < 1_000; i++) {
            ObjectNode job = drawn.job();
            if (i % 7 == 0) {
                job.remove("takeoff");
            }
            String text = answer(repricer, job.toString(), i, sums);
            assertThat(text).endsWith("}\n").containsOnlyOnce("\n");
            JsonNode answer = JSON.readTree(text);
            if (answer.has("problem")) {
                failed++;
                assertThat(answer.required("line").intValue()).isEqualTo(i);
            } else {
                total = total.add(new BigDecimal(answer.at("/total/amount").textValue()));
            }
            if (answer.has("change")) {
                BigDecimal before = new BigDecimal(job.at("/was/amount").textValue());
                assertThat(answer.at("/was/amount").textValue()).isEqualTo(before.toPlainString());
                assertThat(new BigDecimal(answer.at("/change/amount").textValue()))
                        .isEqualTo(new BigDecimal(answer.at("/total/amount").textValue()).subtract(before));
                compared++;
                was = was.add(before);
                change = change.add(new BigDecimal(answer.at("/change/amount").textValue()));
            }
            byte[] bytes = text.substring(0, text.length() - 1).getBytes(StandardCharsets.UTF_8);
            hash = hash.add(
                    new BigInteger(1, MessageDigest.getInstance("SHA-256").digest(bytes)));
        }
        JsonNode told = JSON.readTree(sums.json());
        assertThat(told.at("/jobs").longValue()).isEqualTo(1_000);
        assertThat(told.at("/failed").longValue()).isEqualTo(failed).isPositive();
        assertThat(told.at("/totals/0/jobs").longValue()).isEqualTo(1_000 - failed);
        assertThat(told.at("/totals/0/total").textValue()).isEqualTo(total.toPlainString());
        assertThat(told.at("/totals/0/compared").longValue())
                .isEqualTo(compared)
                .isPositive();
        assertThat(told.at("/totals/0/was").textValue()).isEqualTo(was.toPlainString());
        assertThat(told.at("/totals/0/change").textValue()).isEqualTo(change.toPlainString());
        assertThat(new BigInteger(told.at("/hash").textValue(), 16)).isEqualTo(hash.mod(BigInteger.TWO.pow(256)));
        assertThat(RepricingSums.read(told).json()).isEqualTo(sums.json());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            {"job": "a"}                                        | a | INVALID     | EITHER_OR #
            {"job": "a", "takeoff": {}, "x": 1}                 | a | INVALID     | UNKNOWN_MEMBER #/x
            {"job": "", "takeoff": {}}                          |   | INVALID     | TOO_SHORT #/job
            {"job": 7, "takeoff": {}}                           |   | INVALID     | WRONG_TYPE #/job
            {"job": "a", "job": "b", "takeoff": {}}             | a | INVALID     | DUPLICATE_MEMBER #/job
            {"job": "a", "takeoff": {"engine": "thalweg/0.1.0"} | a | UNREADABLE  | MALFORMED_JSON #
            {"job": "a"} x                                      | a | UNREADABLE  | MALFORMED_JSON #
            {"job": "\\ud800"}                                  |   | UNREADABLE  | MALFORMED_TEXT #
            []                                                  |   | INVALID     | WRONG_TYPE #
            """)
    void aBadJobIsToldWithItsNameAndPlace(String line, String job, String code, String error) throws IOException {
        Repricer repricer = REPRICINGS.repricer(new RepricingJobs("quotes-hip", 7).book());
        RepricingSums sums = new RepricingSums();
        JsonNode answer = JSON.readTree(answer(repricer, line, 12, sums));
        assertThat(answer.path("job").textValue()).isEqualTo(job);
        assertThat(answer.at("/line").intValue()).isEqualTo(12);
        assertThat(answer.at("/problem/code").textValue()).isEqualTo(code);
        assertThat(errors(answer)).contains(error);
        assertThat(sums.failed()).isEqualTo(1);
    }

    private static List<String> errors(JsonNode answer) {
        List<String> errors = new ArrayList<>();
        answer.at("/problem/errors")
                .forEach(error -> errors.add(error.path("code").textValue() + " "
                        + error.path("pointer").textValue()));
        return errors;
    }

    @Test
    void whatHasNoPriceIsAProblemAtItsLine() throws IOException {
        RepricingJobs drawn = new RepricingJobs("quotes-hip", 8);
        ObjectNode job = drawn.job();
        ((ObjectNode) job.at("/takeoff/orderLines/2")).put("item", "panel");
        ((ObjectNode) job.at("/takeoff/totals/0")).put("item", "other");
        JsonNode answer =
                JSON.readTree(answer(REPRICINGS.repricer(drawn.book()), job.toString(), 3, new RepricingSums()));
        assertThat(answer.at("/problem/code").textValue()).isEqualTo("NOT_PRICED");
        assertThat(errors(answer)).containsExactly("NO_PRICE #/takeoff/orderLines/2", "NO_SUCH_TOTAL #/takeoff");
        assertThat(answer.has("total")).isFalse();
    }

    @ParameterizedTest
    @ValueSource(strings = {"USD", "eur"})
    void aChangeIsOnlyToldInOneCurrency(String other) throws IOException {
        RepricingJobs drawn = new RepricingJobs("quotes-hip", 9);
        ObjectNode job = drawn.job();
        job.set("was", drawn.money(BigDecimal.TEN).put("currency", other));
        JsonNode answer =
                JSON.readTree(answer(REPRICINGS.repricer(drawn.book()), job.toString(), 3, new RepricingSums()));
        assertThat(errors(answer)).containsExactly("OTHER_CURRENCY #/was/currency");
    }

    @ParameterizedTest
    @CsvSource({
        "12.5, 12.50, ''",
        "'\"12.5\"', 12.50, ''",
        "'\"0012.500\"', 12.50, ''",
        "0, 0.00, ''",
        "12.505, '', TOO_LONG",
        "-1, '', OUT_OF_RANGE",
        "1e13, '', OUT_OF_RANGE"
    })
    void whatItWasIsMoney(String amount, String told, String code) throws IOException {
        RepricingJobs drawn = new RepricingJobs("quotes-hip", 10);
        ObjectNode job = drawn.job();
        ObjectNode was = drawn.money(BigDecimal.ONE);
        was.set("amount", JSON.readTree(amount));
        job.set("was", was);
        String line = job.toString().replace("\"amount\":1.0E13", "\"amount\":1e13");
        JsonNode answer = JSON.readTree(answer(REPRICINGS.repricer(drawn.book()), line, 3, new RepricingSums()));
        assertThat(answer.at("/was/amount").asText()).isEqualTo(told);
        assertThat(errors(answer)).isEqualTo(code.isEmpty() ? List.of() : List.of(code + " #/was/amount"));
    }
}
