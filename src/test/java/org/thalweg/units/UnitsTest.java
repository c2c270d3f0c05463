package org.thalweg.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the units are worth, how they are written and how answers print them. */
class UnitsTest {

    /** NIST Special Publication 811, appendix B.8: exact factors, printed there in bold. */
    @ParameterizedTest
    @CsvSource({"in, 25.4", "ft, 304.8", "cm, 10", "m, 1000", "mm, 1"})
    void lengthsConvertExactly(String symbol, double millimetres) {
        Length one = LengthUnit.of(symbol).orElseThrow().of(1);
        assertThat(LengthUnit.MILLIMETRE.round(one)).isEqualTo(millimetres);
    }

    /** NIST Special Publication 811, appendix B.8: 1 ft² = 9.290 304 E-02 m², 1 in² = 6.4516 E-04 m², both exact. */
    @ParameterizedTest
    @CsvSource({"ft2, 0.09290304", "in2, 0.00064516", "square, 9.290304", "m2, 1"})
    void areasConvertExactly(String symbol, double squareMetres) {
        assertThat(AreaUnit.of(symbol).orElseThrow().of(1).squareMetres()).isEqualTo(squareMetres);
    }

    /** NIST Special Publication 811, appendix B.8: the pound avoirdupois, exact. */
    @Test
    void massesConvertExactly() {
        assertThat(MassUnit.POUND.of(1).kilograms()).isEqualTo(0.45359237);
    }

    /** NIST Special Publication 811, appendix B.8: 1 gal (US) = 3.785 412 E-03 m³; a minute has 60 s. */
    @Test
    void aGallonAMinuteIsAsPublished() {
        assertThat(FlowUnit.GALLON_PER_MINUTE.of(1).cubicMetresPerSecond() * 60).isCloseTo(3.785412e-3, within(5e-10));
        assertThat(FlowUnit.LITRE_PER_SECOND.of(1).cubicMetresPerSecond()).isEqualTo(0.001);
    }

    @ParameterizedTest
    @EnumSource(LengthUnit.class)
    void anHourOfRainIsALength(LengthUnit tape) {
        assertThat(Rainfall.perHour(tape.of(4.7)).round(tape)).isEqualTo(4.7);
    }

    @Test
    void rainOnAnAreaRunsOffAndComesBackAsRain() {
        Rainfall rain = Rainfall.perHour(Length.millimetres(75));
        assertThat(rain.on(new Area(48)).in(FlowUnit.LITRE_PER_SECOND)).isCloseTo(1, within(1e-12));
        assertThat(Rainfall.of(rain.on(new Area(48)), new Area(48))).isEqualTo(rain);
    }

