package org.thalweg.api.wire;

import jakarta.validation.Valid;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.Limits;
import org.thalweg.api.wire.StockCutRequest.StockKind;
import org.thalweg.stock.Turning;

/**
 * What goods of sheet metal are cut from.
 *
 * @param stock           what there is
 * @param kerf            what a cut takes
 * @param keepableOffcut  what is worth keeping
 * @param turning         whether panels may be turned end for end
 * @param keepLayingOrder whether they come in the order of laying
 * @param deadlineMs      how long to think
 */
@Schema(
        name = "Cutting",
        requiredProperties = {"stock"},
        additionalProperties = Schema.False.class,
        description =
                "What pans, trims and cleats are cut from: those of one item and one flat width together, at the least cost, with a"
                        + " proof; and the coil that panels come from in one run. What no stock serves is ordered as long as its pieces.")
public record CuttingForm(
        @Schema(
                description =
                        "What there is, in the order the answer keeps; 1 to 60 sorts, at most one of them a coil.")
        @NotNull
        @Size(min = 1, max = Limits.STOCK_SORTS)
        List<@Valid SheetStockForm> stock,

        @Schema(
                description =
                        "What each cut of a bar takes, added to every piece but one that ends flush. 0 m to 0.05 m in the"
                                + " request's length unit. Default: 0, as a shear cuts.")
        @Nullable
        WireLength kerf,

        @Schema(
                description =
                        "The shortest off-cut that goes back to the rack. 0.001 m to 200 m in the request's length unit. Default: 12 in"
                                + " (common practice, no source).")
        @Nullable
        WireLength keepableOffcut,

        @Schema(
                ref = "Turning",
                description =
                        "Whether panels of the coil may be turned end for end, which swaps their male and female ribs. Only beside a"
                                + " coil. Default: forbidden.")
        @Nullable
        Turning turning,

        @Schema(
                description =
                        "Whether the panels of the coil come in the order they are laid, and not in the one that takes the least coil."
                                + " Only beside a coil. Default: false.")
        @Nullable
        Boolean keepLayingOrder,

        @Schema(
                description =
                        "About how many milliseconds all plans of bars together may take; work is counted and no clock is asked, so"
                                + " that the same request gets the same answer. With 0 they are the first plans at hand and their bounds."
                                + " 0 to 2000. Default: 200.",
                examples = "200")
        @Min(0)
        @Max(Limits.CUTTING_MS)
        @Nullable
        Long deadlineMs) {

    /** Goods of sheet metal that are cut from bars. */
    public enum SheetItem {
        VALLEY_PAN,
        TRIM,
        CLEAT
    }

    /**
     * One sort of stock.
     *
     * @param id     the caller's name for it
     * @param kind   what it is
     * @param length of one
     * @param cost   of one
     * @param count  how many there are
     * @param item   what is cut from it
     * @param width  and how wide that is
     */
    @Schema(
            name = "SheetStock",
            requiredProperties = {"id"},
            additionalProperties = Schema.False.class,
            description =
                    "One sort of stock: sheet of this length, slit to the width of what is cut from it. A coil has an id and its kind"
                            + " and nothing else.")
    public record SheetStockForm(
            @Schema(
                    description = "The caller's name for it, its own among the stock; 1 to 100 characters.",
                    examples = "ten-foot")
            @NotNull
            @Size(min = 1, max = Limits.ID_LENGTH)
            String id,

            @Schema(
                    ref = "StockKind",
                    description =
                            "What it is: `bar` to buy, `rack` what lies there and is paid for, or the `coil` that panels are formed"
                                    + " from on site. Default: bar.")
            @Nullable
            StockKind kind,

            @Schema(
                    description =
                            "Length of one; bars and rack have it. 0.01 m to 200 m in the request's length unit. Default: none.")
            @Nullable
            WireLength length,

            @Schema(
                    description =
                            "Cost of one, a whole number of the smallest coin, as cents. 0 to 1073741824. Given for every bar or for"
                                    + " none. Default: for `rack` 0; if no bar has one, in proportion to the bars' lengths in the smallest"
                                    + " whole numbers, so that least cost is least metal.",
                    examples = "4250")
            @Min(0)
            @Max(Limits.STOCK_COST)
            @Nullable
            Long cost,

            @Schema(
                    description =
                            "How many there are; what is counted names its `item`, and its `width` unless it is for cleats. 1 to"
                                    + " 100000. Default: for `rack` 1, for `bar` as many as wanted.",
                    examples = "3")
            @Min(1)
            @Max(Limits.CUT_COUNT)
            @Nullable
            Long count,

            @Schema(ref = "SheetItem", description = "What alone is cut from it. Default: pans, trims and cleats.")
            @Nullable
            SheetItem item,

            @Schema(
                    description =
                            "The flat width that alone is cut from it, to the nearest mark of a tape. Not for cleats, of which no width"
                                    + " is known. 0.005 m to 3 m in the request's length unit. Default: any.")
            @Nullable
            WireLength width)
            implements BarForm {}
}
