package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.thalweg.api.Door.Answer;

/** One valley through the door: what callers may say, what they are told, and that a layout says the same. */
@QuarkusTest
class ValleysTest {

    private static final Path EXAMPLES = Path.of("openapi", "examples");
    private static final double LAST_DIGIT = 1.001e-4;

    private static String square(String corner, String more) {
        return """
                {"units": {"length": "in", "area": "ft2", "mass": "lb"},
                 "corner": {"pitches": ["6:12", "6:12"], "planAngleDeg": 90%s},
                 "panel": {"cover": 18}%s}
                """.formatted(corner, more);
    }

    private static Answer post(String body) {
        return Door.post("/v1/valleys", body);
    }

    private static JsonNode valley(String body) {
        Answer answer = post(body);
        assertThat(answer.status()).as(answer.text()).isEqualTo(200);
        return answer.json().at("/valleys/0");
    }

    @ParameterizedTest(name = "{1} at {2}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            ``                            | ``                                              | EITHER_OR       | #/corner
            , "run": 100, "length": 100   | ``                                              | EITHER_OR       | #/corner
            , "run": 0                    | ``                                              | OUT_OF_RANGE    | #/corner/run
            , "run": 100, "top": "sky"    | ``                                              | UNKNOWN_VALUE   | #/corner/top
            , "run": 100                  | , "roof": {"points": {}, "planes": []}          | EITHER_OR       | #
            , "run": 100                  | , "edge": "V1"                                  | EITHER_OR       | #
            , "run": 100                  | , "valleyPan": {"holdBack": 12, "cover": 6}     | EITHER_OR       | #/valleyPan/cover
            , "run": 100                  | , "valleyPan": {"coilWidth": 10}                | OUT_OF_RANGE    | #/valleyPan/coilWidth
            , "run": 100                  | , "valleyPan": {"pieceLength": 24, "lap": 23}   | OUT_OF_RANGE    | #/valleyPan/pieceLength
            , "run": 100                  | , "valleyPan": {"widening": "2:12"}             | OUT_OF_RANGE    | #/valleyPan/widening
            , "run": 100                  | , "valleyPan": {"stations": [1, -1]}            | OUT_OF_RANGE    | #/valleyPan/stations/1
            , "run": 100                  | , "climate": {"lowest": 0}                      | MISSING_MEMBER  | #/climate
            , "run": 100                  | , "climate": {"lowest": 0, "temperature": "K"}  | UNKNOWN_VALUE   | #/climate/temperature
            , "run": 100                  | , "climate": {"lowest": 70, "temperature": "F"} | OUT_OF_RANGE    | #/climate
            , "run": 100                  | , "climate": {"rainfall": 0}                    | OUT_OF_RANGE    | #/climate/rainfall
            , "run": 100                  | , "edgeTreatments": {"valley": {"hold": "glued"}} | UNKNOWN_VALUE | #/edgeTreatments/valley/hold
            , "run": 100                  | , "start": {"by": "centred"}                    | UNKNOWN_MEMBER  | #/start
            """)
    void whatDoesNotFitIsToldWithItsPlace(String corner, String more, String code, String pointer) {
        Answer answer = post(square(corner, more)).isProblem(400);
        assertThat(answer.errors()).contains(code + " " + pointer);
    }

    @ParameterizedTest(name = "{0} {1}: {3} at {4}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            ["6:12", "6:12"]  | 180 | "run": 100     | NO_VALLEY | #/corner/planAngleDeg
            ["0:12", "6:12"]  | 90  | "run": 100     | NO_VALLEY | #/corner/pitches
            ["1:12", "2:12"]  | 14  | "length": 100  | NO_VALLEY | #/corner
            ["1:12", "12:12"] | 150 | "run": 100     | NO_RUN    | #/corner/run
            """)
    void cornersWithoutAValleyAreRefusedWithAReason(
            String pitches, int planAngleDeg, String how, String code, String pointer) {
        Answer answer = post("""
                {"units": {"length": "in", "area": "ft2", "mass": "lb"}, "panel": {"cover": 18},
                 "corner": {"pitches": %s, "planAngleDeg": %d, %s}}
                """.formatted(pitches, planAngleDeg, how)).isProblem(422);
        assertThat(answer.errors()).containsExactly(code + " " + pointer);
    }

