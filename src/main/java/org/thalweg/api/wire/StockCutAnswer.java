package org.thalweg.api.wire;

import jakarta.validation.constraints.Size;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.api.Limits;
import org.thalweg.api.wire.StockCutRequest.StockKind;
import org.thalweg.stock.CuttingPlan;
import org.thalweg.stock.Turning;

/**
 * Pieces, cut.
 *
 * @param engine      who answered
 * @param digest      which request
 * @param units       the caller's units
 * @param used        the figures they were cut with
 * @param bars        what is cut from which bar
 * @param cost        of all bars
 * @param barCount    how many bars
 * @param lowerBound  no plan costs less
 * @param proven      whether this plan is the best there is
 * @param proof       what the bound rests on
 * @param gap         how far from the best it may be
 * @param keptValue   of the off-cuts that are kept
 * @param late        whether the clock struck
 * @param certificate proves the bound
 * @param coil        the run of a coil
 * @param unplaced    pieces on no bar
 * @param findings    what a crew should know
 * @param cautions    what holds for every roof
 */
@Schema(
        name = "StockCutAnswer",
        requiredProperties = {
            "engine",
            "digest",
            "units",
            "used",
            "bars",
            "barCount",
            "proven",
            "late",
            "unplaced",
            "findings",
            "cautions"
        },
        description =
                "The plan of least cost that was found, and how far from the least it may be. From bars `cost`, `lowerBound`, `proof`, `gap`,"
                        + " `keptValue` and `certificate` are there; from a coil `coil` is, whose run is the shortest there is.")
