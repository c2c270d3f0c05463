package org.thalweg.trim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.thalweg.geometry.Tolerance;
import org.thalweg.units.Length;

/** Runs divided into pieces of 120 in that lap by 4 in, none shorter than 12 in; all in inches. */
class TrimPiecesTest {

    private static final double NOTHING = 1e-9;

    @ParameterizedTest(name = "{0} in: {1}")
    @CsvSource({
        "50, 50",
        "120, 120",
        "236, '120 120'",
        "235, '120 119'",
        "240, '120 116 12'",
        "352, '120 120 120'",
        "353, '120 120 113 12'",
        "8, 8"
    })
    void aRunIsDividedIntoFullPiecesAndARest(double run, String pieces) {
        List<Double> expected =
                Arrays.stream(pieces.split(" ")).map(Double::valueOf).toList();
        assertThat(inches(plain(12, 4).lengths(Length.inches(run)))).isEqualTo(expected);
    }

    @Test
    void aRestIsLongEnoughForItsEndCutAndALap() {
        List<Length> lengths = plain(12, 4).lengths(Length.inches(240), Length.inches(3), Length.inches(20));
        assertThat(inches(lengths)).containsExactly(120.0, 104.0, 24.0);
    }

    /** A stub that its neighbour can't help stays a stub: 100 in of 120 are asked for at least. */
    @Test
    void aPieceNeverGivesMoreThanItCanSpare() {
        assertThat(inches(plain(100, 4).lengths(Length.inches(150)))).containsExactly(120.0, 34.0);
    }

    @Test
    void aRunTenNanometresOverIsNotOneMorePiece() {
        Length run = Length.metres(Length.inches(236).metres() + 5e-9);
        assertThat(plain(12, 4).count(run)).isEqualTo(2);
        assertThat(plain(12, 4).count(Length.inches(236.001))).isEqualTo(3);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void piecesLessLapsAreTheRunAndNoneIsLongerThanTheStock(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 200; i++) {
            double shortest = random.nextDouble() * 30;
            double lap = random.nextInt(4) == 0 ? 0 : random.nextDouble() * 10;
            double run = random.nextDouble() * 1500 + 0.01;
            List<Length> lengths = plain(shortest, lap)
                    .lengths(
                            Length.inches(run),
                            Length.inches(random.nextDouble() * 20),
                            Length.inches(random.nextDouble() * 20));
            double sum = lengths.stream().mapToDouble(Length::metres).sum();
            assertThat(sum - (lengths.size() - 1) * Length.inches(lap).metres())
                    .isCloseTo(Length.inches(run).metres(), within(NOTHING));
            assertThat(lengths).allSatisfy(length -> assertThat(length.metres())
                    .isPositive()
                    .isLessThanOrEqualTo(Length.inches(120).metres() + 2e-8));
            // The fewest that do: one fewer would not reach.
            assertThat((lengths.size() - 1) * 120 - (lengths.size() - 2) * lap < run || lengths.size() == 1)
                    .isTrue();
            // With room to shift, nothing is shorter than can be made.
            if (lengths.size() > 2) {
                assertThat(lengths).allSatisfy(length -> assertThat(length.metres())
                        .isGreaterThanOrEqualTo(Length.inches(shortest).metres() - NOTHING));
            }
        }
    }

    @Test
    void aLapAsLongAsAPieceIsNone() {
        assertThatThrownBy(() -> plain(12, 120))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("lap");
        assertThatThrownBy(() -> new TrimStock(Length.inches(10), Length.inches(12)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("shortest");
    }

    private static TrimPieces plain(double shortest, double lap) {
        return new TrimPieces(
                new TrimStock(Length.inches(120), Length.inches(shortest)), Length.inches(lap), Tolerance.DEFAULT);
    }

    private static List<Double> inches(List<Length> lengths) {
        return lengths.stream()
                .map(length -> Math.round(TrimJobs.inches(length) * 1e6) / 1e6)
                .toList();
    }
}
