package org.thalweg.api.batch;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.RepricingSums;

/**
 * Says of a shard that it is finished, and of what: as long as all of this still holds, there is nothing to do again.
 *
 * @param task    what was to be done
 * @param input   SHA-256 of the lines read, in lower-case hexadecimal
 * @param answers the file of answers
 * @param sums    of the answers
 */
record DoneMarker(Task task, String input, Answers answers, JsonNode sums) {

    /** Strict: what is not written just so was not written by this engine, and speaks for nothing. */
    private static final ObjectMapper JSON = new ObjectMapper()
            .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES);

    /**
     * What makes the answers what they are, as far as it can be told without reading gigabytes.
     *
     * @param engine who answered
     * @param book   digest of the price book
     * @param shard  which share, as {@code 3/64}
     * @param read   what was read
     */
    record Task(String engine, String book, String shard, List<Read> read) {}

    /**
     * Lines read of a file.
     *
     * @param file     its name
     * @param size     of the whole file, in bytes
     * @param modified when it was last written
     * @param from     where the first line begins
     * @param to       where the last line has ended
     */
    record Read(String file, long size, String modified, long from, long to) {

        static Read of(JobRange range) {
            JobFile file = range.file();
            return new Read(file.name(), file.size(), file.modified(), range.from(), range.to());
        }
    }

    /**
     * The file of answers.
     *
     * @param file   its name
     * @param size   in bytes
     * @param sha256 of its bytes, in lower-case hexadecimal
     */
    record Answers(String file, long size, String sha256) {}

    static DoneMarker of(Task task, String input, Answers answers, RepricingSums sums) throws IOException {
        return new DoneMarker(task, input, answers, JSON.readTree(sums.json()));
    }

    static Path of(Shard shard, Path folder) {
        return folder.resolve(shard.file("done", "json"));
    }

    /** The marker in {@code file}; null where there is none that can be read. */
    static @Nullable DoneMarker read(Path file) throws IOException {
        try {
            return JSON.readValue(Files.readAllBytes(file), DoneMarker.class);
        } catch (NoSuchFileException | JsonProcessingException e) {
            return null;
        }
    }

    Shard shard() {
        return Shard.parse(task.shard());
    }

    /** Whether {@code file} is where the marker of its shard belongs. */
    boolean isIn(Path file) {
        try {
            return file.equals(file.resolveSibling(shard().file("done", "json")));
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    /** Whether the answers lie in {@code folder}, by their size. */
    boolean answersAreIn(Path folder) throws IOException {
        try {
            return Files.size(folder.resolve(answers.file())) == answers.size();
        } catch (NoSuchFileException e) {
            return false;
        }
    }

    void write(Path file) throws IOException {
        WholeFile.write(file, JSON.writerWithDefaultPrettyPrinter().writeValueAsBytes(this));
    }
}
