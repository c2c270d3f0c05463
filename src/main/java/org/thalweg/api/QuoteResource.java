package org.thalweg.api;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.thalweg.api.json.Posted;
import org.thalweg.api.wire.QuoteAnswer;
import org.thalweg.api.wire.QuoteRequest;
import org.thalweg.pricing.PriceBook;
import org.thalweg.pricing.Pricing;
import org.thalweg.pricing.Quote;

/** A takeoff and a price book, to money. */
@Path("/v1/quotes")
@Tag(name = "quotes")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
public class QuoteResource {

    private final Engine engine;

    QuoteResource(Engine engine) {
        this.engine = engine;
    }

    @POST
    @Operation(
            operationId = "quoteTakeoff",
            summary = "Price a takeoff, saved or of a roof to lay out, by a price book",
            description =
                    "Every order line has its price from the entry of the price book that fits it best, labour is priced by the takeoff's"
                            + " totals, then mark-ups and taxes are added in their order. A saved takeoff is priced as it is printed, without"
                            + " its geometry; a layout is taken off first, and its quote is that of its takeoff. What has no price is told,"
                            + " and then there is no total.")
    @APIResponse(
            responseCode = "200",
            description = "The quote.",
            content =
                    @Content(
                            schema = @Schema(implementation = QuoteAnswer.class),
                            examples = @ExampleObject(name = "panels", ref = "quotePanelsAnswer")))
    public QuoteAnswer quote(
            @RequestBody(
                            required = true,
                            description = "What to price, and the prices.",
                            content =
                                    @Content(
                                            schema = @Schema(implementation = QuoteRequest.class),
                                            examples = @ExampleObject(name = "panels", ref = "quotePanels")))
                    Posted<QuoteRequest> posted) {
        QuoteReader reader = new QuoteReader(posted.request(), engine);
        return Refusals.toldIn(reader.units().units(), () -> answer(posted, reader));
    }

    private QuoteAnswer answer(Posted<QuoteRequest> posted, QuoteReader reader) {
        QuoteReader.Asked asked = reader.read();
        PriceBook book = asked.book();
        Quote quote = Pricing.price(book, asked.takeoff());
        return new QuoteWriter(reader.units(), book.currency())
                .answer(quote, posted.request().priceBook(), book, engine.name(), posted.digest());
    }
}
