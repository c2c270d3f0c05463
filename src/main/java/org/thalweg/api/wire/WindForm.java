package org.thalweg.api.wire;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.thalweg.wind.LowRiseWind.SpeedMap;

/**
 * The wind that clips are spaced for.
 *
 * @param clipLoad       what one clip may be trusted with
 * @param clipUltimate   what one clip failed at in a test
 * @param meanRoofHeight h
 * @param zoneWidth      a
 * @param pressures      an engineer's
 * @param site           what pressures are worked out from
 * @param fieldMost      greatest spacing in the field
 * @param edgeMost       greatest spacing elsewhere
 */
@Schema(
        name = "Wind",
        additionalProperties = Schema.False.class,
        description =
                "The wind that clips are spaced for: spacing = load of a clip / (pressure x cover of the panel), zone by zone,"
                        + " never more than `fieldMost` or `edgeMost`. Give `clipLoad` or `clipUltimate`, and `pressures` or"
                        + " `site`, one of each. Forces, pressures and speeds are in units that follow the length unit:"
                        + " lbf, lbf/ft2 and mph with `in` and `ft`, else N, kPa and m/s. Zones are those of ASCE 7-05 and"
                        + " 7-10 for gable and hip roofs of 60 ft or less; the zones of newer codes (ASCE 7-16 and later) are"
                        + " different and larger: on a newer code give the engineer's pressures, and with them the"
                        + " `zoneWidth`. The engineer decides.")
public record WindForm(
        @Schema(
                description =
                        "What one clip may be trusted with (allowable load), in lbf where lengths are `in` or `ft`, else in N."
                                + " 10 N to 100000 N (2.25 lbf to 22480 lbf). From the maker of the clip, for this panel and"
                                + " deck. No default: give this or `clipUltimate`.",
                format = "double",
                minimum = "0",
                maximum = "1e6",
                examples = "300")
        @Nullable
        Double clipLoad,

        @Schema(
                description =
                        "What one clip failed at in a test, in lbf where lengths are `in` or `ft`, else in N; a third of it is"
                                + " counted on (EI 01S908 and UFC 3-320-03A 7c: safety factor 3 on a single clip; see"
                                + " `GET /v1/reference/rules`). 10 N to 100000 N (2.25 lbf to 22480 lbf). No default: give"
                                + " this or `clipLoad`.",
                format = "double",
                minimum = "0",
                maximum = "1e6",
                examples = "900")
        @Nullable
        Double clipUltimate,

        @Schema(
                description =
                        "Mean height of the roof above the ground; of roofs flatter than 10° that of the eave. 1 m to 18.288 m"
                                + " (60 ft, where the published rules end) in the request's length unit. Needed with `site`,"
                                + " and wherever `zoneWidth` is not given. No default.")
        @Nullable
        WireLength meanRoofHeight,

        @Schema(
                description =
                        "How wide the strips along edges are, measured level. 0.1 m to 100 m in the request's length unit."
                                + " Default: 10 % of the least horizontal dimension of the roof or 0.4 of its mean height,"
                                + " whichever is smaller, but not less than 4 % of the least horizontal dimension or 3 ft"
                                + " (Structural Steel Designer's Handbook, 2004, figure 4.3, quoting ASCE 7-02).")
        @Nullable
        WireLength zoneWidth,

        @Schema(description = "The engineer's pressures. No default: give these or `site`.") @Nullable @Valid
        PressuresForm pressures,

        @Schema(
                description =
                        "What pressures are worked out from, by the published tables of ASCE 7-05 and 7-10 for closed gable"
                                + " and hip buildings of 60 ft or less on level ground. They are preliminary: the engineer"
                                + " decides. Single-slope roofs, and planes steeper than 45°, get no computed pressures and a"
                                + " finding. No default: give this or `pressures`.")
        @Nullable
        @Valid
        SiteForm site,

        @Schema(
                description =
                        "Greatest spacing of clips in the field, however little the wind. 0.01 m to 3 m in the request's"
                                + " length unit. Default: 60 in (UFC 3-110-03, 2006, 4-8; see"
                                + " `GET /v1/reference/rules`).")
        @Nullable
        WireLength fieldMost,

        @Schema(
                description =
                        "The same along edges and at corners. 0.01 m to 3 m in the request's length unit. Default: 30 in"
                                + " (as above).")
        @Nullable
        WireLength edgeMost) {

    /**
     * How hard the wind lifts in each zone.
     *
     * @param field  away from edges
     * @param edge   along edges
     * @param corner at corners
     */
    @Schema(
            name = "WindPressures",
            requiredProperties = {"field", "edge", "corner"},
            additionalProperties = Schema.False.class,
            description =
                    "How hard the wind lifts by design, at the level of allowable loads, square to the roof; the same on"
                            + " every plane. Uplift is above 0. In lbf/ft2 where lengths are `in` or `ft`, else in kPa.")
    public record PressuresForm(
            @Schema(
                    description =
                            "Zone 1, away from edges. In lbf/ft2 or kPa; 0.01 kPa to 50 kPa (0.21 to 1044 lbf/ft2).",
                    format = "double",
                    minimum = "0",
                    maximum = "1e5",
                    examples = "20")
            @NotNull
            Double field,

            @Schema(
                    description =
                            "Zone 2, along eaves, rakes, ridges and hips. In lbf/ft2 or kPa; 0.01 kPa to 50 kPa (0.21 to 1044"
                                    + " lbf/ft2).",
                    format = "double",
                    minimum = "0",
                    maximum = "1e5",
                    examples = "35")
            @NotNull
            Double edge,

            @Schema(
                    description = "Zone 3, at corners. In lbf/ft2 or kPa; 0.01 kPa to 50 kPa (0.21 to 1044 lbf/ft2).",
                    format = "double",
                    minimum = "0",
                    maximum = "1e5",
                    examples = "50")
            @NotNull
            Double corner) {}

    /**
     * Where the building stands.
     *
     * @param speed         V
     * @param exposure      what the wind blows over
     * @param speedMap      what sort of map the speed is from
     * @param effectiveArea of a clip
     */
    @Schema(
            name = "WindSite",
            requiredProperties = {"speed", "exposure", "speedMap", "effectiveArea"},
            additionalProperties = Schema.False.class,
            description = "How hard the wind blows where the building stands.")
    public record SiteForm(
            @Schema(
                    description =
                            "Basic wind speed: the gust of 3 seconds, 33 ft up in open country. In mph where lengths are `in` or"
                                    + " `ft`, else in m/s. 5 m/s to 150 m/s (11.2 mph to 335 mph).",
                    format = "double",
                    minimum = "0",
                    maximum = "1e4",
                    examples = "90")
            @NotNull
            Double speed,

            @Schema(ref = "Exposure", description = "What the wind blows over.") @NotNull
            Exposure exposure,

            @Schema(ref = "SpeedMap", description = "What sort of map the speed is from.") @NotNull
            SpeedMap speedMap,

            @Schema(
                    description =
                            "Effective wind area of a clip, in the request's area unit: the cover by the spacing, or its span by"
                                    + " a third of that if that is more. The published tables know no harder wind than that on"
                                    + " 10 ft2 or less. 0.01 m2 to 1000 m2.",
                    format = "double",
                    minimum = "0",
                    maximum = "1e7",
                    examples = "10")
            @NotNull
            Double effectiveArea) {}

    /** What the wind blows over, by its letter in print. */
    public enum Exposure {
        B,
        C,
        D
    }
}
