package org.thalweg.api.wire;

import jakarta.validation.constraints.Size;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.api.Limits;
import org.thalweg.api.wire.TrimsUsed.SheetUsed;
import org.thalweg.api.wire.TrimsUsed.StockUsed;

/**
 * Trims, laid out alone.
 *
 * @param engine   who answered
 * @param digest   which request
 * @param units    the caller's units
 * @param used     the figures they were laid out with
 * @param trims    of the roof
 * @param profiles by themselves
 * @param cuts     their pieces cut from stock
 * @param findings what a crew should know of them
 * @param cautions what holds for every roof
 */
@Schema(
        name = "TrimsAnswer",
        requiredProperties = {"engine", "digest", "units", "used", "trims", "profiles", "findings", "cautions"},
        description = "Trims laid out: of a roof the same as a layout of it says of them, or profiles by themselves.")
public record TrimsAnswer(
        @Schema(ref = "Engine") String engine,
        @Schema(ref = "Digest") String digest,

        @Schema(description = "The request's units; they hold for every figure of this answer.")
        UnitsForm units,

        AloneUsed used,

        @Schema(
                description = "The trim of every edge of the roof that gets one, in the order of the edges.",
                maxItems = Limits.EDGES)
        List<TrimAnswer> trims,

        @Schema(description = "The profiles, in the order of the request.", maxItems = Limits.PROFILES)
        List<ProfileAnswer> profiles,

        @Schema(
                description = "Goods of sheet metal cut from stock, by item and width; where `cutting` was given.",
                maxItems = Limits.ORDER_LINES)
        Optional<List<SheetCutAnswer>> cuts,

        @Schema(description = "What a crew should know of them.", maxItems = Limits.FINDINGS)
        List<FindingAnswer> findings,

        @Schema(description = "What holds for every roof.", maxItems = Limits.CAUTIONS)
        List<CautionAnswer> cautions) {

    /**
     * The figures trims were laid out with.
     *
     * @param tolerance corners this close are one
     * @param trims     what the edges of the roof got
     * @param sheet     what profiles are bent of
     * @param stock     what their pieces are made of
     * @param cutting        what goods of sheet metal were cut from
     * @param tapeRule  how tape marks are rounded
     * @param defaults  which of them the request left out
     */
    @Schema(
            name = "TrimsAloneUsed",
            requiredProperties = {"tapeRule", "defaults"},
            description =
                    "The figures the trims were laid out with, given or default: of a roof `tolerance` and `trims`, of"
                            + " profiles `sheet` and `stock`.")
    public record AloneUsed(
            @Schema(ref = "PositiveLength", description = "Corners this close are one corner.")
            Optional<Double> tolerance,

            @Schema(description = "What the edges of the roof got.")
            Optional<TrimsUsed> trims,

            @Schema(description = "What profiles are bent of.")
            Optional<SheetUsed> sheet,

            @Schema(description = "What their pieces are made of.")
            Optional<StockUsed> stock,

            @Schema(description = "What goods of sheet metal were cut from, when it was given.")
            Optional<CuttingUsed> cutting,

            @Schema(description = "How tape marks are rounded.", maxLength = 200)
            String tapeRule,

            @Schema(
                    description = "Pointers to what the request left out and a default stands for.",
                    maxItems = Limits.DEFAULTS)
            List<@Size(max = 200) String> defaults) {}
}
