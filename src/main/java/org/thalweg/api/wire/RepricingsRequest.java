package org.thalweg.api.wire;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.api.Limits;

/**
 * A few jobs to price again.
 *
 * @param priceBook the prices
 * @param jobs      the jobs
 */
@Schema(
        name = "RepricingsRequest",
        requiredProperties = {"priceBook", "jobs"},
        additionalProperties = Schema.False.class,
        description =
                "A few jobs to price again by one price book. More go as `application/x-ndjson`: first a line `{\"priceBook\": …}`"
                        + " (RepricingStart), then a job a line (RepricingJob), each of at most 1 MiB; blank lines are passed over.")
public record RepricingsRequest(
        @Schema(description = "The prices.") @NotNull PriceBookForm priceBook,

        @Schema(
                description =
                        "The jobs; at most 1000. A job that can't be read or has no total is answered with its problem, and the others are"
                                + " priced all the same.")
        @NotNull
        @Size(max = Limits.REPRICING_JOBS)
        List<RepricingJob> jobs) {}
