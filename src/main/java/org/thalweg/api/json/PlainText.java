package org.thalweg.api.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.Limits;

/**
 * Goes through JSON as programs write it, token by token and under the same limits as every body. It reads less than
 * {@link PostedReader} does, and never otherwise: whatever is wrong or merely unusual ends in {@link NotPlain} or an exception of
 * Jackson, and then the text is left to that. So nothing here has to be told to a caller.
 */
public final class PlainText implements AutoCloseable {

    /** So many digits fit in a {@code long}. */
    private static final int DIGITS = 18;

    /** Names of the objects that the place lies in, the innermost last; more than usual are not plain. */
    private final String[] names = new String[64];

    private final int[] firstName = new int[Limits.NESTING + 1];
    private JsonParser json;
    private int known;
    private int depth;

    /** What stands here is for {@link PostedReader}. */
    public static final class NotPlain extends IOException {

        private static final long serialVersionUID = 1L;
        private static final NotPlain HERE = new NotPlain();

        private NotPlain() {
            super("not plain");
        }

        @Override
        public synchronized Throwable fillInStackTrace() {
            return this;
        }
    }

    /** Of nothing yet. */
    public PlainText() throws IOException {
        this.json = StrictJson.parser(new byte[0], 0, 0);
    }

    /** Begins with the text from {@code from} to {@code to}; whoever begins also closes. */
    public PlainText begin(byte[] text, int from, int to) throws IOException {
        known = 0;
        depth = 0;
        int signs = 0;
        for (int i = from; i < to; i++) {
            signs |= text[i];
        }
        if (signs < 0) {
            StrictJson.checkText(Arrays.copyOfRange(text, from, to));
        }
        json = StrictJson.parser(text, from, to - from);
        return this;
    }

    /** What to throw where a caller finds what he does not read. */
    public static NotPlain notPlain() {
        return NotPlain.HERE;
    }

    /** The value, where there is one. */
    public static <T> T given(@Nullable T value) throws NotPlain {
        if (value == null) {
            throw NotPlain.HERE;
        }
        return value;
    }

    private void next(JsonToken expected) throws IOException {
        if (json.nextToken() != expected) {
            throw NotPlain.HERE;
        }
    }

    /** Nothing may follow. */
    public void end() throws IOException {
        if (json.nextToken() != null) {
            throw NotPlain.HERE;
        }
    }

    /** Goes into an object. */
    public void object() throws IOException {
        next(JsonToken.START_OBJECT);
        enter();
    }

    /** Goes on to the value of the next member, whose name comes back; nothing behind the last. */
    public @Nullable String member() throws IOException {
        String name = json.nextFieldName();
        if (name == null) {
            leave();
        } else {
            note(name);
        }
        return name;
    }

    private void enter() {
        firstName[++depth] = known;
    }

    private void leave() {
        known = firstName[depth--];
    }

    /** A name stands once in its object. There are few, so looking at all of them is quicker than a set. */
    private void note(String name) throws NotPlain {
        for (int i = firstName[depth]; i < known; i++) {
            if (names[i].equals(name)) {
                throw NotPlain.HERE;
            }
        }
        if (known == names.length) {
            throw NotPlain.HERE;
        }
        names[known++] = name;
    }

    /** Goes into a list of objects. */
    public void list() throws IOException {
        next(JsonToken.START_ARRAY);
    }

    /** Goes into the next object of a list; false behind the last. */
    public boolean element() throws IOException {
        JsonToken token = json.nextToken();
        if (token != JsonToken.START_OBJECT && token != JsonToken.END_ARRAY) {
            throw NotPlain.HERE;
        }
        if (token == JsonToken.START_OBJECT) {
            enter();
        }
        return token == JsonToken.START_OBJECT;
    }

    /** A string of 1 to {@code most} characters, none of which needs a pair. */
    public String string(int most) throws IOException {
        next(JsonToken.VALUE_STRING);
        String text = json.getText();
        if (text.isEmpty() || text.length() > most) {
            throw NotPlain.HERE;
        }
        for (int i = 0; i < text.length(); i++) {
            if (Character.isSurrogate(text.charAt(i))) {
                throw NotPlain.HERE;
            }
        }
        return text;
    }

    /** A number from 0 to {@code most} with at most {@code places} decimals and no exponent, digit for digit. */
    public BigDecimal decimal(int places, long most) throws IOException {
        if (!given(json.nextToken()).isNumeric()) {
            throw NotPlain.HERE;
        }
        return digits(places, most);
    }

    /** The same as a number, or as digits in a string. */
    public BigDecimal decimalOrDigits(int places, long most) throws IOException {
        JsonToken token = given(json.nextToken());
        if (token != JsonToken.VALUE_STRING && !token.isNumeric()) {
            throw NotPlain.HERE;
        }
        return digits(places, most);
    }

    private BigDecimal digits(int places, long most) throws IOException {
        char[] text = json.getTextCharacters();
        int from = json.getTextOffset();
        int length = json.getTextLength();
        int point = length;
        long digits = 0;
        for (int i = 0; i < length; i++) {
            char c = text[from + i];
            if (c == '.' && point == length && i > 0 && i + 1 < length) {
                point = i;
            } else if (c >= '0' && c <= '9') {
                digits = 10 * digits + (c - '0');
            } else {
                throw NotPlain.HERE;
            }
        }
        int decimals = point == length ? 0 : length - point - 1;
        if (length == 0 || length > DIGITS || decimals > places) {
            throw NotPlain.HERE;
        }
        // The most is 10^12 and the places are six, so the product is no more than a long holds.
        long limit = most;
        for (int i = 0; i < decimals; i++) {
            limit *= 10;
        }
        if (digits > limit) {
            throw NotPlain.HERE;
        }
        return BigDecimal.valueOf(digits, decimals);
    }

    /** A number from 0 to {@code most}: the double next to it. */
    public double number(double most) throws IOException {
        if (!given(json.nextToken()).isNumeric()) {
            throw NotPlain.HERE;
        }
        double number = json.getDoubleValue();
        if (!(number >= 0 && number <= most)) {
            throw NotPlain.HERE;
        }
        return number;
    }

    /** Steps over any value; what is in it must be whole all the same. */
    public void skip() throws IOException {
        int inside = 0;
        do {
            JsonToken token = given(json.nextToken());
            switch (token) {
                case START_OBJECT -> {
                    inside++;
                    enter();
                }
                case START_ARRAY -> inside++;
                case END_OBJECT -> {
                    inside--;
                    leave();
                }
                case END_ARRAY -> inside--;
                case FIELD_NAME -> note(json.currentName());
                case VALUE_STRING, VALUE_NUMBER_FLOAT -> plainCharacters(token == JsonToken.VALUE_STRING);
                default -> {}
            }
        } while (inside > 0);
    }

    /** A string without halves of pairs, or a number without an exponent. */
    private void plainCharacters(boolean string) throws IOException {
        char[] text = json.getTextCharacters();
        int to = json.getTextOffset() + json.getTextLength();
        for (int i = json.getTextOffset(); i < to; i++) {
            if (string ? Character.isSurrogate(text[i]) : text[i] > '9') {
                throw NotPlain.HERE;
            }
        }
    }

    @Override
    public void close() throws IOException {
        json.close();
    }
}
