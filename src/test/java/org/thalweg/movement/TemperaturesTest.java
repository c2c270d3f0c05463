package org.thalweg.movement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.thalweg.reference.Rules;
import org.thalweg.units.Temperature;

class TemperaturesTest {

    private static final Temperature WINTER = Temperature.celsius(-20);
    private static final Temperature SPRING = Temperature.celsius(15);
    private static final Temperature SUMMER = Temperature.celsius(80);

    @Test
    void metalWarmsAndCoolsFromWhenItWasFastened() {
        Temperatures temperatures = new Temperatures(WINTER, SUMMER, SPRING);
        assertThat(temperatures.warming()).isCloseTo(65, within(1e-9));
        assertThat(temperatures.cooling()).isCloseTo(35, within(1e-9));
    }

    @Test
    void metalMayBeFastenedAtItsColdestOrItsWarmest() {
        assertThat(new Temperatures(WINTER, SUMMER, WINTER).cooling()).isZero();
        assertThat(new Temperatures(WINTER, SUMMER, SUMMER).warming()).isZero();
    }

    @Test
    void metalIsFastenedBetweenItsColdestAndItsWarmest() {
        assertThatThrownBy(() -> new Temperatures(SPRING, SUMMER, WINTER)).hasMessageContaining("installedAt");
        assertThatThrownBy(() -> new Temperatures(WINTER, SPRING, SUMMER)).hasMessageContaining("installedAt");
        assertThatThrownBy(() -> new Temperatures(SUMMER, WINTER, SPRING)).hasMessageContaining("installedAt");
    }

    /** UFC 3-110-03 (2006) ch. 4: 200 °F from the coldest to the warmest. */
    @Test
    void theUsualTemperaturesAreThePublishedRangeApart() {
        Temperatures usual = Temperatures.USUAL;
        assertThat(usual.warming() + usual.cooling())
                .isCloseTo(Rules.designTemperatureRange().value(), within(1e-9));
        assertThat(usual.installedAt()).isEqualTo(Temperature.fahrenheit(60));
    }

    @Test
    void whatIsPublishedOfTheUsualTemperaturesAndWhatIsNotIsSaid() {
        assertThat(Temperatures.USUAL_SOURCE.text())
                .isEqualTo("a range of 200 °F: UFC 3-110-03 (2006) ch. 4; where it lies: common practice, no source");
    }
}
