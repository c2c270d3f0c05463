package org.thalweg.api.wire;

import jakarta.validation.constraints.Size;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.api.Limits;

/**
 * Why no plan is cheaper.
 *
 * @param stepsPerUnit what lengths are counted in
 * @param prices       of every kind of piece
 * @param worths       of every sort of bar
 * @param worth        of all pieces
 * @param scale        of the only sort of bar
 */
@Schema(
        name = "Certificate",
        requiredProperties = {"stepsPerUnit", "prices", "worths", "worth"},
        description =
                "A price list in whole numbers. Whatever fits on a bar is worth no more than the bar; so any plan needs bars that are worth"
                        + " as much as all pieces, and the cheapest such bars cost the bound. openapi/certificates.md says how to check it.")
public record CertificateAnswer(
        @Schema(
                ref = "WholeNumber",
                description =
                        "Lengths of the certificate are whole steps of 3.125 micrometres; so many of them make one of the request's"
                                + " length unit: 8128 an inch, 320 a millimetre.")
        long stepsPerUnit,

        @Schema(description = "A price for every kind of piece, longest first.", maxItems = Limits.CUT_KINDS)
        List<PriceAnswer> prices,

        @Schema(
                description =
                        "For every sort of bar, in the order of the request, the most that pieces on one are worth.",
                maxItems = Limits.STOCK_SORTS)
        List<WorthAnswer> worths,

        @Schema(ref = "WholeNumber", description = "What all pieces are worth: the sum of price times count.")
        long worth,

        @Schema(
                ref = "WholeNumber",
                description =
                        "With one sort of bar, what one is worth: then worth over scale, rounded up, is the least number of bars.")
        Optional<Long> scale) {

    /**
     * The price of a kind of piece.
     *
     * @param length of one with its kerf
     * @param count  how many
     * @param price  of one
     * @param pieces which
     * @param apart  which of the lists keeps them apart
     */
    @Schema(
            name = "PiecePrice",
            requiredProperties = {"length", "count", "price", "pieces"},
            description = "The price of pieces that are alike to the saw.")
    public record PriceAnswer(
            @Schema(
                    ref = "WholeNumber",
                    description =
                            "Length of one and a kerf, or of all that come from one bar together with a kerf each, in steps.")
            long length,

            @Schema(description = "How many.", format = "int32", minimum = "1", maximum = "100000", examples = "6")
            int count,

            @Schema(ref = "WholeNumber", description = "Price of one.")
            long price,

            @Schema(description = "Ids of the pieces.", maxItems = Limits.CUT_KINDS)
            List<@Size(max = Limits.ID_LENGTH) String> pieces,

            @Schema(
                    ref = "WholeNumber",
                    description =
                            "Which list of `apart` they stand in, counted from 0: at most one piece of a list is on a bar.")
            Optional<Long> apart) {}

    /**
     * What a bar is worth at most.
     *
     * @param stock which sort
     * @param room  length of one with a kerf
     * @param worth of what is on one
     */
    @Schema(
            name = "BarWorth",
            requiredProperties = {"stock", "room", "worth"},
            description = "The most that pieces on one bar are worth.")
    public record WorthAnswer(
            @Schema(description = "Id of the stock.", maxLength = Limits.ID_LENGTH, examples = "ten-foot")
            String stock,

            @Schema(
                    ref = "WholeNumber",
                    description = "Length of one and a kerf, for the last piece may end flush; in steps.")
            long room,

            @Schema(ref = "WholeNumber", description = "No pieces that fit are worth more.")
            long worth) {}
}
