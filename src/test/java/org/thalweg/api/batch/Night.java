package org.thalweg.api.batch;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.thalweg.api.Repricings;
import org.thalweg.api.Stopwatch;

/** A night's work in this process: a folder, jobs, a book, and the command line that works on them. */
final class Night {

    private static final Repricings REPRICINGS = Repricings.alone();

    final Path folder;
    final Path book;
    final Path jobs;

    private Night(Path folder) {
        this.folder = folder;
        this.book = folder.resolve("book.json");
        this.jobs = folder.resolve("jobs");
    }

    /** {@code counts} are the jobs in each of the files. */
    static Night of(Path folder, int... counts) throws IOException {
        Night night = new Night(folder);
        night.price("4.85");
        Files.createDirectories(night.jobs);
        for (int i = 0; i < counts.length; i++) {
            InventedJobs.write(night.jobs.resolve("part-%d.ndjson".formatted(i)), i, counts[i]);
        }
        return night;
    }

    /** Makes a book with this price of trims. */
    void price(String trim) throws IOException {
        Files.writeString(book, BOOK.formatted(trim));
    }

    Path out(String name) {
        return folder.resolve(name);
    }

    /** How a command ended. */
    record Ended(int code, String out, String err) {}

    static Ended say(Map<String, String> environment, Object... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = new Commands(
                        environment,
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8),
                        new Stopwatch(),
                        () -> REPRICINGS)
                .line()
                .execute(Arrays.stream(args).map(Object::toString).toArray(String[]::new));
        return new Ended(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    Ended reprice(Path out, Object... more) {
        List<Object> args = new ArrayList<>(List.of("reprice", "--book", book, "--jobs", jobs, "--out", out));
        args.addAll(List.of(more));
        return say(Map.of(), args.toArray());
    }

    void repriceAll(Path out, int shards) {
        for (int i = 0; i < shards; i++) {
            Ended ended = reprice(out, "--shard", i + "/" + shards);
            if (ended.code() != 0) {
                throw new AssertionError(ended);
            }
        }
    }

    /** The answers of all shards, one after the other. */
    static String answers(Path out) throws IOException {
        StringBuilder all = new StringBuilder();
        for (Path file : files(out)) {
            if (file.getFileName().toString().startsWith("answers-")) {
                all.append(Files.readString(file));
            }
        }
        return all.toString();
    }

    static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }

    private static final String BOOK = """
            { "priceBook": {
              "currency": "USD",
              "units": { "length": "in" },
              "waste": { "basis": "ordered" },
              "items": [
                { "item": "panel", "unit": "FOT", "price": "3.94", "minimum": "150" },
                { "item": "panel", "metal": "copper", "unit": "LBR", "price": "11.37", "code": "CU-16" },
                { "item": "trim", "unit": "LF", "price": "%s", "pack": "10" },
                { "item": "trim", "profile": "peak cover", "unit": "LF", "price": "6.10", "pack": "10.5" },
                { "item": "clip", "unit": "CEN", "price": "61.00" },
                { "item": "panelScrew", "unit": "CEN", "price": "14.25", "pack": "2.5" }
              ],
              "labour": [ { "id": "lay", "per": "finishedArea", "unit": "SQR", "price": "212.50" } ],
              "markups": [ { "id": "overhead and profit", "percent": "20" } ],
              "taxes": [ { "id": "sales tax", "percent": "7.25", "on": "goods" } ]
            } }
            """;
}
