package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assumptions.assumeThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.thalweg.api.Door.Answer;

/** Trims through the door: of a layout, of a roof alone, of profiles by themselves. */
@QuarkusTest
class TrimsTest {

    private static final Path EXAMPLES = Path.of("openapi", "examples");
    private static final double LAST_INCH = 1.001e-4;
    private static final double MM_PER_INCH = 25.4;

    /** 12 ft wide at 6:12, eave A-B along y = 0, rakes at both sides. */
    private static final String ROOF = """
            "roof": {"points": {"A": [0, 0, 0], "B": [144, 0, 0], "C": [144, 96, 48], "D": [0, 96, 48]},
                     "planes": [{"id": "shed", "outline": ["A", "B", "C", "D"]}]}""";

    private static final String INCHES = "{\"units\": {\"length\": \"in\", \"area\": \"ft2\", \"mass\": \"lb\"}, ";

    private static Answer ofRoof(String trims) {
        return Door.post("/v1/trims", INCHES + ROOF + ", \"trims\": {" + trims + "}}");
    }

    private static Answer ofProfile(String profile, String more) {
        return Door.post("/v1/trims", INCHES + "\"profiles\": [{\"id\": \"p\", " + profile + "}]" + more + "}");
    }

    private static JsonNode good(Answer answer) {
        assertThat(answer.status()).as(answer.text()).isEqualTo(200);
        return answer.json();
    }

    private static JsonNode trim(JsonNode answer, String kind) {
        for (JsonNode trim : answer.path("trims")) {
            if (trim.path("kind").asText().equals(kind)) {
                return trim;
            }
        }
        throw new AssertionError("no trim of kind " + kind + ": " + answer);
    }

    private static ObjectNode example(String name) throws IOException {
        return (ObjectNode) Door.json(Files.readString(EXAMPLES.resolve(name + ".request.json")));
    }

    private static List<Double> numbers(JsonNode list) {
        return StreamSupport.stream(list.spliterator(), false)
                .map(JsonNode::asDouble)
                .toList();
    }

    private static List<Double> values(JsonNode list) {
        return StreamSupport.stream(list.spliterator(), false)
                .map(each -> each.path("value").asDouble())
                .toList();
    }

    // Published.

    /**
     * What handbooks and standards print of a bend, in their own unit and in the other. Within half of the last digit they print,
     * and half of the last we do.
     */
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/published/bend-allowance.csv", useHeadersInDisplayName = true)
    void aBendTakesUpWhatIsPrintedInTheCallersUnit(
            String id,
            String method,
            double radius,
            double thickness,
            double turn,
            String unit,
            double allowance,
            double allowanceHalf,
            Double deduction,
            Double deductionHalf) {
        assumeThat(method).as("asked for by name").isIn("handbook", "din");
        for (String in : List.of("in", "mm")) {
            double scale = in.equals(unit) ? 1 : in.equals("mm") ? MM_PER_INCH : 1 / MM_PER_INCH;
            double ours = in.equals("mm") ? 0.0005 : 0.00005;
            JsonNode profile = good(Door.post("/v1/trims", """
                    {"units": {"length": "%s", "area": "m2", "mass": "kg"},
                     "sheet": {"thickness": %s, "insideRadius": %s, "bendFormula": "%s"},
                     "profiles": [{"id": "p", "legs": [%s, %s], "bendsDeg": [%s]}]}
                    """.formatted(
                                    in,
                                    thickness * scale,
                                    radius * scale,
                                    method.equals("din") ? "din6935" : "handbook",
                                    50 * scale,
                                    30 * scale,
                                    turn)))
                    .at("/profiles/0");
            assertThat(profile.at("/bendLines/0/allowance").asDouble())
                    .isCloseTo(allowance * scale, within(allowanceHalf * scale + ours + 1e-9));
            if (deduction != null) {
                assertThat(profile.at("/bendLines/0/deduction").asDouble())
                        .isCloseTo(deduction * scale, within(deductionHalf * scale + ours + 1e-9));
                assertThat(profile.at("/flatWidth/value").asDouble())
                        .isCloseTo((80 - deduction) * scale, within(deductionHalf * scale + ours + 1e-9));
            }
        }
    }

