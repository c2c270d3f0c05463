package org.thalweg.api;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.EnumSet;
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
import org.thalweg.api.sheet.LayoutSheets;
import org.thalweg.api.sheet.Lists;
import org.thalweg.api.sheet.SheetForm;
import org.thalweg.api.sheet.SheetList;
import org.thalweg.api.sheet.SheetTerms;
import org.thalweg.api.sheet.View;
import org.thalweg.api.wire.LayoutAnswer;
import org.thalweg.api.wire.LayoutRequest;
import org.thalweg.packet.Layout;
import org.thalweg.packet.LayoutCase;
import org.thalweg.packet.Layouts;
import org.thalweg.units.Units;

/** The main job: a measured roof and a panel in, every panel to cut out. Remembers nothing. */
@Path("/v1/layouts")
@Tag(name = "layouts")
@Consumes(MediaType.APPLICATION_JSON)
public class LayoutResource {

    private final Engine engine;
    private final Drawings drawings;

    LayoutResource(Engine engine, Drawings drawings) {
        this.engine = engine;
        this.drawings = drawings;
    }

    @POST
    @Produces(MediaType.APPLICATION_JSON)
    @Operation(
            operationId = "layOutRoof",
            summary = "Lay out a roof: every panel to cut with its blank, outline and marks; the order and its totals",
            description =
                    "The roof is read as by `/v1/roofs`. Then every plane is cut into strips of the panel's cover, up the"
                            + " slope, from the side that leads; panels end as the edge treatments say, are lapped where"
                            + " they are too long, and are counted. A level plane gets no panels unless `laying` gives it a"
                            + " fall.")
    @Parameter(
            name = "view",
            in = ParameterIn.QUERY,
            description =
                    "Which part is drawn, as SVG (default `map`) or PDF (default all of them, a packet). Not looked at for other"
                            + " forms.",
            schema =
                    @Schema(
                            type = SchemaType.STRING,
                            enumeration = {
                                "map",
                                "planes",
                                "tickets",
                                "valleys",
                                "trims",
                                "cutting",
                                "fasteners",
                                "order",
                                "findings"
                            }))
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
                            enumeration = {"cut", "order", "fasteners"}))
    @APIResponse(
            responseCode = "200",
            description = "The roof, laid.",
            content = {
                @Content(
                        mediaType = MediaType.APPLICATION_JSON,
                        schema = @Schema(implementation = LayoutAnswer.class),
                        examples = @ExampleObject(name = "bay", ref = "layOutBayAnswer")),
                @Content(mediaType = SheetForm.SVG, schema = @Schema(ref = "Drawing")),
                @Content(mediaType = SheetForm.PDF, schema = @Schema(ref = "Packet")),
                @Content(
                        mediaType = SheetForm.CSV,
                        schema = @Schema(ref = "List"),
                        examples = @ExampleObject(name = "bay", ref = "layOutBayCutList")),
                @Content(mediaType = SheetForm.DXF, schema = @Schema(ref = "Blanks"))
            })
    @APIResponse(responseCode = "503", ref = "Busy")
    public LayoutAnswer layOut(
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

    // The next four answer what layOut answers, drawn; the contract tells of them with it.

    @POST
    @Produces(SheetForm.SVG + SheetForm.SECOND)
    @Operation(hidden = true)
    public Response svg(
            @QueryParam("view") @Nullable String view,
            @QueryParam("sheet") @Nullable String sheet,
            @QueryParam("paper") @Nullable String paper,
            Posted<LayoutRequest> posted) {
        SheetTerms terms = terms(view, sheet, paper, posted).or(View.MAP);
        LayoutAnswer answer = layOut(posted);
        return drawings.svg(() -> LayoutSheets.of(answer, terms), terms);
    }

    @POST
    @Produces(SheetForm.PDF + SheetForm.LATER)
    @Operation(hidden = true)
    public Response pdf(
            @QueryParam("view") @Nullable String view,
            @QueryParam("sheet") @Nullable String sheet,
            @QueryParam("paper") @Nullable String paper,
            Posted<LayoutRequest> posted) {
        SheetTerms terms = terms(view, sheet, paper, posted);
        LayoutAnswer answer = layOut(posted);
        return drawings.pdf(() -> LayoutSheets.of(answer, terms), terms, posted.digest());
    }

    @POST
    @Produces(SheetForm.CSV + SheetForm.LATER)
    @Operation(hidden = true)
    public Response csv(@QueryParam("list") @Nullable String list, Posted<LayoutRequest> posted) {
        SheetList asked = SheetReader.list(list, List.of(SheetList.values()));
        LayoutAnswer answer = layOut(posted);
        return drawings.csv(() -> Lists.of(answer, asked), posted.digest());
    }

    @POST
    @Produces(SheetForm.DXF + SheetForm.LATER)
    @Operation(hidden = true)
    public Response dxf(Posted<LayoutRequest> posted) {
        LayoutAnswer answer = layOut(posted);
        return drawings.dxf(() -> Blanks.of(answer), posted.digest());
    }

    private static SheetTerms terms(
            @Nullable String view, @Nullable String sheet, @Nullable String paper, Posted<LayoutRequest> posted) {
        return SheetReader.read(view, sheet, paper, posted.request().job(), EnumSet.allOf(View.class));
    }

    private LayoutAnswer answer(Posted<LayoutRequest> posted, Units units) {
        LayoutCase asked = LayoutReader.read(posted.request());
        Layout layout = Layouts.layOut(asked);
        return new LayoutWriter(units).answer(layout, asked, posted.request(), engine.name(), posted.digest());
    }
}
