package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thalweg.api.Door.Answer;

/** Fasteners and clips through the door. */
@QuarkusTest
class FastenersTest {

    private static final double LAST_DIGIT = 1.001e-4;

    /** Three panels of 18 in on a plane 54 in wide, 8 ft up the level, 6:12. */
    private static String shed(String fastening) {
        return """
                {"units": {"length": "in", "area": "ft2", "mass": "lb"},
                 "roof": {"points": {"A": [0, 0, 0], "B": [54, 0, 0], "C": [54, 96, 48], "D": [0, 96, 48]},
                          "planes": [{"id": "shed", "outline": ["A", "B", "C", "D"]}]},
                 "panel": {"cover": 18}, "fastening": {%s}}
                """.formatted(fastening);
    }

    private static List<JsonNode> rows(JsonNode answer, String kind) {
        List<JsonNode> rows = new ArrayList<>();
        answer.path("fasteners").forEach(row -> {
            if (row.path("kind").asText().equals(kind)) {
                rows.add(row);
            }
        });
        return rows;
    }

    /** Between ribs less 3/4 in on each side 16 1/2 in remain: five intervals of 3.3 in at most 4 in apart. */
    @Test
    void theEaveOfEveryPanelIsScrewedBetweenItsRibs() {
        JsonNode answer = Door.post("/v1/layouts", shed("")).json();
        List<JsonNode> eave = rows(answer, "eave");
        assertThat(eave).hasSize(3);
        assertThat(eave.get(1).path("panel").asText()).isEqualTo("shed-2");
        assertThat(eave.get(1).path("count").asInt()).isEqualTo(6);
        assertThat(eave.get(1).at("/spacing/value").asDouble()).isEqualTo(3.3);
        assertThat(eave.get(1).at("/places/0/0").asDouble()).isEqualTo(18.75);
        assertThat(eave.get(1).at("/onPanel/5/0").asDouble()).isEqualTo(17.25);
        assertThat(eave.get(1).at("/onPanel/5/1").asDouble()).isEqualTo(2);
    }

    /** 107.3313 in of seam less 6 in at either end are 95.3313 in: four intervals at most 24 in, so 23.8328 in. */
    @Test
    void theSeamsBetweenPanelsHaveTheirClips() {
        JsonNode answer = Door.post("/v1/layouts", shed("")).json();
        assertThat(answer.path("clips")).hasSize(2);
        JsonNode clips = answer.at("/clips/0");
        assertThat(clips.path("strip").asInt()).isEqualTo(1);
        assertThat(clips.path("count").asInt()).isEqualTo(5);
        assertThat(clips.at("/spacing/value").asDouble()).isCloseTo(23.8328, within(LAST_DIGIT));
        assertThat(clips.at("/places/0").toString()).isEqualTo("[18,6]");
    }

