package org.thalweg.movement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.thalweg.finding.Source;
import org.thalweg.reference.Expansion;
import org.thalweg.reference.Metals;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;

/** When fixed screws will do at a valley, and when the panels want cleats. */
class HoldAdviceTest {

    private static final Expansion STEEL =
            Metals.of("galvanized-steel").orElseThrow().expansion().value();

    /** By hand, 60 to 180 °F: 6.7e-6 × 72 × 120 = 0.058 in, and 1/16 in is 0.0625 in. */
    @Test
    void steelPanelsOfSixFeetCanBeScrewed() {
        HoldAdvice advice = advice(Length.feet(6));
        assertThat(advice.fixedWillDo()).isTrue();
        assertThat(advice.growth().in(LengthUnit.INCH)).isCloseTo(0.0579, within(0.00005));
    }

    /** By hand, 60 to 180 °F: 6.7e-6 × 84 × 120 = 0.0675 in. */
    @Test
    void steelPanelsOfSevenFeetWantCleats() {
        HoldAdvice advice = advice(Length.feet(7));
        assertThat(advice.fixedWillDo()).isFalse();
        assertThat(advice.growth().in(LengthUnit.INCH)).isCloseTo(0.0675, within(0.00005));
    }

    /** 120 °F of growth and 80 °F of shrinking stay under 1/16 in each, though the whole swing does not. */
    @Test
    void thePlayIsHeldAgainstTheGreaterWayAndNotAgainstTheWholeSwing() {
        Growth growth = Growth.of(Length.feet(6), STEEL, Temperatures.USUAL);
        assertThat(growth.range()).isGreaterThan(Play.SCREW_HOLE.eachWay());
        assertThat(HoldAdvice.of(growth, Play.SCREW_HOLE).fixedWillDo()).isTrue();
    }

    @Test
    void shrinkingDecidesWhereItIsTheMore() {
        Growth growth = new Growth(Length.millimetres(1), Length.millimetres(3));
        HoldAdvice advice = HoldAdvice.of(growth, new Play(Length.millimetres(2), Source.REQUEST));
        assertThat(advice.growth()).isEqualTo(Length.millimetres(3));
        assertThat(advice.fixedWillDo()).isFalse();
    }

    @Test
    void aPanelThatMovesByTheWholePlayCanBeScrewed() {
        Growth growth = new Growth(Length.millimetres(2), Length.millimetres(1));
        assertThat(HoldAdvice.of(growth, new Play(Length.millimetres(2), Source.REQUEST))
                        .fixedWillDo())
                .isTrue();
    }

    @Test
    void theLimitAndWhoseItIsAreTold() {
        HoldAdvice advice = advice(Length.feet(20));
        assertThat(advice.limit()).isEqualTo(Length.inches(0.0625));
        assertThat(advice.source()).isEqualTo(Source.COMMON_PRACTICE);
        Play slotted = new Play(Length.inches(0.5), Source.REQUEST);
        HoldAdvice callers = HoldAdvice.of(Growth.of(Length.feet(20), STEEL, Temperatures.USUAL), slotted);
        assertThat(callers.limit()).isEqualTo(Length.inches(0.5));
        assertThat(callers.source()).isEqualTo(Source.REQUEST);
        assertThat(callers.fixedWillDo()).isTrue();
    }

    @Test
    void playIsNeverNegative() {
        assertThatThrownBy(() -> new Play(Length.millimetres(-1), Source.REQUEST))
                .hasMessageContaining("play");
    }

    private static HoldAdvice advice(Length free) {
        return HoldAdvice.of(Growth.of(free, STEEL, Temperatures.USUAL), Play.SCREW_HOLE);
    }
}
