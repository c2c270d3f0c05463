package org.thalweg.movement;

import java.util.Optional;
import org.thalweg.units.Length;

/**
 * A piece of a valley's pan, fastened at its head and free from there down, so that it grows over the piece below. [published:
 * New Zealand cladding code of practice, 11.6.2, "head of valley fixed, rest free"; Copper Development Association, Copper in
 * Architecture Design Handbook, 9.5, sheets nailed at the top only]
 *
 * @param growth how far its lower end moves
 * @param lap    how far it lay over the piece below when it was fastened; nothing for the lowest piece
 */
public record LappedPiece(Growth growth, Optional<Length> lap) {

    /** What is left of its lap at its coldest; 0 when it has come off. */
    public Optional<Length> lapLeft() {
        return lap.map(length ->
                Length.metres(Math.max(0, length.metres() - growth.shorter().metres())));
    }
}
