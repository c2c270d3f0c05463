package org.thalweg.api.problem;

import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.api.Limits;
import org.thalweg.finding.Origin;

/**
 * One thing that is wrong.
 *
 * @param code    what is wrong
 * @param pointer what in the request is wrong
 * @param detail  for people
 * @param actual  the figure found
 * @param limit   the figure it was held against
 */
@Schema(
        name = "Fault",
        requiredProperties = {"code", "pointer", "detail"},
        description = "One thing that is wrong with a request.")
public record Fault(
        @Schema(
                description = "What is wrong. A code never changes its meaning; openapi/problems.md explains"
                        + " each. The list is open.",
                maxLength = 40,
                examples = "UNKNOWN_POINT")
        String code,

        @Schema(
                description = "What in the request is wrong: a JSON Pointer (RFC 6901) after a #, not"
                        + " percent-encoded. For a missing member, the object it is missing from.",
                maxLength = Limits.POINTER_LENGTH,
                examples = "#/roof/planes/2/outline/4")
        String pointer,

        @Schema(description = "What is wrong and what to do, for people.", maxLength = 1_000)
        String detail,

        @Schema(description = "The figure found, when there is one.")
        Optional<Figure> actual,

        @Schema(description = "The figure it was held against, when there is one.")
        Optional<Figure> limit) {

    public static Fault of(ReadingCode code, String pointer, String detail) {
        return new Fault(code.name(), pointer, detail, Optional.empty(), Optional.empty());
    }

    public static Fault of(ReadingCode code, String pointer, String detail, Figure actual, Figure limit) {
        return of(code.name(), pointer, detail, actual, limit);
    }

    static Fault of(String code, String pointer, String detail, Figure actual, Figure limit) {
        return new Fault(code, pointer, detail, Optional.of(actual), Optional.of(limit));
    }

    /** The same with its pointer led on from {@code place}. */
    Fault within(Origin place) {
        return new Fault(code, place.pointer() + pointer.substring(1), detail, actual, limit);
    }
}
