package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * The demo house, the boathouse at Heron Slip: its edges and planes against what its drawing says ({@code demo/boathouse.md}
 * and the tables beside it), and its panels against the laws of every layout.
 */
@QuarkusTest
class BoathouseTest {

    private static final Path DEMO = Path.of("src", "test", "resources", "demo");
    private static final double HALF_DIGIT = 5.001e-5;

    private JsonNode points;
    private JsonNode answer;

    @BeforeEach
    void post() throws IOException {
        String request = Files.readString(Path.of("openapi", "examples", "layouts-demo.request.json"));
        points = Door.json(request).at("/roof/points");
        answer = Door.post("/v1/layouts", request).json();
    }

    private static List<CSVRecord> table(String name) throws IOException {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setCommentMarker('#')
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (CSVParser parser = CSVParser.parse(DEMO.resolve(name), StandardCharsets.UTF_8, format)) {
            return parser.getRecords();
        }
    }

    @Test
    void itsEdgesAreThoseDrawn() throws IOException {
        List<CSVRecord> drawn = table("boathouse-edges.csv");
        assertThat(answer.at("/roof/edges")).hasSameSizeAs(drawn);
        for (CSVRecord edge : drawn) {
            String corners = edge.get("corners");
            JsonNode found = edge(
                    points.path(corners.substring(0, corners.indexOf('-'))),
                    points.path(corners.substring(corners.indexOf('-') + 1)));
            List<String> planes = new ArrayList<>();
            found.path("planes").forEach(plane -> planes.add(plane.asText()));
            assertThat(found.path("kind").asText()).as(corners).isEqualTo(edge.get("kind"));
            assertThat(planes)
                    .as(corners)
                    .containsExactlyInAnyOrder(edge.get("planes").split(" "));
            isPrinted(found.at("/length/value"), edge, "length");
            isPrinted(found.path("slopeDeg"), edge, "slopeDeg");
            isPrinted(found.path("bendDeg"), edge, "bendDeg");
        }
    }

    private static void isPrinted(JsonNode found, CSVRecord row, String column) {
        assertThat(found.asDouble())
                .as("%s of %s", column, row.get(0))
                .isCloseTo(Double.parseDouble(row.get(column)), within(2 * HALF_DIGIT));
    }

    private JsonNode edge(JsonNode from, JsonNode to) {
        for (JsonNode edge : answer.at("/roof/edges")) {
            JsonNode a = edge.path("from");
            JsonNode b = edge.path("to");
            if ((same(a, from) && same(b, to)) || (same(a, to) && same(b, from))) {
                return edge;
            }
        }
        throw new AssertionError("no edge from " + from + " to " + to);
    }

    private static boolean same(JsonNode a, JsonNode b) {
        for (int i = 0; i < 3; i++) {
            if (Math.abs(a.get(i).asDouble() - b.get(i).asDouble()) > HALF_DIGIT) {
                return false;
            }
        }
        return true;
    }

    @Test
    void itsPlanesAreThoseDrawn() throws IOException {
        List<CSVRecord> drawn = table("boathouse-planes.csv");
        assertThat(answer.at("/roof/planes")).hasSameSizeAs(drawn);
        for (int i = 0; i < drawn.size(); i++) {
            JsonNode found = answer.at("/roof/planes").get(i);
            assertThat(found.path("id").asText()).isEqualTo(drawn.get(i).get("plane"));
            isPrinted(found.at("/pitch/rise"), drawn.get(i), "riseIn12");
            isPrinted(found.path("slopeDeg"), drawn.get(i), "slopeDeg");
            isPrinted(found.path("area"), drawn.get(i), "area");
            isPrinted(found.path("planArea"), drawn.get(i), "planArea");
        }
    }

    /** Cover 18 in: a full cut at the 6:12 and 8:12 valley rises 26.8328 in on the one plane and 16.2250 in on the other. */
    @Test
    void fullCutsAtTheUnequalValleyRiseAsTheTradeTableSays() {
        JsonNode valley = edge(points.path("B"), points.path("M"));
        Set<Double> onSouth = new HashSet<>();
        Set<Double> onWing = new HashSet<>();
        for (JsonNode panel : answer.path("panels")) {
            for (JsonNode cut : panel.path("cuts")) {
                if (cut.path("edge").equals(valley.path("id")) && cut.has("left") && cut.has("right")) {
                    (panel.path("plane").asText().equals("south") ? onSouth : onWing)
                            .add(cut.at("/rise/value").asDouble());
                }
            }
        }
        assertThat(onSouth).containsExactly(26.8328);
        assertThat(onWing).containsExactly(16.225);
    }

    @Test
    void everyPanelIsListedOnceInTheOrderAndFitsItsBlank() {
        List<String> ordered = new ArrayList<>();
        answer.path("order").forEach(line -> line.path("marks").forEach(mark -> ordered.add(mark.asText())));
        List<String> marks = new ArrayList<>();
        for (JsonNode panel : answer.path("panels")) {
            marks.add(panel.path("mark").asText());
            double blank = panel.at("/blankLength/value").asDouble();
            assertThat(blank % 0.25).isZero();
            for (JsonNode corner : panel.at("/cut/outline")) {
                assertThat(corner.get(0).asDouble()).isBetween(0.0, 18.0);
                assertThat(corner.get(1).asDouble()).isBetween(0.0, blank);
            }
        }
        assertThat(marks).doesNotHaveDuplicates();
        assertThat(ordered).containsExactlyInAnyOrderElementsOf(marks);
    }

    @Test
    void totalsAreTotalsOfWhatIsListed() {
        double length = 0;
        int count = 0;
        for (JsonNode line : answer.path("order")) {
            length += line.at("/blankLength/value").asDouble()
                    * line.path("count").asInt();
            count += line.path("count").asInt();
        }
        assertThat(total("panels")).isEqualTo(count);
        assertThat(total("orderedLength")).isEqualTo(length);
        assertThat(total("orderedArea")).isCloseTo(length * 18 / 144, within(HALF_DIGIT));
        // 24 gauge galvanized sheet, 1.156 lb/ft2: see the gauge table.
        assertThat(total("mass")).isCloseTo(length * 21 / 144 * 1.156, within(5.1e-4));
    }

    private double total(String item) {
        for (JsonNode total : answer.path("totals")) {
            if (total.path("item").asText().equals(item)) {
                return total.path("quantity").asDouble();
            }
        }
        throw new AssertionError("no total of " + item);
    }
}
