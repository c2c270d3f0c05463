package org.thalweg.api.wire;

import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.Limits;
import org.thalweg.units.TemperatureScale;

/**
 * Heat and rain.
 *
 * @param lowest      coldest the metal gets
 * @param highest     warmest it gets
 * @param installedAt how warm it is when it is fastened
 * @param temperature the scale of the three
 * @param rainfall    what comes down in an hour
 */
@Schema(
        name = "Climate",
        additionalProperties = Schema.False.class,
        description = "How cold and warm the metal gets, and how hard it rains.")
public record ClimateForm(
        @Schema(
                description =
                        "Coldest the metal gets, in the scale `temperature` names; -150 to 400. Default: -20 °F (UFC"
                                + " 3-110-03: a range of 200 °F; where it lies: common practice, no source).",
                format = "double",
                examples = "-20")
        @Min(Limits.COLDEST)
        @Max(Limits.WARMEST)
        @Nullable
        Double lowest,

        @Schema(
                description = "Warmest the metal gets; -150 to 400, not below `lowest`. Default: 180 °F (as above).",
                format = "double",
                examples = "160")
        @Min(Limits.COLDEST)
        @Max(Limits.WARMEST)
        @Nullable
        Double highest,

        @Schema(
                description = "How warm it is when it is fastened; -150 to 400, between the two. Default: 60 °F (common"
                        + " practice, no source).",
                format = "double",
                examples = "60")
        @Min(Limits.COLDEST)
        @Max(Limits.WARMEST)
        @Nullable
        Double installedAt,

        @Schema(ref = "TemperatureScale", description = "The scale of the three; needed with any of them.") @Nullable
        TemperatureScale temperature,

        @Schema(
                description =
                        "Rain to be led off, in the request's length unit per hour: 4 is 4 in/h where lengths are inches."
                                + " Building codes print it by city; a 5-minute rate is two to three times an hourly one, so do not"
                                + " mix them. 0.0001 m/h to 2 m/h. Default: not known; the answer then tells the rain that a"
                                + " valley bears and no depths.")
        @Nullable
        WireLength rainfall) {}
