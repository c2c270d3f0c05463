package org.thalweg.api.json;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import org.erdtman.jcs.NumberToJSON;

/**
 * The canonical form of a JSON text (RFC 8785): no white space, members sorted by their names' UTF-16 code units, strings
 * and numbers written in one way only. Two requests that say the same have the same canonical form, and so one digest.
 *
 * <p>Works on a text that was already read without complaint, so it checks nothing, and copies whatever is canonical
 * already. A number of at most 15 digits without exponent and without zeros at the end of its fraction is: so many digits
 * always survive the way through a double, and no shorter number gives the same one.
 */
final class Canonical {

    private static final HexFormat HEX = HexFormat.of();
    private static final int SURE_DIGITS = 15;

    private final byte[] from;
    private int at;
    private byte[] to;
    private int size;

    private Canonical(byte[] text, int start) {
        this.from = text;
        this.at = start;
        this.to = new byte[text.length + 16];
    }

    /** SHA-256 of the canonical form, in lower-case hexadecimal; {@code text} is JSON in UTF-8 from {@code start} on. */
    static String digest(byte[] text, int start) {
        Canonical canonical = new Canonical(text, start);
        canonical.value();
        MessageDigest sha = Sha256.begin();
        sha.update(canonical.to, 0, canonical.size);
        return HEX.formatHex(sha.digest());
    }

    static byte[] of(byte[] text) {
        Canonical canonical = new Canonical(text, 0);
        canonical.value();
        return Arrays.copyOf(canonical.to, canonical.size);
    }

    private void value() {
        space();
        switch (from[at]) {
            case '{' -> object();
            case '[' -> list();
            case '"' -> string();
            case 't', 'n' -> copy(4);
            case 'f' -> copy(5);
            default -> number();
        }
    }

    private void space() {
        while (from[at] <= ' ' && from[at] > 0) {
            at++;
        }
    }

    private void copy(int count) {
        reserve(count);
        System.arraycopy(from, at, to, size, count);
        at += count;
        size += count;
    }

    private void put(int b) {
        reserve(1);
        to[size++] = (byte) b;
    }

    private void reserve(int count) {
        if (size + count > to.length) {
            to = Arrays.copyOf(to, Math.max(2 * to.length, size + count));
        }
    }

    private void list() {
        put('[');
        at++;
        space();
        while (from[at] != ']') {
            value();
            space();
            if (from[at] == ',') {
                put(',');
                at++;
            }
        }
        at++;
        put(']');
    }

    /** A member as it was written: its name, and where it begins and ends. */
    private record Member(String name, int begin, int end) {}

    private void object() {
        put('{');
        at++;
        int first = size;
        List<Member> members = new ArrayList<>();
        space();
        while (from[at] != '}') {
            members.add(member());
            space();
            if (from[at] == ',') {
                at++;
                space();
            }
        }
        at++;
        sort(first, members);
        put('}');
    }

    private Member member() {
        int begin = size;
        string();
        String name = name(begin + 1, size - 1);
        space();
        copy(1);
        value();
        return new Member(name, begin, size);
    }

    /** The name a canonical string stands for. Sorting needs it without its escapes. */
    private String name(int begin, int end) {
        String written = new String(to, begin, end - begin, StandardCharsets.UTF_8);
        return written.indexOf('\\') < 0 ? written : unescaped(written);
    }

    private static String unescaped(String written) {
        StringBuilder name = new StringBuilder();
        for (int i = 0; i < written.length(); i++) {
            char c = written.charAt(i);
            if (c != '\\') {
                name.append(c);
                continue;
            }
            char escaped = written.charAt(++i);
            if (escaped == 'u') {
                name.append((char) Integer.parseInt(written, i + 1, i + 5, 16));
                i += 4;
            } else {
                name.append(control(escaped));
            }
        }
        return name.toString();
    }

