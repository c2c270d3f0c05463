package org.thalweg.api;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.thalweg.api.Door.Answer;

/** Quotes through the door. */
@QuarkusTest
class QuotesTest {

    private static final String DIGEST = "c169046545b437123742e80106b0bd1febaa83ef76d0160693267d3955413f35";

    /** Forty clips and 891 in of panels. */
    private static final String TAKEOFF = """
            {"engine": "thalweg/0.1.0", "digest": "%s", "units": {"length": "in", "area": "ft2", "mass": "lb"},
             "orderLines": [
               {"item": "clip", "net": 40, "lap": 0, "waste": 0, "ordered": 40, "unit": "C62"},
               {"item": "panel", "made": {"metal": "galvanized-steel", "thickness": 0.0276, "width": {"value": 20.75, "tape": "20 3/4\\""}},
                "net": 824.6211, "lap": 0, "ordered": 891, "unit": "INH", "mass": {"value": 148.42, "unit": "lb"}}],
             "totals": [{"item": "panels", "quantity": 9, "unit": "C62"}]}
            """.formatted(DIGEST);

    private static final String CLIPS = "{\"item\": \"clip\", \"unit\": \"C62\", \"price\": \"0.61\"}";
    private static final String PANELS = "{\"item\": \"panel\", \"unit\": \"FOT\", \"price\": \"3.94\"}";

    private static Answer post(String takeoff, String book) {
        return Door.post("/v1/quotes", "{\"takeoff\": %s, \"priceBook\": %s}".formatted(takeoff, book));
    }

    private static Answer post(String book) {
        return post(TAKEOFF, book);
    }

    private static String book(String... items) {
        return "{\"currency\": \"USD\", \"items\": [%s]}".formatted(String.join(",", items));
    }

    private static String example(String name) throws IOException {
        return Files.readString(Path.of("openapi", "examples", name + ".request.json"));
    }

    /** 40 clips at 0.61 are 24.40; 891 in are 74.25 ft, at 3.94 a foot 292.545, and half a cent goes up. */
    @Test
    void aSavedTakeoffIsPricedAsItIsPrinted() {
        JsonNode quote = post(book(CLIPS, PANELS)).json();
        assertThat(quote.at("/lines/0/amount/amount").asText()).isEqualTo("24.40");
        assertThat(quote.at("/lines/0/amount/currency").asText()).isEqualTo("USD");
        assertThat(quote.at("/lines/1/pricedQuantity").asDouble()).isEqualTo(74.25);
        assertThat(quote.at("/lines/1/priceUnit").asText()).isEqualTo("FOT");
        assertThat(quote.at("/lines/1/amount/amount").asText()).isEqualTo("292.55");
        assertThat(quote.at("/lines/1/entry").asText()).isEqualTo("#/priceBook/items/1");
        assertThat(quote.at("/total/amount").asText()).isEqualTo("316.95");
        assertThat(quote.path("complete").asBoolean()).isTrue();
        assertThat(quote.path("findings")).isEmpty();
    }

    /** The digits of a price are kept however it is written: in binary 0.145 · 40 would be less than 5.80 and 1.005 less than itself. */
    @ParameterizedTest
    @CsvSource({
        "0.145, 5.80",
        "\"0.145\", 5.80",
        "1.45e-1, 5.80",
        "\"0.025125\", 1.01",
        "2.5125E-2, 1.01",
        "0, 0.00",
        "\"1000000000\", 40000000000.00"
    })
    void pricesAreDecimals(String price, String amount) {
        JsonNode quote = post(book(CLIPS.replace("\"0.61\"", price), PANELS)).json();
        assertThat(quote.at("/lines/0/amount/amount").asText()).isEqualTo(amount);
    }

