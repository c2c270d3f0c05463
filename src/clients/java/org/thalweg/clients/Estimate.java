package org.thalweg.clients;

import java.util.Set;
import org.thalweg.client.ApiClient;
import org.thalweg.client.ApiException;
import org.thalweg.client.QuotesApi;
import org.thalweg.client.TakeoffsApi;
import org.thalweg.client.model.LayoutRequest;
import org.thalweg.client.model.PriceBook;
import org.thalweg.client.model.QuoteAnswer;
import org.thalweg.client.model.QuoteRequest;
import org.thalweg.client.model.SavedTakeoff;
import org.thalweg.client.model.TakeoffAnswer;

/** How an estimating system asks; {@code openapi/recipes.md} prints what is between the marks. */
final class Estimate {

    private Estimate() {}

    /** A call of the service. */
    interface Call<T> {
        T made() throws ApiException;
    }

    // recipe
    /** What a job comes to. The takeoff is worth keeping: it can be priced again without its roof. */
    static QuoteAnswer quoted(ApiClient service, LayoutRequest job, PriceBook book)
            throws ApiException, InterruptedException {
        TakeoffAnswer takeoff = insisted(() -> new TakeoffsApi(service).takeOffRoof(job));
        SavedTakeoff kept = service.getObjectMapper().convertValue(takeoff, SavedTakeoff.class);
        return insisted(() -> new QuotesApi(service)
                .quoteTakeoff(new QuoteRequest().takeoff(kept).priceBook(book)));
    }

    /** Asks up to five times, where asking again can help: without an answer (0), when told to come back, past a gateway. */
    static <T> T insisted(Call<T> call) throws ApiException, InterruptedException {
        for (int times = 1; ; times++) {
            try {
                return call.made();
            } catch (ApiException refused) {
                if (times == 5 || !Set.of(0, 429, 502, 503, 504).contains(refused.getCode())) {
                    throw refused;
                }
                Thread.sleep(1000 * seconds(refused, times));
            }
        }
    }

    /** As long as the service says; else 1, 2, 4, 8 seconds. */
    private static long seconds(ApiException refused, int times) {
        return refused.getResponseHeaders() == null
                ? 1L << (times - 1)
                : refused.getResponseHeaders().firstValueAsLong("Retry-After").orElse(1L << (times - 1));
    }
    // end of recipe
}
