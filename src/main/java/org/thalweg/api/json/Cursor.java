package org.thalweg.api.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.problem.Fault;
import org.thalweg.api.problem.Faults;
import org.thalweg.api.problem.Figure;
import org.thalweg.api.problem.NoAnswer;
import org.thalweg.api.problem.Problem;
import org.thalweg.api.problem.ReadingCode;

/** Where the reading of a body stands, and what was found wrong so far. */
final class Cursor {

    private final JsonParser json;
    private final Faults faults;

    Cursor(JsonParser json, Faults faults) {
        this.json = json;
        this.faults = faults;
    }

    JsonToken token() {
        return json.currentToken();
    }

    /** The next token; null after the last. */
    @Nullable
    JsonToken next() throws IOException {
        return json.nextToken();
    }

    boolean on(JsonToken token) {
        return json.hasToken(token);
    }

    /** The name of the member the cursor stands on. */
    String name() throws IOException {
        return whole(json.currentName());
    }

    /** The string the cursor stands on. */
    String text() throws IOException {
        return whole(json.getText());
    }

    /** The number the cursor stands on; null when no double is that large, which is then noted. */
    @Nullable
    Double number() throws IOException {
        double number = json.getDoubleValue();
        if (Double.isFinite(number)) {
            return number;
        }
        note(
                ReadingCode.OUT_OF_RANGE,
                () -> "The number is larger than any the service can work with (about 1.8e308).");
        return null;
    }

    /** The whole number the cursor stands on, when a {@code long} holds it. */
    @Nullable
    Long whole() throws IOException {
        return json.getNumberType() == JsonParser.NumberType.BIG_INTEGER ? null : (Long) json.getLongValue();
    }

    /** Goes to the end of the value the cursor stands on. */
    void readAll() throws IOException {
        json.skipChildren();
        // The parser only goes through a string or a number when it is asked for.
        json.finishToken();
    }

    /** Where the value the cursor stands on begins, as a byte of the body. */
    long begin() {
        return json.currentTokenLocation().getByteOffset();
    }

    /** Behind what was read last, as a byte of the body. */
    long end() {
        return json.currentLocation().getByteOffset();
    }

    /** Steps over the value the cursor stands on. */
    void skip() throws IOException {
        json.skipChildren();
    }

    void note(ReadingCode code, Supplier<String> detail) {
        faults.add(() -> Fault.of(code, pointer(), detail.get()));
    }

    void noteCount(ReadingCode code, String detail, int actual, int limit) {
        faults.add(() -> Fault.of(code, pointer(), detail, Figure.of(actual), Figure.of(limit)));
    }

    /** Notes that something else was needed here, and steps over what is here. */
    void expected(Shape shape) throws IOException {
        String found = describe(token());
        note(ReadingCode.WRONG_TYPE, () -> "This is %s where %s is needed.".formatted(found, shape.expected()));
        skip();
    }

    /** Where the cursor stands, as a JSON Pointer after a #. */
    String pointer() {
        return "#" + json.getParsingContext().pathAsPointer();
    }

    /** The list or object the cursor stands in, as a JSON Pointer after a #. */
    String containerPointer() {
        return "#" + json.getParsingContext().getParent().pathAsPointer();
    }

    /** Half of a surrogate pair stands for no character, can't be written in an answer and has no digest. */
    private String whole(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (Character.isSurrogate(c)) {
                if (Character.isLowSurrogate(c)
                        || i + 1 == text.length()
                        || !Character.isLowSurrogate(text.charAt(i + 1))) {
                    throw halfCharacter();
                }
                i++;
            }
        }
        return text;
    }

    private NoAnswer halfCharacter() {
        var at = json.currentTokenLocation();
        String detail =
                "The string that begins at line %d, column %d holds half of a surrogate pair, which is no character."
                        .formatted(at.getLineNr(), at.getColumnNr());
        return NoAnswer.of(Problem.UNREADABLE, Fault.of(ReadingCode.MALFORMED_TEXT, "#", detail));
    }

    private static String describe(JsonToken token) {
        return switch (token) {
            case START_OBJECT -> "an object";
            case START_ARRAY -> "a list";
            case VALUE_STRING -> "a string";
            case VALUE_NUMBER_INT -> "a number";
            case VALUE_NUMBER_FLOAT -> "a number with a fraction or an exponent";
            case VALUE_TRUE, VALUE_FALSE -> "true or false";
            default -> "null";
        };
    }
}
