package org.thalweg.api.wire;

import jakarta.validation.constraints.Size;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.api.Limits;
import org.thalweg.pricing.WastePolicy;

/**
 * What a takeoff costs.
 *
 * @param engine    who answered
 * @param digest    which request
 * @param units     of the takeoff
 * @param currency  of every amount
 * @param used      what it was priced with
 * @param lines     the order, priced
 * @param labour    the work, priced
 * @param goods     sum of the lines
 * @param work      sum of the labour
 * @param subtotal  both
 * @param markups   what is added for the trade
 * @param net       the subtotal and the mark-ups
 * @param taxes     what is added for the state
 * @param total     what it costs
 * @param complete  whether everything has a price
 * @param findings  what has none
 * @param cautions  what holds for every roof
 */
@Schema(
        name = "QuoteAnswer",
        requiredProperties = {
            "engine",
            "digest",
            "units",
            "currency",
            "used",
            "lines",
            "labour",
            "goods",
            "work",
            "subtotal",
            "markups",
            "taxes",
            "complete",
            "findings",
            "cautions"
        },
        description =
                "What a takeoff costs. Every sum is the sum of the amounts printed above it. Where anything has no price there is a finding"
                        + " and no `net`, no taxes and no `total`.")
public record QuoteAnswer(
        @Schema(ref = "Engine") String engine,
        @Schema(ref = "Digest") String digest,

        @Schema(description = "The units of the takeoff or the layout.")
        UnitsForm units,

        @Schema(ref = "Currency", description = "The currency of every amount.")
        String currency,

        QuoteUsed used,

        @Schema(description = "The order lines, in the order of the takeoff.", maxItems = Limits.ORDER_LINES)
        List<GoodsAnswer> lines,

        @Schema(description = "The labour, in the order of the price book.", maxItems = Limits.LABOUR_ITEMS)
        List<LabourAnswer> labour,

        @Schema(description = "Sum of the lines that have an amount.")
        MoneyAnswer goods,

        @Schema(description = "Sum of the labour that has an amount.")
        MoneyAnswer work,

        @Schema(description = "`goods` and `work`.") MoneyAnswer subtotal,

        @Schema(description = "Mark-ups, in the order they are added.", maxItems = Limits.MARKUPS)
        List<ShareAnswer> markups,

        @Schema(description = "`subtotal` and all mark-ups; left out where anything has no price.")
        Optional<MoneyAnswer> net,

        @Schema(
                description = "Taxes, in the order of the price book; none where anything has no price.",
                maxItems = Limits.TAXES)
        List<ShareAnswer> taxes,

        @Schema(description = "`net` and all taxes; left out where anything has no price.")
        Optional<MoneyAnswer> total,

        @Schema(description = "Whether everything has a price, so that there is a total.")
        boolean complete,

        @Schema(
                description = "What has no price and why, first the order lines, then the labour.",
                maxItems = Limits.FINDINGS)
        List<FindingAnswer> findings,

        @Schema(description = "What holds for every roof.", maxItems = Limits.CAUTIONS)
        List<CautionAnswer> cautions) {

    /**
     * An amount of money.
     *
     * @param amount   how much
     * @param currency of what
     */
    @Schema(
            name = "Money",
            requiredProperties = {"amount", "currency"},
            description = "An amount of money.")
    public record MoneyAnswer(
            @Schema(
                    description =
                            "How much: digits, and after a point as many decimals as the currency has (ISO 4217); a price has the"
                                    + " digits of the price book.",
                    maxLength = 60,
                    examples = "1234.50")
            String amount,

            @Schema(ref = "Currency", description = "Of which currency.")
            String currency) {}

    /**
     * An order line, priced.
     *
     * @param item           what is ordered
     * @param made           what it is made of
     * @param quantity       what the takeoff orders
     * @param unit           its unit
     * @param pricedQuantity what is paid for
     * @param packs          how many packs
     * @param priceUnit      what the price is per
     * @param price          per unit
     * @param amount         what it costs
     * @param minimumCharged whether that is the minimum
     * @param entry          where its price stands
     * @param gtin           trade item number
     * @param code           the supplier's own number
     */
    @Schema(
            name = "QuotedLine",
            requiredProperties = {"item", "quantity", "unit", "minimumCharged"},
            description = "An order line and what it costs. Without `amount` it has no price, and a finding says why.")
    public record GoodsAnswer(
            @Schema(description = "What is ordered.", maxLength = Limits.ITEM_LENGTH, examples = "panel")
            String item,

            @Schema(description = "What it is made of, for goods of sheet metal.")
            Optional<QuotedMade> made,

            @Schema(
                    description = "What the takeoff orders, in its own unit.",
                    format = "double",
                    minimum = "0",
                    maximum = "1e12",
                    examples = "325.5")
            double quantity,

            @Schema(ref = "UnitCode", description = "Unit of `quantity`.")
            String unit,

            @Schema(
                    description =
                            "What is paid for, in the unit of the price, by the waste policy and in whole packs; told to 6 decimals, while"
                                    + " `amount` is of the exact quantity.",
                    format = "double",
                    minimum = "0",
                    maximum = "1e30",
                    examples = "27.125")
            Optional<Double> pricedQuantity,

            @Schema(
                    description = "How many packs that is, where the book has packs.",
                    format = "double",
                    minimum = "0",
                    maximum = "1e36",
                    examples = "3")
            Optional<Double> packs,

            @Schema(ref = "UnitCode", description = "What the price is per.")
            Optional<String> priceUnit,

            @Schema(description = "Price per unit: of the break that is reached.")
            Optional<MoneyAnswer> price,

            @Schema(description = "What it costs.") Optional<MoneyAnswer> amount,

            @Schema(description = "Whether `amount` is the entry's minimum.")
            boolean minimumCharged,

            @Schema(
                    description =
                            "The entry of the price book that fits: a JSON Pointer into the request after a #; left out where none"
                                    + " fits.",
                    maxLength = 60,
                    examples = "#/priceBook/items/3")
            Optional<String> entry,

            @Schema(description = "The entry's trade item number.", maxLength = Limits.GTIN_LENGTH)
            Optional<String> gtin,

            @Schema(description = "The supplier's own number.", maxLength = Limits.SUPPLIER_CODE)
            Optional<String> code) {}

    /**
     * What goods of sheet metal are made of.
     *
     * @param metal     what it is
     * @param thickness how thick
     * @param width     of the flat sheet
     * @param profile   its shape
     */
    @Schema(
            name = "QuotedMade",
            requiredProperties = {"metal", "thickness", "width"},
            description = "What goods of sheet metal are made of, as in the takeoff.")
    public record QuotedMade(
            @Schema(description = "Its name in the table of metals.", maxLength = Limits.METAL_LENGTH)
            String metal,

            @Schema(
                    description = "Thickness, in the takeoff's length unit.",
                    format = "double",
                    minimum = "0",
                    maximum = "1000",
                    examples = "0.0276")
            double thickness,

            @Schema(
                    description = "Width of the flat sheet, in the takeoff's length unit.",
                    format = "double",
                    minimum = "0",
                    maximum = "1e5",
                    examples = "21")
            double width,

            @Schema(description = "Its shape, where it has a name.", maxLength = Limits.ID_ANSWERED)
            Optional<String> profile) {}

    /**
     * Labour, priced.
     *
     * @param id             the book's name for it
     * @param per            the total's item
     * @param of             the total's kind
     * @param quantity       the total
     * @param unit           its unit
     * @param pricedQuantity the same in the unit of the price
     * @param priceUnit      what the price is per
     * @param price          per unit
     * @param amount         what it costs
     * @param minimumCharged whether that is the minimum
     * @param entry          where its price stands
     */
    @Schema(
            name = "QuotedLabour",
            requiredProperties = {"id", "per", "priceUnit", "price", "minimumCharged", "entry"},
            description = "Labour and what it costs. Without `amount` it has no price, and a finding says why.")
    public record LabourAnswer(
            @Schema(description = "The book's name for it.", maxLength = Limits.ID_LENGTH)
            String id,

            @Schema(description = "The item of the total it is priced by.", maxLength = Limits.ITEM_LENGTH)
            String per,

            @Schema(description = "The kind of the total, where kinds are told apart.", maxLength = Limits.ITEM_LENGTH)
            Optional<String> of,

            @Schema(
                    description = "The total, in the takeoff's own unit; left out where the takeoff does not have it.",
                    format = "double",
                    minimum = "0",
                    maximum = "1e12",
                    examples = "38")
            Optional<Double> quantity,

            @Schema(
                    description =
                            "Unit of `quantity`, where a price may be per such; as a UN/CEFACT Recommendation 20 code.",
                    maxLength = Limits.UNIT_CODE)
            Optional<String> unit,

            @Schema(
                    description = "The total in the unit of the price, told to 6 decimals.",
                    format = "double",
                    minimum = "0",
                    maximum = "1e30",
                    examples = "38")
            Optional<Double> pricedQuantity,

            @Schema(ref = "UnitCode", description = "What the price is per.")
            String priceUnit,

            @Schema(description = "Price per unit.") MoneyAnswer price,

            @Schema(description = "What it costs.") Optional<MoneyAnswer> amount,

            @Schema(description = "Whether `amount` is the entry's minimum.")
            boolean minimumCharged,

            @Schema(
                    description = "The entry of the price book: a JSON Pointer into the request after a #.",
                    maxLength = 60,
                    examples = "#/priceBook/labour/0")
            String entry) {}

    /**
     * A mark-up or a tax.
     *
     * @param id      the book's name for it
     * @param percent how much
     * @param on      of which sum
     * @param base    that sum
     * @param amount  what it comes to
     */
    @Schema(
            name = "QuotedShare",
            requiredProperties = {"id", "percent", "on", "base", "amount"},
            description = "A mark-up or a tax.")
    public record ShareAnswer(
            @Schema(description = "The book's name for it.", maxLength = Limits.ID_LENGTH)
            String id,

            @Schema(description = "How much, in per cent, as digits.", maxLength = 20, examples = "7.25")
            String percent,

            @Schema(
                    description = "Of which sum: `goods`, `labour`, `subtotal`, `running` or `total`.",
                    maxLength = 20,
                    examples = "total")
            String on,

            @Schema(description = "That sum.") MoneyAnswer base,

            @Schema(description = "What it comes to.") MoneyAnswer amount) {}

    /**
     * What a quote was priced with.
     *
     * @param waste    how much of an order line is paid for
     * @param rounding the rule
     * @param defaults what the request left out
     */
    @Schema(
            name = "QuoteUsed",
            requiredProperties = {"waste", "rounding", "defaults"},
            description = "What a quote was priced with.")
    public record QuoteUsed(
            @Schema(description = "How much of an order line is paid for, where its entry says nothing else.")
            WasteUsed waste,

            @Schema(description = "How amounts are rounded.", maxLength = 300)
            String rounding,

            @Schema(
                    description = "Pointers to what the price book left out, so that its default holds.",
                    maxItems = Limits.DEFAULTS)
            List<@Size(max = Limits.POINTER_LENGTH) String> defaults) {}

    /**
     * How much of an order line is paid for.
     *
     * @param basis   what of it counts
     * @param percent more for waste
     */
    @Schema(
            name = "WasteUsed",
            requiredProperties = {"basis", "percent"},
            description = "How much of an order line is paid for.")
    public record WasteUsed(
            @Schema(ref = "WasteBasis", description = "What of it counts.")
            WastePolicy.Basis basis,

            @Schema(
                    description = "More for waste, in per cent, as digits; 0 with `ordered`.",
                    maxLength = 20,
                    examples = "10")
            String percent) {}
}