public record StockCutAnswer(
        @Schema(ref = "Engine") String engine,
        @Schema(ref = "Digest") String digest,

        @Schema(description = "The request's units; they hold for every figure of this answer.")
        UnitsForm units,

        @Schema(description = "The figures the plan was made with, given or default.")
        StockCutUsed used,

        @Schema(
                description =
                        "What is cut from which bar, in the order of the stock, those with the longest pieces first; bars cut alike are"
                                + " counted.",
                maxItems = Limits.CUT_COUNT)
        List<BarAnswer> bars,

        @Schema(ref = "WholeNumber", description = "Of all bars used, in the request's smallest coin.")
        Optional<Long> cost,

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
                        "No plan that cuts every piece but those `tooLong` for any bar costs less; what `certificate` and `proof` say.")
        Optional<Long> lowerBound,

        @Schema(
                description =
                        "Every piece is cut but those `tooLong` for any bar, which no plan can cut, and no plan that cuts the others is"
                                + " cheaper; or no run of the coil is shorter. Whether everything is cut is what `unplaced` says.")
        boolean proven,

        @Schema(ref = "BoundProof", description = "What the lower bound rests on.")
        Optional<CuttingPlan.Proof> proof,

        @Schema(
                ref = "WholeNumber",
                description = "How much cheaper a plan could be at most; 0 when the plan is proven.")
        Optional<Long> gap,

        @Schema(
                ref = "WholeNumber",
                description =
                        "Worth of what goes back to the rack: each off-cut's part of the cost of its bar, rounded down.")
        Optional<Long> keptValue,

        @Schema(
                description =
                        "Whether the clock, and not the counted work, ended the thinking. Then, and only then, the same request may"
                                + " get another plan another time.")
        boolean late,

        @Schema(description = "Proves the bound to anyone who can add; openapi/certificates.md says how.")
        Optional<CertificateAnswer> certificate,

        @Schema(description = "The run of the coil.") Optional<CoilAnswer> coil,

        @Schema(description = "Pieces that are on no bar, in the order of the request.", maxItems = Limits.CUT_KINDS)
        List<UnplacedAnswer> unplaced,

        @Schema(description = "What a crew should know of the plan.", maxItems = Limits.FINDINGS)
        List<FindingAnswer> findings,

        @Schema(description = "What holds for every roof.", maxItems = Limits.CAUTIONS)
        List<CautionAnswer> cautions) {

    /**
     * The figures a plan was made with.
     *
     * @param stock          what it is cut from
     * @param kerf           what a cut takes
     * @param keepableOffcut what is worth keeping
     * @param turning        whether panels may be turned
     * @param width          how wide pieces are
     * @param deadlineMs     how long it was thought about
     * @param tapeRule       how tape marks are rounded
     * @param defaults       which of them the request left out
     */
    @Schema(
            name = "StockCutUsed",
            requiredProperties = {"stock", "tapeRule", "defaults"},
            description =
                    "The figures the plan was made with, given or default: for bars `kerf`, `keepableOffcut` and `deadlineMs`, for a coil"
                            + " `turning`.")
    public record StockCutUsed(
            @Schema(description = "What it is cut from, in the order of the request.", maxItems = Limits.STOCK_SORTS)
            List<StockUsedAnswer> stock,

            @Schema(ref = "PositiveLength", description = "What each cut takes.")
            Optional<Double> kerf,

            @Schema(ref = "PositiveLength", description = "The shortest off-cut that goes back to the rack.")
            Optional<Double> keepableOffcut,

            @Schema(ref = "Turning", description = "Whether panels may be turned end for end.")
            Optional<Turning> turning,

            @Schema(ref = "PositiveLength", description = "How wide the pieces are, when that was given.")
            Optional<Double> width,

            @Schema(ref = "WholeNumber", description = "About how many milliseconds the plan may be thought about.")
            Optional<Long> deadlineMs,

            @Schema(description = "How tape marks are rounded.", maxLength = 200)
            String tapeRule,

            @Schema(
                    description = "Pointers to what the request left out and a default stands for.",
                    maxItems = Limits.DEFAULTS)
            List<@Size(max = 200) String> defaults) {}

    /**
     * One sort of stock as it was read.
     *
     * @param id     the caller's name for it
     * @param kind   what it is
     * @param length of one
     * @param cost   of one
     * @param count  how many there are
     */
    @Schema(
            name = "StockUsed",
            requiredProperties = {"id", "kind"},
            description = "One sort of stock as it was read; without a `count` there is as much as is wanted.")
    public record StockUsedAnswer(
            @Schema(description = "The caller's name for it.", maxLength = Limits.ID_LENGTH, examples = "ten-foot")
            String id,

            @Schema(ref = "StockKind", description = "What it is.")
            StockKind kind,

            @Schema(ref = "PositiveLength", description = "Length of one; a coil has none.")
            Optional<Double> length,

            @Schema(ref = "WholeNumber", description = "Cost of one, in the request's smallest coin.")
            Optional<Long> cost,

            @Schema(ref = "WholeNumber", description = "How many there are.")
            Optional<Long> count) {}

    /**
     * Bars cut alike.
     *
     * @param stock  which sort
     * @param length of the bar
     * @param count  how many
     * @param pieces what is cut from one
     * @param kerfs  what the saw takes
     * @param offcut what is left
     * @param kept   whether that goes back to the rack
     * @param value  of it
     */
    @Schema(
            name = "CutBar",
            requiredProperties = {"stock", "length", "count", "pieces", "kerfs", "offcut", "kept", "value"},
            description =
                    "Bars that are cut alike. The lengths of the pieces, the kerfs and the off-cut together are the bar's length.")
    public record BarAnswer(
            @Schema(description = "Id of the stock.", maxLength = Limits.ID_LENGTH, examples = "ten-foot")
            String stock,

            @Schema(description = "Length of the bar.") MarkedLength length,

            @Schema(
                    description = "How many bars are cut so.",
                    format = "int32",
                    minimum = "1",
                    maximum = "100000",
                    examples = "2")
            int count,

            @Schema(
                    description =
                            "From the end the tape is hooked on, longest first; those that belong together side by side.",
                    maxItems = Limits.CUT_COUNT)
            List<PlacedAnswer> pieces,

            @Schema(ref = "PositiveLength", description = "What the saw takes of one bar in all.")
            double kerfs,

            @Schema(description = "What is left of one bar beyond the last cut.")
            MarkedLength offcut,

            @Schema(description = "Whether the off-cut is long enough to go back to the rack.")
            boolean kept,

            @Schema(ref = "WholeNumber", description = "Its part of the bar's cost, rounded down; 0 unless kept.")
            long value) {}

    /**
     * A piece on its bar.
     *
     * @param id   which
     * @param from where it begins
     * @param to   where it ends
     */
    @Schema(
            name = "PlacedPiece",
            requiredProperties = {"id", "from", "to"},
            description = "A piece on its bar, measured from the end the tape is hooked on.")
    public record PlacedAnswer(
            @Schema(description = "Id of the piece.", maxLength = Limits.ID_LENGTH, examples = "rake-3")
            String id,

            @Schema(description = "Where it begins.") MarkedLength from,

            @Schema(description = "Where it ends; the saw takes the kerf beyond.")
            MarkedLength to) {}

    /**
     * Pieces on no bar.
     *
     * @param id     which
     * @param count  how many
     * @param reason why
     */
    @Schema(
            name = "UnplacedPiece",
            requiredProperties = {"id", "count", "reason"},
            description = "Pieces that are on no bar.")
    public record UnplacedAnswer(
            @Schema(description = "Id of the piece.", maxLength = Limits.ID_LENGTH, examples = "rake-3")
            String id,

            @Schema(description = "How many.", format = "int32", minimum = "1", maximum = "100000", examples = "1")
            int count,

            @Schema(ref = "UnplacedReason", description = "Why.")
            CuttingPlan.Reason reason) {}
}
