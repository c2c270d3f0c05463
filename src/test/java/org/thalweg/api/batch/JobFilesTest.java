package org.thalweg.api.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class JobFilesTest {

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 7, 64, 1000})
    void shardsOneAfterTheOtherAreEveryLineOnce(int count) throws IOException {
        write("b.ndjson", "{}\n\n\r\n" + "x".repeat(20_000) + "\n{\"a\":1}\n");
        write("a.ndjson", "first\nsecond\nlast line without an end");
        write("c.ndjson", "");
        write("d.ndjson", "\n\n\n");
        write("not jobs.txt", "nothing\n");

        JobFiles jobs = JobFiles.at(folder);
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        for (int index = 0; index < count; index++) {
            for (JobRange range : jobs.of(new Shard(index, count))) {
                byte[] lines = read(range);
                assertThat(lines).hasSize((int) range.size());
                assertThat(range.to() == range.file().size() || lines[lines.length - 1] == '\n')
                        .isTrue();
                all.writeBytes(lines);
            }
        }

        assertThat(all.toString(StandardCharsets.UTF_8))
                .isEqualTo(text("a.ndjson") + text("b.ndjson") + text("c.ndjson") + text("d.ndjson"));
    }

    @Test
    void aLineBelongsToTheShardItsFirstByteFallsTo() throws IOException {
        write("a.ndjson", "aaa\nbbb\nccc\nddd\n"); // 16 bytes: halves of 8, and the third line begins at 8
        JobFiles jobs = JobFiles.at(folder.resolve("a.ndjson"));

        assertThat(jobs.of(new Shard(0, 2)))
                .extracting(JobRange::from, JobRange::to)
                .containsExactly(
                        List.of(0L, 8L).toArray().length == 2 ? org.assertj.core.groups.Tuple.tuple(0L, 8L) : null);
        assertThat(jobs.of(new Shard(1, 2))).extracting(JobRange::from).containsExactly(8L);
        assertThat(jobs.of(new Shard(1, 3))).extracting(JobRange::from).containsExactly(8L);
    }

    @Test
    void aShardCanBeLeftWithoutALine() throws IOException {
        write("a.ndjson", "x".repeat(100) + "\n");
        assertThat(JobFiles.at(folder).of(new Shard(1, 2))).isEmpty();
    }

    @Test
    void aFolderWithoutJobsIsTold() {
        assertThatThrownBy(() -> JobFiles.at(folder))
                .isInstanceOf(BatchFailure.class)
                .hasMessageContaining(".ndjson");
    }

    @Test
    void aFileWrittenMeanwhileIsNoticed() throws IOException {
        write("a.ndjson", "{}\n");
        JobFile file = JobFiles.at(folder).files().get(0);
        write("a.ndjson", "{}\n{}\n");
        assertThatThrownBy(file::checkUnchanged).isInstanceOf(BatchFailure.class);
    }

    private void write(String name, String content) throws IOException {
        Files.writeString(folder.resolve(name), content);
    }

    private String text(String name) throws IOException {
        return Files.readString(folder.resolve(name));
    }

    private static byte[] read(JobRange range) throws IOException {
        try (InputStream in = range.open()) {
            return in.readAllBytes();
        }
    }
}
