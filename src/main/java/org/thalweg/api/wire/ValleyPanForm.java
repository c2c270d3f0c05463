package org.thalweg.api.wire;

import jakarta.validation.constraints.Size;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.Limits;

/**
 * The pan of a valley.
 *
 * @param coilWidth       width of the flat sheet
 * @param ribLeg          girth of one leg of the rib
 * @param edgeReturn      girth of the return along each outer edge
 * @param holdBack        how far panels stay off the low
 * @param cover           how far the pan reaches under them
 * @param widening        how much wider the open width gets down the valley
 * @param pieceLength     longest piece
 * @param shortestPiece   shortest piece
 * @param lap             how far a piece lies over the one below
 * @param eaveProjection  how far the flats run past an eave
 * @param wallTurnUp      how far they are turned up at a wall
 * @param ribPastEave     how far the rib runs past the foot
 * @param ribPastTop      how far it runs past the head
 * @param ribPastValley   how far it runs past another valley
 * @param fastenerSpacing how far apart the pan's own fasteners stand
 * @param edgeInset       how far inside its edge
 * @param cleatLength     longest piece of the cleat
 * @param waterMargin     how far water must stay off the panels
 * @param stations        where water is looked at
 */
@Schema(
        name = "ValleyPan",
        additionalProperties = Schema.False.class,
        description =
                "The pan of a valley: a sheet with a rib up its middle, bent from two legs; on each side a flat that lies"
                        + " in the roof plane, and a return along its outer edge. The flat is half the coil less leg and return,"
                        + " measured from bend line to bend line.")
public record ValleyPanForm(
        @Schema(
                description =
                        "Width of the flat sheet. 0.1 m to 3 m in the request's length unit, more than two legs and two"
                                + " returns. Default: 48 in, or 1220 mm in metric units (common practice, no source).")
        @Nullable
        WireLength coilWidth,

        @Schema(
                description =
                        "Girth of one leg of the rib, from the low to the crown. 0.005 m to 0.5 m in the request's length"
                                + " unit. Default: 4 1/4 in, or 110 mm in metric units (common practice, no source).")
        @Nullable
        WireLength ribLeg,

        @Schema(
                description =
                        "Girth of the return along each outer edge: a hem or a water stop. 0 m to 0.3 m in the request's"
                                + " length unit. Default: 1 in, or 25 mm in metric units (common practice, no source).")
        @Nullable
        WireLength edgeReturn,

        @Schema(
                description =
                        "How far the panels stay off the low, in the plane, square to it, at the foot of the valley. A"
                                + " `setback` of an edge treatment goes before it. 0 m to 1.5 m in the request's length unit."
                                + " Default: what `cover` leaves of the flat.")
        @Nullable
        WireLength holdBack,

        @Schema(
                description =
                        "How far the pan reaches under the panels; only without `holdBack`. 0 m to 1.5 m in the request's"
                                + " length unit. Default: 6 in, the least there may be (UFGS 07 60 00, 3.1.23: flashing extends"
                                + " under the roof covering 6 in).")
        @Nullable
        WireLength cover,

        @Schema(
                description =
                        "How much wider the open width of both sides together gets for its run down the valley, half of it"
                                + " on each side: `1/8:12` is 1/8 in to the foot, as a manual of the 1920s asks for. At most"
                                + " 1:12. Default: 0:12, the panels' edges run along the low.")
        @Nullable
        WirePitch widening,

        @Schema(
                description =
                        "Longest piece. 0.3 m to 20 m in the request's length unit, and at least 0.1 m more than the lap."
                                + " Default: 10 ft, or 3 m in metric units (common practice, no source).")
        @Nullable
        WireLength pieceLength,

        @Schema(
                description =
                        "Shortest piece that can be made; shorter ones get a finding. 0 m to 3 m in the request's length"
                                + " unit. Default: 12 in, or 300 mm in metric units (common practice, no source).")
        @Nullable
        WireLength shortestPiece,

        @Schema(
                description =
                        "How far a piece lies over the one below. 0.01 m to 2 m in the request's length unit. Default: 8"
                                + " in (Copper Development Association, Copper in Architecture 9.5), or 200 mm in metric units (New"
                                + " Zealand cladding code of practice 15.3.4); less than 6 in gets a finding.")
        @Nullable
        WireLength lap,

        @Schema(
                description =
                        "How far the flats run past an eave, square to it. 0 m to 0.5 m in the request's length unit."
                                + " Default: 1/2 in, or 12 mm in metric units (common practice, no source).")
        @Nullable
        WireLength eaveProjection,

        @Schema(
                description =
                        "How far the flats are turned up at a wall. 0 m to 1 m in the request's length unit. Default: 4"
                                + " in, or 102 mm in metric units (IRC R905.2.8.3, side wall base flashing).")
        @Nullable
        WireLength wallTurnUp,

        @Schema(
                description =
                        "How far the rib runs past the foot of the valley, to be folded shut. 0 m to 3 m in the request's"
                                + " length unit. Default: 2 in, or 50 mm in metric units (common practice, no source).")
        @Nullable
        WireLength ribPastEave,

        @Schema(
                description =
                        "How far it runs past the head. 0 m to 3 m in the request's length unit. Default: 2 in, or 50 mm in"
                                + " metric units (common practice, no source).")
        @Nullable
        WireLength ribPastTop,

        @Schema(
                description =
                        "How far it runs past an end where another valley goes on, so that the pans can be worked over"
                                + " each other. 0 m to 3 m in the request's length unit. Default: 24 in, or 600 mm in metric units"
                                + " (common practice, no source).")
        @Nullable
        WireLength ribPastValley,

        @Schema(
                description =
                        "Greatest distance between the pan's own fasteners along its edges. 0.01 m to 3 m in the request's"
                                + " length unit. Default: 12 in, or 300 mm in metric units (common practice, no source).")
        @Nullable
        WireLength fastenerSpacing,

        @Schema(
                description =
                        "How far inside the outer fold those stand. 0 m to 0.5 m in the request's length unit. Default: 1"
                                + " in, or 25 mm in metric units (common practice, no source).")
        @Nullable
        WireLength edgeInset,

        @Schema(
                description =
                        "Longest piece of the cleat that holds the panels. 0.1 m to 20 m in the request's length unit."
                                + " Default: 10 ft, or 3 m in metric units (common practice, no source).")
        @Nullable
        WireLength cleatLength,

        @Schema(
                description =
                        "How far off the panels' edge water must stay, on the pan. 0 m to 0.5 m in the request's length"
                                + " unit. Default: 1 in, or 25 mm in metric units (common practice, no source).")
        @Nullable
        WireLength waterMargin,

        @Schema(
                description =
                        "Where water is looked at, up the valley from its foot, true length; the foot is always looked at,"
                                + " what lies past the head is left out. Each 0 m to 1000 m in the request's length unit. Default:"
                                + " each quarter of the valley.")
        @Size(max = Limits.STATIONS)
        @Nullable
        List<WireLength> stations) {}
