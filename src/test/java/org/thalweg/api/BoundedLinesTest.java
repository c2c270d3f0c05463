package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class BoundedLinesTest {

    private static final int MOST = 20;

    private static List<String> lines(InputStream in, int most) throws IOException {
        List<String> told = new ArrayList<>();
        BoundedLines lines = new BoundedLines(in, most);
        while (lines.next()) {
            told.add(lines.number() + ":"
                    + (lines.overlong() ? "overlong" : new String(lines.copy(), StandardCharsets.US_ASCII)));
        }
        return told;
    }

    private static InputStream text(String text) {
        return new ByteArrayInputStream(text.getBytes(StandardCharsets.US_ASCII));
    }

    /** Gives as few bytes at once as it likes. */
    private static InputStream inBits(String text, Random random) {
        return new ByteArrayInputStream(text.getBytes(StandardCharsets.US_ASCII)) {
            @Override
            public synchronized int read(byte[] to, int at, int length) {
                return super.read(to, at, Math.min(length, 1 + random.nextInt(7)));
            }
        };
    }

    @Test
    void linesEndAsAnybodyEndsThem() throws IOException {
        assertThat(lines(text(""), MOST)).isEmpty();
        assertThat(lines(text("a"), MOST)).containsExactly("1:a");
        assertThat(lines(text("a\n\r\n \t\nb\r\nc"), MOST)).containsExactly("1:a", "4:b", "5:c");
        assertThat(lines(text("a\rb\n"), MOST)).containsExactly("1:a\rb");
    }

    @Test
    void aLineThatIsTooLongIsToldAndTheNextOneIsRead() throws IOException {
        String full = "x".repeat(MOST);
        assertThat(lines(text(full + "\n" + full + "\r\n" + full + "y\n" + full + "y\r\n" + "b"), MOST))
                .containsExactly("1:" + full, "2:" + full, "3:overlong", "4:overlong", "5:b");
        assertThat(lines(text("x".repeat(100_000)), MOST)).containsExactly("1:overlong");
        assertThat(lines(text("x".repeat(1_000_000) + "\nb"), 100_000)).containsExactly("1:overlong", "2:b");
    }

    /** However the bytes come in, the lines are those a split makes. */
    @Test
    void piecesMakeNoDifference() throws IOException {
        Random random = new Random(1);
        for (int i = 0; i < 2_000; i++) {
            StringBuilder text = new StringBuilder();
            for (int n = random.nextInt(12); n > 0; n--) {
                text.append("x".repeat(random.nextInt(MOST + 4)))
                        .append(random.nextInt(4) == 0 ? "\r" : "")
                        .append("\n");
            }
            text.append("x".repeat(random.nextInt(MOST + 4)));
            List<String> expected = new ArrayList<>();
            String[] split = text.toString().split("\n", -1);
            for (int n = 0; n < split.length; n++) {
                String line = split[n].endsWith("\r") ? split[n].substring(0, split[n].length() - 1) : split[n];
                if (!line.isEmpty()) {
                    expected.add((n + 1) + ":" + (line.length() > MOST ? "overlong" : line));
                }
            }
            assertThat(lines(inBits(text.toString(), random), MOST))
                    .as("%s", text)
                    .isEqualTo(expected);
        }
    }
}
