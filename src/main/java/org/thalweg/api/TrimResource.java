package org.thalweg.api;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.thalweg.api.json.Posted;
import org.thalweg.api.wire.TrimsAnswer;
import org.thalweg.api.wire.TrimsRequest;
import org.thalweg.packet.LoneProfile;
import org.thalweg.packet.TrimWork;
import org.thalweg.trim.Trim;
import org.thalweg.units.Units;

/** Trims alone: profiles rolled out flat and divided, or the trims of a roof. Remembers nothing. */
@Path("/v1/trims")
@Tag(name = "trims")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
public class TrimResource {

    private final Engine engine;

    TrimResource(Engine engine) {
        this.engine = engine;
    }

    @POST
    @Operation(
            operationId = "layOutTrims",
            summary = "Lay out trims: flat widths, bend lines and pieces of profiles, or the trims of a roof",
            description =
                    "Profiles by themselves are rolled out flat, with what every bend takes up, and their runs divided into"
                            + " pieces. Of a roof the trim of every edge is answered, its ends mitred where edges meet: the same"
                            + " records with the same figures as `trims` of a layout.")
    @APIResponse(
            responseCode = "200",
            description = "The trims, laid out.",
            content =
                    @Content(
                            schema = @Schema(implementation = TrimsAnswer.class),
                            examples = @ExampleObject(name = "cover", ref = "layOutTrimsAnswer")))
    public TrimsAnswer layOut(
            @RequestBody(
                            required = true,
                            description = "The profiles, or the roof, and what they are bent of.",
                            content =
                                    @Content(
                                            schema = @Schema(implementation = TrimsRequest.class),
                                            examples = @ExampleObject(name = "cover", ref = "layOutTrims")))
                    Posted<TrimsRequest> posted) {
        Units units = posted.request().units().units();
        return Refusals.toldIn(units, () -> answer(posted, units));
    }

    private TrimsAnswer answer(Posted<TrimsRequest> posted, Units units) {
        TrimsRequest request = posted.request();
        TrimsAloneWriter writer = new TrimsAloneWriter(units, request, engine.name(), posted.digest());
        if (request.profiles() == null) {
            TrimsReader.OfRoof asked = TrimsReader.ofRoof(request);
            List<Trim> trims = TrimWork.onRoof(asked.survey(), asked.spec());
            return writer.answer(
                    asked,
                    trims,
                    asked.stock().map(stock -> TrimWork.cut(trims, stock)).orElse(List.of()));
        }
        TrimsReader.Alone asked = TrimsReader.alone(request);
        List<LoneProfile.Made> made = TrimWork.alone(asked.profiles());
        return writer.answer(
                asked,
                made,
                asked.cutting().map(stock -> TrimWork.cutAlone(made, stock)).orElse(List.of()));
    }
}
