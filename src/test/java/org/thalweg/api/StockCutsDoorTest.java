package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.thalweg.api.Door.Answer;

/** Stock cut through the door: bars, rack and coil, and what is no request for it. */
@QuarkusTest
class StockCutsDoorTest {

    private static final double LAST_INCH = 1.001e-4;
    private static final String BAR = "{\"id\": \"bar\", \"length\": 120}";
    private static final String COIL = "{\"id\": \"coil\", \"kind\": \"coil\"}";

    private static Answer posted(String stock, String pieces, String more) {
        return Door.post("/v1/stock-cuts", """
                {"units": {"length": "in", "area": "ft2", "mass": "lb"}, "stock": [%s], "pieces": [%s]%s}
                """.formatted(stock, pieces, more.isEmpty() ? "" : ", " + more));
    }

    private static JsonNode good(Answer answer) {
        assertThat(answer.status()).as(answer.text()).isEqualTo(200);
        return answer.json();
    }

    private static String piece(String id, double length, int count) {
        return "{\"id\": \"%s\", \"length\": %s, \"count\": %d}".formatted(id, length, count);
    }

    private static ObjectNode example(String name) throws IOException {
        return (ObjectNode)
                Door.json(Files.readString(Path.of("openapi", "examples", "stock-cuts-" + name + ".request.json")));
    }

    // Bars.

    @Test
    void piecesAreMarkedFromTheHookedEndWithAKerfBetween() {
        JsonNode answer = good(posted(BAR, piece("a", 43, 2) + "," + piece("b", 30, 1), "\"kerf\": \"1/8\\\"\""));
        assertThat(answer.at("/bars/0/pieces").toString())
                .isEqualTo(
                        "[{\"id\":\"a\",\"from\":{\"value\":0,\"tape\":\"0\\\"\"},\"to\":{\"value\":43,\"tape\":\"43\\\"\"}},"
                                + "{\"id\":\"a\",\"from\":{\"value\":43.125,\"tape\":\"43 1/8\\\"\"},\"to\":{\"value\":86.125,\"tape\":\"86 1/8\\\"\"}},"
                                + "{\"id\":\"b\",\"from\":{\"value\":86.25,\"tape\":\"86 1/4\\\"\"},\"to\":{\"value\":116.25,\"tape\":\"116 1/4\\\"\"}}]");
        assertThat(answer.at("/bars/0/kerfs").asDouble()).isEqualTo(0.375);
        assertThat(answer.at("/bars/0/offcut/value").asDouble()).isEqualTo(3.625);
        assertThat(answer.at("/bars/0/kept").asBoolean()).isFalse();
        assertThat(answer.path("proven").asBoolean()).isTrue();
    }

    /** Every bar of the example adds up, and every piece is on one or is listed as left over. */
    @Test
    void piecesKerfsAndOffcutAreTheBar() throws IOException {
        ObjectNode request = example("boathouse");
        JsonNode answer = good(Door.post("/v1/stock-cuts", request.toString()));
        Map<String, Integer> left = new LinkedHashMap<>();
        request.path("pieces")
                .forEach(piece ->
                        left.put(piece.path("id").asText(), piece.path("count").asInt(1)));
        for (JsonNode bar : answer.path("bars")) {
            double sum = bar.path("kerfs").asDouble() + bar.at("/offcut/value").asDouble();
            for (JsonNode piece : bar.path("pieces")) {
                sum += piece.at("/to/value").asDouble()
                        - piece.at("/from/value").asDouble();
                left.merge(piece.path("id").asText(), -bar.path("count").asInt(), Integer::sum);
            }
            assertThat(sum).isCloseTo(bar.at("/length/value").asDouble(), within(LAST_INCH));
        }
        assertThat(answer.path("bars")).isNotEmpty();
        assertThat(left.values()).containsOnly(0);
    }

