package org.thalweg.trim;

import org.thalweg.units.Length;

/**
 * One piece of a trim.
 *
 * @param mark   its name: the edge's and a number, in the order they are laid
 * @param from   where its end nearer the start of the edge lies, from the corner the edge starts at; below 0 past it
 * @param length in all, from its furthest point to its furthest; above 0
 * @param lap    how far it lies over the piece before; 0 for the first
 * @param flat   the whole trim it is a piece of, lying flat
 */
public record TrimPiece(String mark, Length from, Length length, Length lap, FlatRun flat) {

    /** Its shape, lying flat. Worked out when asked for: to count pieces takes none. */
    public TrimBlank blank() {
        return flat.piece(from.metres(), from.metres() + length.metres());
    }
}
