package org.thalweg.api.problem;

import io.quarkus.vertx.http.runtime.VertxHttpRecorder;
import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpHeaders;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.core.http.HttpServerResponse;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Singleton;
import java.util.List;
import java.util.Objects;
import java.util.OptionalLong;
import org.thalweg.api.Limits;
import org.thalweg.api.RepricingResource;

/** Problems of requests that never reach a resource: bodies too large to begin with, addresses that can't be read. */
@Singleton
public class RouterProblems {

    /** Before the framework's own check, which answers nothing but a status. */
    private static final int EARLY = 100;

    private static final List<Integer> STATUSES = List.of(400, 404, 405, 406, 413, 415, 500, 503);

    private final ProblemWriter writer;
    private final HttpProblems http;

    RouterProblems(ProblemWriter writer, HttpProblems http) {
        this.writer = writer;
        this.http = http;
    }

    void refuseLargeBodies(@Observes Filters filters) {
        filters.register(this::checkLength, EARLY);
    }

    /** Ahead of the framework's own handler, which words failures for programmers. */
    void tellAll(@Observes Router router) {
        router.route().order(Integer.MIN_VALUE).failureHandler(context -> tell(context.statusCode(), context));
        STATUSES.forEach(status -> router.errorHandler(status, context -> tell(status, context)));
    }

    /**
     * A body that says it is too large is refused before it is sent; the caller's connection ends with that. One that does not say
     * is not read much further than its reader asks for. Only lines go on for as long as they like: each is bounded by itself.
     */
    private void checkLength(RoutingContext context) {
        if (ofLines(context.request())) {
            context.next();
            return;
        }
        context.put(VertxHttpRecorder.MAX_REQUEST_SIZE_KEY, 2L * Limits.BODY_BYTES);
        OptionalLong length = length(context.request());
        if (length.isPresent() && length.getAsLong() > Limits.BODY_BYTES) {
            HttpServerResponse response = context.response().putHeader(HttpHeaders.CONNECTION, HttpHeaders.CLOSE);
            response.endHandler(sent -> context.request().connection().close());
            writer.send(NoAnswer.tooLarge(length).answer(), response);
        } else {
            context.next();
        }
    }

    private static boolean ofLines(HttpServerRequest request) {
        String type = Objects.requireNonNullElse(request.getHeader(HttpHeaders.CONTENT_TYPE), "");
        return "/v1/repricings".equals(request.path()) && type.startsWith(RepricingResource.LINES);
    }

    private static OptionalLong length(HttpServerRequest request) {
        String length = request.getHeader(HttpHeaders.CONTENT_LENGTH);
        try {
            return length == null ? OptionalLong.empty() : OptionalLong.of(Long.parseLong(length));
        } catch (NumberFormatException e) {
            return OptionalLong.empty();
        }
    }

    private void tell(int status, RoutingContext context) {
        if (!context.response().headWritten()) {
            writer.send(answer(status, context), context.response());
        }
    }

    private ProblemAnswer answer(int status, RoutingContext context) {
        Problem problem = Problem.ofStatus(status);
        Throwable failure = context.failure();
        if (problem == Problem.INTERNAL && failure != null) {
            return Failures.log(failure);
        }
        String path = Objects.requireNonNullElse(context.request().path(), "");
        return http.of(problem, context.request().method().name(), path);
    }
}