    @Test
    void aSingleLengthCostsOneUnlessItSaysOtherwise() {
        JsonNode answer = good(posted(BAR, piece("half", 60, 5), ""));
        assertThat(answer.path("cost").asLong()).isEqualTo(3);
        assertThat(answer.path("barCount").asInt()).isEqualTo(3);
        assertThat(answer.at("/used/stock/0").toString())
                .isEqualTo("{\"id\":\"bar\",\"kind\":\"bar\",\"length\":120,\"cost\":1}");
    }

    /** 10 ft and 12 ft are as 5 to 6; two pieces of 70 in take one 12 ft length each way they are cut but for 140 in. */
    @Test
    void withoutCostsTheLeastMetalIsCut() {
        JsonNode answer = good(posted(
                "{\"id\": \"ten\", \"length\": \"10'\"}, {\"id\": \"twelve\", \"length\": \"12'\"}",
                piece("a", 70, 3),
                ""));
        assertThat(answer.at("/used/stock/0/cost").asLong()).isEqualTo(5);
        assertThat(answer.at("/used/stock/1/cost").asLong()).isEqualTo(6);
        assertThat(answer.path("cost").asLong()).isEqualTo(11);
    }

    @Test
    void whatLiesOnTheRackIsCutFirstAndOnlyOnceUnlessItSaysMore() {
        JsonNode answer = good(posted(
                "{\"id\": \"new\", \"length\": 120, \"cost\": 4000}, {\"id\": \"rest\", \"kind\": \"rack\", \"length\": 50}",
                piece("a", 48, 3),
                ""));
        assertThat(answer.path("bars").findValuesAsText("stock")).containsExactly("new", "rest");
        assertThat(answer.path("cost").asLong()).isEqualTo(4000);
        assertThat(answer.at("/used/stock/1/count").asLong()).isEqualTo(1);
        assertThat(answer.at("/bars/0/value").asLong()).isEqualTo(800);
        assertThat(answer.path("keptValue").asLong()).isEqualTo(800);
    }

    @Test
    void aPieceLongerThanEveryBarIsFoundAndTheOthersAreCut() {
        JsonNode answer = good(posted(BAR, piece("long", 120.0625, 2) + "," + piece("a", 120, 1), ""));
        assertThat(answer.path("unplaced").toString())
                .isEqualTo("[{\"id\":\"long\",\"count\":2,\"reason\":\"tooLong\"}]");
        assertThat(answer.path("barCount").asInt()).isEqualTo(1);
        assertThat(answer.path("proven").asBoolean()).isTrue();
        assertThat(answer.at("/certificate/prices").findValuesAsText("count")).containsExactly("1");
        JsonNode finding = answer.at("/findings/0");
        assertThat(finding.path("code").asText()).isEqualTo("PIECE_TOO_LONG");
        assertThat(finding.path("place").toString())
                .isEqualTo("{\"kind\":\"piece\",\"id\":\"long\",\"pointer\":\"#/pieces/0\"}");
        assertThat(finding.path("message").asText())
                .startsWith("\"long\" is 120.0625 in long and the longest bar 120 in.");
    }

    @Test
    void tooFewBarsAreFound() {
        JsonNode answer = good(posted("{\"id\": \"rest\", \"kind\": \"rack\", \"length\": 50}", piece("a", 48, 3), ""));
        assertThat(answer.path("unplaced").toString())
                .isEqualTo("[{\"id\":\"a\",\"count\":2,\"reason\":\"tooFewBars\"}]");
        assertThat(answer.path("proven").asBoolean()).isFalse();
        assertThat(answer.at("/findings/0/code").asText()).isEqualTo("TOO_FEW_BARS");
    }

