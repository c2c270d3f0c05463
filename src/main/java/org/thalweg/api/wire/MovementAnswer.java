package org.thalweg.api.wire;

import jakarta.validation.constraints.Size;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.api.Limits;
import org.thalweg.movement.EndHold;
import org.thalweg.panel.Cut;

/**
 * How a panel moves.
 *
 * @param plane        on which plane
 * @param panels       its pieces
 * @param fixedAt      where it is fixed
 * @param below        from there down
 * @param above        from there up
 * @param travelNeeded of its clips
 * @param longestPanel its clips allow
 * @param ends         what holds them
 */
@Schema(
        name = "PanelMovement",
        requiredProperties = {"plane", "panels", "fixedAt", "below", "above", "travelNeeded", "ends"},
        description = "How far a panel moves from where it is fixed, and what lets it.")
public record MovementAnswer(
        @Schema(description = "The plane's id.", maxLength = Limits.ID_ANSWERED, examples = "south")
        String plane,

        @Schema(
                description =
                        "Marks of its pieces, from the lowest up; one unless it is lapped. A lap is fastened metal"
                                + " to metal, so they move together.",
                maxItems = Limits.PANELS_ANSWERED)
        List<@Size(max = Limits.ID_ANSWERED + 24) String> panels,

        @Schema(
                description =
                        "Where it is fixed, in the middle of its width; in the frame the plane's panels are placed"
                                + " in.")
        PlanePoint fixedAt,

        @Schema(description = "From where it is fixed to its lowest place.")
        FreePart below,

        @Schema(description = "From where it is fixed to its highest place.")
        FreePart above,

        @Schema(
                ref = "PositiveLength",
                description =
                        "How far its clips must let it slide, each way: as far as its further end moves; the last clip stands"
                                + " a little nearer.")
        double travelNeeded,

        @Schema(
                description =
                        "The longest panel that `fastening.clipTravel` allows, fixed as this one is; left out where that is not"
                                + " given, or nothing moves.")
        Optional<MarkedLength> longestPanel,

        @Schema(
                description =
                        "Where it ends on edges of the roof: lower ends, then upper ends, in the order of the edges; each edge once"
                                + " for the lower and once for the upper ends there, with the figures of the place furthest from"
                                + " where the panel is fixed.",
                maxItems = Limits.EDGES)
        List<EndMovement> ends) {

    /**
     * A part that is free.
     *
     * @param length  of it
     * @param longer  by how much it grows
     * @param shorter by how much it shrinks
     */
    @Schema(
            name = "FreePart",
            requiredProperties = {"length", "longer", "shorter"},
            description = "A part of a panel that is free to move from where the panel is fixed.")
    public record FreePart(
            @Schema(description = "How long it is, along the slope.")
            MarkedLength length,

            @Schema(ref = "PositiveLength", description = "By how much it grows from installed to warmest.")
            double longer,

            @Schema(ref = "PositiveLength", description = "By how much it shrinks from installed to coldest.")
            double shorter) {}

    /**
     * An end.
     *
     * @param edge    what it ends on
     * @param end     which end it is
     * @param hold    what holds it
     * @param longer  how far it moves out
     * @param shorter how far it moves in
     * @param allowed how far it may
     * @param within  whether it may move as far as it will
     */
    @Schema(
            name = "EndMovement",
            requiredProperties = {"edge", "end", "hold", "longer", "shorter", "within"},
            description = "One end of a panel, and whether what holds it lets it move.")
    public record EndMovement(
            @Schema(description = "Name of the roof edge.", maxLength = 40, examples = "E1")
            String edge,

            @Schema(ref = "CutEnd", description = "Whether it is a lower or an upper end.")
            Cut.End end,

            @Schema(ref = "EndHold", description = "What holds it.")
            EndHold hold,

            @Schema(
                    ref = "PositiveLength",
                    description =
                            "How far it moves out as the panel grows: along the slope; in a hem, square to the end, ΔL · cos φ.")
            double longer,

            @Schema(ref = "PositiveLength", description = "How far it moves in as the panel shrinks, likewise.")
            double shorter,

            @Schema(description = "How far it may; left out where nothing stops it.")
            Optional<AllowedMovement> allowed,

            @Schema(description = "Whether it may move as far as it will.")
            boolean within) {}

    /**
     * How far an end may move.
     *
     * @param longer  out
     * @param shorter in
     * @param source  whose figures
     */
    @Schema(
            name = "AllowedMovement",
            requiredProperties = {"longer", "shorter", "source"},
            description = "How far what holds an end lets it move from where it was fastened.")
    public record AllowedMovement(
            @Schema(
                    ref = "PositiveLength",
                    description =
                            "Out: the play of screws; of a hem, how much of the cleat lies in it, and it slips off there.")
            double longer,

            @Schema(
                    ref = "PositiveLength",
                    description = "In: the play of screws; of a hem, what is free between cleat and fold.")
            double shorter,

            @Schema(description = "Whose figures they are.", maxLength = 300)
            String source) {}
}
