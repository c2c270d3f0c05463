package org.thalweg.api.batch;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.RepricingSums;
import org.thalweg.api.batch.DoneMarker.Read;

/** Adds up what the shards of one work counted. Reads their markers only, however many answers there are. */
final class Merger {

    private static final int NAMED = 10;

    private final Path folder;

    /** By number of shards, then by shard. */
    private final TreeMap<Integer, TreeMap<Integer, DoneMarker>> found = new TreeMap<>();

    private Merger(Path folder) {
        this.folder = folder;
    }

    /**
     * The sums of all shards in {@code folder}, as the last line of a stream tells them.
     *
     * @throws BatchFailure when they are not all the shards of one work
     */
    static String merge(Path folder) throws IOException {
        Merger merger = new Merger(folder);
        merger.find();
        return merger.summary();
    }

    private void find() throws IOException {
        try (DirectoryStream<Path> markers = Files.newDirectoryStream(folder, "done-*.json")) {
            for (Path file : markers) {
                DoneMarker marker = DoneMarker.read(file);
                if (marker == null || !marker.isIn(file)) {
                    throw new BatchFailure(file + " is no marker of its shard. Remove it, and run that shard again.");
                }
                Shard shard = marker.shard();
                found.computeIfAbsent(shard.count(), count -> new TreeMap<>()).put(shard.index(), marker);
            }
        }
    }

    private String summary() throws IOException {
        if (found.isEmpty()) {
            throw new BatchFailure("No shard is finished in %s.".formatted(folder));
        }
        if (found.size() > 1) {
            throw new BatchFailure(
                    "The jobs in %s were cut into shards more than once, by %s. Remove the files of all but one cut."
                            .formatted(
                                    folder,
                                    listed(found.keySet().stream()
                                            .map(String::valueOf)
                                            .toList())));
        }
        int count = found.firstEntry().getKey();
        Map<Integer, DoneMarker> shards = found.firstEntry().getValue();
        checkAllAreThere(count, shards);
        List<DoneMarker> done = List.copyOf(shards.values());
        String engine = theOne("engine", done, marker -> marker.task().engine());
        String book = theOne("price book", done, marker -> marker.task().book());
        checkTheyReadEverythingOnce(done);
        for (DoneMarker marker : done) {
            if (!marker.answersAreIn(folder)) {
                throw new BatchFailure("%s is not as it was when its shard was finished. Run shard %s again."
                        .formatted(
                                folder.resolve(marker.answers().file()),
                                marker.task().shard()));
            }
        }
        RepricingSums sums = new RepricingSums();
        done.forEach(marker -> sums.add(RepricingSums.read(marker.sums())));
        return sums.summary(engine, book);
    }

    private void checkAllAreThere(int count, Map<Integer, DoneMarker> shards) {
        List<String> missing = IntStream.range(0, count)
                .filter(index -> !shards.containsKey(index))
                .mapToObj(index -> new Shard(index, count).toString())
                .toList();
        if (!missing.isEmpty()) {
            throw new BatchFailure("%d of %d shards in %s are not finished: %s. Run them."
                    .formatted(missing.size(), count, folder, listed(missing)));
        }
    }

    private String theOne(String what, List<DoneMarker> done, Function<DoneMarker, String> of) {
        Map<String, List<String>> by = done.stream()
                .collect(Collectors.groupingBy(
                        of,
                        LinkedHashMap::new,
                        Collectors.mapping(marker -> marker.task().shard(), Collectors.toList())));
        if (by.size() > 1) {
            throw new BatchFailure("Not all shards in %s were done by one %s:%s%nRun those that are behind again."
                    .formatted(
                            folder,
                            what,
                            by.entrySet().stream()
                                    .map(some -> "%n  %s: %s".formatted(some.getKey(), listed(some.getValue())))
                                    .collect(Collectors.joining())));
        }
        return by.keySet().iterator().next();
    }

    /** From shard to shard each file is read on where the one before left off, from its begin to its end. */
    private void checkTheyReadEverythingOnce(List<DoneMarker> done) {
        Map<String, Read> last = new LinkedHashMap<>();
        for (DoneMarker marker : done) {
            for (Read read : marker.task().read()) {
                Read before = last.put(read.file(), read);
                if (!goesOn(before, read)) {
                    throw changed(read);
                }
            }
        }
        last.values().stream()
                .filter(read -> read.to() != read.size())
                .findFirst()
                .ifPresent(read -> {
                    throw changed(read);
                });
    }

    private static boolean goesOn(@Nullable Read before, Read read) {
        return before == null
                ? read.from() == 0
                : read.from() == before.to()
                        && read.size() == before.size()
                        && read.modified().equals(before.modified());
    }

    private BatchFailure changed(Read read) {
        return new BatchFailure(
                "The shards in %s did not read the same jobs: %s changed between them. Run all shards again; those that still hold are skipped."
                        .formatted(folder, read.file()));
    }

    private static String listed(List<String> names) {
        String first = String.join(", ", names.subList(0, Math.min(NAMED, names.size())));
        return names.size() > NAMED ? first + " and %d more".formatted(names.size() - NAMED) : first;
    }
}