    @Test
    void whatHasNoPriceIsToldAndThereIsNoTotal() {
        JsonNode quote = post("""
                        {"currency": "USD", "items": [%s], "labour": [{"id": "mitres", "per": "mitres", "unit": "FOT", "price": 2}],
                         "taxes": [{"id": "tax", "percent": 5}]}
                        """.formatted(CLIPS)).json();
        assertThat(quote.path("complete").asBoolean()).isFalse();
        assertThat(quote.has("total") || quote.has("net")).isFalse();
        assertThat(quote.path("taxes")).isEmpty();
        assertThat(quote.at("/lines/1").has("amount")).isFalse();
        assertThat(quote.at("/labour/0").has("amount")).isFalse();
        assertThat(quote.path("findings").findValuesAsText("code")).containsExactly("NO_PRICE", "NO_SUCH_TOTAL");
        assertThat(quote.at("/findings/0/place/pointer").asText()).isEqualTo("#/priceBook/items");
        assertThat(quote.at("/findings/1/place/pointer").asText()).isEqualTo("#/priceBook/labour/0");
        assertThat(quote.at("/subtotal/amount").asText()).isEqualTo("24.40");
    }

    /** Whoever has the whole answer, or the whole layout, need not cut it down; what it has besides changes nothing. */
    @ParameterizedTest
    @ValueSource(strings = {"layouts-hip", "layouts-shed", "layouts-demo"})
    void theQuoteOfALayoutIsThatOfItsTakeoff(String name) throws IOException {
        String book = Door.json(example("quotes-shed")).path("priceBook").toString();
        String layout = example(name);
        String byLayout = Door.post("/v1/quotes", "{\"layout\": %s, \"priceBook\": %s}".formatted(layout, book))
                .text();
        assertThat(Door.json(byLayout).path("lines")).isNotEmpty();
        String takeoff = Door.post("/v1/takeoffs", layout).text();
        assertThat(undigested(post(takeoff, book).text())).isEqualTo(undigested(byLayout));
        String laid = Door.post("/v1/layouts", layout).text();
        assertThat(undigested(post(laid, book).text())).isEqualTo(undigested(byLayout));
        ObjectNode cut = (ObjectNode) Door.json(takeoff);
        cut.retain("engine", "digest", "units", "orderLines", "totals");
        cut.path("orderLines").forEach(line -> ((ObjectNode) line).remove(List.of("uses", "waste", "pieces", "packs")));
        assertThat(undigested(post(cut.toString(), book).text())).isEqualTo(undigested(byLayout));
        assertThat(Door.json(post(takeoff, book).text()).path("digest").asText())
                .isNotEqualTo(Door.json(byLayout).path("digest").asText());
    }

    private static String undigested(String answer) {
        return answer.replaceFirst("\"digest\":\"[0-9a-f]{64}\"", "");
    }

    /** With nothing but the answer and a pencil. */
    @ParameterizedTest
    @ValueSource(strings = {"quotes-hip", "quotes-shed"})
    void everyExampleAddsUp(String name) throws IOException {
        JsonNode quote = Door.post("/v1/quotes", example(name)).json();
        BigDecimal goods = sum(quote.path("lines"));
        BigDecimal work = sum(quote.path("labour"));
        assertThat(amount(quote.path("goods"))).isEqualTo(goods);
        assertThat(amount(quote.path("work"))).isEqualTo(work);
        assertThat(amount(quote.path("subtotal"))).isEqualTo(goods.add(work));
        BigDecimal running = goods.add(work);
        for (JsonNode markup : quote.path("markups")) {
            assertShare(
                    markup, Map.of("goods", goods, "labour", work, "subtotal", goods.add(work), "running", running));
            running = running.add(amount(markup.path("amount")));
        }
        assertThat(amount(quote.path("net"))).isEqualTo(running);
        BigDecimal total = running;
        for (JsonNode tax : quote.path("taxes")) {
            assertShare(tax, Map.of("goods", goods, "labour", work, "subtotal", goods.add(work), "total", running));
            total = total.add(amount(tax.path("amount")));
        }
        assertThat(amount(quote.path("total"))).isEqualTo(total);
        assertThat(total).isPositive();
    }

