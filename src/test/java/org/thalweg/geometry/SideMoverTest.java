package org.thalweg.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

class SideMoverTest {

    private static final Tolerance TOLERANCE = Tolerance.DEFAULT;

    /** Side tags: 0 bottom, 1 right, 2 top, 3 left. */
    private static final Region RECTANGLE = Shapes.region(0, 0, 10, 0, 10, 6, 0, 6);

    private static List<Region> move(Region shape, double... byTag) {
        return SideMover.move(shape, tag -> byTag[tag], TOLERANCE);
    }

    @Test
    void aShapeThatDoesNotMoveIsTheSameShape() {
        assertThat(move(RECTANGLE, 0, 0, 0, 0).get(0)).isSameAs(RECTANGLE);
    }

    @Test
    void eachSideMovesByItsOwnDistance() {
        Ring moved = move(RECTANGLE, -1, 0.5, 2, 0).get(0).outer();

        assertThat(moved).isEqualTo(Shapes.ring(0, 0, -1, 9.5, -1, 9.5, 4, 0, 4));
    }

    @Test
    void sidesThatPassEachOtherLeaveNothing() {
        assertThat(move(RECTANGLE, 3, 0, 3.5, 0)).isEmpty();
    }

    /** A chamfer of 1 vanishes when its neighbours move in further than it does. */
    @Test
    void aSideThatVanishesLetsItsNeighboursMeet() {
        Region chamfered = Shapes.region(0, 0, 10, 0, 10, 5, 9, 6, 0, 6);

        Region moved = move(chamfered, 0, 2, 0, 2, 0).get(0);

        assertThat(moved.area()).isCloseTo(8 * 4, within(1e-9));
        assertThat(tags(moved)).containsExactlyInAnyOrder(0, 1, 3, 4);
    }

    /** Two bays joined by a neck 2 wide. */
    @Test
    void aNeckThatClosesPartsTheShape() {
        Region bays = Shapes.region(0, 0, 4, 0, 4, 2, 6, 2, 6, 0, 10, 0, 10, 6, 6, 6, 6, 4, 4, 4, 4, 6, 0, 6);

        List<Region> moved = SideMover.move(bays, tag -> 1.25, TOLERANCE);

        assertThat(moved).hasSize(2);
        assertThat(moved).allSatisfy(bay -> assertThat(bay.area()).isCloseTo(1.5 * 3.5, within(1e-9)));
    }

    @Test
    void anOpeningThatGrowsOverTheRimBecomesANotch() {
        Region holed = new Region(RECTANGLE.outer(), List.of(Shapes.ring(0, 4, 1, 4, 3, 6, 3, 6, 1)));

        List<Region> moved = SideMover.move(
                new Region(holed.outer(), List.of(Shapes.ring(4, 4, 1, 4, 3, 6, 3, 6, 1))),
                tag -> tag < 4 ? 0 : 1.5,
                TOLERANCE);

        assertThat(moved).hasSize(1);
        assertThat(moved.get(0).openings()).isEmpty();
        assertThat(moved.get(0).area()).isCloseTo(60 - 5 * 4.5, within(1e-9));
    }

    @Test
    void sidesInLineThatMoveDifferentlyMakeAStep() {
        Region split = Shapes.region(0, 0, 4, 0, 10, 0, 10, 6, 0, 6);

        Region moved = move(split, 0, 1, 0, 0, 0).get(0);

        assertThat(moved.area()).isCloseTo(60 - 6, within(1e-9));
        assertThat(moved.outer().size()).isEqualTo(6);
    }

    /** JTS buffers with mitred corners; it rounds curves only, so both should agree. */
    @ParameterizedTest(name = "seeds from {0}")
    @ValueSource(longs = {0, 500})
    void movingAllSidesAlikeAgreesWithJtsBuffer(long firstSeed) {
        int compared = 0;
        for (long seed = firstSeed; seed < firstSeed + 500; seed++) {
            for (Region shape : Shapes.crooked(seed)) {
                double inward = 0.05 + (seed % 17) * 0.02;
                List<Region> moved = SideMover.move(shape, tag -> inward, TOLERANCE);
                Geometry ours = moved.isEmpty()
                        ? Jts.FACTORY.createPolygon()
                        : OverlayNGRobust.union(moved.stream()
                                .map(Jts::polygon)
                                .map(p -> (Geometry) p)
                                .toList());
                Geometry theirs = BufferOp.bufferOp(
                        Jts.polygon(shape),
                        -inward,
                        new BufferParameters(8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 1e6));
                double apart = OverlayNGRobust.overlay(ours, theirs, OverlayNG.SYMDIFFERENCE)
                        .getArea();
                assertThat(apart).as("seed %d inward %s", seed, inward).isLessThan(1e-3);
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(500);
    }

    /** The rim moves past the opening and leaves nothing, though no side of the one meets a side of the other. */
    @Test
    void anOpeningThatTheRimHasPassedLeavesNothing() {
        Region frame =
                new Region(Shapes.ring(0, 0, 0, 10, 0, 10, 10, 0, 10), List.of(Shapes.ring(4, 1, 1, 1, 9, 9, 9, 9, 1)));

        assertThat(SideMover.move(frame, tag -> tag < 4 ? 4 : 0, TOLERANCE)).isEmpty();
    }

    /** A 3 by 3 opening grows to 8.5 by 4 and takes in its 3 by 3 neighbour. */
    @Test
    void anOpeningThatGrowsOverAnotherTakesItIn() {
        Region holed = new Region(
                Shapes.ring(0, 0, 0, 10, 0, 10, 10, 0, 10),
                List.of(Shapes.ring(4, 1, 1, 1, 4, 4, 4, 4, 1), Shapes.ring(8, 5, 1, 5, 4, 8, 4, 8, 1)));

        Region moved = SideMover.move(holed, tag -> tag < 4 || tag > 7 ? 0 : tag == 6 ? 5 : 0.5, TOLERANCE)
                .get(0);

        assertThat(moved.openings()).hasSize(1);
        assertThat(moved.area()).isCloseTo(100 - 8.5 * 4, within(1e-9));
    }

    /** JTS hands faces out in an order that changes within one run; answers must not. */
    @Test
    void theSameShapeMovedTwiceIsTheSameToTheBit() {
        for (long seed = 0; seed < 300; seed++) {
            for (Region shape : Shapes.crooked(seed)) {
                assertThat(SideMover.move(shape, tag -> 0.2, TOLERANCE))
                        .as("seed %d", seed)
                        .isEqualTo(SideMover.move(shape, tag -> 0.2, TOLERANCE));
            }
        }
    }

    private static List<Integer> tags(Region region) {
        return IntStream.range(0, region.outer().size())
                .mapToObj(region.outer()::tag)
                .toList();
    }
}
