package org.thalweg.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

class StripCutterTest {

    private static final Tolerance TOLERANCE = Tolerance.DEFAULT;

    private static List<StripCutter.Piece> cut(Region shape, double... lines) {
        return StripCutter.cut(shape, lines, Side.RIB, TOLERANCE);
    }

    private static Region strip(List<StripCutter.Piece> pieces, int strip) {
        return pieces.stream()
                .filter(piece -> piece.strip() == strip)
                .findFirst()
                .orElseThrow()
                .shape();
    }

    @Test
    void aRectangleIsCutIntoRectangles() {
        List<StripCutter.Piece> pieces = cut(Shapes.region(0, 0, 5, 0, 5, 3, 0, 3), 0, 2, 4, 6);

        assertThat(pieces).hasSize(3);
        assertThat(pieces).extracting(p -> p.shape().area()).containsExactly(6.0, 6.0, 3.0);
    }

    /** Side tags: 0 bottom, 1 right, 2 top, 3 left. */
    @Test
    void sidesKeepTheirTagsAndCutsAreTaggedRib() {
        List<StripCutter.Piece> pieces = cut(Shapes.region(0, 0, 5, 0, 5, 3, 0, 3), 0, 2, 4, 6);

        assertThat(tags(strip(pieces, 0))).containsExactlyInAnyOrder(0, Side.RIB, 2, 3);
        assertThat(tags(strip(pieces, 1))).containsExactlyInAnyOrder(0, Side.RIB, 2, Side.RIB);
        assertThat(tags(strip(pieces, 2))).containsExactlyInAnyOrder(0, 1, 2, Side.RIB);
    }

    @Test
    void aRightEndOnALineKeepsItsTagAndMakesNoEmptyStrip() {
        List<StripCutter.Piece> pieces = cut(Shapes.region(0, 0, 4, 0, 4, 3, 0, 3), 0, 2, 4, 6);

        assertThat(pieces).hasSize(2);
        assertThat(tags(strip(pieces, 1))).containsExactlyInAnyOrder(0, 1, 2, Side.RIB);
    }

    @Test
    void aRightEndAHairPastALineMakesNoStripOfItsOwn() {
        double hair = TOLERANCE.hair() / 2;

        assertThat(cut(Shapes.region(0, 0, 4 + hair, 0, 4 + hair, 3, 0, 3), 0, 2, 4, 6))
                .hasSize(2);
        assertThat(cut(Shapes.region(0, 0, 4 - hair, 0, 4 - hair, 3, 0, 3), 0, 2, 4, 6))
                .hasSize(2);
    }

    /** The right end of the lower half stands on the line; above it the metal goes on. */
    @Test
    void aRightEndOnPartOfALineIsARoofEdgeThereAndARibAbove() {
        Region step = Shapes.region(0, 0, 2, 0, 2, 1, 3, 1, 3, 4, 0, 4);

        List<StripCutter.Piece> pieces = cut(step, 0, 2, 4);

        assertThat(tags(strip(pieces, 0))).containsExactlyInAnyOrder(0, 1, Side.RIB, 4, 5);
        assertThat(strip(pieces, 0).area()).isEqualTo(8.0);
        assertThat(strip(pieces, 1).area()).isEqualTo(3.0);
    }

    @Test
    void anOpeningOverALineNotchesBothStrips() {
        Region shape = new Region(
                Shapes.ring(0, 0, 0, 4, 0, 4, 4, 0, 4), List.of(Shapes.ring(10, 1.5, 1, 1.5, 2, 2.5, 2, 2.5, 1)));

        List<StripCutter.Piece> pieces = cut(shape, 0, 2, 4);

        assertThat(pieces).extracting(p -> p.shape().area()).containsExactly(7.5, 7.5);
        assertThat(pieces).allSatisfy(p -> assertThat(p.shape().openings()).isEmpty());
    }

    @Test
    void anOpeningWithinAStripStaysAnOpening() {
        Region shape = new Region(
                Shapes.ring(0, 0, 0, 4, 0, 4, 4, 0, 4), List.of(Shapes.ring(10, 0.5, 1, 0.5, 2, 1.5, 2, 1.5, 1)));

        assertThat(strip(cut(shape, 0, 2, 4), 0).openings()).hasSize(1);
    }

    /** Strip 1 is bitten from its left line, strip 0 ends on the opening's side. */
    @Test
    void anOpeningThatTouchesTheLeftLineOfItsStripIsABite() {
        Region shape =
                new Region(Shapes.ring(0, 0, 0, 4, 0, 4, 4, 0, 4), List.of(Shapes.ring(10, 2, 1, 2, 2, 3, 2, 3, 1)));

        List<StripCutter.Piece> pieces = cut(shape, 0, 2, 4);

        assertThat(pieces).extracting(p -> p.shape().area()).containsExactly(8.0, 7.0);
        assertThat(pieces).allSatisfy(p -> assertThat(p.shape().openings()).isEmpty());
        assertThat(pieces)
                .allSatisfy(p -> assertThat(Jts.polygon(p.shape()).isValid()).isTrue());
        assertThat(tags(strip(pieces, 0))).contains(10);
        assertThat(tags(strip(pieces, 1))).containsExactlyInAnyOrder(0, 1, 2, Side.RIB, 11, 12, 13, Side.RIB);
    }

