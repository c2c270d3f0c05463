package org.thalweg.api.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.thalweg.api.wire.MarkedLength;
import org.thalweg.drawing.Flow;
import org.thalweg.drawing.Table;

/** Pieces one by one, several beside each other where there are many. */
final class PieceTable {

    private static final int FEW = 8;
    private static final int BESIDE = 3;
    private static final int CELLS = 4;

    private PieceTable() {}

    /**
     * A piece.
     *
     * @param mark   its name
     * @param from   where it begins
     * @param length of it
     * @param lap    over the one before
     */
    record Piece(String mark, MarkedLength from, MarkedLength length, MarkedLength lap) {}

    /** Draws them where {@code flow} stands; {@code from} says where they are measured from. */
    static void on(Flow flow, List<Piece> pieces, String from) {
        if (pieces.isEmpty()) {
            return;
        }
        int beside = pieces.size() <= FEW ? 1 : BESIDE;
        Table table = new Table();
        for (int i = 0; i < beside; i++) {
            table.words("piece", 90).figures(from).figures("length").figures("lap");
        }
        for (int i = 0; i < pieces.size(); i += beside) {
            List<String> cells = new ArrayList<>();
            for (Piece piece : pieces.subList(i, Math.min(pieces.size(), i + beside))) {
                Collections.addAll(cells, piece.mark, piece.from.tape(), piece.length.tape(), piece.lap.tape());
            }
            while (cells.size() < beside * CELLS) {
                cells.add("");
            }
            table.row(cells.toArray(String[]::new));
        }
        table.on(flow);
    }
}
