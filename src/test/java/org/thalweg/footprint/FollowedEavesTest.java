package org.thalweg.footprint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.thalweg.footprint.NoRoof.Reason;
import org.thalweg.footprint.RoofOver.Corner;
import org.thalweg.footprint.RoofOver.Slope;
import org.thalweg.footprint.WallSide.Change;
import org.thalweg.units.Pitch;

/**
 * Roofs over outlines with inner corners, of many pitches, with gables, courtyards and sides that change further up, held against
 * eaves followed the slow way ({@link FollowedEaves}), place by place; and what has no roof is refused for what the eaves
 * did. No two sides run the same way, so that hardly ever two things come at once. {@code
 * -Dthalweg.followed=100000} makes up more plans.
 */
class FollowedEavesTest {

    private static final int COUNT = Integer.getInteger("thalweg.followed", 1_400);
    private static final int PLACES = 100;
    /** Metres: both start from the very same corners, and doubles lose far less. */
    private static final double SAME = 1e-6;

    /** What is made up; every side has a pitch of its own. */
    enum Kind {
        STARS(false, false),
        STARS_WITH_GABLES(true, false),
        STARS_THAT_CHANGE(true, true),
        /** Courtyards with corners that point into the building. */
        STARS_ROUND_A_YARD(false, false),
        /** Wings and courtyards that are square but for a few degrees. */
        WINGS(false, false),
        WINGS_WITH_GABLES(true, false),
        WINGS_THAT_CHANGE(true, true);

        private final boolean gables;
        /** Eaves at heights of their own, other pitches and gables further up, gables over a part of a side. */
        private final boolean changes;

        Kind(boolean gables, boolean changes) {
            this.gables = gables;
            this.changes = changes;
        }
    }

    @ParameterizedTest
    @EnumSource
    void roofsAreAsHighAsFollowedEaves(Kind kind) {
        Map<String, Integer> came = new TreeMap<>();
        int looked = 0;
        for (int seed = 0; seed < COUNT / Kind.values().length; seed++) {
            Random random = new Random(seed);
            Footprint plan = madeUp(kind, random);
            List<double[]> places = places(plan, random);
            FollowedEaves.Followed followed = FollowedEaves.over(plan, places);
            Rise rise = Footprints.roofOver(plan);
            if (rise instanceof RoofOver roof) {
                came.merge(followed.closed() ? "roof" : "roof, not followed to its end", 1, Integer::sum);
                assertThat(followed.surrounded()).as("seed %d", seed).isFalse();
                looked += followed.closed() ? same("seed %d".formatted(seed), roof, places, followed.heights()) : 0;
            } else {
                Reason reason = ((NoRoof) rise).reason();
                came.merge(reason.name(), 1, Integer::sum);
                assertThat(reason)
                        .as("seed %d", seed)
                        .isEqualTo(followed.closed() ? Reason.SLOPE_NOT_SIMPLE : Reason.NEVER_CLOSES);
                assertThat(followed.surrounded() || !followed.closed())
                        .as("seed %d", seed)
                        .isTrue();
            }
        }
        System.out.println(kind + ": " + came + ", " + looked + " places");
        int roofs = came.getOrDefault("roof", 0);
        assertThat(roofs).isGreaterThan(COUNT / Kind.values().length * 9 / 10);
        assertThat(looked).isGreaterThan(25 * roofs);
        assertThat(came.getOrDefault("roof, not followed to its end", 0)).isLessThanOrEqualTo(COUNT / 50_000);
    }

    /** How many places were compared. */
    private static int same(String name, RoofOver roof, List<double[]> places, List<Double> followed) {
        int looked = 0;
        for (int i = 0; i < followed.size(); i++) {
            String at = "%s at %f, %f".formatted(name, places.get(i)[0], places.get(i)[1]);
            double height = heightAt(roof, places.get(i)[0], places.get(i)[1]);
            assertThat(Double.isNaN(height)).as(at).isEqualTo(Double.isNaN(followed.get(i)));
            if (!Double.isNaN(height)) {
                looked++;
                assertThat(followed.get(i)).as(at).isCloseTo(height, within(SAME));
            }
        }
        return looked;
    }

