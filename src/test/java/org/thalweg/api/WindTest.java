package org.thalweg.api;

import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.thalweg.api.Door.Answer;
import org.thalweg.api.wire.WindForm.Exposure;
import org.thalweg.packet.LaidWind;
import org.thalweg.reference.WindTables;
import org.thalweg.wind.WindZones;

/** The wind that clips are spaced for, through the door. */
@QuarkusTest
class WindTest {

    private static final double LAST_DIGIT = 1.001e-4;
    private static final double MM = 25.4;

    /** One foot of slope on a 3:12 roof for each foot level: √(1 + 1/16). */
    private static final double UP = 1.0307764;

    private static final String INCHES = "\"length\": \"in\", \"area\": \"ft2\", \"mass\": \"lb\"";
    private static final String MILLIMETRES = "\"length\": \"mm\", \"area\": \"m2\", \"mass\": \"kg\"";
    private static final String PRESSURES = "\"pressures\": {\"field\": 20, \"edge\": 36, \"corner\": 54}";
    private static final String HAND = "\"clipLoad\": 100, \"meanRoofHeight\": \"12'\", " + PRESSURES;

    /**
     * A gable 40 ft by 24 ft, 3:12, panels 16 in wide: 29 seams on either side, each 144 in level and 148.4318 in long.
     *
     * @param each what an inch is in the request's unit
     */
    private static String gable(String units, double each, String more) {
        return String.format(Locale.ROOT, """
                {"units": {%1$s},
                 "roof": {"points": {"A": [0, 0, 0], "B": [%2$s, 0, 0], "C": [%2$s, %3$s, 0], "D": [0, %3$s, 0],
                                     "E": [0, %4$s, %5$s], "F": [%2$s, %4$s, %5$s]},
                          "planes": [{"id": "south", "outline": ["A", "B", "F", "E"]},
                                     {"id": "north", "outline": ["C", "D", "E", "F"]}]},
                 "panel": {"cover": %6$s}, %7$s}
                """, units, 480 * each, 288 * each, 144 * each, 36 * each, 16 * each, more);
    }

    private static Answer windOn(String wind) {
        return Door.post("/v1/layouts", gable(INCHES, 1, "\"wind\": {" + wind + "}"));
    }

    private static JsonNode laid(String request) {
        Answer answer = Door.post("/v1/layouts", request);
        assertThat(answer.status()).as(answer.text()).isEqualTo(200);
        return answer.json();
    }

    private static JsonNode laidFor(String wind) {
        return laid(gable(INCHES, 1, "\"wind\": {" + wind + "}"));
    }

    private static List<JsonNode> seams(JsonNode answer, String plane) {
        List<JsonNode> seams = new ArrayList<>();
        answer.path("clips").forEach(seam -> {
            if (seam.path("plane").asText().equals(plane)) {
                seams.add(seam);
            }
        });
        return seams;
    }

    /** A seam's runs as {@code "corner 3, edge 3, corner 2"}. */
    private static String runs(JsonNode seam) {
        return StreamSupport.stream(seam.path("runs").spliterator(), false)
                .map(run -> run.path("zone").asText() + " " + run.path("count").asInt())
                .collect(joining(", "));
    }

    private static void isNear(JsonNode figure, double expected) {
        assertThat(figure.asDouble(Double.NaN)).isCloseTo(expected, within(LAST_DIGIT));
    }

    /** By hand: 10 % of 24 ft is 28.8 in, 0.4 of 12 ft 57.6 in; the smaller, but 3 ft at least. */
    @Test
    void theStripsAreAsWideAsTheRuleHasIt() {
        JsonNode wind = laidFor(HAND).path("wind");
        isNear(wind.at("/leastWidth/value"), 288);
        isNear(wind.at("/zoneWidth/value"), 36);
        assertThat(wind.path("rule").asText()).contains("3 ft");
        assertThat(wind.path("ruleSource").asText()).contains("figure 4.3");
        assertThat(wind.path("preliminary").asBoolean(true)).isFalse();
        assertThat(wind.path("source").asText()).isEqualTo("the request");
    }

