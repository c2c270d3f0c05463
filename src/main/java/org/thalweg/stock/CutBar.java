package org.thalweg.stock;

import java.util.List;

/**
 * Bars that are cut alike, piece by piece.
 *
 * @param stock  the bar's name in the request
 * @param length of the bar, grid steps
 * @param count  how many bars are cut so; 1 or more
 * @param pieces from the end the tape is hooked on, longest first; pieces that belong together side by side
 * @param offcut what is left beyond the last cut, grid steps; 0 when the last piece ends flush or the saw takes the rest
 * @param kept   whether the off-cut is long enough to go back to the rack
 * @param value  of the off-cut, the part of the bar's cost that its length is of the bar's, rounded down; 0 unless kept
 */
public record CutBar(
        String stock, long length, int count, List<PlacedPiece> pieces, long offcut, boolean kept, long value) {

    /**
     * A piece on its bar.
     *
     * @param id   the piece's name in the request
     * @param from where it begins, grid steps from the end the tape is hooked on
     * @param to   where it ends; the saw takes the kerf beyond
     */
    public record PlacedPiece(String id, long from, long to) {}

    public CutBar {
        pieces = List.copyOf(pieces);
    }
}
