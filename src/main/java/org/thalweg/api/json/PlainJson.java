package org.thalweg.api.json;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.thalweg.api.Limits;

/**
 * Goes through JSON as programs write it, straight over its bytes: nothing is made of what nobody asks for. It reads less than
 * {@link PostedReader} does, and never otherwise: whatever is wrong, near a limit or merely unusual ends in {@link NotPlain}, and
 * then the text is left to that. So nothing here has to be told to a caller.
 *
 * <p>Names may have no escapes and stand once in their object; strings that are kept may have none either; a number has at most
 * {@link #DIGITS} digits and no exponent.
 */
public final class PlainJson {

    /** So many digits fit in a {@code long}, and up to fifteen of them are exact in a {@code double}. */
    private static final int DIGITS = 18;

    private static final long EXACT = 1_000_000_000_000_000L;
    private static final int DEEPEST = Limits.NESTING - 4;
    private static final int LONGEST_NAME = 100;
    private static final int LONGEST_TEXT = Limits.STRING_LENGTH;
    private static final int MOST_MEMBERS = 64;
    private static final long[] TENS = tens();

    private final PlainWords words = new PlainWords();
    private final long[] names = new long[DEEPEST * MOST_MEMBERS];
    private byte[] bytes = {};
    private int at;
    private int end;
    private int depth;
    /** Names of the objects the place lies in are those below it. */
    private int known;

    private int begin;
    private int stop;
    private long hash;
    private long digits;
    private int decimals;

    /** What stands here is for {@link PostedReader}. */
    public static final class NotPlain extends RuntimeException {

        private static final long serialVersionUID = 1L;
        private static final NotPlain HERE = new NotPlain();

        private NotPlain() {
            super("not plain", null, false, false);
        }
    }

    /** A name or word that is looked for. */
    public static final class Name {

        private final byte[] bytes;
        private final long hash;

        /** {@code text} is ASCII. */
        public Name(String text) {
            this.bytes = text.getBytes(StandardCharsets.US_ASCII);
            this.hash = Eight.hash(bytes, 0, bytes.length);
        }
    }

    private static long[] tens() {
        long[] tens = new long[DIGITS + 1];
        tens[0] = 1;
        for (int i = 1; i < tens.length; i++) {
            tens[i] = 10 * tens[i - 1];
        }
        return tens;
    }

    /** Begins with the text from {@code from} to {@code to}. */
    public void begin(byte[] text, int from, int to) {
        bytes = text;
        at = from;
        end = to;
        depth = 0;
        known = 0;
    }

    /** What to throw where a caller finds what he does not read. */
    public NotPlain notPlain() {
        return NotPlain.HERE;
    }

    /** Nothing may follow. */
    public void end() {
        space();
        if (at != end) {
            throw NotPlain.HERE;
        }
    }

    // Objects and lists.

    /** Goes into an object. What comes back is for {@link #member}. */
    public int object() {
        open('{');
        return known;
    }

    /** Goes on to the value of the next member; false behind the last. */
    public boolean member(int object) {
        byte c = next();
        if (c == '}') {
            known = object;
            close();
            return false;
        }
        if (known > object) {
            if (c != ',') {
                throw NotPlain.HERE;
            }
            at++;
            c = next();
        }
        if (c != '"') {
            throw NotPlain.HERE;
        }
        name(object);
        if (next() != ':') {
            throw NotPlain.HERE;
        }
        at++;
        return true;
    }

    private void name(int object) {
        text(LONGEST_NAME);
        for (int i = object; i < known; i++) {
            if (names[i] == hash) {
                throw NotPlain.HERE;
            }
        }
        if (known - object == MOST_MEMBERS) {
            throw NotPlain.HERE;
        }
        names[known++] = hash;
    }

    /** Whether the member or text that was read last is {@code name}. */
    public boolean is(Name name) {
        int length = name.bytes.length;
        // The hash of so few bytes is all of them, mixed.
        return hash == name.hash
                && stop - begin == length
                && (length <= Long.BYTES || Arrays.equals(bytes, begin, stop, name.bytes, 0, length));
    }

    /** Goes into a list. */
    public void list() {
        open('[');
    }

    /** Goes on to the next element, the first of which is number 0; false behind the last. */
    public boolean element(int number) {
        byte c = next();
        if (c == ']') {
            close();
            return false;
        }
        if (number > 0) {
            if (c != ',') {
                throw NotPlain.HERE;
            }
            at++;
        }
        return true;
    }

    private void open(char bracket) {
        if (next() != bracket || ++depth > DEEPEST) {
            throw NotPlain.HERE;
        }
        at++;
    }

    private void close() {
        depth--;
        at++;
    }

    // Values.

    /** A string of 1 to {@code most} bytes. The same one comes back for the same text, as long as there are not too many. */
    public String string(int most) {
        word(most);
        return words.of(bytes, begin, stop, hash);
    }

    /** A string of 1 to {@code most} bytes, of which nothing is made: {@link #is}, {@link #from} and {@link #to} tell of it. */
    public void word(int most) {
        next();
        text(most);
        if (begin == stop) {
            throw NotPlain.HERE;
        }
    }

    /** A string of 1 to {@code most} bytes to be copied: escapes may be in it that are canonical [published: RFC 8785, 3.2.2.2]. */
    public void copied(int most) {
        if (next() != '"') {
            throw NotPlain.HERE;
        }
        begin = at + 1;
        stop = closing(begin, true);
        if (begin == stop || stop - begin > most) {
            throw NotPlain.HERE;
        }
        for (int i = begin; i < stop; i++) {
            // The slash needs no escape; whoever writes one anew leaves it out.
            if (bytes[i] == '\\' && bytes[++i] == '/') {
                throw NotPlain.HERE;
            }
        }
        at = stop + 1;
    }

