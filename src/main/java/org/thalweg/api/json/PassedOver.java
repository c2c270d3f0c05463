package org.thalweg.api.json;

import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.HashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.problem.Echo;
import org.thalweg.api.problem.ReadingCode;

/** Any value, of which nothing is kept. It is checked as JSON all the same: the digest is of the whole body. */
record PassedOver() implements Shape {

    @Override
    public String expected() {
        return "anything";
    }

    @Override
    public @Nullable Object read(Cursor cursor) throws IOException {
        switch (cursor.token()) {
            case START_OBJECT -> object(cursor);
            case START_ARRAY -> list(cursor);
            case VALUE_STRING -> cursor.text();
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> cursor.number();
            default -> {}
        }
        return null;
    }

    private void object(Cursor cursor) throws IOException {
        Set<String> seen = new HashSet<>();
        while (cursor.next() != JsonToken.END_OBJECT) {
            String name = cursor.name();
            if (!seen.add(name)) {
                cursor.note(ReadingCode.DUPLICATE_MEMBER, () -> "%s stands here twice.".formatted(Echo.of(name)));
            }
            cursor.next();
            read(cursor);
        }
    }

    private void list(Cursor cursor) throws IOException {
        while (cursor.next() != JsonToken.END_ARRAY) {
            read(cursor);
        }
    }
}
