package org.thalweg.api.json;

import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.Limits;
import org.thalweg.api.problem.Echo;
import org.thalweg.api.problem.ReadingCode;
import org.thalweg.api.wire.WireDecimal;

/**
 * A number, or a string of digits with a point: its digits are kept as they stand. What is read is at most {@link
 * Limits#NUMBER_LENGTH} digits times a power of ten below 10¹⁰⁰⁰, so that nothing made of it can grow out of hand.
 */
record DecimalShape() implements Shape {

    private static final int EXPONENT_DIGITS = 3;

    @Override
    public String expected() {
        return "a number, or a string of digits such as \"12.50\",";
    }

    @Override
    public @Nullable WireDecimal read(Cursor cursor) throws IOException {
        if (cursor.token().isNumeric()) {
            return cursor.number() == null ? null : number(cursor);
        }
        if (cursor.on(JsonToken.VALUE_STRING)) {
            return digits(cursor);
        }
        cursor.expected(this);
        return null;
    }

    private static @Nullable WireDecimal number(Cursor cursor) throws IOException {
        String text = cursor.text();
        if (exponentDigits(text) > EXPONENT_DIGITS) {
            cursor.note(ReadingCode.OUT_OF_RANGE, () -> "The exponent of this number has more than %d digits."
                    .formatted(EXPONENT_DIGITS));
            return null;
        }
        return new WireDecimal(new BigDecimal(text));
    }

    private static int exponentDigits(String number) {
        int e = Math.max(number.indexOf('e'), number.indexOf('E'));
        if (e < 0) {
            return 0;
        }
        boolean signed = number.charAt(e + 1) == '-' || number.charAt(e + 1) == '+';
        return number.length() - e - (signed ? 2 : 1);
    }

    private @Nullable WireDecimal digits(Cursor cursor) throws IOException {
        String text = cursor.text();
        if (text.length() <= Limits.NUMBER_LENGTH && plain(text)) {
            return new WireDecimal(new BigDecimal(text));
        }
        cursor.note(
                ReadingCode.BAD_NUMBER,
                () -> "%s can't be read as a number. Write digits and a point, as \"12.50\".".formatted(Echo.of(text)));
        return null;
    }

    /** Digits, or digits, a point and digits, with or without a minus before them. */
    private static boolean plain(String text) {
        int at = text.startsWith("-") ? 1 : 0;
        int whole = digitsFrom(text, at);
        if (whole == at || whole == text.length()) {
            return whole > at;
        }
        int end = digitsFrom(text, whole + 1);
        return text.charAt(whole) == '.' && end > whole + 1 && end == text.length();
    }

    private static int digitsFrom(String text, int at) {
        int end = at;
        while (end < text.length() && text.charAt(end) >= '0' && text.charAt(end) <= '9') {
            end++;
        }
        return end;
    }
}
