package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.net.http.HttpRequest.BodyPublishers;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.thalweg.api.Door.Answer;
import org.thalweg.reference.Gauge;
import org.thalweg.reference.Gauges;
import org.thalweg.reference.MetalFigure;
import org.thalweg.reference.Metals;
import org.thalweg.reference.Rule;
import org.thalweg.reference.Rules;

/** The tables on the wall, over HTTP. */
@QuarkusTest
class ReferenceTest {

    private static final String METALS = "/v1/reference/metals";
    private static final String GAUGES = "/v1/reference/gauges";
    private static final String RULES = "/v1/reference/rules";

    @ParameterizedTest
    @ValueSource(strings = {METALS, GAUGES, RULES})
    void aTableIsAnsweredAsJsonAndAlwaysAlike(String path) {
        Answer answer = Door.get(path);
        assertThat(answer.status()).isEqualTo(200);
        assertThat(answer.type()).startsWith("application/json");
        assertThat(answer.json().path("engine").asText()).startsWith("thalweg/");
        assertThat(Door.get(path).text()).isEqualTo(answer.text());
    }

    @Test
    void figuresOfMetalsStandInTheOrderOfTheTable() {
        assertThat(rows(METALS, "figures"))
                .extracting(row -> text(row, "metal") + " " + text(row, "property"))
                .containsExactlyElementsOf(Metals.figures().stream()
                        .map(figure -> figure.metal() + " " + figure.property())
                        .toList());
    }

    @Test
    void gaugesStandInTheOrderOfTheTables() {
        assertThat(rows(GAUGES, "gauges"))
                .extracting(row -> text(row, "system") + " " + text(row, "thickness"))
                .containsExactlyElementsOf(Gauges.all().stream()
                        .map(gauge ->
                                gauge.system() + " " + gauge.thicknessInches().doubleValue())
                        .toList());
    }

    @Test
    void rulesStandInTheOrderOfTheTable() {
        assertThat(rows(RULES, "rules"))
                .extracting(row -> text(row, "topic") + ": " + text(row, "rule"))
                .containsExactlyElementsOf(Rules.all().stream()
                        .map(rule -> rule.topic() + ": " + rule.rule())
                        .toList());
    }

    @Test
    void everyFigureIsToldWithItsSourceAndHowSureWeAre() {
        assertThat(rows(METALS, "figures"))
                .extracting(row -> text(row, "source") + " | " + text(row, "confidence"))
                .containsExactlyElementsOf(Metals.figures().stream()
                        .map((MetalFigure figure) -> figure.source() + " | " + figure.confidence())
                        .toList());
        assertThat(rows(GAUGES, "gauges"))
                .extracting(row -> text(row, "source") + " | " + text(row, "confidence"))
                .containsExactlyElementsOf(Gauges.all().stream()
                        .map((Gauge gauge) -> gauge.source() + " | " + gauge.confidence())
                        .toList());
        assertThat(rows(RULES, "rules"))
                .extracting(row -> text(row, "source") + " | " + text(row, "confidence"))
                .containsExactlyElementsOf(Rules.all().stream()
                        .map((Rule rule) -> rule.source() + " | " + rule.confidence())
                        .toList());
    }

    /** Typed in from the sources: alloy 3003 weighs 0.0986 lb/in³; aluminum grows 1.29e-5 of its length per °F. */
    @Test
    void aMetalShowsTheFiguresUsedForItAsTheyWerePrinted() {
        JsonNode aluminum = row(METALS, "metals", "key", "aluminum");
        assertThat(text(aluminum, "gaugeSystem")).isEqualTo("aluminum_decimal");
        assertThat(aluminum.at("/density/value").asDouble()).isEqualTo(0.0986);
        assertThat(aluminum.at("/density/unit").asText()).isEqualTo("lb/in3");
        assertThat(aluminum.at("/expansion/value").asDouble()).isCloseTo(1.29e-5, within(1e-12));
        assertThat(aluminum.at("/expansion/unit").asText()).isEqualTo("in/in/F");
        List<JsonNode> figures = rows(METALS, "figures");
        assertThat(figures).contains(aluminum.path("density"), aluminum.path("expansion"));
    }

    @Test
    void everyMetalARequestMayNameIsListed() {
        assertThat(rows(METALS, "metals"))
                .extracting(row -> text(row, "key"))
                .containsExactly("galvanized-steel", "copper", "stainless-steel", "aluminum", "zinc");
    }

    @Test
    void aTableOfGaugesThatAMetalNamesIsThere() {
        List<String> systems = rows(GAUGES, "gauges").stream()
                .map(row -> text(row, "system"))
                .distinct()
                .toList();
        assertThat(rows(METALS, "metals")).isNotEmpty().allSatisfy(metal -> assertThat(systems)
                .contains(text(metal, "gaugeSystem")));
    }

