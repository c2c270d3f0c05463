package org.thalweg.api.wire;

import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.api.Limits;

/**
 * What to order for a roof, without the drawings' detail.
 *
 * @param engine     who answered
 * @param digest     which request
 * @param units      the caller's units
 * @param used       the figures it was laid with
 * @param cuts       goods of sheet metal cut from stock
 * @param coil       the panels in one run of coil
 * @param order      equal blanks, counted
 * @param orderLines the order
 * @param totals     sums of what the layout lists
 * @param findings   what a crew should know of it
 * @param cautions   what holds for every roof
 */
@Schema(
        name = "TakeoffAnswer",
        requiredProperties = {
            "engine",
            "digest",
            "units",
            "used",
            "order",
            "orderLines",
            "totals",
            "findings",
            "cautions"
        },
        description = "What to order for a roof: the same lines, to the byte, as the layout of the same request has.")
public record TakeoffAnswer(
        @Schema(ref = "Engine") String engine,
        @Schema(ref = "Digest") String digest,

        @Schema(description = "The request's units; they hold for every figure of this answer.")
        UnitsForm units,

        LayoutUsed used,

        @Schema(
                description =
                        "Goods of sheet metal cut from stock, by item and width, pans, trims, then cleats; where `cutting` was given.",
                maxItems = Limits.ORDER_LINES)
        Optional<List<SheetCutAnswer>> cuts,

        @Schema(description = "The panels in one run of coil, where `cutting` names a coil.")
        Optional<CoilAnswer> coil,

        @Schema(description = "Equal blanks counted, the longest first.", maxItems = Limits.PANELS_ANSWERED)
        List<LayoutAnswer.BlankLine> order,

        @Schema(description = "What to order, item by item.", maxItems = Limits.ORDER_LINES)
        List<OrderLineAnswer> orderLines,

        @Schema(description = "Sums of what the layout lists.", maxItems = Limits.TOTALS)
        List<LayoutAnswer.Total> totals,

        @Schema(description = "What a crew should know, as in the layout.", maxItems = Limits.FINDINGS)
        List<FindingAnswer> findings,

        @Schema(description = "What holds for every roof.", maxItems = Limits.CAUTIONS)
        List<CautionAnswer> cautions) {}