    /** The opening begins on a line and ends on another, two strips on. */
    @Test
    void anOpeningBetweenTwoLinesPartsEveryStripItCrosses() {
        Region shape =
                new Region(Shapes.ring(0, 0, 0, 8, 0, 8, 4, 0, 4), List.of(Shapes.ring(10, 2, 1, 2, 2, 6, 2, 6, 1)));

        List<StripCutter.Piece> pieces = cut(shape, 0, 2, 4, 6, 8);

        assertThat(pieces).extracting(StripCutter.Piece::strip).containsExactly(0, 1, 1, 2, 2, 3);
        assertThat(pieces).extracting(p -> p.shape().area()).containsExactly(8.0, 2.0, 4.0, 2.0, 4.0, 8.0);
    }

    @Test
    void anOpeningAsWideAsAStripPartsIt() {
        Region shape =
                new Region(Shapes.ring(0, 0, 0, 6, 0, 6, 4, 0, 4), List.of(Shapes.ring(10, 1, 1, 1, 2, 5, 2, 5, 1)));

        List<StripCutter.Piece> pieces = cut(shape, 0, 2, 4, 6);

        assertThat(pieces).extracting(StripCutter.Piece::strip).containsExactly(0, 1, 1, 2);
        assertThat(pieces).extracting(p -> p.shape().area()).containsExactly(7.0, 2.0, 4.0, 7.0);
    }

    @Test
    void neighboursShareTheirCrossingsBitForBit() {
        Region slanted = Shapes.region(0, 0, 10, 1.0 / 3, 7, 8, 0.1, 7.7);

        List<StripCutter.Piece> pieces = cut(slanted, 0, 1.1, 2.2, 3.3, 4.4, 5.5, 6.6, 7.7, 8.8, 9.9, 11);

        for (int i = 0; i + 1 < 9; i++) {
            assertThat(onLine(strip(pieces, i), 1.1 * (i + 1))).isEqualTo(onLine(strip(pieces, i + 1), 1.1 * (i + 1)));
        }
    }

    /** JTS cuts the same crooked planes with its own overlay, strip by strip. */
    @ParameterizedTest(name = "seeds from {0}")
    @ValueSource(longs = {0, 1_000, 2_000, 3_000})
    void piecesAgreeWithJtsOverlay(long firstSeed) {
        for (long seed = firstSeed; seed < firstSeed + 1_000; seed++) {
            for (Region shape : Shapes.crooked(seed)) {
                double[] lines =
                        IntStream.rangeClosed(-2, 14).mapToDouble(i -> 2.0 * i).toArray();
                Geometry[] ours = new Geometry[lines.length];
                double sum = 0;
                for (StripCutter.Piece piece : cut(shape, lines)) {
                    assertThat(bridges(piece.shape().outer()))
                            .as("seed %d", seed)
                            .isZero();
                    Geometry polygon = Jts.areas(GeometryFixer.fix(Jts.polygon(piece.shape())));
                    sum += piece.shape().area();
                    ours[piece.strip()] = ours[piece.strip()] == null
                            ? polygon
                            : OverlayNGRobust.overlay(ours[piece.strip()], polygon, OverlayNG.UNION);
                }
                assertThat(sum).as("seed %d", seed).isCloseTo(shape.area(), within(1e-9 * shape.area()));
                for (int strip = 0; strip + 1 < lines.length; strip++) {
                    Geometry theirs = Jts.areas(OverlayNGRobust.overlay(
                            Jts.polygon(shape), band(lines[strip], lines[strip + 1]), OverlayNG.INTERSECTION));
                    double apart = ours[strip] == null
                            ? theirs.getArea()
                            : OverlayNGRobust.overlay(ours[strip], theirs, OverlayNG.SYMDIFFERENCE)
                                    .getArea();
                    assertThat(apart).as("seed %d strip %d", seed, strip).isLessThan(1e-7);
                }
            }
        }
    }

    private static Geometry band(double from, double to) {
        return Jts.FACTORY.createPolygon(new Coordinate[] {
            new Coordinate(from, -50),
            new Coordinate(to, -50),
            new Coordinate(to, 50),
            new Coordinate(from, 50),
            new Coordinate(from, -50)
        });
    }

    private static List<Integer> tags(Region region) {
        return IntStream.range(0, region.outer().size())
                .mapToObj(region.outer()::tag)
                .toList();
    }

    private static List<Double> onLine(Region region, double line) {
        return IntStream.range(0, region.outer().size())
                .filter(i -> Math.abs(region.outer().across(i) - line) < 1e-12)
                .mapToObj(region.outer()::up)
                .sorted()
                .toList();
    }

    /** How many pairs of sides run against each other along one upright line: metal of no width. */
    private static int bridges(Ring ring) {
        int bridges = 0;
        for (int i = 0; i < ring.size(); i++) {
            for (int j = 0; j < ring.size(); j++) {
                boolean oneLine = ring.across(i) == ring.across(ring.next(i))
                        && ring.across(j) == ring.across(ring.next(j))
                        && ring.across(i) == ring.across(j);
                if (oneLine
                        && Math.min(ring.up(ring.next(i)), ring.up(j)) > Math.max(ring.up(i), ring.up(ring.next(j)))) {
                    bridges++;
                }
            }
        }
        return bridges;
    }
}
