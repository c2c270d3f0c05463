package org.thalweg.api;

import static io.vertx.core.http.HttpHeaders.ACCEPT_ENCODING;
import static io.vertx.core.http.HttpHeaders.CONTENT_ENCODING;
import static io.vertx.core.http.HttpHeaders.CONTENT_TYPE;
import static io.vertx.core.http.HttpHeaders.VARY;

import io.quarkus.vertx.http.runtime.HttpCompressionHandler;
import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.MultiMap;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Singleton;
import java.util.Set;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * Whatever answers, resource, file or contract, is compressed by its media type alone, and says that its bytes depend on what
 * was asked for. The framework compresses only what resources and files answer, and leaves the last to us.
 */
@Singleton
class CompressedAnswers {

    /** Ahead of everything that may answer. */
    private static final int FIRST = 200;

    private final Set<String> types;

    CompressedAnswers(@ConfigProperty(name = "quarkus.http.compress-media-types") Set<String> types) {
        this.types = types;
    }

    void watch(@Observes Filters filters) {
        filters.register(this::decideAtTheHead, FIRST);
    }

    private void decideAtTheHead(RoutingContext exchange) {
        exchange.addHeadersEndHandler(head -> {
            HttpCompressionHandler.compressIfNeeded(exchange, types);
            MultiMap headers = exchange.response().headers();
            if (types.contains(mediaType(headers)) && !headers.contains(VARY, ACCEPT_ENCODING, true)) {
                headers.add(VARY, ACCEPT_ENCODING);
            }
            if (!exchange.request().headers().contains(ACCEPT_ENCODING)) {
                // The framework's note to itself, "identity", is nothing to tell a caller who did not ask.
                headers.remove(CONTENT_ENCODING);
            }
        });
        exchange.next();
    }

    private static String mediaType(MultiMap headers) {
        String type = headers.get(CONTENT_TYPE);
        return type == null ? "" : type.split(";", 2)[0];
    }
}
