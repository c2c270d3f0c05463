package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.thalweg.api.Door.Answer;

/**
 * Pans, trims, cleats and panels of a job cut from stock. What is cut is what the job's own lists say, and the plan is as good
 * as the one that {@code /v1/stock-cuts} makes of those pieces.
 */
@QuarkusTest
class SheetCutsTest {

    /** Lengths are answered to a thousandth of a millimetre, and a few of them are added here. */
    private static final double LAST_DIGITS = 0.02;

    private static ObjectNode dormer() throws IOException {
        return (ObjectNode) Door.json(Files.readString(Path.of("openapi", "examples", "takeoffs-dormer.request.json")));
    }

    /** The roof of another example, cut from the same stock. */
    private static ObjectNode house(String name) throws IOException {
        ObjectNode request = (ObjectNode)
                Door.json(Files.readString(Path.of("openapi", "examples", "layouts-" + name + ".request.json")));
        request.set("ordering", dormer().path("ordering"));
        request.set("cutting", dormer().path("cutting"));
        return request;
    }

    private static JsonNode good(String path, JsonNode request) {
        Answer answer = Door.post(path, request.toString());
        assertThat(answer.status()).as(answer.text()).isEqualTo(200);
        return answer.json();
    }

    /** Lengths of the pieces the lists of a layout tell, by item and width, by mark. */
    private static Map<String, Map<String, Double>> listed(JsonNode answer) {
        Map<String, Map<String, Double>> pieces = new TreeMap<>();
        for (JsonNode trim : answer.path("trims")) {
            Map<String, Double> of = pieces.computeIfAbsent(
                    "trim " + Math.round(trim.at("/flatWidth/value").asDouble()), key -> new TreeMap<>());
            trim.path("pieces")
                    .forEach(piece -> of.put(
                            piece.path("mark").asText(),
                            piece.at("/length/value").asDouble()));
        }
        for (JsonNode valley : answer.path("valleys")) {
            Map<String, Double> of = pieces.computeIfAbsent(
                    "valleyPan " + answer.at("/used/valleyPan/coilWidth").asInt(), key -> new TreeMap<>());
            valley.path("pieces")
                    .forEach(piece -> of.put(
                            piece.path("mark").asText(),
                            piece.at("/length/value").asDouble()));
        }
        return pieces;
    }

    private static String key(JsonNode cut) {
        return cut.path("item").asText() + " "
                + Math.round(cut.at("/width/value").asDouble());
    }

    private static Map<String, Double> cutPieces(JsonNode cut) {
        Map<String, Double> pieces = new TreeMap<>();
        for (JsonNode bar : cut.path("bars")) {
            for (JsonNode piece : bar.path("pieces")) {
                double length = piece.at("/to/value").asDouble()
                        - piece.at("/from/value").asDouble();
                pieces.put(piece.path("id").asText(), length);
            }
        }
        return pieces;
    }

    @Test
    void everyListedPieceIsCutOnceAndNoOther() throws IOException {
        JsonNode answer = good("/v1/layouts", dormer());
        Map<String, Map<String, Double>> listed = listed(answer);
        for (JsonNode cut : answer.path("cuts")) {
            if (cut.path("item").asText().equals("cleat")) {
                continue;
            }
            Map<String, Double> wanted = listed.getOrDefault(key(cut), new TreeMap<>());
            listed.remove(key(cut));
            Map<String, Double> pieces = cutPieces(cut);
            cut.path("unplaced").forEach(left -> wanted.remove(left.path("id").asText()));
            assertThat(pieces.keySet()).as(key(cut)).isEqualTo(wanted.keySet());
            pieces.forEach((mark, length) ->
                    assertThat(length).as(mark).isCloseTo(wanted.getOrDefault(mark, -1.0), within(LAST_DIGITS)));
        }
        assertThat(listed).isEmpty();
    }

