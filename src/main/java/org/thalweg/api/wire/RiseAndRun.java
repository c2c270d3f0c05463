package org.thalweg.api.wire;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * A pitch, answered.
 *
 * @param rise over the run
 * @param run  level
 */
@Schema(
        name = "RiseAndRun",
        requiredProperties = {"rise", "run"},
        description = "A pitch: so much rise over so much level run, both in any one unit.")
public record RiseAndRun(
        @Schema(
                description = "Rise over the run, 0 or more.",
                format = "double",
                minimum = "0",
                maximum = "1e9",
                examples = "6")
        double rise,

        @Schema(
                description = "Level run; 12 where the service worked the pitch out.",
                format = "double",
                minimum = "0.001",
                maximum = "1000",
                examples = "12")
        double run) {}
