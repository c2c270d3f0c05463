package org.thalweg.trim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.thalweg.finding.Source;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;

/** What bends take up, against the handbooks and standards that print it. */
class BendAllowanceTest {

    private static final BendAllowance NAVY = new BendAllowance.Empirical(
            0.0173, 0.0078, new Source("US Navy aviation structural training manual ch. 13"));
    private static final double NOTHING = 1e-12;

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/published/bend-allowance.csv", useHeadersInDisplayName = true)
    void aBendTakesUpWhatIsPrinted(
            String id,
            String method,
            double radius,
            double thickness,
            double turn,
            String unit,
            double allowance,
            double allowanceHalf,
            Double deduction,
            Double deductionHalf) {
        BendAllowance formula =
                switch (method) {
                    case "handbook" -> BendAllowance.HANDBOOK;
                    case "navy" -> NAVY;
                    default -> new BendAllowance.Din6935();
                };
        LengthUnit in = unit.equals("in") ? LengthUnit.INCH : LengthUnit.MILLIMETRE;
        Bend bend = new Bend(Angle.degrees(turn), true, in.of(radius));
        assertThat(formula.of(bend, in.of(thickness)).in(in)).isCloseTo(allowance, within(allowanceHalf + NOTHING));
        if (deduction != null) {
            assertThat(formula.deduction(bend, in.of(thickness)).in(in))
                    .isCloseTo(deduction, within(deductionHalf + NOTHING));
        }
    }

    /** The factor the standard's tables print for r/s of 1, 1.6, 2.5, 10/7 and 3. */
    @ParameterizedTest
    @CsvSource({"1, 1, 0.65000", "1.6, 1, 0.75206", "2.5, 1, 0.84897", "1, 0.7, 0.72745", "6, 2, 0.88856", "20, 1, 1"})
    void theGermanFactorGrowsWithTheRadiusUpToOne(double radius, double thickness, double k) {
        assertThat(new BendAllowance.Din6935().factor(Length.millimetres(radius), Length.millimetres(thickness)))
                .isCloseTo(k, within(0.000005));
    }

    @Test
    void aSharpBendTakesUpNothingByTheGermanFormulaRatherThanLess() {
        Bend sharp = bend(90, 0);
        assertThat(new BendAllowance.Din6935().of(sharp, Length.inches(0.03))).isEqualTo(Length.ZERO);
        assertThat(new BendAllowance.Din6935()
                        .of(bend(90, 0.0001), Length.inches(0.03))
                        .metres())
                .isCloseTo(Length.inches(Math.PI / 2 * 0.0001).metres(), within(NOTHING));
    }

    /** 0.0078 by 180 over π, computed by hand: the empirical formula is a K-factor of 0.4469. */
    @Test
    void theFactorUsedIsThatOfTheHandbook() {
        assertThat(((BendAllowance.KFactor) BendAllowance.USUAL).k()).isCloseTo(0.44691, within(0.000005));
        assertThat(BendAllowance.USUAL.source().text()).contains("FAA-H-8083-31");
    }

    /** They differ by as much as 0.01743 differs from π/180: 0.14 % of the radius' share. */
    @ParameterizedTest
    @ValueSource(doubles = {15, 60, 90, 135, 180})
    void theFactorAndTheFormulaAgreeWithinTheDigitsOfTheFormula(double turn) {
        Bend bend = bend(turn, 0.0625);
        double byFactor = BendAllowance.USUAL.of(bend, Length.inches(0.0276)).metres();
        double byFormula =
                BendAllowance.HANDBOOK.of(bend, Length.inches(0.0276)).metres();
        assertThat(byFactor).isCloseTo(byFormula, within(0.0014 * byFormula));
        assertThat(byFactor).isGreaterThan(byFormula);
    }

    /** A metal that stretches along its middle: half a turn of a ring of radius r + t/2. */
    @Test
    void aFactorOfAHalfIsTheMiddleOfTheSheet() {
        BendAllowance middle = new BendAllowance.KFactor(0.5, Source.REQUEST);
        assertThat(middle.of(bend(180, 1), Length.inches(0.5)).in(LengthUnit.INCH))
                .isCloseTo(3.92699, within(0.000005));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, 1.01, Double.NaN})
    void aFactorOutsideOfTheSheetIsNone(double k) {
        assertThatThrownBy(() -> new BendAllowance.KFactor(k, Source.REQUEST))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("K-factor");
    }

    /** FAA-H-8083-31, fig. 4-124: SB = K (R + T) with K = 1 at 90°: 0.2 in. K is tan of half the bend. */
    @ParameterizedTest
    @CsvSource({"90, 0.2", "60, 0.115470", "30, 0.053590", "0, 0"})
    void theMouldLineLiesBeyondTheFlatByTheSetback(double turn, double setback) {
        assertThat(bend(turn, 0.16).setback(Length.inches(0.04)).in(LengthUnit.INCH))
                .isCloseTo(setback, within(0.0000005));
    }

    @ParameterizedTest
    @ValueSource(doubles = {90, 90.001, 135, 179, 180})
    void pastASquareBendALegIsMeasuredToTheOutermostOfTheBend(double turn) {
        assertThat(bend(turn, 0.16).setback(Length.inches(0.04)).in(LengthUnit.INCH))
                .isCloseTo(0.2, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, 180.01, Double.NaN})
    void metalTurnsNoFurtherThanBackOnItself(double turn) {
        assertThatThrownBy(() -> bend(turn, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("180°");
    }

    private static Bend bend(double turnDeg, double radiusInches) {
        return new Bend(Angle.degrees(turnDeg), true, Length.inches(radiusInches));
    }
}
