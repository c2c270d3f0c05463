package org.thalweg.valley;

import java.util.Optional;
import org.thalweg.reference.Rules;
import org.thalweg.units.Length;
import org.thalweg.units.Pitch;

/**
 * The pan and what it is laid by.
 *
 * @param coilWidth     C, width of the flat sheet; more than two legs and two returns; above 0
 * @param ribLeg        g, girth of one leg of the rib, from the low to the crown; above 0
 * @param edgeReturn    r, girth of the return along each outer edge; 0 or more
 * @param holdBack      d, how far the panels stay off the low at the foot of the valley, if it is given
 * @param cover         c, how far the pan is to reach under the panels, if it is given; else as far as it must
 * @param widening      how much wider the open width of both sides together gets for its run down the valley
 * @param pieceLength   longest piece; more than the lap
 * @param shortestPiece shortest piece that can be made
 * @param lap           how far a piece lies over the one below; above 0
 * @param pastEave      how far the flats run past an eave, square to it
 * @param wallTurnUp    how far they are turned up at a wall
 * @param ribPastEave   how far the rib runs past the foot
 * @param ribPastTop    how far it runs past the head
 * @param ribPastValley how far it runs past where the valley meets another one
 * @param cleatLength   longest piece of the cleat that holds the panels; above 0
 */
public record PanSpec(
        Length coilWidth,
        Length ribLeg,
        Length edgeReturn,
        Optional<Length> holdBack,
        Optional<Length> cover,
        Pitch widening,
        Length pieceLength,
        Length shortestPiece,
        Length lap,
        Length pastEave,
        Length wallTurnUp,
        Length ribPastEave,
        Length ribPastTop,
        Length ribPastValley,
        Length cleatLength) {

    private static final Length LEAST_COVER = Rules.valleyLeastCover().value();

    public PanSpec {
        if (coilWidth.metres() / 2 <= ribLeg.metres() + edgeReturn.metres()) {
            throw new IllegalArgumentException("coil (%s) must be wider than two rib legs (%s) and two returns (%s)"
                    .formatted(coilWidth, ribLeg, edgeReturn));
        }
        if (pieceLength.metres() <= lap.metres() || lap.metres() <= 0) {
            throw new IllegalArgumentException(
                    "lap (%s) must be above 0 and below the piece (%s)".formatted(lap, pieceLength));
        }
    }

    /** T = C/2 − g − r, from the low to the outer fold. */
    public Length flat() {
        return Length.metres(coilWidth.metres() / 2 - ribLeg.metres() - edgeReturn.metres());
    }

    /**
     * d at the foot: as given, or what the cover leaves of the flat, or what the least cover leaves; not below 0 unless it
     * was given so.
     */
    public Length heldBack() {
        return holdBack.orElseGet(() -> Length.metres(
                Math.max(0, flat().metres() - cover.orElse(LEAST_COVER).metres())));
    }

    /** d at the head of a valley this long: less by half the widening, the other half is the other side's; 0 or more. */
    public Length heldBackAtTop(Length valley) {
        return Length.metres(
                Math.max(Math.min(0, heldBack().metres()), heldBack().metres() - widening.tan() / 2 * valley.metres()));
    }

    /** What half the coil needs besides the hold-back: cover, rib leg and return. */
    public Length beyondHoldBack() {
        double needed = Math.max(LEAST_COVER.metres(), cover.orElse(LEAST_COVER).metres());
        return Length.metres(needed + ribLeg.metres() + edgeReturn.metres());
    }

    /** The coil that reaches its least cover under panels held back this far. */
    public Length coilFor(Length heldBack) {
        return Length.metres(2 * (heldBack.metres() + beyondHoldBack().metres()));
    }

    /** The same pan with the panels held back this far instead. */
    public PanSpec heldBack(Length instead) {
        return new PanSpec(
                coilWidth,
                ribLeg,
                edgeReturn,
                Optional.of(instead),
                cover,
                widening,
                pieceLength,
                shortestPiece,
                lap,
                pastEave,
                wallTurnUp,
                ribPastEave,
                ribPastTop,
                ribPastValley,
                cleatLength);
    }
}
