package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thalweg.api.Door.Answer;

/** Underlayment, ice barrier and everything that seals, through the door. */
@QuarkusTest
class UnderlaymentTest {

    /** Three panels of 18 in on a plane 54 in wide, 8 ft up the level, 6:12: 107.3313 in up the slope. */
    private static String shed(String members) {
        return """
                {"units": {"length": "in", "area": "ft2", "mass": "lb"},
                 "roof": {"points": {"A": [0, 0, 0], "B": [54, 0, 0], "C": [54, 96, 48], "D": [0, 96, 48]},
                          "planes": [{"id": "shed", "outline": ["A", "B", "C", "D"]}]},
                 "panel": {"cover": 18}%s}
                """.formatted(members.isEmpty() ? "" : ", " + members);
    }

    /** The same in millimetres. */
    private static String shedMetric(String members) {
        return shed(members)
                .replace("\"in\"", "\"mm\"")
                .replace("\"ft2\"", "\"m2\"")
                .replace("[54, 0, 0]", "[1371.6, 0, 0]")
                .replace("[54, 96, 48]", "[1371.6, 2438.4, 1219.2]")
                .replace("[0, 96, 48]", "[0, 2438.4, 1219.2]")
                .replace("\"cover\": 18", "\"cover\": 457.2");
    }

    private static double total(JsonNode answer, String item) {
        for (JsonNode total : answer.path("totals")) {
            if (total.path("item").asText().equals(item)) {
                return total.path("quantity").asDouble();
            }
        }
        throw new AssertionError("no total of " + item);
    }

    private static List<JsonNode> runs(JsonNode answer, String kind, String item) {
        List<JsonNode> runs = new ArrayList<>();
        answer.path("sealing").forEach(run -> {
            if (run.path("kind").asText().equals(kind)
                    && run.path("item").asText().equals(item)) {
                runs.add(run);
            }
        });
        return runs;
    }

    /** (107.3313 − 2) / 34 = 3.1: four courses of 54 in, 216 in of a roll of 864. */
    @Test
    void withoutAWordOfItEveryPlaneIsCoveredFromUsualRolls() {
        JsonNode answer = Door.post("/v1/layouts", shed("")).json();
        JsonNode plane = answer.at("/underlayment/planes/0");
        assertThat(plane.path("plane").asText()).isEqualTo("shed");
        assertThat(plane.path("courses")).hasSize(4);
        assertThat(plane.at("/courses/3/from/value").asDouble()).isEqualTo(102);
        assertThat(plane.at("/courses/3/to/value").asDouble()).isEqualTo(138);
        assertThat(plane.at("/courses/0/runs/0/sheets/0/value").asDouble()).isEqualTo(54);
        JsonNode order = answer.at("/underlayment/order");
        assertThat(order.path("rollCount").asInt()).isEqualTo(1);
        assertThat(order.path("rolledOut").asDouble()).isEqualTo(216);
        assertThat(order.path("area").asDouble()).isEqualTo(54);
        assertThat(order.path("rest").asDouble()).isEqualTo(648);
        assertThat(order.has("nearestLaps")).isFalse();
        assertThat(answer.at("/underlayment/iceBarrier")).isEmpty();
        assertThat(answer.at("/underlayment").has("iceBarrierOrder")).isFalse();
        assertThat(answer.at("/used/underlayment/sideLap").asDouble()).isEqualTo(2);
        assertThat(answer.at("/used/underlayment").has("iceBarrier")).isFalse();
        assertThat(answer.at("/used/defaults").toString())
                .contains("#/underlayment/endLapsApart", "#/sealing/rivetSpacing")
                .doesNotContain("iceBarrier");
        assertThat(total(answer, "underlaymentRolls")).isEqualTo(1);
    }

    /** IRC R905.1.2: (12 + 24) in level are 40.2492 in at 6:12; courses of 36 in, 4 of them lapped, so two. */
    @Test
    void anOverhangBringsAnIceBarrier() {
        JsonNode answer = Door.post("/v1/layouts", shed("\"underlayment\": {\"iceBarrier\": {\"overhang\": 12}}"))
                .json();
        assertThat(answer.at("/underlayment/iceBarrier")).hasSize(1);
        JsonNode strip = answer.at("/underlayment/iceBarrier/0");
        assertThat(strip.path("edge").asText()).isEqualTo("E1");
        assertThat(strip.at("/width/value").asDouble()).isCloseTo(40.2492, within(1.001e-4));
        assertThat(strip.path("courses")).hasSize(2);
        assertThat(strip.path("length").asDouble()).isEqualTo(108);
        assertThat(answer.at("/underlayment/iceBarrierOrder/rollCount").asInt()).isEqualTo(1);
        assertThat(answer.at("/used/underlayment/iceBarrier/insideWall").asDouble())
                .isEqualTo(24);
        assertThat(total(answer, "iceBarrierRolls")).isEqualTo(1);
    }

