package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLGenerator;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.net.http.HttpRequest.BodyPublishers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.thalweg.api.Door.Answer;
import org.thalweg.api.wire.LayoutRequest.Include;
import org.thalweg.api.wire.LayoutRequest.Leads;
import org.thalweg.api.wire.LayoutRequest.StartBy;
import org.thalweg.api.wire.NamedEdgeKind;
import org.thalweg.api.wire.PriceBookForm.MarkupOn;
import org.thalweg.api.wire.PriceBookForm.TaxOn;
import org.thalweg.api.wire.TrimsForm.BendFormula;
import org.thalweg.api.wire.Words;
import org.thalweg.finding.Severity;
import org.thalweg.pricing.WastePolicy;
import org.thalweg.roof.EdgeKind;
import org.thalweg.trim.Hand;
import org.thalweg.trim.Hem;
import org.thalweg.trim.Meeting;
import org.thalweg.units.AreaUnit;
import org.thalweg.units.LengthUnit;
import org.thalweg.units.MassUnit;

/** The published contract: committed as it is generated, whole, and true. */
@QuarkusTest
class ContractTest {

    /** Forms that are looked at and not read: an example of one would tell nobody anything. */
    private static final Set<String> DRAWN = Set.of("image/svg+xml", "application/pdf", "image/vnd.dxf");

    private static final Path COMMITTED = Path.of("openapi", "openapi.yaml");
    private static final Path GENERATED = Path.of("target", "openapi.yaml");

    private static final YAMLMapper YAML = YAMLMapper.builder()
            .disable(YAMLGenerator.Feature.WRITE_DOC_START_MARKER)
            .disable(YAMLGenerator.Feature.SPLIT_LINES)
            .enable(YAMLGenerator.Feature.LITERAL_BLOCK_STYLE)
            .build();

    /** Under here whole tables are answered. */
    private static final String TABLES = "/v1/reference/";

    private JsonNode contract = YAML.createObjectNode();

    @BeforeEach
    void readTheContract() throws IOException {
        contract = sorted(YAML.readTree(Door.get("/openapi").text()));
    }

    @Test
    void theCommittedContractIsTheGeneratedOne() throws IOException {
        if (!Files.exists(COMMITTED) || !contract.equals(YAML.readTree(Files.readString(COMMITTED)))) {
            Files.writeString(GENERATED, YAML.writeValueAsString(contract));
            fail(
                    "The contract has changed. Read the difference between %s and %s; if it is meant, copy the one over the other."
                            .formatted(GENERATED, COMMITTED));
        }
    }

    @Test
    void itIsOpenApi31WithALicence() {
        assertThat(contract.path("openapi").asText()).startsWith("3.1.");
        assertThat(contract.at("/info/license/identifier").asText()).isEqualTo("Apache-2.0");
        assertThat(contract.at("/servers/0/url").asText()).isEqualTo("/");
    }

    @Test
    void everyMemberIsDescribed() {
        List<String> bare = new ArrayList<>();
        eachSchema((at, schema) -> schema.path("properties").properties().forEach(member -> {
            if (described(member.getValue()).isBlank()) {
                bare.add(at + "/" + member.getKey());
            }
        }));
        assertThat(bare).isEmpty();
    }

    @Test
    void everyListAndEveryMapSaysHowManyItMayHold() {
        List<String> endless = new ArrayList<>();
        eachSchema((at, schema) -> {
            boolean list = is(schema, "array") && !(schema.has("maxItems") && schema.has("items"));
            boolean map = schema.path("additionalProperties").isObject() && !schema.has("maxProperties");
            if (list || map) {
                endless.add(at);
            }
        });
        assertThat(endless).isEmpty();
    }

    @Test
    void everyNumberHasARangeAndAFormat() {
        List<String> boundless = new ArrayList<>();
        eachSchema((at, schema) -> {
            boolean number = is(schema, "number") || is(schema, "integer");
            if (number && !(schema.has("minimum") && schema.has("maximum") && schema.has("format"))) {
                boundless.add(at);
            }
        });
        assertThat(boundless).isEmpty();
    }

    @Test
    void everyStringHasALengthOrAListOfWords() {
        List<String> endless = new ArrayList<>();
        eachSchema((at, schema) -> {
            if (is(schema, "string") && !schema.has("maxLength") && !schema.has("enum")) {
                endless.add(at);
            }
        });
        assertThat(endless).isEmpty();
    }

