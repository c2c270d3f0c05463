package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LinearRing;
import org.thalweg.api.Door.Answer;
import org.thalweg.geometry.Jts;

/**
 * Polygons that trouble mature libraries, posted as the one plane of a roof. Source and licence: {@code ATTRIBUTION.md} beside
 * them. What JTS calls valid is laid; the rest is refused with its place, or laid where it only touches itself in points.
 */
@QuarkusTest
class PolygonsTest {

    private static final Path POLYGONS = Path.of("src", "test", "resources", "polygons");
    /**
     * What JTS says of each, and what is answered. Four that JTS calls invalid only touch themselves in single points
     * (hourglass, issue111, outside-ring, self-touching); a roof plane may. One that JTS calls valid, issue17, is as wide as the
     * world, with an opening that folds up under the tolerance here.
     */
    private static final String EXPECTED = """
            boxy: valid, laid
            building: valid, laid
            collinear-diagonal: invalid, 422 RING_CROSSES_ITSELF #/roof/planes/0/outline/9
            earcut: valid, laid
            empty-square: invalid, 422 OPENING_OUTSIDE #/roof/planes/0/openings/0/outline/2
            hilbert: valid, laid
            hole-touching-outer: valid, laid
            hourglass: invalid, laid
            infinite-loop-jhl: invalid, 422 OPENING_OUTSIDE #/roof/planes/0/openings/0/outline/0
            issue111: invalid, laid
            issue131: invalid, 422 OPENING_OUTSIDE #/roof/planes/0/openings/0/outline/4
            issue17: valid, 422 RING_CROSSES_ITSELF #/roof/planes/0/openings/0/outline
            issue186: invalid, 422 RING_CROSSES_ITSELF #/roof/planes/0/outline/82
            issue34: valid, laid
            issue35: valid, laid
            issue83: invalid, 422 TOO_FEW_CORNERS #/roof/planes/0/openings/1/outline
            outside-ring: invalid, laid
            rain: valid, laid
            self-tangent-2: valid, laid
            self-touching: invalid, laid
            steiner: invalid, 400 TOO_FEW #/roof/planes/0/openings/0/outline
            touching-holes6: valid, 400 TOO_MANY #/roof/planes/0/openings
            touching2: valid, laid
            touching4: valid, laid
            water-huge: invalid, 400 TOO_MANY #/roof/planes/0/openings
            water-huge2: invalid, 400 TOO_MANY #/roof/planes/0/openings
            water2: invalid, 422 RING_CROSSES_ITSELF #/roof/planes/0/outline/1004
            water3: invalid, 422 OPENING_OUTSIDE #/roof/planes/0/openings/1/outline/7
            water4: invalid, 422 OPENING_OUTSIDE #/roof/planes/0/openings/2/outline/0
            """;

    private static final ObjectMapper JSON = new ObjectMapper();

    /** Every polygon is brought to this width, so that the tolerance of a millimetre is small beside it. */
    private static final double WIDTH_MM = 40_000;

    /** A plane over the polygon that rises half a unit for each unit of y. */
    private static String roof(JsonNode rings) {
        double scale = WIDTH_MM / width(rings.get(0));
        ObjectNode request = JSON.createObjectNode();
        request.putObject("units").put("length", "mm").put("area", "m2").put("mass", "kg");
        ObjectNode roof = request.putObject("roof");
        ObjectNode points = roof.putObject("points");
        ObjectNode plane = roof.putArray("planes").addObject().put("id", "p");
        ArrayNode openings = JSON.createArrayNode();
        for (int r = 0; r < rings.size(); r++) {
            ArrayNode outline = JSON.createArrayNode();
            for (int i = 0; i < rings.get(r).size(); i++) {
                double x = rings.get(r).get(i).get(0).asDouble() * scale;
                double y = rings.get(r).get(i).get(1).asDouble() * scale;
                points.putArray(r + "." + i).add(x).add(y).add(y / 2);
                outline.add(r + "." + i);
            }
            if (r == 0) {
                plane.set("outline", outline);
            } else {
                openings.addObject().put("id", "o" + r).set("outline", outline);
            }
        }
        plane.set("openings", openings);
        request.putObject("panel").put("cover", 1000);
        return request.toString();
    }

    private static double width(JsonNode ring) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (JsonNode corner : ring) {
            least = Math.min(least, corner.get(0).asDouble());
            most = Math.max(most, corner.get(0).asDouble());
        }
        return most - least;
    }

    private static boolean valid(JsonNode rings) {
        LinearRing[] all = new LinearRing[rings.size()];
        for (int r = 0; r < all.length; r++) {
            int n = rings.get(r).size();
            if (n < 3) {
                return false;
            }
            Coordinate[] corners = new Coordinate[n + 1];
            for (int i = 0; i <= n; i++) {
                JsonNode corner = rings.get(r).get(i % n);
                corners[i] =
                        new Coordinate(corner.get(0).asDouble(), corner.get(1).asDouble());
            }
            all[r] = Jts.FACTORY.createLinearRing(corners);
        }
        return Jts.FACTORY
                .createPolygon(all[0], Arrays.copyOfRange(all, 1, all.length))
                .isValid();
    }

    private static Map<String, String> answered() throws IOException {
        Map<String, String> answered = new TreeMap<>();
        try (Stream<Path> files = Files.list(POLYGONS)) {
            for (Path file :
                    files.filter(f -> f.toString().endsWith(".json")).sorted().toList()) {
                long start = System.nanoTime();
                Answer answer = Door.post("/v1/layouts", roof(JSON.readTree(Files.readString(file))));
                assertThat(Duration.ofNanos(System.nanoTime() - start))
                        .as(file.toString())
                        .isLessThan(Duration.ofSeconds(10));
                String name = file.getFileName().toString().replace(".json", "");
                String valid = valid(JSON.readTree(Files.readString(file))) ? "valid" : "invalid";
                answered.put(name, valid + ", " + told(answer));
            }
        }
        return answered;
    }

    private static String told(Answer answer) {
        if (answer.status() == 200) {
            double roof = total(answer, "roofArea");
            assertThat(total(answer, "finishedArea")).isCloseTo(roof, within(1e-6 * roof + 1e-4));
        }
        JsonNode fault = answer.json().at("/errors/0");
        return answer.status() == 200
                ? "laid"
                : answer.status() + " " + fault.path("code").asText() + " "
                        + fault.path("pointer").asText();
    }

    private static double total(Answer answer, String item) {
        for (JsonNode total : answer.json().path("totals")) {
            if (total.path("item").asText().equals(item)) {
                return total.path("quantity").asDouble();
            }
        }
        throw new AssertionError("no total of " + item);
    }

    @Test
    void whatIsAPlaneIsLaidAndTheRestIsRefusedWithItsPlace() throws IOException {
        StringBuilder lines = new StringBuilder();
        answered()
                .forEach((name, told) ->
                        lines.append(name).append(": ").append(told).append('\n'));
        assertThat(lines.toString()).isEqualTo(EXPECTED);
    }
}
