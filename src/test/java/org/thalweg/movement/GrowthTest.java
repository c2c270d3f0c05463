package org.thalweg.movement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.thalweg.reference.Expansion;
import org.thalweg.reference.Metals;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;
import org.thalweg.units.Temperature;
import org.thalweg.units.TemperatureScale;

/** How far metal moves, against what is printed and against the laws it obeys. */
class GrowthTest {

    private static final double FAHRENHEIT_DEGREES_PER_KELVIN = 1.8;

    /** Against published worked examples with the figures chosen for the metals; tolerance: half their last digit. */
    @ParameterizedTest(name = "{0}, {2} {1}, {4} {3}")
    @CsvFileSource(resources = "/published/thermal-movement.csv", numLinesToSkip = 1)
    void growthOfTheMetalsAgreesWithPublishedExamples(
            String metal, String unit, double length, String degrees, double warming, double growth, double halfDigit) {
        isPrinted(alpha(metal), LengthUnit.of(unit).orElseThrow(), length, scale(degrees), warming, growth, halfDigit);
    }

    /** Against published worked examples with the expansion printed beside them; tolerance: half their last digit. */
    @ParameterizedTest(name = "{0} per {1}, {3} {2}, {4} {1}")
    @CsvFileSource(resources = "/published/thermal-growth.csv", numLinesToSkip = 1)
    void growthAgreesWithPublishedExamples(
            double alpha, String degrees, String unit, double length, double warming, double growth, double halfDigit) {
        Expansion expansion = new Expansion(degrees.equals("F") ? alpha * FAHRENHEIT_DEGREES_PER_KELVIN : alpha);
        isPrinted(expansion, LengthUnit.of(unit).orElseThrow(), length, scale(degrees), warming, growth, halfDigit);
    }

    /** The same swing all upward, all downward and in part each way. */
    private static void isPrinted(
            Expansion expansion,
            LengthUnit unit,
            double length,
            TemperatureScale scale,
            double warming,
            double growth,
            double halfDigit) {
        Temperature cold = scale.of(-20);
        Temperature warm = scale.of(-20 + warming);
        Temperature between = scale.of(-20 + 0.3 * warming);
        Length free = unit.of(length);
        Growth upward = Growth.of(free, expansion, new Temperatures(cold, warm, cold));
        Growth downward = Growth.of(free, expansion, new Temperatures(cold, warm, warm));
        Growth bothWays = Growth.of(free, expansion, new Temperatures(cold, warm, between));
        assertThat(upward.longer().in(unit)).isCloseTo(growth, within(halfDigit));
        assertThat(downward.shorter().in(unit)).isCloseTo(growth, within(halfDigit));
        assertThat(bothWays.range().in(unit)).isCloseTo(growth, within(halfDigit));
    }

    /** A zinc mill's technical page on thermal movement: 8 m, fastened at 15 °C, 100 K: 11.44 mm, 6.16 mm, 17.6 mm. */
    @Test
    void aZincGutterFastenedInSpringGrowsMoreThanItShrinks() {
        Growth growth = Growth.of(Length.metres(8), alpha("zinc"), celsius(-20, 80, 15));
        assertThat(growth.longer().in(LengthUnit.MILLIMETRE)).isCloseTo(11.44, within(0.005));
        assertThat(growth.shorter().in(LengthUnit.MILLIMETRE)).isCloseTo(6.16, within(0.005));
        assertThat(growth.range().in(LengthUnit.MILLIMETRE)).isCloseTo(17.6, within(0.05));
        assertThat(growth.most()).isEqualTo(growth.longer());
    }

    /** By hand over the published 200 °F: 6.7e-6 × 480 × 200 = 0.6432 in of steel, 1.29e-5 × 1200 × 200 = 3.096 in of aluminum. */
    @Test
    void theUsualTemperaturesMoveFortyFeetOfSteelAndAHundredOfAluminumByWhatIsReckonedByHand() {
        assertThat(Growth.of(Length.feet(40), alpha("galvanized-steel"), Temperatures.USUAL)
                        .range()
                        .in(LengthUnit.INCH))
                .isCloseTo(0.6432, within(0.00005));
        assertThat(Growth.of(Length.feet(100), alpha("aluminum"), Temperatures.USUAL)
                        .range()
                        .in(LengthUnit.INCH))
                .isCloseTo(3.096, within(0.0005));
    }

    @Test
    void whatIsFastenedOnAHotDayShrinksMoreThanItGrows() {
        Growth growth = Growth.of(Length.metres(8), alpha("zinc"), celsius(-20, 80, 40));
        assertThat(growth.most()).isEqualTo(growth.shorter());
        assertThat(growth.shorter()).isGreaterThan(growth.longer());
    }

