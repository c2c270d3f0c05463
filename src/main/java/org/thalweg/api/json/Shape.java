package org.thalweg.api.json;

import java.io.IOException;
import org.jspecify.annotations.Nullable;

/** Reads one kind of JSON value. */
interface Shape {

    /** What is read, for messages: {@code a number}. */
    String expected();

    /**
     * Reads the value the cursor stands on and leaves the cursor on its last token.
     *
     * @return the value; null when something is wrong with it, which has then been noted
     */
    @Nullable
    Object read(Cursor cursor) throws IOException;
}
