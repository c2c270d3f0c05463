package org.thalweg.fastening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thalweg.reference.Rules;
import org.thalweg.units.ForceUnit;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;
import org.thalweg.units.Pressure;
import org.thalweg.units.PressureUnit;

class ClipLoadTest {

    private static final Length COVER = Length.inches(18);
    private static final Length MOST = Rules.clipFieldSpacing().value();

    private static double spacing(double pounds, double psf) {
        return new ClipLoad(ForceUnit.POUND_FORCE.of(pounds), MOST)
                .spacing(PressureUnit.POUND_FORCE_PER_SQUARE_FOOT.of(psf), COVER)
                .in(LengthUnit.INCH);
    }

    /** A clip of 150 lbf and a panel 1.5 ft wide: at 50 lbf/ft², 75 lbf on each foot, so 2 ft. By hand. */
    @ParameterizedTest
    @CsvSource({"150, 50, 24", "150, 100, 12", "150, 20, 60", "150, 20.1, 59.7015", "150, 5, 60", "75, 50, 12"})
    void aClipHoldsThePanelHalfWayToItsNeighbours(double pounds, double psf, double inches) {
        assertThat(spacing(pounds, psf)).isCloseTo(inches, within(5e-5));
    }

    @Test
    void noWindLeavesThemAsFarApartAsTheyMayEverStand() {
        assertThat(new ClipLoad(ForceUnit.POUND_FORCE.of(150), MOST).spacing(new Pressure(0), COVER))
                .isEqualTo(MOST);
    }

    /** EI 01S908 7c: the load a single clip fails at is divided by 3. */
    @Test
    void aTestedClipIsTrustedWithAThirdOfWhatItFailedAt() {
        ClipLoad tested = ClipLoad.tested(ForceUnit.POUND_FORCE.of(450), MOST);
        assertThat(tested.allowable().in(ForceUnit.POUND_FORCE)).isCloseTo(150, within(1e-9));
    }
}