    @Test
    void whereItIsAlwaysEquallyWarmNothingMoves() {
        Growth growth = Growth.of(Length.metres(12), alpha("aluminum"), celsius(20, 20, 20));
        assertThat(growth).isEqualTo(new Growth(Length.ZERO, Length.ZERO));
        assertThat(growth.most()).isEqualTo(Length.ZERO);
        assertThat(growth.range()).isEqualTo(Length.ZERO);
    }

    @Test
    void nothingLongDoesNotMove() {
        assertThat(Growth.of(Length.ZERO, alpha("copper"), Temperatures.USUAL).range())
                .isEqualTo(Length.ZERO);
    }

    static Stream<Arguments> cases() {
        SplittableRandom random = new SplittableRandom(47);
        return IntStream.range(0, 100)
                .mapToObj(number -> Arguments.of(
                        number,
                        Length.metres(random.nextDouble(0.1, 60)),
                        random.nextInt(Metals.all().size()),
                        celsius(random.nextDouble(-60, 0), random.nextDouble(40, 100), random.nextDouble(0, 40))));
    }

    @ParameterizedTest(name = "case {0} of seed 47")
    @MethodSource("cases")
    void aLongerPieceMovesMore(int number, Length free, int metal, Temperatures temperatures) {
        Growth growth = Growth.of(free, alpha(metal), temperatures);
        Growth longer = Growth.of(Length.metres(1.001 * free.metres()), alpha(metal), temperatures);
        assertThat(longer.longer()).isGreaterThan(growth.longer());
        assertThat(longer.shorter()).isGreaterThan(growth.shorter());
        assertThat(longer.range()).isGreaterThan(growth.range());
    }

    @ParameterizedTest(name = "case {0} of seed 47")
    @MethodSource("cases")
    void twoHalvesMoveAsFarAsTheWhole(int number, Length free, int metal, Temperatures temperatures) {
        Growth whole = Growth.of(free, alpha(metal), temperatures);
        Growth half = Growth.of(Length.metres(free.metres() / 2), alpha(metal), temperatures);
        assertThat(2 * half.longer().metres()).isEqualTo(whole.longer().metres());
        assertThat(2 * half.shorter().metres()).isEqualTo(whole.shorter().metres());
    }

    /** To the nanometre, far below what an answer prints: the same temperatures read on the other thermometer. */
    @ParameterizedTest(name = "case {0} of seed 47")
    @MethodSource("cases")
    void theScaleOfTheThermometerChangesNothing(int number, Length free, int metal, Temperatures celsius) {
        Temperatures fahrenheit = new Temperatures(
                inFahrenheit(celsius.lowest()), inFahrenheit(celsius.highest()), inFahrenheit(celsius.installedAt()));
        Growth growth = Growth.of(free, alpha(metal), celsius);
        Growth same = Growth.of(free, alpha(metal), fahrenheit);
        assertThat(same.longer().metres()).isCloseTo(growth.longer().metres(), within(1e-9));
        assertThat(same.shorter().metres()).isCloseTo(growth.shorter().metres(), within(1e-9));
    }

    @ParameterizedTest(name = "case {0} of seed 47")
    @MethodSource("cases")
    void whenItIsFastenedDividesTheSwingAndDoesNotChangeIt(
            int number, Length free, int metal, Temperatures temperatures) {
        Temperatures inWinter = new Temperatures(temperatures.lowest(), temperatures.highest(), temperatures.lowest());
        Growth growth = Growth.of(free, alpha(metal), temperatures);
        assertThat(Growth.of(free, alpha(metal), inWinter).range().metres())
                .isCloseTo(growth.range().metres(), within(1e-12));
        assertThat(growth.most()).isLessThanOrEqualTo(growth.range());
    }

    @Test
    void growthIsNeverNegative() {
        Length back = Length.millimetres(-1);
        assertThatThrownBy(() -> new Growth(back, Length.ZERO)).hasMessageContaining("longer");
        assertThatThrownBy(() -> new Growth(Length.ZERO, back)).hasMessageContaining("shorter");
        assertThatThrownBy(() -> Growth.of(back, alpha("zinc"), Temperatures.USUAL))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static Temperature inFahrenheit(Temperature temperature) {
        return Temperature.fahrenheit(temperature.in(TemperatureScale.CELSIUS) * 9 / 5 + 32);
    }

    private static Temperatures celsius(double lowest, double highest, double installedAt) {
        return new Temperatures(
                Temperature.celsius(lowest), Temperature.celsius(highest), Temperature.celsius(installedAt));
    }

    /** The files write kelvins for differences, of which Celsius has the size. */
    private static TemperatureScale scale(String degrees) {
        return degrees.equals("F") ? TemperatureScale.FAHRENHEIT : TemperatureScale.CELSIUS;
    }

    private static Expansion alpha(String metal) {
        return Metals.of(metal).orElseThrow().expansion().value();
    }

    private static Expansion alpha(int metal) {
        return Metals.all().get(metal).expansion().value();
    }
}
