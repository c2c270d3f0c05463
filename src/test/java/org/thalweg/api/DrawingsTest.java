package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringReader;
import java.math.BigDecimal;
import java.net.http.HttpClient;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The same answer as a drawing, a packet, a list and full-size blanks: what is on them is what the JSON says. */
@QuarkusTest
class DrawingsTest {

    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    private static final String METRIC = """
            {"units": {"length": "mm", "area": "m2", "mass": "kg"}, "panel": {"cover": 450},
             "roof": {"points": {"A": [0, 0, 0], "B": [3810, 0, 0], "C": [3810, 2438, 610], "D": [0, 2438, 610]},
                      "planes": [{"id": "shed", "outline": ["A", "B", "C", "D"]}]}}
            """;

    private static String example(String name) throws IOException {
        return Files.readString(Path.of("openapi", "examples", name + ".request.json"));
    }

    private static HttpResponse<byte[]> ask(String path, String accept, String body) throws IOException {
        try {
            return CLIENT.send(
                    Door.request(path)
                            .POST(BodyPublishers.ofString(body))
                            .header("Content-Type", "application/json")
                            .header("Accept", accept)
                            .build(),
                    BodyHandlers.ofByteArray());
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    private static byte[] drawn(String path, String accept, String body) throws IOException {
        HttpResponse<byte[]> response = ask(path, accept, body);
        assertThat(response.statusCode())
                .as(() -> new String(response.body(), StandardCharsets.UTF_8))
                .isEqualTo(200);
        assertThat(response.headers().firstValue("Content-Type").orElse("")).startsWith(accept);
        return response.body();
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    /** Every tape mark under {@code node}. */
    private static void tapes(JsonNode node, Set<String> found) {
        if (node.has("tape")) {
            found.add(node.path("tape").asText());
        }
        node.forEach(child -> tapes(child, found));
    }

    private static Document xml(byte[] svg) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        return factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg));
    }

    private static List<CSVRecord> rows(byte[] csv) throws IOException {
        return CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(new StringReader(new String(csv, StandardCharsets.UTF_8)))
                .getRecords();
    }

