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
import org.thalweg.api.wire.RoofAnswer;
import org.thalweg.api.wire.RoofRequest;
import org.thalweg.roof.Roof;
import org.thalweg.roof.RoofSurvey;
import org.thalweg.roof.Roofs;
import org.thalweg.units.Units;

/** A measured roof in, its planes and edges out. Remembers nothing. */
@Path("/v1/roofs")
@Tag(name = "roofs")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
public class RoofResource {

    private final Engine engine;

    RoofResource(Engine engine) {
        this.engine = engine;
    }

    @POST
    @Operation(
            operationId = "readRoof",
            summary = "Read a roof: planes with frames, pitches and areas; every edge named and measured",
            description =
                    "Corners within the tolerance are joined, edges met half-way are split, every plane is checked"
                            + " and framed, every edge gets its trade name, length, slope and bend. What a crew should know comes"
                            + " as findings; what is no roof at all is refused.")
    @APIResponse(
            responseCode = "200",
            description = "The roof as the service reads it.",
            content =
                    @Content(
                            schema = @Schema(implementation = RoofAnswer.class),
                            examples = {
                                @ExampleObject(name = "gable", ref = "readRoofGableAnswer"),
                                @ExampleObject(name = "plan", ref = "readRoofPlanAnswer"),
                                @ExampleObject(name = "footprint", ref = "readRoofFootprintAnswer")
                            }))
    public RoofAnswer read(
            @RequestBody(
                            required = true,
                            description = "The roof as measured.",
                            content =
                                    @Content(
                                            schema = @Schema(implementation = RoofRequest.class),
                                            examples = {
                                                @ExampleObject(name = "gable", ref = "readRoofGable"),
                                                @ExampleObject(name = "plan", ref = "readRoofPlan"),
                                                @ExampleObject(name = "footprint", ref = "readRoofFootprint")
                                            }))
                    Posted<RoofRequest> posted) {
        Units units = posted.request().units().units();
        return Refusals.toldIn(units, () -> answer(posted, units));
    }

    private RoofAnswer answer(Posted<RoofRequest> posted, Units units) {
        RoofSurvey survey = RoofReader.read(posted.request());
        Roof roof = Roofs.read(survey);
        return new RoofWriter(units).answer(roof, survey, posted.request(), engine.name(), posted.digest());
    }
}
