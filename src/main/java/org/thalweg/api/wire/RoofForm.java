package org.thalweg.api.wire;

import com.fasterxml.jackson.databind.JsonNode;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.Limits;

/**
 * A roof as measured, in exactly one of its forms.
 *
 * @param points   corners by name
 * @param planes   planes by their corners' names
 * @param edges    edges the planes can't name
 * @param cityjson a CityJSON document
 * @param building which building of it
 * @param plan     planes drawn in plan, with pitches
 * @param footprint walls, with pitches
 */
@Schema(
        name = "Roof",
        additionalProperties = Schema.False.class,
        description =
                "A roof in exactly one form: `points` with `planes` (and `edges` if there are any to name), `plan`,"
                        + " `footprint`, or `cityjson` (and `building` if it holds several).")
@OneForm
public record RoofForm(
        @Schema(
                minProperties = Limits.LEAST_CORNERS,
                maxProperties = Limits.POINTS,
                description = "Corners by name, each [x, y, z] in the request's length unit: x and y level, z"
                        + " up. 3 to 20000 corners, names of 1 to 100 characters, numbers within"
                        + " 10,000,000 m of 0.")
        @Size(min = Limits.LEAST_CORNERS, max = Limits.POINTS)
        @Nullable
        Map<@Size(min = 1, max = Limits.ID_LENGTH) String, WirePoint> points,

        @Schema(description = "The planes, in the order the answer keeps.")
        @Size(min = 1, max = Limits.PLANES)
        @Nullable
        List<@Valid PlaneForm> planes,

        @Schema(description = "Edges whose kind the planes can't show. Default: none.")
        @Size(max = Limits.NAMED_EDGES)
        @Nullable
        List<@Valid NamedEdgeForm> edges,

        @Schema(
                additionalProperties = Schema.True.class,
                type = SchemaType.OBJECT,
                implementation = Object.class,
                description = "A CityJSON 1.1 or 2.0 document, or an object with `metadata` (the first line of"
                        + " a CityJSON text sequence) and `feature` (one of its other lines). Its LoD2 roof"
                        + " surfaces are read; where it names no surfaces, those that face up. Its coordinates"
                        + " are metres whatever the request's units.")
        @Nullable
        JsonNode cityjson,

        @Schema(
                description = "Which building of the CityJSON document, by its id; 1 to 100 characters. Only"
                        + " needed when there are several.")
        @Size(min = 1, max = Limits.ID_LENGTH)
        @Nullable
        String building,

        @Schema(description = "Planes drawn in plan, each with a pitch, and the height of one corner.") @Nullable @Valid
        PlanForm plan,

        @Schema(description = "The walls and a pitch: the planes are found.") @Nullable @Valid
        FootprintForm footprint) {

    /**
     * A plane by its corners.
     *
     * @param id       the caller's name for it
     * @param outline  its corners
     * @param openings its holes
     */
    @Schema(
            name = "RoofPlane",
            requiredProperties = {"id", "outline"},
            additionalProperties = Schema.False.class,
            description = "One plane of a roof.")
    public record PlaneForm(
            @Schema(
                    description =
                            "The caller's name for the plane, its own among the planes; 1 to 100" + " characters.",
                    examples = "south")
            @NotNull
            @Size(min = 1, max = Limits.ID_LENGTH)
            String id,

            @Schema(
                    description = "Names of the corners in order, either way round; the first may be repeated"
                            + " at the end.")
            @NotNull
            @Size(min = Limits.LEAST_CORNERS, max = Limits.CORNERS_OF_A_RING)
            List<@Size(min = 1, max = Limits.ID_LENGTH) String> outline,

            @Schema(description = "Chimneys, skylights and other holes. Default: none.")
            @Size(max = Limits.OPENINGS)
            @Nullable
            List<@Valid OpeningForm> openings) {}

    /**
     * A hole in a plane.
     *
     * @param id      the caller's name for it
     * @param outline its corners
     */
    @Schema(
            name = "RoofOpening",
            requiredProperties = {"id", "outline"},
            additionalProperties = Schema.False.class,
            description = "A chimney, skylight or other hole in a plane.")
    public record OpeningForm(
            @Schema(
                    description =
                            "The caller's name for the opening, its own within the plane; 1 to 100" + " characters.",
                    examples = "chimney")
            @NotNull
            @Size(min = 1, max = Limits.ID_LENGTH)
            String id,

            @Schema(
                    description = "Names of the corners in order, either way round; on the plane within the"
                            + " tolerance; the first may be repeated at the end.")
            @NotNull
            @Size(min = Limits.LEAST_CORNERS, max = Limits.CORNERS_OF_A_RING)
            List<@Size(min = 1, max = Limits.ID_LENGTH) String> outline) {}

    /**
     * An edge the caller names.
     *
     * @param between its two ends
     * @param kind    what it is
     */
    @Schema(
            name = "NamedEdge",
            requiredProperties = {"between", "kind"},
            additionalProperties = Schema.False.class,
            description = "An edge whose kind the planes can't show: something stands there.")
    public record NamedEdgeForm(
            @Schema(description = "Names of the two corners it runs between, in either order.")
            @NotNull
            @Size(min = 2, max = 2)
            List<@Size(min = 1, max = Limits.ID_LENGTH) String> between,

            @Schema(ref = "NamedEdgeKind", description = "What stands there.") @NotNull
            NamedEdgeKind kind) {}
}
