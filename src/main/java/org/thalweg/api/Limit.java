package org.thalweg.api;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * One limit the service enforces.
 *
 * @param name         what is limited
 * @param least        the least that is taken
 * @param most         the most that is taken
 * @param unit         what the numbers count
 * @param pointer      where in a request it holds
 * @param whenExceeded the answer to a request that goes past it
 */
@Schema(
        name = "Limit",
        requiredProperties = {"name", "least", "most", "unit", "pointer", "whenExceeded"},
        description = "One limit the service enforces.")
public record Limit(
        @Schema(description = "What is limited. Never changes its meaning.", maxLength = 40, examples = "planes")
        String name,

        @Schema(
                description = "The least that is taken, in the unit beside it.",
                format = "double",
                minimum = "-1e12",
                maximum = "1e12",
                examples = "1")
        double least,

        @Schema(
                description = "The most that is taken, in the unit beside it.",
                format = "double",
                minimum = "-1e12",
                maximum = "1e12",
                examples = "1000")
        double most,

        @Schema(
                description =
                        "What the numbers count: `byte`, `character`, `1` for things, `m`, `deg`, `ms`, `N`, `Pa`, `m/s`, `m2`.",
                maxLength = 20,
                examples = "1")
        String unit,

        @Schema(
                description =
                        "Where in a request it holds: a JSON Pointer after a #, with * for every member or" + " index.",
                maxLength = 100,
                examples = "#/roof/planes")
        String pointer,

        @Schema(
                description = "What happens to a request that goes past it: status and code.",
                maxLength = 100,
                examples = "400 TOO_MANY")
        String whenExceeded) {

    static Limit atMost(String name, double most, String unit, String pointer, String whenExceeded) {
        return new Limit(name, 0, most, unit, pointer, whenExceeded);
    }

    /** From {@code least} to {@code most} metres, in whatever unit the request is. */
    static Limit length(String name, double least, double most, String pointer) {
        return new Limit(name, least, most, "m", pointer, "400 OUT_OF_RANGE");
    }
}
