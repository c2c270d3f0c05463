package org.thalweg.drainage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.thalweg.units.Area;
import org.thalweg.units.AreaUnit;
import org.thalweg.units.Flow;
import org.thalweg.units.FlowUnit;
import org.thalweg.units.LengthUnit;
import org.thalweg.units.Rainfall;

/**
 * Rain on a roof as codes and tables print it, through {@link Rainfall#on}.
 *
 * <p>Of the tables these were taken from, not used: the 15 in leader (prints 4880 gal/min for an area that brings 4880.7
 * at the constant the rest of its table keeps to: cut off, not rounded), half-round gutters (areas scaled by the root of
 * their slope: nothing of ours is half-round), factors for pitch, walls and wind (rain on a valley is taken straight down).
 */
class RainTest {

    @ParameterizedTest(name = "[{index}] {arguments}")
    @CsvFileSource(resources = "/published/rain-to-flow.csv", useHeadersInDisplayName = true)
    void rainOnAnAreaRunsOffAsPrinted(
            String id,
            double rain,
            String rainUnit,
            double area,
            double areaHalf,
            String areaUnit,
            double flow,
            double flowHalf,
            String flowUnit,
            double constantHalf) {
        Rainfall falls = Rainfall.perHour(LengthUnit.of(rainUnit).orElseThrow().of(rain));
        AreaUnit of = AreaUnit.of(areaUnit).orElseThrow();
        double runs = falls.on(of.of(area)).in(unit(flowUnit));
        double byArea = falls.on(of.of(areaHalf)).in(unit(flowUnit));
        assertThat(runs).as(id).isCloseTo(flow, within(flowHalf + byArea + constantHalf * flow));
    }

    /** Three units of one rainfall, side by side. Tolerance: half of the last digit printed. */
    @ParameterizedTest(name = "[{index}] {arguments}")
    @CsvFileSource(resources = "/published/rainfall-cities.csv", useHeadersInDisplayName = true)
    void theColumnsOfTheRainfallTableAgree(
            String city, String state, double inchesAnHour, double millimetresAnHour, double gallonsAMinute) {
        Rainfall rain = Rainfall.perHour(LengthUnit.INCH.of(inchesAnHour));
        assertThat(rain.round(LengthUnit.MILLIMETRE)).as(city).isCloseTo(millimetresAnHour, within(0.05 + 1e-9));
        assertThat(rain.on(AreaUnit.SQUARE_FOOT.of(1)).in(FlowUnit.GALLON_PER_MINUTE))
                .as("%s, %s", city, state)
                .isCloseTo(gallonsAMinute, within(0.000005));
    }

    /** Uniform plumbing code, appendix D: 21,400 ft² at 1 in/h are 6,688 ft² at 3.2 in/h. To the square foot. */
    @Test
    void harderRainIsMetByAsMuchLessRoof() {
        Flow drains = Rainfall.perHour(LengthUnit.INCH.of(1)).on(AreaUnit.SQUARE_FOOT.of(21_400));
        Rainfall onLess = Rainfall.of(drains, AreaUnit.SQUARE_FOOT.of(6_688));
        Area same = new Area(drains.cubicMetresPerSecond()
                / Rainfall.perHour(LengthUnit.INCH.of(3.2)).metresPerSecond());
        assertThat(onLess.round(LengthUnit.INCH)).isCloseTo(3.2, within(0.0005));
        assertThat(same.in(AreaUnit.SQUARE_FOOT)).isCloseTo(6_688, within(0.5 + 1e-9));
    }

    private static FlowUnit unit(String symbol) {
        return Arrays.stream(FlowUnit.values())
                .filter(unit -> unit.symbol().equals(symbol))
                .findFirst()
                .orElseThrow();
    }
}
