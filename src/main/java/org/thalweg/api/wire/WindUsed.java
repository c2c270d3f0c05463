package org.thalweg.api.wire;

import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.api.problem.Figure;
import org.thalweg.wind.LowRiseWind.SpeedMap;

/**
 * The wind as used.
 *
 * @param clipLoad       what one clip is trusted with
 * @param meanRoofHeight h
 * @param zoneWidth      a
 * @param pressures      an engineer's
 * @param site           what pressures were worked out from
 * @param fieldMost      greatest spacing in the field
 * @param edgeMost       greatest spacing elsewhere
 */
@Schema(
        name = "WindUsed",
        requiredProperties = {"clipLoad", "zoneWidth", "fieldMost", "edgeMost"},
        description = "The wind that clips were spaced for; members as in the request.")
public record WindUsed(
        @Schema(description = "What one clip is trusted with: as given, or a third of what it failed at.")
        Figure clipLoad,

        @Schema(ref = "PositiveLength", description = "Mean height of the roof, when it was given.")
        Optional<Double> meanRoofHeight,

        @Schema(ref = "PositiveLength", description = "How wide the strips along edges are, given or by the rule.")
        double zoneWidth,

        @Schema(description = "The engineer's pressures, when they were given.")
        Optional<WindAnswer.PressuresAnswer> pressures,

        @Schema(description = "What pressures were worked out from, when they were.")
        Optional<SiteUsed> site,

        @Schema(ref = "PositiveLength", description = "Greatest spacing of clips in the field.")
        double fieldMost,

        @Schema(ref = "PositiveLength", description = "The same along edges and at corners.")
        double edgeMost) {

    /**
     * Where the building stands.
     *
     * @param speed         V
     * @param exposure      what the wind blows over
     * @param speedMap      what sort of map the speed is from
     * @param effectiveArea of a clip
     */
    @Schema(
            name = "WindSiteUsed",
            requiredProperties = {"speed", "exposure", "speedMap", "effectiveArea"},
            description = "How hard the wind blows where the building stands.")
    public record SiteUsed(
            @Schema(description = "Basic wind speed, in `mph` or `m/s`.")
            Figure speed,

            @Schema(description = "What the wind blows over: B, C or D.", maxLength = 1)
            String exposure,

            @Schema(ref = "SpeedMap", description = "What sort of map the speed is from.")
            SpeedMap speedMap,

            @Schema(description = "Effective wind area of a clip.")
            Figure effectiveArea) {}
}