    @Test
    void aCallersFigureWins() {
        String figures = "\"eaveSpacing\": 3, \"clipSpacing\": 12, \"ribClearance\": 1.5";
        JsonNode answer = Door.post("/v1/layouts", shed(figures)).json();
        assertThat(answer.at("/used/fastening/eaveSpacing").asDouble()).isEqualTo(3);
        assertThat(rows(answer, "eave").get(0).at("/spacing/value").asDouble()).isEqualTo(3); // 15 in free
        assertThat(answer.at("/clips/0/count").asInt()).isEqualTo(9);
        assertThat(answer.at("/used/fastening/closureSpacing").asDouble()).isEqualTo(6);
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(delimiter = '|', textBlock = """
            "eaveSpacing": 0         | OUT_OF_RANGE #/fastening/eaveSpacing
            "clipSpacing": "12 feet" | BAD_LENGTH #/fastening/clipSpacing
            "stripSpacing": -1       | OUT_OF_RANGE #/fastening/stripSpacing
            "fixedpoint": "eave"     | UNKNOWN_MEMBER #/fastening/fixedpoint
            """)
    void whatDoesNotFitIsToldWithItsPlace(String fastening, String error) {
        Answer answer = Door.post("/v1/layouts", shed(fastening)).isProblem(400);
        assertThat(answer.errors()).containsExactly(error);
    }

    @Test
    void moreFastenersThanOneRequestMayHaveAreRefused() {
        String wide = shed("\"clipSpacing\": 0.5, \"eaveSpacing\": 0.5")
                .replace("54,", "3600,")
                .replace("96,", "9600,")
                .replace("48]", "4800]");
        Answer answer = Door.post("/v1/layouts", wide).isProblem(422);
        assertThat(answer.errors()).containsExactly("TOO_MANY_FASTENERS #/roof");
    }

    /** On the demo house: as many places as counted, and every panel's marks are panels of the answer. */
    @Test
    void everyRowOfTheDemoHouseListsAsManyPlacesAsItCounts() throws IOException {
        String request = Files.readString(Path.of("openapi", "examples", "layouts-demo.request.json"));
        JsonNode answer = Door.post("/v1/layouts", request).json();
        List<String> marks = new ArrayList<>();
        answer.path("panels").forEach(panel -> marks.add(panel.path("mark").asText()));
        assertThat(answer.path("fasteners")).isNotEmpty();
        for (JsonNode row : answer.path("fasteners")) {
            assertThat(row.path("places")).hasSize(row.path("count").asInt());
            if (row.has("panel")) {
                assertThat(marks).contains(row.path("panel").asText());
                assertThat(row.path("onPanel")).hasSize(row.path("count").asInt());
            }
        }
        for (JsonNode clips : answer.path("clips")) {
            assertThat(clips.path("places")).hasSize(clips.path("count").asInt());
        }
    }

    /** 6:12: a place 2 in up the slope lies 2 · 2/√5 = 1.7889 in back and 0.8944 in up. */
    @Test
    void placesAreToldInTheWorldOnRequest() {
        JsonNode answer = Door.post("/v1/layouts", shed("").replace("\"panel\"", "\"include\": [\"world\"], \"panel\""))
                .json();
        assertThat(rows(answer, "eave").get(0).at("/world/0").toString()).isEqualTo("[1,1.7889,0.8944]");
        assertThat(answer.at("/clips/0/world")).hasSameSizeAs(answer.at("/clips/0/places"));
        assertThat(Door.post("/v1/layouts", shed("")).json().at("/clips/0").has("world"))
                .isFalse();
    }

    /** Nothing lies under the screws of a line in the middle of a plane, unless the panels of both sides run past it. */
    @ParameterizedTest(name = "set-back {0}: {1}")
    @CsvSource({"0, 1", "-3, 0"})
    void panelsThatDoNotLapWhereAPlaneRunsOnAreTold(int setback, int findings) {
        JsonNode answer = Door.post("/v1/layouts", """
                        {"units": {"length": "in", "area": "ft2", "mass": "lb"},
                         "roof": {"points": {"A": [0, 0, 0], "B": [54, 0, 0], "C": [54, 48, 24], "D": [0, 48, 24],
                                             "E": [54, 96, 48], "F": [0, 96, 48]},
                                  "planes": [{"id": "lower", "outline": ["A", "B", "C", "D"]},
                                             {"id": "upper", "outline": ["D", "C", "E", "F"]}]},
                         "panel": {"cover": 18}, "edgeTreatments": {"flush": {"setback": %d}}}
                        """.formatted(setback)).json();
        List<JsonNode> told = new ArrayList<>();
        answer.path("findings").forEach(finding -> {
            if (finding.path("code").asText().equals("FLUSH_NOT_LAPPED")) {
                told.add(finding);
            }
        });
        assertThat(told).hasSize(findings);
        List<JsonNode> laps = rows(answer, "endLap");
        assertThat(laps).hasSize(3);
    }

    /** A cap of 6 in with its closure 1 in inside: the closure stands 5 in off the hip, its screws 1 in further in. */
    @Test
    void screwsOfAHipsClosuresStandWhereTheCapIs() {
        JsonNode answer = Door.post("/v1/layouts", """
                        {"units": {"length": "in", "area": "ft2", "mass": "lb"},
                         "roof": {"points": {"A": [0, 0, 0], "B": [240, 0, 0], "C": [240, 240, 0], "D": [0, 240, 0], "P": [120, 120, 60]},
                                  "planes": [{"id": "south", "outline": ["A", "B", "P"]}, {"id": "east", "outline": ["B", "C", "P"]},
                                             {"id": "north", "outline": ["C", "D", "P"]}, {"id": "west", "outline": ["D", "A", "P"]}]},
                         "panel": {"cover": 18}, "edgeTreatments": {"hip": {"setback": 1}}}
                        """).json();
        double rise = Math.sqrt(120 * 120 + 60 * 60);
        double length = Math.hypot(120, rise);
        List<JsonNode> closures = rows(answer, "closure");
        assertThat(closures).isNotEmpty();
        for (JsonNode row : closures) {
            for (JsonNode place : row.path("places")) {
                double across = place.get(0).asDouble();
                double down = place.get(1).asDouble() * 120;
                double fromLeft = (across * rise - down) / length;
                double fromRight = ((240 - across) * rise - down) / length;
                assertThat(Math.min(Math.abs(fromLeft - 4), Math.abs(fromRight - 4)))
                        .isLessThan(0.001);
            }
        }
    }
}
