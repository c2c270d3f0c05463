package org.thalweg.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PitchTest {

    @ParameterizedTest
    @CsvSource({
        "6:12, 6, 12",
        "1/4:12, 0.25, 12",
        "8.5:12, 8.5, 12",
        "6 1/2:12, 6.5, 12",
        "6/12, 6, 12",
        "14/12, 14, 12",
        "0:12, 0, 12",
        "' 6 : 12 ', 6, 12",
        "300:1000, 300, 1000",
    })
    void readsAPitchAsCrewsWriteIt(String text, double rise, double run) {
        assertThat(Pitch.read(text)).contains(new Pitch(rise, run));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "6",
                ":",
                "/",
                "6:",
                ":12",
                "6:0",
                "6:0.0",
                "0:0",
                "0/0",
                "6/0",
                "-6:12",
                "6:-12",
                "+6:12",
                "NaN:12",
                "6:NaN",
                "Infinity:12",
                "6:Infinity",
                "1e400:12",
                "6:1e-400",
                "1e1:12",
                "0x6:12",
                "6:12:12",
                "6//12",
                "1/4/12",
                "1/0:12",
                "5/4:12",
                "6:1/2",
                "6.:12",
                ".5:12",
                "6,5:12",
                "6:12 ft",
                "6in12",
                "٦:12",
                "６:12",
                "6\n:12",
                "6:12\u0000",
                "1000000000000000000000000000000000000000:1"
            })
    void everythingElseIsNoPitch(String text) {
        assertThat(Pitch.read(text)).isEmpty();
    }
}
