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
import org.thalweg.api.wire.ValleyRequest;
import org.thalweg.api.wire.ValleysAnswer;
import org.thalweg.packet.ValleyCase;
import org.thalweg.packet.ValleyJobs;
import org.thalweg.packet.ValleyJobs.ValleyJob;
import org.thalweg.units.Units;

/** One valley, live, while a customer types. Remembers nothing. */
@Path("/v1/valleys")
@Tag(name = "valleys")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
public class ValleyResource {

    private final Engine engine;

    ValleyResource(Engine engine) {
        this.engine = engine;
    }

    @POST
    @Operation(
            operationId = "layOutValley",
            summary = "Lay out one valley: pan pieces, chalk lines, fasteners, and the water in it",
            description =
                    "From two pitches and the corner between two eaves, or from a roof and one of its valleys. The same"
                            + " records with the same figures as `valleys` of a layout.")
    @APIResponse(
            responseCode = "200",
            description = "The valley, laid out.",
            content =
                    @Content(
                            schema = @Schema(implementation = ValleysAnswer.class),
                            examples = @ExampleObject(name = "square", ref = "layOutValleyAnswer")))
    public ValleysAnswer layOut(
            @RequestBody(
                            required = true,
                            description = "The valley, and the panels that meet it.",
                            content =
                                    @Content(
                                            schema = @Schema(implementation = ValleyRequest.class),
                                            examples = @ExampleObject(name = "square", ref = "layOutValley")))
                    Posted<ValleyRequest> posted) {
        Units units = posted.request().units().units();
        return Refusals.toldIn(units, () -> answer(posted, units));
    }

    private ValleysAnswer answer(Posted<ValleyRequest> posted, Units units) {
        ValleyCase asked = ValleyReader.read(posted.request());
        ValleyJob job = ValleyJobs.layOut(asked);
        return new ValleyAloneWriter(units).answer(job, asked, posted.request(), engine.name(), posted.digest());
    }
}
