package org.thalweg.finding;

import java.util.Optional;
import org.thalweg.units.Measure;

/**
 * Something a crew should know.
 *
 * @param code    what was noticed
 * @param place   where
 * @param message one or two sentences for people, with what to do. {@code {place}}, {@code {actual}} and
 *                {@code {limit}} stand where those go; the writer puts them in the caller's unit
 * @param actual  the figure found, if there is one
 * @param limit   the figure it was held against, if there is one
 * @param source  where the limit comes from
 */
public record Finding(
        FindingCode code,
        Place place,
        String message,
        Optional<Measure> actual,
        Optional<Measure> limit,
        Source source) {

    public static Finding of(FindingCode code, Place place, String message, Source source) {
        return new Finding(code, place, message, Optional.empty(), Optional.empty(), source);
    }

    public static Finding of(
            FindingCode code, Place place, String message, Measure actual, Measure limit, Source source) {
        return new Finding(code, place, message, Optional.of(actual), Optional.of(limit), source);
    }

    public Severity severity() {
        return code.severity();
    }
}