    @Test
    void cleatsAreCutAsTheirValleysTellThem() throws IOException {
        JsonNode answer = good("/v1/layouts", dormer());
        double told = 0;
        for (JsonNode valley : answer.path("valleys")) {
            for (JsonNode side : valley.path("sides")) {
                told += side.at("/cleat/length/value").asDouble();
            }
        }
        assertThat(told).isGreaterThan(1000);
        double cut = 0;
        for (JsonNode plan : answer.path("cuts")) {
            if (plan.path("item").asText().equals("cleat")) {
                for (JsonNode bar : plan.path("bars")) {
                    for (JsonNode piece : bar.path("pieces")) {
                        cut += bar.path("count").asInt()
                                * (piece.at("/to/value").asDouble()
                                        - piece.at("/from/value").asDouble());
                    }
                }
            }
        }
        assertThat(cut).isCloseTo(told, within(LAST_DIGITS));
    }

    /** The same pieces from the same stock, asked for at the other door. */
    @Test
    void everyPlanIsAsGoodAsTheSamePiecesGetAlone() throws IOException {
        ObjectNode request = dormer();
        JsonNode answer = good("/v1/layouts", request);
        int asked = 0;
        for (JsonNode cut : answer.path("cuts")) {
            ObjectNode alone = (ObjectNode) Door.json("{\"stock\": [], \"pieces\": [], \"keepableOffcut\": 400}");
            alone.set("units", request.path("units"));
            for (JsonNode stock : request.at("/cutting/stock")) {
                boolean serves = !stock.path("kind").asText().equals("coil")
                        && stock.path("item")
                                .asText(cut.path("item").asText())
                                .equals(cut.path("item").asText())
                        && stock.path("width").asInt(-1) == (stock.has("width") ? width(cut) : -1);
                if (serves) {
                    ((ArrayNode) alone.path("stock"))
                            .add(((ObjectNode) stock.deepCopy()).without(List.of("item", "width")));
                }
            }
            cutPieces(cut).forEach((mark, length) -> ((ArrayNode) alone.path("pieces"))
                    .addObject()
                    .put("id", mark)
                    .put("length", Math.floor(length * 10) / 10));
            JsonNode plan = good("/v1/stock-cuts", alone);
            assertThat(cut.path("cost")).as(key(cut)).isEqualTo(plan.path("cost"));
            assertThat(cut.path("lowerBound")).as(key(cut)).isEqualTo(plan.path("lowerBound"));
            assertThat(cut.path("proven").asBoolean()).isTrue();
            assertThat(BuyersCheck.bound(alone, plan))
                    .isEqualTo(cut.path("lowerBound").asLong());
            asked++;
        }
        assertThat(asked).isGreaterThan(4);
    }

    private static int width(JsonNode cut) {
        return (int) Math.round(cut.at("/width/value").asDouble());
    }

    /** Head wall and side wall flashings are of one width and share the off-cut on the rack and a bar. */
    @Test
    void profilesOfOneWidthAreOneLineAndOnePlan() throws IOException {
        JsonNode answer = good("/v1/layouts", dormer());
        List<JsonNode> lines = new ArrayList<>();
        answer.path("orderLines").forEach(line -> {
            if (line.path("item").asText().equals("trim")
                    && line.at("/made/width/value").asInt() == 226) {
                lines.add(line);
            }
        });
        assertThat(lines).hasSize(1);
        assertThat(lines.get(0).at("/made").has("profile")).isFalse();
        assertThat(lines.get(0).path("rack").asDouble()).isEqualTo(2350);
        assertThat(lines.get(0).path("ordered").asDouble()).isEqualTo(2510);
        assertThat(lines.get(0).path("bars").findValuesAsText("stock")).containsExactly("two-and-a-half", "left-over");
    }

