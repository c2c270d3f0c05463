package org.thalweg.api.wire;

import jakarta.validation.Valid;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.Map;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.Limits;

/**
 * How a job is bought.
 *
 * @param formed who forms the panels
 * @param coil   what coil they are formed from
 * @param items  how single items are bought
 */
@Schema(
        name = "Ordering",
        additionalProperties = Schema.False.class,
        description = "How the job is bought: what the order lines are made for.")
public record OrderingForm(
        @Schema(
                ref = "Formed",
                description = "Who forms the panels: they are ordered cut to length, or as coil. Default: bySupplier.")
        @Nullable
        Formed formed,

        @Schema(
                description = "The coil panels are formed from on site: the order is whole coils. Only with `onSite`."
                        + " Default: sold by the length.")
        @Nullable
        @Valid
        CoilForm coil,

        @Schema(
                maxProperties = Limits.ORDER_ITEMS,
                description =
                        "How single items are bought, by their key, as `panelScrew`. Default: as many as are needed,"
                                + " sold singly.")
        @Size(max = Limits.ORDER_ITEMS)
        @Nullable
        Map<@Size(min = 1, max = Limits.ITEM_LENGTH) String, @Valid ItemForm> items) {

    /**
     * A coil, wound tight.
     *
     * @param outerDiameter over the outermost turn
     * @param coreDiameter  of the hole
     */
    @Schema(
            name = "Coil",
            requiredProperties = {"outerDiameter", "coreDiameter"},
            additionalProperties = Schema.False.class,
            description = "A coil of sheet, wound tight; its length is that of the metal in its ring.")
    public record CoilForm(
            @Schema(
                    description =
                            "Diameter over the outermost turn, more than that of the core. 0.1 m to 3 m in the request's"
                                    + " length unit.")
            @NotNull
            WireLength outerDiameter,

            @Schema(description = "Diameter of the hole. 0.05 m to 3 m in the request's length unit.") @NotNull
            WireLength coreDiameter) {}

    /** Who forms the panels. */
    public enum Formed {
        BY_SUPPLIER,
        ON_SITE
    }

    /**
     * How one item is bought.
     *
     * @param extraPercent more for what is lost
     * @param packCount    pieces in a pack
     * @param packLength   length in a pack
     */
    @Schema(name = "OrderRule", additionalProperties = Schema.False.class, description = "How one item is bought.")
    public record ItemForm(
            @Schema(
                    description =
                            "What is ordered more for what is lost at work, in per cent of what is needed; read to a"
                                    + " hundredth. 0 to 100. Default: 0.",
                    format = "double",
                    examples = "5")
            @Min(0)
            @Max(Limits.MOST_EXTRA)
            @Nullable
            Double extraPercent,

            @Schema(
                    description =
                            "Pieces in a pack, for items that are counted: the order is whole packs. 1 to 1000000."
                                    + " Default: sold singly.",
                    examples = "250")
            @Min(1)
            @Max(Limits.MOST_IN_A_PACK)
            @Nullable
            Long packCount,

            @Schema(
                    description =
                            "Length of a roll or a bar, for items that are measured by length: the order is whole ones."
                                    + " 0.1 m to 10000 m in the request's length unit. Default: sold by the length.")
            @Nullable
            WireLength packLength) {}
}