    private static void assertShare(JsonNode share, Map<String, BigDecimal> sums) {
        BigDecimal base = requireNonNull(sums.get(share.path("on").asText()));
        assertThat(amount(share.path("base"))).isEqualTo(base);
        assertThat(amount(share.path("amount")))
                .isEqualTo(base.multiply(new BigDecimal(share.path("percent").asText()))
                        .divide(BigDecimal.valueOf(100), 2, RoundingMode.HALF_UP));
    }

    private static BigDecimal amount(JsonNode money) {
        return new BigDecimal(money.path("amount").asText());
    }

    private static BigDecimal sum(JsonNode lines) {
        return IntStream.range(0, lines.size())
                .mapToObj(i -> amount(lines.get(i).path("amount")))
                .reduce(new BigDecimal("0.00"), BigDecimal::add);
    }

    static Stream<Arguments> books() {
        return Stream.of(
                Arguments.of(book(CLIPS.replace("clip", "clips")), List.of("UNKNOWN_VALUE #/priceBook/items/0/item")),
                Arguments.of(book(CLIPS, CLIPS), List.of("DUPLICATE_ENTRY #/priceBook/items/1")),
                Arguments.of("{\"currency\": \"USB\", \"items\": []}", List.of("UNKNOWN_VALUE #/priceBook/currency")),
                Arguments.of("{\"currency\": \"XAU\", \"items\": []}", List.of("UNKNOWN_VALUE #/priceBook/currency")),
                Arguments.of("{\"currency\": \"DOLLAR\", \"items\": []}", List.of("TOO_LONG #/priceBook/currency")),
                Arguments.of(item("\"price\": -0.01"), List.of("OUT_OF_RANGE #/priceBook/items/0/price")),
                Arguments.of(item("\"price\": \"-1\""), List.of("OUT_OF_RANGE #/priceBook/items/0/price")),
                Arguments.of(item("\"price\": 1000000000.01"), List.of("OUT_OF_RANGE #/priceBook/items/0/price")),
                Arguments.of(item("\"price\": 1e999999999"), List.of("OUT_OF_RANGE #/priceBook/items/0/price")),
                Arguments.of(item("\"price\": 1e-999999999"), List.of("OUT_OF_RANGE #/priceBook/items/0/price")),
                Arguments.of(item("\"price\": 0e99999999999"), List.of("OUT_OF_RANGE #/priceBook/items/0/price")),
                Arguments.of(item("\"price\": 1e-300"), List.of("TOO_LONG #/priceBook/items/0/price")),
                Arguments.of(item("\"price\": 1e300"), List.of("OUT_OF_RANGE #/priceBook/items/0/price")),
                Arguments.of(item("\"price\": 0.0000001"), List.of("TOO_LONG #/priceBook/items/0/price")),
                Arguments.of(item("\"price\": \"NaN\""), List.of("BAD_NUMBER #/priceBook/items/0/price")),
                Arguments.of(item("\"price\": \"1e9\""), List.of("BAD_NUMBER #/priceBook/items/0/price")),
                Arguments.of(item("\"price\": \"1,50\""), List.of("BAD_NUMBER #/priceBook/items/0/price")),
                Arguments.of(item("\"price\": \"٣\""), List.of("BAD_NUMBER #/priceBook/items/0/price")),
                Arguments.of(
                        item("\"price\": \"" + "9".repeat(101) + "\""),
                        List.of("BAD_NUMBER #/priceBook/items/0/price")),
                Arguments.of(item("\"price\": \"1.\""), List.of("BAD_NUMBER #/priceBook/items/0/price")),
                Arguments.of(item("\"price\": \".5\""), List.of("BAD_NUMBER #/priceBook/items/0/price")),
                Arguments.of(item("\"price\": \"-\""), List.of("BAD_NUMBER #/priceBook/items/0/price")),
                Arguments.of(item("\"price\": true"), List.of("WRONG_TYPE #/priceBook/items/0/price")),
                Arguments.of(item("\"code\": \"x\""), List.of("EITHER_OR #/priceBook/items/0")),
                Arguments.of(
                        item("\"price\": 1, \"breaks\": [{\"from\": 0, \"price\": 1}]"),
                        List.of("EITHER_OR #/priceBook/items/0")),
                Arguments.of(
                        item("\"breaks\": [{\"from\": 1, \"price\": 1}]"),
                        List.of("BREAKS_DO_NOT_JOIN #/priceBook/items/0/breaks/0")),
                Arguments.of(
                        item("\"breaks\": [{\"from\": 0, \"below\": 10, \"price\": 1}, {\"from\": 11, \"price\": 1}]"),
                        List.of("BREAKS_DO_NOT_JOIN #/priceBook/items/0/breaks/1")),
                Arguments.of(
                        item(
                                "\"breaks\": [{\"from\": 0, \"price\": 1}, {\"from\": 5, \"price\": 1}, {\"from\": 5, \"price\": 2}]"),
                        List.of("BREAKS_DO_NOT_JOIN #/priceBook/items/0/breaks/2")),
                Arguments.of(
                        item("\"breaks\": [{\"from\": 0, \"below\": 10, \"price\": 1}]"),
                        List.of("BREAKS_DO_NOT_JOIN #/priceBook/items/0/breaks/0")),
                Arguments.of(item("\"price\": 1, \"pack\": 0"), List.of("OUT_OF_RANGE #/priceBook/items/0/pack")),
                Arguments.of(
                        item("\"price\": 1, \"gtin\": \"6291041500214\""),
                        List.of("BAD_GTIN #/priceBook/items/0/gtin")),
                Arguments.of(
                        item("\"price\": 1, \"metal\": \"coper\""), List.of("UNKNOWN_VALUE #/priceBook/items/0/metal")),
                Arguments.of(
                        item("\"price\": 1, \"width\": 21, \"thickness\": 0.03"),
                        List.of("MISSING_MEMBER #/priceBook")),
                Arguments.of(
                        item("\"price\": 1, \"waste\": {\"basis\": \"ordered\", \"percent\": 5}"),
                        List.of("UNKNOWN_MEMBER #/priceBook/items/0/waste/percent")),
                Arguments.of(
                        item("\"price\": 1, \"waste\": {\"basis\": \"net\", \"percent\": 5.00001}"),
                        List.of("TOO_LONG #/priceBook/items/0/waste/percent")),
                Arguments.of(
                        book("{\"item\": \"clip\", \"unit\": \"FT\", \"price\": 1}"),
                        List.of("BAD_UNIT #/priceBook/items/0/unit")),
                Arguments.of(
                        "{\"currency\": \"USD\", \"items\": [], \"taxes\": [{\"id\": \"t\", \"percent\": 1000.1}, {\"id\": \"t\", \"percent\": 1, \"on\": \"running\"}]}",
                        List.of("UNKNOWN_VALUE #/priceBook/taxes/1/on")),
                Arguments.of(
                        "{\"currency\": \"USD\", \"items\": [{\"item\": \"x\", \"unit\": \"y\"}], \"markups\": [{\"id\": \"t\", \"percent\": 1000.1}, {\"id\": \"t\", \"percent\": 1}]}",
                        List.of(
                                "UNKNOWN_VALUE #/priceBook/items/0/item",
                                "BAD_UNIT #/priceBook/items/0/unit",
                                "EITHER_OR #/priceBook/items/0",
                                "DUPLICATE_ENTRY #/priceBook/markups/1/id",
                                "OUT_OF_RANGE #/priceBook/markups/0/percent")));
    }

