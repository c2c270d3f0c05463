package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusIntegrationTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import io.restassured.RestAssured;
import java.io.IOException;
import java.net.http.HttpRequest.BodyPublishers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIf;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.thalweg.api.Door.Answer;

/** The page and its valley calculator, in a real browser, served by the packaged application. */
@QuarkusIntegrationTest
@TestProfile(PageIT.OneOriginLetIn.class)
@EnabledIf("org.thalweg.api.Browser#wanted")
class PageIT {

    private static final String INCHES = "{\"units\":{\"length\":\"in\",\"area\":\"ft2\",\"mass\":\"lb\"},";
    private static final String SQUARE = INCHES
            + "\"corner\":{\"pitches\":[\"6:12\",\"6:12\"],\"planAngleDeg\":90,\"run\":144},\"panel\":{\"cover\":18}}";
    private static final String STATUS = "thalweg-valley .status";
    private static final Neighbour NEIGHBOUR = new Neighbour();

    private static Browser browser;

    /** What an operator sets to let one shop in. */
    public static final class OneOriginLetIn implements QuarkusTestProfile {
        @Override
        public Map<String, String> getConfigOverrides() {
            return Map.of("thalweg.origins", "http://localhost:" + NEIGHBOUR.port());
        }
    }

    @BeforeAll
    static void start() {
        browser = Browser.start();
    }

    @AfterAll
    static void stop() {
        if (browser != null) {
            browser.close();
        }
    }

    @BeforeEach
    void openThePage() {
        browser.show(1280, "light");
        browser.open(service("/"));
        browser.await("first figures", () -> !browser.text(STATUS).isEmpty());
        browser.complaints();
    }

