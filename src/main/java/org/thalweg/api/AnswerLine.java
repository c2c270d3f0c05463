package org.thalweg.api;

import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** An answer line of a repricing, put together in one array that is used again. */
final class AnswerLine {

    private static final byte[] JOB = ascii("{\"job\":");
    private static final byte[] AMOUNT = ascii("\":{\"amount\":\"");
    private static final byte[] CURRENCY = ascii("\",\"currency\":\"");
    private static final byte[] PROBLEM = ascii(",\"problem\":");

    private byte[] bytes = new byte[512];
    private int length;
    private final byte[] place;

    /** {@code place} is what the number is called that says where a job with a problem stands. */
    AnswerLine(String place) {
        this.place = ascii('"' + place + "\":");
    }

    /** Begins a line without a job's name. */
    void begin() {
        length = 0;
        put('{');
    }

    /** Begins a line with a job's name, which comes escaped as JSON has it, without its quotes. */
    void begin(byte[] job) {
        length = 0;
        put(JOB);
        put('"');
        put(job);
        put('"');
    }

    void money(String name, BigDecimal amount, String currency) {
        put(',');
        put('"');
        put(name);
        put(AMOUNT);
        put(amount.toPlainString());
        put(CURRENCY);
        put(currency);
        put('"');
        put('}');
    }

    void problem(long number, byte[] problem) {
        if (length > 1) {
            put(',');
        }
        put(place);
        put(Long.toString(number));
        put(PROBLEM);
        put(problem);
    }

    void end() {
        put('}');
    }

    /** The array the line lies in, from its beginning. */
    byte[] bytes() {
        return bytes;
    }

    int length() {
        return length;
    }

    /** Writes the line and a line feed. */
    void send(OutputStream out) throws IOException {
        put('\n');
        out.write(bytes, 0, length);
    }

    private void put(char c) {
        reserve(1);
        bytes[length++] = (byte) c;
    }

    /** Text of ASCII characters only. */
    @SuppressWarnings("deprecation")
    private void put(String ascii) {
        int more = ascii.length();
        reserve(more);
        ascii.getBytes(0, more, bytes, length);
        length += more;
    }

    private void put(byte[] more) {
        put(more, 0, more.length);
    }

    private void put(byte[] from, int at, int count) {
        reserve(count);
        System.arraycopy(from, at, bytes, length, count);
        length += count;
    }

    private void reserve(int count) {
        if (length + count > bytes.length) {
            bytes = Arrays.copyOf(bytes, Math.max(2 * bytes.length, length + count));
        }
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }
}
