package org.thalweg.api.problem;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectWriter;
import io.vertx.core.buffer.Buffer;
import io.vertx.core.http.HttpServerResponse;
import jakarta.inject.Singleton;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;

/** Writes problems, whether the request got as far as a resource or not. */
@Singleton
public class ProblemWriter {

    static final MediaType PROBLEM_JSON = new MediaType("application", "problem+json");

    private final ObjectWriter json;

    ProblemWriter(ObjectMapper mapper) {
        this.json = mapper.writerFor(ProblemAnswer.class);
    }

    /** The answer of a resource. */
    Response.ResponseBuilder response(ProblemAnswer problem) {
        return Response.status(problem.status()).type(PROBLEM_JSON).entity(bytes(problem));
    }

    /** The answer to a request that reached no resource. */
    void send(ProblemAnswer problem, HttpServerResponse response) {
        response.setStatusCode(problem.status())
                .putHeader("Content-Type", PROBLEM_JSON.toString())
                .end(Buffer.buffer(bytes(problem)));
    }

    private byte[] bytes(ProblemAnswer problem) {
        try {
            return json.writeValueAsBytes(problem);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a problem is plain text and numbers", e);
        }
    }
}
