package org.thalweg.api.batch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * All files of jobs, in the order of their names, as if they were one: shards are even shares of that, cut between
 * lines. A line belongs to the shard its first byte falls to.
 */
record JobFiles(List<JobFile> files) {

    static final String ENDING = ".ndjson";

    JobFiles {
        files = List.copyOf(files);
    }

    /** A file, whatever its name, or every file of a folder that ends in {@value #ENDING}. */
    static JobFiles at(Path path) throws IOException {
        if (!Files.isDirectory(path)) {
            return new JobFiles(List.of(JobFile.at(path)));
        }
        List<JobFile> files = new ArrayList<>();
        try (Stream<Path> found = Files.list(path)) {
            for (Path file : found.filter(file -> file.toString().endsWith(ENDING) && Files.isRegularFile(file))
                    .sorted(Comparator.comparing(file -> file.getFileName().toString()))
                    .toList()) {
                files.add(JobFile.at(file));
            }
        }
        if (files.isEmpty()) {
            throw new BatchFailure("No file in %s ends in %s, so there are no jobs.".formatted(path, ENDING));
        }
        return new JobFiles(files);
    }

    long size() {
        return files.stream().mapToLong(JobFile::size).sum();
    }

    /** What {@code shard} is to do: of each file it reaches into, a stretch of whole lines. */
    List<JobRange> of(Shard shard) throws IOException {
        long begin = shard.begin(size());
        long end = shard.end(size());
        List<JobRange> ranges = new ArrayList<>();
        long before = 0;
        for (JobFile file : files) {
            if (begin < before + file.size() && end > before) {
                long from = file.lineFrom(begin - before);
                long to = file.lineFrom(end - before);
                if (from < to) {
                    ranges.add(new JobRange(file, from, to));
                }
            }
            before += file.size();
        }
        return ranges;
    }
}