    /** Generated clients make a type of their own of a null that never comes, and of a type beside a reference. */
    @Test
    void whatIsNotThereIsLeftOutAndAReferenceSaysItAll() {
        List<String> odd = new ArrayList<>();
        eachSchema((at, schema) -> {
            boolean orNull = is(schema, "null") || !schema.path("type").isValueNode() && schema.has("type");
            if (orNull || schema.has("$ref") && schema.has("type")) {
                odd.add(at);
            }
        });
        assertThat(odd).isEmpty();
        assertThat(contract.at("/components/examples").findValues("value"))
                .isNotEmpty()
                .allSatisfy(value -> assertThat(value.toString()).doesNotContain(":null"));
    }

    @Test
    void everyReferenceLeadsSomewhere() {
        List<JsonNode> references = contract.findValues("$ref");
        assertThat(references).isNotEmpty();
        assertThat(references).allSatisfy(ref -> assertThat(target(ref.asText()).isMissingNode())
                .as(ref.asText())
                .isFalse());
    }

    @Test
    void everyOperationIsNamedTaggedAndSummedUp() {
        List<String> tags = contract.path("tags").findValuesAsText("name");
        List<String> ids = new ArrayList<>();
        eachOperation((at, operation) -> {
            assertThat(operation.path("summary").asText()).as(at).isNotBlank();
            assertThat(tags).as(at).contains(operation.at("/tags/0").asText());
            ids.add(operation.path("operationId").asText());
        });
        assertThat(ids).isNotEmpty().doesNotContain("").doesNotHaveDuplicates();
    }

    @Test
    void everyOperationHasAnExampleOfAnAnswerAndOfEachRefusal() {
        eachOperation(
                (at, operation) -> operation.path("responses").properties().forEach(entry -> {
                    JsonNode response = resolved(entry.getValue());
                    assertThat(response.path("content").size())
                            .as(at + " " + entry.getKey())
                            .isPositive();
                    response.path("content").properties().stream()
                            .filter(form -> !DRAWN.contains(form.getKey()))
                            .forEach(form -> assertThat(form.getValue().path("examples"))
                                    .as(at + " " + entry.getKey())
                                    .isNotEmpty());
                }));
    }

    @Test
    void whatStandsBehindTheQuestionMarkIsTold() {
        for (String path : List.of("~1v1~1layouts", "~1v1~1valleys")) {
            assertThat(contract.at("/paths/" + path + "/post/parameters").findValuesAsText("name"))
                    .containsExactly("view", "sheet", "paper", "list");
        }
    }

    @Test
    void everyRefusalIsAProblem() {
        eachOperation(
                (at, operation) -> operation.path("responses").properties().forEach(entry -> {
                    if (!entry.getKey().startsWith("2")) {
                        JsonNode schema =
                                resolved(entry.getValue()).at("/content/application~1problem+json/schema/$ref");
                        assertThat(schema.asText())
                                .as(at + " " + entry.getKey())
                                .isEqualTo("#/components/schemas/Problem");
                    }
                }));
    }

    @Test
    void everyExampleOfAnAnswerIsTheAnswerToTheRequestOfItsName() {
        List<String> replayed = new ArrayList<>();
        eachOperation((at, operation) -> {
            String path = at.substring(at.indexOf(' ') + 1);
            operation
                    .at("/responses/200/content/application~1json/examples")
                    .properties()
                    .forEach(example -> {
                        JsonNode request = resolved(
                                operation.at("/requestBody/content/application~1json/examples/" + example.getKey()));
                        Answer answer = at.startsWith("get")
                                ? Door.get(path)
                                : Door.post(path, request.path("value").toString());
                        JsonNode printed = plain(resolved(example.getValue()).path("value"));
                        if (path.startsWith(TABLES)) {
                            isExcerpt(printed, answer.json());
                        } else {
                            assertThat(answer.json()).isEqualTo(printed);
                        }
                        replayed.add(path);
                    });
        });
        assertThat(replayed)
                .contains(
                        "/v1/roofs",
                        "/v1/trims",
                        "/v1/limits",
                        "/v1/reference/metals",
                        "/v1/reference/gauges",
                        "/v1/reference/rules");
    }

