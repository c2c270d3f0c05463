package org.thalweg.valley;

import java.util.Optional;
import org.thalweg.units.Length;

/**
 * What a crew marks and fastens on one plane of a valley.
 *
 * @param seen            the plane as it lies at the valley
 * @param riseAcrossCover how much the cut across a whole panel rises; nothing when the valley runs along the ribs
 * @param heldBack        d at the foot
 * @param heldBackAtTop   d at the head
 * @param cover           c at the foot, where it is least
 * @param chalkLine       the panels' edge
 * @param fastenerLine    where sealant and screws go
 * @param panEdge         the outer fold of the pan
 * @param panScrewLine    where the pan itself is fastened, inside its outer fold
 * @param cleat           what holds the panels, when it is a cleat
 */
public record ValleySide(
        SlopedEdge.Side seen,
        Optional<Length> riseAcrossCover,
        Length heldBack,
        Length heldBackAtTop,
        Length cover,
        Optional<OffsetLine> chalkLine,
        Optional<OffsetLine> fastenerLine,
        Optional<OffsetLine> panEdge,
        Optional<OffsetLine> panScrewLine,
        Optional<CleatRun> cleat) {

    /** Sealant along the screws, or under the cleat; nothing where the valley is too short for either. */
    public Optional<Length> sealant() {
        return cleat.map(CleatRun::length).or(() -> fastenerLine.map(OffsetLine::length));
    }
}
