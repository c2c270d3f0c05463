package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;

class PanelDefaultsTest {

    /**
     * Copper Roofings, a manual (1920s, trade association, public domain): edges of 1 1/2 and 1 1/4 in are turned up for a
     * standing seam, so seams stand as far apart as the sheet is wide less 2 3/4 in: 21 1/4 in of a sheet of 24 in.
     */
    @ParameterizedTest(name = "{0} in cover takes a sheet of {1} in")
    @CsvSource({"21.25, 24", "17.25, 20", "15.25, 18"})
    void aSheetIsAsMuchWiderThanItsCoverAsTheManualTurnsUp(double cover, double sheet) {
        assertThat(LengthUnit.INCH.from(PanelDefaults.girth(Length.inches(cover))))
                .isCloseTo(sheet, within(1e-9));
    }
}
