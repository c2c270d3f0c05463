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
import org.thalweg.api.wire.GaugesAnswer;
import org.thalweg.api.wire.MetalsAnswer;
import org.thalweg.api.wire.RulesAnswer;

/** The published figures used, each with its source and how sure we are of it. */
@Path("/v1/reference")
@Tag(name = "reference")
@Produces(MediaType.APPLICATION_JSON)
public class ReferenceResource {

    private final MetalsAnswer metals;
    private final GaugesAnswer gauges;
    private final RulesAnswer rules;

    ReferenceResource(Engine engine) {
        this.metals = ReferenceWriter.metals(engine);
        this.gauges = ReferenceWriter.gauges(engine);
        this.rules = ReferenceWriter.rules(engine);
    }

    @GET
    @Path("/metals")
    @Operation(
            operationId = "readMetals",
            summary = "The metals a request may name, and what is printed of them",
            description =
                    "What sheets weigh and how far they grow, each figure with its source. Figures stand as printed,"
                            + " in the unit printed beside them: there is no choice of units here.")
    @APIResponse(
            responseCode = "200",
            description = "The metals and the figures used for them, then every figure of the table in its order.",
            content =
                    @Content(
                            schema = @Schema(implementation = MetalsAnswer.class),
                            examples = @ExampleObject(name = "metals", ref = "readMetalsAnswer")))
    public MetalsAnswer metals() {
        return metals;
    }

    @GET
    @Path("/gauges")
    @Operation(
            operationId = "readGauges",
            summary = "The gauge tables: how thick a sheet is and what it weighs",
            description =
                    "Every line of the tables, with its source. Figures are in inches and pounds per square foot, as most"
                            + " tables are printed: there is no choice of units here.")
    @APIResponse(
            responseCode = "200",
            description = "The lines of the tables, in their order.",
            content =
                    @Content(
                            schema = @Schema(implementation = GaugesAnswer.class),
                            examples = @ExampleObject(name = "gauges", ref = "readGaugesAnswer")))
    public GaugesAnswer gauges() {
        return gauges;
    }

    @GET
    @Path("/rules")
    @Operation(
            operationId = "readRules",
            summary = "The published rules: slopes, laps, spacings, lengths",
            description =
                    "What codes, handbooks and manuals ask for, each rule with its source. Figures stand as printed,"
                            + " in the unit printed beside them: there is no choice of units here. A caller's own figures and"
                            + " the engineer's win over them.")
    @APIResponse(
            responseCode = "200",
            description = "The rules, in the order of their table.",
            content =
                    @Content(
                            schema = @Schema(implementation = RulesAnswer.class),
                            examples = @ExampleObject(name = "rules", ref = "readRulesAnswer")))
    public RulesAnswer rules() {
        return rules;
    }
}
