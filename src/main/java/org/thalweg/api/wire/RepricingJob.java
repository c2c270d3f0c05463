package org.thalweg.api.wire;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.Limits;

/**
 * A job to price again.
 *
 * @param job     the caller's name for it
 * @param takeoff a saved takeoff
 * @param layout  a roof to lay out first
 * @param was     what it came to before
 */
@Schema(
        name = "RepricingJob",
        requiredProperties = "job",
        additionalProperties = Schema.False.class,
        description = "A job to price again: a saved takeoff, or a roof to lay out first.")
public record RepricingJob(
        @Schema(
                description = "The caller's name for it, which comes back; 1 to 100 characters. Need not be its own.",
                examples = "2024-117")
        @NotNull
        @Size(min = 1, max = Limits.ID_LENGTH)
        String job,

        @Schema(description = "A saved takeoff. Default: `layout` is there instead.") @Nullable @Valid
        SavedTakeoff takeoff,

        @Schema(description = "A layout request; what it orders is priced. Default: `takeoff` is there instead.")
        @Nullable
        @Valid
        LayoutRequest layout,

        @Schema(description = "What it came to before. Default: not known, and no change is told.") @Nullable @Valid
        MoneyForm was) {

    /**
     * Money as it was answered.
     *
     * @param amount   how much
     * @param currency in which currency
     */
    @Schema(
            name = "MoneyGiven",
            requiredProperties = {"amount", "currency"},
            additionalProperties = Schema.False.class,
            description = "Money as it was answered.")
    public record MoneyForm(
            @Schema(
                    description =
                            "How much, 0 to 1e12, with no more decimals than the currency has; as it was answered, digits in a string, or as"
                                    + " a number.")
            @NotNull
            WireDecimal amount,

            @Schema(ref = "Currency", description = "The currency of the price book; a code of ISO 4217.")
            @NotNull
            @Size(min = Limits.CURRENCY_CODE, max = Limits.CURRENCY_CODE)
            String currency) {}
}
