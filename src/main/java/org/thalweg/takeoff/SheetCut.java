package org.thalweg.takeoff;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.thalweg.stock.CutBar;
import org.thalweg.stock.CutPiece;
import org.thalweg.stock.CuttingCase;
import org.thalweg.stock.CuttingPlan;
import org.thalweg.stock.Grid;
import org.thalweg.stock.StockBar;
import org.thalweg.units.Length;

/**
 * Goods of one item and one width of sheet, whatever their profile, cut from stock.
 *
 * @param item   what they are
 * @param width  of the flat sheet, on a mark of the tape; nothing for goods that the layout knows no width of
 * @param offers what they are cut from
 * @param asked  pieces by their marks, and the same bars
 * @param plan   what is cut from which bar
 */
public record SheetCut(
        OrderItem item, Optional<Length> width, List<SheetStock.Offer> offers, CuttingCase asked, CuttingPlan plan) {

    public SheetCut {
        offers = List.copyOf(offers);
    }

    /**
     * Bars of one sort that are cut up.
     *
     * @param bar   which
     * @param rack  whether they lie on the rack and are not bought
     * @param count how many; 1 or more
     */
    public record Taken(StockBar bar, boolean rack, int count) {

        public Length length() {
            return Grid.length(bar.length() * count);
        }
    }

    /** In the order of the offers. */
    public List<Taken> taken() {
        Map<String, Integer> counts = new HashMap<>();
        for (CutBar bar : plan.bars()) {
            counts.merge(bar.stock(), bar.count(), Integer::sum);
        }
        List<Taken> taken = new ArrayList<>(counts.size());
        for (SheetStock.Offer offer : offers) {
            int count = counts.getOrDefault(offer.bar().id(), 0);
            if (count > 0) {
                taken.add(new Taken(offer.bar(), offer.rack(), count));
            }
        }
        return taken;
    }

    /** Pieces that are on no bar, and so are still ordered as long as they are. */
    Length unplaced() {
        Map<String, Long> lengths = new HashMap<>();
        for (CutPiece piece : asked.pieces()) {
            lengths.put(piece.id(), piece.length());
        }
        long steps = 0;
        for (CuttingPlan.Unplaced left : plan.unplaced()) {
            steps += left.count() * lengths.getOrDefault(left.id(), 0L);
        }
        return Grid.length(steps);
    }
}
