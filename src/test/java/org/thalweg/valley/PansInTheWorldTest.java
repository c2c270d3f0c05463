package org.thalweg.valley;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thalweg.geometry.Point3;
import org.thalweg.roof.Edge;
import org.thalweg.roof.EdgeKind;
import org.thalweg.roof.Roof;
import org.thalweg.units.Length;

/**
 * Blanks bent back onto their roof planes: where the corners of the flats come to lie in the world says whether the pan was
 * cut right, whatever formula it was cut by.
 *
 * <p>The corners of a flat lie on a line from the low outward: across − g off the low, along from the piece's lowest point.
 */
class PansInTheWorldTest {

    private static Edge edge(Roof roof, SlopedEdge.Side side, EdgeKind kind) {
        return roof.edges().stream()
                .filter(e -> e.kind() == kind && e.sides().get(0).plane() == side.plane())
                .findFirst()
                .orElseThrow();
    }

    /** In the last two a side's plan angle is more than 90°. */
    @ParameterizedTest
    @CsvSource({
        "6, 6, 90",
        "6, 8, 90",
        "6, 12, 90",
        "10, 8.5, 135",
        "6, 6, 135",
        "6, 6, 60",
        "4, 9, 60",
        "3, 24, 120",
        "18, 2, 150"
    })
    void theTrimmedCornersOfTheFlatsLieOnEavesAndRidges(double rise1, double rise2, double corner) {
        Roof roof = Pans.corner(rise1, rise2, corner, 300);
        ValleyLayout laid = Pans.fixed(roof, Pans.pan(1_000, 0));
        double ridge =
                Math.max(laid.edge().edge().from().z(), laid.edge().edge().to().z());
        for (SlopedEdge.Side side : List.of(laid.edge().left(), laid.edge().right())) {
            List<Bent> bent = Bent.flats(roof, laid, side);
            Bent atEave = Bent.outermostLowest(bent);
            assertThat(atEave.world().z()).isCloseTo(0, within(1e-9));
            assertThat(atEave.from(edge(roof, side, EdgeKind.EAVE))).isCloseTo(0, within(1e-9));
            assertThat(bent).anySatisfy(b -> {
                assertThat(b.up()).isCloseTo(0, within(1e-9));
                assertThat(b.world().distance(new Point3(0, 0, 0))).isCloseTo(0, within(1e-9));
            });
            Bent atRidge = Bent.outermostHighest(bent);
            assertThat(atRidge.world().z()).isCloseTo(ridge, within(1e-9));
            assertThat(atRidge.from(edge(roof, side, EdgeKind.RIDGE))).isCloseTo(0, within(1e-9));
        }
    }

    @ParameterizedTest
    @CsvSource({"6, 6, 90", "6, 8, 90", "10, 8.5, 135", "6, 6, 60", "3, 24, 120"})
    void flatsThatRunPastTheEaveDoSoByTheSameAllAlong(double rise1, double rise2, double corner) {
        double past = Length.inches(1.5).metres();
        Roof roof = Pans.corner(rise1, rise2, corner, 300);
        ValleyLayout laid = Pans.fixed(roof, Pans.pan(1_000, 1.5));
        for (SlopedEdge.Side side : List.of(laid.edge().left(), laid.edge().right())) {
            Edge eave = edge(roof, side, EdgeKind.EAVE);
            List<Bent> bent = Bent.flats(roof, laid, side);
            assertThat(Bent.outermostLowest(bent)).satisfies(b -> assertPast(b, eave, past, side));
            Bent atLow = bent.stream()
                    .filter(b -> b.out() < 1e-9 && Math.abs(b.from(eave) - past) < 1e-9)
                    .findFirst()
                    .orElseThrow();
            assertPast(atLow, eave, past, side);
        }
    }

    /** Outside the eave, measured in the plane square to it, so lower by p · sin θ. */
    private static void assertPast(Bent corner, Edge eave, double past, SlopedEdge.Side side) {
        assertThat(corner.from(eave)).isCloseTo(past, within(1e-9));
        assertThat(corner.world().z()).isCloseTo(-past * side.pitch().sin(), within(1e-9));
    }

    /**
     * At a square corner the flats hang below their foot like a swallow's tail: s = −t · cot φ, here
     * −18.75 in · cot 48.1897° = −16.7705 in, because the low and the eave stand 180° − φ apart.
     */
    @Test
    void theFlatsOfASquareCornerReachFurtherDownThanTheirLow() {
        Roof roof = Pans.corner(6, 6, 90, 300);
        ValleyLayout laid = Pans.fixed(roof, Pans.pan(1_000, 0));
        Bent outer = Bent.outermostLowest(Bent.flats(roof, laid, laid.edge().left()));
        assertThat(Pans.inches(Length.metres(outer.up()))).isCloseTo(-16.7705, within(0.00005));
        assertThat(laid.left().seen().bottom().corner().inDegrees()).isCloseTo(180 - 48.1897, within(0.00005));
        assertThat(laid.left().seen().top().corner().inDegrees()).isCloseTo(48.1897, within(0.00005));
    }

    /** With α over 90° the eave comes back under the valley, and that side's flat is cut away from its low upward. */
    @Test
    void aFlatWhoseValleyLeansOverItIsCutShortAtItsOuterEdge() {
        Roof roof = Pans.corner(3, 24, 120, 300);
        ValleyLayout laid = Pans.fixed(roof, Pans.pan(1_000, 0));
        assertThat(Bent.outermostLowest(Bent.flats(roof, laid, laid.edge().left()))
                        .up())
                .isPositive();
        assertThat(Bent.outermostLowest(Bent.flats(roof, laid, laid.edge().right()))
                        .up())
                .isNegative();
    }
}
