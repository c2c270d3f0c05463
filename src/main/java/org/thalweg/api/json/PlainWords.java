package org.thalweg.api.json;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** The words that come again and again, each made into a string once. A fixed number of places, so that it never grows. */
final class PlainWords {

    private static final int PLACES = 1 << 12;
    private static final int LONGEST = 64;

    private final @Nullable Word[] kept = new @Nullable Word[PLACES];

    /** A word and its bytes. */
    private static final class Word {

        private final byte[] bytes;
        private final String text;

        Word(byte[] bytes, String text) {
            this.bytes = bytes;
            this.text = text;
        }
    }

    /** The text from {@code from} to {@code to}, whose hash is {@code hash}. */
    String of(byte[] text, int from, int to, long hash) {
        int place = (int) hash & (PLACES - 1);
        Word word = kept[place];
        if (word != null && Arrays.equals(text, from, to, word.bytes, 0, word.bytes.length)) {
            return word.text;
        }
        String made = new String(text, from, to - from, StandardCharsets.UTF_8);
        if (to - from <= LONGEST) {
            // Whoever came last is the likelier to come again.
            kept[place] = new Word(Arrays.copyOfRange(text, from, to), made);
        }
        return made;
    }
}
