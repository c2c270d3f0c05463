package org.thalweg.api.wire;

import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.api.Limits;
import org.thalweg.api.wire.CuttingForm.SheetItem;
import org.thalweg.api.wire.StockCutAnswer.BarAnswer;
import org.thalweg.api.wire.StockCutAnswer.UnplacedAnswer;
import org.thalweg.stock.CuttingPlan;

/**
 * Goods of one item and one width, cut from stock.
 *
 * @param item        what they are
 * @param width       of the flat sheet
 * @param bars        what is cut from which bar
 * @param cost        of all bars
 * @param barCount    how many bars
 * @param lowerBound  no plan costs less
 * @param proven      whether this plan is the best there is
 * @param proof       what the bound rests on
 * @param gap         how far from the best it may be
 * @param keptValue   of the off-cuts that are kept
 * @param certificate proves the bound
 * @param unplaced    pieces on no bar
 */
@Schema(
        name = "SheetCut",
        requiredProperties = {
            "item",
            "bars",
            "cost",
            "barCount",
            "lowerBound",
            "proven",
            "proof",
            "gap",
            "keptValue",
            "certificate",
            "unplaced"
        },
        description =
                "Goods of one item and one width of sheet, cut from stock at the least cost that was found; as `/v1/stock-cuts` answers for"
                        + " the same pieces, which are named by their marks.")
public record SheetCutAnswer(
        @Schema(ref = "SheetItem", description = "What they are.")
        SheetItem item,

        @Schema(description = "Width of the flat sheet; cleats have none.")
        Optional<MarkedLength> width,

        @Schema(
                description =
                        "What is cut from which bar, in the order of the stock, those with the longest pieces first; bars cut alike are"
                                + " counted.",
                maxItems = Limits.CUT_COUNT)
        List<BarAnswer> bars,

        @Schema(ref = "WholeNumber", description = "Of all bars used, in the request's smallest coin.")
        long cost,

        @Schema(
                description = "How many bars are used.",
                format = "int32",
                minimum = "0",
                maximum = "100000",
                examples = "7")
        int barCount,

        @Schema(
                ref = "WholeNumber",
                description =
                        "No plan that cuts every piece there is room for costs less; what `certificate` and `proof` say.")
        long lowerBound,

        @Schema(description = "Whether no plan is cheaper, as `/v1/stock-cuts` means it.")
        boolean proven,

        @Schema(ref = "BoundProof", description = "What the lower bound rests on.")
        CuttingPlan.Proof proof,

        @Schema(
                ref = "WholeNumber",
                description = "How much cheaper a plan could be at most; 0 when the plan is proven.")
        long gap,

        @Schema(
                ref = "WholeNumber",
                description =
                        "Worth of what goes back to the rack: each off-cut's part of the cost of its bar, rounded down.")
        long keptValue,

        @Schema(description = "Proves the bound to anyone who can add; openapi/certificates.md says how.")
        CertificateAnswer certificate,

        @Schema(
                description = "Pieces that are on no bar; they are ordered as long as they are.",
                maxItems = Limits.CUT_COUNT)
        List<UnplacedAnswer> unplaced) {}