    private static String item(String members) {
        return book("{\"item\": \"clip\", \"unit\": \"C62\", %s}".formatted(members));
    }

    @ParameterizedTest
    @MethodSource("books")
    void everythingWrongWithABookIsToldAtOnceWithItsPlace(String book, List<String> errors) {
        assertThat(post(book).isProblem(400).errors()).containsExactlyElementsOf(errors);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "engine": "thalweg/0.1.0" | "engine": "thalweg/0.2.0"   | 422 | TAKEOFF_OUTDATED #/takeoff/engine
            "engine": "thalweg/0.1.0" | "engine": "thalweg/0.10.0"  | 422 | TAKEOFF_OUTDATED #/takeoff/engine
            "engine": "thalweg/0.1.0" | "engine": "other/0.1.0"     | 422 | TAKEOFF_OUTDATED #/takeoff/engine
            "engine": "thalweg/0.1.0" | "engine": ""                | 400 | TOO_SHORT #/takeoff/engine
            "digest": "c1             | "digest": "C1               | 400 | BAD_DIGEST #/takeoff/digest
            "digest": "c1             | "digest": "c                | 400 | TOO_SHORT #/takeoff/digest
            "ordered": 40             | "ordered": -40              | 400 | OUT_OF_RANGE #/takeoff/orderLines/0/ordered
            "ordered": 40             | "ordered": 40.0000001       | 400 | TOO_LONG #/takeoff/orderLines/0/ordered
            "ordered": 40             | "ordered": 1e13             | 400 | OUT_OF_RANGE #/takeoff/orderLines/0/ordered
            "unit": "INH"             | "unit": "inch"              | 400 | TOO_LONG #/takeoff/orderLines/1/unit
            "unit": "INH"             | "unit": "in"                | 400 | BAD_UNIT #/takeoff/orderLines/1/unit
            "unit": "lb"              | "unit": "stone"             | 400 | BAD_UNIT #/takeoff/orderLines/1/mass/unit
            "net": 40,                | ''                          | 400 | MISSING_MEMBER #/takeoff/orderLines/0
            "orderLines"              | "orderlines"                | 400 | MISSING_MEMBER #/takeoff
            "waste": 0                | "waste": 1e400              | 400 | OUT_OF_RANGE #/takeoff/orderLines/0/waste
            "waste": 0                | "x": 1, "x": 2              | 400 | DUPLICATE_MEMBER #/takeoff/orderLines/0/x
            "waste": 0                | "x": {"y": 1, "y": 2}       | 400 | DUPLICATE_MEMBER #/takeoff/orderLines/0/x/y
            """)
    void aTakeoffThatIsNoneIsToldWithItsPlace(String right, String wrong, int status, String error) {
        assertThat(TAKEOFF).contains(right);
        Answer answer = post(TAKEOFF.replace(right, wrong), book(CLIPS, PANELS)).isProblem(status);
        assertThat(answer.errors()).containsExactly(error);
    }

    /** What is passed over is JSON all the same, and part of the digest. */
    @Test
    void halfACharacterIsNoneEvenWhereNobodyLooks() {
        Answer answer = post(TAKEOFF.replace("\"waste\": 0", "\"x\": [\"\\ud800\"]"), book(CLIPS, PANELS));
        assertThat(answer.isProblem(400).errors()).containsExactly("MALFORMED_TEXT #");
    }

    @ParameterizedTest
    @ValueSource(strings = {"thalweg/0.1.0", "thalweg/0.1.7"})
    void anyEngineOfTheGenerationWillDo(String engine) {
        assertThat(post(TAKEOFF.replace("thalweg/0.1.0", engine), book(CLIPS, PANELS))
                        .status())
                .isEqualTo(200);
    }

    @Test
    void eitherATakeoffOrALayout() throws IOException {
        String book = book(CLIPS);
        assertThat(Door.post("/v1/quotes", "{\"priceBook\": %s}".formatted(book))
                        .isProblem(400)
                        .errors())
                .containsExactly("EITHER_OR #");
        assertThat(Door.post(
                                "/v1/quotes",
                                "{\"takeoff\": %s, \"layout\": %s, \"priceBook\": %s}"
                                        .formatted(TAKEOFF, example("layouts-shed"), book))
                        .isProblem(400)
                        .errors())
                .containsExactly("EITHER_OR #");
    }

    /** A layout is read as if it were the whole request; its faults are told where they stand in this one. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "cover": 18          | "cover": 18, "girth": 1000   | 400 | OUT_OF_RANGE #/layout/panel/girth
            "cover": 18          | "cover": "18 yd"             | 400 | BAD_LENGTH #/layout/panel/cover
            "cover": 18          | "covers": 18                 | 400 | UNKNOWN_MEMBER #/layout/panel/covers
            ["A", "B", "C", "D"] | ["A", "B", "C", "X"]         | 422 | UNKNOWN_POINT #/layout/roof/planes/0/outline/3
            ["A", "B", "C", "D"] | ["A", "C", "B", "D"]         | 422 | RING_CROSSES_ITSELF #/layout/roof/planes/0/outline/2
            """)
    void faultsOfALayoutAreToldWhereTheyStand(String right, String wrong, int status, String error) throws IOException {
        String layout = example("layouts-shed");
        assertThat(layout).contains(right);
        Answer answer = Door.post(
                "/v1/quotes",
                "{\"layout\": %s, \"priceBook\": %s}".formatted(layout.replace(right, wrong), book(CLIPS)));
        assertThat(answer.isProblem(status).errors()).contains(error);
        assertThat(answer.errors()).allSatisfy(told -> assertThat(told).contains(" #/layout/"));
    }

