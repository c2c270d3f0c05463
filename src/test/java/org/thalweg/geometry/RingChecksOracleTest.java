package org.thalweg.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Dimension;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.IntersectionMatrix;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;

/**
 * Against the validity test of JTS, on rings drawn by lot.
 *
 * <p>Where the two differ on purpose: JTS calls a ring that touches itself in a point, and an opening that touches the
 * outer ring in two, invalid (ring self-intersection, disconnected interior). Here both may be, so those answers count as
 * good, and openings are held against JTS's relation of the rings instead; everything else must agree.
 */
class RingChecksOracleTest {

    private static final GeometryFactory JTS = new GeometryFactory();

    /** Corners on a coarse grid: most rings touch, overlap or cross themselves in corners. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4})
    void coarseRingsAreJudgedAsJtsDoes(long seed) {
        Random lot = new Random(seed);
        Tally tally = new Tally();
        for (int i = 0; i < 5_000; i++) {
            tally.judge(new Region(coarseRing(lot, 3 + lot.nextInt(8), 4), List.of()));
        }
        tally.sawBoth(200);
    }

    /** Stars with many corners, some of them pushed across their neighbours. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {5, 6, 7})
    void largeRingsAreJudgedAsJtsDoes(long seed) {
        Random lot = new Random(seed);
        Tally tally = new Tally();
        for (int i = 0; i < 300; i++) {
            tally.judge(new Region(star(lot, 70 + lot.nextInt(200), 0, 0, 10, 0.3), List.of()));
        }
        tally.sawBoth(50);
    }

    /** Two coarse openings in a coarse outline: outside, overlapping, nested, touching. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {8, 9, 10})
    void openingsAreJudgedAsJtsDoes(long seed) {
        Random lot = new Random(seed);
        Tally tally = new Tally();
        for (int i = 0; i < 10_000; i++) {
            Ring outer = validRing(lot, 3 + lot.nextInt(3), 8);
            List<Ring> openings = new ArrayList<>();
            for (int o = lot.nextInt(3); o >= 0; o--) {
                openings.add(validRing(lot, 3 + lot.nextInt(2), 5));
            }
            tally.judge(new Region(outer, openings));
        }
        tally.sawBoth(40);
    }

    /** Smooth stars in a smooth star: the usual plane with openings, at a slant to the grid. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {11, 12})
    void starsInStarsAreJudgedAsJtsDoes(long seed) {
        Random lot = new Random(seed);
        Tally tally = new Tally();
        for (int i = 0; i < 1_000; i++) {
            List<Ring> openings = new ArrayList<>();
            for (int o = lot.nextInt(4); o >= 0; o--) {
                openings.add(
                        star(lot, 3 + lot.nextInt(30), lot.nextDouble() * 12 - 6, lot.nextDouble() * 12 - 6, 1.5, 0));
            }
            tally.judge(new Region(star(lot, 3 + lot.nextInt(60), 0, 0, 10, 0), openings));
        }
        tally.sawBoth(100);
    }

    /** Holds every shape's three judgements against each other, and counts. */
    private static final class Tally {
        private int good;
        private int bad;

        void judge(Region shape) {
            boolean expected = goodByJts(shape);
            Sides sides = new Sides(shape, Tolerance.DEFAULT.hair());
            List<RingChecks.Conflict> swept = new SideSweep(sides).first();
            List<RingChecks.Conflict> compared = sides.conflicts(true);
            if (compared.isEmpty()) {
                compared = sides.conflicts(false);
            }
            assertThat(RingChecks.of(shape, Tolerance.DEFAULT).isEmpty())
                    .as("checks of %s", shape)
                    .isEqualTo(expected);
            assertThat(swept.isEmpty())
                    .as("sweep of %s finds what comparing finds, %s", shape, compared)
                    .isEqualTo(compared.isEmpty());
            if (expected) {
                good++;
            } else {
                bad++;
            }
        }

        void sawBoth(int least) {
            assertThat(good).isGreaterThan(least);
            assertThat(bad).isGreaterThan(least);
        }
    }

    private static boolean goodByJts(Region shape) {
        if (!goodAlone(shape.outer()) || !shape.openings().stream().allMatch(RingChecksOracleTest::goodAlone)) {
            return false;
        }
        Polygon outer = JTS.createPolygon(jts(shape.outer()));
        List<Polygon> openings =
                shape.openings().stream().map(o -> JTS.createPolygon(jts(o))).toList();
        for (int i = 0; i < openings.size(); i++) {
            IntersectionMatrix inOuter = outer.relate(openings.get(i));
            boolean good = inOuter.isCovers() && meetsInPoints(inOuter);
            for (int j = 0; j < i && good; j++) {
                IntersectionMatrix apart = openings.get(i).relate(openings.get(j));
                good = apart.get(Location.INTERIOR, Location.INTERIOR) == Dimension.FALSE && meetsInPoints(apart);
            }
            if (!good) {
                return false;
            }
        }
        return true;
    }

    private static boolean meetsInPoints(IntersectionMatrix matrix) {
        return matrix.get(Location.BOUNDARY, Location.BOUNDARY) < Dimension.L;
    }

    private static boolean goodAlone(Ring ring) {
        IsValidOp check = new IsValidOp(JTS.createPolygon(jts(ring)));
        check.setSelfTouchingRingFormingHoleValid(true);
        TopologyValidationError error = check.getValidationError();
        return error == null
                || error.getErrorType() == TopologyValidationError.RING_SELF_INTERSECTION
                || error.getErrorType() == TopologyValidationError.DISCONNECTED_INTERIOR;
    }

    /** A coarse ring that JTS calls valid: the relation of others would be none. */
    private static Ring validRing(Random lot, int size, int width) {
        Ring ring;
        do {
            ring = coarseRing(lot, size, width);
        } while (!JTS.createPolygon(jts(ring)).isValid());
        return ring;
    }

    private static LinearRing jts(Ring ring) {
        Coordinate[] corners = new Coordinate[ring.size() + 1];
        for (int i = 0; i < corners.length; i++) {
            corners[i] = new Coordinate(ring.across(i % ring.size()), ring.up(i % ring.size()));
        }
        return JTS.createLinearRing(corners);
    }

    /** A ring over whole numbers, no corner twice in a row. */
    private static Ring coarseRing(Random lot, int size, int width) {
        double[] across = new double[size];
        double[] up = new double[size];
        for (int i = 0; i < size; i++) {
            do {
                across[i] = lot.nextInt(width);
                up[i] = lot.nextInt(width);
            } while ((i > 0 && across[i] == across[i - 1] && up[i] == up[i - 1])
                    || (i == size - 1 && across[i] == across[0] && up[i] == up[0]));
        }
        return new Ring(across, up, new int[size]);
    }

    /** A ring round a middle; a share of its corners is put out of order. */
    private static Ring star(Random lot, int size, double middleAcross, double middleUp, double reach, double share) {
        double[] angle = lot.doubles(size).map(d -> d * 2 * Math.PI).sorted().toArray();
        for (int i = 1; i < size; i++) {
            if (lot.nextDouble() < share / Math.sqrt(size)) {
                double swapped = angle[i];
                angle[i] = angle[i - 1];
                angle[i - 1] = swapped;
            }
        }
        double[] across = Arrays.stream(angle)
                .map(a -> middleAcross + reach * (0.3 + 0.7 * lot.nextDouble()) * Math.cos(a))
                .toArray();
        double[] up = new double[size];
        for (int i = 0; i < size; i++) {
            up[i] = middleUp + (across[i] - middleAcross) * Math.tan(angle[i]);
        }
        return new Ring(across, up, new int[size]);
    }
}
