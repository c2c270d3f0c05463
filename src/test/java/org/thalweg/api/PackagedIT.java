package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusIntegrationTest;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The same problems, asked of the packaged application: it words and maps some things otherwise than a test run does. */
@QuarkusIntegrationTest
class PackagedIT extends EssentialProblems {

    @ParameterizedTest
    @ValueSource(strings = {"/v1/%zz", "/%", "/v1/limits%", "/v1/limits;x=%zz", "/q/swagger-ui/%zz"})
    void anAddressThatCanNotBeReadIsToldAsAProblem(String address) {
        assertThat(Door.raw("GET " + address + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 400 ")
                .contains("application/problem+json")
                .contains("\"code\":\"BAD_REQUEST\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"v1/limits", "*"})
    void anAddressThatDoesNotBeginWithASlashLeadsNowhere(String address) {
        assertThat(Door.raw("GET " + address + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 404 ")
                .contains("\"code\":\"NOT_FOUND\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"GET /v1/limits HTTP/1.1\r\nConnection: close\r\n\r\n"})
    void aRequestWithoutAHostIsToldAsAProblem(String request) {
        assertThat(Door.raw(request)).startsWith("HTTP/1.1 400 ").contains("\"code\":\"BAD_REQUEST\"");
    }
}