    /** Eaves are cut square, so mitres meet only where panels may be turned. */
    @ParameterizedTest
    @CsvSource({"dormer, forbidden, 0", "dormer, allowed, 0", "hip, forbidden, 0", "hip, allowed, 10000"})
    void theCoilRunIsTheOneThatTheSamePanelsGetAlone(String house, String turning, double atLeastSaved)
            throws IOException {
        ObjectNode request = house(house);
        ((ObjectNode) request.path("cutting")).put("turning", turning);
        JsonNode answer = good("/v1/layouts", request);
        ObjectNode alone = (ObjectNode) Door.json("{\"stock\": [{\"id\": \"c\", \"kind\": \"coil\"}], \"pieces\": []}");
        alone.set("units", request.path("units"));
        alone.put("turning", turning);
        int mitred = 0;
        for (JsonNode panel : answer.path("panels")) {
            ObjectNode piece = onCoil(panel);
            mitred += piece.has("leftOffset") ? 1 : 0;
            ((ArrayNode) alone.path("pieces")).add(piece);
        }
        assertThat(mitred).isPositive();
        JsonNode coil = good("/v1/stock-cuts", alone).path("coil");
        JsonNode run = answer.path("coil");
        double few = LAST_DIGITS * answer.path("panels").size();
        for (String figure :
                List.of("/orderedLength/value", "/panelLength", "/squareLength/value", "/layingOrder/cost")) {
            assertThat(run.at(figure).asDouble())
                    .as(figure)
                    .isCloseTo(coil.at(figure).asDouble(), within(few));
        }
        assertThat(run.at("/squareLength/value").asDouble()
                        - run.at("/orderedLength/value").asDouble())
                .isGreaterThanOrEqualTo(atLeastSaved);
        assertThat(run.path("run").findValuesAsText("id"))
                .containsExactlyInAnyOrderElementsOf(answer.path("panels").findValuesAsText("mark"));
        assertThat(run.at("/layingOrder/run").findValuesAsText("id"))
                .containsExactlyElementsOf(answer.path("panels").findValuesAsText("mark"));
    }

