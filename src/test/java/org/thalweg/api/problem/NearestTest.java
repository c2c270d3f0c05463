package org.thalweg.api.problem;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {

    private static final List<String> KNOWN = List.of("outline", "openings", "id", "A", "R1", "R2");

    @ParameterizedTest
    @CsvSource({
        "outlines,outline",
        "Outline,outline",
        "opening,openings",
        "ID,id",
        "outlien,outline",
        "r1,R1",
        "R3,R1",
        "B,A"
    })
    void aNameWithFewLettersChangedIsFound(String name, String meant) {
        assertThat(Nearest.of(name, KNOWN)).contains(meant);
    }

    @ParameterizedTest
    @CsvSource({"pitch", "eave", "edges"})
    void aNameThatIsLikeNoOtherIsNot(String name) {
        assertThat(Nearest.of(name, KNOWN)).isEmpty();
    }

    @Test
    void theHintIsASentenceOrNothing() {
        assertThat(Nearest.hint("outlines", KNOWN)).isEqualTo(" Did you mean \"outline\"?");
        assertThat(Nearest.hint("pitch", KNOWN)).isEmpty();
    }
}
