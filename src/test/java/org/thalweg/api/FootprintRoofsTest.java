package org.thalweg.api;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.thalweg.api.Door.Answer;

/** Roofs posted as the plan of their walls. */
@QuarkusTest
class FootprintRoofsTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    /** An L with a gable, a courtyard, and something said of most sides. */
    private static final String HOUSE = """
            {
              "units": {"length": "m", "area": "m2", "mass": "kg"},
              "roof": {
                "footprint": {
                  "outline": [[0, 0], [20, 0], [20, 12], [12, 12], [12, 20], [0, 20]],
                  "holes": [[[4, 4], [8, 4], [8, 8], [4, 8]]],
                  "pitch": "6:12",
                  "eaveHeight": 2.5,
                  "overhang": 0.4,
                  "sides": [
                    {"side": 0, "id": "south"},
                    {"side": 1, "gable": true},
                    {"side": 2, "pitch": "8:12", "overhang": 0.6},
                    {"side": 1, "hole": 0, "id": "yard"}
                  ],
                  "openings": [{"id": "chimney", "outline": [[14, 1], [15, 1], [15, 2], [14, 2]]}]
                }
              }
            }
            """;

    /** A shed against a house: walls above two of its sides. */
    private static final String SHED = """
            {
              "units": {"length": "mm", "area": "m2", "mass": "kg"},
              "roof": {
                "footprint": {
                  "outline": [[0, 0], [5000, 0], [5000, 2400], [0, 2400]],
                  "pitch": "3:12",
                  "sides": [
                    {"side": 1, "gable": true},
                    {"side": 2, "gable": true, "wall": true, "id": "house"},
                    {"side": 3, "gable": true, "wall": true}
                  ]
                }
              }
            }
            """;

    private static final List<String> PLANES_OF_THE_MAIN_ROOF =
            List.of("south", "north", "westHip", "wingWest", "wingEast");

    /** The demo house in space without its dormer and its lean-to, and without the corners that these add to other planes. */
    private static JsonNode mainRoof() throws IOException {
        JsonNode demo = JSON.readTree(Answered.example("roofs-demo"));
        ObjectNode roof = (ObjectNode) demo.path("roof");
        roof.remove("edges");
        ArrayNode planes = JSON.createArrayNode();
        for (JsonNode plane : roof.path("planes")) {
            String id = plane.path("id").asText();
            if (PLANES_OF_THE_MAIN_ROOF.contains(id)) {
                planes.add(plane);
                if (id.equals("south")) {
                    ((ObjectNode) plane).remove("openings");
                }
                if (id.equals("north")) {
                    ((ObjectNode) plane)
                            .putArray("outline")
                            .add("F")
                            .add("J")
                            .add("K")
                            .add("L");
                }
            }
        }
        roof.set("planes", planes);
        return demo;
    }

    /** Six corners, two pitches and a gable say what the corners in space say, to the last printed digit. */
    @Test
    void theDemoHouseIsTheSameRoofAsInSpace() throws IOException {
        JsonNode expected = read(mainRoof().toString()).path("roof");
        JsonNode found = read(Answered.example("roofs-footprint")).path("roof");
        assertThat(expected.path("planes")).hasSize(5);
        assertThat(byId(found.path("planes"))).isEqualTo(byId(expected.path("planes")));
        assertThat(edges(found)).isEqualTo(edges(expected));
    }

    /** What a caller does with the editable roof: the dormer and the lean-to of the demo house are added to it. */
    @Test
    void theEditableRoofIsBuiltUponToTheWholeDemoHouse() throws IOException {
        JsonNode demo = JSON.readTree(Answered.example("roofs-demo"));
        JsonNode expected = read(demo.toString()).path("roof");
        ObjectNode edited = editable(Answered.example("roofs-footprint"));
        JsonNode given = demo.path("roof");
        given.path("points").properties().forEach(point -> ((ObjectNode) edited.path("points"))
                .set(point.getKey(), point.getValue()));
        for (JsonNode plane : given.path("planes")) {
            if (!PLANES_OF_THE_MAIN_ROOF.contains(plane.path("id").asText())) {
                ((ArrayNode) edited.path("planes")).add(plane);
            }
        }
        for (JsonNode plane : edited.path("planes")) {
            if (plane.path("id").asText().equals("south")) {
                ((ObjectNode) plane).set("openings", given.at("/planes/0/openings"));
            }
        }
        edited.set("edges", given.path("edges"));
        ObjectNode request = (ObjectNode) demo;
        request.set("roof", edited);
        JsonNode found = read(request.toString()).path("roof");
        assertThat(byId(found.path("planes"))).isEqualTo(byId(expected.path("planes")));
        assertThat(edges(found)).isEqualTo(edges(expected));
        assertThat(found.has("editable")).isFalse();
    }

    static List<String> roofs() {
        return List.of(
                Answered.example("roofs-footprint"),
                alone(Answered.example("layouts-footprint")),
                HOUSE,
                SHED,
                Answered.example("roofs-plan"));
    }

    private static String alone(String layout) {
        try {
            ObjectNode request = (ObjectNode) JSON.readTree(layout);
            request.retain("units", "roof");
            return request.toString();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** Posted as it was answered, the editable roof is the same: every plane, every edge, every name, every digit. */
    @ParameterizedTest
    @MethodSource("roofs")
    void theEditableRoofIsTheSameRoof(String request) throws IOException {
        ObjectNode again = (ObjectNode) JSON.readTree(request);
        JsonNode first = read(request).path("roof");
        again.set("roof", editable(request));
        JsonNode second = read(again.toString()).path("roof");
        assertThat(second.path("planes")).isNotEmpty().isEqualTo(first.path("planes"));
        for (JsonNode edge : first.path("edges")) {
            ((ObjectNode) edge).remove("footprintSide");
        }
        assertThat(second.path("edges")).isNotEmpty().isEqualTo(first.path("edges"));
    }

    @Test
    void aRoofOfPointsAndPlanesIsNotSentBack() {
        assertThat(read(Answered.example("roofs-demo")).at("/roof").has("editable"))
                .isFalse();
    }

    /** Four lengths and a pitch. The L of 40 by 44 ft less 16 by 20 ft, at 6:12: true area is plan area times the root of 1.25. */
    @Test
    void fiveNumbersOfAShopPageAreAWholeLayout() {
        Answer answer = Door.post("/v1/layouts", Answered.example("layouts-footprint"));
        assertThat(answer.status()).as(answer.text()).isEqualTo(200);
        JsonNode layout = answer.json();
        double area = 0;
        for (JsonNode plane : layout.at("/roof/planes")) {
            area += plane.path("area").asDouble();
        }
        double plan = 40 * 24 + 24 * 20;
        assertThat(area).isCloseTo(plan * Math.sqrt(1.25), within(6 * 5e-5));
        assertThat(edges(layout.path("roof"), "valley")).hasSize(1);
        assertThat(edges(layout.path("roof"), "hip")).hasSize(5);
        assertThat(edges(layout.path("roof"), "ridge")).hasSize(2);
        for (String list : List.of("panels", "valleys", "trims", "fasteners", "order", "orderLines", "totals")) {
            assertThat(layout.path(list).size()).as(list).isPositive();
        }
        assertThat(layout.at("/used/defaults").toString())
                .contains("\"#/roof/footprint/eaveHeight\",\"#/roof/footprint/overhang\"");
        assertThat(layout.at("/roof").has("editable")).isFalse();
    }

    @Test
    void edgesAlongAWallTellTheirSide() {
        JsonNode roof = read(HOUSE).path("roof");
        Map<String, Set<String>> sides = new TreeMap<>();
        for (JsonNode edge : roof.path("edges")) {
            String kind = edge.path("kind").asText();
            if (edge.has("footprintSide")) {
                sides.computeIfAbsent(kind, key -> new TreeSet<>())
                        .add(edge.path("footprintSide").asText());
            } else {
                assertThat(kind).isIn("ridge", "hip", "valley", "pitchBreak", "opening");
            }
        }
        assertThat(sides)
                .containsEntry(
                        "eave",
                        Set.of(
                                "south",
                                "side2",
                                "side3",
                                "side4",
                                "side5",
                                "hole0side0",
                                "yard",
                                "hole0side2",
                                "hole0side3"))
                .containsEntry("rake", Set.of("side1"))
                .hasSize(2);
        assertThat(byId(roof.path("planes"))).containsKeys("south", "side2", "hole0side0", "yard");
    }

    /** South stands out 0.4 m and is 2.5 m up; the wall of the gable moves its rakes out by as much. */
    @Test
    void eavesStandOutAndStayLevel() {
        for (JsonNode edge : read(HOUSE).at("/roof/edges")) {
            String side = edge.path("footprintSide").asText();
            if (side.equals("south")) {
                assertThat(edge.path("from").toString() + edge.path("to")).isEqualTo("[-0.4,-0.4,2.5][20.4,-0.4,2.5]");
            } else if (side.equals("side1")) {
                assertThat(edge.at("/from/0").asDouble()).isEqualTo(20.4);
                assertThat(edge.at("/to/0").asDouble()).isEqualTo(20.4);
            }
        }
    }

    @Test
    void alongWallsThatGoOnTheRoofEndsAtAWall() {
        JsonNode roof = read(SHED).path("roof");
        assertThat(edges(roof, "headWall")).hasSize(1).first().asString().contains("\"footprintSide\":\"house\"");
        assertThat(edges(roof, "sideWall")).hasSize(1);
        assertThat(edges(roof, "rake")).hasSize(1);
        assertThat(roof.at("/editable/edges")).hasSize(2);
    }

    /** A house whose east end goes up as a gable from 4 m on, whose north eave is higher, and that has a gable over its south eave. */
    @Test
    void aSideMayRiseInItsOwnWay() {
        String house = """
                {
                  "units": {"length": "m", "area": "m2", "mass": "kg"},
                  "roof": {
                    "footprint": {
                      "outline": [[0, 0], [4, 0], [8, 0], [14, 0], [14, 8], [0, 8]],
                      "pitch": "6:12",
                      "eaveHeight": 3,
                      "overhang": 0.5,
                      "sides": [
                        {"side": 1, "id": "porch", "gable": true, "pitch": "9:12"},
                        {"side": 3, "id": "east", "above": [{"height": 4, "gable": true}]},
                        {"side": 4, "id": "north", "eaveHeight": 3.5, "above": [{"height": 4.5, "pitch": "4:12"}]}
                      ]
                    }
                  }
                }
                """;
        JsonNode roof = read(house).path("roof");
        assertThat(byId(roof.path("planes")).keySet())
                .containsExactlyInAnyOrder(
                        "side0", "porch.start", "porch.end", "east", "north", "north.above1", "side5");
        assertThat(edges(roof, "headWall")).hasSize(1).first().asString().contains("\"footprintSide\":\"east\"");
        assertThat(edges(roof, "pitchBreak")).hasSize(1);
        for (JsonNode edge : edges(roof, "eave")) {
            double height = edge.path("footprintSide").asText().equals("north") ? 3.5 : 3;
            assertThat(edge.at("/from/2").asDouble()).isEqualTo(height);
            assertThat(edge.at("/to/2").asDouble()).isEqualTo(height);
        }
        JsonNode porch = requireNonNull(byId(roof.path("planes")).get("porch.start"));
        assertThat(porch.at("/pitch/rise").asDouble()).isEqualTo(9);
        for (JsonNode plane : roof.path("planes")) {
            assertThat(plane.path("offPlane").asDouble()).isZero();
        }
    }

    @Test
    void findingsPointAtTheSide() {
        String flat = HOUSE.replaceFirst("\\{", "{\"minimumSlope\": \"7:12\",");
        JsonNode finding = read(flat).at("/findings/0");
        assertThat(finding.at("/place/pointer").asText()).isEqualTo("#/roof/footprint/outline/0");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"gable\": true|\"gable\": true, \"eaveHeight\": 3|EITHER_OR|/sides/1",
                "\"gable\": true|\"gable\": true, \"above\": [{\"height\": 4, \"gable\": true}]|EITHER_OR|/sides/1",
                "\"gable\": true|\"wall\": true|EITHER_OR|/sides/1",
                "\"id\": \"south\"|\"above\": [{\"height\": 4}]|EITHER_OR|/sides/0/above/0",
                "\"id\": \"south\"|\"above\": [{\"height\": 4, \"gable\": true, \"pitch\": \"2:12\"}]|EITHER_OR|/sides/0/above/0",
                "\"id\": \"south\"|\"above\": [{\"pitch\": \"2:12\"}]|MISSING_MEMBER|/sides/0/above/0",
                "\"id\": \"south\"|\"above\": [{\"height\": \"high\", \"pitch\": \"2:12\"}]|BAD_LENGTH|/sides/0/above/0/height",
                "\"id\": \"south\"|\"overhang\": 11|OUT_OF_RANGE|/sides/0/overhang",
                "\"id\": \"south\"|\"name\": \"south\"|UNKNOWN_MEMBER|/sides/0/name",
                "\"overhang\": 0.4|\"overhang\": -0.1|OUT_OF_RANGE|/overhang",
                "\"pitch\": \"6:12\"|\"pitch\": \"steep\"|BAD_PITCH|/pitch",
                "\"pitch\": \"6:12\"|\"pitch\": \"1001:12\"|OUT_OF_RANGE|/pitch",
                "\"pitch\": \"6:12\",||MISSING_MEMBER|''",
                "[20, 0]|[20]|TOO_FEW|/outline/1",
                "[20, 0]|[20, \"wide\"]|BAD_LENGTH|/outline/1/1",
                "[[4, 4], [8, 4], [8, 8], [4, 8]]|[[4, 4], [8, 4]]|TOO_FEW|/holes/0",
                "\"side\": 2|\"side\": 2000|OUT_OF_RANGE|/sides/2/side",
                "\"footprint\": {|\"plan\": null, \"points\": {}, \"footprint\": {|ROOF_FORM|#/roof"
            })
    void whatCannotBeReadIsRefusedAtItsPlace(String found, String instead, String code, String place) {
        refused(400, HOUSE.replace(found, instead == null ? "" : instead), code, pointer(place));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"side\": 2,|\"side\": 6,|NO_SUCH_SIDE|/sides/2/side",
                "\"hole\": 0|\"hole\": 1|NO_SUCH_SIDE|/sides/3/hole",
                "\"side\": 2,|\"side\": 0,|SIDE_NAMED_TWICE|/sides/2",
                "\"yard\"|\"south\"|DUPLICATE_ID|/sides/3/id",
                "\"yard\"|\"side2\"|DUPLICATE_ID|/sides/3/id",
                "\"pitch\": \"6:12\"|\"pitch\": \"0:12\"|PITCH_EXTREME|/pitch",
                "\"pitch\": \"8:12\"|\"pitch\": {\"rise\": 1000, \"run\": 0.001}|PITCH_EXTREME|/sides/2/pitch",
                "[20, 0], [20, 12]|[20, 12], [20, 0]|RINGS_CROSS|/outline/0",
                "[[4, 4], [8, 4], [8, 8], [4, 8]]|[[24, 4], [28, 4], [28, 8], [24, 8]]|HOLE_OUTSIDE|/holes/0/3",
                "[[4, 4], [8, 4], [8, 8], [4, 8]]|[[4, 4], [4.7, 4], [4.7, 8], [4, 8]]|OVERHANG_TOO_WIDE|/holes/0/0",
                "[20, 0]|[20, 0], [20, 1]|OVERHANGS_IN_LINE|/outline/2",
                "\"id\": \"south\"|\"above\": [{\"height\": 2, \"pitch\": \"2:12\"}]|HEIGHTS_OUT_OF_ORDER|/sides/0/above/0/height",
                "[20, 0]|[2000, 0]|FOOTPRINT_TOO_LARGE|/outline/1",
                "[[14, 1], [15, 1]|[[14, -3], [15, -3]|OPENING_OUTSIDE|/openings/0/outline/0"
            })
    void whatIsNoRoofIsRefusedAtItsPlace(String found, String instead, String code, String place) {
        refused(422, HOUSE.replace(found, instead), code, pointer(place));
    }

    private static String pointer(String place) {
        return place.startsWith("#") ? place : "#/roof/footprint" + place;
    }

    private static JsonNode refused(int status, String request, String code, String pointer) {
        Answer refused = Door.post("/v1/roofs", request);
        assertThat(refused.status()).as(refused.text()).isEqualTo(status);
        for (JsonNode fault : refused.json().path("errors")) {
            if (fault.path("code").asText().equals(code)
                    && fault.path("pointer").asText().equals(pointer)) {
                return fault;
            }
        }
        throw new AssertionError("no " + code + " at " + pointer + " in " + refused.text());
    }

    @Test
    void aFootprintOfGablesIsRefused() {
        String gables = SHED.replace("{\"side\": 1,", "{\"side\": 0, \"gable\": true}, {\"side\": 1,");
        JsonNode fault = refused(422, gables, "ROOF_NEVER_CLOSES", "#/roof/footprint");
        assertThat(fault.path("detail").asText()).contains("pitch");
    }

    @Test
    void refusalsAreToldInTheCallersWordsAndUnits() {
        JsonNode steep = refused(
                422,
                HOUSE.replace("\"pitch\": \"8:12\"", "\"pitch\": \"1000:12\""),
                "PITCH_EXTREME",
                "#/roof/footprint/sides/2/pitch");
        assertThat(steep.path("actual").toString()).isEqualTo("{\"value\":1000,\"unit\":\"per 12\"}");
        assertThat(steep.path("limit").toString()).isEqualTo("{\"value\":600,\"unit\":\"per 12\"}");
        String crossing = HOUSE.replace("[20, 0], [20, 12]", "[20, 12], [20, 0]");
        assertThat(refused(422, crossing, "RINGS_CROSS", "#/roof/footprint/outline/0")
                        .path("detail")
                        .asText())
                .startsWith("\"south\" and side 2 cross or touch.");
        String height = HOUSE.replace("\"id\": \"south\"", "\"above\": [{\"height\": 2, \"pitch\": \"2:12\"}]");
        JsonNode low = refused(422, height, "HEIGHTS_OUT_OF_ORDER", "#/roof/footprint/sides/0/above/0/height");
        assertThat(low.path("actual").toString()).isEqualTo("{\"value\":2,\"unit\":\"m\"}");
        assertThat(low.path("limit").toString()).isEqualTo("{\"value\":2.5,\"unit\":\"m\"}");
    }

    @Test
    void asManySidesAsAreReadAreAnsweredAndNoMore() {
        Answer most = Door.post("/v1/roofs", round(Limits.FOOTPRINT_SIDES));
        assertThat(most.status()).as(most.text()).isEqualTo(200);
        assertThat(most.json().at("/roof/planes")).hasSize(Limits.FOOTPRINT_SIDES);
        refused(400, round(Limits.FOOTPRINT_SIDES + 1), "TOO_MANY", "#/roof/footprint/outline");
        String holed = round(Limits.FOOTPRINT_SIDES)
                .replace("\"pitch\"", "\"holes\": [[[499, 500], [501, 500], [500, 501]]], \"pitch\"");
        refused(400, holed, "TOO_MANY", "#/roof/footprint");
    }

    /** Sides of about 0.8 m round a circle; where they meet, slopes are narrower than the usual tolerance. */
    private static String round(int sides) {
        List<String> corners = new ArrayList<>();
        for (int i = 0; i < sides; i++) {
            double turn = 2 * Math.PI * i / sides;
            corners.add("[%.3f, %.3f]".formatted(250 + 250 * Math.cos(turn), 250 + 250 * Math.sin(turn)));
        }
        return "{\"units\": {\"length\": \"m\", \"area\": \"m2\", \"mass\": \"kg\"}, \"tolerance\": 0.00001, \"roof\": {\"footprint\": {\"outline\": "
                + corners + ", \"pitch\": \"1:12\"}}}";
    }

    @ParameterizedTest
    @ValueSource(strings = {"layouts", "takeoffs", "trims"})
    void whereverARoofIsTakenAFootprintIs(String operation) {
        Answer answer = Door.post("/v1/" + operation, HOUSE.replaceFirst("\\{", "{\"panel\": {\"cover\": 0.4},"));
        assertThat(answer.status()).as(answer.text()).isEqualTo(200);
    }

    @Test
    void aValleyOfAFootprintIsNamedByItsId() {
        Answer answer =
                Door.post("/v1/valleys", HOUSE.replaceFirst("\\{", "{\"panel\": {\"cover\": 0.4}, \"edge\": \"V1\","));
        assertThat(answer.status()).as(answer.text()).isEqualTo(200);
        assertThat(answer.json().at("/used/defaults").toString()).doesNotContain("footprint");
    }

    private static JsonNode read(String request) {
        Answer answer = Door.post("/v1/roofs", request);
        assertThat(answer.status()).as(answer.text()).isEqualTo(200);
        return answer.json();
    }

    private static ObjectNode editable(String request) {
        return (ObjectNode) read(request).at("/roof/editable");
    }

    private static Map<String, JsonNode> byId(JsonNode planes) {
        Map<String, JsonNode> byId = new TreeMap<>();
        planes.forEach(plane -> byId.put(plane.path("id").asText(), plane));
        return byId;
    }

    private static List<JsonNode> edges(JsonNode roof, String kind) {
        List<JsonNode> edges = new ArrayList<>();
        for (JsonNode edge : roof.path("edges")) {
            if (edge.path("kind").asText().equals(kind)) {
                edges.add(edge);
            }
        }
        return edges;
    }

    /** What edges there are, whatever their order, their names and which plane comes first. */
    private static List<String> edges(JsonNode roof) {
        List<String> edges = new ArrayList<>();
        for (JsonNode edge : roof.path("edges")) {
            Set<String> sides = new TreeSet<>();
            edge.path("sides").forEach(side -> sides.add(side.toString()));
            Set<String> ends = new TreeSet<>(
                    List.of(edge.path("from").toString(), edge.path("to").toString()));
            edges.add("%s %s %s %s %s %s"
                    .formatted(
                            edge.path("kind"),
                            ends,
                            edge.path("length"),
                            edge.path("slopeDeg"),
                            edge.path("bendDeg"),
                            sides));
        }
        edges.sort(null);
        return edges;
    }
}