    /** As a shop sees it: eave end to the left, so that the right rib lies below. Not a whole panel with two cuts: square. */
    private static ObjectNode onCoil(JsonNode panel) {
        double[][] ribs = {
            {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}, {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}
        };
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        boolean whole = panel.at("/cut/openings").isEmpty();
        for (JsonNode corner : panel.at("/cut/outline")) {
            double across = corner.get(0).asDouble();
            double up = corner.get(1).asDouble();
            lowest = Math.min(lowest, up);
            highest = Math.max(highest, up);
            if (across != 0 && across != 500) {
                whole = false;
            } else {
                double[] rib = ribs[across == 0 ? 0 : 1];
                rib[0] = Math.min(rib[0], up);
                rib[1] = Math.max(rib[1], up);
            }
        }
        ObjectNode piece = (ObjectNode) Door.json("{}");
        piece.put("id", panel.path("mark").asText());
        if (!whole || ribs[0][0] > ribs[0][1] || ribs[1][1] - ribs[1][0] < 1) {
            return piece.put("length", highest - lowest);
        }
        return piece.put("length", ribs[1][1] - ribs[1][0])
                .put("leftOffset", ribs[0][0] - ribs[1][0])
                .put("rightOffset", ribs[0][1] - ribs[1][1]);
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void theCoilIsOrderedAsLongAsTheRunThatIsAskedFor(boolean keepOrder) throws IOException {
        ObjectNode request = dormer();
        ((ObjectNode) request.path("cutting")).put("keepLayingOrder", keepOrder);
        JsonNode answer = good("/v1/layouts", request);
        String figure = keepOrder ? "/coil/layingOrder/length/value" : "/coil/orderedLength/value";
        assertThat(answer.at("/orderLines/0/item").asText()).isEqualTo("coil");
        assertThat(answer.at("/orderLines/0/ordered").asDouble())
                .isCloseTo(answer.at(figure).asDouble(), within(0.002));
    }

    /** What every line takes is its bars and what no bar was found for; the rest of the sums is {@link RecountTest}'s. */
    @Test
    void whatIsOrderedAndOnTheRackIsTheBars() throws IOException {
        ObjectNode request = dormer();
        ((ArrayNode) request.at("/cutting/stock")).remove(0); // now a piece of pan is longer than every bar
        JsonNode answer = good("/v1/layouts", request);
        Map<String, Map<String, Double>> listed = listed(answer);
        int lines = 0;
        int unplaced = 0;
        for (JsonNode line : answer.path("orderLines")) {
            if (!line.has("bars")) {
                continue;
            }
            double bars = 0;
            for (JsonNode bar : line.path("bars")) {
                bars += bar.path("count").asInt() * bar.at("/length/value").asDouble();
            }
            String key = line.path("item").asText() + " "
                    + Math.round(line.at("/made/width/value").asDouble());
            for (JsonNode cut : answer.path("cuts")) {
                if (key(cut).equals(key)) {
                    for (JsonNode left : cut.path("unplaced")) {
                        bars += listed.getOrDefault(key, Map.of())
                                .getOrDefault(left.path("id").asText(), -1.0);
                        unplaced++;
                    }
                }
            }
            assertThat(line.path("ordered").asDouble() + line.path("rack").asDouble())
                    .as(line.toString())
                    .isCloseTo(bars, within(LAST_DIGITS));
            assertThat(line.path("net").asDouble()
                            + line.path("lap").asDouble()
                            + line.path("waste").asDouble())
                    .isCloseTo(bars, within(LAST_DIGITS));
            lines++;
        }
        assertThat(lines).isGreaterThan(4);
        assertThat(unplaced).isPositive();
        assertThat(answer.path("findings").findValuesAsText("code")).contains("PIECE_TOO_LONG");
    }

    /** Runs of whole inches, so that the buyer's sums are exact. */
    @Test
    void profilesByThemselvesAreCutWithAProof() throws IOException {
        JsonNode answer = good("/v1/trims", Door.json("""
                {"units": {"length": "in", "area": "ft2", "mass": "lb"}, "stock": {"pieceLength": 120},
                 "profiles": [
                   {"id": "p1", "legs": [3, 4], "bendsDeg": [90], "lap": 2,
                    "lengths": [{"length": 71, "count": 7}, {"length": 43, "count": 9}]},
                   {"id": "p2", "legs": [4, 3], "bendsDeg": [90], "lap": 2, "lengths": [{"length": 29, "count": 8}]}],
                 "cutting": {"stock": [{"id": "ten", "length": 120}, {"id": "twelve", "length": 144}], "kerf": "1/8"}}"""));
        assertThat(answer.path("cuts")).hasSize(1);
        JsonNode cut = answer.at("/cuts/0");
        JsonNode alone = Door.json("""
                {"units": {"length": "in", "area": "ft2", "mass": "lb"},
                 "stock": [{"id": "ten", "length": 120}, {"id": "twelve", "length": 144}], "kerf": 0.125,
                 "pieces": [{"id": "p1-1-1", "length": 71, "count": 7}, {"id": "p1-2-1", "length": 43, "count": 9},
                            {"id": "p2-1-1", "length": 29, "count": 8}]}""");
        ObjectNode withStock = cut.deepCopy();
        withStock.set("used", good("/v1/stock-cuts", alone).path("used"));
        assertThat(BuyersCheck.bound(alone, withStock))
                .isEqualTo(cut.path("lowerBound").asLong());
        assertThat(cut.path("cost")).isEqualTo(cut.path("lowerBound"));
    }

    @Test
    void aValleyAloneIsCutLikeTheSameValleyInALayout() throws IOException {
        ObjectNode request = dormer();
        ((ArrayNode) request.at("/cutting/stock")).remove(3);
        ((ObjectNode) request.path("cutting")).remove("turning");
        ObjectNode valley = request.deepCopy();
        valley.remove(List.of("ordering"));
        valley.put("edge", "V1");
        JsonNode alone = good("/v1/valleys", valley);
        assertThat(alone.path("cuts").findValuesAsText("item")).containsExactly("valleyPan", "cleat");
        Map<String, Double> pieces = listed(good("/v1/layouts", request)).getOrDefault("valleyPan 1000", Map.of());
        cutPieces(alone.at("/cuts/0")).forEach((mark, length) -> assertThat(length)
                .isCloseTo(pieces.getOrDefault(mark, -1.0), within(LAST_DIGITS)));
        assertThat(alone.at("/used/cutting/stock/0/id").asText()).isEqualTo("three-metre");
    }

    @Test
    void theTrimsOfARoofAreCutLikeThoseOfItsLayout() throws IOException {
        ObjectNode request = dormer();
        ((ArrayNode) request.at("/cutting/stock")).remove(3);
        ((ObjectNode) request.path("cutting")).remove("turning");
        ObjectNode trims = request.deepCopy();
        trims.remove(List.of("ordering", "valleyPan", "edgeTreatments", "climate"));
        List<String> ofLayout = new ArrayList<>();
        good("/v1/layouts", request).path("cuts").forEach(cut -> {
            if (cut.path("item").asText().equals("trim")) {
                ofLayout.add(cut.path("bars").toString());
            }
        });
        List<String> ofTrims = new ArrayList<>();
        good("/v1/trims", trims)
                .path("cuts")
                .forEach(cut -> ofTrims.add(cut.path("bars").toString()));
        assertThat(ofTrims).hasSizeGreaterThan(3).isEqualTo(ofLayout);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            {"id": "a"}                                                              | MISSING_MEMBER #/cutting/stock/0
            {"id": "a", "length": 0}                                                 | OUT_OF_RANGE #/cutting/stock/0/length
            {"id": "a", "length": 3000, "count": 0}                                  | OUT_OF_RANGE #/cutting/stock/0/count
            {"id": "a", "length": 3000, "count": 2}                                  | MISSING_MEMBER #/cutting/stock/0, MISSING_MEMBER #/cutting/stock/0
            {"id": "a", "length": 3000, "kind": "rack", "item": "trim"}              | MISSING_MEMBER #/cutting/stock/0
            {"id": "a", "length": 3000, "item": "cleat", "width": 50}                | EITHER_OR #/cutting/stock/0/width
            {"id": "a", "length": 3000, "item": "clip"}                              | UNKNOWN_VALUE #/cutting/stock/0/item
            {"id": "a", "length": 3000, "cost": 1}, {"id": "b", "length": 2000}      | MISSING_MEMBER #/cutting/stock/1
            {"id": "a", "length": 3000, "cost": 0}                                   | MISSING_MEMBER #/cutting/stock/0
            {"id": "a", "kind": "coil"}                                              | EITHER_OR #/cutting/stock/0
            {"id": "a", "kind": "coil", "length": 3000}                              | EITHER_OR #/cutting/stock/0, EITHER_OR #/cutting/stock/0
            {"id": "a", "length": 3000, "colour": "red"}                             | UNKNOWN_MEMBER #/cutting/stock/0/colour
            """)
    void stockThatCantBeCutFromIsRefusedWhereItStands(String stock, String errors) throws IOException {
        ObjectNode request = dormer();
        request.remove("ordering");
        request.set("cutting", Door.json("{\"stock\": [" + stock + "]}"));
        assertThat(Door.post("/v1/layouts", request.toString()).isProblem(400).errors())
                .containsExactly(errors.split(", "));
    }

    @Test
    void whatGoesInsteadOfEachOtherIsRefused() throws IOException {
        ObjectNode request = dormer();
        ((ObjectNode) request.path("ordering"))
                .set("items", Door.json("{\"trim\": {\"extraPercent\": 5}, \"clip\": {\"extraPercent\": 5}}"));
        assertThat(Door.post("/v1/layouts", request.toString()).isProblem(400).errors())
                .containsExactly("EITHER_OR #/ordering/items/trim");
        ObjectNode noCoil = dormer();
        ((ArrayNode) noCoil.at("/cutting/stock")).remove(3);
        assertThat(Door.post("/v1/layouts", noCoil.toString()).isProblem(400).errors())
                .containsExactly("UNKNOWN_MEMBER #/cutting/turning");
        ObjectNode twice = dormer();
        ((ObjectNode) twice.at("/cutting/stock/1")).put("id", "three-metre");
        assertThat(Door.post("/v1/layouts", twice.toString()).isProblem(422).errors())
                .containsExactly("DUPLICATE_ID #/cutting/stock/1/id");
    }

    /** A thousand and one runs of different lengths: more than one plan holds. */
    @Test
    void moreLengthsThanOnePlanHoldsAreRefused() {
        StringBuilder profiles = new StringBuilder();
        for (int p = 0; p < 6; p++) {
            profiles.append(p == 0 ? "" : ",").append("""
                    {"id": "p%d", "legs": [3, 4], "bendsDeg": [90], "lengths": [""".formatted(p));
            for (int run = 0; run < 170; run++) {
                profiles.append(run == 0 ? "" : ",")
                        .append("{\"length\": ")
                        .append(10 + (p * 170 + run) / 20.0)
                        .append("}");
            }
            profiles.append("]}");
        }
        assertThat(Door.post("/v1/trims", """
                {"units": {"length": "in", "area": "ft2", "mass": "lb"}, "profiles": [%s],
                 "cutting": {"stock": [{"id": "ten", "length": 120}], "deadlineMs": 0}}""".formatted(profiles))
                        .isProblem(422)
                        .errors())
                .containsExactly("TOO_MANY_LENGTHS #/cutting");
    }
}
