package org.thalweg.api;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpHeaders;
import io.vertx.core.http.HttpMethod;
import io.vertx.ext.web.RoutingContext;
import io.vertx.ext.web.handler.CorsHandler;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Singleton;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * Pages of other origins that may read answers in a browser: those the operator names, by default none. Everybody else is
 * answered as if nothing were asked, and the browser keeps the answer from the page. The framework's own filter would refuse
 * them, and with them this service's own page wherever a proxy changed its scheme.
 */
@Singleton
class OtherOrigins {

    /** Ahead of refusals, which a page wants to read too. */
    private static final int FIRST = 190;

    private static final int MAX_AGE_SECONDS = 3600;

    private final Set<String> origins;
    private final CorsHandler letIn;

    OtherOrigins(@ConfigProperty(name = "thalweg.origins") Optional<List<String>> origins) {
        this.origins = Set.copyOf(origins.orElse(List.of()));
        this.letIn = CorsHandler.create()
                .addOrigins(List.copyOf(this.origins))
                .allowedMethods(Set.of(HttpMethod.GET, HttpMethod.HEAD, HttpMethod.POST))
                .allowedHeaders(Set.of("Accept", "Content-Type"))
                .exposedHeader("Retry-After")
                .maxAgeSeconds(MAX_AGE_SECONDS);
    }

    void watch(@Observes Filters filters) {
        if (!origins.isEmpty()) {
            filters.register(this::look, FIRST);
        }
    }

    private void look(RoutingContext exchange) {
        exchange.response().headers().add(HttpHeaders.VARY, HttpHeaders.ORIGIN);
        String origin = exchange.request().getHeader(HttpHeaders.ORIGIN);
        if (origin != null && origins.contains(origin)) {
            letIn.handle(exchange);
        } else {
            exchange.next();
        }
    }
}