    /** By hand: 100 lbf over 4/3 ft of cover: 3.75 ft at 20 psf, 25/12 ft at 36, 25/18 ft at 54. */
    @Test
    void spacingIsTheLoadOverPressureTimesCover() {
        JsonNode planes = laidFor(HAND).at("/wind/planes");
        assertThat(planes).hasSize(2);
        assertThat(planes).allSatisfy(plane -> {
            isNear(plane.at("/spacings/field/value"), 45);
            isNear(plane.at("/spacings/edge/value"), 25);
            isNear(plane.at("/spacings/corner/value"), 16.6667);
            assertThat(plane.at("/pressures/corner").toString()).isEqualTo("{\"value\":54,\"unit\":\"lbf/ft2\"}");
        });
    }

    /** By hand: 200 lbf would allow 90, 50 and 33 1/3 in; published are 60 in the field and 30 elsewhere. */
    @Test
    void spacingIsNeverMoreThanPublished() {
        JsonNode plane = laidFor(HAND.replace("100", "200")).at("/wind/planes/0/spacings");
        isNear(plane.at("/field/value"), 60);
        isNear(plane.at("/edge/value"), 30);
        isNear(plane.at("/corner/value"), 30);
    }

    @Test
    void theCallersOwnMostGoesBeforeThePublishedOne() {
        JsonNode answer = laidFor(HAND.replace("100", "200") + ", \"fieldMost\": 70, \"edgeMost\": 40");
        isNear(answer.at("/wind/planes/0/spacings/field/value"), 70);
        isNear(answer.at("/wind/planes/0/spacings/edge/value"), 40);
        isNear(answer.at("/wind/planes/0/spacings/corner/value"), 33.3333);
        isNear(answer.at("/used/wind/fieldMost"), 70);
    }

    /**
     * By hand, from 6 in above the eave to 6 in below the ridge; a strip of 36 in level is 37.108 in up the slope. Beside the rake
     * (16 and 32 in from it, and likewise on the far side): corner 31.108 in, two gaps; edge 74.216 in, three of at most 25;
     * corner, two. Elsewhere edge 31.108 in, two of at most 25; field 74.216 in, two of at most 45; edge, two.
     */
    @Test
    void everySeamHasItsClipsZoneByZone() {
        List<JsonNode> seams = seams(laidFor(HAND), "south");
        assertThat(seams).hasSize(29);
        for (int i = 0; i < 29; i++) {
            boolean besideRake = i < 2 || i > 26;
            assertThat(runs(seams.get(i)))
                    .as("seam %d", i)
                    .isEqualTo(besideRake ? "corner 3, edge 3, corner 2" : "edge 3, field 2, edge 2");
        }
        JsonNode first = seams.get(0);
        isNear(first.at("/runs/1/from/1"), 36 * UP);
        isNear(first.at("/runs/1/to/1"), 108 * UP);
        isNear(first.at("/runs/1/spacing/value"), 24.7386);
        isNear(first.at("/runs/1/most/value"), 25);
        isNear(first.at("/runs/0/spacing/value"), 15.554);
        isNear(first.at("/spacing/value"), 24.7386);
        isNear(first.at("/places/2/1"), 36 * UP);
        isNear(first.at("/places/5/1"), 108 * UP);
    }

    @Test
    void runsAddUpToTheSeamAndSeamsToTheOrder() {
        String request = gable(INCHES, 1, "\"wind\": {" + HAND + "}");
        JsonNode answer = laid(request);
        int all = 0;
        for (JsonNode seam : answer.path("clips")) {
            int count = 0;
            for (JsonNode run : seam.path("runs")) {
                count += run.path("count").asInt();
            }
            assertThat(count)
                    .isEqualTo(seam.path("count").asInt())
                    .isEqualTo(seam.path("places").size());
            all += count;
        }
        // Four seams of 8 and 25 of 7 on either side.
        assertThat(all).isEqualTo(414);
        JsonNode takeoff = Door.post("/v1/takeoffs", request).json();
        assertThat(takeoff.path("orderLines"))
                .filteredOn(line -> line.path("item").asText().equals("clip"))
                .singleElement()
                .satisfies(line -> assertThat(line.path("net").asInt()).isEqualTo(414));
        assertThat(takeoff.path("used").path("wind"))
                .isEqualTo(answer.path("used").path("wind"));
    }

