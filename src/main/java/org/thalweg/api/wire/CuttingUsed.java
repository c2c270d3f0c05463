package org.thalweg.api.wire;

import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.api.Limits;
import org.thalweg.api.wire.CuttingForm.SheetItem;
import org.thalweg.api.wire.StockCutRequest.StockKind;
import org.thalweg.stock.Turning;

/**
 * What goods of sheet metal were cut from.
 *
 * @param stock           what there is
 * @param kerf            what a cut takes
 * @param keepableOffcut  what is worth keeping
 * @param turning         whether panels may be turned end for end
 * @param keepLayingOrder whether they come in the order of laying
 * @param deadlineMs      how long to think
 */
@Schema(
        name = "CuttingUsed",
        requiredProperties = {"stock", "kerf", "keepableOffcut", "deadlineMs"},
        description =
                "What goods of sheet metal were cut from; members as in the request. `turning` and `keepLayingOrder` are there"
                        + " beside a coil.")
public record CuttingUsed(
        @Schema(description = "What there is, in the order of the request.", maxItems = Limits.STOCK_SORTS)
        List<SheetStockUsed> stock,

        @Schema(ref = "PositiveLength", description = "What each cut takes.")
        double kerf,

        @Schema(ref = "PositiveLength", description = "The shortest off-cut that goes back to the rack.")
        double keepableOffcut,

        @Schema(ref = "Turning", description = "Whether panels may be turned end for end.")
        Optional<Turning> turning,

        @Schema(description = "Whether panels come in the order of laying.")
        Optional<Boolean> keepLayingOrder,

        @Schema(ref = "WholeNumber", description = "About how many milliseconds all plans may take.")
        long deadlineMs) {

    /**
     * One sort of stock as it was read.
     *
     * @param id     the caller's name for it
     * @param kind   what it is
     * @param length of one
     * @param cost   of one
     * @param count  how many there are
     * @param item   what alone is cut from it
     * @param width  and how wide that is
     */
    @Schema(
            name = "SheetStockUsed",
            requiredProperties = {"id", "kind"},
            description = "One sort of stock as it was read; without a `count` there is as much as is wanted.")
    public record SheetStockUsed(
            @Schema(description = "The caller's name for it.", maxLength = Limits.ID_LENGTH, examples = "ten-foot")
            String id,

            @Schema(ref = "StockKind", description = "What it is.")
            StockKind kind,

            @Schema(ref = "PositiveLength", description = "Length of one; a coil has none.")
            Optional<Double> length,

            @Schema(ref = "WholeNumber", description = "Cost of one, in the request's smallest coin.")
            Optional<Long> cost,

            @Schema(ref = "WholeNumber", description = "How many there are.")
            Optional<Long> count,

            @Schema(ref = "SheetItem", description = "What alone is cut from it.")
            Optional<SheetItem> item,

            @Schema(ref = "PositiveLength", description = "The flat width that alone is cut from it.")
            Optional<Double> width) {}
}
