package org.thalweg.api.wire;

import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.api.Limits;
import org.thalweg.api.problem.Figure;

/**
 * One line of an order.
 *
 * @param item     what is ordered
 * @param made     what it is made of
 * @param uses     what it is for
 * @param net      what does its work
 * @param lap      what lies under laps and in folds
 * @param waste    what is lost or left over
 * @param ordered  what to order
 * @param rack     what lies on the rack
 * @param unit     of these four and of the uses
 * @param pieces   how many pieces
 * @param bars     what they are cut from
 * @param packs    how many packs
 * @param mass     of all that is ordered
 */
@Schema(
        name = "OrderLine",
        requiredProperties = {"item", "uses", "net", "lap", "waste", "ordered", "unit"},
        description =
                "One line of the order. `net`, `lap` and `waste` add up to `ordered` and `rack` to the last digit.")
public record OrderLineAnswer(
        @Schema(
                description =
                        "What is ordered: `panel` or `coil` (as long as all blanks together), `valleyPan`, `trim`,"
                                + " `cleat`, `clip`, `panelScrew` (through panels, seen from outside), `deckScrew` (under the panels),"
                                + " `rivet`, `closure`, `sealantTape`, `sealant`, `underlayment`, `iceBarrier`. The list is open.",
                maxLength = Limits.ITEM_LENGTH,
                examples = "panelScrew")
        String item,

        @Schema(description = "What it is made of, for goods of sheet metal.")
        Optional<Made> made,

        @Schema(
                description =
                        "What it is for, in the order of the lists it is counted from; these add up to `net` to the last"
                                + " digit.",
                maxItems = Limits.EDGES)
        List<Use> uses,

        @Schema(
                description =
                        "What shows or holds. Of panels: the roof they show, as a length of whole panels. Of pans:"
                                + " their valleys; of trims: their edges; of underlayment: the roof; of an ice barrier: all that is rolled out.",
                format = "double",
                minimum = "0",
                maximum = "1e12",
                examples = "480")
        double net,

        @Schema(
                description = "What lies under laps and in hems and turn-ups.",
                format = "double",
                minimum = "0",
                maximum = "1e12",
                examples = "24")
        double lap,

        @Schema(
                description = "What is cut off, lost or left over, packs filled up.",
                format = "double",
                minimum = "0",
                maximum = "1e12",
                examples = "12.5")
        double waste,

        @Schema(description = "What to order.", format = "double", minimum = "0", maximum = "1e12", examples = "516.5")
        double ordered,

        @Schema(
                description =
                        "Unit as a UN/CEFACT Recommendation 20 code: `C62` pieces, else the request's length or area"
                                + " unit, as `INH`, `MTR`, `FTK`.",
                maxLength = 3,
                examples = "INH")
        String unit,

        @Schema(
                description = "What of it lies on the rack and is not ordered; where it is cut from stock.",
                format = "double",
                minimum = "0",
                maximum = "1e12",
                examples = "96")
        Optional<Double> rack,

        @Schema(
                description = "How many pieces it is cut in, where it is cut.",
                minimum = "1",
                maximum = "1e9",
                examples = "38")
        Optional<Long> pieces,

        @Schema(
                description = "What they are cut from, in the order of the stock; where they are cut from stock.",
                maxItems = Limits.STOCK_SORTS)
        Optional<List<BarsTaken>> bars,

        @Schema(
                description = "How many packs: of `ordering`, rolls, cartridges.",
                minimum = "1",
                maximum = "1e9",
                examples = "2")
        Optional<Long> packs,

        @Schema(description = "Mass of all that is ordered, for goods of sheet metal.")
        Optional<Figure> mass) {

    /**
     * What sheet metal goods are made of.
     *
     * @param metal     what it is
     * @param thickness how thick
     * @param width     of the flat sheet
     * @param profile   its shape
     */
    @Schema(
            name = "Made",
            requiredProperties = {"metal", "thickness", "width"},
            description = "What goods of sheet metal are made of.")
    public record Made(
            @Schema(
                    description = "Its name in the table of metals.",
                    maxLength = Limits.METAL_LENGTH,
                    examples = "galvanized-steel")
            String metal,

            @Schema(
                    description = "Thickness, in the request's length unit.",
                    format = "double",
                    minimum = "0",
                    maximum = "100",
                    examples = "0.0276")
            double thickness,

            @Schema(description = "Width of the flat sheet or coil.")
            MarkedLength width,

            @Schema(description = "The shape it is braked to, where it has a name.", maxLength = Limits.ID_ANSWERED)
            Optional<String> profile) {}

    /**
     * Bars of one sort.
     *
     * @param stock  which
     * @param length of one
     * @param count  how many
     */
    @Schema(
            name = "BarsTaken",
            requiredProperties = {"stock", "length", "count"},
            description = "Bars of one sort that are cut up, bought or from the rack.")
    public record BarsTaken(
            @Schema(description = "Id of the stock.", maxLength = Limits.ID_LENGTH, examples = "ten-foot")
            String stock,

            @Schema(description = "Length of one.") MarkedLength length,

            @Schema(description = "How many.", format = "int32", minimum = "1", maximum = "100000", examples = "7")
            int count) {}

    /**
     * What part of a line is for.
     *
     * @param use      a plane, a valley, a kind of row or of edge
     * @param quantity how much
     */
    @Schema(
            name = "Use",
            requiredProperties = {"use", "quantity"},
            description = "What part of an order line is for.")
    public record Use(
            @Schema(
                    description =
                            "The id of a plane, the name of a valley or an edge, what a row holds down, or the item it"
                                    + " belongs to.",
                    maxLength = Limits.ID_ANSWERED,
                    examples = "south")
            String use,

            @Schema(
                    description = "How much of `net`, in the line's unit.",
                    format = "double",
                    minimum = "0",
                    maximum = "1e12",
                    examples = "96")
            double quantity) {}
}