    /** Whether a string is so many hexadecimal digits in lower case. */
    public boolean hexadecimal(int length) {
        word(length);
        for (int i = begin; i < stop; i++) {
            byte b = bytes[i];
            if (!isDigit(b) && (b < 'a' || b > 'f')) {
                return false;
            }
        }
        return stop - begin == length;
    }

    /** Where the text read last begins. */
    public int from() {
        return begin;
    }

    /** Behind the end of the text read last. */
    public int to() {
        return stop;
    }

    /** A number from 0 to {@code most} with at most {@code places} decimals, digit for digit. */
    public BigDecimal decimal(int places, long most) {
        next();
        digits();
        if (decimals > places || digits > most * TENS[decimals]) {
            throw NotPlain.HERE;
        }
        return BigDecimal.valueOf(digits, decimals);
    }

    /** The same as a number, or as digits in a string. */
    public BigDecimal decimalOrDigits(int places, long most) {
        if (next() != '"') {
            return decimal(places, most);
        }
        at++;
        if (at == end || !isDigit(bytes[at])) {
            throw NotPlain.HERE;
        }
        BigDecimal number = decimal(places, most);
        if (at == end || bytes[at] != '"') {
            throw NotPlain.HERE;
        }
        at++;
        return number;
    }

    /** A number from 0 to {@code most}: the double next to it. */
    public double number(double most) {
        next();
        digits();
        // Two doubles that are exact; their quotient is rounded once, as the number itself would be.
        double number = (double) digits / TENS[decimals];
        if (digits >= EXACT || number > most) {
            throw NotPlain.HERE;
        }
        return number;
    }

    /** Steps over any value. */
    public void skip() {
        switch (next()) {
            case '"' -> skipText();
            case '{' -> skipObject();
            case '[' -> skipList();
            case 't' -> literal("true");
            case 'f' -> literal("false");
            case 'n' -> literal("null");
            case '-' -> {
                at++;
                digits();
            }
            default -> digits();
        }
    }

    private void skipObject() {
        int object = object();
        while (member(object)) {
            skip();
        }
    }

    private void skipList() {
        list();
        for (int i = 0; element(i); i++) {
            skip();
        }
    }

    private void literal(String word) {
        for (int i = 0; i < word.length(); i++, at++) {
            if (at == end || bytes[at] != word.charAt(i)) {
                throw NotPlain.HERE;
            }
        }
    }

    // Bytes.

    private void space() {
        while (at < end && (bytes[at] == ' ' || bytes[at] == '\n' || bytes[at] == '\t' || bytes[at] == '\r')) {
            at++;
        }
    }

    /** The byte after any white space. */
    private byte next() {
        if (at < end && bytes[at] > ' ') {
            return bytes[at];
        }
        space();
        if (at == end) {
            throw NotPlain.HERE;
        }
        return bytes[at];
    }

    /** Reads digits, perhaps a point and digits. */
    private void digits() {
        int first = at;
        long number = 0;
        int i = at;
        for (; i < end && isDigit(bytes[i]); i++) {
            number = 10 * number + (bytes[i] - '0');
            if (i - first == DIGITS) {
                throw NotPlain.HERE;
            }
        }
        if (i == first || (bytes[first] == '0' && i > first + 1)) {
            throw NotPlain.HERE;
        }
        int point = i;
        if (i < end && bytes[i] == '.') {
            for (i++; i < end && isDigit(bytes[i]); i++) {
                number = 10 * number + (bytes[i] - '0');
                if (i - first > DIGITS) {
                    throw NotPlain.HERE;
                }
            }
            if (i == point + 1) {
                throw NotPlain.HERE;
            }
        }
        digits = number;
        decimals = i == point ? 0 : i - point - 1;
        at = i;
    }

    private static boolean isDigit(byte b) {
        return b >= '0' && b <= '9';
    }

    /** Reads a string without escapes; the place is on its opening quote. */
    private void text(int most) {
        if (bytes[at] != '"') {
            throw NotPlain.HERE;
        }
        begin = at + 1;
        stop = closing(begin, false);
        if (stop - begin > most) {
            throw NotPlain.HERE;
        }
        hash = Eight.hash(bytes, begin, stop);
        at = stop + 1;
    }

    /** Steps over a string; escapes of one letter may be in it. */
    private void skipText() {
        int first = at + 1;
        int last = closing(first, true);
        if (last - first > LONGEST_TEXT) {
            throw NotPlain.HERE;
        }
        at = last + 1;
    }

    /** The closing quote of the string whose text begins at {@code first}. */
    private int closing(int first, boolean escapes) {
        int i = first;
        while (true) {
            i = Eight.special(bytes, i, end);
            if (i == end) {
                throw NotPlain.HERE;
            }
            byte b = bytes[i];
            if (b == '"') {
                return i;
            }
            if (b < 0) {
                i = Utf8.behind(bytes, i, end);
                if (i < 0) {
                    throw NotPlain.HERE;
                }
            } else if (escapes && b == '\\' && i + 1 < end && escapes(bytes[i + 1])) {
                i += 2;
            } else {
                throw NotPlain.HERE;
            }
        }
    }

    private static boolean escapes(byte letter) {
        return switch (letter) {
            case '"', '\\', '/', 'b', 'f', 'n', 'r', 't' -> true;
            default -> false;
        };
    }
}
