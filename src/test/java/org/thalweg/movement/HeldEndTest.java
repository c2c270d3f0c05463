package org.thalweg.movement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Place;
import org.thalweg.finding.Source;
import org.thalweg.reference.Expansion;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;
import org.thalweg.units.Temperature;

/**
 * Ends of panels of zinc at α = 22·10⁻⁶ per kelvin, fastened at 15 °C where they see −20 °C to 80 °C: 8 m of it grow by 11.44 mm
 * and shrink by 6.16 mm. [by hand: 22·10⁻⁶ · 8000 · 65 and 22·10⁻⁶ · 8000 · 35, EN 988]
 */
class HeldEndTest {

    private static final Temperatures RANGE =
            new Temperatures(Temperature.celsius(-20), Temperature.celsius(80), Temperature.celsius(15));
    private static final Expansion ZINC = new Expansion(22e-6);
    private static final Growth EIGHT_METRES = Growth.of(Length.metres(8), ZINC, RANGE);
    private static final Growth NONE = Growth.of(Length.ZERO, ZINC, RANGE);
    private static final Place EDGE = new Place(Place.Kind.EDGE, "E1", Origin.REQUEST);

    private static Play play(double millimetres) {
        return new Play(Length.millimetres(millimetres), Source.REQUEST);
    }

    private static HeldEnd hooked(Growth growth, Angle mitre, double engaged, double gap) {
        HemHook hem = new HemHook(Length.millimetres(engaged), Length.millimetres(gap), Source.REQUEST);
        return HeldEnd.hooked(EDGE, true, growth, mitre, hem);
    }

    private static double mm(Length length) {
        return length.in(LengthUnit.MILLIMETRE);
    }

    @Test
    void screwsLetAnEndMoveByThePlayOfTheirHolesAndNoFurther() {
        assertThat(HeldEnd.screwed(EDGE, true, EIGHT_METRES, play(11.5)).within())
                .isTrue();
        HeldEnd held = HeldEnd.screwed(EDGE, true, EIGHT_METRES, play(11));
        assertThat(held.outTooFar()).isTrue();
        assertThat(held.inTooFar()).isFalse();
        assertThat(mm(held.excess())).isCloseTo(0.44, within(1e-9));
        assertThat(HeldEnd.screwed(EDGE, true, EIGHT_METRES, play(6)).inTooFar())
                .isTrue();
    }

    @Test
    void aHemSlipsOffWhenThePanelGrowsByAllThatIsHooked() {
        assertThat(hooked(EIGHT_METRES, Angle.ZERO, 11.5, 6.5).within()).isTrue();
        HeldEnd slips = hooked(EIGHT_METRES, Angle.ZERO, 11.4, 6.5);
        assertThat(slips.outTooFar()).isTrue();
        assertThat(slips.inTooFar()).isFalse();
        Length all = EIGHT_METRES.longer();
        HeldEnd justOff = HeldEnd.hooked(EDGE, true, EIGHT_METRES, Angle.ZERO, new HemHook(all, all, Source.REQUEST));
        assertThat(justOff.outTooFar()).isTrue();
        assertThat(HeldEnd.screwed(EDGE, true, EIGHT_METRES, new Play(all, Source.REQUEST))
                        .outTooFar())
                .isFalse();
    }

    @Test
    void aHemBearsOnItsCleatWhenThePanelShrinksByMoreThanTheGap() {
        HeldEnd bears = hooked(EIGHT_METRES, Angle.ZERO, 20, 6);
        assertThat(bears.outTooFar()).isFalse();
        assertThat(bears.inTooFar()).isTrue();
        assertThat(mm(bears.excess())).isCloseTo(0.16, within(1e-9));
    }

    /** At φ with cos φ = 2/3 the hem opens by two thirds of what the panel grows; the rest runs along the valley. */
    @Test
    void aMitredHemMovesByWhatIsSquareToIt() {
        Angle mitre = new Angle(Math.acos(2 / 3.0));
        assertThat(mm(hooked(EIGHT_METRES, mitre, 7.7, 4.2).moves().longer())).isCloseTo(7.6266666667, within(1e-9));
        assertThat(hooked(EIGHT_METRES, mitre, 7.7, 4.2).within()).isTrue();
        assertThat(hooked(EIGHT_METRES, mitre, 7.6, 4.2).within()).isFalse();
    }