    @Test
    void moreMoneyThanIsToldIsRefused() {
        Answer answer = post(
                TAKEOFF.replace("\"ordered\": 40", "\"ordered\": 1001"),
                book(CLIPS.replace("0.61", "1000000000"), PANELS));
        assertThat(answer.isProblem(422).errors()).containsExactly("TOTAL_TOO_LARGE #/priceBook");
    }

    /** A hip roof in millimetres; so much for each mitred cut, and so much for each metre of it. */
    @Test
    void mitresArePricedByTheirNumberAndTheirLength() throws IOException {
        JsonNode takeoff = Door.post("/v1/takeoffs", example("layouts-hip")).json();
        JsonNode labour = post(takeoff.toString(), """
                        {"currency": "EUR", "items": [], "labour": [
                          {"id": "cut", "per": "mitredEnds", "unit": "C62", "price": "1.35"},
                          {"id": "seal", "per": "mitreLength", "unit": "MTR", "price": "2.15"},
                          {"id": "valleys", "per": "valleys", "unit": "C62", "price": 95, "minimum": 200}]}
                        """).json().path("labour");
        BigDecimal cuts = total(takeoff, "mitredEnds");
        BigDecimal metres = total(takeoff, "mitreLength").movePointLeft(3);
        assertThat(cuts).isPositive();
        assertThat(amount(labour.at("/0/amount"))).isEqualTo(euros(cuts.multiply(new BigDecimal("1.35"))));
        assertThat(amount(labour.at("/1/amount"))).isEqualTo(euros(metres.multiply(new BigDecimal("2.15"))));
        assertThat(amount(labour.at("/2/amount"))).isEqualTo("0.00");
    }

