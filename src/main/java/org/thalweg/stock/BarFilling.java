package org.thalweg.stock;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.thalweg.stock.CutBar.PlacedPiece;
import org.thalweg.stock.PieceKinds.Source;

/** From patterns to bars with names on them: pieces of a kind are handed out in the order of the request. */
final class BarFilling {

    private final CuttingCase asked;
    private final List<Deque<Source>> waiting = new ArrayList<>();
    private final Map<CutBar, Integer> bars = new LinkedHashMap<>();
    private final Map<String, Integer> uncut = new LinkedHashMap<>();
    private long cost;

    private BarFilling(CuttingCase asked, PieceKinds kinds, int kindCount) {
        this.asked = asked;
        for (int kind = 0; kind < kindCount; kind++) {
            waiting.add(new ArrayDeque<>(kinds.sources(kind)));
        }
    }

    /**
     * Fills the bars of a plan.
     *
     * @throws IllegalStateException when the lots are not exactly the pieces
     */
    static BarFilling of(CuttingCase asked, PieceKinds kinds, CuttingProblem problem, List<Lot> lots) {
        BarFilling filling = new BarFilling(asked, kinds, problem.kinds());
        lots.stream().sorted(Comparator.comparing(Lot::pattern)).forEach(filling::fill);
        if (!filling.waiting.stream().allMatch(Deque::isEmpty)) {
            throw new IllegalStateException("a plan left pieces out");
        }
        return filling;
    }

    /** In the order of the stock, those with the longest pieces first; bars cut alike counted. */
    List<CutBar> bars() {
        return bars.entrySet().stream()
                .map(entry -> {
                    CutBar bar = entry.getKey();
                    return new CutBar(
                            bar.stock(),
                            bar.length(),
                            entry.getValue(),
                            bar.pieces(),
                            bar.offcut(),
                            bar.kept(),
                            bar.value());
                })
                .toList();
    }

    /** Of all bars that somebody has. */
    long cost() {
        return cost;
    }

    /** How many of each piece lie on bars that nobody has. */
    Map<String, Integer> uncut() {
        return uncut;
    }

    private void fill(Lot lot) {
        int left = lot.times();
        while (left > 0) {
            int alike = Math.min(left, alike(lot.pattern()));
            List<CutPiece> pieces = take(lot.pattern(), alike);
            if (lot.pattern().type() < asked.stock().size()) {
                StockBar stock = asked.stock().get(lot.pattern().type());
                bars.merge(bar(stock, pieces), alike, Integer::sum);
                cost += stock.cost() * alike;
            } else {
                pieces.forEach(piece -> uncut.merge(piece.id(), alike, Integer::sum));
            }
            left -= alike;
        }
    }

    /** For how many bars the next names are the same; 1 when names change within a bar. */
    private int alike(Pattern pattern) {
        int alike = Integer.MAX_VALUE;
        for (int i = 0; i < pattern.size(); i++) {
            Source next = waiting.get(pattern.kind(i)).element();
            alike = Math.min(alike, next.copies() / pattern.count(i));
        }
        return Math.max(1, alike);
    }

    private List<CutPiece> take(Pattern pattern, int alike) {
        List<CutPiece> pieces = new ArrayList<>();
        for (int i = 0; i < pattern.size(); i++) {
            Deque<Source> queue = waiting.get(pattern.kind(i));
            for (int j = 0; j < pattern.count(i); j++) {
                Source next = queue.remove();
                pieces.addAll(next.parts());
                if (next.copies() > alike) {
                    queue.addFirst(new Source(next.parts(), next.copies() - alike));
                }
            }
        }
        return pieces;
    }

    private CutBar bar(StockBar stock, List<CutPiece> pieces) {
        List<PlacedPiece> placed = new ArrayList<>();
        long from = 0;
        for (CutPiece piece : pieces) {
            placed.add(new PlacedPiece(piece.id(), from, from + piece.length()));
            from += piece.length() + asked.kerf();
        }
        long offcut = Math.max(0, stock.length() - from);
        boolean kept = offcut >= asked.keepable();
        return new CutBar(stock.id(), stock.length(), 1, placed, offcut, kept, kept ? value(stock, offcut) : 0);
    }

    private static long value(StockBar stock, long offcut) {
        return Math.multiplyExact(stock.cost(), offcut) / stock.length();
    }
}
