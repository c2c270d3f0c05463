package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest.BodyPublishers;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.thalweg.api.Door.Answer;

/** The problems every caller may meet. Asked of the service under test and of the packaged application alike. */
abstract class EssentialProblems {

    static final String ROOFS = "/v1/roofs";

    static final String UNITS = "\"units\":{\"length\":\"in\",\"area\":\"ft2\",\"mass\":\"lb\"}";

    static final String TRIANGLE = "{" + UNITS + ",\"roof\":{"
            + "\"points\":{\"A\":[0,0,0],\"B\":[480,0,0],\"R\":[240,240,120]},"
            + "\"planes\":[{\"id\":\"south\",\"outline\":[\"A\",\"B\",\"R\"]}]}}";

    @Test
    void aGoodRequestIsAnswered() {
        Answer answer = Door.post(ROOFS, TRIANGLE);
        assertThat(answer.status()).isEqualTo(200);
        assertThat(answer.json().at("/roof/planes/0/id").asText()).isEqualTo("south");
    }

    @Test
    void aValleyIsAnsweredOrRefusedWithAReason() {
        String square = "{" + UNITS + ",\"panel\":{\"cover\":18},"
                + "\"corner\":{\"pitches\":[\"6:12\",\"6:12\"],\"planAngleDeg\":90,\"length\":90}}";
        Answer answer = Door.post("/v1/valleys", square);
        assertThat(answer.status()).as(answer.text()).isEqualTo(200);
        assertThat(answer.json().at("/valleys/0/sides/0/riseAcrossCover/value").asDouble())
                .isEqualTo(20.1246);
        assertThat(Door.post("/v1/valleys", square.replace(":90,", ":180,"))
                        .isProblem(422)
                        .errors())
                .containsExactly("NO_VALLEY #/corner/planAngleDeg");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "''|EMPTY_BODY",
                "'{'|MALFORMED_JSON",
                "'{\"units\":NaN}'|MALFORMED_JSON",
                "'{\"units\":{}} x'|MALFORMED_JSON",
                "'nonsense'|MALFORMED_JSON"
            })
    void whatIsNotJsonIsUnreadable(String body, String code) {
        Answer answer = Door.post(ROOFS, body).isProblem(400);
        assertThat(answer.code()).isEqualTo("UNREADABLE");
        assertThat(answer.errors()).containsExactly(code + " #");
    }

    @ParameterizedTest
    @ValueSource(strings = {"[]", "1", "\"text\"", "null", "true"})
    void jsonThatIsNoObjectDoesNotFit(String body) {
        Answer answer = Door.post(ROOFS, body).isProblem(400);
        assertThat(answer.code()).isEqualTo("INVALID");
        assertThat(answer.errors()).containsExactly("WRONG_TYPE #");
    }

    @Test
    void everythingThatDoesNotFitIsToldAtOnceWithPointers() {
        Answer answer = Door.post(
                        ROOFS,
                        "{\"units\":{\"length\":\"yd\",\"area\":\"ft2\"},\"rof\":1,\"roof\":{\"points\":{\"A\":[0,0],"
                                + "\"B\":[\"1\",{},0],\"R\":[0,0,0]},\"planes\":[{\"outline\":[\"A\"]}]}}")
                .isProblem(400);
        assertThat(answer.code()).isEqualTo("INVALID");
        assertThat(answer.errors())
                .containsExactlyInAnyOrder(
                        "BAD_UNIT #/units/length",
                        "MISSING_MEMBER #/units",
                        "UNKNOWN_MEMBER #/rof",
                        "TOO_FEW #/roof/points/A",
                        "WRONG_TYPE #/roof/points/B/1",
                        "MISSING_MEMBER #/roof/planes/0",
                        "TOO_FEW #/roof/planes/0/outline");
    }

    @Test
    void lengthsThatCanNotBeReadAreToldInTheCallersUnit() {
        Answer answer = Door.post(ROOFS, TRIANGLE.replaceFirst("\\}$", ",\"tolerance\":100,\"minimumSlope\":\"flat\"}"))
                .isProblem(400);
        assertThat(answer.errors()).containsExactly("OUT_OF_RANGE #/tolerance", "BAD_PITCH #/minimumSlope");
        assertThat(answer.json().at("/errors/0/actual").toString()).isEqualTo("{\"value\":100,\"unit\":\"in\"}");
        assertThat(answer.json().at("/errors/0/limit").toString()).isEqualTo("{\"value\":3.937,\"unit\":\"in\"}");
    }

    @Test
    void aNameThatIsNotGivenIsNoRoof() {
        Answer answer = Door.post(ROOFS, TRIANGLE.replace("\"B\",\"R\"]", "\"B\",\"r\"]"))
                .isProblem(422);
        assertThat(answer.code()).isEqualTo("NOT_A_ROOF");
        assertThat(answer.errors()).containsExactly("UNKNOWN_POINT #/roof/planes/0/outline/2");
        assertThat(answer.json().at("/errors/0/detail").asText()).contains("Did you mean \"R\"?");
    }

    @Test
    void twoPlanesOfOneNameAreNoRoof() {
        String plane = "{\"id\":\"south\",\"outline\":[\"A\",\"B\",\"R\"]}";
        Answer answer =
                Door.post(ROOFS, TRIANGLE.replace(plane, plane + "," + plane)).isProblem(422);
        assertThat(answer.errors()).contains("DUPLICATE_ID #/roof/planes/1");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/nothing.html",
                "/v1",
                "/v2/roofs",
                "/v1/roofs/1",
                "/q/nothing",
                "/q/swagger-ui/nothing.js",
                "/v1/%00"
            })
    void whereNothingIsServedThatIsSaid(String path) {
        assertThat(Door.get(path).isProblem(404).code()).isEqualTo("NOT_FOUND");
    }

    @ParameterizedTest
    @CsvSource({
        "GET,/v1/roofs,POST",
        "PUT,/v1/roofs,POST",
        "DELETE,/v1/limits,GET",
        "PATCH,/v1/limits/,GET",
        "MOVE,/v1/roofs,POST"
    })
    void anotherMethodIsRefusedWithThoseThatWouldDo(String method, String path, String allowed) {
        Answer answer = Door.send(Door.request(path).method(method, BodyPublishers.noBody()))
                .isProblem(405);
        assertThat(answer.code()).isEqualTo("METHOD_NOT_ALLOWED");
        assertThat(answer.headers().firstValue("Allow")).contains(allowed);
    }

    @ParameterizedTest
    @ValueSource(strings = {"image/png", "text/html", "application/xml", "nonsense"})
    void anAnswerInAnotherFormIsRefusedWithThoseThereAre(String accept) {
        Answer answer = Door.send(Door.request(ROOFS)
                        .POST(BodyPublishers.ofString(TRIANGLE))
                        .header("Content-Type", "application/json")
                        .header("Accept", accept))
                .isProblem(406);
        assertThat(answer.code()).isEqualTo("NOT_ACCEPTABLE");
        assertThat(answer.json().path("detail").asText()).contains("application/json");
    }

    @ParameterizedTest
    @ValueSource(strings = {"text/plain", "application/xml", "application/x-www-form-urlencoded", "nonsense"})
    void aBodyInAnotherFormIsRefusedWithThoseThatAreRead(String type) {
        Answer answer = Door.send(Door.request(ROOFS)
                        .POST(BodyPublishers.ofString(TRIANGLE))
                        .header("Content-Type", type))
                .isProblem(415);
        assertThat(answer.code()).isEqualTo("UNSUPPORTED_MEDIA_TYPE");
        assertThat(answer.json().path("detail").asText()).contains("application/json");
    }

    @Test
    void aBodyThatSaysItIsTooLargeIsRefusedBeforeItIsSent() {
        String told = Door.raw("POST /v1/roofs HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\n"
                + "Content-Length: 10000000\r\n\r\n");
        assertThat(told).startsWith("HTTP/1.1 413 ");
        assertThat(told).containsIgnoringCase("connection: close");
        assertThat(told).contains("application/problem+json").contains("\"code\":\"TOO_LARGE\"");
        assertThat(told).contains("\"actual\":{\"value\":10000000,\"unit\":\"byte\"}");
        assertThat(told).contains("\"limit\":{\"value\":" + Limits.BODY_BYTES + ",\"unit\":\"byte\"}");
    }

    @Test
    void aBodyThatTurnsOutTooLargeIsRefused() {
        Answer answer = Door.postChunked(ROOFS, new byte[Limits.BODY_BYTES + 1]).isProblem(413);
        assertThat(answer.code()).isEqualTo("TOO_LARGE");
    }

    @ParameterizedTest
    @ValueSource(ints = {100_000, 1_000_000, Limits.BODY_BYTES})
    void aDepthBombIsRefused(int depth) {
        Answer answer = Door.post(ROOFS, "[".repeat(depth)).isProblem(400);
        assertThat(answer.json().at("/errors/0/code").asText()).isEqualTo("TOO_DEEP");
    }

    /** Five seconds is far more than it takes (well under one), and far less than working on such a ring would. */
    @Test
    void aRingOfAMillionCornersIsRefusedQuickly() {
        String corners = "\"A\",".repeat(999_999) + "\"A\"";
        String body = TRIANGLE.replace("[\"A\",\"B\",\"R\"]", "[" + corners + "]");
        long began = System.nanoTime();
        Answer answer = Door.post(ROOFS, body).isProblem(400);
        assertThat(Duration.ofNanos(System.nanoTime() - began)).isLessThan(Duration.ofSeconds(5));
        assertThat(answer.errors()).containsExactly("TOO_MANY #/roof/planes/0/outline");
        assertThat(answer.json().at("/errors/0/actual/value").asInt()).isEqualTo(1_000_000);
    }
}
