package org.thalweg.wind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thalweg.geometry.Point3;
import org.thalweg.roof.Drawn;
import org.thalweg.roof.Roof;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;

class ZoneWidthTest {

    /**
     * By hand from the published rule: 10 % of the least dimension or 0.4 h, the smaller; at least 4 % of the least dimension
     * and 3 ft. The four decide in turn.
     */
    @ParameterizedTest
    @CsvSource({"40, 20, 4", "100, 15, 6", "200, 15, 8", "24, 20, 3", "40, 5, 3"})
    void theWidthFollowsThePublishedRule(double least, double height, double width) {
        assertThat(ZoneWidth.of(Length.feet(least), Length.feet(height)).width().in(LengthUnit.FOOT))
                .isCloseTo(width, within(1e-9));
    }

    @Test
    void aBuildingStandsAboveTheGround() {
        assertThatThrownBy(() -> ZoneWidth.of(Length.feet(40), Length.ZERO))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static Drawn gable() {
        return Drawn.plan("""
                D        C

                R        S

                A        B
                """).height(1, "RS").planes("ABSR", "CDRS");
    }

    private static double least(Roof roof) {
        return ZoneWidth.of(roof, Length.metres(5)).least().metres();
    }

    @Test
    void theLeastDimensionOfARectangleIsItsShorterSide() {
        assertThat(least(gable().read().roof())).isCloseTo(4, within(1e-9));
    }

    /** Turned by 3-4-5 and far away. */
    @Test
    void theLeastDimensionDoesNotDependOnHowTheHouseLies() {
        Roof turned = gable().move(
                        "ABCDRS",
                        p -> new Point3(0.8 * p.x() - 0.6 * p.y() + 5000, 0.6 * p.x() + 0.8 * p.y() - 900, p.z()))
                .read()
                .roof();
        assertThat(least(turned)).isCloseTo(4, within(1e-9));
    }

    /** An L of two wings 2 wide and 6 long: held by lines at 45 degrees, from the far inner corners of the ends, 8 / √2 apart. */
    @Test
    void theInnerCornerOfAnLIsLeftOut() {
        Roof roof = Drawn.plan("""
                F E



                  D   C

                A     B
                """).planes("ABCDEF").read().roof();
        assertThat(least(roof)).isCloseTo(8 / Math.sqrt(2), within(1e-9));
    }
}