    private static BigDecimal euros(BigDecimal exact) {
        return exact.setScale(2, RoundingMode.HALF_UP);
    }

    private static BigDecimal total(JsonNode takeoff, String item) {
        for (JsonNode total : takeoff.path("totals")) {
            if (total.path("item").asText().equals(item)) {
                return total.path("quantity").decimalValue();
            }
        }
        throw new AssertionError("no " + item + " in " + takeoff.path("totals"));
    }

    /** Five thousand entries in any order: the book is sifted once, not once for every line. */
    @Test
    void aBookMayBeLarge() {
        StringBuilder items = new StringBuilder(CLIPS);
        for (int i = 0; i < Limits.BOOK_ITEMS - 1; i++) {
            items.append(
                    ",{\"item\": \"panel\", \"width\": %s, \"unit\": \"FOT\", \"price\": 1}".formatted(20 + i * 0.001));
        }
        String book = "{\"currency\": \"USD\", \"units\": {\"length\": \"in\"}, \"items\": [%s]}";
        JsonNode quote = post(book.formatted(items)).json();
        assertThat(quote.at("/lines/1/entry").asText()).isEqualTo("#/priceBook/items/751");
        assertThat(post(book.formatted(items + "," + CLIPS)).isProblem(400).errors())
                .containsExactly("TOO_MANY #/priceBook/items");
    }
}
