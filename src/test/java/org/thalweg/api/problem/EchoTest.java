package org.thalweg.api.problem;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EchoTest {

    @Test
    void plainWordsComeBackInQuotes() {
        assertThat(Echo.of("south wing № 2 é")).isEqualTo("\"south wing № 2 é\"");
    }

    @Test
    void longWordsAreCutAfterFortyCharacters() {
        assertThat(Echo.of("x".repeat(40))).isEqualTo("\"" + "x".repeat(40) + "\"");
        assertThat(Echo.of("x".repeat(41))).isEqualTo("\"" + "x".repeat(40) + "…\"");
    }

    @Test
    void noCharacterIsCutInHalf() {
        assertThat(Echo.of("😀".repeat(41))).isEqualTo("\"" + "😀".repeat(40) + "…\"");
    }

    @ParameterizedTest
    @CsvSource({
        "7,\\u0007",
        "10,\\u000a",
        "127,\\u007f",
        "8238,\\u202e",
        "8232,\\u2028",
        "65279,\\ufeff",
        "917505,\\udb40\\udc01"
    })
    void whatCouldActOnAScreenOrALogIsWrittenAsAnEscape(int codePoint, String escape) {
        assertThat(Echo.of("a" + Character.toString(codePoint) + "b")).isEqualTo("\"a" + escape + "b\"");
    }

    @Test
    void halfOfAPairIsWrittenAsAnEscape() {
        assertThat(Echo.of("a\ud800b")).isEqualTo("\"a\\ud800b\"");
    }
}
