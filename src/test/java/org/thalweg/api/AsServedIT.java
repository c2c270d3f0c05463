package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusIntegrationTest;
import io.restassured.RestAssured;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How the packaged application sends things: compressed or not, and with which headers. */
@QuarkusIntegrationTest
class AsServedIT {

    private static final HttpClient CLIENT = HttpClient.newHttpClient();
    private static final Path EXAMPLES = Path.of("openapi", "examples");

    @ParameterizedTest
    @CsvSource({
        "/v1/layouts, layouts-demo, 9",
        "/v1/valleys, valleys-square, 3",
        "/v1/stock-cuts, stock-cuts-hip, 3",
    })
    void anAnswerIsCompressedForWhoAsksAndTheSameBytesWhenUnpacked(String path, String example, int times)
            throws Exception {
        Path request = EXAMPLES.resolve(example + ".request.json");
        HttpResponse<byte[]> plain = send(post(path, request));
        HttpResponse<byte[]> packed = send(post(path, request).header("Accept-Encoding", "gzip"));
        assertThat(plain.body()).isEqualTo(Files.readAllBytes(EXAMPLES.resolve(example + ".answer.json")));
        assertThat(plain.headers().firstValue("Content-Encoding")).isEmpty();
        assertThat(unpacked(packed)).isEqualTo(plain.body());
        assertThat(packed.body().length * times).isLessThan(plain.body().length);
        assertThat(plain.headers().allValues("Vary")).contains("accept-encoding");
        assertThat(packed.headers().allValues("Vary")).contains("accept-encoding");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"/", "/thalweg-valley.js", "/layouts-demo.request.json", "/openapi", "/v1/limits", "/nothing"})
    void soIsWhateverElseIsText(String path) throws Exception {
        byte[] plain = send(get(path)).body();
        HttpResponse<byte[]> packed = send(get(path).header("Accept-Encoding", "gzip"));
        assertThat(unpacked(packed)).isEqualTo(plain);
    }

    /** A small body that unpacks to a large one would cost more than reading it. */
    @Test
    void aRequestIsNeverUnpacked() throws Exception {
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        try (GZIPOutputStream packer = new GZIPOutputStream(body)) {
            Files.copy(EXAMPLES.resolve("valleys-square.request.json"), packer);
        }
        HttpResponse<byte[]> refused = send(request("/v1/valleys")
                .POST(BodyPublishers.ofByteArray(body.toByteArray()))
                .header("Content-Type", "application/json")
                .header("Content-Encoding", "gzip"));
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(new String(refused.body(), StandardCharsets.UTF_8)).contains("\"code\":\"MALFORMED_TEXT\"");
    }

    /** Each line is sent as soon as it is priced; a packer would keep it back. */
    @Test
    void linesAreNotCompressed() throws Exception {
        String book = Files.readString(EXAMPLES.resolve("nightly.book.json")).replace("\n", "");
        String lines = book + "\n" + Files.readString(EXAMPLES.resolve("nightly.jobs.ndjson"));
        HttpRequest.Builder stream = request("/v1/repricings")
                .POST(BodyPublishers.ofString(lines))
                .header("Content-Type", RepricingResource.LINES);
        HttpResponse<byte[]> plain = send(stream);
        HttpResponse<byte[]> asked = send(stream.header("Accept-Encoding", "gzip"));
        assertThat(plain.statusCode()).isEqualTo(200);
        assertThat(plain.headers().firstValue("Content-Encoding")).isEmpty();
        assertThat(asked.headers().firstValue("Content-Encoding").orElse("identity"))
                .isEqualTo("identity");
        assertThat(asked.body()).isEqualTo(plain.body());
    }

    @ParameterizedTest
    @CsvSource({
        "/, text/html;charset=UTF-8",
        "/index.html, text/html;charset=UTF-8",
        "/thalweg.css, text/css;charset=UTF-8",
        "/thalweg-valley.js, text/javascript;charset=UTF-8",
        "/page.js, text/javascript;charset=UTF-8",
        "/icon.svg, image/svg+xml",
        "/layouts-demo.request.json, application/json",
    })
    void thePageLetsNothingElseIn(String path, String type) throws Exception {
        HttpResponse<byte[]> file = send(get(path));
        assertThat(file.statusCode()).isEqualTo(200);
        assertThat(file.headers().firstValue("Content-Type")).contains(type);
        assertThat(file.headers().firstValue("Content-Security-Policy").orElse(""))
                .startsWith("default-src 'none'; script-src 'self'; style-src 'self';")
                .contains("frame-ancestors 'none'")
                .doesNotContain("unsafe");
        assertThat(file.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
        assertThat(file.headers().firstValue("Referrer-Policy")).contains("no-referrer");
        assertThat(file.headers().allValues("Cache-Control")).containsExactly("no-cache");
        HttpResponse<byte[]> head = send(request(path).method("HEAD", BodyPublishers.noBody()));
        assertThat(head.statusCode()).isEqualTo(200);
        assertThat(head.body()).isEmpty();
        assertThat(head.headers().firstValueAsLong("Content-Length")).hasValue(file.body().length);
    }

    @Test
    void otherPagesKeepTheirScripts() throws Exception {
        HttpResponse<byte[]> swagger = send(get("/q/swagger-ui/"));
        assertThat(swagger.statusCode()).isEqualTo(200);
        assertThat(swagger.headers().firstValue("Content-Security-Policy")).isEmpty();
        assertThat(swagger.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
    }

    @Test
    void thePagesExampleIsThatOfTheContract() throws Exception {
        assertThat(send(get("/layouts-demo.request.json")).body())
                .isEqualTo(Files.readAllBytes(EXAMPLES.resolve("layouts-demo.request.json")));
    }

    private static byte[] unpacked(HttpResponse<byte[]> answer) throws IOException {
        assertThat(answer.headers().allValues("Content-Encoding")).containsExactly("gzip");
        return new GZIPInputStream(new ByteArrayInputStream(answer.body())).readAllBytes();
    }

    private static HttpRequest.Builder post(String path, Path body) throws IOException {
        return request(path).POST(BodyPublishers.ofFile(body)).header("Content-Type", "application/json");
    }

    private static HttpRequest.Builder get(String path) {
        return request(path).GET();
    }

    private static HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create("http://localhost:" + RestAssured.port + path));
    }

    private static HttpResponse<byte[]> send(HttpRequest.Builder request) throws Exception {
        return CLIENT.send(request.build(), BodyHandlers.ofByteArray());
    }
}
