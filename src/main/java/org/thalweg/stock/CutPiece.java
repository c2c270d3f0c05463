package org.thalweg.stock;

import java.util.Optional;

/**
 * Pieces to cut that are alike.
 *
 * @param id       the caller's name for them
 * @param length   of one, grid steps, without kerf; 1 or more
 * @param count    how many; 1 or more
 * @param together pieces with the same word come from one bar, side by side: a trim that must not change its shade, say.
 *                 All of them, so there is one such bar
 * @param apart    of pieces with the same word no two come from one bar
 */
public record CutPiece(String id, long length, int count, Optional<String> together, Optional<String> apart) {

    public CutPiece {
        if (length < 1 || count < 1) {
            throw new IllegalArgumentException(
                    "piece %s: length (%d) and count (%d) must be 1 or more".formatted(id, length, count));
        }
        if (together.isPresent() && apart.isPresent()) {
            throw new IllegalArgumentException("piece %s can't be both together and apart".formatted(id));
        }
    }

    public static CutPiece of(String id, long length, int count) {
        return new CutPiece(id, length, count, Optional.empty(), Optional.empty());
    }
}
