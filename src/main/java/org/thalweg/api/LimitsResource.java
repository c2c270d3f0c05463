package org.thalweg.api;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.thalweg.api.wire.LimitsAnswer;

/** Every limit the service enforces. */
@Path("/v1/limits")
@Tag(name = "limits")
@Produces(MediaType.APPLICATION_JSON)
public class LimitsResource {

    private final LimitsAnswer answer;

    LimitsResource(Engine engine) {
        this.answer = new LimitsAnswer(engine.name(), Limits.ALL);
    }

    @GET
    @Operation(
            operationId = "readLimits",
            summary = "Every limit the service enforces",
            description = "What is limited, between which numbers, where in a request, and what happens beyond.")
    @APIResponse(
            responseCode = "200",
            description = "The limits, in the order a request meets them.",
            content =
                    @Content(
                            schema = @Schema(implementation = LimitsAnswer.class),
                            examples = @ExampleObject(name = "limits", ref = "readLimitsAnswer")))
    public LimitsAnswer read() {
        return answer;
    }
}
