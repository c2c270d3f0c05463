package org.thalweg.api.wire;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.Limits;
import org.thalweg.pricing.WastePolicy;
import org.thalweg.units.LengthUnit;

/**
 * A price book.
 *
 * @param currency of every price
 * @param units    of its lengths
 * @param waste    how much of an order line is paid for
 * @param items    goods
 * @param labour   work
 * @param markups  what is added for the trade
 * @param taxes    what is added for the state
 */
@Schema(
        name = "PriceBook",
        requiredProperties = {"currency", "items"},
        additionalProperties = Schema.False.class,
        description =
                "Prices. An amount is quantity times price, both exact, rounded once, half up, to the currency's minor unit; sums are"
                        + " sums of printed amounts, and percentages are taken of them.")
public record PriceBookForm(
        @Schema(ref = "Currency", description = "The currency of every price: a code of ISO 4217.")
        @NotNull
        @Size(min = Limits.CURRENCY_CODE, max = Limits.CURRENCY_CODE)
        String currency,

        @Schema(
                description =
                        "Units of the book's thicknesses and widths, which need not be those of the takeoff. Default: none; needed where the"
                                + " book has such.")
        @Nullable
        @Valid
        BookUnits units,

        @Schema(description = "How much of an order line is paid for. Default: what the takeoff orders.")
        @Nullable
        @Valid
        WasteForm waste,

        @Schema(
                description =
                        "Goods; at most 5000 entries, in any order. Of the entries that fit an order line the one that says most about what"
                                + " it is made of has its price; of those that say as much, one that gives the profile, then the width, then the"
                                + " thickness. No two may say the same.")
        @NotNull
        @Size(max = Limits.BOOK_ITEMS)
        List<@Valid BookItemForm> items,

        @Schema(description = "Work that is priced by totals of the takeoff; at most 100 entries. Default: none.")
        @Size(max = Limits.LABOUR_ITEMS)
        @Nullable
        List<@Valid LabourForm> labour,

        @Schema(description = "Mark-ups, in the order they are added; at most 20. Default: none.")
        @Size(max = Limits.MARKUPS)
        @Nullable
        List<@Valid MarkupForm> markups,

        @Schema(description = "Taxes; at most 20. No tax is taxed. Default: none.") @Size(max = Limits.TAXES) @Nullable
        List<@Valid TaxForm> taxes) {

    /**
     * The units of a book.
     *
     * @param length of thicknesses and widths
     */
    @Schema(
            name = "BookUnits",
            requiredProperties = "length",
            additionalProperties = Schema.False.class,
            description = "Units of a price book.")
    public record BookUnits(
            @Schema(ref = "LengthUnit", description = "Unit of every length that is a bare number.") @NotNull
            LengthUnit length) {}

    /**
     * How much of an order line is paid for.
     *
     * @param basis   what of it counts
     * @param percent more for waste
     */
    @Schema(
            name = "WastePolicy",
            requiredProperties = "basis",
            additionalProperties = Schema.False.class,
            description = "How much of an order line is paid for.")
    public record WasteForm(
            @Schema(
                    ref = "WasteBasis",
                    description =
                            "`ordered`: all that is ordered. `net`: `net` and `lap` of the line, and `percent` of them.")
            @NotNull
            WastePolicy.Basis basis,

            @Schema(
                    description =
                            "More for waste in place of the order's own, in per cent of net and laps; only with `net`. 0 to 1000, at most 4"
                                    + " decimals. Default: 0.")
            @Nullable
            WireDecimal percent) {}

    /**
     * What the book says of one sort of goods.
     *
     * @param item      the key of the order lines it is for
     * @param metal     of which metal
     * @param thickness how thick
     * @param width     how wide the flat sheet
     * @param profile   of which shape
     * @param unit      what the price is per
     * @param price     per unit
     * @param breaks    prices by quantity
     * @param pack      quantity in a pack
     * @param minimum   the least a line costs
     * @param waste     how much of a line is paid for
     * @param gtin      trade item number
     * @param code      the supplier's own number
     */
    @Schema(
            name = "BookItem",
            requiredProperties = {"item", "unit"},
            additionalProperties = Schema.False.class,
            description = "What a price book says of one sort of goods. Either `price` or `breaks`.")
    public record BookItemForm(
            @Schema(
                    description = "The key of the order lines it is for, as `panel`; 1 to 40 characters.",
                    examples = "panel")
            @NotNull
            @Size(min = 1, max = Limits.ITEM_LENGTH)
            String item,

            @Schema(
                    description =
                            "Only for goods of this metal, by its name in the table of metals; 1 to 40 characters. Default: any.",
                    examples = "copper")
            @Size(min = 1, max = Limits.METAL_LENGTH)
            @Nullable
            String metal,

            @Schema(
                    description =
                            "Only for sheet of this thickness: one that the takeoff would print as it prints its own. 0.0001 m to 0.005 m in"
                                    + " the book's length unit. Default: any.")
            @Nullable
            WireLength thickness,

            @Schema(
                    description =
                            "Only for flat sheet of this width, likewise. 0.001 m to 5 m in the book's length unit. Default: any.")
            @Nullable
            WireLength width,

            @Schema(
                    description =
                            "Only for this shape, by its name; letter case counts. 1 to 100 characters. Default: any.",
                    examples = "ridge")
            @Size(min = 1, max = Limits.ID_LENGTH)
            @Nullable
            String profile,

            @Schema(
                    ref = "UnitCode",
                    description =
                            "What the price is per, as a UN/CEFACT Recommendation 20 code that measures what the order line does: a length, an"
                                    + " area, a count; or a mass, for goods of sheet metal.")
            @NotNull
            @Size(min = 1, max = Limits.UNIT_CODE)
            String unit,

            @Schema(description = "Price per unit, in the book's currency. 0 to 1e9, at most 6 decimals.") @Nullable
            WireDecimal price,

            @Schema(
                    description =
                            "Prices by quantity, from 0 up without a gap, 1 to 20: the whole quantity has the price of the last one it"
                                    + " reaches. Default: one price.")
            @Size(min = 1, max = Limits.BREAKS)
            @Nullable
            List<@Valid BreakForm> breaks,

            @Schema(
                    description =
                            "Quantity in one pack, in the unit of the price: what is paid for is whole packs. 0.000001 to 1e9, at most 6"
                                    + " decimals. Default: sold by any quantity.")
            @Nullable
            WireDecimal pack,

            @Schema(
                    description =
                            "The least a line costs that has anything on it, in the book's currency. 0 to 1e9, at most 6 decimals. Default: 0.")
            @Nullable
            WireDecimal minimum,

            @Schema(description = "How much of a line is paid for. Default: as the book says.") @Nullable @Valid
            WasteForm waste,

            @Schema(
                    description =
                            "Global Trade Item Number (GS1) of 8, 12, 13 or 14 digits, the last of which checks the others; answered with"
                                    + " its lines. Default: none.",
                    examples = "6291041500213")
            @Size(min = 1, max = Limits.GTIN_LENGTH)
            @Nullable
            String gtin,

            @Schema(
                    description =
                            "The supplier's own number; answered with its lines. 1 to 80 characters. Default: none.",
                    examples = "PS-0276-21")
            @Size(min = 1, max = Limits.SUPPLIER_CODE)
            @Nullable
            String code) {}

    /**
     * A price from a quantity on.
     *
     * @param from  the quantity
     * @param below where the next one begins
     * @param price per unit
     */
    @Schema(
            name = "PriceBreak",
            requiredProperties = {"from", "price"},
            additionalProperties = Schema.False.class,
            description = "A price that holds from a quantity on.")
    public record BreakForm(
            @Schema(
                    description =
                            "From this quantity on, in the unit of the price: 0 for the first, more than the one before for the others. 0 to"
                                    + " 1e12, at most 6 decimals.")
            @NotNull
            WireDecimal from,

            @Schema(description = "Where the next begins, which then must be there. Default: not said.") @Nullable
            WireDecimal below,

            @Schema(description = "Price per unit, in the book's currency. 0 to 1e9, at most 6 decimals.") @NotNull
            WireDecimal price) {}

    /**
     * Work, priced by a total.
     *
     * @param id      the book's name for it
     * @param per     the total's item
     * @param of      the total's kind
     * @param unit    what the price is per
     * @param price   per unit
     * @param minimum the least it costs
     */
    @Schema(
            name = "Labour",
            requiredProperties = {"id", "per", "unit", "price"},
            additionalProperties = Schema.False.class,
            description = "Work that is priced by a total of the takeoff.")
    public record LabourForm(
            @Schema(
                    description = "The book's name for it, its own among the labour; 1 to 100 characters.",
                    examples = "lay panels")
            @NotNull
            @Size(min = 1, max = Limits.ID_LENGTH)
            String id,

            @Schema(
                    description =
                            "The item of the total, as `panels` or `mitreLength`; 1 to 40 characters. A total the takeoff does not have is a"
                                    + " line without an amount.",
                    examples = "panels")
            @NotNull
            @Size(min = 1, max = Limits.ITEM_LENGTH)
            String per,

            @Schema(
                    description =
                            "The kind of the total, where kinds are told apart, as `eave` of `fasteners`; 1 to 40 characters. Default: the"
                                    + " total of all kinds.",
                    examples = "eave")
            @Size(min = 1, max = Limits.ITEM_LENGTH)
            @Nullable
            String of,

            @Schema(
                    ref = "UnitCode",
                    description =
                            "What the price is per, as a UN/CEFACT Recommendation 20 code that measures what the total does.")
            @NotNull
            @Size(min = 1, max = Limits.UNIT_CODE)
            String unit,

            @Schema(description = "Price per unit, in the book's currency. 0 to 1e9, at most 6 decimals.") @NotNull
            WireDecimal price,

            @Schema(
                    description =
                            "The least it costs where there is anything to do, in the book's currency. 0 to 1e9, at most 6 decimals."
                                    + " Default: 0.")
            @Nullable
            WireDecimal minimum) {}

    /** The sums a mark-up may be taken of. */
    public enum MarkupOn {
        GOODS,
        LABOUR,
        SUBTOTAL,
        RUNNING
    }

    /** The sums a tax may be taken of. */
    public enum TaxOn {
        GOODS,
        LABOUR,
        SUBTOTAL,
        TOTAL
    }

    /**
     * A mark-up.
     *
     * @param id      the book's name for it
     * @param percent how much
     * @param on      of which sum
     */
    @Schema(
            name = "Markup",
            requiredProperties = {"id", "percent"},
            additionalProperties = Schema.False.class,
            description = "A mark-up.")
    public record MarkupForm(
            @Schema(
                    description = "The book's name for it, its own among the mark-ups; 1 to 100 characters.",
                    examples = "overhead")
            @NotNull
            @Size(min = 1, max = Limits.ID_LENGTH)
            String id,

            @Schema(description = "How much, in per cent. 0 to 1000, at most 4 decimals.") @NotNull
            WireDecimal percent,

            @Schema(
                    ref = "MarkupOn",
                    description =
                            "Of which sum: all goods, all labour, both, or both and the mark-ups before this one. Default: running.")
            @Nullable
            MarkupOn on) {}

    /**
     * A tax.
     *
     * @param id      the book's name for it
     * @param percent how much
     * @param on      of which sum
     */
    @Schema(
            name = "Tax",
            requiredProperties = {"id", "percent"},
            additionalProperties = Schema.False.class,
            description = "A tax.")
    public record TaxForm(
            @Schema(
                    description = "The book's name for it, its own among the taxes; 1 to 100 characters.",
                    examples = "sales tax")
            @NotNull
            @Size(min = 1, max = Limits.ID_LENGTH)
            String id,

            @Schema(description = "How much, in per cent. 0 to 1000, at most 4 decimals.") @NotNull
            WireDecimal percent,

            @Schema(
                    ref = "TaxOn",
                    description =
                            "Of which sum: all goods, all labour, both, or both and all mark-ups. Default: total.")
            @Nullable
            TaxOn on) {}
}