    @Test
    void itStartsWithFiguresAndNoComplaint() {
        browser.open(service("/"));
        showsAnswerTo(SQUARE);
        browser.await("the example", () -> !value("#request").isEmpty());
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void figuresFollowWhatIsTypedAndAreThoseOfTheAnswer() {
        typeAll(Map.of("pitch-left", "8:12", "pitch-right", "5:12", "corner", "100", "run", "12' 3 1/2\""));
        typeAll(Map.of("cover", "16", "coil-width", "42", "hold-back", "9 1/2", "rain", "6"));
        showsAnswerTo(
                INCHES + "\"corner\":{\"pitches\":[\"8:12\",\"5:12\"],\"planAngleDeg\":100,\"run\":147.5},"
                        + "\"panel\":{\"cover\":16},\"valleyPan\":{\"coilWidth\":42,\"holdBack\":9.5},\"climate\":{\"rainfall\":6}}");
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void millimetresTakeOverWhatIsTypedAndInchesGiveItBack() {
        typeAll(Map.of("run", "150", "hold-back", "12 3/4"));
        browser.click("thalweg-valley [value=mm]");
        assertThat(List.of(
                        value("thalweg-valley #run"),
                        value("thalweg-valley #hold-back"),
                        value("thalweg-valley #cover")))
                .containsExactly("3810", "323.85", "457.2");
        assertThat(browser.text("thalweg-valley .field:has(#run) .mark")).isEqualTo("mm");
        showsAnswerTo("{\"units\":{\"length\":\"mm\",\"area\":\"m2\",\"mass\":\"kg\"},"
                + "\"corner\":{\"pitches\":[\"6:12\",\"6:12\"],\"planAngleDeg\":90,\"run\":3810},"
                + "\"panel\":{\"cover\":457.2},\"valleyPan\":{\"holdBack\":323.85}}");
        browser.click("thalweg-valley [value=in]");
        assertThat(value("thalweg-valley #hold-back")).isEqualTo("12 3/4");
        showsAnswerTo(SQUARE.replace("144", "150").replace("18}}", "18},\"valleyPan\":{\"holdBack\":12.75}}"));
    }

    @Test
    void whatIsRefusedIsToldBesideItsFieldAndNoOldFigureStays() {
        typeAll(Map.of("pitch-right", "steep", "run", "", "cover", "0"));
        Answer refused = Door.post(
                        "/v1/valleys",
                        SQUARE.replace("[\"6:12\",\"6:12\"]", "[\"6:12\",\"steep\"]")
                                .replace("144", "\"\"")
                                .replace("18}", "0}"))
                .isProblem(400);
        assertThat(refused.errors()).hasSize(3);
        browser.awaitText(STATUS, "No figures: 3 entries to mend");
        for (String field : List.of("pitch-right #/corner/pitches/1", "run #/corner/run", "cover #/panel/cover")) {
            String name = field.split(" ")[0];
            assertThat(browser.text("thalweg-valley #" + name + "-fault"))
                    .isEqualTo(detail(refused, field.split(" ")[1]));
            WebElement input = browser.find("thalweg-valley #" + name);
            assertThat(input.getDomAttribute("aria-invalid")).isEqualTo("true");
            assertThat(input.getDomAttribute("aria-describedby")).contains(name + "-fault");
        }
        assertThat(browser.find("thalweg-valley #corner").getDomAttribute("aria-invalid"))
                .isNull();
        assertThat(browser.find("thalweg-valley .results").isDisplayed()).isFalse();

        typeAll(Map.of("pitch-right", "6:12", "run", "144", "cover", "18"));
        showsAnswerTo(SQUARE);
        assertThat(browser.all("thalweg-valley [aria-invalid]")).isEmpty();
        assertThat(browser.all("thalweg-valley .fault").stream().filter(WebElement::isDisplayed))
                .isEmpty();
    }

    @Test
    void aCornerThatMakesNoValleyIsToldBesideIt() {
        browser.type("thalweg-valley #corner", "180");
        browser.awaitText(STATUS, "No figures: 1 entry to mend");
        assertThat(browser.text("thalweg-valley #corner-fault"))
                .isEqualTo(detail(
                        Door.post("/v1/valleys", SQUARE.replace(":90", ":180")).isProblem(422),
                        "#/corner/planAngleDeg"));
    }

    @Test
    void aKeyboardIsEnough() {
        browser.press(Keys.TAB);
        assertThat(browser.run("return document.activeElement.className")).isEqualTo("skip");
        browser.press(Keys.ENTER);
        browser.press(Keys.TAB);
        assertThat(focused()).isEqualTo("units");
        browser.press(Keys.ARROW_RIGHT);
        assertThat(browser.find("thalweg-valley [value=mm]").isSelected()).isTrue();
        browser.press(Keys.ARROW_LEFT);
        for (String name :
                List.of("pitch-left", "pitch-right", "corner", "run", "cover", "coil-width", "hold-back", "rain")) {
            browser.press(Keys.TAB);
            assertThat(focused()).isEqualTo(name);
            assertThat(browser.run("const field = document.activeElement.shadowRoot.activeElement;"
                            + "return getComputedStyle(field).outlineStyle"))
                    .isEqualTo("solid");
            if (name.equals("run")) {
                browser.press("120");
            }
        }
        showsAnswerTo(SQUARE.replace("144", "120"));
        browser.press(Keys.TAB);
        // The drawing can be wider than a phone: the arrows move it then.
        assertThat(browser.run("return document.activeElement.shadowRoot.activeElement.tagName"))
                .isEqualTo("FIGURE");
        for (String id : List.of("five-front", "five-side", "five-wing", "five-depth", "five-pitch")) {
            browser.press(Keys.TAB);
            assertThat(browser.run("return document.activeElement.id")).isEqualTo(id);
        }
        browser.press(Keys.TAB);
        browser.press(Keys.TAB);
        assertThat(browser.run("return document.activeElement.id")).isEqualTo("request");
    }

    @Test
    void aWholeRoofIsLaidOutAsTheExampleSaysOrAsItWasChanged() throws IOException {
        String example = Files.readString(Path.of("openapi", "examples", "layouts-demo.request.json"));
        browser.await("the example", () -> value("#request").equals(example));
        browser.click("#job [type=submit]");
        JsonNode answer = Door.post("/v1/layouts", example).json();
        browser.awaitText(
                "#job-told",
                "%d panels on %d planes; %d findings."
                        .formatted(
                                answer.path("panels").size(),
                                answer.at("/roof/planes").size(),
                                answer.path("findings").size()));
        assertThat(browser.text("#totals [data-item=panels]"))
                .isEqualTo(answer.at("/totals/0/quantity").asText());
        assertThat(browser.all("#totals tr")).hasSizeGreaterThan(7);
        assertThat(browser.find("#map svg > title").getDomProperty("textContent"))
                .isEqualTo("Roof map: Boathouse, all roofs");
        assertThat(browser.find("#map").isDisplayed()).isTrue();

        browser.click("#packet");
        browser.awaitText("#job-told", "The packet is saved as packet.pdf.");

        browser.run(
                "const box = document.getElementById('request'); box.value = box.value.replace('\"cover\": 18', '\"cover\": -1')");
        browser.click("#job [type=submit]");
        browser.await("its problem", () -> browser.find("#problems").isDisplayed());
        assertThat(browser.text("#problems li")).startsWith("#/panel/cover ");
        assertThat(browser.find("#laid").isDisplayed()).isFalse();
        browser.click("#restore");
        browser.await("the example again", () -> value("#request").equals(example));
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void fiveNumbersAreLaidOut() {
        browser.await("the example", () -> !value("#request").isEmpty());
        browser.type("#five-front", "46");
        browser.type("#five-depth", "44' 6\"");
        browser.type("#five-pitch", "8:12");
        browser.click("#five [type=submit]");
        JsonNode answer = Door.post("/v1/layouts", """
                        {"units":{"length":"ft","area":"ft2","mass":"lb"},"roof":{"footprint":{"outline":
                        [[0,0],[46,0],[46,24],[16,24],[16,44.5],[0,44.5]],"pitch":"8:12"}},"panel":{"cover":1.5}}""").json();
        browser.awaitText(
                "#job-told",
                "%d panels on 6 planes; %d findings."
                        .formatted(
                                answer.path("panels").size(),
                                answer.path("findings").size()));
        assertThat(browser.all("#map svg")).isNotEmpty();
        browser.type("#five-pitch", "0:12");
        browser.click("#five [type=submit]");
        browser.await("its problem", () -> browser.find("#problems").isDisplayed());
        assertThat(browser.text("#problems li")).startsWith("#/roof/footprint/pitch ");
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void theValleyIsDrawnAsTheServiceDrawsIt() {
        String drawn = asked("/v1/valleys?view=valleys&sheet=1", SQUARE, "image/svg+xml")
                .text();
        browser.await(
                "the drawing", () -> !browser.all("thalweg-valley figure svg").isEmpty());
        assertThat(browser.find("thalweg-valley svg > title").getDomProperty("textContent"))
                .isEqualTo("Valleys and hips");
        assertThat(browser.find("thalweg-valley svg > desc").getDomProperty("textContent"))
                .isNotBlank();
        assertThat(browser.all("thalweg-valley svg text"))
                .hasSize(drawn.split("<text ", -1).length - 1)
                .isNotEmpty();
        assertThat(browser.find("thalweg-valley figure").getCssValue("background-color"))
                .isEqualTo("rgba(255, 255, 255, 1)");
    }

    @Test
    void anotherOriginThatIsLetInHasTheFigures() {
        NEIGHBOUR.publish("/let-in", service("/thalweg-valley.js"), "units='mm' cover='400'");
        browser.open(shop("localhost", "/let-in"));
        String asked = "{\"units\":{\"length\":\"mm\",\"area\":\"m2\",\"mass\":\"kg\"},"
                + "\"corner\":{\"pitches\":[\"6:12\",\"6:12\"],\"planAngleDeg\":90,\"run\":3600},\"panel\":{\"cover\":400}}";
        showsAnswerTo(asked);
        browser.type("thalweg-valley #corner", "180");
        browser.awaitText(STATUS, "No figures: 1 entry to mend");
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void anotherOriginThatIsNotLetInIsToldSo() {
        NEIGHBOUR.publish("/kept-out", service("/thalweg-valley.js"), "");
        browser.open(shop("127.0.0.1", "/kept-out"));
        browser.awaitText(STATUS, "No answer");
        assertThat(browser.text("thalweg-valley .trouble p"))
                .isEqualTo(
                        "The service at %s/ does not let pages of %s read its answers. Its operator has to allow that origin.",
                        service(""), shop("127.0.0.1", ""));
    }

    @Test
    void onlyTheOriginThatIsNamedIsLetIn() {
        Answer letIn = Door.send(Door.request("/v1/limits").header("Origin", shop("localhost", "")));
        assertThat(letIn.headers().firstValue("Access-Control-Allow-Origin")).contains(shop("localhost", ""));
        assertThat(letIn.headers().firstValue("Access-Control-Expose-Headers")).contains("Retry-After");
        assertThat(letIn.headers().firstValue("Access-Control-Allow-Credentials"))
                .isEmpty();
        Answer keptOut = Door.send(Door.request("/v1/limits").header("Origin", shop("127.0.0.1", "")));
        assertThat(keptOut.status()).isEqualTo(200);
        assertThat(keptOut.headers().firstValue("Access-Control-Allow-Origin")).isEmpty();
        assertThat(keptOut.headers().allValues("Vary")).contains("origin");
    }

    @Test
    void anOlderAnswerNeverShowsAfterANewerQuestion() {
        NEIGHBOUR.publish("/slow", service("/thalweg-valley.js"), "service='/slow/'");
        browser.open(shop("localhost", "/slow"));
        showsAnswerTo(SQUARE);
        browser.type("thalweg-valley #run", "100");
        NEIGHBOUR.awaitHeld();
        browser.type("thalweg-valley #run", "120");
        showsAnswerTo(SQUARE.replace("144", "120"));
        NEIGHBOUR.letGo();
        showsAnswerTo(SQUARE.replace("144", "120"));
    }

    @Test
    void aServiceThatIsBusyIsAskedAgainWhenItSays() {
        NEIGHBOUR.publish("/busy", service("/thalweg-valley.js"), "service='/busy/'");
        browser.open(shop("localhost", "/busy"));
        browser.awaitText(STATUS, "The service is busy");
        assertThat(browser.text("thalweg-valley .trouble p")).isEqualTo("It is asked again in 1 s.");
        showsAnswerTo(SQUARE);
    }

    @Test
    void aServiceThatIsNotThereIsToldAndAskedAgainOnRequest() {
        NEIGHBOUR.publish("/gone", service("/thalweg-valley.js"), "service='http://localhost:1/'");
        browser.open(shop("localhost", "/gone"));
        browser.awaitText(STATUS, "No answer");
        assertThat(browser.text("thalweg-valley .trouble p"))
                .isEqualTo("The service at http://localhost:1/ can not be reached.");
        browser.run("document.querySelector('thalweg-valley').setAttribute('service', arguments[0])", service("/"));
        browser.click("thalweg-valley .trouble button");
        showsAnswerTo(SQUARE);

        NEIGHBOUR.publish("/lost", service("/thalweg-valley.js"), "service='/lost/'");
        browser.open(shop("localhost", "/lost"));
        browser.awaitText(STATUS, "No answer");
        assertThat(browser.text("thalweg-valley .trouble p")).isEqualTo("The service answers with status 502.");
    }

    @ParameterizedTest
    @CsvSource({"360,light", "360,dark", "1280,light", "1280,dark"})
    void everyoneCanReadItOnEveryScreen(int width, String scheme) {
        browser.show(width, scheme);
        assertThat(browser.run("return getComputedStyle(document.body).backgroundColor"))
                .isEqualTo(scheme.equals("dark") ? "rgb(23, 23, 23)" : "rgb(255, 255, 255)");
        browser.type("thalweg-valley #run", "144");
        browser.click("#job [type=submit]");
        browser.await("the roof", () -> browser.find("#laid").isDisplayed());
        showsAnswerTo(SQUARE);
        isFitToRead("figures", width, scheme);

        typeAll(Map.of("pitch-left", "steep", "run", "x", "coil-width", "5"));
        browser.awaitText(STATUS, "No figures: 3 entries to mend");
        browser.run("document.getElementById('request').value = '{\"panel\": {\"cover\": -1}, \"nonsense\": 1}'");
        browser.click("#job [type=submit]");
        browser.await("its problems", () -> browser.find("#problems").isDisplayed());
        isFitToRead("faults", width, scheme);
        assertThat(browser.complaints()).isEmpty();
    }

    private void isFitToRead(String state, int width, String scheme) {
        browser.run("document.activeElement.blur(); window.scrollTo(0, 0)");
        browser.keep("%s-%d-%s".formatted(state, width, scheme));
        assertThat(browser.overflow()).as("pixels beyond the screen").isLessThanOrEqualTo(0);
        assertThat(browser.barriers()).isEmpty();
    }

    /** Waits for the figures of this request, and holds each against the answer. */
    private static void showsAnswerTo(String request) {
        Answer answered = Door.post("/v1/valleys", request);
        assertThat(answered.status()).as(answered.text()).isEqualTo(200);
        JsonNode valley = answered.json().at("/valleys/0");
        int pieces = valley.path("pieces").size();
        int findings = answered.json().path("findings").size();
        browser.await(
                "its figures",
                () -> browser.text(STATUS).startsWith("Valley " + tape(valley.path("length")))
                        && "false".equals(busy()));
        assertThat(browser.text(STATUS))
                .isEqualTo("Valley %s long at %s°, %s%s"
                        .formatted(
                                tape(valley.path("length")),
                                valley.path("slopeDeg").asText(),
                                many(pieces, "piece"),
                                findings == 0 ? "" : ", " + many(findings, "finding")));
        assertThat(cells("True length").get(0)).startsWith(tape(valley.path("length")));
        assertThat(cells("Slope")).first().isEqualTo(valley.path("slopeDeg").asText() + "°");
        assertThat(cells("Bend between the planes"))
                .first()
                .isEqualTo(valley.path("bendDeg").asText() + "°");
        assertThat(cells("Angle from the eave"))
                .isEqualTo(
                        eachSide(valley, side -> side.path("angleFromEaveDeg").asText() + "°"));
        assertThat(cells("Rise across the cover"))
                .isEqualTo(eachSide(valley, side -> mark(side.path("riseAcrossCover"))));
        assertThat(cells("Hold-back")).isEqualTo(eachSide(valley, side -> mark(side.path("holdBack"))));
        assertThat(cells("Pan under the panels"))
                .isEqualTo(eachSide(valley, side -> mark(side.path("coverUnderPanel"))));
        assertThat(cells("Chalk line")).isEqualTo(eachSide(valley, side -> mark(side.at("/chalkLine/length"))));
        assertThat(cells("… starts, along the eave"))
                .isEqualTo(eachSide(valley, side -> mark(side.at("/chalkLine/lower/along"))));
        assertThat(cells("… ends, along the ridge"))
                .isEqualTo(eachSide(valley, side -> mark(side.at("/chalkLine/upper/along"))));
        assertThat(rows(".pieces"))
                .isEqualTo(IntStream.range(0, pieces)
                        .mapToObj(i -> valley.path("pieces").get(i))
                        .map(piece -> List.of(
                                piece.path("mark").asText(),
                                mark(piece.path("from")),
                                mark(piece.path("length")),
                                mark(piece.path("lap"))))
                        .toList());
        assertThat(browser.all("thalweg-valley .findings li").stream()
                        .map(one -> one.getDomAttribute("data-code") + " " + one.getDomAttribute("data-severity")))
                .containsExactlyElementsOf(IntStream.range(0, findings)
                        .mapToObj(i -> answered.json().path("findings").get(i))
                        .map(one -> one.path("code").asText() + " "
                                + one.path("severity").asText())
                        .toList());
        assertThat(browser.all("thalweg-valley .cautions li"))
                .hasSize(answered.json().path("cautions").size())
                .hasSizeGreaterThan(5);
    }

    private static String busy() {
        String busy = browser.find("thalweg-valley .results").getDomAttribute("aria-busy");
        return busy == null ? "false" : busy;
    }

    private static List<String> eachSide(JsonNode valley, Function<JsonNode, String> figure) {
        return List.of(figure.apply(valley.at("/sides/0")), figure.apply(valley.at("/sides/1")));
    }

    private static List<String> cells(String label) {
        return rows(".sides").stream()
                .filter(row -> row.get(0).equals(label))
                .map(row -> row.subList(1, row.size()))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no row " + label));
    }

    /** The text of every cell of every body row, as the page has it. */
    @SuppressWarnings("unchecked")
    private static List<List<String>> rows(String tables) {
        return (List<List<String>>) browser.run(
                "return [...document.querySelector('thalweg-valley').shadowRoot.querySelectorAll(arguments[0] + ' tbody tr')]"
                        + ".map(row => [...row.cells].map(cell => cell.textContent))",
                tables);
    }

    private static String mark(JsonNode length) {
        String exact = length.path("value").asText();
        return tape(length) + (tape(length).startsWith(exact) ? "" : exact);
    }

    private static String tape(JsonNode length) {
        return length.path("tape").asText();
    }

    private static String many(int count, String one) {
        return count + " " + one + (count == 1 ? "" : "s");
    }

    private static void typeAll(Map<String, String> entries) {
        entries.forEach((name, text) -> browser.type("thalweg-valley #" + name, text));
    }

    private static String value(String selector) {
        return String.valueOf(browser.find(selector).getDomProperty("value"));
    }

    private static Object focused() {
        return browser.run("return document.activeElement.shadowRoot?.activeElement.name");
    }

    private static String detail(Answer refused, String pointer) {
        for (JsonNode error : refused.json().path("errors")) {
            if (error.path("pointer").asText().equals(pointer)) {
                return error.path("detail").asText();
            }
        }
        throw new AssertionError("no error at " + pointer + ": " + refused.text());
    }

    private static Answer asked(String path, String body, String form) {
        return Door.send(Door.request(path)
                .POST(BodyPublishers.ofString(body))
                .header("Content-Type", "application/json")
                .header("Accept", form));
    }

    private static String service(String path) {
        return "http://localhost:" + RestAssured.port + path;
    }

    private static String shop(String host, String path) {
        return "http://" + host + ":" + NEIGHBOUR.port() + path;
    }
}
