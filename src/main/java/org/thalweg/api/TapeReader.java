package org.thalweg.api;

import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.problem.Echo;
import org.thalweg.api.problem.Fault;
import org.thalweg.api.problem.Faults;
import org.thalweg.api.problem.Figure;
import org.thalweg.api.problem.NoAnswer;
import org.thalweg.api.problem.Problem;
import org.thalweg.api.problem.ReadingCode;
import org.thalweg.api.wire.WireLength;
import org.thalweg.api.wire.WirePitch;
import org.thalweg.finding.Origin;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;
import org.thalweg.units.Pitch;
import org.thalweg.units.Tape;

/**
 * Reads the lengths and pitches of one request. What can't be read, or lies outside its limits, is kept until
 * {@link #done}, so that the caller is told of all of it at once; until then something harmless stands in for it.
 */
final class TapeReader {

    /** A double this large is a whole number in any unit. */
    private static final double NO_DECIMALS = 1e18;

    private static final Pitch LEVEL = new Pitch(0, 12);

    private final LengthUnit unit;
    private final Faults faults = Faults.none();

    TapeReader(LengthUnit unit) {
        this.unit = unit;
    }

    /** The length {@code given}, or {@code absent} when the caller gave none. */
    Length length(@Nullable WireLength given, Length absent, Origin at, Limit limit) {
        return given == null ? absent : length(given, at, limit);
    }

    /** The length, if the caller gave one. */
    Optional<Length> given(@Nullable WireLength given, Origin at, Limit limit) {
        return given == null ? Optional.empty() : Optional.of(length(given, at, limit));
    }

    Length length(WireLength given, Origin at, Limit limit) {
        String text = given.tape();
        if (text == null) {
            return inRange(unit.of(given.number()), at, limit);
        }
        Optional<Length> read = Tape.read(text, unit);
        if (read.isEmpty()) {
            faults.add(() -> badLength(text, at));
            return Length.ZERO;
        }
        return inRange(read.get(), at, limit);
    }

    private Length inRange(Length length, Origin at, Limit limit) {
        if (length.metres() >= limit.least() && length.metres() <= limit.most()) {
            return length;
        }
        faults.add(() -> outOfRange(length, at, limit));
        return Length.ZERO;
    }

    /** The pitch {@code given}, or {@code absent} when the caller gave none. */
    Pitch pitch(@Nullable WirePitch given, Pitch absent, Origin at) {
        return given == null ? absent : pitch(given, at);
    }

    private Pitch pitch(WirePitch given, Origin at) {
        String text = given.text();
        if (text == null) {
            return inRange(given.rise(), given.run(), at);
        }
        Optional<Pitch> read = Pitch.read(text);
        if (read.isEmpty()) {
            faults.add(() -> badPitch(text, at));
            return LEVEL;
        }
        return inRange(read.get().rise(), read.get().run(), at);
    }

    private Pitch inRange(double rise, double run, Origin at) {
        boolean riseGood = inRange(rise, Limits.RISE, at);
        boolean runGood = inRange(run, Limits.RUN, at);
        return riseGood && runGood ? new Pitch(rise, run) : LEVEL;
    }

    private boolean inRange(double number, Limit limit, Origin at) {
        if (number >= limit.least() && number <= limit.most()) {
            return true;
        }
        Figure actual = Figure.of(number);
        Figure passed = Figure.of(number < limit.least() ? limit.least() : limit.most());
        faults.add(() -> Fault.of(
                ReadingCode.OUT_OF_RANGE,
                at.pointer(),
                "The %s of a pitch is %s to %s; this one is %s."
                        .formatted(
                                limit.name(),
                                Figure.of(limit.least()).text(),
                                Figure.of(limit.most()).text(),
                                actual.text()),
                actual,
                passed));
        return false;
    }

    /**
     * Keeps that a length passes another one of the request.
     *
     * @param sentence says so, with {@code %s} for the one and then for the other
     */
    void notePassed(Origin at, Length found, Length limit, String sentence) {
        Figure actual = figure(found);
        Figure other = figure(limit);
        note(() -> Fault.of(
                ReadingCode.OUT_OF_RANGE,
                at.pointer(),
                sentence.formatted(actual.text(), other.text()),
                actual,
                other));
    }

    /** Keeps a fault that needs no figures with the rest. */
    void note(ReadingCode code, Origin at, String detail) {
        note(() -> Fault.of(code, at.pointer(), detail));
    }

    /** Keeps a fault of another kind with the rest. */
    void note(Supplier<Fault> fault) {
        faults.add(fault);
    }

    /** How many faults there are so far. */
    int faultCount() {
        return faults.count();
    }

    /** Adds a fault that shows only once everything is read. */
    void tooMany(Origin at, String what, int actual, int most) {
        faults.add(() -> Fault.of(
                ReadingCode.TOO_MANY,
                at.pointer(),
                "The roof has %d %s; at most %d are read.".formatted(actual, what, most),
                Figure.of(actual),
                Figure.of(most)));
    }

    /**
     * Ends the reading.
     *
     * @throws NoAnswer when something could not be read
     */
    void done() {
        if (!faults.isEmpty()) {
            throw NoAnswer.of(Problem.INVALID, faults);
        }
    }

    private static Fault badPitch(String text, Origin at) {
        return Fault.of(
                ReadingCode.BAD_PITCH,
                at.pointer(),
                "%s can't be read as a pitch. Write rise and run as \"6:12\".".formatted(Echo.of(text)));
    }

    private static Fault badLength(String text, Origin at) {
        return Fault.of(
                ReadingCode.BAD_LENGTH,
                at.pointer(),
                "%s can't be read as a length. Write a number, or a tape string such as \"12' 3 1/2\\\"\" or \"1050 mm\"."
                        .formatted(Echo.of(text)));
    }

    private Fault outOfRange(Length length, Origin at, Limit limit) {
        Figure actual = figure(length);
        Figure least = figure(Length.metres(limit.least()));
        Figure most = figure(Length.metres(limit.most()));
        return Fault.of(
                ReadingCode.OUT_OF_RANGE,
                at.pointer(),
                "This is %s; it must be from %s to %s.".formatted(actual.text(), least.text(), most.text()),
                actual,
                length.metres() < limit.least() ? least : most);
    }

    /** A length as the caller reads it: rounded, unless it is so large that it has no decimals to round. */
    Figure figure(Length length) {
        boolean large = Math.abs(length.metres()) > NO_DECIMALS;
        return new Figure(large ? unit.from(length) : unit.round(length), unit.symbol());
    }
}
