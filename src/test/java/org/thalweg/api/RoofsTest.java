package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thalweg.api.Door.Answer;

@QuarkusTest
class RoofsTest {

    /** Two planes of 6:12 that meet in a valley at an inside corner of 90°, eaves of 240. */
    private static final String VALLEY = """
            {
              "units": {"length": "in", "area": "ft2", "mass": "lb"},
              "roof": {
                "points": {
                  "O": [0, 0, 0], "E": [-240, 0, 0], "T": [-240, 240, 120],
                  "V": [240, 240, 120], "F": [0, -240, 0], "U": [240, -240, 120]
                },
                "planes": [
                  {"id": "one", "outline": ["E", "O", "V", "T"]},
                  {"id": "two", "outline": ["O", "F", "U", "V"]}
                ]
              }
            }
            """;

    /**
     * Geometry: equal pitches on a square corner meet over 45° in plan, so tan θᵥ = tan θ · sin 45° and
     * tan φ = tan 45° / cos θ; the length is √(240² + 240² + 120²) = 360.
     */
    @Test
    void aValleyOfTwoEqualPitchesHasTheAnglesOfTheTrade() {
        JsonNode valley = edge(Door.post("/v1/roofs", VALLEY), "V1");
        assertThat(valley.path("kind").asText()).isEqualTo("valley");
        assertThat(valley.path("planes").toString()).isEqualTo("[\"one\",\"two\"]");
        assertThat(valley.path("length").toString()).isEqualTo("{\"value\":360,\"tape\":\"360\\\"\"}");
        assertThat(valley.path("slopeDeg").asDouble()).isEqualTo(19.4712);
        assertThat(valley.path("bendDeg").asDouble()).isEqualTo(36.8699);
        assertThat(valley.at("/sides/0/angleDeg").asDouble()).isEqualTo(48.1897);
        assertThat(valley.at("/sides/1/angleDeg").asDouble()).isEqualTo(48.1897);
    }

    /** By hand: plane one is 240 long at the eave, 480 at the top, 240 / cos θ up the slope; θ = atan 1/2. */
    @Test
    void aPlaneHasItsPitchFrameAndAreas() {
        JsonNode plane = Door.post("/v1/roofs", VALLEY).json().at("/roof/planes/0");
        assertThat(plane.path("pitch").toString()).isEqualTo("{\"rise\":6,\"run\":12}");
        assertThat(plane.path("slopeDeg").asDouble()).isEqualTo(26.5651);
        assertThat(plane.path("planArea").asDouble()).isEqualTo(600);
        assertThat(plane.path("area").asDouble()).isEqualTo(670.8204);
        assertThat(plane.at("/frame/origin").toString()).isEqualTo("[-240,0,0]");
        assertThat(plane.at("/frame/across").toString()).isEqualTo("[1,0,0]");
        assertThat(plane.at("/frame/up").toString()).isEqualTo("[0,0.894427191,0.447213595]");
        assertThat(plane.path("outline").toString()).isEqualTo("[[0,0],[240,0],[480,268.3282],[0,268.3282]]");
    }

    @ParameterizedTest
    @CsvSource({"mm,360 mm,360", "m,360000 mm,360", "ft,360' 0\",360"})
    void otherUnitsOfTheRequestHoldForTheWholeAnswer(String unit, String tape, double value) {
        Answer answer = Door.post("/v1/roofs", VALLEY.replace("\"in\"", "\"" + unit + "\""));
        assertThat(answer.json().at("/units/length").asText()).isEqualTo(unit);
        JsonNode valley = edge(answer, "V1");
        assertThat(valley.at("/length/value").asDouble()).isEqualTo(value);
        assertThat(valley.at("/length/tape").asText()).isEqualTo(tape);
        assertThat(valley.path("slopeDeg").asDouble()).isEqualTo(19.4712);
    }

    @Test
    void theSameRequestGetsTheSameBytes() {
        assertThat(Door.post("/v1/roofs", VALLEY).text())
                .isEqualTo(Door.post("/v1/roofs", VALLEY).text());
    }

    @Test
    void theDigestIsOfWhatIsSaidAndNotOfHowItIsWritten() {
        String digest = Door.post("/v1/roofs", VALLEY).json().path("digest").asText();
        String rewritten =
                VALLEY.replace("[240, 240, 120]", "[ 2.40e2, 240.0, 120 ]").replace("\n", "\r\n\t");
        assertThat(Door.post("/v1/roofs", rewritten).json().path("digest").asText())
                .isEqualTo(digest);
        String other = VALLEY.replace("[240, 240, 120]", "[240, 240, 121]");
        assertThat(Door.post("/v1/roofs", other).json().path("digest").asText()).isNotEqualTo(digest);
    }

    @Test
    void whatIsUsedIsToldAndWhichOfItAreDefaults() {
        JsonNode used = Door.post("/v1/roofs", VALLEY).json().path("used");
        assertThat(used.toString())
                .isEqualTo("{\"tolerance\":0.0394,\"minimumSlope\":{\"rise\":0.25,\"run\":12},"
                        + "\"defaults\":[\"#/tolerance\",\"#/minimumSlope\"]}");
        JsonNode given = Door.post(
                        "/v1/roofs",
                        VALLEY.replaceFirst("\\{", "{\"tolerance\": \"1/8\\\\\"\", \"minimumSlope\": \"1:12\","))
                .json()
                .path("used");
        assertThat(given.toString())
                .isEqualTo("{\"tolerance\":0.125,\"minimumSlope\":{\"rise\":1,\"run\":12},\"defaults\":[]}");
    }

    @Test
    void aPlaneThatIsTooFlatIsAFindingWithItsFigures() {
        String flat = VALLEY.replaceFirst("\\{", "{\"minimumSlope\": \"7:12\",");
        JsonNode finding = Door.post("/v1/roofs", flat).json().at("/findings/0");
        assertThat(finding.path("code").asText()).isEqualTo("SLOPE_BELOW_MINIMUM");
        assertThat(finding.path("severity").asText()).isEqualTo("stop");
        assertThat(finding.path("place").toString())
                .isEqualTo("{\"kind\":\"plane\",\"id\":\"one\",\"pointer\":\"#/roof/planes/0\"}");
        assertThat(finding.path("actual").toString()).isEqualTo("{\"value\":6,\"unit\":\"per 12\"}");
        assertThat(finding.path("limit").toString()).isEqualTo("{\"value\":7,\"unit\":\"per 12\"}");
        assertThat(finding.path("source").asText()).isEqualTo("the request");
        assertThat(finding.path("message").asText()).doesNotContain("{");
    }

    @Test
    void everyAnswerCautionsTheCrew() {
        assertThat(Door.post("/v1/roofs", VALLEY).json().path("cautions"))
                .extracting(caution -> caution.path("code").asText())
                .contains("FALLS", "CUT_EDGES", "WIND", "WHO_DECIDES");
    }

    private static JsonNode edge(Answer answer, String id) {
        assertThat(answer.status()).as(answer.text()).isEqualTo(200);
        return StreamSupport.stream(answer.json().at("/roof/edges").spliterator(), false)
                .filter(edge -> edge.path("id").asText().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
