package org.thalweg.api.wire;

import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.api.Limits;
import org.thalweg.api.wire.LineAnswer.LowAnswer;
import org.thalweg.valley.PanBlank.FoldKind;

/**
 * A piece of the pan.
 *
 * @param mark   its name
 * @param from   where its lowest point lies
 * @param length of its blank
 * @param lap    over the piece below
 * @param movement of its lower end
 * @param blank  its shape
 */
@Schema(
        name = "PanPiece",
        requiredProperties = {"mark", "from", "length", "lap", "movement", "blank"},
        description = "One piece of a pan.")
public record PieceAnswer(
        @Schema(
                description = "Its name: the valley's and a number, from the foot up.",
                maxLength = 60,
                examples = "V1-1")
        String mark,

        @Schema(description = "Where its lowest point lies, up the low from the foot; below 0 past it.")
        MarkedLength from,

        @Schema(description = "Length of its blank.") MarkedLength length,

        @Schema(description = "How far it lies over the piece below; 0 for the first.")
        MarkedLength lap,

        PieceMovementAnswer movement,
        BlankAnswer blank) {

    /**
     * How a piece moves.
     *
     * @param longer  by how much it grows
     * @param shorter by how much it shrinks
     * @param lapLeft of its lap
     */
    @Schema(
            name = "PanPieceMovement",
            requiredProperties = {"longer", "shorter"},
            description =
                    "How far the lower end of a piece moves when it is fastened at its head and free from there down: its outer"
                            + " edges held by cleats on their folds, no screw through it below. Screws through the panels hold it"
                            + " all along; where it would move further than they let it, a finding says so.")
    public record PieceMovementAnswer(
            @Schema(ref = "PositiveLength", description = "By how much it grows from installed to warmest.")
            double longer,

            @Schema(ref = "PositiveLength", description = "By how much it shrinks from installed to coldest.")
            double shorter,

            @Schema(
                    ref = "PositiveLength",
                    description =
                            "What is left of its lap at its coldest; held against the least lap. Left out for the first.")
            Optional<Double> lapLeft) {}

    /**
     * A blank, flat.
     *
     * @param outline its corners
     * @param folds   its bends
     * @param slits   its cuts
     */
    @Schema(
            name = "PanBlank",
            requiredProperties = {"outline", "folds", "slits"},
            description =
                    "A piece of pan lying flat: [across, along], across from its middle, below 0 to the left seen looking up"
                            + " the valley, along from its lowest point.")
    public record BlankAnswer(
            @Schema(
                    description = "Its corners, counter-clockwise from the lowest left one.",
                    maxItems = Limits.BLANK_CORNERS)
            List<PlanePoint> outline,

            @Schema(description = "Every bend, from left to right.", maxItems = Limits.FOLDS)
            List<FoldAnswer> folds,

            @Schema(
                    description = "Cuts along the crown, so that the legs fold over the open ends of the rib.",
                    maxItems = 2)
            List<LowAnswer> slits) {}

    /**
     * A bend.
     *
     * @param kind    what it makes
     * @param from    its lower end
     * @param to      its upper end
     * @param bendDeg how far
     * @param up      which way
     */
    @Schema(
            name = "Fold",
            requiredProperties = {"kind", "from", "to", "bendDeg", "up"},
            description = "One bend of a blank.")
    public record FoldAnswer(
            @Schema(ref = "FoldKind", description = "What it makes.")
            FoldKind kind,

            @Schema(description = "Its lower end; blank frame.")
            PlanePoint from,

            @Schema(description = "Its upper end; blank frame.")
            PlanePoint to,

            @Schema(ref = "AngleDeg", description = "How far the metal is turned from flat.")
            double bendDeg,

            @Schema(description = "Whether what lies outward of it comes up, seen from above the roof.")
            boolean up) {}
}
