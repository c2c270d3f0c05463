package org.thalweg.api.json;

import java.io.IOException;
import org.thalweg.api.wire.JsonSpan;

/** Any value, of which only the place is kept; whoever reads it there finds what is wrong with it. */
record SpanShape() implements Shape {

    @Override
    public String expected() {
        return "anything";
    }

    @Override
    public JsonSpan read(Cursor cursor) throws IOException {
        int from = (int) cursor.begin();
        cursor.readAll();
        return new JsonSpan(from, (int) cursor.end());
    }
}
