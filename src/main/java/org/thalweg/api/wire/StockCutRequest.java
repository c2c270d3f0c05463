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
import org.thalweg.stock.Turning;

/**
 * Pieces to cut, and what from.
 *
 * @param units          the caller's units
 * @param stock          what there is to cut from
 * @param pieces         what is wanted
 * @param kerf           what a cut takes
 * @param keepableOffcut what is worth keeping
 * @param turning        whether panels may be turned end for end
 * @param width          how wide the pieces are
 * @param together       pieces that come from one bar
 * @param apart          pieces that come from different bars
 * @param deadlineMs     how long to think
 */
@Schema(
        name = "StockCutRequest",
        requiredProperties = {"units", "stock", "pieces"},
        additionalProperties = Schema.False.class,
        description =
                "Pieces to cut, and what from: bars and off-cuts on the rack, or one coil. A coil is cut with a shear, so it takes no"
                        + " `kerf`; `together`, `apart`, `keepableOffcut` and `deadlineMs` are for bars, `turning` is for a coil.")
public record StockCutRequest(
        @Schema(description = "The units of this request and its answer.") @NotNull @Valid
        UnitsForm units,

        @Schema(
                description =
                        "What there is to cut from, in the order the answer keeps; 1 to 60 sorts. Either bars and what lies on the rack,"
                                + " or one coil and nothing else.")
        @NotNull
        @Size(min = 1, max = Limits.STOCK_SORTS)
        List<@Valid StockForm> stock,

        @Schema(
                description =
                        "What is wanted, for a coil in the order it is laid. From bars at most 1000 entries and 100000 pieces, counts"
                                + " added up; from a coil at most 5000 pieces.")
        @NotNull
        @Size(min = 1, max = Limits.CUT_PIECES)
        List<@Valid PieceForm> pieces,

        @Schema(
                description =
                        "What each cut takes, added to every piece but one that ends flush with its bar. 0 m to 0.05 m in the request's"
                                + " length unit. Default: 0, as a shear cuts.")
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
                        "Whether panels from a coil may be turned end for end, which swaps their male and female ribs. Default: forbidden.")
        @Nullable
        Turning turning,

        @Schema(
                description =
                        "How wide the pieces are, square to their length: the width of the coil. Needed for mitres in degrees and for areas."
                                + " 0.005 m to 3 m in the request's length unit. Default: none.")
        @Nullable
        WireLength width,

        @Schema(
                description =
                        "Pieces that come from one bar, all copies of them, side by side: lists of ids, at most 200 of at most 200."
                                + " Default: none.",
                maxItems = Limits.CUT_GROUPS)
        @Size(max = Limits.CUT_GROUPS)
        @Nullable
        List<@Size(min = 1, max = Limits.CUT_GROUPS) List<@Size(min = 1, max = Limits.ID_LENGTH) String>> together,

        @Schema(
                description =
                        "Pieces of which no two come from one bar, copies of one id neither: lists of ids, at most 200 of at most 200."
                                + " Default: none.",
                maxItems = Limits.CUT_GROUPS)
        @Size(max = Limits.CUT_GROUPS)
        @Nullable
        List<@Size(min = 1, max = Limits.CUT_GROUPS) List<@Size(min = 1, max = Limits.ID_LENGTH) String>> apart,

        @Schema(
                description =
                        "About how many milliseconds to look for a better plan or a better bound; work is counted, 500000 steps to the"
                                + " millisecond, so that the same request gets the same plan on any machine. A clock stops it at twice the"
                                + " deadline, and then the answer says `late`. With 0 the answer is the first plan at hand and its bound. 0 to 5000."
                                + " Default: 500.",
                examples = "500")
        @Min(0)
        @Max(Limits.DEADLINE_MS)
        @Nullable
        Long deadlineMs)
        implements Asked {

    /** What stock is. */
    public enum StockKind {
        BAR,
        COIL,
        RACK
    }

    /**
     * One sort of stock.
     *
     * @param id     the caller's name for it
     * @param kind   what it is
     * @param length of one
     * @param cost   of one
     * @param count  how many there are
     */
    @Schema(
            name = "Stock",
            requiredProperties = {"id"},
            additionalProperties = Schema.False.class,
            description =
                    "One sort of stock. A coil has an id and its kind and nothing else; it is as long as it need be.")
    public record StockForm(
            @Schema(
                    description = "The caller's name for it, its own among the stock; 1 to 100 characters.",
                    examples = "ten-foot")
            @NotNull
            @Size(min = 1, max = Limits.ID_LENGTH)
            String id,

            @Schema(
                    ref = "StockKind",
                    description =
                            "What it is: `bar` to buy, `rack` what lies there and is paid for, or a `coil`. Default: bar.")
            @Nullable
            StockKind kind,

            @Schema(
                    description =
                            "Length of one; bars and rack have it. 0.01 m to 200 m in the request's length unit. Default: none.")
            @Nullable
            WireLength length,

            @Schema(
                    description =
                            "Cost of one, a whole number of the smallest coin, as cents; the plan of least cost is looked for. 0 to"
                                    + " 1073741824. Given for every bar or for none. Default: for `rack` 0; if no bar has one, in proportion to the"
                                    + " bars' lengths in the smallest whole numbers, so that a single length costs 1 and least cost is least metal.",
                    examples = "4250")
            @Min(0)
            @Max(Limits.STOCK_COST)
            @Nullable
            Long cost,

            @Schema(
                    description =
                            "How many there are; what costs nothing has a count. 1 to 100000. Default: for `rack` 1, for `bar` as many as"
                                    + " wanted.",
                    examples = "3")
            @Min(1)
            @Max(Limits.CUT_COUNT)
            @Nullable
            Long count)
            implements BarForm {}

    /**
     * Pieces that are alike.
     *
     * @param id            the caller's name for them
     * @param length        of one
     * @param count         how many
     * @param leftMitreDeg  how the left end leans
     * @param rightMitreDeg how the right end leans
     * @param leftOffset    the same as a length
     * @param rightOffset   the same as a length
     */
    @Schema(
            name = "CutPiece",
            requiredProperties = {"id", "length"},
            additionalProperties = Schema.False.class,
            description =
                    "Pieces that are alike. Seen with its length from left to right a piece has a lower and an upper edge, `width` apart. An"
                            + " end is square, or it leans: its mitre is above 0 when the upper corner lies to the right of the lower one. From a coil"
                            + " mitred pieces share cuts; from bars each is a square blank as long as it reaches, mitred afterwards.")
    public record PieceForm(
            @Schema(
                    description = "The caller's name for them, its own among the pieces; 1 to 100 characters.",
                    examples = "rake-3")
            @NotNull
            @Size(min = 1, max = Limits.ID_LENGTH)
            String id,

            @Schema(
                    description =
                            "Length of one along its lower edge, without kerf. 0.001 m to 1000 m in the request's length unit.")
            @NotNull
            WireLength length,

            @Schema(description = "How many. 1 to 100000. Default: 1.", examples = "6")
            @Min(1)
            @Max(Limits.CUT_COUNT)
            @Nullable
            Long count,

            @Schema(
                    description = "How the left end leans, against square. -85 to 85; needs `width`. Default: 0.",
                    examples = "30")
            @Min(-Limits.MITRE_DEG)
            @Max(Limits.MITRE_DEG)
            @Nullable
            Double leftMitreDeg,

            @Schema(
                    description = "How the right end leans, against square. -85 to 85; needs `width`. Default: 0.",
                    examples = "-30")
            @Min(-Limits.MITRE_DEG)
            @Max(Limits.MITRE_DEG)
            @Nullable
            Double rightMitreDeg,

            @Schema(
                    description =
                            "In place of `leftMitreDeg`: how far the upper corner of the left end lies to the right of the lower one. -50 m to"
                                    + " 50 m in the request's length unit. Default: 0.")
            @Nullable
            WireLength leftOffset,

            @Schema(
                    description =
                            "In place of `rightMitreDeg`: how far the upper corner of the right end lies to the right of the lower one. -50 m"
                                    + " to 50 m in the request's length unit. Default: 0.")
            @Nullable
            WireLength rightOffset) {}
}
