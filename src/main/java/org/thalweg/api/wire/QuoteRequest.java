package org.thalweg.api.wire;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/**
 * What to price, and by which prices.
 *
 * @param takeoff   a saved takeoff
 * @param layout    a roof to lay out first
 * @param priceBook the prices
 */
@Schema(
        name = "QuoteRequest",
        requiredProperties = "priceBook",
        additionalProperties = Schema.False.class,
        description =
                "What to price, a saved takeoff or a roof to lay out first, and a price book. Both give the same quote; units are those of"
                        + " the takeoff or the layout.")
public record QuoteRequest(
        @Schema(description = "A saved takeoff. Default: `layout` is there instead.") @Nullable @Valid
        SavedTakeoff takeoff,

        @Schema(
                description =
                        "A layout request; what it orders is priced. What it includes besides is not answered here. Default: `takeoff` is"
                                + " there instead.")
        @Nullable
        @Valid
        LayoutRequest layout,

        @Schema(description = "The prices.") @NotNull @Valid PriceBookForm priceBook) {}