    @ParameterizedTest(name = "{0}: {1} at {2}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "edge": "V9"              | NO_SUCH_EDGE  | #/edge
            "edge": "E1"              | NOT_A_VALLEY  | #/edge
            "valley": ["A", "B"]      | NOT_A_VALLEY  | #/valley
            "valley": ["A", "T"]      | NO_SUCH_EDGE  | #/valley
            "valley": ["U", "nobody"] | UNKNOWN_POINT | #/valley
            """)
    void anEdgeOfARoofThatIsNoValleyIsRefusedWithAReason(String named, String code, String pointer) throws IOException {
        String dormer = Files.readString(EXAMPLES.resolve("valleys-dormer.request.json"));
        Answer answer =
                post(dormer.replace("\"valley\": [\"U\", \"T\"]", named)).isProblem(422);
        assertThat(answer.errors()).containsExactly(code + " " + pointer);
    }

    /** Every valley of the demo house and of the dormer, asked for alone, is what the layout of the roof says of it. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"layouts-demo", "layouts-dormer"})
    void aValleyAloneIsToTheLastDigitWhatALayoutSays(String example) throws IOException {
        ObjectNode request = (ObjectNode) Door.json(Files.readString(EXAMPLES.resolve(example + ".request.json")));
        request.putArray("include").add("working");
        JsonNode laid = Door.post("/v1/layouts", request.toString()).json().path("valleys");
        request.remove(List.of("start", "laying", "hipCap", "trims", "underlayment", "ordering"));
        assertThat(laid).isNotEmpty();
        for (JsonNode valley : laid) {
            request.put("edge", valley.path("edge").asText());
            JsonNode alone = post(request.toString()).json().path("valleys");
            assertThat(alone).hasSize(1);
            assertThat(alone.get(0)).isEqualTo(valley);
        }
    }

    /** What a valley has in common with the same one given as a roof: everything but names, pieces of eave and the world. */
    @Test
    void aCornerIsTheRoofItStandsFor() {
        JsonNode corner = valley(square(", \"run\": 144", ""));
        JsonNode roof = valley("""
                {"units": {"length": "in", "area": "ft2", "mass": "lb"}, "panel": {"cover": 18}, "edge": "V1",
                 "roof": {"points": {"A": [-300, 0, 50], "O": [0, 0, 50], "T": [144, 144, 122], "R": [-300, 144, 122],
                                     "B": [0, -300, 50], "S": [144, -300, 122]},
                          "planes": [{"id": "left", "outline": ["A", "O", "T", "R"]},
                                     {"id": "right", "outline": ["O", "B", "S", "T"]}]}}
                """);
        for (String figure : List.of("length", "slopeDeg", "bendDeg", "pan", "pieces", "movement", "drainage")) {
            assertThat(corner.path(figure)).as(figure).isEqualTo(roof.path(figure));
        }
    }

    @Test
    void aFigureOfALineIsFoundAgainByTape() {
        JsonNode side = valley(square(", \"run\": 144", "")).at("/sides/0");
        // 12 3/4 in square to a valley at 48.1897° from the eave is 12.75 / sin φ = 17.1059 in along it.
        assertThat(side.at("/chalkLine/lower/along/value").asDouble()).isCloseTo(17.1059, within(LAST_DIGIT));
        assertThat(side.at("/chalkLine/lower/along/tape").asText()).isEqualTo("17 1/8\"");
    }

    @Test
    void aSetbackOfTheValleyGoesBeforeThePan() {
        JsonNode valley = valley(square(
                ", \"run\": 144",
                ", \"valleyPan\": {\"holdBack\": 9}, \"edgeTreatments\": {\"valley\": {\"setback\": 11}}"));
        assertThat(valley.at("/sides/0/holdBack/value").asDouble()).isEqualTo(11);
        assertThat(valley.at("/sides/1/coverUnderPanel/value").asDouble()).isEqualTo(7.75);
    }

    @Test
    void tooNarrowACoilIsToldTheOneThatWouldDo() {
        Answer answer = post(square(", \"run\": 144", ", \"valleyPan\": {\"coilWidth\": 36, \"holdBack\": 10}"));
        JsonNode finding = answer.json().at("/findings/0");
        assertThat(finding.path("code").asText()).isEqualTo("COVER_TOO_SMALL");
        // Flat 36/2 − 5 1/4 = 12 3/4, so 2 3/4 in of cover; 2 (10 + 6 + 5 1/4) = 42 1/2 in would do.
        assertThat(finding.at("/actual/value").asDouble()).isEqualTo(2.75);
        assertThat(finding.at("/needed/coilWidth/value").asDouble()).isEqualTo(42.5);
        assertThat(finding.path("message").asText()).contains("42.5 in");
    }

    @Test
    void aScrewedPanelThatMovesIsTold() {
        Answer answer = post(square(", \"run\": 144", ""));
        assertThat(answer.json().at("/findings/0/code").asText()).isEqualTo("FIXED_PANEL_MOVES");
        assertThat(answer.json().at("/findings/0/place/pointer").asText()).isEqualTo("#/corner");
        assertThat(answer.json().at("/valleys/0/movement/recommended").asText()).isEqualTo("cleated");
        Answer cleated = post(square(", \"run\": 144", ", \"edgeTreatments\": {\"valley\": {\"hold\": \"cleated\"}}"));
        assertThat(cleated.json().path("findings")).isEmpty();
        assertThat(cleated.json()
                        .at("/valleys/0/sides/0/cleat/notchSpacing/value")
                        .asDouble())
                .isCloseTo(27, within(LAST_DIGIT)); // 18 / cos 48.1897°
    }

    /** A panel held by a cleat gets its hem in the cut outline, 1 in unless another is given. */
    @Test
    void aCleatAddsItsHemToTheBlanks() throws IOException {
        String dormer = Files.readString(EXAMPLES.resolve("layouts-dormer.request.json"));
        String screwed = dormer.replace("\"cleated\"", "\"fixed\"");
        List<Double> longer = lengths(dormer);
        List<Double> shorter = lengths(screwed);
        assertThat(longer).hasSameSizeAs(shorter).isNotEqualTo(shorter);
        for (int i = 0; i < longer.size(); i++) {
            assertThat(longer.get(i)).isGreaterThanOrEqualTo(shorter.get(i));
        }
    }

    private static List<Double> lengths(String request) {
        List<Double> lengths = new ArrayList<>();
        Door.post("/v1/layouts", request)
                .json()
                .path("panels")
                .forEach(panel -> lengths.add(panel.at("/blankLength/value").asDouble()));
        return lengths;
    }

    /** Metres, millimetres, feet: the valley is the same, read in another unit. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"ft, 12", "m, 39.37007874015748", "cm, 0.3937007874015748", "mm, 0.03937007874015748"})
    void anotherUnitIsTheSameValley(String unit, double inches) {
        JsonNode one = valley(square(", \"run\": \"144 in\"", pan("")));
        JsonNode other = valley(square(", \"run\": \"144 in\"", pan(" in"))
                .replace("\"length\": \"in\"", "\"length\": \"" + unit + "\"")
                .replace("\"cover\": 18", "\"cover\": \"18 in\""));
        assertThat(other.at("/length/value").asDouble() * inches).isCloseTo(216, within(0.003));
        assertThat(other.path("bendDeg")).isEqualTo(one.path("bendDeg"));
        assertThat(other.path("pieces")).hasSameSizeAs(one.path("pieces"));
        assertThat(other.at("/sides/1/chalkLine/length/value").asDouble() * inches)
                .isCloseTo(one.at("/sides/1/chalkLine/length/value").asDouble(), within(0.003));
        assertThat(other.at("/drainage/sides/0/catchment")).isEqualTo(one.at("/drainage/sides/0/catchment"));
    }

    private static String pan(String unit) {
        return ", \"valleyPan\": {\"coilWidth\": \"48%1$s\", \"ribLeg\": \"4 1/4%1$s\", \"edgeReturn\": \"1%1$s\", \"lap\": \"8%1$s\"}"
                .formatted(unit);
    }

    @Test
    void moreWorkThanOneRequestMayCostIsRefusedBeforeItStarts() {
        String long1 = square(", \"length\": 39000", ", \"valleyPan\": {\"pieceLength\": 12, \"lap\": 8}");
        assertThat(post(long1).isProblem(422).errors()).containsExactly("TOO_MANY_PIECES #/corner");
    }

    /** Figures of every size at every place: answered, or refused with a reason; never a failure of the service. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void anyFigureIsAnsweredOrRefused(long seed) {
        Random random = new Random(seed);
        int answered = 0;
        for (int i = 0; i < 60; i++) {
            Answer answer = post(anyValley(random));
            if (answer.status() == 200) {
                answered++;
                assertThat(answer.text()).doesNotContain("NaN").doesNotContain("Infinity");
            } else {
                assertThat(answer.status()).as(answer.text()).isIn(400, 422);
                answer.isProblem(answer.status());
            }
        }
        assertThat(answered).isGreaterThan(10);
    }

    private static String anyValley(Random random) {
        StringBuilder pan = new StringBuilder("\"coilWidth\": ").append(any(random, 1.2));
        String[] members = {
            "ribLeg",
            "edgeReturn",
            "pieceLength",
            "lap",
            "shortestPiece",
            "eaveProjection",
            "ribPastEave",
            "ribPastValley",
            "waterMargin",
            "edgeInset",
            "fastenerSpacing",
            "cleatLength"
        };
        double[] usual = {0.1, 0.02, 3, 0.2, 0.3, 0.01, 0.05, 0.6, 0.02, 0.02, 0.3, 3};
        for (int i = 0; i < members.length; i++) {
            if (random.nextInt(4) == 0) {
                pan.append(", \"%s\": %s".formatted(members[i], any(random, usual[i])));
            }
        }
        if (random.nextBoolean()) {
            pan.append(random.nextBoolean() ? ", \"holdBack\": " : ", \"cover\": ")
                    .append(any(random, 0.2));
        }
        return """
                {"units": {"length": "m", "area": "m2", "mass": "kg"}, "panel": {"cover": %s},
                 "corner": {"pitches": ["%s:12", "%s:12"], "planAngleDeg": %s, "%s": %s},
                 "valleyPan": {%s}, "climate": {"rainfall": %s}, "include": ["working"],
                 "edgeTreatments": {"valley": {"hold": "%s"}}}
                """.formatted(
                        0.05 + random.nextDouble(),
                        any(random, 6),
                        any(random, 6),
                        1 + 179 * random.nextDouble(),
                        random.nextBoolean() ? "run" : "length",
                        any(random, 4),
                        pan,
                        any(random, 0.05),
                        random.nextBoolean() ? "fixed" : "cleated");
    }

    /** About {@code usual}; sometimes a thousandth of it, a thousand times it, or nothing at all. */
    private static double any(Random random, double usual) {
        double about = usual * (0.5 + random.nextDouble());
        return switch (random.nextInt(40)) {
            case 0 -> 0;
            case 1 -> about / 1000;
            case 2 -> about * 1000;
            default -> about;
        };
    }
}
