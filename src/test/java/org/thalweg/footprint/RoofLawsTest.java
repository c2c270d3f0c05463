package org.thalweg.footprint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.thalweg.units.Pitch;

/** What may be done to a plan without changing its roof: looked at in many places, because short seams may come and go. */
class RoofLawsTest {

    /** A micrometre of grid, and slopes that turn with it. */
    private static final double SAME = 1e-4;

    record Plan(String name, List<WallSide> ring) {
        @Override
        public String toString() {
            return name;
        }
    }

    static List<Plan> plans() {
        List<Plan> plans = new ArrayList<>();
        plans.add(new Plan("L", Plans.ring(0, 0, 10, 0, 10, 4, 4, 4, 4, 9, 0, 9)));
        plans.add(new Plan("T", Plans.ring(0, 0, 12, 0, 12, 6, 8, 6, 8, 11, 4, 11, 4, 6, 0, 6)));
        plans.add(new Plan(
                "T of pitches",
                Plans.pitched(
                        Plans.ring(0, 0, 12, 0, 12, 6, 8, 6, 8, 11, 4, 11, 4, 6, 0, 6),
                        "6:12",
                        "gable",
                        "7:12",
                        "9:12",
                        "gable",
                        "8:12",
                        "7:12",
                        "4:12")));
        plans.add(new Plan(
                "plus", Plans.ring(4, 0, 8, 0, 8, 4, 12, 4, 12, 8, 8, 8, 8, 12, 4, 12, 4, 8, 0, 8, 0, 4, 4, 4)));
        for (int seed = 0; seed < 12; seed++) {
            Random random = new Random(seed);
            List<WallSide> star = Plans.star(random, 8 + seed, 4, 9, new Pitch(6, 12));
            plans.add(new Plan("star " + seed, star));
            plans.add(new Plan(
                    "star of pitches " + seed,
                    star.stream()
                            .map(side -> WallSide.sloped(side.x(), side.y(), new Pitch(3 + random.nextInt(10), 12)))
                            .toList()));
        }
        return plans;
    }

    @ParameterizedTest
    @MethodSource("plans")
    void turned(Plan plan) {
        double cos = Math.cos(0.7);
        double sin = Math.sin(0.7);
        same(plan, corner -> new double[] {cos * corner[0] - sin * corner[1], sin * corner[0] + cos * corner[1]});
    }

    @ParameterizedTest
    @MethodSource("plans")
    void mirrored(Plan plan) {
        same(plan, corner -> new double[] {-corner[0], corner[1]});
    }

    @ParameterizedTest
    @MethodSource("plans")
    void movedFar(Plan plan) {
        same(plan, corner -> new double[] {corner[0] + 1e6, corner[1] - 1.6e6});
    }

    @ParameterizedTest
    @MethodSource("plans")
    void readTheOtherWayRound(Plan plan) {
        List<WallSide> ring = plan.ring();
        int n = ring.size();
        // A side starts at what was its end.
        List<WallSide> reversed = IntStream.range(0, n)
                .mapToObj(i -> WallSide.of(
                        ring.get(n - 1 - i).x(),
                        ring.get(n - 1 - i).y(),
                        ring.get((2 * n - 2 - i) % n).pitch()))
                .toList();
        same(plan, reversed, corner -> corner);
    }

    @ParameterizedTest
    @MethodSource("plans")
    void startedElsewhere(Plan plan) {
        List<WallSide> ring = new ArrayList<>(plan.ring());
        Collections.rotate(ring, 3);
        RoofOver one = Plans.roof(plan.ring());
        RoofOver other = Plans.roof(ring);
        sameCorners(other, one);
        assertThat(other.seams()).hasSameSizeAs(one.seams());
    }

    @ParameterizedTest
    @MethodSource("plans")
    void withACornerInLine(Plan plan) {
        for (int side = 0; side < plan.ring().size(); side++) {
            WallSide start = plan.ring().get(side);
            WallSide end = plan.ring().get((side + 1) % plan.ring().size());
            List<WallSide> ring = new ArrayList<>(plan.ring());
            ring.add(
                    side + 1,
                    WallSide.of(
                            start.x() + 0.3 * (end.x() - start.x()),
                            start.y() + 0.3 * (end.y() - start.y()),
                            start.pitch()));
            sameCorners(Plans.roof(ring), Plans.roof(plan.ring()));
        }
    }

    /** The same but for what doubles lose. */
    private static void sameCorners(RoofOver one, RoofOver other) {
        assertThat(one.corners()).hasSameSizeAs(other.corners());
        assertThat(one.corners()).allSatisfy(corner -> assertThat(other.corners())
                .anyMatch(there -> Math.hypot(corner.x() - there.x(), corner.y() - there.y()) < 1e-9
                        && Math.abs(corner.height() - there.height()) < 1e-9));
    }

    private static void same(Plan plan, UnaryOperator<double[]> change) {
        List<WallSide> changed = new ArrayList<>();
        for (WallSide side : plan.ring()) {
            double[] corner = change.apply(new double[] {side.x(), side.y()});
            changed.add(WallSide.of(corner[0], corner[1], side.pitch()));
        }
        same(plan, changed, change);
    }

    private static void same(Plan plan, List<WallSide> changed, UnaryOperator<double[]> change) {
        RoofOver roof = Plans.roof(plan.ring());
        RoofOver other = Plans.roof(changed);
        Random random = new Random(5);
        int looked = 0;
        for (int i = 0; i < 300; i++) {
            double[] at = {24 * random.nextDouble() - 12, 24 * random.nextDouble() - 12};
            double[] there = change.apply(at);
            double height = Plans.heightAt(Footprint.of(plan.ring()), roof, at[0], at[1]);
            if (!Double.isNaN(height)) {
                looked++;
                assertThat(Plans.heightAt(Footprint.of(changed), other, there[0], there[1]))
                        .isCloseTo(height, within(SAME));
            }
        }
        assertThat(looked).isGreaterThan(20);
    }
}
