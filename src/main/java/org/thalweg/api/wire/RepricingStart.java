package org.thalweg.api.wire;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * The first line of a repricing.
 *
 * @param priceBook the prices
 */
@Schema(
        name = "RepricingStart",
        requiredProperties = "priceBook",
        additionalProperties = Schema.False.class,
        description = "The first line of a stream: the prices of every job after it.")
public record RepricingStart(
        @Schema(description = "The prices.") @NotNull @Valid PriceBookForm priceBook) {}