    @Test
    void aClipsFailingLoadIsDividedByThree() {
        JsonNode tested = laidFor(HAND.replace("\"clipLoad\": 100", "\"clipUltimate\": 300"));
        assertThat(tested.path("clips")).isEqualTo(laidFor(HAND).path("clips"));
        assertThat(tested.at("/used/wind/clipLoad").toString()).isEqualTo("{\"value\":100,\"unit\":\"lbf\"}");
    }

    @Test
    void aGivenZoneWidthGoesBeforeTheRule() {
        JsonNode answer = laidFor("\"clipLoad\": 100, \"zoneWidth\": \"4'\", " + PRESSURES);
        isNear(answer.at("/wind/zoneWidth/value"), 48);
        assertThat(answer.path("wind").has("leastWidth")).isFalse();
        assertThat(answer.at("/wind/ruleSource").asText()).isEqualTo("the request");
        assertThat(runs(seams(answer, "south").get(2))).startsWith("corner");
    }

    @Test
    void aSpacingInFasteningHoldsWithTheWindToo() {
        JsonNode answer = laid(gable(INCHES, 1, "\"fastening\": {\"clipSpacing\": 20}, \"wind\": {" + HAND + "}"));
        isNear(answer.at("/wind/planes/0/spacings/field/value"), 20);
        isNear(answer.at("/wind/planes/0/spacings/edge/value"), 20);
        isNear(answer.at("/wind/planes/0/spacings/corner/value"), 16.6667);
        assertThat(answer.path("clips"))
                .allSatisfy(
                        seam -> assertThat(seam.at("/spacing/value").asDouble()).isLessThanOrEqualTo(20));
    }

    @Test
    void whatWasLeftOutIsToldAsDefault() {
        JsonNode used = laidFor(HAND).path("used");
        assertThat(used.path("defaults").toString())
                .contains("#/wind/zoneWidth", "#/wind/fieldMost", "#/wind/edgeMost");
        isNear(used.at("/wind/zoneWidth"), 36);
        isNear(used.at("/wind/meanRoofHeight"), 144);
        isNear(used.at("/wind/fieldMost"), 60);
        isNear(used.at("/wind/edgeMost"), 30);
        assertThat(used.path("wind").has("site")).isFalse();
    }

    @Test
    void withoutWindNothingIsSaidOfIt() {
        JsonNode answer = laid(gable(INCHES, 1, "\"fastening\": {}"));
        assertThat(answer.has("wind")).isFalse();
        assertThat(answer.path("used").has("wind")).isFalse();
        assertThat(answer.path("clips")).isNotEmpty().allSatisfy(seam -> assertThat(seam.has("runs"))
                .isFalse());
        assertThat(answer.at("/used/defaults").toString()).doesNotContain("#/wind");
    }

    private static final String SITE = """
            "clipLoad": 100, "meanRoofHeight": "30'",
            "site": {"speed": 90, "exposure": "B", "speedMap": "allowable", "effectiveArea": 10}""";

