package org.thalweg.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
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

    /** Moves each side by its own distances, at its start and at its end: from, to, from, to … by tag. */
    private static List<Region> turn(Region shape, double... byTag) {
        return SideMover.move(shape, ends(byTag), TOLERANCE);
    }

    private static SideMover.Inward ends(double... byTag) {
        return new SideMover.Inward() {
            @Override
            public double atStart(Ring ring, int side) {
                return byTag[2 * ring.tag(side)];
            }

            @Override
            public double atEnd(Ring ring, int side) {
                return byTag[2 * ring.tag(side) + 1];
            }
        };
    }

    /**
     * The long side runs from (8 0) to (0 6), 10 long; into the triangle is (-0.6 -0.8). Its lower end moves in by 1, to
     * (7.4 -0.8), its upper end stays. That line meets the bottom where 0.8 of its 6.8 up is gone: at 7.4 · 6 / 6.8.
     */
    @Test
    void aSideThatMovesFurtherAtOneEndTurnsAboutTheOther() {
        Region triangle = Shapes.region(0, 0, 8, 0, 0, 6);

        Ring moved = turn(triangle, 0, 0, 1, 0, 0, 0).get(0).outer();

        assertCorners(moved, 0, 0, 7.4 * 6 / 6.8, 0, 0, 6);
    }

    /**
     * The same, while the bottom moves out by 0.25 and the left side in by 0.5: the long side's line meets up = -0.25 where
     * 0.55 of its 6.8 is gone, at 7.4 · 6.25 / 6.8, and across = 0.5 where 0.5 of its 7.4 is left, at 6 - 6.8 · 0.5 / 7.4.
     */
    @Test
    void aTurnedSideIsMitredWhereItsLineMeetsItsNeighbours() {
        Region triangle = Shapes.region(0, 0, 8, 0, 0, 6);

        Ring moved = turn(triangle, -0.25, -0.25, 1, 0, 0.5, 0.5).get(0).outer();

        assertCorners(moved, 0.5, -0.25, 7.4 * 6.25 / 6.8, -0.25, 0.5, 6 - 6.8 * 0.5 / 7.4);
    }

    /**
     * The top goes from 1 down at the right to 3 down at the left, the left side from nothing at the top to 2 at the bottom:
     * lines up = 3 + 0.2 across and across = 2 - up / 3. On both up = 3.4 - up / 15, so up = 3.4 · 15 / 16 = 3.1875 and
     * across = 0.9375.
     */
    @Test
    void twoTurnedSidesAreMitredWhereTheirLinesMeet() {
        Ring moved = turn(RECTANGLE, 0, 0, 0, 0, 1, 3, 0, 2).get(0).outer();

        assertCorners(moved, 2, 0, 10, 0, 10, 5, 0.9375, 3.1875);
    }

    /** One line, cut in two by a corner of another plane: 1 at its start, 0 at its end, 0.6 where it is cut. */
    @Test
    void sidesInLineThatTurnTogetherStayInLine() {
        Region split = Shapes.region(0, 0, 4, 0, 10, 0, 10, 6, 0, 6);

        Ring moved = turn(split, 1, 0.6, 0.6, 0, 0, 0, 0, 0, 0, 0).get(0).outer();

        assertCorners(moved, 0, 1, 4, 0.6, 10, 0, 10, 6, 0, 6);
    }

    /** Their lines do cross, elsewhere; but each piece is to lie where it was told, from its one end to its other. */
    @Test
    void sidesInLineThatMeetNoMoreMakeAStepHoweverTheyTurn() {
        Region split = Shapes.region(0, 0, 4, 0, 10, 0, 10, 6, 0, 6);

        Ring moved = turn(split, 1, 3, 2, 0, 0, 0, 0, 0, 0, 0).get(0).outer();

        assertCorners(moved, 0, 1, 4, 3, 4, 2, 10, 0, 10, 6, 0, 6);
    }

    /**
     * A bend of 45° that the set-back straightens: the sloping side, √32 long, moves out by √32 at its end and not at all at
     * its start, which turns it by 45°. One line then lies on up = 1, the other on up = 0.
     */
    @Test
    void sidesThatBecomeParallelMakeAStep() {
        Region bent = Shapes.region(0, 0, 6, 0, 10, 4, 10, 10, 0, 10);

        Ring moved =
                turn(bent, 1, 1, 0, -Math.sqrt(32), 0, 0, 0, 0, 0, 0).get(0).outer();

        assertCorners(moved, 0, 1, 6, 1, 6, 0, 10, 0, 10, 10, 0, 10);
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

    /**
     * A corner of 50° between a bottom that moves out and a side that moves in by more; a chamfer at the top left that vanishes
     * has the faces looked for. The bottom's end, which lies past the mitre, leaves no metal behind outside the corner.
     */
    @ParameterizedTest(name = "bottom {0} out, side {1} in")
    @CsvSource({"0.025, 0.3", "0.05, 0.1", "0.1, 0.3"})
    void aSharpCornerBetweenASideThatMovesOutAndOneThatMovesInLeavesNoCrumb(double out, double in) {
        Region chamfered = Shapes.region(0, 0, 10, 0, 5, 6, 0.2, 6, 0, 5.8);

        List<Region> moved = move(chamfered, -out, in, 0.5, 0, 0.5);

        assertThat(moved).hasSize(1);
        assertThat(tags(moved.get(0))).containsExactlyInAnyOrder(0, 1, 2, 4);
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

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void aTurnedSideBetweenSquareNeighboursTakesATrapezoidAway(long seed) {
        Random random = new Random(seed);
        double from = random.nextDouble() * 6 - 3;
        double to = random.nextDouble() * 6 - 3;

        Region moved = turn(RECTANGLE, from, to, 0, 0, 0, 0, 0, 0).get(0);

        assertThat(moved.area()).isCloseTo(60 - 10 * (from + to) / 2, within(1e-9));
    }

    /** Cutting a convex shape by the half-plane of every moved line, one after the other, is what moving its sides means. */
    @ParameterizedTest(name = "seeds from {0}, moved within {1}, ends up to {2} apart")
    @CsvSource({"0, 2, 0.5", "1000, 2, 3", "2000, 2, 12", "3000, 2, 0", "4000, 10, 0", "5000, 10, 6"})
    void turnedSidesOfAConvexShapeCutOffWhatTheirHalfPlanesDo(long firstSeed, double spread, double apart) {
        int compared = 0;
        for (long seed = firstSeed; seed < firstSeed + 400; seed++) {
            Random random = new Random(seed);
            Region shape = convex(random);
            int n = shape.outer().size();
            double[] byTag = new double[2 * n];
            for (int i = 0; i < n; i++) {
                double middle = (random.nextDouble() - 0.45) * spread;
                double half = apart / 2 * random.nextDouble() * (random.nextBoolean() ? 1 : -1);
                byTag[2 * i] = middle - half;
                byTag[2 * i + 1] = middle + half;
            }
            if (!staysConvex(shape.outer(), byTag)) {
                continue;
            }
            Geometry theirs = halfPlanes(shape.outer(), byTag);
            List<Region> moved = turn(shape, byTag);
            Geometry ours = Jts.FACTORY.createGeometryCollection(
                    moved.stream().map(Jts::polygon).toArray(Geometry[]::new));
            double off = OverlayNGRobust.overlay(OverlayNGRobust.union(ours), theirs, OverlayNG.SYMDIFFERENCE)
                    .getArea();
            assertThat(off).as("seed %d", seed).isLessThan(1e-9);
            compared++;
        }
        assertThat(compared).isGreaterThan(20);
    }

    private static void assertCorners(Ring moved, double... corners) {
        Ring ring = moved.startingAt(nearest(moved, new Point2(corners[0], corners[1])));
        assertThat(ring.size()).as("%s", ring).isEqualTo(corners.length / 2);
        for (int i = 0; i < ring.size(); i++) {
            Point2 corner = new Point2(corners[2 * i], corners[2 * i + 1]);
            assertThat(ring.corner(i).distance(corner))
                    .as("corner %d of %s", i, ring)
                    .isLessThan(1e-9);
        }
    }

    private static int nearest(Ring ring, Point2 place) {
        return IntStream.range(0, ring.size())
                .boxed()
                .min(Comparator.comparingDouble(i -> ring.corner(i).distance(place)))
                .orElseThrow();
    }

    /** 3 to 9 corners about a circle of radius 10, none flatter than some 4°. */
    private static Region convex(Random random) {
        int n = 3 + random.nextInt(7);
        double[] corners = new double[2 * n];
        for (int i = 0; i < n; i++) {
            double angle = 2 * Math.PI * (i + 0.8 * random.nextDouble()) / n;
            corners[2 * i] = 10 * Math.cos(angle);
            corners[2 * i + 1] = 10 * Math.sin(angle);
        }
        return Shapes.region(corners);
    }

    /** Whether every moved line still turns to the left of the one before, by 2° or more. */
    private static boolean staysConvex(Ring ring, double... byTag) {
        int n = ring.size();
        for (int i = 0; i < n; i++) {
            int j = ring.next(i);
            double turn = (heading(ring, j, byTag) - heading(ring, i, byTag) + 4 * Math.PI) % (2 * Math.PI);
            if (turn < Math.toRadians(2) || turn > Math.toRadians(178)) {
                return false;
            }
        }
        return true;
    }

    private static double heading(Ring ring, int side, double... byTag) {
        Point2 a = ring.corner(side);
        Point2 b = ring.corner(ring.next(side));
        return Math.atan2(b.up() - a.up(), b.across() - a.across())
                + Math.atan2(byTag[2 * side + 1] - byTag[2 * side], a.distance(b));
    }

    /** A large square cut by every moved line. */
    private static Geometry halfPlanes(Ring ring, double... byTag) {
        double far = 1e4;
        Geometry left = Jts.FACTORY.toGeometry(new Envelope(-1e3, 1e3, -1e3, 1e3));
        for (int i = 0; i < ring.size(); i++) {
            Point2 a = ring.corner(i);
            Point2 b = ring.corner(ring.next(i));
            double x = (b.across() - a.across()) / a.distance(b);
            double y = (b.up() - a.up()) / a.distance(b);
            double ax = a.across() - y * byTag[2 * i];
            double ay = a.up() + x * byTag[2 * i];
            double bx = b.across() - y * byTag[2 * i + 1];
            double by = b.up() + x * byTag[2 * i + 1];
            double length = Math.hypot(bx - ax, by - ay);
            double dx = far * (bx - ax) / length;
            double dy = far * (by - ay) / length;
            Geometry half = Jts.FACTORY.createPolygon(new Coordinate[] {
                new Coordinate(ax - dx, ay - dy),
                new Coordinate(ax + dx, ay + dy),
                new Coordinate(ax + dx - dy, ay + dy + dx),
                new Coordinate(ax - dx - dy, ay - dy + dx),
                new Coordinate(ax - dx, ay - dy)
            });
            left = OverlayNGRobust.overlay(left, half, OverlayNG.INTERSECTION);
        }
        return left;
    }

    private static List<Integer> tags(Region region) {
        return IntStream.range(0, region.outer().size())
                .mapToObj(region.outer()::tag)
                .toList();
    }
}
