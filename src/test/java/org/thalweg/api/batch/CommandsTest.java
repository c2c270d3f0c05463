package org.thalweg.api.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.thalweg.api.Engine;

class CommandsTest {

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "nonsense",
                "--nonsense",
                "reprice",
                "reprice --book b --jobs j",
                "reprice --book b --jobs j --out o --shard 4/4",
                "reprice --book b --jobs j --out o --shard one",
                "reprice --book b --jobs j --out o --nonsense",
                "merge",
                "merge --out o more"
            })
    void aCommandLineThatSaysNothingThatCanBeDoneEndsWith2(String line) {
        Night.Ended ended = Night.say(Map.of(), (Object[]) line.split(" "));
        assertThat(ended.code()).isEqualTo(2);
        assertThat(ended.out()).isEmpty();
        assertThat(ended.err()).contains("Usage: thalweg").doesNotContain("Exception");
    }

    @ParameterizedTest
    @CsvSource({"--help, Ends with", "reprice --help, --shard", "merge --help, summary.json"})
    void helpIsGivenWhereItIsAskedFor(String line, String told) {
        Night.Ended ended = Night.say(Map.of(), (Object[]) line.split(" "));
        assertThat(ended.code()).isZero();
        assertThat(ended.out()).contains("Usage: thalweg").contains(told);
        assertThat(ended.err()).isEmpty();
    }

    @Test
    void theVersionIsTheEngineThatAnswers() {
        assertThat(Night.say(Map.of(), "--version").out().strip())
                .isEqualTo(new Engine().name())
                .matches("thalweg/\\d+\\.\\d+\\.\\d+");
    }

    @Test
    void aPodOfAnIndexedJobIsToldItsShardByItsEnvironment() throws IOException {
        Night night = Night.of(folder, 10);
        Path out = night.out("out");
        Night.Ended ended = Night.say(
                Map.of("JOB_COMPLETION_INDEX", "3", "JOB_SHARDS", "4"),
                "reprice",
                "--book",
                night.book,
                "--jobs",
                night.jobs,
                "--out",
                out);
        assertThat(ended.code()).as(ended.err()).isZero();
        assertThat(Night.files(out))
                .extracting(file -> file.getFileName().toString())
                .containsExactly("answers-00003-of-00004.ndjson", "done-00003-of-00004.json");
    }

    @ParameterizedTest
    @CsvSource({"JOB_COMPLETION_INDEX, 3", "JOB_SHARDS, 4"})
    void halfOfThatIsAMistake(String name, String value) throws IOException {
        Night night = Night.of(folder, 1);
        Night.Ended ended = Night.say(
                Map.of(name, value), "reprice", "--book", night.book, "--jobs", night.jobs, "--out", night.out("out"));
        assertThat(ended.code()).isEqualTo(2);
        assertThat(ended.err()).contains("JOB_COMPLETION_INDEX").contains("JOB_SHARDS");
    }

    @Test
    void whatIsNotThereIsNamed() throws IOException {
        Night night = Night.of(folder, 1);
        assertFails("missing.json", "reprice", "--book", "missing.json", "--jobs", night.jobs, "--out", night.out("o"));
        assertFails(
                "missing.ndjson", "reprice", "--book", night.book, "--jobs", "missing.ndjson", "--out", night.out("o"));
        assertFails("missing", "merge", "--out", night.out("missing"));
    }

    @Test
    void aFolderThatIsAFileIsTold() throws IOException {
        Night night = Night.of(folder, 1);
        assertFails("is no folder", "reprice", "--book", night.book, "--jobs", night.jobs, "--out", night.book);
    }

    @Test
    void aFolderThatMayNotBeWrittenIsTold() throws IOException {
        Night night = Night.of(folder, 1);
        Path out = Files.createDirectory(
                night.out("out"), PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("r-xr-xr-x")));
        assumeFalse(Files.isWritable(out), "this user may write everywhere, so nothing is refused");
        assertFails("may not be", "reprice", "--book", night.book, "--jobs", night.jobs, "--out", out);
    }

    @Test
    void aBookThatIsNoneIsTold() throws IOException {
        Night night = Night.of(folder, 1);
        Files.writeString(night.book, "{\"priceBook\": {\"currency\": \"USD\", \"items\": 4}}");
        Night.Ended ended = assertFails(
                "book.json", "reprice", "--book", night.book, "--jobs", night.jobs, "--out", night.out("o"));
        assertThat(ended.err()).contains("items");
    }

    private static Night.Ended assertFails(String told, Object... args) {
        Night.Ended ended = Night.say(Map.of(), args);
        assertThat(ended.code()).as(ended.err()).isEqualTo(1);
        assertThat(ended.err()).contains(told).doesNotContain("Exception").doesNotContain("mistake of the program");
        assertThat(ended.out()).isEmpty();
        return ended;
    }
}
