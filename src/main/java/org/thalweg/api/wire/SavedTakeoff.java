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

/**
 * A takeoff that was answered and comes back.
 *
 * @param engine     who answered it
 * @param digest     of the request that made it
 * @param units      its units
 * @param orderLines the order
 * @param totals     its sums
 */
@PassesOver
@Schema(
        name = "SavedTakeoff",
        additionalProperties = Schema.True.class,
        requiredProperties = {"engine", "digest", "units", "orderLines"},
        description =
                "An answer of `/v1/takeoffs` or `/v1/layouts`, posted back whole or cut down to these members. Every other member, here"
                        + " and in its lines, is passed over unread. Its figures are taken digit for digit.")
public record SavedTakeoff(
        @Schema(
                ref = "Engine",
                description =
                        "Who answered it: this engine, or one of its generation (`thalweg/0.1.` and anything after).")
        @NotNull
        @Size(min = 1, max = Limits.ENGINE_LENGTH)
        String engine,

        @Schema(ref = "Digest", description = "The digest it came with.")
        @NotNull
        @Size(min = Limits.DIGEST_LENGTH, max = Limits.DIGEST_LENGTH)
        String digest,

        @Schema(description = "Its units.") @NotNull @Valid UnitsForm units,

        @Schema(description = "Its order lines; at most 500.") @NotNull @Size(max = Limits.QUOTED_LINES)
        List<@Valid SavedLine> orderLines,

        @Schema(
                description =
                        "Its totals, where the price book has labour; at most 200. Default: none, and labour that needs them has no price.")
        @Size(max = Limits.QUOTED_TOTALS)
        @Nullable
        List<@Valid SavedTotal> totals) {

    /**
     * An order line.
     *
     * @param item    what is ordered
     * @param made    what it is made of
     * @param net     what does its work
     * @param lap     what lies in laps
     * @param ordered all of it
     * @param unit    of these three
     * @param mass    of all that is ordered
     */
    @PassesOver
    @Schema(
            name = "SavedOrderLine",
            additionalProperties = Schema.True.class,
            requiredProperties = {"item", "net", "lap", "ordered", "unit"},
            description = "A line of the order; what else it has is passed over.")
    public record SavedLine(
            @Schema(description = "What is ordered; 1 to 40 characters.", examples = "panelScrew")
            @NotNull
            @Size(min = 1, max = Limits.ITEM_LENGTH)
            String item,

            @Schema(description = "What it is made of. Default: not goods of sheet metal.") @Nullable @Valid
            SavedMade made,

            @Schema(description = "What does its work, 0 to 1e12 in the line's unit, at most 6 decimals.") @NotNull
            WireDecimal net,

            @Schema(description = "What lies in laps and folds, likewise.") @NotNull
            WireDecimal lap,

            @Schema(description = "What is ordered, likewise.") @NotNull
            WireDecimal ordered,

            @Schema(ref = "UnitCode", description = "Unit of these three, as a UN/CEFACT Recommendation 20 code.")
            @NotNull
            @Size(min = 1, max = Limits.UNIT_CODE)
            String unit,

            @Schema(description = "Mass of all that is ordered. Default: not known, so that no price per mass fits.")
            @Nullable
            @Valid
            SavedMass mass) {}

    /**
     * What sheet metal goods are made of.
     *
     * @param metal     what it is
     * @param thickness how thick
     * @param width     of the flat sheet
     * @param profile   its shape
     */
    @PassesOver
    @Schema(
            name = "SavedMade",
            additionalProperties = Schema.True.class,
            requiredProperties = {"metal", "thickness", "width"},
            description = "What goods of sheet metal are made of.")
    public record SavedMade(
            @Schema(description = "Its name in the table of metals; 1 to 40 characters.", examples = "copper")
            @NotNull
            @Size(min = 1, max = Limits.METAL_LENGTH)
            String metal,

            @Schema(
                    description = "Thickness in the takeoff's length unit; 0 to 1000.",
                    format = "double",
                    examples = "0.7")
            @NotNull
            @Min(0)
            @Max(Limits.SAVED_THICKNESS)
            Double thickness,

            @Schema(description = "Width of the flat sheet.") @NotNull @Valid
            SavedWidth width,

            @Schema(description = "Its shape, where it has a name; 1 to 1100 characters. Default: none.")
            @Size(min = 1, max = Limits.ID_ANSWERED)
            @Nullable
            String profile) {}

    /**
     * A width that was answered with its tape mark.
     *
     * @param value the width
     */
    @PassesOver
    @Schema(
            name = "SavedWidth",
            additionalProperties = Schema.True.class,
            requiredProperties = "value",
            description = "A width as it was answered.")
    public record SavedWidth(
            @Schema(
                    description = "The width in the takeoff's length unit; 0 to 100000.",
                    format = "double",
                    examples = "570")
            @NotNull
            @Min(0)
            @Max(Limits.SAVED_WIDTH)
            Double value) {}

    /**
     * A mass as it was answered.
     *
     * @param value the number
     * @param unit  lb or kg
     */
    @PassesOver
    @Schema(
            name = "SavedMass",
            additionalProperties = Schema.True.class,
            requiredProperties = {"value", "unit"},
            description = "A mass as it was answered.")
    public record SavedMass(
            @Schema(description = "The number, 0 to 1e12, at most 6 decimals.") @NotNull
            WireDecimal value,

            @Schema(description = "`lb` or `kg`; 1 to 20 characters.", examples = "kg")
            @NotNull
            @Size(min = 1, max = Limits.SYMBOL_LENGTH)
            String unit) {}

    /**
     * A total.
     *
     * @param item     of what
     * @param of       of which kind of it
     * @param quantity how much
     * @param unit     in which unit
     */
    @PassesOver
    @Schema(
            name = "SavedTotal",
            additionalProperties = Schema.True.class,
            requiredProperties = {"item", "quantity", "unit"},
            description = "A total; what else it has is passed over.")
    public record SavedTotal(
            @Schema(description = "What is summed; 1 to 40 characters.", examples = "panels")
            @NotNull
            @Size(min = 1, max = Limits.ITEM_LENGTH)
            String item,

            @Schema(
                    description = "Which kind of it, where kinds are told apart; 1 to 40 characters. Default: none.",
                    examples = "eave")
            @Size(min = 1, max = Limits.ITEM_LENGTH)
            @Nullable
            String of,

            @Schema(description = "How much, 0 to 1e12, at most 6 decimals.") @NotNull
            WireDecimal quantity,

            @Schema(ref = "UnitCode", description = "Its unit as a UN/CEFACT Recommendation 20 code.")
            @NotNull
            @Size(min = 1, max = Limits.UNIT_CODE)
            String unit) {}
}
