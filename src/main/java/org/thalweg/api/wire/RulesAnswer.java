package org.thalweg.api.wire;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.api.Limits;

/**
 * The rules.
 *
 * @param engine who answered
 * @param rules  every rule
 */
@Schema(
        name = "RulesAnswer",
        requiredProperties = {"engine", "rules"},
        description = "The published rules.")
public record RulesAnswer(
        @Schema(ref = "Engine", description = "Who answered.")
        String engine,

        @Schema(description = "Every rule, in the order of the table: by topic.", maxItems = Limits.REFERENCE_ROWS)
        List<RuleAnswer> rules) {

    /**
     * One rule.
     *
     * @param topic      what it is about
     * @param rule       what it asks for
     * @param printed    the figure or figures, as text
     * @param value      the figure, where it is one
     * @param unit       unit of the figures
     * @param source     where it stands
     * @param confidence how sure we are of it
     * @param note       anything else
     */
    @Schema(
            name = "Rule",
            requiredProperties = {"topic", "rule", "source", "confidence"},
            description = "A published rule as it was printed, with where it stands.")
    public record RuleAnswer(
            @Schema(
                    description = "What it is about: `min slope`, `valley`, `cleat`, `clip` … The list is open.",
                    maxLength = 40,
                    examples = "valley")
            String topic,

            @Schema(
                    description =
                            "What it asks for, and of which roofing. Where it has several parts, the figures stand"
                                    + " in their order.",
                    maxLength = 200,
                    examples = "lap in direction of flow")
            String rule,

            @Schema(
                    description = "The figure or figures as printed; absent where the rule has none.",
                    maxLength = 60,
                    examples = "6")
            Optional<String> printed,

            @Schema(
                    description = "The figure as a number, in the unit beside it, where it is one plain number.",
                    format = "double",
                    minimum = "0",
                    maximum = "1e6",
                    examples = "6")
            Optional<BigDecimal> value,

            @Schema(
                    description =
                            "The unit of the figures: `in per 12` and `in per ft` are slopes or other ratios, `1` is a plain number;"
                                    + " absent where they have none, or name their own.",
                    maxLength = 40,
                    examples = "in")
            Optional<String> unit,

            @Schema(
                    description = "The code, handbook or practice it stands in.",
                    maxLength = 200,
                    examples = "IBC 1507.4.2 (3) / IRC R905.10.2")
            String source,

            @Schema(ref = "Confidence", description = "How sure we are of it.")
            String confidence,

            @Schema(description = "Anything else, when there is something.", maxLength = 200, examples = "150 mm")
            Optional<String> note) {}
}
