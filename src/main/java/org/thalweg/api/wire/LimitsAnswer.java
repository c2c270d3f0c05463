package org.thalweg.api.wire;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.api.Limit;

/**
 * Every limit.
 *
 * @param engine who answered
 * @param limits in the order a request meets them
 */
@Schema(
        name = "LimitsAnswer",
        requiredProperties = {"engine", "limits"},
        description = "Every limit the service enforces.")
public record LimitsAnswer(
        @Schema(ref = "Engine", description = "Who answered.")
        String engine,

        @Schema(description = "The limits, in the order a request meets them.", maxItems = 200)
        List<Limit> limits) {}
