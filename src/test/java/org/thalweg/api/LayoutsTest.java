package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import java.time.Duration;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thalweg.api.Door.Answer;

/** The main job through the door: what callers may say, and what they are told when it does not fit. */
@QuarkusTest
class LayoutsTest {

    /** 12 ft wide at 6:12, eave A-B along y = 0; {@code more} stands beside roof and panel. */
    private static String shed(String panel, String more) {
        return """
                {"units": {"length": "in", "area": "ft2", "mass": "lb"},
                 "roof": {"points": {"A": [0, 0, 0], "B": [144, 0, 0], "C": [144, 96, 48], "D": [0, 96, 48]},
                          "planes": [{"id": "shed", "outline": ["A", "B", "C", "D"]}]},
                 "panel": {"cover": 18%s}%s}
                """.formatted(panel, more);
    }

    private static final String DECK = """
            {"units": {"length": "m", "area": "m2", "mass": "kg"},
             "roof": {"points": {"A": [0, 0, 3], "B": [4, 0, 3], "C": [4, 6, 3], "D": [0, 6, 3]},
                      "planes": [{"id": "deck", "outline": ["A", "B", "C", "D"]}]},
             "panel": {"cover": 0.5}%s}
            """;

    private static Answer post(String body) {
        return Door.post("/v1/layouts", body);
    }

