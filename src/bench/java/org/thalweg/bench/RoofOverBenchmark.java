package org.thalweg.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.thalweg.footprint.Footprint;
import org.thalweg.footprint.Footprints;
import org.thalweg.footprint.Rise;
import org.thalweg.footprint.RoofOver;
import org.thalweg.footprint.WallSide;
import org.thalweg.units.Pitch;

/** The roof over made-up outlines of 10 to 2,000 corners, checked: how long one takes and how that grows. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class RoofOverBenchmark {

    private static final Pitch ONE = new Pitch(6, 12);

    /** What outline. */
    public enum Shape {
        /** Corners seen one after the other from the middle, inner and outer ones in any order; one pitch. */
        STAR,
        /** The same, every side with a pitch of its own. */
        STAR_OF_PITCHES,
        /** A row of houses of many depths: walls along x and y, whole eighths of a metre, one pitch. */
        ROW,
        /** Teeth that are all alike: everything happens at a few instants. */
        COMB
    }

    @Param
    public Shape shape = Shape.STAR;

    @Param({"10", "50", "100", "500", "1000", "2000"})
    public int corners;

    private Footprint plan = Footprint.of(List.of());

    @Setup
    public void makeUp() {
        Random random = new Random(corners);
        List<WallSide> outline =
                switch (shape) {
                    case STAR, STAR_OF_PITCHES -> star(random);
                    case ROW -> row(random);
                    case COMB -> comb();
                };
        plan = Footprint.of(outline);
        if (!(Footprints.roofOver(plan) instanceof RoofOver)) {
            throw new IllegalStateException(Footprints.roofOver(plan).toString());
        }
    }

    @Benchmark
    public Rise roofOver() {
        return Footprints.roofOver(plan);
    }

    private List<WallSide> star(Random random) {
        List<WallSide> ring = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * (i + 0.7 * random.nextDouble()) / corners;
            double radius = 30 + 20 * random.nextDouble();
            Pitch pitch = shape == Shape.STAR ? ONE : new Pitch(3 + random.nextInt(12), 12);
            ring.add(WallSide.sloped(radius * Math.cos(angle), radius * Math.sin(angle), pitch));
        }
        return ring;
    }

    /** Two corners along the front and two behind every house. */
    private List<WallSide> row(Random random) {
        List<WallSide> ring = new ArrayList<>();
        ring.add(WallSide.sloped(0, 0, ONE));
        int houses = corners / 2 - 1;
        double[] ends = new double[houses + 1];
        double[] depths = new double[houses];
        for (int i = 0; i < houses; i++) {
            ends[i + 1] = ends[i] + (2 + random.nextInt(4)) / 8.0;
            do {
                depths[i] = (40 + random.nextInt(80)) / 8.0;
            } while (i > 0 && depths[i] == depths[i - 1]);
        }
        ring.add(WallSide.sloped(ends[houses], 0, ONE));
        for (int i = houses - 1; i >= 0; i--) {
            ring.add(WallSide.sloped(ends[i + 1], depths[i], ONE));
            ring.add(WallSide.sloped(ends[i], depths[i], ONE));
        }
        return ring;
    }

    /** Four corners a tooth. */
    private List<WallSide> comb() {
        List<WallSide> ring = new ArrayList<>();
        int teeth = corners / 4;
        ring.add(WallSide.sloped(0, 0, ONE));
        ring.add(WallSide.sloped(teeth - 0.5, 0, ONE));
        for (int i = teeth - 1; i >= 0; i--) {
            ring.add(WallSide.sloped(i + 0.5, 9, ONE));
            ring.add(WallSide.sloped(i, 9, ONE));
            if (i > 0) {
                ring.add(WallSide.sloped(i, 4, ONE));
                ring.add(WallSide.sloped(i - 0.5, 4, ONE));
            }
        }
        return ring;
    }
}
