package org.thalweg.api.problem;

import jakarta.inject.Singleton;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;

/** Turns whatever a resource throws into a problem. */
@Singleton
public class ProblemMappers {

    private final ProblemWriter writer;
    private final HttpProblems http;

    ProblemMappers(ProblemWriter writer, HttpProblems http) {
        this.writer = writer;
        this.http = http;
    }

    @ServerExceptionMapper
    public Response noAnswer(NoAnswer refusal) {
        return writer.response(refusal.answer()).build();
    }

    /** What the framework refuses by itself: paths, methods, media types. */
    @ServerExceptionMapper
    public Response refusedByHttp(WebApplicationException refusal, ContainerRequestContext request) {
        Problem problem = Problem.ofStatus(refusal.getResponse().getStatus());
        if (problem == Problem.INTERNAL) {
            return failed(refusal);
        }
        String path = request.getUriInfo().getPath();
        Response.ResponseBuilder response = writer.response(http.of(problem, request.getMethod(), path));
        return switch (problem) {
            case METHOD_NOT_ALLOWED ->
                response.header(HttpHeaders.ALLOW, http.allow(path)).build();
            case BUSY -> response.header(HttpHeaders.RETRY_AFTER, 1).build();
            default -> response.build();
        };
    }

    @ServerExceptionMapper
    public Response failed(Throwable failure) {
        return writer.response(Failures.log(failure)).build();
    }
}
