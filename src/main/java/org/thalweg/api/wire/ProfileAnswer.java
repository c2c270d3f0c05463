package org.thalweg.api.wire;

import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.Size;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.api.Limits;
import org.thalweg.api.wire.FlatAnswer.BendLine;
import org.thalweg.api.wire.FlatAnswer.HemsAnswer;

/**
 * A profile by itself.
 *
 * @param id        the caller's name for it
 * @param name      what it is called
 * @param legs      girths of its legs
 * @param bendsDeg  bends between them
 * @param hems      along its edges
 * @param flatWidth width of the flat sheet
 * @param bendLines where to bend it
 * @param section   its mould lines
 * @param lap       how far a piece lies over the one before
 * @param runs      its runs
 * @param findings  codes of what was found
 * @param working   how its figures came about
 */
@Schema(
        name = "Profile",
        requiredProperties = {
            "id",
            "name",
            "legs",
            "bendsDeg",
            "hems",
            "flatWidth",
            "bendLines",
            "section",
            "lap",
            "runs",
            "findings"
        },
        description = "A profile by itself, rolled out flat, and the pieces of its runs.")
public record ProfileAnswer(
        @Schema(description = "The caller's name for it.", maxLength = Limits.ID_LENGTH, examples = "p1")
        String id,

        @Schema(description = "What it is called.", maxLength = Limits.ID_LENGTH, examples = "fascia cover")
        String name,

        @Schema(description = "Girths of its legs, as given.", maxItems = Limits.TRIM_LEGS)
        List<MarkedLength> legs,

        @Schema(
                description = "Bends between the legs: above 0 up, toward the weather face, below 0 down.",
                maxItems = Limits.TRIM_LEGS)
        List<@Min(-Limits.HALF_TURN_DEG) @Max(Limits.HALF_TURN_DEG) Double> bendsDeg,

        HemsAnswer hems,

        @Schema(description = "Width of the flat sheet, hems and all: the stretch-out.")
        MarkedLength flatWidth,

        @Schema(description = "Where to bend it, from the first edge to the last.", maxItems = Limits.TRIM_LEGS + 1)
        List<BendLine> bendLines,

        @Schema(
                description =
                        "Its mould lines in section, from the first edge to the last: [across, up]; the first edge at 0, the"
                                + " first leg across, up off the weather face.",
                maxItems = Limits.TRIM_LEGS + 1)
        List<PlanePoint> section,

        @Schema(description = "How far a piece lies over the one before.")
        MarkedLength lap,

        @Schema(description = "Its runs, in the order asked for.", maxItems = Limits.RUNS)
        List<RunAnswer> runs,

        @Schema(
                description = "Codes of its findings, which stand in full in the answer's `findings`.",
                maxItems = Limits.CODES)
        List<@Size(max = 40) String> findings,

        @Schema(
                description = "How the figures of the flat sheet came about; answered with `working`.",
                maxItems = Limits.FLAT_WORKING)
        Optional<List<WorkingAnswer>> working) {

    /**
     * A run, divided.
     *
     * @param length in all
     * @param count  how many
     * @param pieces lengths of the pieces of one
     */
    @Schema(
            name = "CutRun",
            requiredProperties = {"length", "count", "pieces"},
            description = "A run of trim divided into pieces: less their laps they are the run.")
    public record RunAnswer(
            @Schema(description = "Its length in all.") MarkedLength length,

            @Schema(description = "How many such runs.", minimum = "1", maximum = "10000")
            int count,

            @Schema(
                    description =
                            "Lengths of the pieces of one run, in the order they are laid, each over the one before by the lap.",
                    maxItems = Limits.TRIM_PIECES)
            List<MarkedLength> pieces) {}
}
