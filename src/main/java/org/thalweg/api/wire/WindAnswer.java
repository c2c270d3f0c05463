package org.thalweg.api.wire;

import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.api.Limits;
import org.thalweg.api.problem.Figure;

/**
 * The wind on a roof.
 *
 * @param zoneWidth   a
 * @param leastWidth  least horizontal dimension
 * @param rule        how the one follows from the other
 * @param ruleSource  where that stands
 * @param preliminary whether pressures were worked out here
 * @param source      where they come from
 * @param planes      how hard it lifts each plane
 */
@Schema(
        name = "WindAnswer",
        requiredProperties = {"zoneWidth", "rule", "ruleSource", "preliminary", "source", "planes"},
        description =
                "The wind that clips are spaced for. Zones are those of ASCE 7-05 and 7-10 for gable and hip roofs; those of"
                        + " newer codes (ASCE 7-16 and later) are different and larger. The engineer decides.")
public record WindAnswer(
        @Schema(description = "How wide the strips along edges are, measured level.")
        MarkedLength zoneWidth,

        @Schema(
                description =
                        "Least horizontal dimension of the roof, overhangs and all: between the closest two parallel lines that"
                                + " hold it, seen from above. Left out where the width was given.")
        Optional<MarkedLength> leastWidth,

        @Schema(description = "How the width of the strips was found.", maxLength = 400)
        String rule,

        @Schema(description = "Where that rule stands.", maxLength = 300)
        String ruleSource,

        @Schema(
                description =
                        "Whether pressures were worked out here from published tables. Then they are a first figure, and an"
                                + " engineer decides.")
        boolean preliminary,

        @Schema(description = "Where the pressures come from.", maxLength = 300)
        String source,

        @Schema(description = "How hard it lifts each plane, in the order of the planes.", maxItems = Limits.PLANES)
        List<WindPlane> planes) {

    /**
     * The wind on one plane.
     *
     * @param plane     which
     * @param pressures how hard it lifts
     * @param spacings  of its clips
     */
    @Schema(name = "WindPlane", requiredProperties = "plane", description = "The wind on one plane.")
    public record WindPlane(
            @Schema(description = "The plane's id.", maxLength = Limits.ID_ANSWERED, examples = "south")
            String plane,

            @Schema(
                    description =
                            "How hard the wind lifts it by design, at the level of allowable loads, in each zone. Left out where"
                                    + " nothing is known: its clips then stand as without wind, and a finding says so.")
            Optional<PressuresAnswer> pressures,

            @Schema(description = "How far apart its clips may stand for that in each zone. Left out likewise.")
            Optional<SpacingsAnswer> spacings) {}

    /**
     * Pressures by zone.
     *
     * @param field  away from edges
     * @param edge   along edges
     * @param corner at corners
     */
    @Schema(
            name = "ZonePressures",
            requiredProperties = {"field", "edge", "corner"},
            description = "Uplift in each zone, in lbf/ft2 where lengths are `in` or `ft`, else in kPa.")
    public record PressuresAnswer(
            @Schema(description = "Zone 1, away from edges.")
            Figure field,

            @Schema(description = "Zone 2, along edges.") Figure edge,
            @Schema(description = "Zone 3, at corners.") Figure corner) {}

    /**
     * Spacings by zone.
     *
     * @param field  away from edges
     * @param edge   along edges
     * @param corner at corners
     */
    @Schema(
            name = "ZoneSpacings",
            requiredProperties = {"field", "edge", "corner"},
            description = "Greatest spacing of clips in each zone.")
    public record SpacingsAnswer(
            @Schema(description = "Zone 1, away from edges.")
            MarkedLength field,

            @Schema(description = "Zone 2, along edges.") MarkedLength edge,
            @Schema(description = "Zone 3, at corners.") MarkedLength corner) {}
}