    @Test
    void piecesThatBelongTogetherComeFromOneBarAndThoseApartDoNot() {
        String two = piece("a", 20, 2) + "," + piece("b", 30, 2);
        JsonNode together = good(posted(BAR, two + "," + piece("c", 70, 1), "\"together\": [[\"a\", \"b\"]]"));
        assertThat(together.at("/bars").findValuesAsText("id")).containsExactly("b", "b", "a", "a", "c");
        assertThat(together.at("/certificate/prices/0/pieces").toString()).isEqualTo("[\"b\",\"a\"]");
        JsonNode apart = good(posted(BAR, two, "\"apart\": [[\"a\", \"b\"]]"));
        assertThat(apart.path("barCount").asInt()).isEqualTo(4);
        assertThat(apart.at("/certificate/prices/0/apart").asInt(-1)).isZero();
        assertThat(apart.path("proven").asBoolean()).isTrue();
        JsonNode tooLong = good(posted(BAR, two + "," + piece("c", 70, 1), "\"together\": [[\"a\", \"b\", \"c\"]]"));
        assertThat(tooLong.at("/findings/0/actual/value").asDouble()).isEqualTo(170);
    }

    /** At 45° an end of a piece 6 in wide reaches 6 in further. */
    @Test
    void aMitredPieceTakesASquareBlankOfABar() {
        String mitred = "{\"id\": \"a\", \"length\": 40, \"leftMitreDeg\": -45, \"rightMitreDeg\": 45}";
        JsonNode answer = good(posted(BAR, mitred, "\"width\": 6"));
        assertThat(answer.at("/bars/0/pieces/0/to/value").asDouble()).isCloseTo(52, within(LAST_INCH));
    }

    @Test
    void aDeadlineOfNothingGetsTheFirstPlanAndItsBound() throws IOException {
        ObjectNode request = example("boathouse").put("deadlineMs", 0);
        JsonNode answer = good(Door.post("/v1/stock-cuts", request.toString()));
        assertThat(answer.path("late").asBoolean()).isFalse();
        assertThat(answer.at("/used/deadlineMs").asInt(-1)).isZero();
        assertThat(answer.path("gap").asLong()).isPositive();
        assertThat(BuyersCheck.bound(request, answer))
                .isEqualTo(answer.path("lowerBound").asLong());
    }

    @ParameterizedTest
    @ValueSource(strings = {"boathouse", "hip"})
    void theSameRequestGetsTheSameBytes(String name) throws IOException {
        String request = example(name).toString();
        assertThat(Door.post("/v1/stock-cuts", request).text())
                .isEqualTo(Door.post("/v1/stock-cuts", request).text());
    }

    /** 200 m in steps of 3.125 micrometres, and lengths that share no larger step: no table holds them. */
    @Test
    void lengthsFarTooFineForATableStillGetAPlanAndItsBound() {
        StringBuilder pieces = new StringBuilder(piece("p0", 700.001, 2));
        for (int i = 1; i < 20; i++) {
            pieces.append(",").append(piece("p" + i, 700 + 61.003 * i, 1 + i % 4));
        }
        JsonNode answer = good(posted("{\"id\": \"bar\", \"length\": 7874}", pieces.toString(), "\"deadlineMs\": 20"));
        assertThat(answer.path("unplaced")).isEmpty();
        assertThat(answer.path("gap").asLong()).isBetween(0L, 1L);
        assertThat(answer.path("lowerBound").asLong()).isPositive();
    }

    @Test
    void aMillionPiecesAreTooMany() {
        Answer answer = posted(BAR, piece("a", 1, 100_000) + "," + piece("b", 1, 100_000), "");
        assertThat(answer.isProblem(400).errors()).containsExactly("TOO_MANY #/pieces");
        assertThat(answer.json().at("/errors/0/actual/value").asInt()).isEqualTo(200_000);
        assertThat(posted(BAR, piece("a", 1, 1_000_000), "").isProblem(400).errors())
                .containsExactly("OUT_OF_RANGE #/pieces/0/count");
    }

    // Coil.

