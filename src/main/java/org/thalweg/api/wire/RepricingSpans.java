package org.thalweg.api.wire;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.thalweg.api.Limits;

/**
 * A {@link RepricingsRequest} of which only the outline is read: each job answers for itself, as in a stream.
 *
 * @param priceBook where the prices stand
 * @param jobs      where the jobs stand
 */
public record RepricingSpans(
        @NotNull JsonSpan priceBook,
        @NotNull @Size(max = Limits.REPRICING_JOBS) List<JsonSpan> jobs) {}