    @Test
    void everyExampleOfAListIsTheListOfTheRequestOfItsName() {
        List<String> replayed = new ArrayList<>();
        eachOperation((at, operation) -> {
            String path = at.substring(at.indexOf(' ') + 1);
            operation
                    .at("/responses/200/content/text~1csv/examples")
                    .properties()
                    .forEach(example -> {
                        JsonNode request = resolved(
                                operation.at("/requestBody/content/application~1json/examples/" + example.getKey()));
                        Answer answer = Door.send(Door.request(path)
                                .POST(BodyPublishers.ofString(
                                        request.path("value").toString()))
                                .header("Content-Type", "application/json")
                                .header("Accept", "text/csv"));
                        assertThat(answer.text())
                                .isEqualTo(resolved(example.getValue())
                                        .path("value")
                                        .asText());
                        replayed.add(path);
                    });
        });
        assertThat(replayed).containsExactly("/v1/layouts", "/v1/valleys");
    }

    /** The example of a long table shows some of its rows, whole and in their order, and leaves nothing else out. */
    private static void isExcerpt(JsonNode printed, JsonNode answered) {
        assertThat(printed.fieldNames()).toIterable().containsExactlyElementsOf(answered::fieldNames);
        printed.properties().forEach(member -> {
            JsonNode whole = answered.path(member.getKey());
            if (whole.isArray()) {
                assertThat(member.getValue()).isNotEmpty();
                assertThat(whole).containsSubsequence(member.getValue());
            } else {
                assertThat(whole).isEqualTo(member.getValue());
            }
        });
    }

    static Stream<Arguments> refusals() {
        String noUnit =
                "{\"units\":{\"length\":\"yd\",\"area\":\"ft2\"},\"roof\":{\"points\":{\"A\":[0,0],\"B\":[360,0,0],"
                        + "\"R\":[180,180,90]},\"planes\":[{\"id\":\"south\",\"outlines\":[\"A\",\"B\",\"R\"],"
                        + "\"outline\":[\"A\",\"B\",\"R\"]}]}}";
        String noPoint = EssentialProblems.TRIANGLE.replace("\"B\",\"R\"]", "\"B\",\"S\"]");
        return Stream.of(
                refusal("unreadable", () -> Door.post("/v1/roofs", "{\"units\": {\"length\": \"in\"")),
                refusal("invalid", () -> Door.post("/v1/roofs", noUnit)),
                refusal("notARoof", () -> Door.post("/v1/roofs", noPoint)),
                refusal("tooLarge", () -> Door.post("/v1/roofs", new byte[10_000_000])),
                refusal(
                        "notAcceptable",
                        () -> Door.send(Door.request("/v1/roofs")
                                .POST(BodyPublishers.ofString(EssentialProblems.TRIANGLE))
                                .header("Content-Type", "application/json")
                                .header("Accept", "image/png"))),
                refusal(
                        "unsupportedMediaType",
                        () -> Door.send(Door.request("/v1/roofs")
                                .POST(BodyPublishers.ofString("x"))
                                .header("Content-Type", "text/plain"))));
    }