    /** Two panels of 60 in, one leaning right at its right end by 10 in, the other at its left: head to head they lose nothing. */
    @Test
    void twoPanelsThatLeanAlikeShareACut() {
        JsonNode coil = good(posted(
                        COIL,
                        "{\"id\": \"b\", \"length\": 60, \"leftOffset\": 10}, {\"id\": \"a\", \"length\": 60, \"rightOffset\": 10}",
                        "\"width\": 12"))
                .path("coil");
        assertThat(coil.path("run").findValuesAsText("id")).containsExactly("a", "b");
        assertThat(coil.at("/orderedLength/value").asDouble()).isEqualTo(120);
        assertThat(coil.path("panelLength").asDouble()).isEqualTo(120);
        assertThat(coil.at("/squareLength/value").asDouble()).isEqualTo(130);
        assertThat(coil.at("/layingOrder/length/value").asDouble()).isEqualTo(130);
        assertThat(coil.at("/layingOrder/cost").asDouble()).isEqualTo(10);
        assertThat(coil.at("/paired/length/value").asDouble()).isEqualTo(120);
        assertThat(coil.path("orderedArea").asDouble()).isEqualTo(10);
        assertThat(coil.path("materialArea").asDouble()).isEqualTo(10);
        assertThat(coil.at("/run/1/upper").toString())
                .isEqualTo("{\"from\":{\"value\":70,\"tape\":\"70\\\"\"},\"to\":{\"value\":120,\"tape\":\"120\\\"\"}}");
    }

    /** Both lean at their right ends: only turned end for end can one lie against the other. */
    @ParameterizedTest
    @CsvSource({"allowed, 130", "forbidden, 140"})
    void handedPanelsAreNotTurned(String turning, double length) {
        String leaning = "{\"id\": \"a\", \"length\": 60, \"rightOffset\": 10, \"count\": 2}";
        JsonNode answer = good(posted(COIL, leaning, "\"turning\": \"%s\"".formatted(turning)));
        assertThat(answer.at("/coil/orderedLength/value").asDouble()).isEqualTo(length);
        assertThat(answer.path("proven").asBoolean()).isTrue();
        assertThat(answer.has("cost")).isFalse();
    }

    @Test
    void ribsAreHandedUnlessItSaysOtherwise() {
        JsonNode used = good(posted(COIL, piece("a", 60, 2), "")).path("used");
        assertThat(used.path("turning").asText()).isEqualTo("forbidden");
        assertThat(used.path("defaults").toString()).isEqualTo("[\"#/turning\"]");
    }

    // What is no request.