    /**
     * IRC table R301.2(2) as the Florida edition prints it, 90 mph, exposure B, 30 ft, over 7 to 27°, 10 ft²: zones 1, 2 and 3
     * lift 13.3, 23.2 and 34.3 psf. Half of the last digit.
     */
    @Test
    void pressuresOfASiteAreThoseOfThePublishedTable() {
        JsonNode answer = laidFor(SITE);
        JsonNode pressures = answer.at("/wind/planes/0/pressures");
        assertThat(pressures.at("/field/value").asDouble()).isCloseTo(13.3, within(0.05));
        assertThat(pressures.at("/edge/value").asDouble()).isCloseTo(23.2, within(0.05));
        assertThat(pressures.at("/corner/value").asDouble()).isCloseTo(34.3, within(0.05));
        assertThat(answer.at("/wind/preliminary").asBoolean()).isTrue();
        assertThat(answer.at("/wind/source").asText()).contains("ASCE 7-05/7-10");
        assertThat(answer.path("findings"))
                .extracting(finding -> finding.path("code").asText())
                .containsOnlyOnce("WIND_PRELIMINARY");
        assertThat(answer.at("/used/wind/site/exposure").asText()).isEqualTo("B");
        assertThat(answer.at("/used/wind/site/speed").toString()).isEqualTo("{\"value\":90,\"unit\":\"mph\"}");
        assertThat(answer.at("/used/wind/site/effectiveArea").toString()).isEqualTo("{\"value\":10,\"unit\":\"ft2\"}");
    }

    /** A map for strength: 0.6 of the pressure, of 180 mph four times that of 90. */
    @Test
    void aSpeedForStrengthIsBroughtDownToAllowableLoads() {
        JsonNode pressures = laidFor(SITE.replace("90", "180").replace("allowable", "strength"))
                .at("/wind/planes/0/pressures");
        assertThat(pressures.at("/field/value").asDouble()).isCloseTo(32.0, within(0.05));
    }

    @ParameterizedTest
    @EnumSource
    void everyExposureOfTheContractHasItsRow(Exposure exposure) {
        assertThat(WindTables.exposure(exposure.name())).isPresent();
        JsonNode answer = laidFor(SITE.replace("\"B\"", "\"" + exposure + "\""));
        assertThat(answer.at("/used/wind/site/exposure").asText()).isEqualTo(exposure.name());
    }

    @Test
    void aSingleSlopeGetsNoComputedPressures() {
        String shed = """
                {"units": {%s}, "roof": {"points": {"A": [0, 0, 0], "B": [96, 0, 0], "C": [96, 96, 24], "D": [0, 96, 24]},
                 "planes": [{"id": "shed", "outline": ["A", "B", "C", "D"]}]}, "panel": {"cover": 16}, "wind": {%s}}
                """;
        JsonNode computed = laid(shed.formatted(INCHES, SITE));
        assertThat(computed.path("findings"))
                .extracting(finding -> finding.path("code").asText())
                .contains("WIND_OUTSIDE_TABLE")
                .doesNotContain("WIND_PRELIMINARY");
        assertThat(computed.at("/wind/planes/0").toString()).isEqualTo("{\"plane\":\"shed\"}");
        assertThat(computed.path("clips")).isNotEmpty().allSatisfy(seam -> assertThat(seam.has("runs"))
                .isFalse());
        JsonNode named = laid(shed.formatted(INCHES, HAND));
        assertThat(named.path("clips")).isNotEmpty().allSatisfy(seam -> assertThat(seam.path("runs"))
                .isNotEmpty());
    }

    /** The same house and wind in millimetres, newtons (1 lbf = 4.4482216 N) and kilopascals (1 psf = 0.047880259 kPa). */
    @Test
    void metricCallersGetTheSameClips() {
        String metric = """
                "fastening": {"clipEndDistance": 152.4},
                "wind": {"clipLoad": 444.822162, "meanRoofHeight": 3657.6,
                         "pressures": {"field": 0.95760518, "edge": 1.72368932, "corner": 2.58553399}}""";
        JsonNode inMillimetres = laid(gable(MILLIMETRES, MM, metric));
        JsonNode inInches = laidFor(HAND);
        assertThat(inMillimetres.path("clips")).hasSameSizeAs(inInches.path("clips"));
        for (int i = 0; i < inInches.path("clips").size(); i++) {
            JsonNode inches = inInches.path("clips").get(i);
            JsonNode millimetres = inMillimetres.path("clips").get(i);
            assertThat(runs(millimetres)).isEqualTo(runs(inches));
            for (int run = 0; run < inches.path("runs").size(); run++) {
                String spacing = "/runs/" + run + "/spacing/value";
                assertThat(millimetres.at(spacing).asDouble() / MM)
                        .isCloseTo(inches.at(spacing).asDouble(), within(LAST_DIGIT));
            }
        }
        JsonNode field = inMillimetres.at("/wind/planes/0/pressures/field");
        assertThat(field.path("unit").asText()).isEqualTo("kPa");
        isNear(field.path("value"), 0.9576);
    }

