package org.thalweg.api.wire;

import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/**
 * The cap of a hip.
 *
 * @param leg          from its bend to its edge
 * @param closureInset how far inside that edge the closure stands
 */
@Schema(
        name = "HipCap",
        additionalProperties = Schema.False.class,
        description = "The cap over a hip and the closure under it.")
public record HipCapForm(
        @Schema(
                description =
                        "From the cap's bend to its edge, along the panels; the plain trim of hips has legs as long. 0.02 m to 1 m in the request's length unit."
                                + " Default: 6 in, or 150 mm in metric units (common practice, no source).")
        @Nullable
        WireLength leg,

        @Schema(
                description =
                        "How far inside that edge the outer side of the closure stands. 0 m to 1 m in the request's length"
                                + " unit, less than `leg`. Default: 1 in, or 25 mm in metric units (common practice, no source).")
        @Nullable
        WireLength closureInset) {}
