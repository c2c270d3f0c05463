package org.thalweg.api;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.ParameterIn;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.json.Posted;
import org.thalweg.api.sheet.Blanks;
import org.thalweg.api.sheet.Lists;
import org.thalweg.api.sheet.SheetForm;
import org.thalweg.api.sheet.SheetList;
import org.thalweg.api.sheet.SheetTerms;
import org.thalweg.api.sheet.ValleysSheets;
import org.thalweg.api.sheet.View;
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
public class ValleyResource {

    private final Engine engine;
    private final Drawings drawings;

    ValleyResource(Engine engine, Drawings drawings) {
        this.engine = engine;
        this.drawings = drawings;
    }

    @POST
    @Produces(MediaType.APPLICATION_JSON)
    @Operation(
            operationId = "layOutValley",
            summary = "Lay out one valley: pan pieces, chalk lines, fasteners, and the water in it",
            description =
                    "From two pitches and the corner between two eaves, or from a roof and one of its valleys. The same"
                            + " records with the same figures as `valleys` of a layout.")
    @Parameter(
            name = "view",
            in = ParameterIn.QUERY,
            description =
                    "Which part is drawn, as SVG (default `valleys`) or PDF (default all of them, a packet). Not looked at for other"
                            + " forms.",
            schema =
                    @Schema(
                            type = SchemaType.STRING,
                            enumeration = {"valleys", "cutting", "findings"}))
    @Parameter(
            name = "sheet",
            in = ParameterIn.QUERY,
            description = "Which sheet of what is drawn, 1 the first, as SVG or PDF. Default all of them.",
            schema =
                    @Schema(
                            type = SchemaType.INTEGER,
                            format = "int32",
                            minimum = "1",
                            maximum = "" + Limits.DRAWN_SHEETS))
    @Parameter(
            name = "paper",
            in = ParameterIn.QUERY,
            description = "What it is drawn on, the long side level. Default `letter` for inches and feet, else `a4`.",
            schema =
                    @Schema(
                            type = SchemaType.STRING,
                            enumeration = {"a4", "letter"}))
    @Parameter(
            name = "list",
            in = ParameterIn.QUERY,
            description = "Which list CSV holds. Default `cut`.",
            schema =
                    @Schema(
                            type = SchemaType.STRING,
                            enumeration = {"cut"}))
    @APIResponse(
            responseCode = "200",
            description = "The valley, laid out.",
            content = {
                @Content(
                        mediaType = MediaType.APPLICATION_JSON,
                        schema = @Schema(implementation = ValleysAnswer.class),
                        examples = @ExampleObject(name = "square", ref = "layOutValleyAnswer")),
                @Content(mediaType = SheetForm.SVG, schema = @Schema(ref = "Drawing")),
                @Content(mediaType = SheetForm.PDF, schema = @Schema(ref = "Packet")),
                @Content(
                        mediaType = SheetForm.CSV,
                        schema = @Schema(ref = "List"),
                        examples = @ExampleObject(name = "square", ref = "layOutValleyCutList")),
                @Content(mediaType = SheetForm.DXF, schema = @Schema(ref = "Blanks"))
            })
    @APIResponse(responseCode = "503", ref = "Busy")
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

    // The next four answer what layOut answers, drawn; the contract tells of them with it.

    @POST
    @Produces(SheetForm.SVG + SheetForm.SECOND)
    @Operation(hidden = true)
    public Response svg(
            @QueryParam("view") @Nullable String view,
            @QueryParam("sheet") @Nullable String sheet,
            @QueryParam("paper") @Nullable String paper,
            Posted<ValleyRequest> posted) {
        SheetTerms terms = terms(view, sheet, paper, posted).or(View.VALLEYS);
        ValleysAnswer answer = layOut(posted);
        return drawings.svg(() -> ValleysSheets.of(answer, terms), terms);
    }

    @POST
    @Produces(SheetForm.PDF + SheetForm.LATER)
    @Operation(hidden = true)
    public Response pdf(
            @QueryParam("view") @Nullable String view,
            @QueryParam("sheet") @Nullable String sheet,
            @QueryParam("paper") @Nullable String paper,
            Posted<ValleyRequest> posted) {
        SheetTerms terms = terms(view, sheet, paper, posted);
        ValleysAnswer answer = layOut(posted);
        return drawings.pdf(() -> ValleysSheets.of(answer, terms), terms, posted.digest());
    }

    @POST
    @Produces(SheetForm.CSV + SheetForm.LATER)
    @Operation(hidden = true)
    public Response csv(@QueryParam("list") @Nullable String list, Posted<ValleyRequest> posted) {
        SheetReader.list(list, List.of(SheetList.CUT));
        ValleysAnswer answer = layOut(posted);
        return drawings.csv(() -> Lists.ofPans(answer), posted.digest());
    }

    @POST
    @Produces(SheetForm.DXF + SheetForm.LATER)
    @Operation(hidden = true)
    public Response dxf(Posted<ValleyRequest> posted) {
        ValleysAnswer answer = layOut(posted);
        return drawings.dxf(() -> Blanks.of(answer), posted.digest());
    }

    private static SheetTerms terms(
            @Nullable String view, @Nullable String sheet, @Nullable String paper, Posted<ValleyRequest> posted) {
        return SheetReader.read(view, sheet, paper, posted.request().job(), SheetReader.OF_VALLEYS);
    }

    private ValleysAnswer answer(Posted<ValleyRequest> posted, Units units) {
        ValleyCase asked = ValleyReader.read(posted.request());
        ValleyJob job = ValleyJobs.layOut(asked);
        return new ValleyAloneWriter(units).answer(job, asked, posted.request(), engine.name(), posted.digest());
    }
}
