package org.thalweg.stock;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.thalweg.units.Length;

class GridTest {

    @Test
    void whateverATapeShowsIsExact() {
        assertThat(Grid.atLeast(Length.inches(1.0 / 64))).isEqualTo(127);
        assertThat(Grid.atLeast(Length.millimetres(0.1))).isEqualTo(32);
        for (int mark = 1; mark <= 64 * 480; mark++) {
            assertThat(Grid.atLeast(Length.inches(mark / 64.0)))
                    .isEqualTo(Grid.atMost(Length.inches(mark / 64.0)))
                    .isEqualTo(127L * mark);
        }
        for (int mark = 1; mark <= 120_000; mark++) {
            assertThat(Grid.atLeast(Length.millimetres(mark / 10.0)))
                    .isEqualTo(Grid.atMost(Length.millimetres(mark / 10.0)))
                    .isEqualTo(32L * mark);
        }
    }

    @Test
    void whatIsBetweenTwoStepsIsRoundedToTheSafeSide() {
        Length between = Length.metres(1.5 / 320_000);
        assertThat(Grid.atLeast(between)).isEqualTo(2);
        assertThat(Grid.atMost(between)).isEqualTo(1);
    }

    @Test
    void stepsComeBackAsTheLengthTheyWere() {
        assertThat(Grid.length(Grid.atLeast(Length.inches(120)))).isEqualTo(Length.inches(120));
        assertThat(Grid.length(320)).isEqualTo(Length.millimetres(1));
        assertThat(Grid.nearest(Length.inches(-20.125))).isEqualTo(-127L * (20 * 64 + 8));
    }
}
