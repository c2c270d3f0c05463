package org.thalweg.api.batch;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.function.LongSupplier;
import org.thalweg.api.BoundedLines;
import org.thalweg.api.Limits;
import org.thalweg.api.Repricer;
import org.thalweg.api.RepricingBook;
import org.thalweg.api.RepricingSums;
import org.thalweg.api.Repricings;
import org.thalweg.api.batch.DoneMarker.Answers;
import org.thalweg.api.batch.DoneMarker.Read;
import org.thalweg.api.batch.DoneMarker.Task;
import org.thalweg.api.json.Sha256;

/**
 * Prices one shard of the jobs. Its answers come into a file that appears when it is whole, then its marker; whatever is
 * found of both, after any end of an earlier run, running again leads to the same bytes.
 */
final class RepricingRun {

    private static final int BUFFER = 1 << 16;
    private static final HexFormat HEX = HexFormat.of();

    private final Repricings repricings;
    private final RepricingBook book;
    private final List<JobRange> ranges;
    private final Shard shard;
    private final Path folder;
    private final Path answers;
    private final Path marker;
    private final PrintStream err;
    private final LongSupplier nanos;

    RepricingRun(
            Repricings repricings,
            RepricingBook book,
            JobFiles jobs,
            Shard shard,
            Path folder,
            PrintStream err,
            LongSupplier nanos)
            throws IOException {
        this.repricings = repricings;
        this.book = book;
        this.ranges = jobs.of(shard);
        this.shard = shard;
        this.folder = folder;
        this.answers = folder.resolve(shard.file("answers", "ndjson"));
        this.marker = DoneMarker.of(shard, folder);
        this.err = err;
        this.nanos = nanos;
    }

    /** Does the shard, or says that it is done; {@code verify} reads what is done again before it is believed. */
    void run(boolean verify, Progress.Manner manner) throws IOException {
        if (!Files.isDirectory(folder)) {
            Files.createDirectories(folder);
        }
        WholeFile.removeBegun(answers);
        WholeFile.removeBegun(marker);
        Task task = new Task(
                repricings.engine(),
                book.digest(),
                shard.toString(),
                ranges.stream().map(Read::of).toList());
        DoneMarker done = DoneMarker.read(marker);
        if (done != null && done.task().equals(task) && done.answersAreIn(folder) && (!verify || stillHolds(done))) {
            err.printf(Locale.ROOT, "Shard %s was done before.%n", shard);
            return;
        }
        // From here on no marker may speak for answers that are about to be others.
        Files.deleteIfExists(marker);
        Progress progress = new Progress(
                err, manner, nanos, ranges.stream().mapToLong(JobRange::size).sum());
        RepricingSums sums = answer(task, progress);
        err.printf(
                Locale.ROOT,
                "Shard %s: %,d jobs in %.1f s, %,d of them without a price.%n",
                shard,
                sums.jobs(),
                progress.seconds(),
                sums.failed());
    }

    private RepricingSums answer(Task task, Progress progress) throws IOException {
        MessageDigest read = Sha256.begin();
        MessageDigest written = Sha256.begin();
        RepricingSums sums = new RepricingSums();
        try (WholeFile whole = WholeFile.begin(answers)) {
            try (OutputStream out = new DigestOutputStream(new BufferedOutputStream(whole.out(), BUFFER), written)) {
                Repricer repricer = repricings.repricer(book, "offset");
                long before = 0;
                for (JobRange range : ranges) {
                    answer(range, before, repricer, read, sums, progress, out);
                    before += range.size();
                }
                out.flush();
                whole.publish();
            }
        } finally {
            progress.end();
        }
        DoneMarker.of(
                        task,
                        HEX.formatHex(read.digest()),
                        new Answers(
                                answers.getFileName().toString(), Files.size(answers), HEX.formatHex(written.digest())),
                        sums)
                .write(marker);
        return sums;
    }

    private static void answer(
            JobRange range,
            long before,
            Repricer repricer,
            MessageDigest read,
            RepricingSums sums,
            Progress progress,
            OutputStream out)
            throws IOException {
        try (InputStream in = new DigestInputStream(range.open(), read)) {
            BoundedLines lines = new BoundedLines(in, Limits.REPRICING_LINE_BYTES);
            while (lines.next()) {
                long offset = range.from() + lines.offset();
                repricer.answer(lines, offset, sums, out);
                progress.at(sums.jobs(), before + lines.offset());
            }
        }
        range.file().checkUnchanged();
    }

    private boolean stillHolds(DoneMarker done) throws IOException {
        MessageDigest read = Sha256.begin();
        for (JobRange range : ranges) {
            digest(range.open(), read);
        }
        MessageDigest written = Sha256.begin();
        digest(Files.newInputStream(answers), written);
        return HEX.formatHex(read.digest()).equals(done.input())
                && HEX.formatHex(written.digest()).equals(done.answers().sha256());
    }

    private static void digest(InputStream from, MessageDigest into) throws IOException {
        try (InputStream in = new DigestInputStream(from, into)) {
            in.transferTo(OutputStream.nullOutputStream());
        }
    }
}
