package org.thalweg.movement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.thalweg.finding.Finding;
import org.thalweg.finding.FindingCode;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Place;
import org.thalweg.finding.Source;
import org.thalweg.reference.Expansion;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;
import org.thalweg.units.Measure;
import org.thalweg.units.Temperature;

/**
 * Panels of zinc at α = 22·10⁻⁶ per kelvin, fastened at 15 °C where they see −20 °C to 80 °C: 8 m of it grow by 11.44 mm and
 * shrink by 6.16 mm. [by hand: 22·10⁻⁶ · 8000 · 65 and 22·10⁻⁶ · 8000 · 35, EN 988]
 */
class MovesTest {

    private static final Temperatures RANGE =
            new Temperatures(Temperature.celsius(-20), Temperature.celsius(80), Temperature.celsius(15));
    private static final Expansion ZINC = new Expansion(22e-6);
    private static final Moves PANEL = new Moves(new Place(Place.Kind.PANEL, "south-4", Origin.REQUEST), ZINC, RANGE);
    private static final Length FREE = Length.metres(8);

    private static Play travel(double millimetres) {
        return new Play(Length.millimetres(millimetres), Source.REQUEST);
    }

    private static HemHook hem(double engaged, double gap) {
        return new HemHook(Length.millimetres(engaged), Length.millimetres(gap), Source.REQUEST);
    }

    private static double mm(Optional<? extends Measure> measure) {
        return ((Length) measure.orElseThrow()).in(LengthUnit.MILLIMETRE);
    }

    @Test
    void clipsMustTravelAsFarAsTheFurtherEndMoves() {
        assertThat(PANEL.onClips(FREE, travel(11.5), FREE)).isEmpty();
        Finding tooLittle = PANEL.onClips(FREE, travel(11), Length.metres(7)).orElseThrow();
        assertThat(tooLittle.code()).isEqualTo(FindingCode.CLIP_TRAVEL_TOO_SMALL);
        assertThat(mm(tooLittle.actual())).isCloseTo(11.44, within(1e-9));
        assertThat(mm(tooLittle.limit())).isCloseTo(11, within(1e-9));
        assertThat(tooLittle.needed()).singleElement().isEqualTo(new Finding.Needed("longestPanel", Length.metres(7)));
    }

    /** 11 mm of travel: 11 / (22·10⁻⁶ · 65) mm; a metre more would not do. */
    @Test
    void thePanelThatClipsAllowIsAsLongAsTheirTravelLasts() {
        Length longest = Growth.longest(travel(11), ZINC, RANGE).orElseThrow();
        assertThat(longest.metres()).isCloseTo(7.692307692, within(1e-9));
        assertThat(PANEL.onClips(Length.metres(longest.metres() - 1e-9), travel(11), longest))
                .isEmpty();
        assertThat(PANEL.onClips(Length.metres(longest.metres() + 0.001), travel(11), longest))
                .isPresent();
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
        assertThat(Growth.longest(travel(1), ZINC, new Temperatures(one, one, one)))
                .isEmpty();
    }

    @Test
    void aHemSlipsOffWhenThePanelGrowsByAllThatIsHooked() {
        assertThat(PANEL.inHem(FREE, Angle.ZERO, hem(11.5, 6.5), "E1")).isEmpty();
        Finding slips = PANEL.inHem(FREE, Angle.ZERO, hem(11.4, 6.5), "E1").orElseThrow();
        assertThat(slips.code()).isEqualTo(FindingCode.HEM_TOO_SHORT);
        assertThat(slips.message()).startsWith("Growing").contains("edge E1");
        assertThat(mm(slips.actual())).isCloseTo(11.44, within(1e-9));
        assertThat(mm(Optional.of(slips.needed().get(0).figure()))).isCloseTo(17.6, within(1e-9));
    }

    @Test
    void aHemBearsOnItsCleatWhenThePanelShrinksByMoreThanTheGap() {
        Finding bears = PANEL.inHem(FREE, Angle.ZERO, hem(20, 6), "E1").orElseThrow();
        assertThat(bears.message()).startsWith("Shrinking");
        assertThat(mm(bears.actual())).isCloseTo(6.16, within(1e-9));
        assertThat(mm(bears.limit())).isCloseTo(6, within(1e-9));
    }

    /** At φ with cos φ = 2/3 the hem opens by two thirds of what the panel grows; the rest runs along the valley. */
    @Test
    void aMitredHemMovesByWhatIsSquareToIt() {
        Angle mitre = new Angle(Math.acos(2 / 3.0));
        assertThat(PANEL.growth(FREE).squareTo(mitre).longer().in(LengthUnit.MILLIMETRE))
                .isCloseTo(7.6266666667, within(1e-9));
        assertThat(PANEL.inHem(FREE, mitre, hem(7.7, 4.2), "V1")).isEmpty();
        assertThat(PANEL.inHem(FREE, mitre, hem(7.6, 4.2), "V1")).isPresent();
    }

    @Test
    void anEndThatIsFixedNeedsNoHemAtAll() {
        assertThat(PANEL.inHem(Length.ZERO, Angle.ZERO, hem(0, 0), "E1")).isEmpty();
    }

    @Test
    void screwsThroughAnEndThatMovesLetItMoveByThePlayOfTheirHolesOnly() {
        assertThat(PANEL.underScrews(Length.metres(1), Play.SCREW_HOLE, "E1")).isEmpty();
        Finding held = PANEL.underScrews(FREE, Play.SCREW_HOLE, "E1").orElseThrow();
        assertThat(held.code()).isEqualTo(FindingCode.FIXED_PANEL_MOVES);
        assertThat(held.source()).isEqualTo(Source.COMMON_PRACTICE);
        assertThat(mm(held.actual())).isCloseTo(11.44, within(1e-9));
    }

    @Test
    void aHemIsHookedHalfWayUnlessSomebodyKnowsBetter() {
        HemHook half = HemHook.halfWayInto(Length.inches(1));
        assertThat(half.engaged()).isEqualTo(Length.inches(0.5));
        assertThat(half.gap()).isEqualTo(Length.inches(0.5));
        assertThat(half.source()).isEqualTo(Source.COMMON_PRACTICE);
        assertThatIllegalArgumentException().isThrownBy(() -> hem(-1, 0)).withMessageContaining("-0.001");
    }
}
