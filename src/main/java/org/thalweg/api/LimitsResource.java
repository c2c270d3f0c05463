package org.thalweg.api;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import org.eclipse.microprofile.openapi.annotations.Operation;
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
    @Operation(operationId = "readLimits", summary = "Every limit the service enforces")
    public LimitsAnswer read() {
        return answer;
    }
}