    @Test
    void waterIsNeverLessThanNothing() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Flow(-1e-9)).withMessageContaining("-1.0E-9");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Rainfall(Double.NaN))
                .withMessageContaining("NaN");
    }

    /** NIST Special Publication 811, appendix B.8: 1 lbf is 4.448222 N, 1 lbf/ft² is 47.88026 Pa. */
    @Test
    void poundsForceAreThoseOfThePublishedTable() {
        assertThat(ForceUnit.POUND_FORCE.of(1).newtons()).isCloseTo(4.448222, within(5e-7));
        assertThat(PressureUnit.POUND_FORCE_PER_SQUARE_FOOT.of(1).pascals()).isCloseTo(47.88026, within(5e-6));
        assertThat(PressureUnit.KILOPASCAL.of(1).pascals()).isEqualTo(1000);
    }

    @ParameterizedTest
    @EnumSource
    void aForceAndAPressureAreAnsweredInTheUnitsThatGoWithTheTape(LengthUnit tape) {
        boolean inches = tape == LengthUnit.INCH || tape == LengthUnit.FOOT;
        assertThat(ForceUnit.beside(tape)).isEqualTo(inches ? ForceUnit.POUND_FORCE : ForceUnit.NEWTON);
        assertThat(PressureUnit.beside(tape))
                .isEqualTo(inches ? PressureUnit.POUND_FORCE_PER_SQUARE_FOOT : PressureUnit.KILOPASCAL);
    }

    @Test
    void forcesAndPressuresAreNeverLessThanNothing() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Force(-1)).withMessageContaining("-1.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Pressure(Double.NaN))
                .withMessageContaining("NaN");
    }

    @Test
    void aSquareIsAHundredSquareFeet() {
        assertThat(AreaUnit.SQUARE_FOOT.round(AreaUnit.SQUARE.of(1))).isEqualTo(100);
    }

    /** UN/CEFACT Recommendation 20, revision 17 (2021), annexes I to III. */
    @Test
    void codesAreThoseOfRecommendation20() {
        assertThat(LengthUnit.values())
                .extracting(LengthUnit::symbol, LengthUnit::code)
                .containsExactly(
                        tuple("in", "INH"),
                        tuple("ft", "FOT"),
                        tuple("mm", "MMT"),
                        tuple("cm", "CMT"),
                        tuple("m", "MTR"));
        assertThat(AreaUnit.values())
                .extracting(AreaUnit::symbol, AreaUnit::code)
                .containsExactly(tuple("ft2", "FTK"), tuple("square", "SQR"), tuple("in2", "INK"), tuple("m2", "MTK"));
        assertThat(MassUnit.values())
                .extracting(MassUnit::symbol, MassUnit::code)
                .containsExactly(tuple("lb", "LBR"), tuple("kg", "KGM"));
        assertThat(FlowUnit.values())
                .extracting(FlowUnit::symbol, FlowUnit::code)
                .containsExactly(tuple("gal/min", "G2"), tuple("L/s", "G51"));
        assertThat(ForceUnit.values())
                .extracting(ForceUnit::symbol, ForceUnit::code)
                .containsExactly(tuple("lbf", "C78"), tuple("N", "NEW"));
        assertThat(PressureUnit.values())
                .extracting(PressureUnit::symbol, PressureUnit::code)
                .containsExactly(tuple("lbf/ft2", "K85"), tuple("kPa", "KPA"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "IN", "In", " in", "in ", "inch", "INH", "'", "ft²", "sq", "lbs"})
    void aSymbolIsMatchedToTheLetter(String symbol) {
        assertThat(LengthUnit.of(symbol)).isEmpty();
        assertThat(AreaUnit.of(symbol)).isEmpty();
        assertThat(MassUnit.of(symbol)).isEmpty();
    }

    @ParameterizedTest(name = "{0}, seed 41")
    @EnumSource
    void aLengthTypedWithNoMoreDecimalsThanAnswersHaveComesBackAsTyped(LengthUnit unit) {
        SplittableRandom random = new SplittableRandom(41);
        for (int i = 0; i < 50_000; i++) {
            double typed = BigDecimal.valueOf(random.nextLong(-10_000_000_000L, 10_000_000_000L), unit.decimals())
                    .doubleValue();
            assertThat(unit.round(unit.of(typed))).isEqualTo(typed);
        }
    }

    /** A thirty-second of an inch is 0.03125: halfway at four decimals, and common on a drawing. */
    @Test
    void thirtySecondsOfAnInchAllRoundAlikeAfterATripThroughMetres() {
        for (int whole = 0; whole < 2_000; whole++) {
            double rounded = LengthUnit.INCH.round(Length.inches(whole + 0.03125));
            assertThat(rounded)
                    .isEqualTo(BigDecimal.valueOf(whole)
                            .add(new BigDecimal("0.0313"))
                            .doubleValue());
        }
    }

    @Test
    void areasAndAnglesHaveFourDecimalsAndMassesThree() {
        assertThat(AreaUnit.SQUARE_METRE.round(new Area(69.28203230275))).isEqualTo(69.282);
        assertThat(AreaUnit.SQUARE_FOOT.round(new Area(12.3456789))).isEqualTo(132.8878);
        assertThat(MassUnit.KILOGRAM.round(new Mass(1.2345))).isEqualTo(1.235);
        assertThat(MassUnit.POUND.round(new Mass(1))).isEqualTo(2.205);
        assertThat(Angle.degrees(48.18968510422141).roundedDegrees()).isEqualTo(48.1897);
        assertThat(Angle.degrees(-0.00001).roundedDegrees()).isEqualTo(0.0);
    }
}