    /** Whatever the unit, the same figures give the same sheets. */
    @Test
    void inchesAndMillimetresAreOneRoof() {
        String inches = "\"underlayment\": {\"rollWidth\": 30, \"rollLength\": 100, \"sideLap\": 3, \"endLap\": 5,"
                + " \"endLapsApart\": 12, \"iceBarrier\": {\"overhang\": 10, \"insideWall\": 20, \"rollWidth\": 20,"
                + " \"rollLength\": 90, \"sideLap\": 4, \"endLap\": 6}}";
        String metric =
                "\"underlayment\": {\"rollWidth\": 762, \"rollLength\": 2540, \"sideLap\": 76.2, \"endLap\": 127,"
                        + " \"endLapsApart\": 304.8, \"iceBarrier\": {\"overhang\": 254, \"insideWall\": 508, \"rollWidth\": 508,"
                        + " \"rollLength\": 2286, \"sideLap\": 101.6, \"endLap\": 152.4}}";
        JsonNode here = Door.post("/v1/layouts", shed(inches)).json().path("underlayment");
        JsonNode there = Door.post("/v1/layouts", shedMetric(metric)).json().path("underlayment");
        assertThat(there.at("/order/rollCount")).isEqualTo(here.at("/order/rollCount"));
        for (String figure :
                List.of("/order/rolledOut", "/order/rest", "/iceBarrierOrder/rolledOut", "/order/setAside")) {
            assertThat(there.at(figure).asDouble())
                    .as(figure)
                    .isCloseTo(here.at(figure).asDouble() * 25.4, within(0.01));
        }
        for (String list : List.of("/planes/0/courses", "/iceBarrier/0/courses")) {
            assertThat(there.at(list)).hasSize(here.at(list).size()).isNotEmpty();
        }
    }

    /** Three panel ends at the peak: three closures of 18 in, tape under and above each. */
    @Test
    void closuresAreListedPanelByPanelWithTheirTape() {
        JsonNode answer = Door.post("/v1/layouts", shed("")).json();
        List<JsonNode> closures = runs(answer, "closure", "closure");
        assertThat(closures).hasSize(3);
        assertThat(closures.get(1).path("panel").asText()).isEqualTo("shed-2");
        assertThat(closures.get(1).path("plane").asText()).isEqualTo("shed");
        assertThat(closures.get(1).at("/length/value").asDouble()).isEqualTo(18);
        assertThat(runs(answer, "closure", "tape"))
                .hasSize(3)
                .allSatisfy(run -> assertThat(run.path("count").asInt()).isEqualTo(2));
        assertThat(total(answer, "closures")).isEqualTo(3);
        assertThat(total(answer, "closureLength")).isEqualTo(54);
        assertThat(total(answer, "sealantTape")).isEqualTo(108);
        assertThat(total(answer, "sealantCartridges")).isZero();
        assertThat(answer.at("/used/sealing/closureTapeCount").asInt()).isEqualTo(2);
    }

    @Test
    void aCallersCountsWin() {
        JsonNode answer = Door.post("/v1/layouts", shed("\"sealing\": {\"closureTapeCount\": 3, \"rivetSpacing\": 3}"))
                .json();
        assertThat(total(answer, "sealantTape")).isEqualTo(162);
        assertThat(answer.at("/used/sealing/rivetSpacing").asDouble()).isEqualTo(3);
        assertThat(answer.at("/used/defaults").toString())
                .doesNotContain("closureTapeCount", "rivetSpacing")
                .contains("#/sealing/panLapBeadCount");
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(delimiter = '|', textBlock = """
            "underlayment": {"rollWidth": 0}                | OUT_OF_RANGE #/underlayment/rollWidth
            "underlayment": {"rollWidth": 36, "sideLap": 33} | OUT_OF_RANGE #/underlayment/sideLap
            "underlayment": {"rollLength": "60 feet 2"}     | BAD_LENGTH #/underlayment/rollLength
            "underlayment": {"endLap": 40}                  | OUT_OF_RANGE #/underlayment/endLap
            "underlayment": {"iceBarrier": {}}              | MISSING_MEMBER #/underlayment/iceBarrier
            "underlayment": {"iceBarrier": {"overhang": -1}} | OUT_OF_RANGE #/underlayment/iceBarrier/overhang
            "underlayment": {"width": 36}                   | UNKNOWN_MEMBER #/underlayment/width
            "sealing": {"closureTapeCount": 1.5}            | OUT_OF_RANGE #/sealing/closureTapeCount
            "sealing": {"panLapBeadCount": 7}               | OUT_OF_RANGE #/sealing/panLapBeadCount
            "sealing": {"beadPerCartridge": 0}              | OUT_OF_RANGE #/sealing/beadPerCartridge
            """)
    void whatDoesNotFitIsToldWithItsPlace(String members, String error) {
        Answer answer = Door.post("/v1/layouts", shed(members)).isProblem(400);
        assertThat(answer.errors()).containsExactly(error);
    }

    /** A thousand yards of roof, three hundred up the slope: panels are few, sheets 50 in longer than their laps are not. */
    @Test
    void moreSheetsThanOneRequestMayHaveAreRefused() {
        String wide = shed("\"underlayment\": {\"rollWidth\": 8, \"sideLap\": 4, \"rollLength\": 80, \"endLap\": 30}")
                .replace("\"cover\": 18", "\"cover\": 78, \"longest\": 7000")
                .replace("54,", "36000,")
                .replace("96,", "9600,")
                .replace("48]", "4800]");
        Answer answer = Door.post("/v1/layouts", wide).isProblem(422);
        assertThat(answer.errors()).containsExactly("TOO_MANY_SHEETS #/roof");
    }
}
