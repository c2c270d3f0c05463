package org.thalweg.api.wire;

import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.thalweg.fastening.FixedPoint;

/**
 * How things are fastened.
 *
 * @param eaveSpacing     screws at eaves
 * @param valleySpacing   screws at a valley
 * @param cleatSpacing    a cleat's fasteners
 * @param closureSpacing  closures
 * @param stripSpacing    strips along rakes and walls
 * @param openingSpacing  flashings of openings
 * @param lapSpacing      end laps
 * @param fastenerInset   how far inside the panels' edge
 * @param ribClearance    how far from a rib
 * @param edgeDistance    how far from an end
 * @param clipSpacing     clips
 * @param clipEndDistance how far from the end of a seam
 * @param screwPlay       what a fixed screw's hole leaves
 * @param fixedPoint      where each panel is fixed
 * @param clipTravel      how far a panel can slide in its clips
 * @param hemEngagement   how much of a cleat lies in a hem
 */
@Schema(
        name = "Fastening",
        additionalProperties = Schema.False.class,
        description = "How far apart fasteners stand at most. The engineer's figures win over every default.")
public record FasteningForm(
        @Schema(
                description =
                        "Screws that hold the lower ends of panels down, across each panel between its ribs. 0.01 m to 3 m in the request's length unit. Default: 4 in, or 100 mm in metric units (common practice, no source).")
        @Nullable
        WireLength eaveSpacing,

        @Schema(
                description =
                        "Screws that hold panels at a valley, along the slanted edge. 0.01 m to 3 m in the request's length unit. Default: 4 in, or 100 mm in metric units (common practice, no source).")
        @Nullable
        WireLength valleySpacing,

        @Schema(
                description =
                        "Fasteners of a continuous cleat. 0.01 m to 3 m in the request's length unit. Default: 12 in, or 300 mm in metric units (UFGS 07 60 00, 3.1.23, for cleats on the fold).")
        @Nullable
        WireLength cleatSpacing,

        @Schema(
                description =
                        "Screws of closures under ridges, hips and peaks, and below walls. 0.01 m to 3 m in the request's length unit. Default: 6 in, or 150 mm in metric units (common practice, no source).")
        @Nullable
        WireLength closureSpacing,

        @Schema(
                description =
                        "Fasteners of the strips along rakes and side walls. 0.01 m to 3 m in the request's length unit. Default: 12 in, or 300 mm in metric units (common practice, no source).")
        @Nullable
        WireLength stripSpacing,

        @Schema(
                description =
                        "Screws of the flashings of openings. 0.01 m to 3 m in the request's length unit. Default: 6 in, or 150 mm in metric units (common practice, no source).")
        @Nullable
        WireLength openingSpacing,

        @Schema(
                description =
                        "Screws of the end laps of panels. 0.01 m to 3 m in the request's length unit. Default: 4 in, or 100 mm in metric units (common practice, no source).")
        @Nullable
        WireLength lapSpacing,

        @Schema(
                description =
                        "How far inside the panels' end sealant and screws lie, at valleys and eaves. 0 m to 0.5 m in the request's length unit. Default: 2 in, or 50 mm in metric units (common practice, no source).")
        @Nullable
        WireLength fastenerInset,

        @Schema(
                description =
                        "From a rib to the nearest screw through a panel, square to the rib. 0 m to 0.5 m in the request's length unit. Default: 3/4 in, or 20 mm in metric units (common practice, no source).")
        @Nullable
        WireLength ribClearance,

        @Schema(
                description =
                        "From the end of a row's line to its first fastener. 0 m to 0.5 m in the request's length unit. Default: 1 in, or 25 mm in metric units (common practice, no source).")
        @Nullable
        WireLength edgeDistance,

        @Schema(
                description =
                        "Clips along each seam; with `wind` no clips stand further apart than this, if it is given. 0.01 m to 3 m in the request's length unit. Default: 24 in, or 600 mm in metric units (common practice, no source), where the wind does not say.")
        @Nullable
        WireLength clipSpacing,

        @Schema(
                description =
                        "From the end of a seam to its first clip. 0 m to 3 m in the request's length unit. Default: 6 in, or 150 mm in metric units (common practice, no source).")
        @Nullable
        WireLength clipEndDistance,

        @Schema(
                description =
                        "How far a panel can move under a fixed screw before the hole stops it, each way. 0 m to 0.1 m in"
                                + " the request's length unit. Default: 1/16 in (common practice, no source).")
        @Nullable
        WireLength screwPlay,

        @Schema(
                ref = "FixedPoint",
                description =
                        "Where each panel is fixed, so that it grows and shrinks from there. Default: eave (common"
                                + " practice, no source).")
        @Nullable
        FixedPoint fixedPoint,

        @Schema(
                description =
                        "How far a panel can slide in its clips, each way from where they were set. 0 m to 0.2 m in the"
                                + " request's length unit. Default: not known; the answer then tells the travel that is"
                                + " needed, and clips are not checked.")
        @Nullable
        WireLength clipTravel,

        @Schema(
                description =
                        "How much of a cleat's lip lies in the hem that is hooked round it; no more than the hem counts."
                                + " 0 m to 0.5 m in the request's length unit. Default: half of the hem (common practice, no"
                                + " source).")
        @Nullable
        WireLength hemEngagement) {}
