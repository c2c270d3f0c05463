package org.thalweg.footprint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.thalweg.footprint.FollowedEavesTest.Kind;
import org.thalweg.footprint.WallSide.Change;

/**
 * What may be done to a plan with courtyards, gables and sides that change without changing its roof, looked at in many places.
 * Where corners stay on the grid the roof is the same but for what doubles lose.
 */
class FootprintLawsTest {

    private static final int PLANS = 25;
    private static final double EXACT = 1e-8;
    /** A micrometre of grid, and slopes that turn with it. */
    private static final double SAME = 1e-4;

    @ParameterizedTest
    @EnumSource
    void ringsMayStartElsewhere(Kind kind) {
        rings(kind, ring -> {
            // A gable over a part of a side, and what goes on behind it, stay behind the side they belong to.
            int start = 1;
            while (ring.get(start).cross().isPresent()
                    || ring.get(start - 1).cross().isPresent()) {
                start++;
            }
            List<WallSide> rotated = new ArrayList<>(ring);
            Collections.rotate(rotated, -start);
            return rotated;
        });
    }

    @ParameterizedTest
    @EnumSource
    void ringsMayRunTheOtherWayRound(Kind kind) {
        rings(kind, FollowedEaves::turned);
    }

    @ParameterizedTest
    @EnumSource
    void courtyardsMayComeInAnyOrder(Kind kind) {
        holds(
                kind,
                plan -> {
                    List<List<WallSide>> yards = new ArrayList<>(plan.courtyards());
                    Collections.reverse(yards);
                    return new Footprint(plan.outline(), yards);
                },
                place -> place,
                1,
                EXACT);
    }

    @ParameterizedTest
    @EnumSource
    void sidesMayHaveACornerInTheMiddle(Kind kind) {
        rings(kind, ring -> {
            List<WallSide> parted = new ArrayList<>();
            for (int i = 0; i < ring.size(); i++) {
                WallSide side = ring.get(i);
                WallSide end = ring.get((i + 1) % ring.size());
                parted.add(side);
                // The grid of these corners is eight times as wide as that of plans; that of parts of sides is as wide.
                boolean whole = side.cross().isEmpty()
                        && end.cross().isEmpty()
                        && ring.get((i + ring.size() - 1) % ring.size()).cross().isEmpty();
                if (whole) {
                    parted.add(side.from((side.x() + end.x()) / 2, (side.y() + end.y()) / 2));
                }
            }
            return parted;
        });
    }

    @ParameterizedTest
    @EnumSource
    void mirrored(Kind kind) {
        corners(kind, corner -> new double[] {-corner[0], corner[1]}, 1, EXACT);
    }

    @ParameterizedTest
    @EnumSource
    void turnedByARightAngle(Kind kind) {
        corners(kind, corner -> new double[] {-corner[1], corner[0]}, 1, EXACT);
    }

    @ParameterizedTest
    @EnumSource
    void movedFar(Kind kind) {
        corners(kind, corner -> new double[] {corner[0] + 1e6, corner[1] - 1.6e6}, 1, EXACT);
    }

    @ParameterizedTest
    @EnumSource
    void twiceAsLarge(Kind kind) {
        corners(kind, corner -> new double[] {2 * corner[0], 2 * corner[1]}, 2, EXACT);
    }

    /** The figures of a plan in feet, taken for metres, and the other way round. */
    @ParameterizedTest
    @EnumSource
    void inOtherUnits(Kind kind) {
        for (double unit : new double[] {0.3048, 1 / 0.3048}) {
            corners(kind, corner -> new double[] {unit * corner[0], unit * corner[1]}, unit, SAME);
        }
    }

    private static void rings(Kind kind, UnaryOperator<List<WallSide>> change) {
        holds(kind, plan -> each(plan, change), place -> place, 1, EXACT);
    }

    private static Footprint each(Footprint plan, UnaryOperator<List<WallSide>> change) {
        return new Footprint(
                change.apply(plan.outline()),
                plan.courtyards().stream().map(change).toList());
    }

    private static void corners(Kind kind, UnaryOperator<double[]> move, double scale, double within) {
        holds(
                kind,
                plan -> each(plan, ring -> ring.stream()
                        .map(side -> scaled(side, move, scale))
                        .toList()),
                move,
                scale,
                within);
    }

    private static WallSide scaled(WallSide side, UnaryOperator<double[]> move, double scale) {
        double[] corner = move.apply(new double[] {side.x(), side.y()});
        WallSide moved = WallSide.of(corner[0], corner[1], side.pitch()).eaveAt(scale * side.eave());
        for (Change change : side.above()) {
            moved = moved.then(new Change(scale * change.height(), change.pitch()));
        }
        return side.cross().isPresent() ? moved.crossing(side.cross().get()) : moved;
    }

    /** Heights of a changed plan are those of the plan at the places these come from, times the scale. */
    private static void holds(
            Kind kind, UnaryOperator<Footprint> change, UnaryOperator<double[]> move, double scale, double within) {
        int looked = 0;
        for (int seed = 0; seed < PLANS; seed++) {
            Random random = new Random(seed);
            Footprint plan = FollowedEavesTest.madeUp(kind, random);
            Rise rise = Footprints.roofOver(plan);
            Rise changed = Footprints.roofOver(change.apply(plan));
            if (rise instanceof RoofOver roof) {
                assertThat(changed).as("seed %d", seed).isInstanceOf(RoofOver.class);
                for (double[] place : FollowedEavesTest.places(plan, random)) {
                    double[] there = move.apply(place);
                    double height = FollowedEavesTest.heightAt(roof, place[0], place[1]);
                    double other = FollowedEavesTest.heightAt((RoofOver) changed, there[0], there[1]);
                    if (!Double.isNaN(height)) {
                        looked++;
                        assertThat(other)
                                .as("seed %d at %f, %f", seed, place[0], place[1])
                                .isCloseTo(scale * height, within(within));
                    }
                }
            } else {
                assertThat(((NoRoof) changed).reason()).as("seed %d", seed).isEqualTo(((NoRoof) rise).reason());
            }
        }
        assertThat(looked).isGreaterThan(25 * PLANS);
    }
}
