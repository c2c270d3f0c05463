package org.thalweg.api.wire;

import java.util.Map;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.api.Limits;
import org.thalweg.api.problem.Figure;
import org.thalweg.finding.Place;
import org.thalweg.finding.Severity;

/**
 * Something a crew should know.
 *
 * @param code     what was noticed
 * @param severity how much it matters
 * @param place    where
 * @param message  for people
 * @param actual   the figure found
 * @param limit    the figure it was held against
 * @param source   where the limit comes from
 * @param needed   what would do instead
 * @param panels   which panels it concerns
 */
@Schema(
        name = "Finding",
        requiredProperties = {"code", "severity", "place", "message", "source"},
        description = "Something a crew should know.")
public record FindingAnswer(
        @Schema(
                description = "What was noticed. A code never changes its meaning; openapi/problems.md explains"
                        + " each. The list is open.",
                maxLength = 40,
                examples = "SLOPE_BELOW_MINIMUM")
        String code,

        @Schema(
                ref = "Severity",
                description =
                        "How much it matters: `note` to know, `warning` to look into, `stop` before" + " cutting.")
        Severity severity,

        @Schema(description = "Where on the roof.") PlaceAnswer place,

        @Schema(description = "What it is and what to do, for people.", maxLength = 1_000)
        String message,

        @Schema(description = "The figure found, when there is one.")
        Optional<Figure> actual,

        @Schema(description = "The figure it was held against, when there is one.")
        Optional<Figure> limit,

        @Schema(
                description = "Where the limit comes from: a code or handbook, `the request`, `geometry`, or"
                        + " `common practice, no source`.",
                maxLength = 200)
        String source,

        @Schema(
                description =
                        "What would do instead, by the name of the request's member or of what it is measured on, as"
                                + " `coilWidth`; when there is such a figure.",
                maxProperties = Limits.NEEDED)
        Optional<Map<String, Figure>> needed,

        @Schema(description = "Which panels it concerns, where one thing is told of many.")
        Optional<PanelsAnswer> panels) {

    /**
     * The panels a finding is told of.
     *
     * @param worst the one it is worst for
     * @param count how many
     */
    @Schema(
            name = "FindingPanels",
            requiredProperties = {"worst", "count"},
            description = "The panels a finding is told of; its figures are those of the worst.")
    public record PanelsAnswer(
            @Schema(
                    description = "Mark of the one it is worst for; the first of those equally bad.",
                    maxLength = Limits.ID_ANSWERED + 24)
            String worst,

            @Schema(description = "How many it concerns.", minimum = "1", maximum = "1e6")
            int count) {}

    /**
     * Where.
     *
     * @param kind    sort of thing
     * @param id      its name in the answer
     * @param pointer what in the request it came from
     */
    @Schema(
            name = "Place",
            requiredProperties = {"kind", "id", "pointer"},
            description = "What a finding is about.")
    public record PlaceAnswer(
            @Schema(ref = "PlaceKind", description = "What sort of thing.")
            Place.Kind kind,

            @Schema(description = "Its id or mark in this answer.", maxLength = Limits.ID_ANSWERED, examples = "south")
            String id,

            @Schema(
                    description = "What in the request it came from: a JSON Pointer (RFC 6901) after a #, not"
                            + " percent-encoded.",
                    maxLength = Limits.POINTER_LENGTH,
                    examples = "#/roof/planes/2")
            String pointer) {}
}
