package org.thalweg.api.problem;

import java.util.OptionalLong;
import org.thalweg.api.Limits;
import org.thalweg.finding.Origin;

/** Thrown at the door when there can be no answer; carries what the caller is told. */
public final class NoAnswer extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient ProblemAnswer answer;

    public NoAnswer(Problem problem, String detail, Faults faults) {
        super(problem.name(), null, false, false);
        this.answer = ProblemAnswer.of(problem, detail, faults);
    }

    private NoAnswer(ProblemAnswer answer) {
        super(answer.code(), null, false, false);
        this.answer = answer;
    }

    public NoAnswer(Problem problem, String detail) {
        this(problem, detail, Faults.none());
    }

    /** The fault's own words when there is one; else how many there are. */
    public static NoAnswer of(Problem problem, Faults faults) {
        String detail = faults.count() == 1
                ? faults.first().get(0).detail()
                : "%d things are wrong; each is in errors.".formatted(faults.count());
        return new NoAnswer(problem, detail, faults);
    }

    public static NoAnswer of(Problem problem, Fault fault) {
        return of(problem, Faults.of(fault));
    }

    /** The same for a caller who posted what was read as a member of something larger. */
    public NoAnswer within(Origin place) {
        return new NoAnswer(answer.within(place));
    }

    /** A body of {@code actual} bytes, or of more than are read when nobody knows how many. */
    public static NoAnswer tooLarge(OptionalLong actual) {
        String detail = actual.isPresent()
                ? "The body has %d bytes; at most %d are read.".formatted(actual.getAsLong(), Limits.BODY_BYTES)
                : "The body has more than %d bytes, the most that are read.".formatted(Limits.BODY_BYTES);
        Figure found = new Figure(actual.orElse(Limits.BODY_BYTES + 1L), "byte");
        return of(
                Problem.TOO_LARGE,
                Fault.of(Problem.TOO_LARGE.name(), "#", detail, found, new Figure(Limits.BODY_BYTES, "byte")));
    }

    /** A line of a stream with more bytes than are read. */
    public static NoAnswer lineTooLarge() {
        String detail =
                "The line has more than %d bytes, the most that are read.".formatted(Limits.REPRICING_LINE_BYTES);
        return of(
                Problem.TOO_LARGE,
                Fault.of(
                        Problem.TOO_LARGE.name(),
                        "#",
                        detail,
                        new Figure(Limits.REPRICING_LINE_BYTES + 1L, "byte"),
                        new Figure(Limits.REPRICING_LINE_BYTES, "byte")));
    }

    /** What the caller is told. */
    public ProblemAnswer answer() {
        return answer;
    }
}
