package org.thalweg.footprint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.thalweg.units.Pitch;

/**
 * Walls along x and y, each way they face with one pitch: a roof known by heart, however much happens at once. At height h the
 * eaves have come in from the west by h over the western pitch, and so on; a corner stays a corner. So what is covered by then is
 * every place whose rectangle, reaching so far in each direction, holds a piece of wall, and a place is as high as its
 * rectangle has to grow to touch the nearest wall. No eave, no event, no plane.
 */
class NearestWallTest {

    private static final double SAME = 1e-9;

    private enum Widths {
        /** Whole metres: as much at once as can be. */
        WHOLE,
        /** Every row and column of squares as wide as chance has it: eighths of a metre. */
        EIGHTHS,
        /** The same on the finest grid: much almost at once. */
        FINE
    }

    @ParameterizedTest
    @EnumSource
    void squareRoofsAreAsHighAsTheNearestWall(Widths widths) {
        int looked = 0;
        for (int seed = 0; seed < 400; seed++) {
            Random random = new Random(seed);
            // West, east, south and north of the roof that rises from them.
            Pitch[] pitches = new Pitch[4];
            for (int i = 0; i < 4; i++) {
                pitches[i] = seed % 3 == 0 && i > 0 ? pitches[0] : new Pitch(2 + random.nextInt(16), 12);
            }
            Footprint plan = madeUp(random, widths, pitches);
            RoofOver roof = Plans.roof(plan);
            for (int i = 0; i < 200; i++) {
                double x = 30 * random.nextDouble();
                double y = 30 * random.nextDouble();
                double height = Plans.heightAt(plan, roof, x, y);
                if (!Double.isNaN(height)) {
                    looked++;
                    assertThat(height)
                            .as("seed %d at %f, %f", seed, x, y)
                            .isCloseTo(nearest(plan, pitches, x, y), within(SAME));
                }
            }
        }
        System.out.println(widths + ": " + looked + " places");
        assertThat(looked).isGreaterThan(400 * 20);
    }

    private static Footprint madeUp(Random random, Widths widths, Pitch[] pitches) {
        double[] along = lines(random, widths);
        double[] up = lines(random, widths);
        List<List<WallSide>> rings = new ArrayList<>();
        for (List<int[]> ring :
                Plans.squares(random, 3 + random.nextInt(6), 3 + random.nextInt(6), 4 + random.nextInt(36))) {
            List<WallSide> walls = new ArrayList<>();
            for (int i = 0; i < ring.size(); i++) {
                int[] from = ring.get(i);
                int[] to = ring.get((i + 1) % ring.size());
                // The roof is to the left of a wall.
                int facing = from[0] == to[0] ? (to[1] < from[1] ? 0 : 1) : to[0] > from[0] ? 2 : 3;
                walls.add(WallSide.sloped(along[from[0]], up[from[1]], pitches[facing]));
            }
            rings.add(walls);
        }
        return new Footprint(rings.get(0), rings.subList(1, rings.size()));
    }

    private static double[] lines(Random random, Widths widths) {
        double[] lines = new double[12];
        for (int i = 1; i < lines.length; i++) {
            double width =
                    switch (widths) {
                        case WHOLE -> 3;
                        case EIGHTHS -> (8 + random.nextInt(32)) / 8.0;
                        case FINE -> 3 + (double) random.nextInt(9) / WallPlan.STEPS;
                    };
            lines[i] = lines[i - 1] + width;
        }
        return lines;
    }

    /** How high the eaves are when the first of them comes to a place. */
    private static double nearest(Footprint plan, Pitch[] pitches, double x, double y) {
        double least = Double.MAX_VALUE;
        for (List<WallSide> ring : plan.rings()) {
            for (int i = 0; i < ring.size(); i++) {
                WallSide from = ring.get(i);
                WallSide to = ring.get((i + 1) % ring.size());
                double across = x - Math.min(Math.max(x, Math.min(from.x(), to.x())), Math.max(from.x(), to.x()));
                double up = y - Math.min(Math.max(y, Math.min(from.y(), to.y())), Math.max(from.y(), to.y()));
                double byX = Math.abs(across) * pitches[across > 0 ? 0 : 1].tan();
                double byY = Math.abs(up) * pitches[up > 0 ? 2 : 3].tan();
                least = Math.min(least, Math.max(byX, byY));
            }
        }
        return least;
    }
}