    static List<double[]> places(Footprint plan, Random random) {
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

    static Footprint madeUp(Kind kind, Random random) {
        if (kind.name().startsWith("WINGS")) {
            List<List<WallSide>> rings = new ArrayList<>();
            for (List<int[]> ring :
                    Plans.squares(random, 3 + random.nextInt(4), 3 + random.nextInt(4), 3 + random.nextInt(16))) {
                List<double[]> corners = new ArrayList<>();
                for (int[] corner : ring) {
                    corners.add(new double[] {nudged(4 * corner[0], random), nudged(4 * corner[1], random)});
                }
                rings.add(walls(corners, random, kind, rings.isEmpty()));
            }
            return new Footprint(rings.get(0), rings.subList(1, rings.size()));
        }
        if (kind == Kind.STARS_ROUND_A_YARD) {
            // Eight corners or more, 6 m away or more, are nowhere nearer than 3 m.
            List<WallSide> outline = walls(star(random, 8 + random.nextInt(12), 6, 14), random, kind, true);
            return new Footprint(
                    outline, List.of(walls(star(random, 3 + random.nextInt(8), 1, 3), random, kind, false)));
        }
        return Footprint.of(walls(star(random, 3 + random.nextInt(20), 6, 14), random, kind, true));
    }

    private static double nudged(double along, Random random) {
        return along + 0.4 * (random.nextDouble() - 0.5);
    }

    private static List<double[]> star(Random random, int corners, double least, double most) {
        return Plans.star(random, corners, least, most, new Pitch(1, 1)).stream()
                .map(side -> new double[] {side.x(), side.y()})
                .toList();
    }

    /** Walls on a grid eight times as wide as that on which plans are put, so that eighths of a side are on that one. */
    private static List<WallSide> walls(List<double[]> corners, Random random, Kind kind, boolean outline) {
        List<WallSide> walls = new ArrayList<>();
        for (double[] corner : corners) {
            walls.add(WallSide.sloped(onGrid(corner[0]), onGrid(corner[1]), pitch(random)));
        }
        int n = walls.size();
        // The first side is never a gable, so that every roof closes.
        for (int i = 0; i < n && kind.gables; i++) {
            WallSide wall = walls.get(i);
            boolean first = outline && i == 0;
            if (kind.changes) {
                walls.set(i, changing(wall, random, first));
            } else if (!first && random.nextInt(4) == 0) {
                walls.set(i, WallSide.gable(wall.x(), wall.y()));
            }
        }
        return kind.changes ? crossed(walls, random) : walls;
    }

    private static Pitch pitch(Random random) {
        return new Pitch(2 + random.nextInt(16), 12);
    }

    private static WallSide changing(WallSide wall, Random random, boolean first) {
        WallSide side = random.nextInt(4) == 0 ? wall.eaveAt(random.nextInt(8) / 8.0) : wall;
        double height = side.eave();
        for (int change = random.nextInt(3); change > 0; change--) {
            height += (1 + random.nextInt(8)) / 8.0;
            boolean gable = !first && change == 1 && random.nextInt(3) == 0;
            side = side.then(new Change(height, gable ? Optional.empty() : Optional.of(pitch(random))));
        }
        return !first && random.nextInt(4) == 0 ? WallSide.gable(wall.x(), wall.y()) : side;
    }

    /** Some sides that do not change have a gable over a part of them. */
    private static List<WallSide> crossed(List<WallSide> walls, Random random) {
        List<WallSide> crossed = new ArrayList<>();
        for (int i = 0; i < walls.size(); i++) {
            WallSide wall = walls.get(i);
            WallSide end = walls.get((i + 1) % walls.size());
            crossed.add(wall);
            if (wall.pitch().isPresent() && wall.above().isEmpty() && random.nextBoolean()) {
                double from = (1 + random.nextInt(3)) / 8.0;
                double to = (5 + random.nextInt(3)) / 8.0;
                double dx = end.x() - wall.x();
                double dy = end.y() - wall.y();
                crossed.add(WallSide.gable(wall.x() + from * dx, wall.y() + from * dy)
                        .crossing(pitch(random)));
                crossed.add(wall.from(wall.x() + to * dx, wall.y() + to * dy));
            }
        }
        return crossed;
    }

    /** By the plane through the ring of the slope that covers a place; not a number where none does. */
    static double heightAt(RoofOver roof, double x, double y) {
        for (Slope slope : roof.slopes()) {
            if (Plans.covers(roof, slope, x, y)) {
                Corner first = roof.corners().get(slope.corners().get(0));
                double[] normal = new double[3];
                for (int i = 1; i + 1 < slope.corners().size(); i++) {
                    Corner b = roof.corners().get(slope.corners().get(i));
                    Corner c = roof.corners().get(slope.corners().get(i + 1));
                    double[] p = {b.x() - first.x(), b.y() - first.y(), b.height() - first.height()};
                    double[] q = {c.x() - first.x(), c.y() - first.y(), c.height() - first.height()};
                    normal[0] += p[1] * q[2] - p[2] * q[1];
                    normal[1] += p[2] * q[0] - p[0] * q[2];
                    normal[2] += p[0] * q[1] - p[1] * q[0];
                }
                return first.height() - (normal[0] * (x - first.x()) + normal[1] * (y - first.y())) / normal[2];
            }
        }
        return Double.NaN;
    }

    private static double onGrid(double along) {
        return Math.rint(along * WallPlan.STEPS / 8) * 8 / WallPlan.STEPS;
    }
}
