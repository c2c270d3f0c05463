package org.thalweg.api.wire;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * A caution.
 *
 * @param code what it is about
 * @param text what to heed
 */
@Schema(
        name = "Caution",
        requiredProperties = {"code", "text"},
        description = "Something to heed on every roof.")
public record CautionAnswer(
        @Schema(description = "What it is about. Never changes its meaning.", maxLength = 40, examples = "FALLS")
        String code,

        @Schema(description = "What to heed.", maxLength = 500)
        String text) {}
