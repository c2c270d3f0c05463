package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.test.junit.QuarkusTest;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.thalweg.api.Door.Answer;

/** Bodies meant to break things. Sources and licences stand beside the files. */
@QuarkusTest
class BadInputTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    static Stream<Path> notJson() {
        return texts("test_parsing", "n_");
    }

    static Stream<Path> json() {
        return texts("test_parsing", "y_");
    }

    static Stream<Path> anything() {
        return Stream.concat(texts("test_parsing", "i_"), texts("test_transform", ""));
    }

    @ParameterizedTest
    @MethodSource
    void notJson(Path text) {
        Answer answer = Door.post("/v1/roofs", bytes(text)).isProblem(400);
        assertThat(answer.code()).isEqualTo("UNREADABLE");
        assertThat(answer.errors())
                .hasSize(1)
                .first()
                .asString()
                .containsPattern("^(MALFORMED_JSON|MALFORMED_TEXT|EMPTY_BODY) ");
    }

    @ParameterizedTest
    @MethodSource
    void json(Path text) {
        Answer answer = Door.post("/v1/roofs", bytes(text)).isProblem(400);
        assertThat(answer.code()).isEqualTo("INVALID");
    }

    @ParameterizedTest
    @MethodSource
    void anything(Path text) {
        Door.post("/v1/roofs", bytes(text)).isProblem(400);
    }

    /** The same texts where any JSON is taken: as a member of a CityJSON document. */
    @ParameterizedTest
    @MethodSource("json")
    void jsonInsideADocumentOfAnotherStandard(Path text) {
        Answer answer = Door.post("/v1/roofs", inCityJson(bytes(text)));
        assertThat(answer.status()).isIn(400, 422);
        answer.isProblem(answer.status());
    }

    @ParameterizedTest
    @MethodSource("notJson")
    void notJsonInsideADocumentOfAnotherStandard(Path text) {
        Door.post("/v1/roofs", inCityJson(bytes(text))).isProblem(400);
    }

    static List<String> naughty() {
        try (InputStream in = BadInputTest.class.getResourceAsStream("/json-naughty-strings/strings.json")) {
            return StreamSupport.stream(JSON.readTree(in).spliterator(), false)
                    .map(JsonNode::asText)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("naughty")
    void aNaughtyPlaneIdComesBackUnharmedOrIsRefused(String id) {
        Answer answer = Door.post("/v1/roofs", EssentialProblems.TRIANGLE.replace("\"south\"", json(id)));
        if (id.isEmpty() || id.length() > Limits.ID_LENGTH) {
            answer.isProblem(400);
        } else {
            assertThat(answer.status()).as(answer.text()).isEqualTo(200);
            assertThat(answer.json().at("/roof/planes/0/id").asText()).isEqualTo(id);
        }
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("naughty")
    void aNaughtyPointNameIsLookedUpLikeAnyOther(String name) {
        Answer answer = Door.post("/v1/roofs", EssentialProblems.TRIANGLE.replace("\"R\"", json(name)));
        boolean wrongLength = name.isEmpty() || name.length() > Limits.ID_LENGTH;
        assertThat(answer.status())
                .as(answer.text())
                .isEqualTo(wrongLength || "A".equals(name) || "B".equals(name) ? 400 : 200);
        assertThat(answer.json().isObject()).isTrue();
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("naughty")
    void aNaughtyNameThatIsNotGivenIsToldAndPointedAt(String name) {
        Answer answer =
                Door.post("/v1/roofs", EssentialProblems.TRIANGLE.replace("\"B\",\"R\"]", "\"B\"," + json(name) + "]"));
        if (name.isEmpty() || name.length() > Limits.ID_LENGTH) {
            assertThat(answer.status()).isEqualTo(400);
        } else {
            assertThat(answer.status()).isEqualTo(422);
            assertThat(answer.errors()).containsExactly("UNKNOWN_POINT #/roof/planes/0/outline/2");
        }
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("naughty")
    void aNaughtyMemberIsNotKnown(String name) {
        Answer answer =
                Door.post("/v1/roofs", EssentialProblems.TRIANGLE.replace("\"mass\"", json(name) + ":1,\"mass\""));
        assertThat(answer.status()).isEqualTo(400);
        String pointer = "#/units/" + name.replace("~", "~0").replace("/", "~1");
        assertThat(answer.errors())
                .containsExactly(
                        name.getBytes(StandardCharsets.UTF_8).length > Limits.NAME_BYTES
                                ? "TOO_LONG #/units"
                                : "UNKNOWN_MEMBER " + pointer);
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("naughty")
    void aNaughtyTapeStringIsReadAsALengthOrRefused(String tape) {
        Answer answer = Door.post(
                "/v1/roofs", EssentialProblems.TRIANGLE.replaceFirst("\\}$", ",\"tolerance\":") + json(tape) + "}");
        assertThat(answer.status()).isIn(200, 400);
        if (answer.status() == 400) {
            assertThat(answer.errors())
                    .hasSize(1)
                    .first()
                    .asString()
                    .containsPattern("^(BAD_LENGTH|OUT_OF_RANGE|TOO_LONG) #/tolerance$");
        }
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("naughty")
    void aNaughtyBuildingIsNotFound(String building) {
        Answer answer = Door.post(
                "/v1/roofs",
                "{" + EssentialProblems.UNITS
                        + ",\"roof\":{\"cityjson\":{\"type\":\"CityJSON\",\"version\":\"2.0\",\"CityObjects\":{},"
                        + "\"vertices\":[],\"transform\":{\"scale\":[1,1,1],\"translate\":[0,0,0]}},\"building\":"
                        + json(building) + "}}");
        assertThat(answer.status()).isIn(400, 422);
        assertThat(answer.json().path("errors")).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"NaN\"",
                "\"Infinity\"",
                "\"-Infinity\"",
                "\"1e400\"",
                "1e400",
                "-1e400",
                "1e-400",
                "1e308",
                "1e11"
            })
    void coordinatesThatAreNoNumbersOnARoofAreRefusedWhereTheyStand(String number) {
        Answer answer =
                Door.post("/v1/roofs", EssentialProblems.TRIANGLE.replace("[240,240,120]", "[240,240," + number + "]"));
        if (number.equals("1e-400")) {
            assertThat(answer.status()).as("too small to tell from 0").isEqualTo(200);
        } else {
            assertThat(answer.isProblem(400).errors())
                    .hasSize(1)
                    .first()
                    .asString()
                    .containsPattern("^(BAD_LENGTH|OUT_OF_RANGE) #/roof/points/R/2$");
        }
    }

    private static Stream<Path> texts(String folder, String prefix) {
        try (Stream<Path> files = Files.list(Path.of("src", "test", "resources", "json-conformance", folder))) {
            return files.filter(file -> file.getFileName().toString().startsWith(prefix)).sorted().toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] bytes(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] inCityJson(byte[] text) {
        byte[] before = ("{" + EssentialProblems.UNITS + ",\"roof\":{\"cityjson\":{\"it\":")
                .getBytes(StandardCharsets.US_ASCII);
        byte[] after = "}}}".getBytes(StandardCharsets.US_ASCII);
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        body.writeBytes(before);
        body.writeBytes(text);
        body.writeBytes(after);
        return body.toByteArray();
    }

    private static String json(String text) {
        try {
            return JSON.writeValueAsString(text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
