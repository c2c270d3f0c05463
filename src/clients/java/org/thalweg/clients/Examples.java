package org.thalweg.clients;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.restassured.RestAssured;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The requests of {@code openapi/examples}, and what a plain HTTP call is answered to them. */
final class Examples {

    static final Path FOLDER = Path.of("openapi", "examples");

    private static final String REQUEST = ".request.json";
    private static final HttpClient PLAIN = HttpClient.newHttpClient();
    private static final ObjectMapper JSON = new ObjectMapper();

    private Examples() {}

    static List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(REQUEST))
                    .map(name -> name.substring(0, name.length() - REQUEST.length()))
                    .sorted()
                    .toList();
        }
    }

    /** Where an example is posted: {@code stock-cuts-hip} to {@code /v1/stock-cuts}. */
    static String path(String name) {
        return "/v1/" + name.substring(0, name.lastIndexOf('-'));
    }

    static String service() {
        return "http://localhost:" + RestAssured.port;
    }

    static String request(String name) throws IOException {
        return Files.readString(FOLDER.resolve(name + REQUEST));
    }

    static JsonNode requestTree(String name) throws IOException {
        return JSON.readTree(request(name));
    }

    /** What a plain call is answered that posts this where the example is posted. */
    static JsonNode answered(String name, String body) throws IOException, InterruptedException {
        return sent(HttpRequest.newBuilder(URI.create(service() + path(name)))
                .header("Content-Type", "application/json")
                .POST(BodyPublishers.ofString(body))
                .build());
    }

    static JsonNode got(String path) throws IOException, InterruptedException {
        return sent(HttpRequest.newBuilder(URI.create(service() + path)).build());
    }

    private static JsonNode sent(HttpRequest request) throws IOException, InterruptedException {
        HttpResponse<byte[]> response = PLAIN.send(request, BodyHandlers.ofByteArray());
        if (response.statusCode() != 200) {
            throw new AssertionError(request.uri() + " was answered " + response.statusCode());
        }
        return JSON.readTree(response.body());
    }
}
