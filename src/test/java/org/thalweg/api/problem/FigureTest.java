package org.thalweg.api.problem;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FigureTest {

    @ParameterizedTest
    @CsvSource({
        "12.5, in, 12.5 in",
        "0.0394, in, 0.0394 in",
        "10000000, m, 10000000 m",
        "30, deg, 30°",
        "0.25, per 12, 0.25 per 12",
        "3, 1, 3",
        "0, 1, 0",
        "-1.5, mm, -1.5 mm",
        "1e300, 1, 1E+300"
    })
    void aFigureReadsAsPeopleWriteIt(double value, String unit, String text) {
        assertThat(new Figure(value, unit).text()).isEqualTo(text);
    }
}
