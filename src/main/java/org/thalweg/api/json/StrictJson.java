package org.thalweg.api.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.problem.Echo;
import org.thalweg.api.problem.Fault;
import org.thalweg.api.problem.Faults;
import org.thalweg.api.problem.NoAnswer;
import org.thalweg.api.problem.Problem;
import org.thalweg.api.problem.ReadingCode;

/** Reads bodies of one kind of request. */
final class StrictJson {

    /** Names are the callers' own and never come again, so they are not kept for the life of the service. */
    private static final JsonFactory JSON = JsonFactory.builder()
            .streamReadConstraints(new ReadingLimits())
            .disable(JsonFactory.Feature.CHARSET_DETECTION)
            .disable(JsonFactory.Feature.INTERN_FIELD_NAMES)
            .build();

    /** A parser under the same limits as every body. */
    static JsonParser parser(byte[] text, int from, int length) throws IOException {
        return JSON.createParser(text, from, length);
    }

    private static final byte[] BYTE_ORDER_MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

    private static final int EXCERPT = 20;

    private final RecordShape shape;

    StrictJson(Class<?> type) {
        this.shape = ShapeMaker.record(type);
    }

    /**
     * Reads a body whose bytes are UTF-8.
     *
     * @return what could be read; null when nothing could. Whatever is missing or wrong in it has been noted
     */
    @Nullable
    Object read(byte[] body, int start, Faults faults) {
        try (JsonParser json = JSON.createParser(body, start, body.length - start)) {
            Cursor cursor = new Cursor(json, faults);
            try {
                return readAll(cursor);
            } catch (ReadingLimits.Passed e) {
                throw unreadable(e.fault(cursor));
            } catch (JsonProcessingException e) {
                throw unreadable(malformed(e, body, start));
            }
        } catch (IOException e) {
            throw new UncheckedIOException("bytes in memory can always be read", e);
        }
    }

    private @Nullable Object readAll(Cursor cursor) throws IOException {
        if (cursor.next() == null) {
            throw unreadable(Fault.of(ReadingCode.EMPTY_BODY, "#", "The body is empty. Send the request as JSON."));
        }
        Object request = shape.read(cursor);
        JsonToken more = cursor.next();
        if (more != null) {
            throw unreadable(
                    Fault.of(ReadingCode.MALFORMED_JSON, "#", "The body goes on after its end. Send one JSON object."));
        }
        return request;
    }

    /** Where the JSON begins: behind a byte order mark, which some editors put before a text. */
    static int start(byte[] body) {
        return ByteBuffer.wrap(body, 0, Math.min(3, body.length)).equals(ByteBuffer.wrap(BYTE_ORDER_MARK)) ? 3 : 0;
    }

    /** Refuses bytes that are not UTF-8: they would read one way here and another way in the digest. */
    static void checkText(byte[] body) {
        int ascii = 0;
        while (ascii < body.length && body[ascii] >= 0) {
            ascii++;
        }
        if (ascii == body.length) {
            return;
        }
        CharsetDecoder utf8 = StandardCharsets.UTF_8.newDecoder();
        ByteBuffer in = ByteBuffer.wrap(body, ascii, body.length - ascii);
        CharBuffer out = CharBuffer.allocate(1024);
        CoderResult result = CoderResult.OVERFLOW;
        while (result.isOverflow()) {
            result = utf8.decode(in, out.clear(), true);
        }
        if (result.isError()) {
            throw unreadable(Fault.of(
                    ReadingCode.MALFORMED_TEXT,
                    "#",
                    "Byte %d of the body is not UTF-8. Send JSON in UTF-8.".formatted(in.position() + 1)));
        }
    }

    private static Fault malformed(JsonProcessingException e, byte[] body, int start) {
        JsonLocation at = e.getLocation();
        String detail = e instanceof JsonEOFException
                ? "The JSON ends too early, at line %d, column %d. Something is not closed."
                        .formatted(at.getLineNr(), at.getColumnNr())
                : "This is not JSON at line %d, column %d%s."
                        .formatted(at.getLineNr(), at.getColumnNr(), near(body, start + at.getByteOffset()));
        return Fault.of(ReadingCode.MALFORMED_JSON, "#", detail);
    }

    /** What stands at the place, for someone who looks for it. */
    private static String near(byte[] body, long offset) {
        int begin = (int) Math.max(0, Math.min(offset, body.length));
        int length = Math.min(EXCERPT, body.length - begin);
        return length == 0 ? "" : ", near " + Echo.of(new String(body, begin, length, StandardCharsets.UTF_8));
    }

    private static NoAnswer unreadable(Fault fault) {
        return NoAnswer.of(Problem.UNREADABLE, fault);
    }
}