    /** The channel of the aircraft handbook: flanges of 1 in, 2 in between, R 0.16, T 0.04; the formula gives 0.27907 a bend. */
    @Test
    void theHandbooksChannelIsRolledOut() {
        JsonNode channel = good(ofProfile(
                        "\"legs\": [1, 2, 1], \"bendsDeg\": [90, 90]",
                        ", \"sheet\": {\"thickness\": 0.04, \"insideRadius\": 0.16, \"bendFormula\": \"handbook\"}"))
                .at("/profiles/0");
        // Flats 0.80, 1.60 and 0.80, as the handbook has them, and two bends.
        assertThat(channel.at("/flatWidth/value").asDouble()).isCloseTo(3.2 + 2 * 0.27907, within(LAST_INCH));
        assertThat(channel.at("/bendLines/0/at/value").asDouble()).isCloseTo(0.8 + 0.27907 / 2, within(LAST_INCH));
        assertThat(channel.at("/bendLines/1/at/value").asDouble()).isCloseTo(2.4 + 1.5 * 0.27907, within(LAST_INCH));
    }

    @Test
    void metalWithoutThicknessIsAsWideAsItsLegs() {
        JsonNode profile = good(ofProfile(
                        "\"legs\": [4, 2, 0.75], \"bendsDeg\": [-90, 30], \"hems\": {\"last\": {\"girth\": 0.5}}",
                        ", \"sheet\": {\"thickness\": 0}"))
                .at("/profiles/0");
        assertThat(profile.at("/flatWidth/value").asDouble()).isEqualTo(7.25);
        assertThat(profile.at("/flatWidth/tape").asText()).isEqualTo("7 1/4\"");
        assertThat(profile.at("/section").toString()).isEqualTo("[[0,0],[4,0],[4,-2],[4.375,-2.6495]]");
    }

    // What is answered.

    /** Fewest pieces of at most 120 in that lap 4 in: 300 less 4 over 116 are 2.6, so three. */
    @Test
    void aRunIsDividedIntoPiecesWithLaps() {
        JsonNode run = good(ofProfile(
                        "\"legs\": [4, 2], \"bendsDeg\": [-90], \"lengths\": [{\"length\": \"25'\", \"count\": 3}]",
                        ""))
                .at("/profiles/0/runs/0");
        assertThat(values(run.path("pieces"))).containsExactly(120.0, 120.0, 68.0);
        assertThat(run.path("count").asInt()).isEqualTo(3);
    }

    /** At 6:12 the fascia hangs 63.4349° off the deck. Drawn with the start below, the left rake shows its back. */
    @Test
    void theEdgesOfARoofGetPlainTrims() {
        JsonNode answer = good(ofRoof(""));
        assertThat(answer.path("trims").findValuesAsText("profile"))
                .containsExactly("eave drip", "rake cover", "peak cover", "rake cover");
        JsonNode eave = trim(answer, "eave");
        assertThat(values(eave.path("legs"))).containsExactly(4.0, 2.0, 0.75);
        assertThat(numbers(eave.path("bendsDeg"))).containsExactly(-63.4349, 30.0);
        assertThat(eave.path("weatherFaceUp").asBoolean()).isTrue();
        assertThat(eave.path("ends")).hasSize(2);
        JsonNode rake = answer.at("/trims/3");
        assertThat(rake.path("hand").asText()).isEqualTo("left");
        assertThat(rake.path("weatherFaceUp").asBoolean()).isFalse();
    }

    /** Seams of 1 in unless the panel says otherwise: a leg that drops from their height stands first. */
    @Test
    void plainProfilesStandOverTheSeamsOfThePanel() {
        JsonNode usual = good(ofRoof(""));
        JsonNode high = good(Door.post(
                "/v1/trims", INCHES + ROOF + ", \"panel\": {\"cover\": 16, \"seamHeight\": 2, \"thickness\": 0.032}}"));
        assertThat(usual.at("/used/trims/seamHeight").asDouble()).isEqualTo(1);
        assertThat(trim(usual, "rake").at("/legs/0/value").asDouble()).isEqualTo(1);
        assertThat(trim(high, "rake").at("/legs/0/value").asDouble()).isEqualTo(2);
        assertThat(high.at("/used/trims/sheet/thickness").asDouble()).isEqualTo(0.032);
    }

    @Test
    void aKindOfEdgeMayBeLeftWithoutTrim() {
        JsonNode answer = good(ofRoof("\"kinds\": {\"rake\": {\"none\": true}, \"eave\": {\"none\": false}}"));
        assertThat(answer.path("trims").findValuesAsText("profile")).containsExactly("eave drip", "peak cover");
        assertThat(answer.at("/used/trims/kinds").has("rake")).isFalse();
        assertThat(answer.at("/used/trims/kinds/eave/plain").asBoolean()).isTrue();
    }

