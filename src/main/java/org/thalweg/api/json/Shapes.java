package org.thalweg.api.json;

import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.problem.Echo;
import org.thalweg.api.problem.ReadingCode;

/** The plain shapes; {@link RecordShape} puts them together. */
final class Shapes {

    private Shapes() {}

    /** A string. */
    record Text() implements Shape {
        @Override
        public String expected() {
            return "a string";
        }

        @Override
        public @Nullable String read(Cursor cursor) throws IOException {
            if (cursor.on(JsonToken.VALUE_STRING)) {
                return cursor.text();
            }
            cursor.expected(this);
            return null;
        }
    }

    /** A number. */
    record AnyNumber() implements Shape {
        @Override
        public String expected() {
            return "a number";
        }

        @Override
        public @Nullable Double read(Cursor cursor) throws IOException {
            if (cursor.token().isNumeric()) {
                return cursor.number();
            }
            cursor.expected(this);
            return null;
        }
    }

    /** A whole number, however it is written: 250, 250.0 and 2.5e2 are one number. */
    record WholeNumber() implements Shape {

        /** Beyond it a {@code double} no longer tells neighbours apart. */
        private static final double MOST = 1L << 53;

        @Override
        public String expected() {
            return "a whole number";
        }

        @Override
        public @Nullable Long read(Cursor cursor) throws IOException {
            if (cursor.token().isNumeric()) {
                Double number = cursor.number();
                if (number == null || Math.abs(number) <= MOST && number == Math.rint(number)) {
                    return number == null ? null : (Long) number.longValue();
                }
            }
            cursor.expected(this);
            return null;
        }
    }

    /** True or false. */
    record YesOrNo() implements Shape {
        @Override
        public String expected() {
            return "true or false";
        }

        @Override
        public @Nullable Boolean read(Cursor cursor) throws IOException {
            if (cursor.on(JsonToken.VALUE_TRUE)) {
                return true;
            }
            if (cursor.on(JsonToken.VALUE_FALSE)) {
                return false;
            }
            cursor.expected(this);
            return null;
        }
    }

    /**
     * One of a few words.
     *
     * @param words what each stands for, in the order they are listed to callers
     * @param code  what to call any other
     */
    record Word(Map<String, ?> words, ReadingCode code) implements Shape {
        @Override
        public String expected() {
            return "one of " + String.join(", ", words.keySet());
        }

        @Override
        public @Nullable Object read(Cursor cursor) throws IOException {
            if (!cursor.on(JsonToken.VALUE_STRING)) {
                cursor.expected(this);
                return null;
            }
            String word = cursor.text();
            Object meant = words.get(word);
            if (meant == null) {
                cursor.note(code, () -> "%s is not known here. Use %s.".formatted(Echo.of(word), expected()));
            }
            return meant;
        }
    }

    /**
     * A list.
     *
     * @param of   what it holds
     * @param most more than these are counted and not kept
     */
    record Many(Shape of, int most) implements Shape {
        @Override
        public String expected() {
            return "a list";
        }

        @Override
        public @Nullable List<@Nullable Object> read(Cursor cursor) throws IOException {
            if (!cursor.on(JsonToken.START_ARRAY)) {
                cursor.expected(this);
                return null;
            }
            List<@Nullable Object> list = new ArrayList<>();
            int count = 0;
            for (; cursor.next() != JsonToken.END_ARRAY; count++) {
                if (count < most) {
                    list.add(of.read(cursor));
                } else {
                    cursor.skip();
                }
            }
            if (count > most) {
                cursor.noteCount(
                        ReadingCode.TOO_MANY,
                        "This list has %d entries; at most %d are read.".formatted(count, most),
                        count,
                        most);
            }
            return list;
        }
    }

    /**
     * An object whose members' names are the caller's own. A member that is null is not there.
     *
     * @param of   what its members hold
     * @param most more than these are counted and not kept
     */
    record Named(Shape of, int most) implements Shape {
        @Override
        public String expected() {
            return "an object";
        }

        @Override
        public @Nullable Map<String, @Nullable Object> read(Cursor cursor) throws IOException {
            if (!cursor.on(JsonToken.START_OBJECT)) {
                cursor.expected(this);
                return null;
            }
            Map<String, @Nullable Object> map = new LinkedHashMap<>();
            int count = 0;
            for (; cursor.next() != JsonToken.END_OBJECT; count++) {
                readMember(cursor, map);
            }
            if (count > most) {
                cursor.noteCount(
                        ReadingCode.TOO_MANY,
                        "This object has %d members; at most %d are read.".formatted(count, most),
                        count,
                        most);
            }
            return map;
        }

        private void readMember(Cursor cursor, Map<String, @Nullable Object> map) throws IOException {
            String name = cursor.name();
            boolean again = map.containsKey(name);
            if (again) {
                cursor.note(ReadingCode.DUPLICATE_MEMBER, () -> "%s stands here twice.".formatted(Echo.of(name)));
            }
            cursor.next();
            if (again || map.size() >= most) {
                cursor.skip();
            } else if (!cursor.on(JsonToken.VALUE_NULL)) {
                map.put(name, of.read(cursor));
            }
        }
    }
}
