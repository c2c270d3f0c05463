package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The calculator other tests check the working with is checked itself, by sums anyone can do. */
class PocketCalculatorTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            2 + 3 * 4                | 14
            10 - 3 - 2               | 5
            48 / 2 / 4               | 6
            2^3^2                    | 512
            -2^2                     | -4
            2 * -3                   | -6
            (2 + 3) * 4              | 20
            8^(2 / 3)                | 4
            sin(30)                  | 0.5
            cos(60) + tan(45)        | 1.5
            asin(1) - acos(0)        | 0
            atan(1)                  | 45
            sqrt(16) + abs(-3)       | 7
            ceil(2.1) - floor(2.9)   | 1
            max(1, min(4, 3, 5), 2)  | 3
            """)
    void aSumComesOut(String sum, double result) {
        assertThat(PocketCalculator.evaluate(sum)).isCloseTo(result, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "2 +", "2 3 x", "cot(45)", "(2", "sin(1, 2)", "1e5", "φ"})
    void whatIsNoSumIsRefused(String keys) {
        assertThatThrownBy(() -> PocketCalculator.evaluate(keys)).isInstanceOf(IllegalArgumentException.class);
    }
}