    @Test
    void anEndThatIsFixedNeedsNoHemAtAll() {
        assertThat(hooked(NONE, Angle.ZERO, 0, 0).within()).isTrue();
        assertThat(hooked(EIGHT_METRES, Angle.ZERO, 0, 0).within()).isFalse();
    }

    @Test
    void anEndThatNothingHoldsMayMoveAsFarAsItWill() {
        HeldEnd free = HeldEnd.free(EDGE, false, EIGHT_METRES);
        assertThat(free.within()).isTrue();
        assertThat(free.allowed()).isEmpty();
    }

    @Test
    void aHemIsHookedHalfWayUnlessSomebodyKnowsBetter() {
        HemHook half = HemHook.halfWayInto(Length.inches(1));
        assertThat(half.engaged()).isEqualTo(Length.inches(0.5));
        assertThat(half.gap()).isEqualTo(Length.inches(0.5));
        assertThat(half.source()).isEqualTo(Source.COMMON_PRACTICE);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> hooked(NONE, Angle.ZERO, -1, 0))
                .withMessageContaining("-0.001");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Allowance(Length.millimetres(-1), Length.ZERO, Source.REQUEST))
                .withMessageContaining("-0.001");
    }

    @Test
    void aPanelThatIsScrewedBelowAndAboveIsFixedTwice() {
        HeldEnd below = HeldEnd.screwed(EDGE, true, NONE, play(1));
        HeldEnd above = HeldEnd.screwed(EDGE, false, EIGHT_METRES, play(1));
        assertThat(panel(List.of(below, above)).screwedTwice()).isTrue();
        assertThat(panel(List.of(above)).screwedTwice()).isFalse();
        assertThat(panel(List.of(HeldEnd.free(EDGE, true, NONE), above)).screwedTwice())
                .isFalse();
        assertThat(mm(panel(List.of()).travelNeeded())).isCloseTo(11.44, within(1e-9));
    }

    private static MovingPanel panel(List<HeldEnd> ends) {
        return new MovingPanel("p-1", new Place(Place.Kind.PLANE, "p", Origin.REQUEST), NONE, EIGHT_METRES, true, ends);
    }

    /** 11 mm of travel: 11 / (22·10⁻⁶ · 65) mm. */
    @Test
    void thePanelThatClipsAllowIsAsLongAsTheirTravelLasts() {
        Length longest = Growth.longest(play(11), ZINC, RANGE).orElseThrow();
        assertThat(longest.metres()).isCloseTo(7.692307692, within(1e-9));
        assertThat(mm(Growth.of(longest, ZINC, RANGE).most())).isCloseTo(11, within(1e-9));
    }

    /**
     * Steel at 6.7·10⁻⁶ per °F and the 200 °F that UFC 3-110-03 (2006) ch. 4 asks clips to be made for: 40 ft move 0.6432 in, so
     * clips that travel as much allow 40 ft.
     */
    @Test
    void fortyFeetOfSteelNeedThePublishedTravel() {
        Temperatures all =
                new Temperatures(Temperature.fahrenheit(-20), Temperature.fahrenheit(180), Temperature.fahrenheit(-20));
        Length longest = Growth.longest(
                        new Play(Length.inches(0.6432), Source.REQUEST), new Expansion(6.7e-6 * 1.8), all)
                .orElseThrow();
        assertThat(longest.in(LengthUnit.FOOT)).isCloseTo(40, within(1e-9));
    }

    @Test
    void aRoofThatNeverChangesItsTemperatureAllowsPanelsOfAnyLength() {
        Temperature one = Temperature.celsius(20);
        assertThat(Growth.longest(play(1), ZINC, new Temperatures(one, one, one)))
                .isEmpty();
    }

    /** 8 m of pan that shrink by 6.16 mm leave 193.84 mm of a lap of 200 mm, and nothing of one of 6 mm. */
    @Test
    void aPieceThatShrinksFromItsHeadTakesThatOffItsLap() {
        LappedPiece piece = new LappedPiece(EIGHT_METRES, Optional.of(Length.millimetres(200)));
        assertThat(mm(piece.lapLeft().orElseThrow())).isCloseTo(193.84, within(1e-9));
        assertThat(new LappedPiece(EIGHT_METRES, Optional.of(Length.millimetres(6))).lapLeft())
                .contains(Length.ZERO);
        assertThat(new LappedPiece(EIGHT_METRES, Optional.empty()).lapLeft()).isEmpty();
    }
}
