package org.thalweg.api.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.erdtman.jcs.JsonCanonicalizer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CanonicalTest {

    /**
     * Source: sample input and expected output in the README of cyberphone/json-canonicalization, by the first author of
     * RFC 8785; the RFC's own sample (section 3.2.2) is the same but for one more number.
     */
    @Test
    void theSampleOfTheStandardsAuthorComesOutAsPrintedThere() {
        String sample = """
                {
                  "numbers": [1E30, 4.50, 6, 2e-3, 0.000000000000000000000000001],
                  "escaping": "\\u20ac$\\u000F\\u000aA'\\u0042\\u0022\\u005c\\\\\\"\\/",
                  "other":  [null, true, false]
                }
                """;
        assertThat(canonical(sample))
                .isEqualTo("{\"escaping\":\"€$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\","
                        + "\"numbers\":[1e+30,4.5,6,0.002,1e-27],\"other\":[null,true,false]}");
    }

    @Test
    void theDigestIsSha256OfTheCanonicalForm() {
        // Source: FIPS 180-2, appendix B.1 has "abc"; that of {} is from memory of common tools, checked with
        // sha256sum.
        assertThat(Canonical.digest(bytes(" { } "), 0))
                .isEqualTo("44136fa355b3678a1146ad16f7e8649e94fb4fc21fe77e8310c060f61caaff8a");
    }

    @Test
    void orderOfMembersWhiteSpaceAndWaysToWriteDoNotChangeTheDigest() {
        String one = "{\"b\":[1.0,2e1],\"a\":{\"\\u0078\":null,\"d\":\"\\/\"}}";
        String other = "{ \"a\": { \"d\": \"/\", \"x\": null },\n \"b\": [ 1, 20 ] }";
        assertThat(Canonical.digest(bytes(one), 0)).isEqualTo(Canonical.digest(bytes(other), 0));
    }

    @Test
    void aByteOrderMarkIsNoPartOfTheText() {
        assertThat(Canonical.digest(bytes("\uFEFF{\"a\":1}"), 3)).isEqualTo(Canonical.digest(bytes("{\"a\":1}"), 0));
    }

    @ParameterizedTest
    @CsvSource({
        "0,0",
        "-0,0",
        "-0.0,0",
        "0.0,0",
        "1.0,1",
        "10,10",
        "100,100",
        "-5,-5",
        "-0.5,-0.5",
        "0.5,0.5",
        "0.50,0.5",
        "0.000001,0.000001",
        "0.0000001,1e-7",
        "0.00000123,0.00000123",
        "123456789012345,123456789012345",
        "1234567890123456789,1234567890123456800",
        "0.1234567,0.1234567",
        "1e21,1e+21",
        "1E20,100000000000000000000",
        "5e-324,5e-324",
        "1.7976931348623157e308,1.7976931348623157e+308",
        "9007199254740993,9007199254740992",
        "333333333.33333329,333333333.3333333",
        "12.000,12",
        "1e0,1",
        "1.5e3,1500",
        "20.1246,20.1246"
    })
    void aNumberIsWrittenAsEcmaScriptDoes(String written, String canonical) throws IOException {
        assertThat(canonical("{\"n\":" + written + "}")).isEqualTo("{\"n\":" + canonical + "}");
        assertThat(byTheLibrary("{\"n\":" + written + "}")).isEqualTo("{\"n\":" + canonical + "}");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{}",
                "{\"a\":[]}",
                "[ [ ] , { } , \"\" ]",
                "{\"\":0,\"aa\":1,\"a\":2,\"A\":3,\"1\":4,\"10\":5,\"2\":6}",
                "{\"\\u20ac\":1,\"\\r\":2,\"\\ufb33\":3,\"1\":4,\"\\ud83d\\ude00\":5,\"\\u0080\":6,\"\\u00f6\":7}",
                "{\"€\":1,\"\\ufb33\":3,\"😀\":5,\"ö\":7,\"\\\"\":8,\"\\\\\":9,\"/\":10,\"\\/a\":11,\"\\b\\f\\t\":12}",
                "{\"s\":\"\\u0000\\u001f\\u007f\\u0080 \\u2028\\u2029 \\ud834\\udd1e\"}"
            })
    void membersAndStringsComeOutAsTheLibraryWritesThem(String json) throws IOException {
        assertThat(canonical(json)).isEqualTo(byTheLibrary(json));
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4})
    void anyJsonComesOutAsTheLibraryWritesIt(long seed) throws IOException {
        Random random = new Random(seed);
        for (int i = 0; i < 500; i++) {
            String json = "{\"it\":" + any(random, 4) + "}";
            assertThat(canonical(json)).as(json).isEqualTo(byTheLibrary(json));
        }
    }

    private static String any(Random random, int depth) {
        return switch (random.nextInt(depth > 0 ? 7 : 5)) {
            case 0 -> Double.toString(Math.scalb(random.nextGaussian(), random.nextInt(80) - 40));
            case 1 -> Integer.toString(random.nextInt(2_000) - 1_000) + "." + random.nextInt(100_000);
            case 2 -> Long.toString(random.nextLong() >> random.nextInt(60));
            case 3 -> random.nextBoolean() ? "null" : "true ";
            case 4 -> string(random);
            case 5 -> "[" + any(random, depth - 1) + " ," + any(random, depth - 1) + "]";
            default -> object(random, depth - 1);
        };
    }

    private static String object(Random random, int depth) {
        StringBuilder json = new StringBuilder("{");
        for (int i = 0; i < 4; i++) {
            String unique = string(random).replaceFirst("^\"", "\"" + i);
            json.append(i == 0 ? "" : " , ").append(unique).append("\t: ").append(any(random, depth));
        }
        return json.append("}").toString();
    }

    private static String string(Random random) {
        String[] parts = {
            "a", "Z", "é", "€", "😀", "\\n", "\\u0041", "\\u00e9", "\\ud83d\\ude00", "\\/", "\\\\", "\\\"", "\\u000b"
        };
        StringBuilder json = new StringBuilder("\"");
        for (int i = random.nextInt(5); i > 0; i--) {
            json.append(parts[random.nextInt(parts.length)]);
        }
        return json.append('"').toString();
    }

    private static String canonical(String json) {
        return new String(Canonical.of(bytes(json)), StandardCharsets.UTF_8);
    }

    private static String byTheLibrary(String json) throws IOException {
        return new JsonCanonicalizer(json).getEncodedString();
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
