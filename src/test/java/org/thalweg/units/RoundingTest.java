package org.thalweg.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Decimals of answers, against {@link BigDecimal}. */
class RoundingTest {

    /** Up to a thousand million last places: a kilometre in micrometres. */
    @ParameterizedTest(name = "{0} decimals, seed {1}")
    @CsvSource({"3, 11", "4, 12", "5, 13", "6, 14"})
    void agreesWithBigDecimalHalfUp(int decimals, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 50_000; i++) {
            double number = random.nextDouble(-1, 1) * Math.pow(10, random.nextInt(-1, 10) - decimals);
            BigDecimal expected = BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP);
            assertThat(Rounding.toDecimals(number, decimals)).isEqualTo(expected.doubleValue());
        }
    }

    @ParameterizedTest(name = "{0} decimals, seed {1}")
    @CsvSource({"3, 21", "4, 22", "5, 23", "6, 24"})
    void halfwayGoesAwayFromZeroAndNotToTheEvenDigit(int decimals, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int unlikeHalfEven = 0;
        for (int i = 0; i < 20_000; i++) {
            BigDecimal halfway = BigDecimal.valueOf(10 * random.nextLong(-10_000_000, 10_000_000) + 5, decimals + 1);
            double rounded = Rounding.toDecimals(halfway.doubleValue(), decimals);
            assertThat(rounded)
                    .isEqualTo(halfway.setScale(decimals, RoundingMode.HALF_UP).doubleValue());
            if (rounded != halfway.setScale(decimals, RoundingMode.HALF_EVEN).doubleValue()) {
                unlikeHalfEven++;
            }
        }
        assertThat(unlikeHalfEven).as("about every second tie").isBetween(9_000, 11_000);
    }

    @ParameterizedTest(name = "{0} decimals, seed {1}")
    @CsvSource({"3, 31", "4, 32", "5, 33", "6, 34"})
    void printsNoMoreDecimalsThanAskedFor(int decimals, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 100_000; i++) {
            double number = random.nextDouble(-1, 1) * Math.pow(10, random.nextInt(-7, 9));
            String printed = Double.toString(Rounding.toDecimals(number, decimals));
            assertThat(new BigDecimal(printed).stripTrailingZeros().scale())
                    .as(printed)
                    .isLessThanOrEqualTo(decimals);
        }
    }

    @Test
    void aTieThatComputingLeftAHairShortIsATie() {
        double onPaperHalf = 0.1 + 0.7 - 0.3;
        assertThat(onPaperHalf).isLessThan(0.5);
        assertThat(Rounding.nearest(onPaperHalf)).isEqualTo(1);
        assertThat(Rounding.nearest(Math.nextDown(0.5))).isEqualTo(1);
        assertThat(Rounding.toDecimals(1.005, 2))
                .as("1.005 is kept as 1.00499999999999989")
                .isEqualTo(1.01);
    }

    @Test
    void clearlyBelowHalfwayIsNotATie() {
        assertThat(Rounding.nearest(2.49999)).isEqualTo(2);
        assertThat(Rounding.nearest(-2.49999)).isEqualTo(-2);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.0, -0.4, -1e-300})
    void thereIsNoNegativeZero(double number) {
        assertThat(Rounding.nearest(number)).isEqualTo(0.0);
        assertThat(Double.toString(Rounding.toDecimals(number / 1e6, 4))).isEqualTo("0.0");
    }

    @ParameterizedTest
    @ValueSource(longs = {1L << 30, 1L << 49, 1L << 50, 1L << 51, (1L << 51) + 1, 1L << 52, (1L << 53) - 1, 1L << 60})
    void largeWholeNumbersStayAsTheyAre(long whole) {
        assertThat(Rounding.nearest((double) whole)).isEqualTo((double) whole);
        assertThat(Rounding.nearest(-(double) whole)).isEqualTo(-(double) whole);
    }
}