    @ParameterizedTest(name = "{1} at {2}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            , "metal": "galvanised"                         |                                      | UNKNOWN_VALUE  | #/panel/metal
            , "longest": 10, "stagger": 24                  |                                      | OUT_OF_RANGE   | #/panel/longest
            , "cover": 20                                   |                                      | DUPLICATE_MEMBER | #/panel/cover
            , "orderIncrement": 0                           |                                      | OUT_OF_RANGE   | #/panel/orderIncrement
            , "longest": "forty feet"                       |                                      | BAD_LENGTH     | #/panel/longest
            , "minimumSlope": "1:0"                         |                                      | BAD_PITCH      | #/panel/minimumSlope
            ``                                              | , "start": {"by": "offset", "offset": 18} | OUT_OF_RANGE | #/start/offset
            ``                                              | , "start": {"by": "centred", "offset": 2} | UNKNOWN_MEMBER | #/start/offset
            ``                                              | , "start": {"by": "luck"}            | UNKNOWN_VALUE  | #/start/by
            ``                                              | , "edgeTreatments": {"eave": {"hem": -1}} | OUT_OF_RANGE | #/edgeTreatments/eave/hem
            ``                                              | , "include": ["everything"]          | UNKNOWN_VALUE  | #/include/0
            ``                                              | , "roofing": {}                      | UNKNOWN_MEMBER | #/roofing
            ``                                              | , "hipCap": {"leg": 1, "closureInset": 2} | OUT_OF_RANGE | #/hipCap/leg
            """)
    void whatDoesNotFitIsToldWithItsPlace(String panel, String more, String code, String pointer) {
        Answer answer = post(shed(panel == null ? "" : panel, more == null ? "" : more));
        assertThat(answer.status()).isEqualTo(400);
        assertThat(answer.json().at("/errors/0/code").asText()).isEqualTo(code);
        assertThat(answer.json().at("/errors/0/pointer").asText()).isEqualTo(pointer);
    }

    @ParameterizedTest(name = "{1} at {2}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            , "edgeTreatments": {"V9": {"setback": 1}}          | NO_SUCH_EDGE  | #/edgeTreatments/V9
            , "edgeTreatments": {"A-C": {"setback": 1}}         | NO_SUCH_EDGE  | #/edgeTreatments/A-C
            , "laying": {"barn": {"leads": "right"}}            | NO_SUCH_PLANE | #/laying/barn
            , "laying": {"shed": {"fallDeg": 90}}               | FALL_NOT_FREE | #/laying/shed/fallDeg
            """)
    void whatTheRoofDoesNotHaveIsRefusedWithItsPlace(String more, String code, String pointer) {
        Answer answer = post(shed("", more));
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.json().at("/errors/0/code").asText()).isEqualTo(code);
        assertThat(answer.json().at("/errors/0/pointer").asText()).isEqualTo(pointer);
    }

    /** A plane 96 √5/2 = 107.33 in up; a hem of 1 in at the eave alone makes blanks of 108 1/2 in. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"eave", "A-B", "B-A", "E1"})
    void anEdgeIsTreatedByItsKindItsCornersOrItsName(String name) {
        JsonNode answer = post(shed("", ", \"edgeTreatments\": {\"%s\": {\"hem\": 1}}".formatted(name)))
                .json();
        assertThat(answer.at("/panels/0/blankLength/value").asDouble()).isEqualTo(108.5);
        assertThat(answer.at("/used/edgeTreatments/" + name + "/hem").asDouble())
                .isEqualTo(1);
    }

    @Test
    void aSingleEdgeReplacesItsKind() {
        JsonNode answer = post(shed("", ", \"edgeTreatments\": {\"E1\": {\"hem\": 1}, \"eave\": {\"hem\": 9}}"))
                .json();
        assertThat(answer.at("/panels/0/blankLength/value").asDouble()).isEqualTo(108.5);
    }

    @Test
    void nullMeansAbsent() {
        String bare = post(shed("", "")).text();
        String nulls = post(shed(", \"metal\": null, \"longest\": null", ", \"start\": null, \"include\": null"))
                .text();
        assertThat(nulls.replaceFirst("\"digest\":\"[0-9a-f]+\"", ""))
                .isEqualTo(bare.replaceFirst("\"digest\":\"[0-9a-f]+\"", ""));
    }

    @Test
    void lengthsMayBeTapeStrings() {
        String tape = shed("", "")
                .replace("144, 0, 0", "\"12'\", \"0\\\"\", 0")
                .replace("\"cover\": 18", "\"cover\": \"1' 6\\\"\"");
        JsonNode answer = post(tape).json();
        assertThat(answer.at("/panels")).isEqualTo(post(shed("", "")).json().at("/panels"));
    }

    @Test
    void aLevelPlaneIsAnsweredWithItsFindingAndNoPanels() {
        JsonNode answer = post(DECK.formatted("")).json();
        assertThat(answer.path("panels")).isEmpty();
        assertThat(answer.path("laid")).isEmpty();
        assertThat(answer.path("findings").findValuesAsText("code"))
                .containsExactly("LEVEL_PLANE", "SLOPE_BELOW_MINIMUM", "NO_FALL_LINE");
    }

    /** 4 m by 6 m, water to run to -y: panels 6 m long, 8 of them; to +x: 4 m long, 12 of them. */
    @ParameterizedTest(name = "{0} degrees: {1} panels of {2} m")
    @CsvSource({"270, 8, 6", "90, 8, 6", "0, 12, 4", "180, 12, 4"})
    void aLevelPlaneIsLaidInTheFallItIsGiven(double fall, int panels, double length) {
        JsonNode answer = post(DECK.formatted(", \"laying\": {\"deck\": {\"fallDeg\": %s}}".formatted(fall)))
                .json();
        assertThat(answer.path("panels")).hasSize(panels);
        assertThat(answer.at("/panels/0/blankLength/value").asDouble()).isEqualTo(length);
    }

    /** Water runs to -y, so looking up the slope is looking to +y and the left rib of the first panel stands at x = 0. */
    @Test
    void cornersInTheWorldLieWhereTheyShould() {
        JsonNode corners = post(DECK.formatted(
                        ", \"laying\": {\"deck\": {\"fallDeg\": 270}}, \"include\": [\"world\"]"))
                .json()
                .at("/panels/0/world");
        double[][] expected = {{0, 0, 3}, {0.5, 0, 3}, {0.5, 6, 3}, {0, 6, 3}};
        assertThat(corners).hasSize(4);
        for (int i = 0; i < 4; i++) {
            for (int axis = 0; axis < 3; axis++) {
                assertThat(corners.get(i).get(axis).asDouble()).isCloseTo(expected[i][axis], within(1e-6));
            }
        }
    }

    @Test
    void offCutsAndWorldAreOnlyAnsweredWhenAskedFor() {
        JsonNode bare = post(shed("", "")).json().at("/panels/0");
        JsonNode full =
                post(shed("", ", \"include\": [\"offcuts\", \"world\"]")).json().at("/panels/0");
        assertThat(bare.has("offcuts") || bare.has("world")).isFalse();
        assertThat(full.has("offcuts") && full.has("world")).isTrue();
    }

    /** A kilometre square at the narrowest cover. */
    @Test
    void moreThanMayBeLaidIsRefusedBeforeTheWorkStarts() {
        String wide = """
                {"units": {"length": "m", "area": "m2", "mass": "kg"},
                 "roof": {"points": {"A": [0, 0, 0], "B": [9000000, 0, 0], "C": [9000000, 900, 450], "D": [0, 900, 450]},
                          "planes": [{"id": "p", "outline": ["A", "B", "C", "D"]}]},
                 "panel": {"cover": 0.05}}
                """;
        long start = System.nanoTime();
        Answer answer = post(wide);
        assertThat(Duration.ofNanos(System.nanoTime() - start)).isLessThan(Duration.ofSeconds(5));
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.json().at("/errors/0/code").asText()).isEqualTo("TOO_MANY_PANELS");
        assertThat(answer.json().at("/errors/0/pointer").asText()).isEqualTo("#/roof/planes/0");
    }

    /** A saw-toothed eave of 1,500 teeth. */
    @Test
    void aSearchOverTooManyCornersIsRefusedAndAGivenStartIsNot() {
        String teeth = IntStream.range(0, 3_000)
                .mapToObj(i -> "\"p%d\": [%s, %s, %s]".formatted(i, i * 0.01, i % 2 * 0.1, i % 2 * 0.05))
                .collect(Collectors.joining(", "));
        String names = IntStream.range(0, 3_000).mapToObj(i -> "\"p" + i + "\"").collect(Collectors.joining(", "));
        String comb = """
                {"units": {"length": "m", "area": "m2", "mass": "kg"},
                 "roof": {"points": {%s, "C": [29.99, 5, 2.5], "D": [0, 5, 2.5]},
                          "planes": [{"id": "comb", "outline": [%s, "C", "D"]}]},
                 "panel": {"cover": 0.5}, "start": {"by": "%s"}}
                """;
        Answer searched = post(comb.formatted(teeth, names, "leastWaste"));
        Answer given = post(comb.formatted(teeth, names, "offset"));
        assertThat(searched.status()).isEqualTo(422);
        assertThat(searched.json().at("/errors/0/code").asText()).isEqualTo("SEARCH_TOO_LARGE");
        assertThat(given.status()).isEqualTo(200);
        assertThat(given.json().path("panels")).hasSize(60);
    }

    @Test
    void theSameRequestGetsTheSameBytes() {
        String request = shed("", ", \"start\": {\"by\": \"leastWaste\"}, \"include\": [\"offcuts\", \"world\"]");
        String first = post(request).text();
        for (int i = 0; i < 5; i++) {
            assertThat(post(request).text()).isEqualTo(first);
        }
    }
}