    static Stream<String[]> refused() {
        String a = piece("a", 30, 1);
        return Stream.of(
                new String[] {"", a, "", "TOO_FEW #/stock"},
                new String[] {BAR, "", "", "TOO_FEW #/pieces"},
                new String[] {"{\"id\": \"bar\"}", a, "", "MISSING_MEMBER #/stock/0"},
                new String[] {"{\"id\": \"bar\", \"length\": 0}", a, "", "OUT_OF_RANGE #/stock/0/length"},
                new String[] {"{\"id\": \"bar\", \"length\": 120, \"count\": 0}", a, "", "OUT_OF_RANGE #/stock/0/count"
                },
                new String[] {"{\"id\": \"bar\", \"length\": 120, \"cost\": -1}", a, "", "OUT_OF_RANGE #/stock/0/cost"},
                new String[] {"{\"id\": \"bar\", \"length\": 120, \"cost\": 0}", a, "", "MISSING_MEMBER #/stock/0"},
                new String[] {"{\"id\": \"bar\", \"length\": 120, \"cost\": 12.5}", a, "", "WRONG_TYPE #/stock/0/cost"},
                new String[] {
                    "{\"id\": \"x\", \"length\": 120, \"cost\": 5}, {\"id\": \"y\", \"length\": 60}",
                    a,
                    "",
                    "MISSING_MEMBER #/stock/1"
                },
                new String[] {
                    "{\"id\": \"bar\", \"kind\": \"plate\", \"length\": 1}", a, "", "UNKNOWN_VALUE #/stock/0/kind"
                },
                new String[] {BAR + "," + COIL, a, "", "EITHER_OR #/stock"},
                new String[] {"{\"id\": \"c\", \"kind\": \"coil\", \"length\": 9}", a, "", "EITHER_OR #/stock/0"},
                new String[] {COIL, a, "\"kerf\": 0.125", "EITHER_OR #/kerf"},
                new String[] {COIL, a, "\"apart\": [[\"a\"]]", "EITHER_OR #/apart"},
                new String[] {COIL, piece("a", 30, 5001), "", "TOO_MANY #/pieces"},
                new String[] {BAR, piece("a", 0, 1), "", "OUT_OF_RANGE #/pieces/0/length"},
                new String[] {BAR, piece("a", -3, 1), "", "OUT_OF_RANGE #/pieces/0/length"},
                new String[] {BAR, piece("a", 1e9, 1), "", "OUT_OF_RANGE #/pieces/0/length"},
                new String[] {BAR, piece("a", 30, 0), "", "OUT_OF_RANGE #/pieces/0/count"},
                new String[] {BAR, piece("a", 30, -1), "", "OUT_OF_RANGE #/pieces/0/count"},
                new String[] {BAR, "{\"id\": \"a\", \"length\": \"a lot\"}", "", "BAD_LENGTH #/pieces/0/length"},
                new String[] {BAR, a, "\"kerf\": -1", "OUT_OF_RANGE #/kerf"},
                new String[] {BAR, a, "\"keepableOffcut\": 0", "OUT_OF_RANGE #/keepableOffcut"},
                new String[] {BAR, a, "\"deadlineMs\": -1", "OUT_OF_RANGE #/deadlineMs"},
                new String[] {BAR, a, "\"deadlineMs\": 5001", "OUT_OF_RANGE #/deadlineMs"},
                new String[] {BAR, a, "\"turning\": \"maybe\"", "UNKNOWN_VALUE #/turning"},
                new String[] {BAR, a, "\"together\": [[\"b\"]]", "UNKNOWN_VALUE #/together/0/0"},
                new String[] {BAR, a, "\"together\": [[]]", "TOO_FEW #/together/0"},
                new String[] {BAR, a, "\"together\": [[\"a\"]], \"apart\": [[\"a\"]]", "EITHER_OR #/apart/0/0"},
                new String[] {BAR, a, "\"apart\": [[\"a\"], [\"a\"]]", "EITHER_OR #/apart/1/0"},
                new String[] {COIL, "{\"id\": \"a\", \"length\": 30, \"leftMitreDeg\": 30}", "", "MISSING_MEMBER #"},
                new String[] {
                    COIL,
                    "{\"id\": \"a\", \"length\": 30, \"leftMitreDeg\": 30, \"leftOffset\": 1}",
                    "\"width\": 9",
                    "EITHER_OR #/pieces/0"
                },
                new String[] {COIL, "{\"id\": \"a\", \"length\": 30, \"leftOffset\": 31}", "", "OUT_OF_RANGE #/pieces/0"
                });
    }

    @ParameterizedTest
    @MethodSource("refused")
    void whatCantBeCutIsRefusedWithItsPlace(String stock, String pieces, String more, String error) {
        assertThat(posted(stock, pieces, more).isProblem(400).errors()).containsExactly(error);
    }

    @Test
    void namesStandForOneThing() {
        Answer answer = posted(BAR + "," + BAR, piece("a", 30, 1) + "," + piece("a", 20, 1), "");
        assertThat(answer.isProblem(422).errors())
                .containsExactly("DUPLICATE_ID #/stock/1/id", "DUPLICATE_ID #/pieces/1/id");
    }

    @Test
    void everythingThatIsWrongIsToldAtOnce() {
        Answer answer = posted("{\"id\": \"bar\", \"length\": 0}", piece("a", 0, 1), "\"kerf\": 9");
        assertThat(answer.isProblem(400).errors())
                .containsExactly(
                        "OUT_OF_RANGE #/stock/0/length", "OUT_OF_RANGE #/pieces/0/length", "OUT_OF_RANGE #/kerf");
    }
}
