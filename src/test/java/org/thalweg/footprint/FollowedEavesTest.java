package org.thalweg.footprint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.thalweg.footprint.NoRoof.Reason;
import org.thalweg.units.Pitch;

/**
 * Roofs over outlines with inner corners, of many pitches, with gables and courtyards, held against eaves followed the slow way
 * ({@link FollowedEaves}), place by place. No two sides run the same way, so that no two things come at once. {@code
 * -Dthalweg.followed=100000} makes up more plans.
 */
class FollowedEavesTest {

    private static final int COUNT = Integer.getInteger("thalweg.followed", 2_000);
    private static final int PLACES = 200;
    /** Metres: both start from the very same corners, and doubles lose far less. */
    private static final double SAME = 1e-6;

    /** What is made up; every side has a pitch of its own. */
    private enum Kind {
        STARS,
        STARS_WITH_GABLES,
        /** Courtyards with corners that point into the building. */
        STARS_ROUND_A_YARD,
        /** Wings and courtyards that are square but for a few degrees. */
        WINGS,
        WINGS_WITH_GABLES
    }

    @ParameterizedTest
    @EnumSource
    void roofsAreAsHighAsFollowedEaves(Kind kind) {
        int tooClose = 0;
        int surrounded = 0;
        int roofs = 0;
        int gables = 0;
        int looked = 0;
        for (int seed = 0; seed < COUNT / Kind.values().length; seed++) {
            Random random = new Random(seed);
            Footprint plan = madeUp(kind, random);
            gables += plan.outline().stream()
                    .filter(side -> side.pitch().isEmpty())
                    .count();
            List<double[]> places = places(plan, random);
            FollowedEaves.Followed followed = FollowedEaves.over(plan, places);
            Rise rise = Footprints.roofOver(plan);
            if (!followed.closed()) {
                tooClose++;
                continue;
            }
            if (followed.surrounded()) {
                surrounded++;
                assertThat(((NoRoof) rise).reason()).as("seed %d", seed).isEqualTo(Reason.SLOPE_NOT_SIMPLE);
                continue;
            }
            assertThat(rise).as("seed %d", seed).isInstanceOf(RoofOver.class);
            roofs++;
            for (int i = 0; i < places.size(); i++) {
                double[] place = places.get(i);
                double height = Plans.heightAt(plan, (RoofOver) rise, place[0], place[1]);
                assertThat(Double.isNaN(height))
                        .as("seed %d at %f, %f", seed, place[0], place[1])
                        .isEqualTo(Double.isNaN(followed.heights()[i]));
                if (!Double.isNaN(height)) {
                    looked++;
                    assertThat(followed.heights()[i])
                            .as("seed %d at %f, %f", seed, place[0], place[1])
                            .isCloseTo(height, within(SAME));
                }
            }
        }
        System.out.printf(
                "%s: %d roofs, %d places, %d gables; %d slopes not simple; %d not followed to their end%n",
                kind, roofs, looked, gables, surrounded, tooClose);
        assertThat(gables > roofs / 2).isEqualTo(kind == Kind.STARS_WITH_GABLES || kind == Kind.WINGS_WITH_GABLES);
        assertThat(looked).isGreaterThan(50 * roofs);
        assertThat(surrounded).isLessThan(COUNT / 100);
        assertThat(tooClose).isLessThanOrEqualTo(COUNT / 50_000);
    }

    private static List<double[]> places(Footprint plan, Random random) {
        double least = plan.outline().stream().mapToDouble(WallSide::x).min().orElseThrow();
        double most = plan.outline().stream().mapToDouble(WallSide::x).max().orElseThrow();
        double low = plan.outline().stream().mapToDouble(WallSide::y).min().orElseThrow();
        double high = plan.outline().stream().mapToDouble(WallSide::y).max().orElseThrow();
        return IntStream.range(0, PLACES)
                .mapToObj(i -> new double[] {
                    least + (most - least) * random.nextDouble(), low + (high - low) * random.nextDouble()
                })
                .toList();
    }

    private static Footprint madeUp(Kind kind, Random random) {
        boolean gables = kind == Kind.STARS_WITH_GABLES || kind == Kind.WINGS_WITH_GABLES;
        if (kind == Kind.WINGS || kind == Kind.WINGS_WITH_GABLES) {
            List<List<WallSide>> rings = new ArrayList<>();
            for (List<int[]> ring :
                    Plans.squares(random, 3 + random.nextInt(4), 3 + random.nextInt(4), 3 + random.nextInt(16))) {
                List<double[]> corners = new ArrayList<>();
                for (int[] corner : ring) {
                    corners.add(new double[] {nudged(4 * corner[0], random), nudged(4 * corner[1], random)});
                }
                rings.add(walls(corners, random, gables));
            }
            return new Footprint(rings.get(0), rings.subList(1, rings.size()));
        }
        if (kind == Kind.STARS_ROUND_A_YARD) {
            // Eight corners or more, 6 m away or more, are nowhere nearer than 3 m.
            List<WallSide> outline = walls(star(random, 8 + random.nextInt(12), 6, 14), random, false);
            return new Footprint(outline, List.of(walls(star(random, 3 + random.nextInt(8), 1, 3), random, false)));
        }
        return Footprint.of(walls(star(random, 3 + random.nextInt(20), 6, 14), random, gables));
    }

    private static double nudged(double along, Random random) {
        return along + 0.4 * (random.nextDouble() - 0.5);
    }

    private static List<double[]> star(Random random, int corners, double least, double most) {
        return Plans.star(random, corners, least, most, new Pitch(1, 1)).stream()
                .map(side -> new double[] {side.x(), side.y()})
                .toList();
    }

    /** Walls on the very grid that plans are put on; a gable between outer corners only, and not after another. */
    private static List<WallSide> walls(List<double[]> corners, Random random, boolean gables) {
        List<WallSide> walls = new ArrayList<>();
        for (double[] corner : corners) {
            walls.add(WallSide.sloped(onGrid(corner[0]), onGrid(corner[1]), new Pitch(2 + random.nextInt(16), 12)));
        }
        int n = walls.size();
        for (int i = 0; i < n && gables; i++) {
            WallSide wall = walls.get(i);
            boolean outer = turnsLeft(walls, i) && turnsLeft(walls, (i + 1) % n);
            boolean alone = walls.get((i + n - 1) % n).pitch().isPresent()
                    && walls.get((i + 1) % n).pitch().isPresent();
            if (outer && alone && random.nextInt(3) == 0) {
                walls.set(i, WallSide.gable(wall.x(), wall.y()));
            }
        }
        return walls;
    }

    private static double onGrid(double along) {
        return Math.rint(along * WallPlan.STEPS) / WallPlan.STEPS;
    }

    private static boolean turnsLeft(List<WallSide> ring, int corner) {
        int n = ring.size();
        WallSide next = ring.get((corner + 1) % n);
        return Plans.inward(ring, (corner + n - 1) % n, next.x(), next.y()) > 0;
    }
}