    private static BigDecimal sum(List<CSVRecord> rows, String column) {
        return rows.stream()
                .map(row -> row.get(column))
                .filter(cell -> !cell.isEmpty())
                .map(BigDecimal::new)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static BigDecimal total(JsonNode answer, String item) {
        for (JsonNode total : answer.path("totals")) {
            if (total.path("item").asText().equals(item) && !total.has("of")) {
                return total.path("quantity").decimalValue();
            }
        }
        throw new AssertionError("no total of " + item);
    }

    @ParameterizedTest
    @CsvSource({
        "*/*, application/json",
        "application/*, application/json",
        "'text/html,*/*;q=0.1', application/json",
        "'application/json, image/svg+xml;q=0.9', application/json",
        "'image/svg+xml, application/json;q=0.5', image/svg+xml",
        "image/*, image/svg+xml",
        "application/pdf, application/pdf",
        "text/*, text/csv",
        "image/vnd.dxf, image/vnd.dxf"
    })
    void whoeverTakesAnythingGetsJson(String accept, String expected) throws IOException {
        HttpResponse<byte[]> response = ask("/v1/layouts", accept, example("layouts-shed"));

        assertThat(response.statusCode()).isEqualTo(200);
        assertThat(response.headers().firstValue("Content-Type").orElse("")).startsWith(expected);
    }

    @Test
    void whoeverNamesNoFormGetsJson() throws IOException {
        assertThat(Door.post("/v1/layouts", example("layouts-shed")).type()).startsWith("application/json");
        assertThat(Door.post("/v1/valleys", example("valleys-square")).type()).startsWith("application/json");
    }

    @Test
    void aFormThatIsNotAnsweredIsToldWhichAre() throws IOException {
        Door.Answer answer = Door.send(Door.request("/v1/layouts")
                .POST(BodyPublishers.ofString(example("layouts-shed")))
                .header("Content-Type", "application/json")
                .header("Accept", "image/png"));

        assertThat(answer.isProblem(406).json().path("detail").asText())
                .endsWith("It answers application/json, application/pdf, image/svg+xml, image/vnd.dxf, text/csv.");
    }

    @ParameterizedTest
    @CsvSource({
        "/v1/layouts, image/svg+xml, layouts-demo",
        "/v1/layouts, application/pdf, layouts-demo",
        "/v1/layouts, text/csv, layouts-demo",
        "/v1/layouts, image/vnd.dxf, layouts-demo",
        "/v1/valleys, image/svg+xml, valleys-square",
        "/v1/valleys, application/pdf, valleys-square",
        "/v1/valleys, text/csv, valleys-square",
        "/v1/valleys, image/vnd.dxf, valleys-square"
    })
    void theSameRequestIsDrawnInTheSameBytes(String path, String accept, String name) throws IOException {
        byte[] first = drawn(path, accept, example(name));

        assertThat(first).isNotEmpty().isEqualTo(drawn(path, accept, example(name)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"map", "planes", "tickets", "valleys", "trims", "cutting", "fasteners", "order", "findings"})
    void everyViewIsADrawingWithATitleAndADescription(String view) throws Exception {
        Document svg = xml(drawn("/v1/layouts?view=" + view, "image/svg+xml", example("layouts-demo")));
        Element root = svg.getDocumentElement();

        assertThat(root.getLocalName()).isEqualTo("svg");
        assertThat(root.getAttribute("aria-labelledby")).isEqualTo("title desc");
        assertThat(svg.getElementsByTagName("title").item(0).getTextContent()).endsWith("Boathouse, all roofs");
        assertThat(svg.getElementsByTagName("desc").item(0).getTextContent()).isNotBlank();
        NodeList all = svg.getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            Element element = (Element) all.item(i);
            assertThat(element.getTagName()).isNotIn("script", "style", "foreignObject", "image");
            assertThat(element.hasAttribute("style")).isFalse();
        }
    }

    @Test
    void theMapNamesEveryPlaneAndEdge() throws Exception {
        JsonNode answer = Door.post("/v1/layouts", example("layouts-demo")).json();
        Document svg = xml(drawn("/v1/layouts?view=map", "image/svg+xml", example("layouts-demo")));
        Set<String> lettered = new TreeSet<>();
        NodeList texts = svg.getElementsByTagName("text");
        for (int i = 0; i < texts.getLength(); i++) {
            lettered.add(texts.item(i).getTextContent());
        }

        answer.at("/roof/planes")
                .forEach(plane -> assertThat(lettered).contains(plane.path("id").asText()));
        answer.at("/roof/edges").forEach(edge -> assertThat(lettered)
                .contains(edge.path("id").asText(), edge.at("/length/tape").asText()));
    }

    @Test
    void thePacketSaysWhatTheJsonSays() throws IOException {
        JsonNode answer = Door.post("/v1/layouts", example("layouts-demo")).json();
        String text = text(drawn("/v1/layouts", "application/pdf", example("layouts-demo")))
                .replaceAll("\\s+", " ");
        Set<String> marks = new TreeSet<>();
        answer.path("panels").forEach(panel -> {
            tapes(panel.path("cuts"), marks);
            tapes(panel.path("blankLength"), marks);
        });
        answer.path("valleys").forEach(valley -> tapes(valley.path("pieces"), marks));
        answer.path("trims").forEach(trim -> tapes(trim.path("legs"), marks));

        assertThat(marks).hasSizeGreaterThan(100);
        marks.forEach(mark -> assertThat(text).contains(mark));
        answer.path("orderLines")
                .forEach(line -> assertThat(text).contains(line.path("ordered").asText()));
        answer.path("totals").forEach(total -> assertThat(text)
                .contains(total.path("quantity").asText()));
        answer.path("cautions").forEach(caution -> assertThat(text)
                .contains(caution.path("text").asText()));
        answer.path("findings").forEach(finding -> assertThat(text)
                .contains(finding.path("code").asText(), finding.path("source").asText()));
        assertThat(text).contains(answer.path("digest").asText(), "Boathouse, all roofs", "Sheet 1 of ");
    }

    @Test
    void everySheetIsNumberedAndNamesTheJobTheRequestAndItsScale() throws IOException {
        JsonNode answer = Door.post("/v1/layouts", example("layouts-demo")).json();
        byte[] pdf = drawn("/v1/layouts", "application/pdf", example("layouts-demo"));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            int count = document.getNumberOfPages();
            PDFTextStripper stripper = new PDFTextStripper();
            for (int page = 1; page <= count; page++) {
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                assertThat(stripper.getText(document))
                        .contains(
                                "Sheet " + page + " of " + count,
                                "Boathouse, all roofs",
                                answer.path("digest").asText(),
                                "Scale ",
                                "local codes and the engineer decide");
            }
            assertThat(document.getPage(0).getMediaBox().getWidth()).isEqualTo(792);
        }
    }

