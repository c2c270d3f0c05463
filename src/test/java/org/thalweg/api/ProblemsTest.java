package org.thalweg.api;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.ServiceUnavailableException;
import jakarta.ws.rs.WebApplicationException;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.junit.jupiter.api.Test;
import org.thalweg.api.Door.Answer;

@QuarkusTest
class ProblemsTest extends EssentialProblems {

    /** Fails in every way a resource might. */
    @Path("/test/failing")
    public static class FailingResource {

        @GET
        @Path("/bug")
        @Operation(hidden = true)
        public String bug() {
            throw new IllegalStateException("a secret of org.thalweg");
        }

        @GET
        @Path("/error")
        @Operation(hidden = true)
        public String error() {
            throw new StackOverflowError();
        }

        @GET
        @Path("/framework")
        @Operation(hidden = true)
        public String framework() {
            throw new WebApplicationException("a secret of org.thalweg", 500);
        }

        @GET
        @Path("/busy")
        @Operation(hidden = true)
        public String busy() {
            throw new ServiceUnavailableException();
        }
    }

    @Test
    void aBugIsToldByAnIdAndNothingElse() {
        for (String path : new String[] {"/test/failing/bug", "/test/failing/error", "/test/failing/framework"}) {
            Answer answer = Door.get(path).isProblem(500);
            assertThat(answer.code()).isEqualTo("INTERNAL");
            assertThat(answer.text()).doesNotContain("secret");
            assertThat(answer.json().path("detail").asText())
                    .containsPattern("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}");
        }
    }

    @Test
    void aServiceThatIsBusySaysWhenToComeBack() {
        Answer answer = Door.get("/test/failing/busy").isProblem(503);
        assertThat(answer.code()).isEqualTo("BUSY");
        assertThat(answer.headers().firstValue("Retry-After")).contains("1");
    }

    @Test
    void noOtherOriginIsLetInByDefault() {
        Answer answer = Door.send(Door.request("/v1/limits").GET().header("Origin", "https://elsewhere.example"));
        assertThat(answer.status()).isEqualTo(200);
        assertThat(answer.headers().map()).doesNotContainKey("access-control-allow-origin");
    }

    @Test
    void swaggerUiStandsAtItsPath() {
        Answer answer = Door.get("/q/swagger-ui/");
        assertThat(answer.status()).isEqualTo(200);
        assertThat(answer.type()).startsWith("text/html");
    }

    @Test
    void probesAndMetricsAreNotOnTheCallersPort() {
        Door.get("/q/health").isProblem(404);
        Door.get("/q/metrics").isProblem(404);
    }
}
