package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.thalweg.api.Door.Answer;

/** Orders through the door. */
@QuarkusTest
class TakeoffsTest {

    /** Three panels of 18 in on a plane 54 in wide, 8 ft up the level, 6:12; coil of 21 in at 1.156 lb/ft². */
    private static String shed(String ordering) {
        return """
                {"units": {"length": "in", "area": "ft2", "mass": "lb"},
                 "roof": {"points": {"A": [0, 0, 0], "B": [54, 0, 0], "C": [54, 96, 48], "D": [0, 96, 48]},
                          "planes": [{"id": "shed", "outline": ["A", "B", "C", "D"]}]},
                 "panel": {"cover": 18, "girth": 21}, "edgeTreatments": {"eave": {"hem": 1}}, "ordering": {%s}}
                """.formatted(ordering);
    }

    private static JsonNode line(JsonNode answer, String item) {
        for (JsonNode line : answer.path("orderLines")) {
            if (line.path("item").asText().equals(item)) {
                return line;
            }
        }
        throw new AssertionError("no " + item + " in " + answer.path("orderLines"));
    }

    private static BigDecimal sum(JsonNode lines, String member) {
        BigDecimal sum = BigDecimal.ZERO;
        for (JsonNode line : lines) {
            sum = sum.add(line.path(member).decimalValue());
        }
        return sum;
    }

    /**
     * Each shows √(96² + 48²) = 107.3313 in and folds 1 in under: 108.3313 in, so blanks of 108 1/2. Three of them weigh
     * 3 · 108.5 · 21 / 144 · 1.156 lb. Notched at both ribs the hem is a little less than 1 in · 18 in.
     */
    @Test
    void panelsAreOrderedAsLongAsTheirBlanks() {
        JsonNode panels = line(Door.post("/v1/takeoffs", shed("")).json(), "panel");
        assertThat(panels.path("ordered").asDouble()).isEqualTo(325.5);
        assertThat(panels.path("unit").asText()).isEqualTo("INH");
        assertThat(panels.path("pieces").asInt()).isEqualTo(3);
        assertThat(panels.path("net").asDouble()).isCloseTo(321.9938, within(1.001e-4));
        assertThat(panels.path("lap").asDouble()).isPositive().isLessThanOrEqualTo(3);
        assertThat(panels.at("/mass/value").asDouble()).isCloseTo(3 * 108.5 * 21 / 144 * 1.156, within(0.0006));
        assertThat(panels.at("/made/width/tape").asText()).isEqualTo("21\"");
        assertThat(panels.at("/uses/0/use").asText()).isEqualTo("shed");
    }

    /** Ten clips on two seams take twenty screws; 10 per cent more are 22, and packs of 9 make 27. */
    @Test
    void screwsComeInPacksWithSomeMore() {
        JsonNode answer = Door.post(
                        "/v1/takeoffs", shed("\"items\": {\"deckScrew\": {\"extraPercent\": 10, \"packCount\": 9}}"))
                .json();
        assertThat(line(answer, "clip").path("ordered").asInt()).isEqualTo(10);
        JsonNode screws = line(answer, "deckScrew");
        int rakes = screws.path("net").asInt() - 20;
        int needed = 20 + rakes + (20 + rakes + 9) / 10;
        assertThat(screws.path("ordered").asInt()).isEqualTo((needed + 8) / 9 * 9);
        assertThat(screws.path("packs").asInt() * 9)
                .isEqualTo(screws.path("ordered").asInt());
        assertThat(answer.at("/used/ordering/items/deckScrew/packCount").asInt())
                .isEqualTo(9);
    }

    /** D 48 in, d 20 in, t 0.0276 in hold 54181.09 in: one coil. */
    @Test
    void panelsFormedOnSiteComeFromWholeCoils() {
        JsonNode coil = line(
                Door.post(
                                "/v1/takeoffs",
                                shed("\"formed\": \"onSite\", \"coil\": {\"outerDiameter\": 48, \"coreDiameter\": 20}"))
                        .json(),
                "coil");
        assertThat(coil.path("ordered").asDouble()).isCloseTo(54181.09, within(0.005));
        assertThat(coil.path("packs").asInt()).isEqualTo(1);
        assertThat(coil.path("pieces").isMissingNode()).isTrue();
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(delimiter = '|', textBlock = """
            "items": {"clips": {}}                       | UNKNOWN_VALUE #/ordering/items/clips
            "items": {"clip": {"packLength": 3}}         | UNKNOWN_MEMBER #/ordering/items/clip/packLength
            "items": {"panel": {"packCount": 3}}         | UNKNOWN_MEMBER #/ordering/items/panel/packCount
            "items": {"clip": {"packCount": 2.5}}        | WRONG_TYPE #/ordering/items/clip/packCount
            "items": {"clip": {"packCount": 1e400}}      | OUT_OF_RANGE #/ordering/items/clip/packCount
            "items": {"clip": {"packCount": 0}}          | OUT_OF_RANGE #/ordering/items/clip/packCount
            "items": {"clip": {"extraPercent": 101}}     | OUT_OF_RANGE #/ordering/items/clip/extraPercent
            "coil": {"outerDiameter": 48, "coreDiameter": 20} | UNKNOWN_MEMBER #/ordering/coil
            "formed": "onSite", "coil": {"outerDiameter": 20, "coreDiameter": 20} | OUT_OF_RANGE #/ordering/coil/outerDiameter
            "formed": "onRoof"                           | UNKNOWN_VALUE #/ordering/formed
            """)
    void whatDoesNotFitIsToldWithItsPlace(String ordering, String error) {
        Answer answer = Door.post("/v1/takeoffs", shed(ordering)).isProblem(400);
        assertThat(answer.errors()).containsExactly(error);
    }

    @ParameterizedTest
    @ValueSource(strings = {"layouts-demo", "layouts-hip", "layouts-shed", "layouts-dormer"})
    void aTakeoffIsWhatTheLayoutListsLineByLine(String example) throws IOException {
        String request = Files.readString(Path.of("openapi", "examples", example + ".request.json"));
        JsonNode layout = Door.post("/v1/layouts", request).json();
        JsonNode takeoff = Door.post("/v1/takeoffs", request).json();
        takeoff.fieldNames()
                .forEachRemaining(
                        member -> assertThat(takeoff.path(member)).as(member).isEqualTo(layout.path(member)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"layouts-demo", "layouts-hip", "layouts-shed", "layouts-dormer"})
    void everyLineAddsUpAsPrinted(String example) throws IOException {
        String request = Files.readString(Path.of("openapi", "examples", example + ".request.json"));
        JsonNode answer = Door.post("/v1/takeoffs", request).json();
        assertThat(answer.path("orderLines")).isNotEmpty();
        for (JsonNode line : answer.path("orderLines")) {
            BigDecimal net = line.path("net").decimalValue();
            assertThat(sum(line.path("uses"), "quantity")).as(line.toString()).isEqualByComparingTo(net);
            assertThat(net.add(line.path("lap").decimalValue())
                            .add(line.path("waste").decimalValue()))
                    .as(line.toString())
                    .isEqualByComparingTo(line.path("ordered").decimalValue());
        }
    }
}
