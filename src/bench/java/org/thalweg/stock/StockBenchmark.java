package org.thalweg.stock;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Cutting trade-size jobs, and sequencing mitred panels. {@code tradeJobs} cuts the whole frozen corpus once an iteration and
 * prints how much of it was proven and how long single jobs took.
 */
@State(Scope.Benchmark)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
public class StockBenchmark {

    private static final int JOBS = 10_000;

    /** A job's budget; about 50 ms. */
    private static final long STEPS = 25_000_000;

    private static final long RACK_STEPS = 100_000_000;

    private final List<CuttingProblem> jobs = TradeJobs.frozen(JOBS);
    private final List<CuttingCase> racks = TradeJobs.racks(100, Budget.steps(RACK_STEPS));
    private final List<MitredPanel> panels = panels();
    private final Score trade = new Score("tradeJobs", JOBS);
    private final Score several = new Score("severalLengths", 100);

    /** 5,000 panels with offsets up to 1,000 steps either way. */
    private static List<MitredPanel> panels() {
        Random random = new Random(5);
        return IntStream.range(0, 5_000)
                .mapToObj(i -> new MitredPanel(
                        "p" + i, 2_000 + random.nextInt(8_000), random.nextInt(2_001) - 1_000, random.nextInt(2_001)
                                - 1_000))
                .toList();
    }

    @Benchmark
    @BenchmarkMode(Mode.SingleShotTime)
    @Warmup(iterations = 1)
    @Measurement(iterations = 1)
    public void tradeJobs() {
        for (CuttingProblem job : jobs) {
            long start = System.nanoTime();
            Incumbent best = CuttingSolver.solve(job, new Work(Budget.steps(STEPS)));
            trade.add(System.nanoTime() - start, best.cost(), best.bound());
        }
    }

    /** Four lengths with free costs, half of the jobs with five sorts of off-cuts; 30 lengths of piece, about 200 pieces. */
    @Benchmark
    @BenchmarkMode(Mode.SingleShotTime)
    @Warmup(iterations = 1)
    @Measurement(iterations = 1)
    public void severalLengths() {
        for (CuttingCase rack : racks) {
            long start = System.nanoTime();
            CuttingPlan plan = StockCuts.cut(rack);
            several.add(System.nanoTime() - start, plan.cost(), plan.lowerBound());
        }
    }

    @Benchmark
    @BenchmarkMode(Mode.AverageTime)
    @Warmup(iterations = 3, time = 2)
    @Measurement(iterations = 5, time = 2)
    public CoilRun coilTurned() {
        return EndMatching.run(panels);
    }

    @Benchmark
    @BenchmarkMode(Mode.AverageTime)
    @Warmup(iterations = 3, time = 2)
    @Measurement(iterations = 5, time = 2)
    public CoilRun coilDirected() {
        return DirectedRun.run(panels);
    }

    @TearDown(Level.Iteration)
    public void print() {
        trade.print();
        several.print();
    }

    /** How one pass through the jobs went. */
    private static final class Score {

        private final String name;
        private final long[] nanos;
        private int count;
        private int proven;
        private int inTime;
        private int withinThousandth;
        private long worstGap;
        private double worstShare;

        Score(String name, int size) {
            this.name = name;
            this.nanos = new long[size];
        }

        void add(long took, long cost, long bound) {
            nanos[count++] = took;
            proven += cost == bound ? 1 : 0;
            inTime += cost == bound && took <= 50_000_000 ? 1 : 0;
            withinThousandth += (cost - bound) * 1000 <= cost ? 1 : 0;
            worstGap = Math.max(worstGap, cost - bound);
            worstShare = Math.max(worstShare, (double) (cost - bound) / cost);
        }

        void print() {
            if (count == 0) {
                return;
            }
            Arrays.sort(nanos);
            System.out.printf(
                    "%n%s: %d jobs, %d proven, %d of them within 50 ms, %d within a thousandth; worst gap %d (%.3f %%);"
                            + " median %.3f ms, 99 %% %.1f ms, 99.9 %% %.1f ms, slowest %.1f ms%n",
                    name,
                    count,
                    proven,
                    inTime,
                    withinThousandth,
                    worstGap,
                    100 * worstShare,
                    nanos[count / 2] / 1e6,
                    nanos[count * 99 / 100] / 1e6,
                    nanos[count * 999 / 1000] / 1e6,
                    nanos[count - 1] / 1e6);
            count = 0;
            proven = 0;
            inTime = 0;
            withinThousandth = 0;
            worstGap = 0;
            worstShare = 0;
        }
    }
}
