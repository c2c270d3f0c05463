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
import org.thalweg.api.wire.StockCutAnswer;
import org.thalweg.api.wire.StockCutRequest;
import org.thalweg.stock.CoilPlan;
import org.thalweg.stock.PairedBlanks;
import org.thalweg.stock.StockCuts;
import org.thalweg.units.Units;

/** Pieces cut from bars, from what lies on the rack, or from one coil. Remembers nothing. */
@Path("/v1/stock-cuts")
@Tag(name = "stockCuts")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
public class StockCutResource {

    private final Engine engine;
    private final Stopwatch stopwatch;

    StockCutResource(Engine engine, Stopwatch stopwatch) {
        this.engine = engine;
        this.stopwatch = stopwatch;
    }

    @POST
    @Operation(
            operationId = "cutStock",
            summary = "Cut pieces from stock lengths, off-cuts or a coil, with a proof of how good the plan is",
            description =
                    "The plan of least cost that is found, and a lower bound with a certificate that anyone can add up"
                            + " (openapi/certificates.md). Mitred panels from a coil come in the order that takes the least coil. Work is"
                            + " counted and not timed, so the same request gets the same answer, byte for byte; only where the clock ended"
                            + " the thinking, and the answer says `late`, another time may find another plan. A piece that is longer than"
                            + " every bar is listed in `unplaced` and is no reason to refuse the others.")
    @APIResponse(
            responseCode = "200",
            description = "The cutting plan.",
            content =
                    @Content(
                            schema = @Schema(implementation = StockCutAnswer.class),
                            examples = @ExampleObject(name = "drips", ref = "cutStockAnswer")))
    public StockCutAnswer cut(
            @RequestBody(
                            required = true,
                            description = "The pieces and what they are cut from.",
                            content =
                                    @Content(
                                            schema = @Schema(implementation = StockCutRequest.class),
                                            examples = @ExampleObject(name = "drips", ref = "cutStock")))
                    Posted<StockCutRequest> posted) {
        Units units = posted.request().units().units();
        return Refusals.toldIn(units, () -> answer(posted, units));
    }

    private StockCutAnswer answer(Posted<StockCutRequest> posted, Units units) {
        StockCutRequest request = posted.request();
        StockCutWriter writer = new StockCutWriter(units, request, engine.name(), posted.digest());
        if (StockCutReader.ofCoil(request)) {
            StockCutReader.Coil asked = StockCutReader.coil(request);
            CoilPlan plan = CoilPlan.of(asked.panels(), asked.turning());
            return writer.answer(asked, plan, PairedBlanks.of(asked.panels(), asked.turning()));
        }
        StockCutReader.Bars asked = StockCutReader.bars(request, stopwatch);
        return writer.answer(asked, StockCuts.cut(asked.cutting()));
    }
}