    private static Arguments refusal(String example, Supplier<Answer> asked) {
        return Arguments.of(example, asked);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("refusals")
    void everyExampleOfARefusalIsWhatIsAnswered(String example, Supplier<Answer> asked) {
        JsonNode printed = contract.at("/components/examples/" + example + "/value");
        assertThat(asked.get().json()).isEqualTo(plain(printed));
    }

    @Test
    void theExampleOfAFailureHasEverythingButTheId() {
        JsonNode printed = contract.at("/components/examples/internal/value");
        ObjectNode answered = (ObjectNode) Door.get("/test/failing/bug").json();
        String uuid = "[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}";
        String detail = printed.path("detail").asText().replaceFirst(uuid, "");
        assertThat(answered.path("detail").asText().replaceFirst(uuid, "")).isEqualTo(detail);
        assertThat(answered.put("detail", printed.path("detail").asText())).isEqualTo(plain(printed));
    }

    static Stream<Arguments> words() {
        return Stream.of(
                Arguments.of("LengthUnit", LengthUnit.values()),
                Arguments.of("AreaUnit", AreaUnit.values()),
                Arguments.of("MassUnit", MassUnit.values()),
                Arguments.of("NamedEdgeKind", NamedEdgeKind.values()),
                Arguments.of("Severity", Severity.values()),
                Arguments.of("Leads", Leads.values()),
                Arguments.of("StartBy", StartBy.values()),
                Arguments.of("BendFormula", BendFormula.values()),
                Arguments.of("HemKind", Hem.Kind.values()),
                Arguments.of("TrimHand", Hand.values()),
                Arguments.of("TrimMeets", Meeting.How.values()),
                Arguments.of("WasteBasis", WastePolicy.Basis.values()),
                Arguments.of("MarkupOn", MarkupOn.values()),
                Arguments.of("TaxOn", TaxOn.values()),
                Arguments.of("Include", Include.values()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("words")
    void theWordsOfTheContractAreThoseOfTheCode(String schema, Enum<?>[] constants) {
        assertThat(contract.at("/components/schemas/" + schema + "/enum"))
                .extracting(JsonNode::asText)
                .containsExactlyElementsOf(Stream.of(constants).map(Words::of).toList());
    }

    @Test
    void everyKindOfEdgeIsExplained() {
        String text = contract.at("/components/schemas/EdgeKind/description").asText();
        assertThat(EdgeKind.values()).allSatisfy(kind -> assertThat(text).contains("`" + kind.wire() + "`"));
    }

    @Test
    void theRangesWrittenByHandAreThoseEnforced() {
        JsonNode pitch = contract.at("/components/schemas/Pitch/oneOf/1/properties");
        assertThat(pitch.at("/rise/minimum").asDouble()).isEqualTo(Limits.RISE.least());
        assertThat(pitch.at("/rise/maximum").asDouble()).isEqualTo(Limits.RISE.most());
        assertThat(pitch.at("/run/minimum").asDouble()).isEqualTo(Limits.RUN.least());
        assertThat(pitch.at("/run/maximum").asDouble()).isEqualTo(Limits.RUN.most());
        assertThat(contract.at("/components/schemas/Length/oneOf/1/maxLength").asInt())
                .isEqualTo(Limits.TAPE_LENGTH);
        assertThat(contract.at("/components/schemas/Pitch/oneOf/0/maxLength").asInt())
                .isEqualTo(Limits.TAPE_LENGTH);
    }

    private void eachOperation(BiConsumer<String, JsonNode> see) {
        contract.path("paths").properties().forEach(path -> path.getValue()
                .properties()
                .forEach(method -> see.accept(method.getKey() + " " + path.getKey(), method.getValue())));
    }

    /** Every schema of the contract, however deep it stands in another, with where it stands. */
    private void eachSchema(BiConsumer<String, JsonNode> see) {
        contract.at("/components/schemas").properties().forEach(entry -> within(entry.getKey(), entry.getValue(), see));
    }

    private static void within(String at, JsonNode schema, BiConsumer<String, JsonNode> see) {
        see.accept(at, schema);
        schema.path("properties")
                .properties()
                .forEach(member -> within(at + "/" + member.getKey(), member.getValue(), see));
        schema.path("oneOf").forEach(one -> within(at + "/oneOf", one, see));
        schema.path("anyOf").forEach(one -> within(at + "/anyOf", one, see));
        if (schema.path("items").isObject()) {
            within(at + "/items", schema.path("items"), see);
        }
        if (schema.path("additionalProperties").isObject()) {
            within(at + "/*", schema.path("additionalProperties"), see);
        }
    }

    /** A schema's own description, or that of what it refers to. */
    private String described(JsonNode schema) {
        return schema.has("description")
                ? schema.path("description").asText()
                : resolved(schema).path("description").asText();
    }

    private JsonNode resolved(JsonNode node) {
        return node.has("$ref") ? target(node.path("$ref").asText()) : node;
    }

    private JsonNode target(String reference) {
        return contract.at(reference.substring(1));
    }

    private static boolean is(JsonNode schema, String type) {
        return schema.path("type").asText().equals(type);
    }

    /** As it comes over the wire: YAML reads some numbers into wider types than JSON does. */
    private static JsonNode plain(JsonNode yaml) {
        return Door.json(yaml.toString());
    }

    /** Paths, and what is shared, by name: the generator takes them as it finds them. */
    private static JsonNode sorted(JsonNode contract) {
        ObjectNode document = (ObjectNode) contract;
        sort(document, "paths");
        ObjectNode components = (ObjectNode) document.path("components");
        List.of("schemas", "responses", "examples").forEach(part -> sort(components, part));
        return document;
    }

    private static void sort(ObjectNode in, String member) {
        Map<String, JsonNode> byName = new TreeMap<>();
        in.path(member).properties().forEach(entry -> byName.put(entry.getKey(), entry.getValue()));
        in.putObject(member).setAll(byName);
    }
}