    /** Digits count: 0.0500000 and 2.0000 are what the statute prints for 18 gauge (15 U.S.C. 206). */
    @Test
    void figuresKeepTheDigitsTheyWerePrintedWith() {
        assertThat(Door.get(GAUGES).text())
                .contains("{\"system\":\"us_standard_gauge_iron_steel\",\"gauge\":\"18\",\"thickness\":0.0500000,"
                        + "\"massPerArea\":2.0000,\"source\":\"15 U.S.C. 206 (1893 statute)\"");
    }

    @Test
    void aRuleWithSeveralFiguresHasThemAsTextAndNoNumber() {
        JsonNode several = row(RULES, "rules", "rule", "copper transverse seam, wide loose lock");
        assertThat(text(several, "printed")).isEqualTo("3 to 6");
        assertThat(several.has("value")).isFalse();
        JsonNode one = row(RULES, "rules", "rule", "lap of adjacent copper sheets");
        assertThat(text(one, "printed")).isEqualTo("8");
        assertThat(one.path("value").asInt()).isEqualTo(8);
        JsonNode none = row(RULES, "rules", "rule", "clips with two fasteners, head of valley fixed, rest free");
        assertThat(none.fieldNames()).toIterable().containsExactly("topic", "rule", "source", "confidence", "note");
    }

    /** What the contract says of a row holds for every row there is: no text longer, no number outside its range. */
    @Test
    void everyRowKeepsToTheContract() throws IOException {
        JsonNode schemas =
                new YAMLMapper().readTree(Door.get("/openapi").text()).at("/components/schemas");
        keepTo(schemas, "PrintedFigure", rows(METALS, "figures"));
        keepTo(schemas, "Gauge", rows(GAUGES, "gauges"));
        keepTo(schemas, "Rule", rows(RULES, "rules"));
    }

    private static void keepTo(JsonNode schemas, String schema, List<JsonNode> rows) {
        JsonNode members = schemas.path(schema).path("properties");
        assertThat(rows).isNotEmpty().hasSizeLessThanOrEqualTo(Limits.REFERENCE_ROWS);
        for (JsonNode row : rows) {
            row.properties().forEach(cell -> {
                JsonNode member = members.path(cell.getKey());
                String at = schema + "/" + cell.getKey() + " " + cell.getValue();
                assertThat(member.isMissingNode()).as(at).isFalse();
                if (cell.getValue().isTextual()) {
                    int longest = member.has("maxLength")
                            ? member.path("maxLength").asInt()
                            : schemas.at("/Confidence/maxLength").asInt();
                    assertThat(cell.getValue().asText()).as(at).isNotBlank().hasSizeLessThanOrEqualTo(longest);
                } else {
                    assertThat(cell.getValue().asDouble())
                            .as(at)
                            .isBetween(
                                    member.path("minimum").asDouble(Double.NaN),
                                    member.path("maximum").asDouble(Double.NaN));
                }
            });
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"/v1/reference", "/v1/reference/", "/v1/reference/screws", "/v1/reference/metals/zinc"})
    void whatIsNoTableIsNotFound(String path) {
        assertThat(Door.get(path).isProblem(404).code()).isEqualTo("NOT_FOUND");
    }

    @ParameterizedTest
    @CsvSource({"POST," + METALS, "PUT," + GAUGES, "DELETE," + RULES})
    void aTableIsOnlyRead(String method, String path) {
        Answer answer = Door.send(Door.request(path).method(method, BodyPublishers.noBody()))
                .isProblem(405);
        assertThat(answer.code()).isEqualTo("METHOD_NOT_ALLOWED");
        assertThat(answer.headers().firstValue("Allow")).contains("GET");
    }

    @ParameterizedTest
    @ValueSource(strings = {METALS, GAUGES, RULES})
    void aTableInAnotherFormIsRefused(String path) {
        Answer answer =
                Door.send(Door.request(path).GET().header("Accept", "text/csv")).isProblem(406);
        assertThat(answer.code()).isEqualTo("NOT_ACCEPTABLE");
        assertThat(answer.json().path("detail").asText()).contains("application/json");
    }

    private static JsonNode row(String path, String table, String member, String name) {
        return rows(path, table).stream()
                .filter(row -> text(row, member).equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static List<JsonNode> rows(String path, String table) {
        List<JsonNode> rows = new ArrayList<>();
        Door.get(path).json().path(table).forEach(rows::add);
        return rows;
    }

    private static String text(JsonNode row, String member) {
        return row.path(member).asText();
    }
}
