package org.thalweg.api.problem;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.api.Limits;
import org.thalweg.finding.Origin;

/**
 * The body of every answer that is none: an RFC 9457 problem.
 *
 * @param type       the kind as a URI reference
 * @param title      the kind in words
 * @param status     the HTTP status
 * @param code       the kind as a code
 * @param detail     this case in words
 * @param errorCount how many things are wrong
 * @param errors     the first of them
 */
@Schema(
        name = "Problem",
        requiredProperties = {"type", "title", "status", "code", "detail", "errorCount", "errors"},
        description = "Why there is no answer (RFC 9457).")
public record ProblemAnswer(
        @Schema(
                description = "The kind of problem, as a URI reference that is the same every time.",
                maxLength = 60,
                examples = "/problems/not-a-roof")
        String type,

        @Schema(description = "The kind of problem in words that are the same every time.", maxLength = 100)
        String title,

        @Schema(
                description = "The HTTP status of this answer.",
                format = "int32",
                minimum = "400",
                maximum = "599",
                examples = "422")
        int status,

        @Schema(
                description = "The kind of problem as a code. A code never changes its meaning;"
                        + " openapi/problems.md explains each. The list is open.",
                maxLength = 40,
                examples = "NOT_A_ROOF")
        String code,

        @Schema(description = "This case, for people.", maxLength = 1_000)
        String detail,

        @Schema(
                description =
                        "How many things are wrong, 0 or more. More than `errors` holds when there are" + " over 100.",
                format = "int32",
                minimum = "0",
                maximum = "100000000")
        int errorCount,

        @Schema(
                type = SchemaType.ARRAY,
                implementation = Fault.class,
                description = "What is wrong, everything of one stage of reading at once, at most 100. Empty when"
                        + " the problem is not in the body.",
                maxItems = Limits.ERRORS)
        List<Fault> errors) {

    static ProblemAnswer of(Problem problem, String detail, Faults faults) {
        return new ProblemAnswer(
                problem.type(),
                problem.title(),
                problem.status(),
                problem.name(),
                detail,
                faults.count(),
                faults.first());
    }

    /** The same with every pointer led on from {@code place}. */
    ProblemAnswer within(Origin place) {
        List<Fault> led = errors.stream().map(fault -> fault.within(place)).toList();
        return new ProblemAnswer(type, title, status, code, detail, errorCount, led);
    }
}
