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
import org.thalweg.api.wire.LayoutAnswer;
import org.thalweg.api.wire.LayoutRequest;
import org.thalweg.packet.Layout;
import org.thalweg.packet.LayoutCase;
import org.thalweg.packet.Layouts;

/** The main job: a measured roof and a panel in, every panel to cut out. Remembers nothing. */
@Path("/v1/layouts")
@Tag(name = "layouts")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
public class LayoutResource {

    private final Engine engine;

    LayoutResource(Engine engine) {
        this.engine = engine;
    }

    @POST
    @Operation(
            operationId = "layOutRoof",
            summary = "Every panel to cut: where it lies, its blank, its outline, its marks; the order and its totals")
    @APIResponse(
            responseCode = "200",
            description = "The roof, laid.",
            content =
                    @Content(
                            schema = @Schema(implementation = LayoutAnswer.class),
                            examples = @ExampleObject(name = "shed", ref = "layOutShedAnswer")))
    @APIResponse(responseCode = "400", ref = "BadRequest")
    public LayoutAnswer layOut(
            @RequestBody(
                            required = true,
                            description = "The roof and the panels to lay on it.",
                            content =
                                    @Content(
                                            schema = @Schema(implementation = LayoutRequest.class),
                                            examples = @ExampleObject(name = "shed", ref = "layOutShed")))
                    Posted<LayoutRequest> posted) {
        LayoutRequest request = posted.request();
        LayoutCase asked = LayoutReader.read(request);
        Layout layout = Layouts.layOut(asked);
        return new LayoutWriter(request.units().units()).answer(layout, asked, request, engine.name(), posted.digest());
    }
}
