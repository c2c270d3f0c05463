package org.thalweg.api.wire;

import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/**
 * How things are fastened.
 *
 * @param valleySpacing  how far apart screws stand at a valley
 * @param cleatSpacing   how far apart a cleat's fasteners stand
 * @param fastenerInset  how far inside the panels' edge
 * @param ribClearance   how far from a rib
 * @param edgeDistance   how far from an end
 * @param screwPlay      what a fixed screw's hole leaves
 */
@Schema(
        name = "Fastening",
        additionalProperties = Schema.False.class,
        description = "How far apart fasteners stand. The engineer's figures win over every default.")
public record FasteningForm(
        @Schema(
                description =
                        "Greatest distance between the screws that hold panels at a valley, along the slanted edge. 0.01 m"
                                + " to 3 m in the request's length unit. Default: 4 in, or 100 mm in metric units (common practice,"
                                + " no source).")
        @Nullable
        WireLength valleySpacing,

        @Schema(
                description =
                        "Greatest distance between the fasteners of a cleat. 0.01 m to 3 m in the request's length unit."
                                + " Default: 12 in, or 300 mm in metric units (UFGS 07 60 00, 3.1.23, for cleats on the fold).")
        @Nullable
        WireLength cleatSpacing,

        @Schema(
                description =
                        "How far inside the panels' edge sealant and screws lie. 0 m to 0.5 m in the request's length"
                                + " unit. Default: 2 in, or 50 mm in metric units (common practice, no source).")
        @Nullable
        WireLength fastenerInset,

        @Schema(
                description =
                        "From a rib to the nearest screw, square to the rib. 0 m to 0.5 m in the request's length unit."
                                + " Default: 3/4 in, or 20 mm in metric units (common practice, no source).")
        @Nullable
        WireLength ribClearance,

        @Schema(
                description =
                        "From the end of a row's line to its first fastener. 0 m to 0.5 m in the request's length unit."
                                + " Default: 1 in, or 25 mm in metric units (common practice, no source).")
        @Nullable
        WireLength edgeDistance,

        @Schema(
                description =
                        "How far a panel can move under a fixed screw before the hole stops it, each way. 0 m to 0.1 m in"
                                + " the request's length unit. Default: 1/16 in (common practice, no source).")
        @Nullable
        WireLength screwPlay) {}
