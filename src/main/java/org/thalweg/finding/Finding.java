package org.thalweg.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thalweg.units.Measure;

/**
 * Something a crew should know.
 *
 * @param code    what was noticed
 * @param place   where
 * @param message one or two sentences for people, with what to do. {@code {place}}, {@code {actual}}, {@code {limit}} and
 *                the names of what is needed, in braces, stand where those go; the writer puts them in the caller's unit
 * @param actual  the figure found, if there is one
 * @param limit   the figure it was held against, if there is one
 * @param source  where the limit comes from
 * @param needed  what would do instead, as a coil wide enough; often nothing
 * @param panels  which panels it concerns, where it is told once for many
 */
public record Finding(
        FindingCode code,
        Place place,
        String message,
        Optional<Measure> actual,
        Optional<Measure> limit,
        Source source,
        List<Needed> needed,
        Optional<Panels> panels) {

    /**
     * Panels of which one thing is told. {@code {panel}} and {@code {panelCount}} stand for the two in the message.
     *
     * @param worst the mark of the one it is worst for
     * @param count how many it concerns; 1 or more
     */
    public record Panels(String worst, int count) {}

    /**
     * A figure that would do.
     *
     * @param name   what of, as the contract names it: {@code coilWidth}
     * @param figure how much
     */
    public record Needed(String name, Measure figure) {}

    public Finding {
        needed = List.copyOf(needed);
    }

    public static Finding of(FindingCode code, Place place, String message, Source source) {
        return new Finding(
                code, place, message, Optional.empty(), Optional.empty(), source, List.of(), Optional.empty());
    }

    public static Finding of(
            FindingCode code, Place place, String message, Measure actual, Measure limit, Source source) {
        return new Finding(
                code, place, message, Optional.of(actual), Optional.of(limit), source, List.of(), Optional.empty());
    }

    /** The same with one more figure that would do. */
    public Finding needs(String name, Measure figure) {
        List<Needed> more = new ArrayList<>(needed);
        more.add(new Needed(name, figure));
        return new Finding(code, place, message, actual, limit, source, more, panels);
    }

    /** The same, told of these panels. */
    public Finding about(Panels told) {
        return new Finding(code, place, message, actual, limit, source, needed, Optional.of(told));
    }

    public Severity severity() {
        return code.severity();
    }
}
