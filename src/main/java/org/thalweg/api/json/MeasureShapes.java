package org.thalweg.api.json;

import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.Limits;
import org.thalweg.api.problem.ReadingCode;
import org.thalweg.api.wire.WireLength;
import org.thalweg.api.wire.WirePitch;
import org.thalweg.api.wire.WirePlanCorner;
import org.thalweg.api.wire.WirePoint;

/** Lengths, pitches and corners as callers write them. Whether a tape string makes sense is for the reader to say. */
final class MeasureShapes {

    private MeasureShapes() {}

    /** A number or a tape string. */
    record LengthShape() implements Shape {
        @Override
        public String expected() {
            return "a length, a number or a tape string such as \"12' 3 1/2\\\"\",";
        }

        @Override
        public @Nullable WireLength read(Cursor cursor) throws IOException {
            if (cursor.token().isNumeric()) {
                Double number = cursor.number();
                return number == null ? null : WireLength.of(number);
            }
            if (cursor.on(JsonToken.VALUE_STRING)) {
                String tape = shortText(cursor);
                return tape == null ? null : WireLength.of(tape);
            }
            cursor.expected(this);
            return null;
        }
    }

    /** A string such as {@code 6:12}, or rise and run. */
    record PitchShape(Shape riseAndRun) implements Shape {
        @Override
        public String expected() {
            return "a pitch, a string such as \"6:12\" or an object with rise and run,";
        }

        @Override
        public @Nullable WirePitch read(Cursor cursor) throws IOException {
            if (cursor.on(JsonToken.VALUE_STRING)) {
                String text = shortText(cursor);
                return text == null ? null : WirePitch.of(text);
            }
            if (!cursor.on(JsonToken.START_OBJECT)) {
                cursor.expected(this);
                return null;
            }
            RiseAndRun read = (RiseAndRun) riseAndRun.read(cursor);
            return read == null ? null : pitch(read, cursor);
        }

        private static @Nullable WirePitch pitch(RiseAndRun read, Cursor cursor) {
            if (read.rise == null || read.run == null) {
                cursor.note(ReadingCode.MISSING_MEMBER, () -> "A pitch needs both rise and run.");
                return null;
            }
            return WirePitch.of(read.rise, read.run);
        }
    }

    /** What a pitch that is an object holds. */
    record RiseAndRun(@Nullable Double rise, @Nullable Double run) {}

    /** Three lengths. */
    record PointShape(LengthShape of) implements Shape {
        @Override
        public String expected() {
            return "a corner, a list of x, y and z,";
        }

        @Override
        public @Nullable WirePoint read(Cursor cursor) throws IOException {
            List<WireLength> xyz =
                    lengths(cursor, this, of, 3, "A corner is three lengths, x, y and z; this one has %d.");
            return xyz == null ? null : new WirePoint(xyz.get(0), xyz.get(1), xyz.get(2));
        }
    }

    /** Two lengths. */
    record PlanCornerShape(LengthShape of) implements Shape {
        @Override
        public String expected() {
            return "a corner in plan, a list of x and y,";
        }

        @Override
        public @Nullable WirePlanCorner read(Cursor cursor) throws IOException {
            List<WireLength> xy =
                    lengths(cursor, this, of, 2, "A corner in plan is two lengths, x and y; this one has %d.");
            return xy == null ? null : new WirePlanCorner(xy.get(0), xy.get(1));
        }
    }

    /** A list of so many lengths; null when it holds others, or something that is none. */
    private static @Nullable List<WireLength> lengths(
            Cursor cursor, Shape list, LengthShape of, int wanted, String otherwise) throws IOException {
        if (!cursor.on(JsonToken.START_ARRAY)) {
            cursor.expected(list);
            return null;
        }
        List<WireLength> lengths = new ArrayList<>(wanted);
        int count = 0;
        for (; cursor.next() != JsonToken.END_ARRAY; count++) {
            if (count < wanted) {
                WireLength length = of.read(cursor);
                if (length != null) {
                    lengths.add(length);
                }
            } else {
                cursor.skip();
            }
        }
        if (count != wanted) {
            cursor.noteCount(
                    count < wanted ? ReadingCode.TOO_FEW : ReadingCode.TOO_MANY,
                    otherwise.formatted(count),
                    count,
                    wanted);
            return null;
        }
        return lengths.size() == wanted ? lengths : null;
    }

    private static @Nullable String shortText(Cursor cursor) throws IOException {
        String text = cursor.text();
        if (text.length() <= Limits.TAPE_LENGTH) {
            return text;
        }
        cursor.noteCount(
                ReadingCode.TOO_LONG,
                "This string has %d characters; at most %d are read.".formatted(text.length(), Limits.TAPE_LENGTH),
                text.length(),
                Limits.TAPE_LENGTH);
        return null;
    }
}
