package org.thalweg.api.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFileTest {

    @TempDir
    Path folder;

    @Test
    void isNotThereBeforeItIsWholeAndThenAlone() throws IOException {
        Path target = folder.resolve("answers");
        try (WholeFile file = WholeFile.begin(target)) {
            file.out().write(bytes("all"));
            assertThat(target).doesNotExist();
            file.publish();
        }
        assertThat(target).hasContent("all");
        assertThat(Night.files(folder)).containsExactly(target);
    }

    @Test
    void takesThePlaceOfWhatWasThere() throws IOException {
        Path target = Files.writeString(folder.resolve("answers"), "older and longer");
        WholeFile.write(target, bytes("new"));
        assertThat(target).hasContent("new");
    }

    @Test
    void leavesWhatWasThereWhenItIsGivenUp() throws IOException {
        Path target = Files.writeString(folder.resolve("answers"), "older");
        try (WholeFile file = WholeFile.begin(target)) {
            file.out().write(bytes("ha"));
        }
        assertThat(target).hasContent("older");
        assertThat(Night.files(folder)).containsExactly(target);
    }

    @Test
    void twoThatWriteTheSameDoNotMix() throws IOException {
        Path target = folder.resolve("answers");
        try (WholeFile one = WholeFile.begin(target);
                WholeFile other = WholeFile.begin(target)) {
            one.out().write(bytes("one"));
            other.out().write(bytes("other"));
            one.publish();
            assertThat(target).hasContent("one");
            other.publish();
        }
        assertThat(target).hasContent("other");
        assertThat(Night.files(folder)).containsExactly(target);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