    private static char control(char escaped) {
        return switch (escaped) {
            case 'b' -> '\b';
            case 't' -> '\t';
            case 'n' -> '\n';
            case 'f' -> '\f';
            case 'r' -> '\r';
            default -> escaped;
        };
    }

    /** Puts the members written from {@code first} on into order, with commas between. */
    private void sort(int first, List<Member> members) {
        byte[] written = Arrays.copyOfRange(to, first, size);
        members.sort((a, b) -> a.name.compareTo(b.name));
        size = first;
        for (Member member : members) {
            if (size > first) {
                put(',');
            }
            int length = member.end - member.begin;
            reserve(length);
            System.arraycopy(written, member.begin - first, to, size, length);
            size += length;
        }
    }

    private void string() {
        int begin = at++;
        while (from[at] != '"') {
            if (from[at] == '\\') {
                flush(begin);
                escape();
                begin = at;
            } else {
                at++;
            }
        }
        at++;
        flush(begin);
    }

    /** Copies what stands between {@code begin} and the reading place. */
    private void flush(int begin) {
        int end = at;
        at = begin;
        copy(end - begin);
    }

    /** One escape: kept where it is the canonical one, written out where the character needs none. */
    private void escape() {
        byte kind = from[at + 1];
        if (kind == 'u') {
            unicode();
        } else if (kind == '/') {
            put('/');
            at += 2;
        } else {
            copy(2);
        }
    }

    private void unicode() {
        int c = hex(at + 2);
        at += 6;
        if (Character.isHighSurrogate((char) c)) {
            c = Character.toCodePoint((char) c, (char) hex(at + 2));
            at += 6;
        }
        byte[] written = canonicalEscape(c).getBytes(StandardCharsets.UTF_8);
        reserve(written.length);
        System.arraycopy(written, 0, to, size, written.length);
        size += written.length;
    }

    private static String canonicalEscape(int c) {
        return switch (c) {
            case '\b' -> "\\b";
            case '\t' -> "\\t";
            case '\n' -> "\\n";
            case '\f' -> "\\f";
            case '\r' -> "\\r";
            case '"' -> "\\\"";
            case '\\' -> "\\\\";
            default -> c < ' ' ? "\\u%04x".formatted(c) : Character.toString(c);
        };
    }

    private int hex(int begin) {
        int value = 0;
        for (int i = begin; i < begin + 4; i++) {
            value = 16 * value + Character.digit(from[i], 16);
        }
        return value;
    }

    private void number() {
        int begin = at;
        int digits = 0;
        boolean plain = true;
        int fraction = -1;
        for (; partOfNumber(from, at); at++) {
            byte c = from[at];
            if (c == '.') {
                fraction = at;
            } else if (c == 'e' || c == 'E') {
                plain = false;
            } else if (c != '-') {
                digits++;
            }
        }
        boolean zero = from[begin] == '-' && from[begin + 1] == '0';
        boolean ends = fraction < 0 || from[at - 1] != '0';
        if (plain && digits <= SURE_DIGITS && ends && !zero && (fraction < 0 || digits <= 7 || from[begin] != '0')) {
            flush(begin);
        } else {
            shortest(begin);
        }
    }

    private static boolean partOfNumber(byte[] from, int at) {
        if (at >= from.length) {
            return false;
        }
        byte c = from[at];
        return (c >= '0' && c <= '9') || c == '-' || c == '.' || c == '+' || c == 'e' || c == 'E';
    }

    /** As ECMAScript writes the double that the number stands for. */
    private void shortest(int begin) {
        double value = Double.parseDouble(new String(from, begin, at - begin, StandardCharsets.US_ASCII));
        byte[] written = es6(value).getBytes(StandardCharsets.US_ASCII);
        reserve(written.length);
        System.arraycopy(written, 0, to, size, written.length);
        size += written.length;
    }

    private static String es6(double value) {
        try {
            return NumberToJSON.serializeNumber(value);
        } catch (IOException e) {
            throw new UncheckedIOException("only numbers that are finite come here", e);
        }
    }
}