    /** 90 mph are 40.2336 m/s exactly, 10 ft² are 0.9290304 m². */
    @Test
    void metricCallersGetTheSamePressuresOfASite() {
        JsonNode answer = laid(gable(MILLIMETRES, MM, """
                "wind": {"clipLoad": 444.822162, "meanRoofHeight": "9144 mm",
                         "site": {"speed": 40.2336, "exposure": "B", "speedMap": "allowable", "effectiveArea": 0.9290304}}"""));
        JsonNode inches = laidFor(SITE);
        for (String zone : List.of("field", "edge", "corner")) {
            String at = "/wind/planes/0/pressures/" + zone + "/value";
            assertThat(answer.at(at).asDouble() / 0.047880259)
                    .isCloseTo(inches.at(at).asDouble(), within(0.002));
        }
        assertThat(answer.at("/used/wind/site/speed").toString()).isEqualTo("{\"value\":40.2336,\"unit\":\"m/s\"}");
    }

    /** A hip at one end, a gable at the other: strips that are laid from the other side see the same zones. */
    @ParameterizedTest
    @CsvSource({"36", "84", "120"})
    void aMirroredRoofHasMirroredZones(int rise) {
        List<String> drawn = zones(roof(
                "left", 0, 1, rise, "\"A\", \"B\", \"F\", \"E\"", "\"C\", \"D\", \"E\", \"F\"", "\"D\", \"A\", \"E\""));
        List<String> mirrored = zones(roof(
                "right",
                480,
                -1,
                rise,
                "\"B\", \"A\", \"E\", \"F\"",
                "\"D\", \"C\", \"F\", \"E\"",
                "\"A\", \"D\", \"E\""));
        assertThat(drawn).isNotEmpty().isEqualTo(mirrored);
        assertThat(drawn.stream().distinct().count()).isGreaterThan(3);
    }

    private static String roof(String leads, int x, int way, int rise, String south, String north, String west) {
        return """
                {"units": {%s},
                 "roof": {"points": {"A": [%d, 0, 0], "B": [%d, 0, 0], "C": [%d, 288, 0], "D": [%d, 288, 0],
                                     "E": [%d, 144, %d], "F": [%d, 144, %d]},
                          "planes": [{"id": "south", "outline": [%s]}, {"id": "north", "outline": [%s]},
                                     {"id": "west", "outline": [%s]}]},
                 "panel": {"cover": 16, "leads": "%s"}, "wind": {%s}}
                """.formatted(
                        INCHES,
                        x,
                        x + way * 480,
                        x + way * 480,
                        x,
                        x + way * 144,
                        rise,
                        x + way * 480,
                        rise,
                        south,
                        north,
                        west,
                        leads,
                        HAND);
    }