    /**
     * A caller's own profile: the second bend lies on the edge and follows it, the first is square down, the third kicks out. A
     * rake's fascia hangs plumb, 90° down.
     */
    @Test
    void aCallersProfileIsBentToItsEdge() {
        JsonNode rake = trim(
                good(ofRoof(
                        "\"kinds\": {\"rake\": {\"lap\": 6, \"profile\": {\"name\": \"{place} cover\", \"legs\": [1, 5, 3, 1],"
                                + " \"bendsDeg\": [-90, 0, 35], \"atEdge\": 2, \"height\": 1, \"hems\": {\"first\": {\"girth\": 0.5,"
                                + " \"gap\": 0.125, \"up\": true}}}}}")),
                "rake");
        assertThat(rake.path("profile").asText()).isEqualTo("{place} cover");
        assertThat(numbers(rake.path("bendsDeg"))).containsExactly(-90.0, -90.0, 35.0);
        assertThat(rake.at("/section/2").toString()).isEqualTo("[0,1]");
        assertThat(rake.at("/section/3").toString()).isEqualTo("[0,-2]");
        assertThat(rake.at("/hems/first").toString())
                .isEqualTo(
                        "{\"kind\":\"open\",\"girth\":{\"value\":0.5,\"tape\":\"1/2\\\"\"},\"gap\":0.125,\"up\":true}");
        assertThat(rake.at("/bendLines/0/hem").asBoolean()).isTrue();
        assertThat(rake.at("/bendLines/0/bendDeg").asDouble()).isEqualTo(180);
    }

    /** At a pitch break the bend that follows the edge need not be the one that lies on it. */
    @Test
    void anyBendMayFollowTheEdge() {
        String profile =
                "\"kinds\": {\"eave\": {\"profile\": {\"legs\": [3, 1, 2], \"bendsDeg\": [90, -10], \"withEdge\": %s}}}";
        JsonNode second = trim(good(ofRoof(profile.formatted("[2]"))), "eave");
        JsonNode none = trim(good(ofRoof(profile.formatted("[]"))), "eave");
        assertThat(numbers(second.path("bendsDeg"))).containsExactly(90.0, -73.4349);
        assertThat(numbers(none.path("bendsDeg"))).containsExactly(90.0, -10.0);
    }

    @Test
    void whatWasLeftOutIsToldWithItsFigure() {
        JsonNode used = good(ofRoof("\"kinds\": {\"eave\": {\"lap\": 5}}, \"sheet\": {\"kFactor\": 0.4}"))
                .path("used");
        assertThat(used.at("/trims/kinds/eave/lap").asDouble()).isEqualTo(5);
        assertThat(used.at("/trims/kinds/rake/lap").asDouble()).isEqualTo(3);
        assertThat(used.at("/trims/sheet/kFactor").asDouble()).isEqualTo(0.4);
        assertThat(used.at("/trims/sheet/insideRadius").asDouble()).isEqualTo(0.0276);
        assertThat(used.at("/trims/stock/pieceLength").asDouble()).isEqualTo(120);
        assertThat(StreamSupport.stream(used.path("defaults").spliterator(), false)
                        .map(JsonNode::asText))
                .containsExactly(
                        "#/tolerance",
                        "#/hipCap/leg",
                        "#/panel/seamHeight",
                        "#/trims/sheet/thickness",
                        "#/trims/sheet/insideRadius",
                        "#/trims/sheet/coilWidth",
                        "#/trims/stock/pieceLength",
                        "#/trims/stock/shortestPiece",
                        "#/trims/ventedRidge",
                        "#/trims/past",
                        "#/trims/laidFrom",
                        "#/trims/kinds/eave/profile");
    }

    @Test
    void nullMeansAbsent() {
        String bare = ofRoof("").text();
        String nulls = ofRoof("\"sheet\": null, \"kinds\": {\"eave\": null}, \"ventedRidge\": null")
                .text();
        String digest = "\"digest\":\"[0-9a-f]+\"";
        // An empty map of kinds is given, so it is no default any more.
        assertThat(Door.json(nulls).path("trims")).isEqualTo(Door.json(bare).path("trims"));
        assertThat(ofRoof("\"kinds\": null").text().replaceFirst(digest, "")).isEqualTo(bare.replaceFirst(digest, ""));
    }

