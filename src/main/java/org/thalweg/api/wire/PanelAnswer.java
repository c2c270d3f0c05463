package org.thalweg.api.wire;

import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.api.Limits;
import org.thalweg.panel.Cut;

/**
 * One panel to cut.
 *
 * @param mark        what is written on it
 * @param plane       which plane it lies on
 * @param strip       which strip
 * @param piece       which piece of the strip
 * @param place       where it lies on the plane
 * @param width       finished width
 * @param ripped      whether it is narrower than the cover
 * @param blankLength what is ordered
 * @param finished    what shows
 * @param cut         what is cut
 * @param cuts        marks
 * @param offcuts     what is left of the blank
 * @param world       what shows, in the world
 */
@Schema(
        name = "PanelAnswer",
        requiredProperties = {
            "mark",
            "plane",
            "strip",
            "piece",
            "place",
            "width",
            "ripped",
            "blankLength",
            "finished",
            "cut",
            "cuts"
        },
        description = "One panel to cut. Panel frame: across from the left rib, 0, to the right rib, the cover; along"
                + " from the blank's lower square end upward, where a tape is hooked.")
public record PanelAnswer(
        @Schema(
                description = "What is written on the panel: its plane, its strip and, where the strip has several"
                        + " pieces, the piece.",
                maxLength = Limits.ID_ANSWERED + 24,
                examples = "south-7.2")
        String mark,

        @Schema(description = "The plane it lies on.", maxLength = Limits.ID_ANSWERED, examples = "south")
        String plane,

        @Schema(description = "Its strip, 1 for the first one laid.", minimum = "1", maximum = "1e6")
        int strip,

        @Schema(description = "Its piece, 1 for the lowest of its strip.", minimum = "1", maximum = "1e6")
        int piece,

        @Schema(
                ref = "PlanePoint",
                description = "Where the panel frame's origin lies on the plane, as [across, up]; add it to a corner of"
                        + " the panel to get the plane's coordinates.")
        PlanePoint place,

        @Schema(description = "Width of the finished piece; at most the cover.")
        MarkedLength width,

        @Schema(description = "Whether the finished piece is narrower than the cover, so that a side is ripped.")
        boolean ripped,

        @Schema(
                description = "Length of the square-ended blank as ordered: the cut outline's extent along, rounded up"
                        + " to the order increment.")
        MarkedLength blankLength,

        @Schema(description = "The piece as it shows on the roof; panel frame.")
        PanelShape finished,

        @Schema(description = "The piece as cut, with hems, turn-ups and laps; panel frame.")
        PanelShape cut,

        @Schema(
                description =
                        "The marks: every straight cut, lower ends first, then upper ends, left and right rips (none"
                                + " where the panel ends on its rib);"
                                + " within each from the left.",
                maxItems = Limits.CORNERS_ANSWERED)
        List<CutAnswer> cuts,

        @Schema(
                description = "What is left of the blank, the largest first; panel frame. Only with `offcuts` in"
                        + " `include`.",
                maxItems = Limits.CORNERS_ANSWERED)
        Optional<List<PanelShape>> offcuts,

        @Schema(
                description = "The finished outline's corners in the world, in the same order. Only with `world` in"
                        + " `include`.",
                maxItems = Limits.CORNERS_ANSWERED)
        Optional<List<WorldPoint>> world) {

    /**
     * A shape on a panel.
     *
     * @param outline  corners
     * @param openings holes
     */
    @Schema(
            name = "PanelShape",
            requiredProperties = {"outline", "openings"},
            description = "A shape on a panel, in the request's length unit.")
    public record PanelShape(
            @Schema(
                    description =
                            "Corners as [across, along], counter-clockwise from the lowest, of equally low ones the leftmost.",
                    maxItems = Limits.CORNERS_ANSWERED)
            List<PlanePoint> outline,

            @Schema(description = "Holes in it, as for a pipe between two ribs.", maxItems = Limits.CORNERS_ANSWERED)
            List<PanelOpening> openings) {}

    /**
     * A hole in a shape.
     *
     * @param outline corners
     */
    @Schema(
            name = "PanelOpening",
            requiredProperties = {"outline"},
            description = "A hole in a shape on a panel.")
    public record PanelOpening(
            @Schema(description = "Corners as [across, along], clockwise.", maxItems = Limits.CORNERS_ANSWERED)
            List<PlanePoint> outline) {}

    /**
     * One straight cut.
     *
     * @param end      which end or side of the metal it makes
     * @param edge     the roof edge it is for
     * @param from     its left or lower end
     * @param to       its right or upper end
     * @param left     mark on the left rib
     * @param right    mark on the right rib
     * @param rise     how far one end lies further up than the other
     * @param notch    how deep the hem is notched at a rib
     * @param mitreDeg angle from square
     */
    @Schema(
            name = "CutAnswer",
            requiredProperties = {"end", "edge", "from", "to", "rise", "mitreDeg"},
            description = "One straight cut of a panel, as marked on the flat blank.")
    public record CutAnswer(
            @Schema(ref = "CutEnd", description = "Which end or side of the metal the cut makes.")
            Cut.End end,

            @Schema(
                    description =
                            "Name of the roof edge the cut is for; `lap` where the panel goes under the next piece"
                                    + " or over the one below.",
                    maxLength = 20,
                    examples = "V1")
            String edge,

            @Schema(ref = "PlanePoint", description = "Its left end (of a rip: lower end), as [across, along].")
            PlanePoint from,

            @Schema(ref = "PlanePoint", description = "Its right end (of a rip: upper end), as [across, along].")
            PlanePoint to,

            @Schema(
                    description = "Mark on the left rib, measured from the lower square end; absent when the cut stops"
                            + " short of that rib.")
            Optional<MarkedLength> left,

            @Schema(
                    description = "Mark on the right rib, measured from the lower square end; absent when the cut stops"
                            + " short of that rib.")
            Optional<MarkedLength> right,

            @Schema(description = "How far one end lies further up than the other; 0 for a square cut.")
            MarkedLength rise,

            @Schema(
                    description = "Angle from square, degrees, 0 to 90; 90 for a rip.",
                    format = "double",
                    minimum = "0",
                    maximum = "90",
                    examples = "48.1897")
            double mitreDeg,

            @Schema(
                    description =
                            "How far along a rib the fold of the hem or turn-up lies from this cut, up from a lower end, down"
                                    + " from an upper one: the metal beyond the fold / cos φ. At each rib the hem is notched from the"
                                    + " one to the other. Left out where nothing is folded, and for rips, which cross no rib.")
            Optional<MarkedLength> notch) {}
}
