package org.thalweg.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class TemperatureTest {

    /**
     * NIST Special Publication 811, appendix B.8: T/K = (t/°F + 459.67)/1.8 and T/K = t/°C + 273.15, both exact. The
     * points are absolute zero, ice, steam, and where the scales meet.
     */
    @ParameterizedTest
    @CsvSource({"-459.67, -273.15, 0", "32, 0, 273.15", "212, 100, 373.15", "-40, -40, 233.15"})
    void fixedPointsAgreeOnBothScales(double fahrenheit, double celsius, double kelvins) {
        assertThat(Temperature.fahrenheit(fahrenheit).kelvins()).isCloseTo(kelvins, within(1e-12));
        assertThat(Temperature.celsius(celsius).kelvins()).isCloseTo(kelvins, within(1e-12));
        assertThat(TemperatureScale.FAHRENHEIT.round(Temperature.celsius(celsius)))
                .isEqualTo(fahrenheit);
        assertThat(TemperatureScale.CELSIUS.round(Temperature.fahrenheit(fahrenheit)))
                .isEqualTo(celsius);
    }

    /**
     * NIST Special Publication 811, appendix B.8: an interval of 1 °F is 1/1.8 K. So 200 °F between winter and summer are
     * 111 K, and not the 93 °C that UFC 3-110-03 prints beside them: that is how warm 200 °F is.
     */
    @Test
    void aDifferenceIsPlainKelvins() {
        Temperature winter = Temperature.fahrenheit(-20);
        Temperature summer = Temperature.fahrenheit(180);
        assertThat(summer.above(winter)).isCloseTo(111.111, within(0.0005));
        assertThat(winter.above(summer)).isEqualTo(-summer.above(winter));
    }

    @Test
    void nothingIsColderThanAbsoluteZero() {
        assertThatThrownBy(() -> Temperature.celsius(-273.16)).hasMessageContaining("absolute zero");
        assertThatThrownBy(() -> Temperature.fahrenheit(-459.68)).hasMessageContaining("absolute zero");
        assertThatThrownBy(() -> new Temperature(Double.NaN)).hasMessageContaining("NaN");
        assertThatThrownBy(() -> new Temperature(Double.POSITIVE_INFINITY)).hasMessageContaining("Infinity");
    }

    @Test
    void theWarmerComesAfterTheColder() {
        assertThat(Temperature.celsius(20)).isGreaterThan(Temperature.fahrenheit(67.9));
        assertThat(Temperature.celsius(20)).isLessThan(Temperature.fahrenheit(68.1));
    }

    @Test
    void scalesAreWrittenWithOneLetter() {
        assertThat(TemperatureScale.values())
                .extracting(TemperatureScale::symbol)
                .containsExactly("F", "C");
        assertThat(TemperatureScale.of("F")).contains(TemperatureScale.FAHRENHEIT);
        assertThat(TemperatureScale.of("C")).contains(TemperatureScale.CELSIUS);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "f", "c", "K", "°F", " F", "Celsius"})
    void aSymbolIsMatchedToTheLetter(String symbol) {
        assertThat(TemperatureScale.of(symbol)).isEmpty();
    }

    @ParameterizedTest(name = "{0}, seed 43")
    @EnumSource
    void aTemperatureTypedWithTwoDecimalsComesBackAsTyped(TemperatureScale scale) {
        SplittableRandom random = new SplittableRandom(43);
        for (int i = 0; i < 20_000; i++) {
            double typed =
                    BigDecimal.valueOf(random.nextLong(-27_315, 100_000), 2).doubleValue();
            assertThat(scale.round(scale.of(typed))).isEqualTo(typed);
        }
    }
}
