package org.thalweg.wind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.thalweg.reference.WindTables;
import org.thalweg.units.Angle;
import org.thalweg.units.AreaUnit;
import org.thalweg.units.Length;
import org.thalweg.units.PressureUnit;
import org.thalweg.units.SpeedUnit;
import org.thalweg.wind.LowRiseWind.SpeedMap;

class LowRiseWindTest {

    private static LowRiseWind wind(double mph, SpeedMap map, String exposure, double feet, double area) {
        return new LowRiseWind(
                SpeedUnit.MILE_PER_HOUR.of(mph),
                map,
                WindTables.exposure(exposure).orElseThrow(),
                Length.feet(feet),
                AreaUnit.SQUARE_FOOT.of(area));
    }

    private static double psf(LowRiseWind wind, double slope, WindZone zone) {
        return wind.on(Angle.degrees(slope)).orElseThrow().in(zone).in(PressureUnit.POUND_FORCE_PER_SQUARE_FOOT);
    }

    /** Against the tables named in the file, to the digits they print. */
    @ParameterizedTest(name = "[{index}] {0}")
    @CsvFileSource(resources = "/published/wind-uplift.csv", numLinesToSkip = 1)
    void upliftIsThatOfTheResidentialCodes(
            String id,
            double mph,
            String map,
            double slope,
            int zone,
            String exposure,
            double feet,
            double area,
            double printed,
            double off) {
        LowRiseWind wind = wind(mph, SpeedMap.valueOf(map.toUpperCase(Locale.ROOT)), exposure, feet, area);
        assertThat(psf(wind, slope, WindZone.values()[zone - 1])).as(id).isCloseTo(printed, within(off));
    }

    /** 40 mph: 0.00256 · 0.7006 · 0.85 · 1600 · 1.18 = 2.9 psf, under the least of 10 and of 0.6 · 16. */
    @Test
    void noCladdingIsDesignedForLessThanTheLeast() {
        assertThat(psf(wind(40, SpeedMap.ALLOWABLE, "B", 30, 10), 5, WindZone.FIELD))
                .isCloseTo(10, within(1e-9));
        assertThat(psf(wind(40, SpeedMap.STRENGTH, "B", 30, 10), 5, WindZone.FIELD))
                .isCloseTo(9.6, within(1e-9));
    }

    @Test
    void aRoofSteeperThanTheTableHasNoPressures() {
        assertThat(wind(115, SpeedMap.STRENGTH, "C", 20, 10).on(Angle.degrees(45)))
                .isPresent();
        assertThat(wind(115, SpeedMap.STRENGTH, "C", 20, 10).on(Angle.degrees(46)))
                .isEmpty();
    }

    @Test
    void theTablesEndAt60Feet() {
        assertThat(wind(115, SpeedMap.STRENGTH, "C", 60, 10)).isNotNull();
        assertThatThrownBy(() -> wind(115, SpeedMap.STRENGTH, "C", 60.01, 10))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