    @Test
    void tooNarrowACoilAndTooShortALegAreTold() {
        JsonNode answer = good(ofRoof("\"sheet\": {\"coilWidth\": 7, \"thickness\": 0.05, \"insideRadius\": 1},"
                + " \"kinds\": {\"eave\": {\"none\": true}}"));
        JsonNode rake = answer.at("/trims/0");
        assertThat(rake.path("findings").toString()).isEqualTo("[\"TRIM_LEG_TOO_SHORT\",\"TRIM_WIDER_THAN_COIL\"]");
        JsonNode finding = answer.at("/findings/0");
        assertThat(finding.path("code").asText()).isEqualTo("TRIM_LEG_TOO_SHORT");
        // The first leg drops 1 in from the seam; the square bend beside it takes 1 in and the thickness of it.
        assertThat(finding.at("/actual/value").asDouble()).isEqualTo(-0.05);
        assertThat(finding.at("/place/id")).isEqualTo(rake.path("edge"));
        JsonNode alone = good(ofProfile("\"legs\": [9, 4], \"bendsDeg\": [90]", ", \"sheet\": {\"coilWidth\": 12}"));
        assertThat(alone.at("/profiles/0/findings").toString()).isEqualTo("[\"TRIM_WIDER_THAN_COIL\"]");
        assertThat(alone.at("/findings/0/place").toString())
                .isEqualTo("{\"kind\":\"profile\",\"id\":\"p\",\"pointer\":\"#/profiles/0\"}");
        assertThat(alone.at("/findings/0/needed/coilWidth/value")).isEqualTo(alone.at("/profiles/0/flatWidth/value"));
    }

    // Laws.

