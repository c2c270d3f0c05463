package org.thalweg.api.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Two workers take shards in turn, each a process of the packaged application, and are killed at random moments. What is
 * left at any of them is nothing or a whole file, and in the end there are the bytes of a night without kills.
 *
 * <p>How much is done is told by system properties; DEVELOPERS.md has the line for a million jobs. Only with
 * {@code thalweg.slower} is the time held to so many times that without kills: with few shards one kill is a good part of
 * the work.
 */
class KilledIT {

    private static final int JOBS = Integer.getInteger("thalweg.jobs", 20_000);
    private static final int SHARDS = Integer.getInteger("thalweg.shards", 8);
    private static final int KILLS = Integer.getInteger("thalweg.kills", 5);
    private static final double SLOWER = Double.parseDouble(System.getProperty("thalweg.slower", "Infinity"));
    private static final long SEED = Long.getLong("thalweg.seed", 1);
    private static final int WORKERS = 2;
    private static final int FILES = 3;

    @TempDir
    Path folder;

    @Test
    void killsAtAnyMomentChangeNoByte() throws Exception {
        Night night = Night.of(
                folder,
                IntStream.range(0, FILES)
                        .map(i -> JOBS * (i + 1) / FILES - JOBS * i / FILES)
                        .toArray());

        Shift undisturbed = new Shift(night, night.out("undisturbed"));
        double seconds = undisturbed.work(List.of());
        Random random = new Random(SEED);
        // In the first nine tenths, so that none comes too late to hit anybody.
        List<Double> moments =
                random.doubles(KILLS, 0, 0.9 * seconds).sorted().boxed().toList();
        Shift disturbed = new Shift(night, night.out("disturbed"));
        double secondsWithKills = disturbed.work(moments);

        System.out.printf(
                "%,d jobs in %d shards: %.1f s; with %d kills %.1f s, %.2f times as long%n",
                JOBS, SHARDS, seconds, disturbed.kills.get(), secondsWithKills, secondsWithKills / seconds);
        assertThat(disturbed.kills).hasValue(KILLS);
        assertThat(Night.files(disturbed.out)).hasSize(2 * SHARDS);
        for (Path file : Night.files(undisturbed.out)) {
            assertThat(disturbed.out.resolve(file.getFileName())).hasSameBinaryContentAs(file);
        }
        assertThat(merged(disturbed.out)).isEqualTo(merged(undisturbed.out)).contains("\"jobs\":%d,".formatted(JOBS));
        assertThat(secondsWithKills).isLessThanOrEqualTo(SLOWER * seconds);
    }

    private String merged(Path out) throws IOException, InterruptedException {
        File said = folder.resolve("merge.log").toFile();
        int code = Packaged.ended(Packaged.start(said, "merge", "--out", out));
        assertThat(code).as(Files.readString(said.toPath())).isZero();
        return Files.readString(out.resolve("summary.json"));
    }

    /** All shards of a night, until every one of them is done. */
    private final class Shift {

        final Night night;
        final Path out;
        final AtomicInteger kills = new AtomicInteger();
        private final ConcurrentLinkedQueue<Integer> open = new ConcurrentLinkedQueue<>();
        private final ConcurrentLinkedQueue<Process> running = new ConcurrentLinkedQueue<>();
        private final AtomicInteger done = new AtomicInteger();

        Shift(Night night, Path out) {
            this.night = night;
            this.out = out;
            IntStream.range(0, SHARDS).forEach(open::add);
        }

        /** Works, with a kill at each of {@code moments}, and says how many seconds it took. */
        double work(List<Double> moments) throws Exception {
            long begun = System.nanoTime();
            ExecutorService hands = Executors.newFixedThreadPool(WORKERS + 1);
            try {
                List<Future<?>> all = new ArrayList<>();
                all.add(hands.submit((Callable<?>) () -> kill(begun, moments)));
                for (int worker = 0; worker < WORKERS; worker++) {
                    File said =
                            folder.resolve("worker-%d.log".formatted(worker)).toFile();
                    all.add(hands.submit((Callable<?>) () -> work(said)));
                }
                for (Future<?> each : all) {
                    each.get();
                }
            } finally {
                hands.shutdownNow();
            }
            return (System.nanoTime() - begun) / 1e9;
        }

        /** A shard that ends badly goes back to the end of the queue; only a kill is an excuse for it. */
        private boolean work(File said) throws IOException, InterruptedException {
            while (done.get() < SHARDS) {
                Integer shard = open.poll();
                if (shard == null) {
                    TimeUnit.MILLISECONDS.sleep(20);
                    continue;
                }
                Process process = Packaged.start(
                        said,
                        "reprice",
                        "--book",
                        night.book,
                        "--jobs",
                        night.jobs,
                        "--out",
                        out,
                        "--shard",
                        shard + "/" + SHARDS);
                running.add(process);
                int code = Packaged.ended(process);
                running.remove(process);
                assertThat(code).as(Files.readString(said.toPath())).isIn(0, 128 + 9);
                if (code == 0) {
                    done.incrementAndGet();
                } else {
                    open.add(shard);
                }
                assertNothingIsHalf(shard);
            }
            return true;
        }

        /**
         * A file of the shard that has its name is whole: it ends with its line, and a marker has its answers. Whoever was killed at
         * once has not even made the folder.
         */
        private void assertNothingIsHalf(int shard) throws IOException {
            if (!Files.isDirectory(out)) {
                return;
            }
            for (Path file : Night.files(out)) {
                String name = file.getFileName().toString();
                if (!name.contains("-%05d-of-".formatted(shard))) {
                    continue;
                }
                if (name.endsWith(".json")) {
                    DoneMarker marker = DoneMarker.read(file);
                    assertThat(marker != null && marker.answersAreIn(out))
                            .as(name)
                            .isTrue();
                } else if (name.endsWith(".ndjson") && !out.endsWith("undisturbed")) {
                    assertThat(file)
                            .hasSameBinaryContentAs(night.out("undisturbed").resolve(name));
                }
            }
        }

        private boolean kill(long begun, List<Double> moments) throws InterruptedException {
            Random random = new Random(SEED);
            for (double moment : moments) {
                long left = begun + (long) (moment * 1e9) - System.nanoTime();
                TimeUnit.NANOSECONDS.sleep(Math.max(0, left));
                while (done.get() < SHARDS && !killOne(random)) {
                    TimeUnit.MILLISECONDS.sleep(5);
                }
            }
            return true;
        }

        private boolean killOne(Random random) throws InterruptedException {
            List<Process> alive = running.stream().filter(Process::isAlive).toList();
            if (alive.isEmpty()) {
                return false;
            }
            Process process = alive.get(random.nextInt(alive.size()));
            process.destroyForcibly();
            if (process.waitFor() == 0) {
                return false; // it was done first
            }
            kills.incrementAndGet();
            return true;
        }
    }
}
