package org.thalweg.api.wire;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * A length a crew will mark.
 *
 * @param value the number
 * @param tape  the mark on the tape
 */
@Schema(
        name = "MarkedLength",
        requiredProperties = {"value", "tape"},
        description = "A length a crew will mark.")
public record MarkedLength(
        @Schema(
                description = "The length in the request's length unit.",
                format = "double",
                minimum = "-1e11",
                maximum = "1e11",
                examples = "20.1246")
        double value,

        @Schema(
                description = "The same on a tape: to the nearest sixteenth of an inch, or the nearest"
                        + " millimetre for metric units; halfway goes away from zero.",
                maxLength = 40,
                examples = "20 1/8\"")
        String tape) {}