    /** The same trims as a layout gives, to the last digit. */
    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"layouts-demo", "layouts-dormer", "layouts-hip"})
    void trimsAloneAreToTheLastDigitWhatALayoutSays(String example) throws IOException {
        ObjectNode request = example(example);
        request.putArray("include").add("working");
        request.putObject("hipCap").put("leg", "8\"");
        request.putObject("trims").put("past", 2).put("laidFrom", "right");
        JsonNode laid = good(Door.post("/v1/layouts", request.toString()));
        request.remove(List.of(
                "job",
                "start",
                "laying",
                "edgeTreatments",
                "valleyPan",
                "fastening",
                "climate",
                "underlayment",
                "ordering"));
        JsonNode alone = good(Door.post("/v1/trims", request.toString()));
        assertThat(laid.path("trims")).isNotEmpty();
        assertThat(alone.path("trims")).isEqualTo(laid.path("trims"));
        assertThat(alone.at("/used/trims")).isEqualTo(laid.at("/used/trims"));
    }

    /** What the lines of a hip are laid out for is what its trim is. */
    @Test
    void thePlainTrimOfAHipIsItsCap() throws IOException {
        ObjectNode request = example("layouts-hip");
        request.putObject("hipCap").put("leg", 200).put("closureInset", 30);
        JsonNode answer = good(Door.post("/v1/layouts", request.toString()));
        assertThat(values(trim(answer, "hip").path("legs"))).containsExactly(200.0, 200.0);
        assertThat(answer.at("/used/trims/hipLeg")).isEqualTo(answer.at("/used/hipCap/leg"));
    }

    /** A layout answers trims in the order of its edges, each with the codes of its findings. */
    @Test
    void trimsOfALayoutStandInTheOrderOfItsEdges() throws IOException {
        ObjectNode request = example("layouts-demo");
        request.putObject("trims").putObject("sheet").put("coilWidth", 10);
        JsonNode answer = good(Door.post("/v1/layouts", request.toString()));
        List<String> untrimmed = List.of("valley", "levelValley", "flush", "expansionJoint", "stacked");
        List<String> edges = StreamSupport.stream(answer.at("/roof/edges").spliterator(), false)
                .filter(edge -> !untrimmed.contains(edge.path("kind").asText()))
                .map(edge -> edge.path("id").asText())
                .toList();
        List<String> trimmed = new ArrayList<>();
        List<String> found = new ArrayList<>();
        for (JsonNode trim : answer.path("trims")) {
            trimmed.add(trim.path("edge").asText());
            trim.path("findings")
                    .forEach(code ->
                            found.add(code.asText() + " " + trim.path("edge").asText()));
        }
        assertThat(trimmed).isNotEmpty().isEqualTo(edges);
        List<String> told = new ArrayList<>();
        for (JsonNode finding : answer.path("findings")) {
            if (finding.path("code").asText().startsWith("TRIM_")) {
                told.add(finding.path("code").asText() + " "
                        + finding.at("/place/id").asText());
            }
        }
        assertThat(found).isNotEmpty();
        assertThat(told).isEqualTo(found);
    }

    /** Pieces less laps are the run; a blank is as wide as the flat sheet and as long as its piece. */
    @Test
    void piecesAddUpAndBlanksFillThem() throws IOException {
        JsonNode answer = good(Door.post("/v1/layouts", example("layouts-demo").toString()));
        for (JsonNode trim : answer.path("trims")) {
            double sum = 0;
            for (JsonNode piece : trim.path("pieces")) {
                sum += piece.at("/length/value").asDouble()
                        - piece.at("/lap/value").asDouble();
                assertThat(farthest(piece.at("/blank/outline"), 0))
                        .isCloseTo(trim.at("/flatWidth/value").asDouble(), within(LAST_INCH));
                assertThat(farthest(piece.at("/blank/outline"), 1))
                        .isCloseTo(piece.at("/length/value").asDouble(), within(LAST_INCH));
            }
            assertThat(sum)
                    .isCloseTo(
                            trim.at("/run/value").asDouble(),
                            within(LAST_INCH * trim.path("pieces").size()));
        }
    }

    private static double farthest(JsonNode outline, int axis) {
        return StreamSupport.stream(outline.spliterator(), false)
                .mapToDouble(corner -> corner.get(axis).asDouble())
                .max()
                .orElseThrow();
    }

    /** In millimetres the shelter gets the trims it gets in inches; only the marks on the tape are rounded otherwise. */
    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"trims-shelter", "trims-profiles"})
    void anotherUnitIsTheSameTrimReadInAnother(String example) throws IOException {
        ObjectNode request = example(example);
        if (example.equals("trims-profiles")) {
            for (JsonNode profile : request.path("profiles")) {
                ((ObjectNode) profile).put("lap", 80);
            }
        } else {
            ((ObjectNode) request.at("/trims/sheet")).put("insideRadius", 1.0 / 32);
        }
        boolean inches = request.at("/units/length").asText().equals("in");
        double scale = inches ? MM_PER_INCH : 1 / MM_PER_INCH;
        ObjectNode other = (ObjectNode) scaled("", request, scale);
        ((ObjectNode) other.path("units")).put("length", inches ? "mm" : "in");
        JsonNode here = good(Door.post("/v1/trims", request.toString()));
        JsonNode there = good(Door.post("/v1/trims", other.toString()));
        int compared = 0;
        for (String part : List.of("trims", "profiles")) {
            compared += assertScaled(part, here.path(part), there.path(part), scale, inches);
        }
        assertThat(compared).isGreaterThan(90);
    }

    private static boolean isLength(String member) {
        return !member.endsWith("Deg") && !List.of("kFactor", "count", "leg").contains(member);
    }

    private static JsonNode scaled(String member, JsonNode node, double scale) {
        if (node.isNumber()) {
            return isLength(member) || member.equals("leg")
                    ? Door.json(Double.toString(node.asDouble() * scale))
                    : node;
        }
        if (node.isObject()) {
            ObjectNode copy = node.deepCopy();
            node.properties().forEach(each -> copy.set(each.getKey(), scaled(each.getKey(), each.getValue(), scale)));
            return copy;
        }
        if (node.isArray()) {
            var copy = Door.json("[]").deepCopy();
            node.forEach(each -> ((ArrayNode) copy).add(scaled(member, each, scale)));
            return copy;
        }
        return node;
    }

    /** How many figures were compared. */
    private static int assertScaled(String member, JsonNode here, JsonNode there, double scale, boolean inches) {
        if (member.equals("tape") || member.equals("working")) {
            return 0;
        }
        if (here.isNumber()) {
            double expected = isLength(member) ? here.asDouble() * scale : here.asDouble();
            // Half of the last digit of either unit.
            double halves = isLength(member) ? (inches ? 0.00005 * scale + 0.0005 : 0.0005 * scale + 0.00005) : 1e-4;
            assertThat(there.asDouble()).as(member).isCloseTo(expected, within(halves + 1e-9));
            return 1;
        }
        if (here.isContainerNode()) {
            assertThat(there).as(member).hasSameSizeAs(here);
            int compared = 0;
            if (here.isObject()) {
                for (var each : here.properties()) {
                    compared += assertScaled(each.getKey(), each.getValue(), there.path(each.getKey()), scale, inches);
                }
            } else {
                for (int i = 0; i < here.size(); i++) {
                    compared += assertScaled(member, here.get(i), there.get(i), scale, inches);
                }
            }
            return compared;
        }
        assertThat(there).as(member).isEqualTo(here);
        return 0;
    }

    /** Every line of the working, done again on a pocket calculator, comes out at the figure it names. */
    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"\"kFactor\": 0.42", "\"bendFormula\": \"handbook\"", "\"bendFormula\": \"din6935\""})
    void theWorkingComesOutAtTheFigures(String allowance) {
        JsonNode profile = good(ofProfile(
                        "\"legs\": [0.5, 2.25, 6.125, 3, 0.5], \"bendsDeg\": [45, -90, -110, 30], \"hems\": {\"first\":"
                                + " {\"girth\": 0.5, \"gap\": 0.125}, \"last\": {\"girth\": 0.375, \"up\": true}}",
                        ", \"include\": [\"working\"], \"sheet\": {\"thickness\": 0.0276, \"insideRadius\": 0.0625, "
                                + allowance + "}"))
                .at("/profiles/0");
        assertThat(profile.path("working")).hasSize(2 * 6 + 1);
        for (JsonNode line : profile.path("working")) {
            JsonNode figure = profile.at(line.path("of").asText());
            double told = figure.isObject() ? figure.path("value").asDouble() : figure.asDouble();
            assertThat(line.at("/result/value").asDouble()).isEqualTo(told);
            assertThat(PocketCalculator.evaluate(line.path("numbers").asText()))
                    .as(line.toString())
                    .isCloseTo(told, within(0.00005 + 1e-9));
        }
    }

    @Test
    void withoutAskingNoWorkingIsAnswered() {
        assertThat(trim(good(ofRoof("")), "eave").has("working")).isFalse();
    }

    // What does not fit.

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "past": 30                                                                    | OUT_OF_RANGE #/trims/past
            "laidFrom": "top"                                                             | UNKNOWN_VALUE #/trims/laidFrom
            "ventedRidge": "yes"                                                          | WRONG_TYPE #/trims/ventedRidge
            "sheet": {"kFactor": 0.4, "bendFormula": "handbook"}                          | EITHER_OR #/trims/sheet/bendFormula
            "sheet": {"kFactor": 1.5}                                                     | OUT_OF_RANGE #/trims/sheet/kFactor
            "sheet": {"bendFormula": "guess"}                                             | UNKNOWN_VALUE #/trims/sheet/bendFormula
            "sheet": {"thickness": -1}                                                    | OUT_OF_RANGE #/trims/sheet/thickness
            "sheet": {"gauge": 24}                                                        | UNKNOWN_MEMBER #/trims/sheet/gauge
            "stock": {"pieceLength": 1}                                                   | OUT_OF_RANGE #/trims/stock/pieceLength
            "stock": {"pieceLength": 60, "shortestPiece": 61}                             | OUT_OF_RANGE #/trims/stock/shortestPiece
            "stock": {"pieceLength": 24}, "kinds": {"eave": {"lap": 21}}                  | OUT_OF_RANGE #/trims/kinds/eave/lap
            "kinds": {"valley": {"none": true}}                                           | UNKNOWN_MEMBER #/trims/kinds/valley
            "kinds": {"eaves": {}}                                                        | UNKNOWN_MEMBER #/trims/kinds/eaves
            "kinds": {"eave": {"none": true, "lap": 3}}                                   | EITHER_OR #/trims/kinds/eave
            "kinds": {"eave": {"profile": {"legs": [4, 2]}}}                              | MISSING_MEMBER #/trims/kinds/eave/profile
            "kinds": {"eave": {"profile": {"legs": [4], "bendsDeg": [0]}}}                | TOO_FEW #/trims/kinds/eave/profile/legs
            "kinds": {"eave": {"profile": {"legs": [4, 2, 1], "bendsDeg": [0]}}}          | TOO_FEW #/trims/kinds/eave/profile/bendsDeg
            "kinds": {"eave": {"profile": {"legs": [4, 2], "bendsDeg": [0, 0]}}}          | TOO_MANY #/trims/kinds/eave/profile/bendsDeg
            "kinds": {"eave": {"profile": {"legs": [4, 0], "bendsDeg": [0]}}}             | OUT_OF_RANGE #/trims/kinds/eave/profile/legs/1
            "kinds": {"eave": {"profile": {"legs": [4, 2], "bendsDeg": [181]}}}           | OUT_OF_RANGE #/trims/kinds/eave/profile/bendsDeg/0
            "kinds": {"eave": {"profile": {"legs": [4, 2], "bendsDeg": ["steep"]}}}       | WRONG_TYPE #/trims/kinds/eave/profile/bendsDeg/0
            "kinds": {"eave": {"profile": {"legs": [4, 2], "bendsDeg": [0], "atEdge": 2}}} | OUT_OF_RANGE #/trims/kinds/eave/profile/atEdge
            "kinds": {"eave": {"profile": {"legs": [4, 2], "bendsDeg": [0], "atEdge": 1.5}}} | WRONG_TYPE #/trims/kinds/eave/profile/atEdge
            "kinds": {"eave": {"profile": {"legs": [4, 2], "bendsDeg": [0], "withEdge": [1, 3]}}} | OUT_OF_RANGE #/trims/kinds/eave/profile/withEdge/1
            "kinds": {"eave": {"profile": {"legs": [4, 2], "bendsDeg": [0], "hems": {"last": {}}}}} | MISSING_MEMBER #/trims/kinds/eave/profile/hems/last
            "kinds": {"eave": {"profile": {"legs": [4, 2], "bendsDeg": [0], "hems": {"first": {"girth": 0}}}}} | OUT_OF_RANGE #/trims/kinds/eave/profile/hems/first/girth
            """)
    void whatDoesNotFitIsToldWithItsPlaceByBothOperations(String trims, String error) {
        assertThat(ofRoof(trims).isProblem(400).errors()).contains(error);
        Answer layout =
                Door.post("/v1/layouts", INCHES + ROOF + ", \"panel\": {\"cover\": 18}, \"trims\": {" + trims + "}}");
        assertThat(layout.isProblem(400).errors()).contains(error);
    }

    @ParameterizedTest(name = "{0} {1}: {2}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "legs": [4, 2], "bendsDeg": [90]                              | , "tolerance": 1       | EITHER_OR #
            "legs": [4, 2], "bendsDeg": [90]                              | , "trims": {}          | EITHER_OR #
            "legs": [4, 2], "bendsDeg": [90]                              | , "panel": {"cover": 18} | EITHER_OR #
            "legs": [4, 2], "bendsDeg": [90]                              | , "include": ["luck"]  | UNKNOWN_VALUE #/include/0
            "legs": [4, 2], "bendsDeg": []                                | ``                     | TOO_FEW #/profiles/0/bendsDeg
            "legs": [], "bendsDeg": []                                    | ``                     | TOO_FEW #/profiles/0/legs
            "legs": [4, 2], "bendsDeg": [90], "lap": 117                  | ``                     | OUT_OF_RANGE #/profiles/0/lap
            "legs": [4, 2], "bendsDeg": [90], "lengths": [{"length": 0}]  | ``                     | OUT_OF_RANGE #/profiles/0/lengths/0/length
            "legs": [4, 2], "bendsDeg": [90], "lengths": [{"length": 9, "count": 0}] | ``          | OUT_OF_RANGE #/profiles/0/lengths/0/count
            "legs": [4, 2], "bendsDeg": [90], "name": ""                  | ``                     | TOO_SHORT #/profiles/0/name
            """)
    void whatDoesNotFitInAProfileIsToldWithItsPlace(String profile, String more, String error) {
        assertThat(ofProfile(profile, more == null ? "" : more).isProblem(400).errors())
                .contains(error);
    }

    @Test
    void neitherProfilesNorARoofIsNothingToAnswer() {
        String nothing = INCHES.replace("}, ", "}") + "}";
        assertThat(Door.post("/v1/trims", nothing).isProblem(400).errors()).containsExactly("EITHER_OR #");
        assertThat(Door.post("/v1/trims", INCHES + ROOF + ", \"sheet\": {}}")
                        .isProblem(400)
                        .errors())
                .containsExactly("EITHER_OR #");
    }

    @Test
    void twoProfilesOfOneIdAreRefused() {
        String profile = "{\"id\": \"p\", \"legs\": [4, 2], \"bendsDeg\": [90]}";
        Answer answer = Door.post("/v1/trims", INCHES + "\"profiles\": [" + profile + ", " + profile + "]}");
        assertThat(answer.isProblem(422).errors()).containsExactly("DUPLICATE_ID #/profiles/1/id");
    }

    /** A shed 10 km wide in pieces of a foot, and a thousand runs of 1 km. */
    @Test
    void morePiecesThanOneRequestMayHaveAreRefusedBeforeTheyAreCut() {
        String wide = INCHES + ROOF.replace("144", "400000")
                + ", \"trims\": {\"stock\": {\"pieceLength\": 12, \"shortestPiece\": 1}}}";
        String run = "{\"length\": 39000}";
        String runs = "[" + run + (", " + run).repeat(199) + "]";
        String many = INCHES + "\"stock\": {\"pieceLength\": 12}, \"profiles\": ["
                + String.join(
                        ", ",
                        IntStream.range(0, 100)
                                .mapToObj(
                                        i -> "{\"id\": \"p%d\", \"legs\": [4, 2], \"bendsDeg\": [90], \"lengths\": %s}"
                                                .formatted(i, runs))
                                .toList())
                + "]}";
        long start = System.nanoTime();
        assertThat(Door.post("/v1/trims", wide).isProblem(422).errors()).containsExactly("TOO_MANY_TRIM_PIECES #/roof");
        Answer answer = Door.post("/v1/trims", many).isProblem(422);
        assertThat(Duration.ofNanos(System.nanoTime() - start)).isLessThan(Duration.ofSeconds(5));
        assertThat(answer.errors()).containsExactly("TOO_MANY_TRIM_PIECES #/profiles");
        assertThat(answer.json().at("/errors/0/limit/value").asInt()).isEqualTo(20_000);
    }

    /** Whatever figures a caller gives, there is an answer without strange numbers or a refusal with a reason. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void anyFigureIsAnsweredOrRefused(long seed) throws IOException {
        Random random = new Random(seed);
        ObjectNode demo = example("layouts-demo");
        int answered = 0;
        for (int i = 0; i < 30; i++) {
            ObjectNode request = demo.deepCopy();
            request.retain("units", "roof", "panel");
            request.set("trims", Door.json(anyTrims(random)));
            Answer answer = Door.post("/v1/trims", request.toString());
            if (answer.status() == 200) {
                answered++;
                assertThat(answer.text()).doesNotContain("NaN").doesNotContain("Infinity");
            } else {
                assertThat(answer.status()).as(answer.text()).isIn(400, 422);
                answer.isProblem(answer.status());
            }
        }
        assertThat(answered).isGreaterThan(5);
    }

    private static String anyTrims(Random random) {
        int legs = 2 + random.nextInt(5);
        String girths = String.join(
                ", ",
                IntStream.range(0, legs)
                        .mapToObj(i -> Double.toString(any(random, 3)))
                        .toList());
        String bends = String.join(
                ", ",
                IntStream.range(1, legs)
                        .mapToObj(i -> Integer.toString(random.nextInt(361) - 180))
                        .toList());
        String profile = """
                {"lap": %s, "profile": {"legs": [%s], "bendsDeg": [%s], "atEdge": %d, "height": %s,
                 "hems": {"first": {"girth": %s, "gap": %s}, "last": {"girth": %s, "up": true}}}}
                """.formatted(
                        any(random, 4),
                        girths,
                        bends,
                        1 + random.nextInt(legs - 1),
                        any(random, 1),
                        any(random, 0.5),
                        any(random, 0.1),
                        any(random, 0.5));
        String[] kinds = {"eave", "rake", "ridge", "hip", "pitchBreak", "sideWall", "headWall", "opening"};
        return """
                {"sheet": {"thickness": %s, "insideRadius": %s, %s}, "stock": {"pieceLength": %s, "shortestPiece": %s},
                 "past": %s, "kinds": {"%s": %s}}
                """.formatted(
                        any(random, 0.03),
                        any(random, 0.03),
                        random.nextBoolean() ? "\"bendFormula\": \"din6935\"" : "\"kFactor\": " + random.nextDouble(),
                        any(random, 60),
                        any(random, 10),
                        any(random, 1),
                        kinds[random.nextInt(kinds.length)],
                        profile);
    }

    /** About {@code usual}; sometimes a thousandth of it, a thousand times it, or nothing at all. */
    private static double any(Random random, double usual) {
        double about = usual * (0.5 + random.nextDouble());
        return switch (random.nextInt(60)) {
            case 0 -> 0;
            case 1 -> about / 1000;
            case 2 -> about * 1000;
            default -> about;
        };
    }
}
