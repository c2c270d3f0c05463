package org.thalweg.api.json;

import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import org.thalweg.api.Limits;
import org.thalweg.api.problem.Fault;
import org.thalweg.api.problem.Figure;
import org.thalweg.api.problem.ReadingCode;

/** How deep, how long and how much is read. Checked while the text is scanned, before anything is made of it. */
final class ReadingLimits extends StreamReadConstraints {

    private static final long serialVersionUID = 1L;

    private static final String NAME = "A member's name here has %d bytes or more; at most %d are read.";

    ReadingLimits() {
        super(
                Limits.NESTING,
                Limits.BODY_BYTES,
                Limits.NUMBER_LENGTH,
                Limits.STRING_LENGTH,
                Limits.NAME_BYTES,
                Limits.TOKENS);
    }

    @Override
    public void validateNestingDepth(int depth) throws StreamConstraintsException {
        check(
                depth,
                Limits.NESTING,
                ReadingCode.TOO_DEEP,
                "1",
                "Lists and objects lie %d deep in each other here; at most %d are read.");
    }

    @Override
    public void validateTokenCount(long count) throws StreamConstraintsException {
        check(
                count,
                Limits.TOKENS,
                ReadingCode.TOO_MANY,
                "1",
                "The body has %d values, names and brackets or more; at most %d are read.");
    }

    @Override
    public void validateFPLength(int length) throws StreamConstraintsException {
        number(length);
    }

    @Override
    public void validateIntegerLength(int length) throws StreamConstraintsException {
        number(length);
    }

    private static void number(int length) throws StreamConstraintsException {
        check(
                length,
                Limits.NUMBER_LENGTH,
                ReadingCode.TOO_LONG,
                "character",
                "This number has %d digits or more; at most %d are read.");
    }

    @Override
    public void validateStringLength(int length) throws StreamConstraintsException {
        check(
                length,
                Limits.STRING_LENGTH,
                ReadingCode.TOO_LONG,
                "character",
                "This string has %d characters or more; at most %d are read.");
    }

    @Override
    public void validateNameLength(int length) throws StreamConstraintsException {
        check(length, Limits.NAME_BYTES, ReadingCode.TOO_LONG, "byte", NAME);
    }

    private static void check(long actual, int limit, ReadingCode code, String unit, String detail)
            throws StreamConstraintsException {
        if (actual > limit) {
            throw new Passed(
                    code,
                    detail.equals(NAME),
                    detail.formatted(actual, limit),
                    new Figure(actual, unit),
                    new Figure(limit, unit));
        }
    }

    /** A limit was passed. */
    static final class Passed extends StreamConstraintsException {

        private static final long serialVersionUID = 1L;

        private final ReadingCode code;
        private final boolean inName;
        private final transient Figure actual;
        private final transient Figure limit;

        private Passed(ReadingCode code, boolean inName, String detail, Figure actual, Figure limit) {
            super(detail);
            this.code = code;
            this.inName = inName;
            this.actual = actual;
            this.limit = limit;
        }

        /** What to tell; a name that is too long has no pointer, so the object it stands in is pointed at. */
        Fault fault(Cursor cursor) {
            String pointer = inName ? cursor.containerPointer() : cursor.pointer();
            return Fault.of(code, pointer, getOriginalMessage(), actual, limit);
        }
    }
}
