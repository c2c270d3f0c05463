package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.restassured.RestAssured;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpHeaders;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublisher;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Knocks at the running service's door, and looks closely at what comes back. */
final class Door {

    /** Words that would tell of the inside: packages, classes, a library's way of saying things. */
    private static final List<String> INSIDE = List.of(
            "java.",
            "javax.",
            "jakarta.",
            "com.fasterxml",
            "org.thalweg",
            "org.jboss",
            "io.quarkus",
            "io.vertx",
            "io.netty",
            "Exception",
            "StreamReadFeature",
            "at line: ",
            "through reference chain",
            "Unexpected character",
            "Unrecognized",
            "hibernate",
            "\tat ");

    private static final HttpClient CLIENT =
            HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();

    private static final ObjectMapper STRICT = new ObjectMapper(JsonFactory.builder()
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .build())
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);

    private Door() {}

    /**
     * What came back.
     *
     * @param status  HTTP status
     * @param headers HTTP headers
     * @param text    the body
     */
    record Answer(int status, HttpHeaders headers, String text) {

        JsonNode json() {
            return Door.json(text);
        }

        String type() {
            return headers.firstValue("Content-Type").orElse("");
        }

        String code() {
            return json().path("code").asText();
        }

        /** Code and pointer of each error. */
        List<String> errors() {
            return json().path("errors").findParents("pointer").stream()
                    .map(error -> error.path("code").asText() + " "
                            + error.path("pointer").asText())
                    .toList();
        }

        /** Fails unless this is a whole problem with this status, and says nothing of the inside. */
        Answer isProblem(int expected) {
            assertThat(status).as(text).isEqualTo(expected);
            assertThat(type()).isEqualTo("application/problem+json");
            JsonNode problem = json();
            assertThat(problem.fieldNames())
                    .toIterable()
                    .containsExactly("type", "title", "status", "code", "detail", "errorCount", "errors");
            assertThat(problem.path("type").asText()).startsWith("/problems/");
            assertThat(problem.path("status").asInt()).isEqualTo(expected);
            assertThat(problem.path("title").asText()).isNotBlank();
            assertThat(problem.path("detail").asText()).isNotBlank();
            assertThat(problem.path("errors").isArray()).isTrue();
            for (JsonNode error : problem.path("errors")) {
                assertThat(error.path("code").asText()).isNotBlank();
                assertThat(error.path("pointer").asText()).startsWith("#");
                assertThat(error.path("detail").asText()).isNotBlank();
            }
            assertThat(text).doesNotContain(INSIDE);
            return this;
        }
    }

    static JsonNode json(String text) {
        try {
            return STRICT.readTree(text);
        } catch (IOException e) {
            throw new AssertionError("not JSON: " + text, e);
        }
    }

    static Answer post(String path, String body) {
        return post(path, body.getBytes(StandardCharsets.UTF_8));
    }

    static Answer post(String path, byte[] body) {
        return send(request(path).POST(BodyPublishers.ofByteArray(body)).header("Content-Type", "application/json"));
    }

    /** Posts without saying how long the body is. */
    static Answer postChunked(String path, byte[] body) {
        BodyPublisher chunks = BodyPublishers.ofInputStream(() -> new ByteArrayInputStream(body));
        return send(request(path).POST(chunks).header("Content-Type", "application/json"));
    }

    static Answer get(String path) {
        return send(request(path).GET());
    }

    static HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create("http://localhost:" + RestAssured.port + path));
    }

    /**
     * A server that hangs up on a body it won't read may be heard hanging up before its answer is (RFC 9112, 9.6); a client asks
     * once more then.
     */
    static Answer send(HttpRequest.Builder request) {
        try {
            return sendOnce(request);
        } catch (IOException hungUp) {
            try {
                return sendOnce(request);
            } catch (IOException again) {
                throw new UncheckedIOException(again);
            }
        }
    }

    private static Answer sendOnce(HttpRequest.Builder request) throws IOException {
        try {
            HttpResponse<String> response = CLIENT.send(request.build(), BodyHandlers.ofString(StandardCharsets.UTF_8));
            return new Answer(response.statusCode(), response.headers(), response.body());
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    /** Sends bytes that no client would, and reads what comes back until the service hangs up. */
    static String raw(String request) {
        try (Socket socket = new Socket("localhost", RestAssured.port)) {
            socket.setSoTimeout(10_000);
            socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
            socket.getOutputStream().flush();
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
