package org.thalweg.api.wire;

import java.util.Map;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.api.Limits;
import org.thalweg.trim.Hand;

/**
 * The figures trims were laid out with, given or default; members as in the request.
 *
 * @param seamHeight  of the panels
 * @param hipLeg      of the cap of hips
 * @param sheet       what they are bent of
 * @param stock       what pieces are made of
 * @param ventedRidge whether ridges let air out
 * @param past        how far some run past the outside of the roof
 * @param laidFrom    from which end pieces are laid
 * @param kinds       every kind of edge that gets a trim
 */
@Schema(
        name = "TrimsUsed",
        requiredProperties = {"seamHeight", "hipLeg", "sheet", "stock", "ventedRidge", "past", "laidFrom", "kinds"},
        description = "What trims were laid out with; members mean what they mean in the request.")
public record TrimsUsed(
        @Schema(ref = "PositiveLength", description = "Height of the panels' seams, which plain profiles stand over.")
        double seamHeight,

        @Schema(ref = "PositiveLength", description = "Girth of each leg of the plain cap of hips.")
        double hipLeg,

        SheetUsed sheet,
        StockUsed stock,

        @Schema(description = "Whether the plain cap of ridges lets air out.")
        boolean ventedRidge,

        @Schema(ref = "PositiveLength") double past,

        @Schema(ref = "TrimHand", description = "The end that pieces of a level edge are laid from.")
        Hand laidFrom,

        @Schema(description = "Every kind of edge that gets a trim.", maxProperties = Limits.EDGE_KINDS)
        Map<String, KindUsed> kinds) {

    /**
     * What trims are bent of.
     *
     * @param thickness       of the metal
     * @param insideRadius    of its bends
     * @param kFactor         where the line lies that does not stretch
     * @param bendFormula     or the formula used
     * @param allowanceSource where that stands
     * @param coilWidth       widest sheet
     */
    @Schema(
            name = "TrimSheetUsed",
            requiredProperties = {"thickness", "insideRadius", "allowanceSource", "coilWidth"},
            description = "The sheet as used; members mean what they mean in the request.")
    public record SheetUsed(
            @Schema(ref = "PositiveLength") double thickness,
            @Schema(ref = "PositiveLength") double insideRadius,

            @Schema(description = "K, unless a formula was used.", format = "double", minimum = "0", maximum = "1")
            Optional<Double> kFactor,

            @Schema(ref = "BendFormula", description = "The formula used, if there was one.")
            Optional<TrimsForm.BendFormula> bendFormula,

            @Schema(description = "Where factor or formula stands.", maxLength = 200)
            String allowanceSource,

            @Schema(ref = "PositiveLength") double coilWidth) {}

    /**
     * What pieces are made of.
     *
     * @param pieceLength   longest piece
     * @param shortestPiece shortest piece
     */
    @Schema(
            name = "TrimStockUsed",
            requiredProperties = {"pieceLength", "shortestPiece"},
            description = "The stock as used; members mean what they mean in the request.")
    public record StockUsed(
            @Schema(ref = "PositiveLength") double pieceLength,
            @Schema(ref = "PositiveLength") double shortestPiece) {}

    /**
     * What edges of one kind got.
     *
     * @param lap   how far a piece lies over the one before
     * @param plain whether by a plain profile of this service
     */
    @Schema(
            name = "TrimKindUsed",
            requiredProperties = {"lap", "plain"},
            description = "What edges of one kind got.")
    public record KindUsed(
            @Schema(ref = "PositiveLength") double lap,

            @Schema(description = "Whether the profile is a plain one of this service; else it is the caller's.")
            boolean plain) {}
}
