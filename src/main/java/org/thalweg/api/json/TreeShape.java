package org.thalweg.api.json;

import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.problem.Echo;
import org.thalweg.api.problem.ReadingCode;

/** A document of another standard, kept as it is for a reader of its own; only its JSON is checked here. */
record TreeShape() implements Shape {

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    @Override
    public String expected() {
        return "an object";
    }

    @Override
    public @Nullable JsonNode read(Cursor cursor) throws IOException {
        if (cursor.on(JsonToken.START_OBJECT)) {
            return object(cursor);
        }
        cursor.expected(this);
        return null;
    }

    private static JsonNode value(Cursor cursor) throws IOException {
        return switch (cursor.token()) {
            case START_OBJECT -> object(cursor);
            case START_ARRAY -> list(cursor);
            case VALUE_STRING -> NODES.textNode(cursor.text());
            case VALUE_NUMBER_INT -> whole(cursor);
            case VALUE_NUMBER_FLOAT -> number(cursor);
            case VALUE_TRUE -> NODES.booleanNode(true);
            case VALUE_FALSE -> NODES.booleanNode(false);
            default -> NODES.nullNode();
        };
    }

    private static ObjectNode object(Cursor cursor) throws IOException {
        ObjectNode object = NODES.objectNode();
        while (cursor.next() != JsonToken.END_OBJECT) {
            String name = cursor.name();
            if (object.has(name)) {
                cursor.note(ReadingCode.DUPLICATE_MEMBER, () -> "%s stands here twice.".formatted(Echo.of(name)));
            }
            cursor.next();
            object.set(name, value(cursor));
        }
        return object;
    }

    private static ArrayNode list(Cursor cursor) throws IOException {
        ArrayNode list = NODES.arrayNode();
        while (cursor.next() != JsonToken.END_ARRAY) {
            list.add(value(cursor));
        }
        return list;
    }

    private static JsonNode whole(Cursor cursor) throws IOException {
        Long number = cursor.whole();
        return number == null ? number(cursor) : NODES.numberNode(number.longValue());
    }

    private static JsonNode number(Cursor cursor) throws IOException {
        Double number = cursor.number();
        return number == null ? NODES.nullNode() : NODES.numberNode(number.doubleValue());
    }
}
