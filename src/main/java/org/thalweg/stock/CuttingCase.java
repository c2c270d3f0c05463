package org.thalweg.stock;

import java.util.List;

/**
 * Pieces to cut, and what from.
 *
 * @param stock    sorts of bar, in the order the caller likes them
 * @param pieces   what is to be cut
 * @param kerf     what a cut takes, grid steps; 0 or more
 * @param keepable the shortest off-cut that goes back to the rack, grid steps; 1 or more
 * @param budget   how long to think
 */
public record CuttingCase(List<StockBar> stock, List<CutPiece> pieces, long kerf, long keepable, Budget budget) {

    /** Longest bar or piece with its kerf, so that sums are sure to fit. */
    public static final long LONGEST = 1L << 31;

    public static final long DEAREST = 1L << 30;

    /** Most pieces, all counts together. */
    public static final int MOST_PIECES = 1_000_000;

    /** Most different pieces, whatever they are called; the matrix of the linear programme is that wide and that high. */
    public static final int MOST_KINDS = 1_000;

    public CuttingCase {
        stock = List.copyOf(stock);
        pieces = List.copyOf(pieces);
        check(kerf >= 0 && kerf < LONGEST, "kerf (%d) is not between 0 and the longest bar", kerf);
        check(keepable >= 1, "keepable (%d) must be 1 or more", keepable);
        for (StockBar bar : stock) {
            check(bar.length() + kerf <= LONGEST, "a bar (%d) is longer than can be counted", bar.length());
            check(bar.cost() <= DEAREST, "a bar (%d) costs more than can be counted", bar.cost());
        }
        long count = 0;
        for (CutPiece piece : pieces) {
            check(piece.length() + kerf <= LONGEST, "a piece (%d) is longer than can be counted", piece.length());
            count += piece.count();
        }
        check(stock.stream().map(StockBar::id).distinct().count() == stock.size(), "%d bars share names", stock.size());
        check(
                pieces.stream().map(CutPiece::id).distinct().count() == pieces.size(),
                "%d pieces share names",
                pieces.size());
        check(count <= MOST_PIECES, "%d pieces are more than one plan holds", count);
        long kinds = pieces.stream()
                .map(piece -> List.of(piece.length(), piece.together(), piece.apart()))
                .distinct()
                .count();
        check(kinds <= MOST_KINDS, "%d different pieces are more than one plan holds", kinds);
    }

    private static void check(boolean fine, String message, long actual) {
        if (!fine) {
            throw new IllegalArgumentException(message.formatted(actual));
        }
    }
}
