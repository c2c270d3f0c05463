package org.thalweg.api.wire;

import jakarta.validation.constraints.Size;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.api.Limits;
import org.thalweg.api.problem.ProblemAnswer;
import org.thalweg.api.wire.QuoteAnswer.MoneyAnswer;

/**
 * What jobs come to now.
 *
 * @param answers one for each job
 * @param summary what they come to together
 */
@Schema(
        name = "RepricingsAnswer",
        requiredProperties = {"answers", "summary"},
        description =
                "What jobs come to now. As `application/x-ndjson` every answer is a line, and the last line is `{\"summary\": …}`"
                        + " (RepricingEnd): without it the stream was cut off.")
public record RepricingsAnswer(
        @Schema(description = "One for each job, in their order.") @Size(max = Limits.REPRICING_JOBS)
        List<JobAnswer> answers,

        @Schema(description = "What they come to together.") RepricingSummary summary) {

    /**
     * A job's answer.
     *
     * @param job     the caller's name for it
     * @param total   what it comes to
     * @param was     what it came to before
     * @param change  the difference
     * @param line    the line it stands in
     * @param problem why it has no total
     */
    @Schema(
            name = "RepricedJob",
            description =
                    "What a job comes to: `job` and `total`, and with `was` also `change`; or `line` and `problem`.")
    public record JobAnswer(
            @Schema(
                    description = "The caller's name for it; left out with a problem, where it can't be read.",
                    maxLength = Limits.ID_LENGTH)
            Optional<String> job,

            @Schema(description = "What it comes to: the total of its quote.")
            Optional<MoneyAnswer> total,

            @Schema(description = "What it came to before, as it was given.")
            Optional<MoneyAnswer> was,

            @Schema(description = "`total` less `was`, exactly; below 0 where it has become cheaper.")
            Optional<ChangeAnswer> change,

            @Schema(
                    description =
                            "With a problem: the line it stands in, blank lines counted. The price book's is 1; outside of a stream the"
                                    + " lines are counted as if it were one, so that the first job has 2.",
                    format = "int64",
                    minimum = "2",
                    maximum = "1000000000000000",
                    examples = "2")
            Optional<Long> line,

            @Schema(
                    description =
                            "Why it has no total: as a request for its quote would be refused, with pointers into its line. What has no price"
                                    + " is a problem here too (NOT_PRICED).")
            Optional<ProblemAnswer> problem) {}

    /**
     * A difference of money.
     *
     * @param amount   how much
     * @param currency of which currency
     */
    @Schema(
            name = "MoneyChange",
            requiredProperties = {"amount", "currency"},
            description = "A difference of money.")
    public record ChangeAnswer(
            @Schema(
                    description = "How much, as digits, with all decimals of the currency.",
                    maxLength = 40,
                    examples = "-12.50")
            String amount,

            @Schema(ref = "Currency", description = "The currency.")
            String currency) {}

    /**
     * The last line of a stream.
     *
     * @param summary what all jobs come to
     */
    @Schema(
            name = "RepricingEnd",
            requiredProperties = "summary",
            description = "The last line of a stream, so that one that was cut off is seen.")
    public record RepricingEnd(
            @Schema(description = "What all jobs come to together.")
            RepricingSummary summary) {}

    /**
     * What all jobs come to.
     *
     * @param engine who priced them
     * @param book   digest of the price book
     * @param jobs   how many
     * @param failed how many without a total
     * @param totals sums
     * @param hash   of all answers
     */
    @Schema(
            name = "RepricingSummary",
            requiredProperties = {"engine", "book", "jobs", "failed", "totals", "hash"},
            description = "What all jobs come to. Summaries of parts can be added up.")
    public record RepricingSummary(
            @Schema(ref = "Engine", description = "Who priced them.")
            String engine,

            @Schema(ref = "Digest", description = "SHA-256 of the canonical form (RFC 8785) of `{\"priceBook\": …}`.")
            String book,

            @Schema(
                    description = "How many jobs, those with a problem among them.",
                    format = "int64",
                    minimum = "0",
                    maximum = "1000000000000000")
            long jobs,

            @Schema(
                    description = "How many of them have a problem.",
                    format = "int64",
                    minimum = "0",
                    maximum = "1000000000000000")
            long failed,

            @Schema(description = "Sums of those that have a total; one for each currency.", maxItems = 1)
            List<SumAnswer> totals,

            @Schema(
                    ref = "Digest",
                    description =
                            "The sum, modulo 2^256, of the SHA-256 of every answer line without its line feed, each taken as a number whose"
                                    + " first byte is the greatest; 64 hexadecimal digits. It does not depend on their order, and hashes of parts"
                                    + " can be added up. The summary is not in it.")
            String hash) {}

    /**
     * Sums of one currency.
     *
     * @param currency the currency
     * @param jobs     how many jobs have a total
     * @param total    sum of the totals
     * @param compared how many of them say what they came to before
     * @param was      sum of that
     * @param change   sum of the changes
     */
    @Schema(
            name = "RepricingSum",
            requiredProperties = {"currency", "jobs", "total", "compared", "was", "change"},
            description = "Sums of one currency, as digits.")
    public record SumAnswer(
            @Schema(ref = "Currency", description = "The currency.")
            String currency,

            @Schema(
                    description = "How many jobs have a total.",
                    format = "int64",
                    minimum = "0",
                    maximum = "1000000000000000")
            long jobs,

            @Schema(description = "Sum of the totals.", maxLength = 40, examples = "1234.50")
            String total,

            @Schema(
                    description = "How many of them say what they came to before.",
                    format = "int64",
                    minimum = "0",
                    maximum = "1000000000000000")
            long compared,

            @Schema(description = "Sum of what those came to before.", maxLength = 40, examples = "1200.00")
            String was,

            @Schema(description = "Sum of their changes.", maxLength = 40, examples = "34.50")
            String change) {}
}
