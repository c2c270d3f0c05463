package org.thalweg.api.wire;

import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.api.Limits;
import org.thalweg.api.problem.Figure;
import org.thalweg.fastening.FixedPoint;
import org.thalweg.units.TemperatureScale;

/** The figures valleys and hips were laid out with, given or default. */
public final class ValleyUsed {

    private ValleyUsed() {}

    /**
     * The pan; members as in the request.
     *
     * @param coilWidth       width of the flat sheet
     * @param ribLeg          girth of a leg
     * @param edgeReturn      girth of a return
     * @param holdBack        of the panels at the foot, where no treatment says another
     * @param widening        of the open width, down the valley
     * @param pieceLength     longest piece
     * @param shortestPiece   shortest piece
     * @param lap             of the pieces
     * @param eaveProjection  past an eave
     * @param wallTurnUp      at a wall
     * @param ribPastEave     past the foot
     * @param ribPastTop      past the head
     * @param ribPastValley   past another valley
     * @param fastenerSpacing of the pan's own fasteners
     * @param edgeInset       of those
     * @param cleatLength     longest piece of the cleat
     * @param waterMargin     off the panels
     * @param stations        where water is looked at; empty for each quarter
     */
    @Schema(
            name = "ValleyPanUsed",
            requiredProperties = {
                "coilWidth",
                "ribLeg",
                "edgeReturn",
                "holdBack",
                "widening",
                "pieceLength",
                "shortestPiece",
                "lap",
                "eaveProjection",
                "wallTurnUp",
                "ribPastEave",
                "ribPastTop",
                "ribPastValley",
                "fastenerSpacing",
                "edgeInset",
                "cleatLength",
                "waterMargin",
                "stations"
            },
            description = "The pan as used; members mean what they mean in the request.")
    public record PanUsed(
            @Schema(ref = "PositiveLength") double coilWidth,
            @Schema(ref = "PositiveLength") double ribLeg,
            @Schema(ref = "PositiveLength") double edgeReturn,

            @Schema(ref = "PositiveLength", description = "At the foot of a valley, where no treatment says another.")
            double holdBack,

            @Schema(description = "Of the open width, down the valley.")
            RiseAndRun widening,

            @Schema(ref = "PositiveLength") double pieceLength,
            @Schema(ref = "PositiveLength") double shortestPiece,
            @Schema(ref = "PositiveLength") double lap,
            @Schema(ref = "PositiveLength") double eaveProjection,
            @Schema(ref = "PositiveLength") double wallTurnUp,
            @Schema(ref = "PositiveLength") double ribPastEave,
            @Schema(ref = "PositiveLength") double ribPastTop,
            @Schema(ref = "PositiveLength") double ribPastValley,
            @Schema(ref = "PositiveLength") double fastenerSpacing,
            @Schema(ref = "PositiveLength") double edgeInset,
            @Schema(ref = "PositiveLength") double cleatLength,
            @Schema(ref = "PositiveLength") double waterMargin,

            @Schema(
                    description = "Up the valley from its foot, as given; empty for each quarter.",
                    maxItems = Limits.STATIONS)
            List<MarkedLength> stations) {}

    /**
     * Spacings; members as in the request.
     *
     * @param eaveSpacing     of screws at eaves
     * @param valleySpacing   of screws at a valley
     * @param cleatSpacing    of a cleat's fasteners
     * @param closureSpacing  of closures
     * @param stripSpacing    of strips along rakes and walls
     * @param openingSpacing  of flashings of openings
     * @param lapSpacing      of end laps
     * @param fastenerInset   inside the panels' end
     * @param ribClearance    from a rib
     * @param edgeDistance    from an end
     * @param clipSpacing     of clips
     * @param clipEndDistance from the end of a seam
     * @param screwPlay       of a fixed screw
     * @param fixedPoint      of each panel
     * @param clipTravel      of clips, when it is known
     * @param hemEngagement   of hems, when the request has it
     */
    @Schema(
            name = "FasteningUsed",
            requiredProperties = {
                "eaveSpacing",
                "valleySpacing",
                "cleatSpacing",
                "closureSpacing",
                "stripSpacing",
                "openingSpacing",
                "lapSpacing",
                "fastenerInset",
                "ribClearance",
                "edgeDistance",
                "clipSpacing",
                "clipEndDistance",
                "screwPlay",
                "fixedPoint"
            },
            description = "Spacings as used; members mean what they mean in the request.")
    public record FasteningUsed(
            @Schema(ref = "PositiveLength") double eaveSpacing,
            @Schema(ref = "PositiveLength") double valleySpacing,
            @Schema(ref = "PositiveLength") double cleatSpacing,
            @Schema(ref = "PositiveLength") double closureSpacing,
            @Schema(ref = "PositiveLength") double stripSpacing,
            @Schema(ref = "PositiveLength") double openingSpacing,
            @Schema(ref = "PositiveLength") double lapSpacing,
            @Schema(ref = "PositiveLength") double fastenerInset,
            @Schema(ref = "PositiveLength") double ribClearance,
            @Schema(ref = "PositiveLength") double edgeDistance,

            @Schema(ref = "PositiveLength", description = "Where the wind does not say how far apart clips stand.")
            double clipSpacing,

            @Schema(ref = "PositiveLength") double clipEndDistance,
            @Schema(ref = "PositiveLength") double screwPlay,
            @Schema(ref = "FixedPoint") FixedPoint fixedPoint,

            @Schema(description = "When it is known.") Optional<MarkedLength> clipTravel,

            @Schema(description = "When the request has it; half of each hem otherwise.")
            Optional<MarkedLength> hemEngagement) {}

    /**
     * Heat and rain; members as in the request.
     *
     * @param lowest            coldest
     * @param highest           warmest
     * @param installedAt       when fastened
     * @param temperature       scale of the three
     * @param temperatureSource where they come from
     * @param rainfall          what comes down in an hour
     */
    @Schema(
            name = "ClimateUsed",
            requiredProperties = {"lowest", "highest", "installedAt", "temperature", "temperatureSource"},
            description = "Heat and rain as used.")
    public record ClimateUsed(
            @Schema(ref = "Degrees", description = "Coldest the metal gets.")
            double lowest,

            @Schema(ref = "Degrees", description = "Warmest it gets.")
            double highest,

            @Schema(ref = "Degrees", description = "How warm it is when it is fastened.")
            double installedAt,

            @Schema(ref = "TemperatureScale", description = "Scale of the three.")
            TemperatureScale temperature,

            @Schema(description = "Where they come from.", maxLength = 400)
            String temperatureSource,

            @Schema(description = "Rain to be led off, when it is known.")
            Optional<Figure> rainfall) {}

    /**
     * The cap of hips.
     *
     * @param leg          from its bend to its edge
     * @param closureInset how far inside that edge the closure stands
     */
    @Schema(
            name = "HipCapUsed",
            requiredProperties = {"leg", "closureInset"},
            description = "The cap of hips as used.")
    public record HipCapUsed(
            @Schema(ref = "PositiveLength") double leg,
            @Schema(ref = "PositiveLength") double closureInset) {}
}