    @Test
    void metricPacketsAreDrawnOnA4UnlessAskedOtherwise() throws IOException {
        float own = width(drawn("/v1/layouts?view=map", "application/pdf", METRIC));
        float letter = width(drawn("/v1/layouts?view=map&paper=letter", "application/pdf", METRIC));

        assertThat(own).isEqualTo((float) (297 / 25.4 * 72));
        assertThat(letter).isEqualTo(792);
    }

    private static float width(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return document.getPage(0).getMediaBox().getWidth();
        }
    }

    @Test
    void theCutListAddsUpToTheTotals() throws IOException {
        JsonNode answer = Door.post("/v1/layouts", example("layouts-demo")).json();
        List<CSVRecord> rows = rows(drawn("/v1/layouts", "text/csv", example("layouts-demo")));
        List<CSVRecord> panels =
                rows.stream().filter(row -> row.get("kind").equals("panel")).toList();
        List<CSVRecord> pans = rows.stream()
                .filter(row -> row.get("kind").equals("valley pan"))
                .toList();

        assertThat(panels).hasSize(total(answer, "panels").intValue());
        assertThat(sum(panels, "length (in)")).isEqualByComparingTo(total(answer, "orderedLength"));
        assertThat(pans).hasSize(total(answer, "valleyPieces").intValue());
        assertThat(rows)
                .hasSize(panels.size()
                        + pans.size()
                        + total(answer, "trimPieces").intValue());
    }

    @Test
    void theOrderListAddsUpToTheTotals() throws IOException {
        JsonNode answer = Door.post("/v1/layouts", example("layouts-demo")).json();
        List<CSVRecord> rows = rows(drawn("/v1/layouts?list=order", "text/csv", example("layouts-demo")));

        assertThat(rows).hasSize(answer.path("orderLines").size());
        assertThat(sum(rows, "mass (lb)")).isEqualByComparingTo(total(answer, "orderedMass"));
        for (CSVRecord row : rows) {
            BigDecimal parts = new BigDecimal(row.get("net (unit)"))
                    .add(new BigDecimal(row.get("laps (unit)")))
                    .add(new BigDecimal(row.get("waste (unit)")));
            assertThat(parts).isEqualByComparingTo(row.get("ordered (unit)"));
        }
    }

    @Test
    void theFastenerListAddsUpToTheTotals() throws IOException {
        JsonNode answer = Door.post("/v1/layouts", example("layouts-demo")).json();
        List<CSVRecord> rows = rows(drawn("/v1/layouts?list=fasteners", "text/csv", example("layouts-demo")));
        List<CSVRecord> clips =
                rows.stream().filter(row -> row.get("kind").equals("clip")).toList();
        List<CSVRecord> others =
                rows.stream().filter(row -> !row.get("kind").equals("clip")).toList();

        assertThat(sum(clips, "count (pieces)")).isEqualByComparingTo(total(answer, "clips"));
        assertThat(sum(others, "count (pieces)")).isEqualByComparingTo(total(answer, "fasteners"));
    }

    @Test
    void cellsWithQuotesAndCommasComeBackWhole() throws IOException {
        ObjectNode request = (ObjectNode) Door.json(example("layouts-shed"));
        String id = "lean-to, \"north\"";
        ((ObjectNode) request.at("/roof/planes/0")).put("id", id);

        assertThat(rows(drawn("/v1/layouts", "text/csv", request.toString())))
                .filteredOn(row -> row.get("kind").equals("panel"))
                .isNotEmpty()
                .allSatisfy(row -> assertThat(row.get("of")).isEqualTo(id));
    }

    @ParameterizedTest
    @CsvSource({
        "/v1/layouts?view=panels, image/svg+xml, layouts-shed",
        "/v1/layouts?paper=a3, application/pdf, layouts-shed",
        "/v1/layouts?list=cuts, text/csv, layouts-shed",
        "/v1/valleys?view=tickets, image/svg+xml, valleys-square",
        "/v1/valleys?list=order, text/csv, valleys-square"
    })
    void aWordThatIsNotKnownIsRefusedWithThoseThatAre(String path, String accept, String name) throws IOException {
        Door.Answer answer = Door.send(Door.request(path)
                .POST(BodyPublishers.ofString(example(name)))
                .header("Content-Type", "application/json")
                .header("Accept", accept));

        assertThat(answer.isProblem(400).errors()).containsExactly("UNKNOWN_VALUE #");
        assertThat(answer.json().path("detail").asText()).contains("Take one of ");
    }

    @Test
    void whatCannotBeLaidOutIsToldAsAProblemInWhateverFormItIsAskedFor() throws IOException {
        for (String accept : List.of("image/svg+xml", "application/pdf", "text/csv", "image/vnd.dxf")) {
            Door.Answer answer = Door.send(Door.request("/v1/layouts")
                    .POST(BodyPublishers.ofString("{\"units\": {}}"))
                    .header("Content-Type", "application/json")
                    .header("Accept", accept));
            answer.isProblem(400);
        }
    }

    @Test
    void oneSheetIsDrawnWhereOneIsAskedFor() throws Exception {
        byte[] second = drawn("/v1/layouts?view=map&sheet=2", "image/svg+xml", example("layouts-demo"));
        byte[] all = drawn("/v1/layouts?view=map", "image/svg+xml", example("layouts-demo"));

        assertThat(xml(second).getElementsByTagName("g").getLength()).isEqualTo(1);
        assertThat(xml(all).getElementsByTagName("g").getLength()).isGreaterThan(1);
        assertThat(new String(second, StandardCharsets.UTF_8)).contains("Planes and edges", "Sheet 2 of 3");
    }

    @ParameterizedTest
    @ValueSource(strings = {"4", "0", "601", "-1", "1.0", "x", "99999999999"})
    void aSheetThatIsNotThereIsRefused(String sheet) throws IOException {
        Door.Answer answer = Door.send(Door.request("/v1/layouts?view=map&sheet=" + sheet)
                .POST(BodyPublishers.ofString(example("layouts-demo")))
                .header("Content-Type", "application/json")
                .header("Accept", "image/svg+xml"));

        assertThat(answer.isProblem(400).errors()).containsExactly("OUT_OF_RANGE #");
    }

    @Test
    void aViewOfNothingSaysSo() throws IOException {
        String text = text(drawn("/v1/layouts?view=cutting", "application/pdf", example("layouts-shed")));

        assertThat(text).contains("There is nothing of this to draw in the answer.");
    }

    @Test
    void lettersThatNoTypefaceHasDoNoHarm() throws Exception {
        ObjectNode request = (ObjectNode) Door.json(example("layouts-shed"));
        request.put("job", "納屋 <&> \u0000\uFFFE 🏠 Ärmel");
        byte[] svg = drawn("/v1/layouts", "image/svg+xml", request.toString());

        assertThat(xml(svg).getElementsByTagName("title").item(0).getTextContent())
                .contains("納屋 <&>", "🏠 Ärmel");
        assertThat(text(drawn("/v1/layouts", "application/pdf", request.toString())))
                .contains("Ärmel");
    }

    @Test
    void packetsPastTheLimitAreRefusedAndTheirListsAreNot() throws IOException {
        ObjectNode request = (ObjectNode) Door.json(example("layouts-shed"));
        ObjectNode points = (ObjectNode) request.at("/roof/points");
        points.removeAll();
        points.putArray("A").add(0).add(0).add(0);
        points.putArray("B").add(75_000).add(0).add(0);
        points.putArray("C").add(75_000).add(4_000).add(1_000);
        ((ObjectNode) request.at("/roof/planes/0"))
                .putArray("outline")
                .add("A")
                .add("B")
                .add("C");
        ((ObjectNode) request.path("panel")).put("longest", 7_000);
        request.putObject("fastening")
                .put("eaveSpacing", 100)
                .put("clipSpacing", 100)
                .put("stripSpacing", 100)
                .put("closureSpacing", 100);

        Door.Answer refused = Door.send(Door.request("/v1/layouts?view=tickets")
                .POST(BodyPublishers.ofString(request.toString()))
                .header("Content-Type", "application/json")
                .header("Accept", "application/pdf"));

        assertThat(refused.isProblem(422).errors()).containsExactly("PACKET_TOO_LONG #");
        assertThat(rows(drawn("/v1/layouts", "text/csv", request.toString()))).hasSizeGreaterThan(2_000);
    }
}