    private static List<String> zones(String request) {
        List<String> zones = new ArrayList<>();
        laid(request)
                .path("clips")
                .forEach(seam -> zones.add(seam.path("plane").asText() + " "
                        + seam.path("strip").asInt() + ": " + runs(seam) + " "
                        + seam.at("/spacing/tape").asText()));
        return zones;
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "''                                                    | MISSING_MEMBER #/wind, EITHER_OR #/wind, EITHER_OR #/wind",
                "'\"clipLoad\": 100, \"clipUltimate\": 300, \"zoneWidth\": 36, P' | EITHER_OR #/wind",
                "'\"zoneWidth\": 36, P'                                | EITHER_OR #/wind",
                "'\"clipLoad\": 100, \"zoneWidth\": 36'                | EITHER_OR #/wind",
                "'P, S'                                                | EITHER_OR #/wind",
                "'\"clipLoad\": 100, P'                                | MISSING_MEMBER #/wind",
                "'\"clipLoad\": 100, \"zoneWidth\": 36, \"site\": {\"speed\": 90, \"exposure\": \"B\", \"speedMap\": \"strength\", \"effectiveArea\": 10}' | MISSING_MEMBER #/wind",
                "'\"clipLoad\": 2, \"zoneWidth\": 36, P'               | OUT_OF_RANGE #/wind/clipLoad",
                "'\"clipUltimate\": -900, \"zoneWidth\": 36, P'        | OUT_OF_RANGE #/wind/clipUltimate",
                "'\"clipLoad\": \"100 lbf\", \"zoneWidth\": 36, P'     | WRONG_TYPE #/wind/clipLoad",
                "'\"clipLoad\": 100, \"meanRoofHeight\": \"60.1''\", P' | OUT_OF_RANGE #/wind/meanRoofHeight",
                "'\"clipLoad\": 100, \"meanRoofHeight\": 721, P'       | OUT_OF_RANGE #/wind/meanRoofHeight",
                "'\"clipLoad\": 100, \"meanRoofHeight\": \"high\", P'  | BAD_LENGTH #/wind/meanRoofHeight",
                "'\"clipLoad\": 100, \"zoneWidth\": 0, P'              | OUT_OF_RANGE #/wind/zoneWidth",
                "'\"clipLoad\": 100, \"zoneWidth\": 36, \"fieldMost\": 0, \"edgeMost\": 1000, P' | OUT_OF_RANGE #/wind/fieldMost, OUT_OF_RANGE #/wind/edgeMost",
                "'\"clipLoad\": 100, \"zoneWidth\": 36, \"pressures\": {\"field\": 0, \"edge\": -36, \"corner\": 5400}' | OUT_OF_RANGE #/wind/pressures/field, OUT_OF_RANGE #/wind/pressures/edge, OUT_OF_RANGE #/wind/pressures/corner",
                "'\"clipLoad\": 100, \"zoneWidth\": 36, \"pressures\": {\"field\": 20, \"edge\": 36}' | MISSING_MEMBER #/wind/pressures",
                "'\"clipLoad\": 100, \"zoneWidth\": 36, \"pressure\": 20' | UNKNOWN_MEMBER #/wind/pressure",
                "'\"clipLoad\": 100, \"meanRoofHeight\": 360, \"site\": {\"speed\": 500, \"exposure\": \"C\", \"speedMap\": \"strength\", \"effectiveArea\": 0}' | OUT_OF_RANGE #/wind/site/speed, OUT_OF_RANGE #/wind/site/effectiveArea",
                "'\"clipLoad\": 100, \"meanRoofHeight\": 360, \"site\": {\"speed\": 90, \"exposure\": \"E\", \"speedMap\": \"strength\", \"effectiveArea\": 10}' | UNKNOWN_VALUE #/wind/site/exposure"
            })
    void aWindThatCannotBeReadIsRefusedWhereItStands(String wind, String errors) {
        Answer answer = windOn(wind.replace("P, S", SITE + ", P").replace("P", PRESSURES));
        assertThat(answer.isProblem(400).errors()).containsExactly(errors.split(", "));
    }

    @Test
    void aRangeIsToldInTheCallersUnit() {
        assertThat(windOn("\"clipLoad\": 2, \"zoneWidth\": 36, " + PRESSURES).text())
                .contains("This is 2 lbf; it must be from 2.2481 lbf to 22480.8943 lbf.");
    }

    @ParameterizedTest
    @CsvSource({"in, 720", "ft, 60", "mm, 18288", "cm, 1828.8", "m, 18.288"})
    void sixtyFeetAreNotTooHighInAnyUnit(String unit, String height) {
        double each = Double.parseDouble(height) / 720;
        JsonNode answer = laid(gable(
                INCHES.replace("\"in\"", "\"" + unit + "\""),
                each,
                "\"wind\": {\"clipLoad\": 400, \"meanRoofHeight\": " + height
                        + ", \"pressures\": {\"field\": 1, \"edge\": 2, \"corner\": 3}}"));
        isNear(answer.at("/used/wind/meanRoofHeight"), Double.parseDouble(height));
    }

    /** 2.3 lbf over 1000 psf and 4/3 ft: 0.02 in. */
    @Test
    void clipsThatWouldStandOnEachOtherAreRefused() {
        Answer answer = windOn(
                "\"clipLoad\": 2.3, \"zoneWidth\": 36, \"pressures\": {\"field\": 20, \"edge\": 36, \"corner\": 1000}");
        assertThat(answer.isProblem(422).errors()).containsExactly("CLIPS_TOO_CLOSE #/wind");
        assertThat(answer.json().at("/errors/0/limit/value").asDouble()).isCloseTo(10 / MM, within(LAST_DIGIT));
    }

    /** A shed in metres, with a zigzag for the side from D to A; {@code wide} by {@code deep}. */
    private static String zigzag(int teeth, double wide, double deep, double cover) {
        StringBuilder points = new StringBuilder();
        StringBuilder outline = new StringBuilder();
        for (int i = 0; i < 2 * teeth; i++) {
            double y = deep * (1 - i / (2.0 * teeth));
            points.append(String.format(Locale.ROOT, ", \"Z%d\": [%s, %s, %s]", i, i % 2 == 0 ? 0 : 0.95, y, y / 4));
            outline.append(", \"Z").append(i).append('"');
        }
        return String.format(Locale.ROOT, """
                {"units": {"length": "m", "area": "m2", "mass": "kg"},
                 "roof": {"points": {"A": [0, 0, 0], "B": [%1$s, 0, 0], "C": [%1$s, %2$s, %3$s]%4$s},
                          "planes": [{"id": "shed", "outline": ["A", "B", "C"%5$s]}]},
                 "panel": {"cover": %6$s, "longest": 200},
                 "wind": {"clipLoad": 9000, "zoneWidth": 0.1, "pressures": {"field": 1, "edge": 2, "corner": 3}}}
                """, wide, deep, deep / 4, points, outline, cover);
    }

    /** About 6,000 panels, and 2,400 edges for each. */
    @Test
    void moreEdgesTimesPanelsThanAreLookedAtAreRefused() {
        Answer answer = Door.post("/v1/layouts", zigzag(1200, 3000, 12, 0.5));
        assertThat(answer.isProblem(422).errors()).containsExactly("WIND_TOO_LARGE #/roof");
        assertThat(answer.json().at("/errors/0/limit/value").asInt()).isEqualTo(LaidWind.MOST_STEPS);
    }

    /** The first seam passes 600 inner corners of the zigzag, 5 cm from each and 40 cm apart. */
    @Test
    void moreStripsAlongOneSeamThanAreToldApartAreRefused() {
        Answer answer = Door.post("/v1/layouts", zigzag(600, 3, 240, 1));
        assertThat(answer.isProblem(422).errors()).containsExactly("WIND_TOO_LARGE #/roof/planes/0");
        assertThat(answer.json().at("/errors/0/limit/value").asInt()).isEqualTo(WindZones.MOST_PARTS);
    }

    @Test
    void aFewHundredStripsAlongOneSeamAreSpacedFor() {
        JsonNode answer = laid(zigzag(100, 3, 100, 1));
        assertThat(answer.at("/clips/0/runs")).hasSizeGreaterThan(50);
        assertThat(answer.at("/clips/0/runs"))
                .allSatisfy(run -> assertThat(run.at("/spacing/value").asDouble())
                        .isLessThanOrEqualTo(run.at("/most/value").asDouble() + LAST_DIGIT));
    }
}
