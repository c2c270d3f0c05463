package org.thalweg.api.wire;

import jakarta.validation.constraints.Size;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.api.Limits;

/**
 * A roof as the service reads it.
 *
 * @param engine   who answered
 * @param digest   which request
 * @param units    the caller's units
 * @param used     the figures it was read with
 * @param roof     planes and edges
 * @param findings what a crew should know of it
 * @param cautions what holds for every roof
 */
@Schema(
        name = "RoofAnswer",
        requiredProperties = {"engine", "digest", "units", "used", "roof", "findings", "cautions"},
        description = "A roof as the service reads it: planes, named edges, findings.")
public record RoofAnswer(
        @Schema(ref = "Engine", description = "Who answered.")
        String engine,

        @Schema(ref = "Digest", description = "Which request this answers.")
        String digest,

        @Schema(description = "The request's units; they hold for every figure of this answer.")
        UnitsForm units,

        @Schema(description = "The figures the roof was read with, given or default.")
        Used used,

        @Schema(description = "The roof: planes and edges.") ReadRoof roof,

        @Schema(
                description = "What a crew should know of this roof, in the order of the planes and edges.",
                maxItems = Limits.FINDINGS)
        List<FindingAnswer> findings,

        @Schema(description = "What holds for every roof.", maxItems = Limits.CAUTIONS)
        List<CautionAnswer> cautions) {

    /**
     * The figures the roof was read with.
     *
     * @param tolerance    corners this close are one
     * @param minimumSlope flattest slope the system allows
     * @param defaults     which of them the request left out
     */
    @Schema(
            name = "RoofUsed",
            requiredProperties = {"tolerance", "minimumSlope", "defaults"},
            description = "The figures the roof was read with, given or default.")
    public record Used(
            @Schema(
                    description = "Corners this close are one corner; in the request's length unit.",
                    format = "double",
                    minimum = "0",
                    maximum = "100")
            double tolerance,

            @Schema(description = "Flattest slope the panel system allows.")
            RiseAndRun minimumSlope,

            @Schema(
                    description =
                            "Pointers to what the request left out and a default stands for, as" + " `#/tolerance`.",
                    maxItems = Limits.DEFAULTS)
            List<@Size(max = 200) String> defaults) {}
}
