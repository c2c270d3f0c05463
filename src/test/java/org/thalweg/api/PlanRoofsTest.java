package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thalweg.api.Door.Answer;

/** Roofs posted as a plan with pitches. */
@QuarkusTest
class PlanRoofsTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    /** Pitches of the demo house by plane, by hand from its corners; every plane rises from its first side. */
    private static final Map<String, String> PITCHES = Map.of(
            "south", "6:12",
            "north", "6:12",
            "westHip", "6:12",
            "wingWest", "8:12",
            "wingEast", "8:12",
            "dormerWest", "6:12",
            "dormerEast", "6:12",
            "leanTo", "3:12");

    /** Two planes of 6:12 and 8:12 that meet in a valley at an inside corner of 90 degrees. */
    private static final String CORNER = """
            {
              "units": {"length": "in", "area": "ft2", "mass": "lb"},
              "roof": {
                "plan": {
                  "planes": [
                    {"id": "one", "outline": [[-240, 0], [0, 0], [180, 240], [-240, 240]], "pitch": "6:12", "eave": [0, 1]},
                    {"id": "two", "outline": [[0, 0], [0, -240], [180, -240], [180, 240]], "pitch": "8:12", "fallDeg": 180}
                  ],
                  "height": {"plane": "one", "corner": 1, "z": "9' 0\\""}
                }
              }
            }
            """;

    /** One height, eight pitches and the three walls of the dormer say what thirty-two corners in space say. */
    @Test
    void theDemoHouseIsTheSameRoofAsInSpace() throws IOException {
        JsonNode demo = JSON.readTree(Answered.example("layouts-demo"));
        JsonNode planned = demo.deepCopy();
        ((ObjectNode) planned).set("roof", plan(demo.path("roof")));
        JsonNode expected = Answered.json(Answered.layout(demo.toString()));
        JsonNode found = Answered.json(Answered.layout(planned.toString()));
        assertThat(expected.at("/roof/planes")).hasSize(8);
        assertThat(expected.at("/roof/edges").size()).isGreaterThan(20);
        assertAlike(found.path("roof"), expected.path("roof"), "roof");
        for (String list : List.of("order", "valleys", "trims", "orderLines", "totals")) {
            assertThat(expected.path(list).size()).as(list).isPositive();
            assertAlike(found.path(list), expected.path(list), list);
        }
    }

    private static ObjectNode plan(JsonNode roof) {
        ObjectNode plan = JSON.createObjectNode();
        ArrayNode planes = plan.putArray("planes");
        for (JsonNode plane : roof.path("planes")) {
            String id = plane.path("id").asText();
            ObjectNode drawn = planes.addObject().put("id", id).put("pitch", PITCHES.get(id));
            drawn.putArray("eave").add(0).add(1);
            drawn.set("outline", seenFromAbove(plane.path("outline"), roof));
            ArrayNode openings = drawn.putArray("openings");
            for (JsonNode opening : plane.path("openings")) {
                ObjectNode hole =
                        openings.addObject().put("id", opening.path("id").asText());
                hole.set("outline", seenFromAbove(opening.path("outline"), roof));
            }
        }
        plan.putObject("height").put("plane", "south").put("corner", 0).put("z", 108);
        ArrayNode edges = plan.putArray("edges");
        Map.of(0, "headWall", 1, "sideWall", 4, "sideWall").forEach((side, kind) -> edges.addObject()
                .put("plane", "south")
                .put("opening", "dormer")
                .put("side", side)
                .put("kind", kind));
        ObjectNode form = JSON.createObjectNode();
        form.set("plan", plan);
        return form;
    }

    private static ArrayNode seenFromAbove(JsonNode names, JsonNode roof) {
        ArrayNode outline = JSON.createArrayNode();
        for (JsonNode name : names) {
            JsonNode point = roof.path("points").path(name.asText());
            outline.addArray().add(point.get(0)).add(point.get(1));
        }
        return outline;
    }

    /** Same words, and numbers within 1e-9 of each other; pointers differ, because the forms do. */
    private static void assertAlike(JsonNode found, JsonNode expected, String path) {
        assertThat(found.getNodeType()).as(path).isEqualTo(expected.getNodeType());
        if (expected.isNumber()) {
            double number = expected.asDouble();
            assertThat(found.asDouble()).as(path).isCloseTo(number, within(1e-9 * Math.max(1, Math.abs(number))));
        } else if (expected.isContainerNode()) {
            assertThat(found.size()).as(path).isEqualTo(expected.size());
            Iterator<JsonNode> others = found.elements();
            int place = 0;
            for (JsonNode each : expected) {
                assertAlike(others.next(), each, path + "/" + place++);
            }
        } else if (!path.endsWith("pointer")) {
            assertThat(found).as(path).isEqualTo(expected);
        }
    }

    /** Published beside the contract's angles: a square corner of 6:12 and 8:12 has a valley of 21.8014, a bend of 41.9088. */
    @ParameterizedTest
    @CsvSource({"in", "m", "mm"})
    void aValleyDrawnInPlanHasTheAnglesOfTheTrade(String unit) {
        Answer answer = Door.post("/v1/roofs", CORNER.replace("\"in\"", "\"" + unit + "\""));
        assertThat(answer.status()).as(answer.text()).isEqualTo(200);
        JsonNode valley = edge(answer, "valley");
        assertThat(valley.path("slopeDeg").asDouble()).isEqualTo(21.8014);
        assertThat(valley.path("bendDeg").asDouble()).isEqualTo(41.9088);
        assertThat(valley.at("/sides/0/angleDeg").asDouble()).isEqualTo(56.1455);
        assertThat(valley.at("/sides/1/angleDeg").asDouble()).isEqualTo(42.0311);
        // Over 240 and 180 in plan, rising 120; a millimetre is rounded to three decimals.
        assertThat(valley.at("/length/value").asDouble())
                .isCloseTo(Math.sqrt(240 * 240 + 180 * 180 + 120 * 120), within(5e-4));
    }

    @Test
    void aWallIsNamedByItsPlaneAndSide() {
        String walled = CORNER.replace(
                "\"height\"", "\"edges\": [{\"plane\": \"two\", \"side\": 2, \"kind\": \"headWall\"}], \"height\"");
        JsonNode wall = edge(Door.post("/v1/roofs", walled), "headWall");
        assertThat(wall.path("planes").toString()).isEqualTo("[\"two\"]");
        assertThat(wall.path("from").toString() + wall.path("to")).contains("[180,-240,228]", "[180,240,228]");
    }

    @Test
    void findingsPointIntoThePlan() {
        String flat = CORNER.replaceFirst("\\{", "{\"minimumSlope\": \"7:12\",");
        JsonNode finding = Door.post("/v1/roofs", flat).json().at("/findings/0");
        assertThat(finding.at("/place/pointer").asText()).isEqualTo("#/roof/plan/planes/0");
    }

    @Test
    void heightsThatDisagreeAreToldInTheCallersUnitWithThePitchThatCloses() {
        Answer refused = Door.post("/v1/roofs", CORNER.replace("8:12", "7:12"));
        assertThat(refused.status()).isEqualTo(422);
        JsonNode fault = refused.json().at("/errors/0");
        assertThat(refused.json().path("errors")).hasSize(1);
        assertThat(fault.path("code").asText()).isEqualTo("HEIGHTS_DISAGREE");
        assertThat(fault.path("pointer").asText()).isEqualTo("#/roof/plan/planes/1/outline/3");
        // 108 in the corner; 6:12 over 240 rises 120, 7:12 over 180 rises 105.
        assertThat(fault.path("detail").asText())
                .startsWith("This corner stands 213 in high in its own plane and 228 in in the plane at"
                        + " #/roof/plan/planes/0: 15 in apart, 0.0394 in at most. A pitch of 8:12 would close it.");
        assertThat(fault.path("actual").toString()).isEqualTo("{\"value\":15,\"unit\":\"in\"}");
        assertThat(fault.path("limit").toString()).isEqualTo("{\"value\":0.0394,\"unit\":\"in\"}");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"fallDeg\": 180}|\"fallDeg\": 180, \"eave\": [0, 1]}|EITHER_OR|#/roof/plan/planes/1",
                "\"pitch\": \"8:12\", \"fallDeg\": 180}|\"pitch\": \"8:12\"}|EITHER_OR|#/roof/plan/planes/1",
                "\"fallDeg\": 180}|\"fallDeg\": 361}|OUT_OF_RANGE|#/roof/plan/planes/1/fallDeg",
                "\"8:12\"|\"steep\"|BAD_PITCH|#/roof/plan/planes/1/pitch",
                "\"8:12\"|\"1001:12\"|OUT_OF_RANGE|#/roof/plan/planes/1/pitch",
                "[180, -240]|[180]|TOO_FEW|#/roof/plan/planes/1/outline/2",
                "[180, -240]|[180, -240, 0]|TOO_MANY|#/roof/plan/planes/1/outline/2",
                "[180, -240]|180|WRONG_TYPE|#/roof/plan/planes/1/outline/2",
                "[180, -240]|[180, \"wide\"]|BAD_LENGTH|#/roof/plan/planes/1/outline/2/1",
                "[180, -240]|[180, 1e12]|OUT_OF_RANGE|#/roof/plan/planes/1/outline/2/1",
                "\"eave\": [0, 1]|\"eave\": [0]|TOO_FEW|#/roof/plan/planes/0/eave",
                "\"eave\": [0, 1]|\"eave\": [-1, 0]|OUT_OF_RANGE|#/roof/plan/planes/0/eave/0",
                "\"corner\": 1, |\"corner\": 0.5, |WRONG_TYPE|#/roof/plan/height/corner",
                "\"corner\": 1, ||MISSING_MEMBER|#/roof/plan/height",
                "\"plan\": {|\"planes\": [], \"plan\": {|ROOF_FORM|#/roof"
            })
    void whatCannotBeReadIsRefusedAtItsPlace(String found, String instead, String code, String pointer) {
        Answer refused = Door.post("/v1/roofs", CORNER.replace(found, instead == null ? "" : instead));
        assertThat(refused.status()).as(refused.text()).isEqualTo(400);
        assertThat(refused.json().path("errors")).anySatisfy(fault -> assertThat(fault.path("code")
                                .asText() + " " + fault.path("pointer").asText())
                .isEqualTo(code + " " + pointer));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"eave\": [0, 1]|\"eave\": [0, 2]|NOT_A_SIDE|#/roof/plan/planes/0/eave",
                "\"eave\": [0, 1]|\"eave\": [0, 4]|NO_SUCH_CORNER|#/roof/plan/planes/0/eave/1",
                "\"corner\": 1, |\"corner\": 4, |NO_SUCH_CORNER|#/roof/plan/height/corner",
                "\"plane\": \"one\"|\"plane\": \"three\"|NO_SUCH_PLANE|#/roof/plan/height/plane",
                "\"8:12\"|\"1000:12\"|PLANE_UPRIGHT|#/roof/plan/planes/1/pitch",
                "\"id\": \"two\"|\"id\": \"one\"|DUPLICATE_ID|#/roof/plan/planes/1"
            })
    void whatIsNoRoofIsRefusedAtItsPlace(String found, String instead, String code, String pointer) {
        Answer refused = Door.post("/v1/roofs", CORNER.replace(found, instead));
        assertThat(refused.status()).as(refused.text()).isEqualTo(422);
        assertThat(refused.json().path("errors")).anySatisfy(fault -> assertThat(fault.path("code")
                                .asText() + " " + fault.path("pointer").asText())
                .isEqualTo(code + " " + pointer));
    }

    @Test
    void aValleyOfAPlanIsNamedByItsIdAndNotByPoints() {
        String valley = CORNER.replaceFirst("\\{", "{\"panel\": {\"cover\": 18}, \"edge\": \"V1\",");
        Answer answer = Door.post("/v1/valleys", valley);
        assertThat(answer.status()).as(answer.text()).isEqualTo(200);
        assertThat(answer.text()).contains("21.8014");
        Answer refused = Door.post("/v1/valleys", valley.replace("\"edge\": \"V1\"", "\"valley\": [\"A\", \"B\"]"));
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.json().at("/errors/0/code").asText()).isEqualTo("UNKNOWN_POINT");
        assertThat(refused.json().at("/errors/0/detail").asText()).contains("no points with names");
    }

    @ParameterizedTest
    @CsvSource({"layouts", "takeoffs", "trims"})
    void whereverARoofIsTakenAPlanIs(String operation) {
        String request = CORNER.replaceFirst("\\{", "{\"panel\": {\"cover\": 18},");
        Answer answer = Door.post("/v1/" + operation, request);
        assertThat(answer.status()).as(answer.text()).isEqualTo(200);
    }

    private static JsonNode edge(Answer answer, String kind) {
        assertThat(answer.status()).as(answer.text()).isEqualTo(200);
        for (JsonNode edge : answer.json().at("/roof/edges")) {
            if (edge.path("kind").asText().equals(kind)) {
                return edge;
            }
        }
        throw new AssertionError(answer.text());
    }
}
