package org.thalweg.api.wire;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/**
 * A roof to read.
 *
 * @param units        the caller's units
 * @param roof         the roof
 * @param tolerance    how well it was measured
 * @param minimumSlope what the panel system allows
 */
@Schema(
        name = "RoofRequest",
        requiredProperties = {"units", "roof"},
        additionalProperties = Schema.False.class,
        description = "A measured roof, to be read into planes and named edges.")
public record RoofRequest(
        @Schema(description = "The units of this request and its answer.") @NotNull @Valid
        UnitsForm units,

        @Schema(description = "The roof as measured.") @NotNull @Valid
        RoofForm roof,

        @Schema(
                description = "Corners this close are one corner; it says how well the roof was measured."
                        + " 0.000001 m to 0.1 m in the request's length unit. Default: 1 mm.")
        @Nullable
        WireLength tolerance,

        @Schema(
                description = "Flattest slope the panel system allows; flatter planes get a finding. Default:"
                        + " 1/4:12, the International Building Code's least slope for standing-seam panels"
                        + " (IBC 1507.4.2, IRC R905.10.2).")
        @Nullable
        WirePitch minimumSlope)
        implements Asked {}
