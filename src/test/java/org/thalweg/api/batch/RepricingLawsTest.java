package org.thalweg.api.batch;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.thalweg.api.Limits;

/** However the work is cut, begun, broken off and taken up again, the answers are the same bytes. */
class RepricingLawsTest {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int JOBS = 300 + 1 + 99;

    @TempDir
    Path folder;

    private Night night;

    @BeforeEach
    void jobs() throws IOException {
        night = Night.of(folder, 300, 1, 99);
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 7, 64, 500})
    void theNumberOfShardsChangesNoAnswer(int shards) throws IOException {
        Path one = night.out("one");
        Path many = night.out("many");
        night.repriceAll(one, 1);
        night.repriceAll(many, shards);

        assertThat(Night.answers(one).lines()).hasSize(JOBS);
        assertThat(Night.answers(many)).isEqualTo(Night.answers(one));
        assertThat(merged(many)).isEqualTo(merged(one));
    }

    @Test
    void theOrderOfTheShardsChangesNothing() throws IOException {
        Path inOrder = night.out("in order");
        Path shuffled = night.out("shuffled");
        night.repriceAll(inOrder, 7);
        List<Integer> order = new ArrayList<>(IntStream.range(0, 7).boxed().toList());
        Collections.shuffle(order, new Random(1));
        order.forEach(index -> assertThat(
                        night.reprice(shuffled, "--shard", index + "/7").code())
                .isZero());

        assertThat(contents(shuffled)).isEqualTo(contents(inOrder));
    }

    /** Counted again from the answers, in other ways than the program does. */
    @Test
    void theSumsAreThoseOfTheAnswers() throws Exception {
        Path out = night.out("out");
        night.repriceAll(out, 7);
        BigDecimal total = BigDecimal.ZERO;
        int failed = 0;
        BigInteger hash = BigInteger.ZERO;
        for (String line : Night.answers(out).lines().toList()) {
            JsonNode answer = JSON.readTree(line);
            if (answer.has("problem")) {
                failed++;
            } else {
                total = total.add(new BigDecimal(answer.at("/total/amount").textValue()));
            }
            hash = hash.add(new BigInteger(
                    1, MessageDigest.getInstance("SHA-256").digest(line.getBytes(StandardCharsets.UTF_8))));
        }

        JsonNode sums = merged(out);
        assertThat(sums.get("jobs").asInt()).isEqualTo(JOBS);
        assertThat(sums.get("failed").asInt()).isEqualTo(failed).isPositive().isLessThan(JOBS / 10);
        assertThat(new BigDecimal(sums.at("/totals/0/total").textValue())).isEqualByComparingTo(total);
        assertThat(new BigInteger(sums.get("hash").textValue(), 16)).isEqualTo(hash.mod(BigInteger.TWO.pow(256)));
    }

    @Test
    void whereABadJobBeginsInItsFileIsTold() throws IOException {
        String bad = "{\"job\":\"none\"}";
        String overlong = "{\"job\":\"" + "x".repeat(Limits.REPRICING_LINE_BYTES) + "\"}";
        Files.writeString(
                night.jobs.resolve("part-1.ndjson"),
                String.join("\n", "\u00e4".repeat(9), "", bad, overlong, new InventedJobs(3).next(), bad));
        Path out = night.out("out");
        night.repriceAll(out, 1);

        String all = Files.readString(night.jobs.resolve("part-1.ndjson"));
        List<Long> told = new ArrayList<>();
        for (String line : Night.answers(out).lines().skip(300).limit(5).toList()) {
            JsonNode answer = JSON.readTree(line);
            if (answer.has("problem")) {
                told.add(answer.required("offset").longValue());
            }
        }
        int nine = 9; // two bytes each, so bytes are ahead of characters by so many
        assertThat(told)
                .containsExactly(
                        0L,
                        (long) all.indexOf(bad) + nine,
                        (long) all.indexOf(overlong) + nine,
                        (long) all.lastIndexOf(bad) + nine);
    }

    @Test
    void whatIsFinishedIsNotDoneAgain() throws IOException {
        Path out = night.out("out");
        night.repriceAll(out, 2);
        Map<String, FileTime> before = backdated(out);

        for (int i = 0; i < 2; i++) {
            assertThat(night.reprice(out, "--shard", i + "/2").err()).contains("was done before");
        }
        assertThat(times(out)).isEqualTo(before);
    }

    @Test
    void aNewBookDoesItAgain() throws IOException {
        Path out = night.out("out");
        night.repriceAll(out, 1);
        String before = Night.answers(out);
        night.price("5.85");

        assertThat(night.reprice(out).err()).doesNotContain("was done before");
        assertThat(Night.answers(out)).isNotEqualTo(before).hasLineCount(JOBS);
    }

    @Test
    void anotherEngineDoesItAgain() throws IOException {
        Path out = night.out("out");
        night.repriceAll(out, 1);
        Path marker = out.resolve("done-00000-of-00001.json");
        Files.writeString(marker, Files.readString(marker).replace("thalweg/", "thalweg/9."));

        assertThat(night.reprice(out).err()).doesNotContain("was done before");
    }

    @Test
    void jobsThatWereWrittenSinceAreDoneAgain() throws IOException {
        Path out = night.out("out");
        night.repriceAll(out, 1);
        Path part = night.jobs.resolve("part-2.ndjson");
        Files.writeString(part, Files.readString(part) + new InventedJobs(9).next() + "\n");

        assertThat(night.reprice(out).err()).doesNotContain("was done before");
        assertThat(Night.answers(out)).hasLineCount(JOBS + 1);
    }

    @Test
    void onlyReadingAgainNoticesJobsThatHideThatTheyChanged() throws IOException {
        Path out = night.out("out");
        night.repriceAll(out, 1);
        Path part = night.jobs.resolve("part-2.ndjson");
        FileTime written = Files.getLastModifiedTime(part);
        Files.writeString(part, Files.readString(part).replace("copper", "coffee"));
        Files.setLastModifiedTime(part, written);

        assertThat(night.reprice(out).err()).contains("was done before");
        assertThat(night.reprice(out, "--verify").err()).doesNotContain("was done before");
        assertThat(night.reprice(out, "--verify").err()).contains("was done before");
    }

    @Test
    void answersThatWereTamperedWithAreMadeAgainWhenReadAgain() throws IOException {
        Path out = night.out("out");
        night.repriceAll(out, 1);
        String before = Night.answers(out);
        Files.writeString(out.resolve("answers-00000-of-00001.ndjson"), before.replace('1', '2'));

        assertThat(night.reprice(out, "--verify").err()).doesNotContain("was done before");
        assertThat(Night.answers(out)).isEqualTo(before);
    }

    /** What a kill can leave of a shard, each state made by hand; where it strikes by chance is for the packaged test. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "nothing",
                "a file begun",
                "answers and no marker",
                "answers and a marker begun",
                "a marker alone"
            })
    void whateverWasLeftRunningAgainGivesTheSameBytes(String left) throws IOException {
        Path whole = night.out("whole");
        night.repriceAll(whole, 1);
        Path out = Files.createDirectory(night.out("out"));
        Path answers = out.resolve("answers-00000-of-00001.ndjson");
        Path marker = out.resolve("done-00000-of-00001.json");
        if (left.startsWith("answers")) {
            Files.copy(whole.resolve(answers.getFileName()), answers);
        }
        switch (left) {
            case "a file begun" ->
                Files.writeString(
                        out.resolve("answers-00000-of-00001.ndjson.1c8f1a2e-0000-0000-0000-000000000000.tmp"), "{\"li");
            case "answers and a marker begun" ->
                Files.writeString(
                        out.resolve("done-00000-of-00001.json.1c8f1a2e-0000-0000-0000-000000000000.tmp"), "{\"ta");
            case "a marker alone" -> Files.copy(whole.resolve(marker.getFileName()), marker);
            default -> {}
        }

        assertThat(night.reprice(out).code()).isZero();
        assertThat(contents(out)).isEqualTo(contents(whole));
    }

    @Test
    void whatAnotherShardHasBegunIsLeftAlone() throws IOException {
        Path out = Files.createDirectory(night.out("out"));
        Path others = Files.writeString(out.resolve("answers-00001-of-00002.ndjson.x.tmp"), "{\"li");
        assertThat(night.reprice(out, "--shard", "0/2").code()).isZero();
        assertThat(others).exists();
    }

    // What merge does not take for the whole.

    @Test
    void aMissingShardIsNamed() throws IOException {
        Path out = night.out("out");
        night.repriceAll(out, 7);
        Files.delete(out.resolve("done-00003-of-00007.json"));
        assertRefused(out, "3/7");
    }

    @Test
    void shardsOfTwoCutsAreRefused() {
        Path out = night.out("out");
        night.repriceAll(out, 2);
        night.repriceAll(out, 3);
        assertRefused(out, "2, 3");
    }

    @Test
    void shardsOfTwoBooksAreRefused() throws IOException {
        Path out = night.out("out");
        night.repriceAll(out, 2);
        night.price("9");
        night.reprice(out, "--shard", "1/2");
        assertRefused(out, "price book");
    }

    @Test
    void shardsOfJobsThatChangedBetweenThemAreRefused() throws IOException {
        Path out = night.out("out");
        night.repriceAll(out, 2);
        InventedJobs.write(night.jobs.resolve("part-0.ndjson"), 5, 290);
        night.reprice(out, "--shard", "1/2");
        assertRefused(out, "part-0.ndjson");
    }

    @Test
    void answersThatAreGoneAreMissed() throws IOException {
        Path out = night.out("out");
        night.repriceAll(out, 2);
        Files.delete(out.resolve("answers-00001-of-00002.ndjson"));
        assertRefused(out, "answers-00001-of-00002.ndjson");
    }

    @Test
    void aMarkerThatIsNoneIsNamed() throws IOException {
        Path out = night.out("out");
        night.repriceAll(out, 1);
        Files.writeString(out.resolve("done-00000-of-00001.json"), "{}");
        assertRefused(out, "done-00000-of-00001.json");
    }

    private static void assertRefused(Path out, String because) {
        Night.Ended ended = Night.say(Map.of(), "merge", "--out", out);
        assertThat(ended.code()).isEqualTo(1);
        assertThat(ended.err()).contains(because).doesNotContain("Exception");
        assertThat(ended.out()).isEmpty();
        assertThat(out.resolve("summary.json")).doesNotExist();
    }

    private static JsonNode merged(Path out) throws IOException {
        Night.Ended ended = Night.say(Map.of(), "merge", "--out", out);
        assertThat(ended.code()).as(ended.err()).isZero();
        assertThat(out.resolve("summary.json")).hasContent(ended.out());
        return JSON.readTree(ended.out());
    }

    private static Map<String, String> contents(Path out) throws IOException {
        Map<String, String> contents = new LinkedHashMap<>();
        for (Path file : Night.files(out)) {
            contents.put(file.getFileName().toString(), Files.readString(file, StandardCharsets.UTF_8));
        }
        return contents;
    }

    /** Makes every file an hour old, so that one written again is told from one that was not. */
    private static Map<String, FileTime> backdated(Path out) throws IOException {
        for (Path file : Night.files(out)) {
            Files.setLastModifiedTime(
                    file, FileTime.fromMillis(Files.getLastModifiedTime(file).toMillis() - 3_600_000));
        }
        return times(out);
    }

    private static Map<String, FileTime> times(Path out) throws IOException {
        Map<String, FileTime> times = new LinkedHashMap<>();
        for (Path file : Night.files(out)) {
            times.put(file.getFileName().toString(), Files.getLastModifiedTime(file));
        }
        return times;
    }
}
