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
import org.thalweg.api.wire.LayoutRequest;
import org.thalweg.api.wire.TakeoffAnswer;
import org.thalweg.packet.Layout;
import org.thalweg.packet.LayoutCase;
import org.thalweg.packet.Layouts;
import org.thalweg.units.Units;

/** What to order for a roof: a layout without the drawings' detail. */
@Path("/v1/takeoffs")
@Tag(name = "takeoffs")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
public class TakeoffResource {

    private final Engine engine;

    TakeoffResource(Engine engine) {
        this.engine = engine;
    }

    @POST
    @Operation(
            operationId = "takeOffRoof",
            summary = "Take off a roof: what to order, item by item, with its mass",
            description =
                    "The body is a layout request, and the same layout is made of it; `order`, `orderLines`, `totals` and"
                            + " `findings` are the layout's own. The digest is the layout's too.")
    @APIResponse(
            responseCode = "200",
            description = "The order.",
            content =
                    @Content(
                            schema = @Schema(implementation = TakeoffAnswer.class),
                            examples = @ExampleObject(name = "bay", ref = "takeOffBayAnswer")))
    public TakeoffAnswer takeOff(
            @RequestBody(
                            required = true,
                            description = "The roof and the panels to lay on it.",
                            content =
                                    @Content(
                                            schema = @Schema(implementation = LayoutRequest.class),
                                            examples = @ExampleObject(name = "bay", ref = "layOutBay")))
                    Posted<LayoutRequest> posted) {
        Units units = posted.request().units().units();
        return Refusals.toldIn(units, () -> answer(posted, units));
    }

    private TakeoffAnswer answer(Posted<LayoutRequest> posted, Units units) {
        LayoutCase asked = LayoutReader.read(posted.request());
        Layout layout = Layouts.layOut(asked);
        return new LayoutWriter(units).takeoff(layout, asked, posted.request(), engine.name(), posted.digest());
    }
}
