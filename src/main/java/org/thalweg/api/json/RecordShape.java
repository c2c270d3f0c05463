package org.thalweg.api.json;

import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.lang.reflect.Constructor;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.problem.Echo;
import org.thalweg.api.problem.Nearest;
import org.thalweg.api.problem.ReadingCode;

/**
 * An object whose members are a record's components; others are refused, or passed over where the record says so. A member
 * that is null is not there.
 */
final class RecordShape implements Shape {

    /** A component: its place in the constructor and what it holds. */
    record Member(int index, Shape of) {}

    private static final Shape OTHERS = new PassedOver();

    private final Constructor<?> constructor;
    private final Map<String, Member> members;
    private final boolean passesOver;

    /** {@code passesOver} says whether members that are no components are passed over. */
    RecordShape(Constructor<?> constructor, Map<String, Member> members, boolean passesOver) {
        this.constructor = constructor;
        this.members = new LinkedHashMap<>(members);
        this.passesOver = passesOver;
    }

    @Override
    public String expected() {
        return "an object";
    }

    @Override
    public @Nullable Object read(Cursor cursor) throws IOException {
        if (!cursor.on(JsonToken.START_OBJECT)) {
            cursor.expected(this);
            return null;
        }
        @Nullable Object[] values = new @Nullable Object[members.size()];
        boolean[] seen = new boolean[members.size()];
        Set<String> others = passesOver ? new HashSet<>() : Set.of();
        while (cursor.next() != JsonToken.END_OBJECT) {
            if (passesOver && !members.containsKey(cursor.name())) {
                passOver(cursor, others);
            } else {
                readMember(cursor, values, seen);
            }
        }
        return make(values);
    }

    private void readMember(Cursor cursor, @Nullable Object[] values, boolean[] seen) throws IOException {
        String name = cursor.name();
        Member member = members.get(name);
        if (member == null) {
            cursor.note(ReadingCode.UNKNOWN_MEMBER, () -> unknown(name));
        } else if (seen[member.index]) {
            cursor.note(ReadingCode.DUPLICATE_MEMBER, () -> "%s stands here twice.".formatted(Echo.of(name)));
        }
        cursor.next();
        if (member == null || seen[member.index]) {
            cursor.skip();
            return;
        }
        seen[member.index] = true;
        if (!cursor.on(JsonToken.VALUE_NULL)) {
            values[member.index] = member.of.read(cursor);
        }
    }

    private static void passOver(Cursor cursor, Set<String> others) throws IOException {
        String name = cursor.name();
        if (!others.add(name)) {
            cursor.note(ReadingCode.DUPLICATE_MEMBER, () -> "%s stands here twice.".formatted(Echo.of(name)));
        }
        cursor.next();
        OTHERS.read(cursor);
    }

    private String unknown(String name) {
        return "%s is not known here.%s Known: %s."
                .formatted(Echo.of(name), Nearest.hint(name, members.keySet()), String.join(", ", members.keySet()));
    }

    private Object make(@Nullable Object[] values) {
        try {
            return constructor.newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("a wire record takes whatever was read, even nothing", e);
        }
    }
}
