package org.thalweg.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import org.thalweg.stock.CutBar.PlacedPiece;

/** What holds of every plan, looked up in the request piece by piece. */
final class Plans {

    private Plans() {}

    /** Cuts it and holds it to the laws. */
    static CuttingPlan lawful(CuttingCase asked) {
        CuttingPlan plan = StockCuts.cut(asked);
        everyPieceIsCutOnce(asked, plan);
        plan.bars().forEach(bar -> piecesFit(asked, bar));
        noMoreBarsThanThereAre(asked, plan);
        assertThat(plan.lowerBound()).isLessThanOrEqualTo(plan.cost());
        return plan;
    }

    private static void everyPieceIsCutOnce(CuttingCase asked, CuttingPlan plan) {
        Map<String, Integer> seen = new LinkedHashMap<>();
        plan.bars().forEach(bar -> bar.pieces().forEach(piece -> seen.merge(piece.id(), bar.count(), Integer::sum)));
        plan.unplaced().forEach(left -> seen.merge(left.id(), left.count(), Integer::sum));
        Map<String, Integer> wanted = new LinkedHashMap<>();
        asked.pieces().forEach(piece -> wanted.put(piece.id(), piece.count()));
        assertThat(seen).isEqualTo(wanted);
    }

    private static void piecesFit(CuttingCase asked, CutBar bar) {
        Map<String, Long> lengths = new LinkedHashMap<>();
        asked.pieces().forEach(piece -> lengths.put(piece.id(), piece.length()));
        long free = 0;
        for (PlacedPiece piece : bar.pieces()) {
            assertThat(piece.from()).isEqualTo(free);
            assertThat(piece.to() - piece.from()).isEqualTo(lengths.get(piece.id()));
            free = piece.to() + asked.kerf();
        }
        assertThat(free - asked.kerf()).isLessThanOrEqualTo(bar.length());
        assertThat(bar.offcut()).isEqualTo(Math.max(0, bar.length() - free));
    }

    private static void noMoreBarsThanThereAre(CuttingCase asked, CuttingPlan plan) {
        long cost = 0;
        for (StockBar stock : asked.stock()) {
            int used = plan.bars().stream()
                    .filter(bar -> bar.stock().equals(stock.id()))
                    .mapToInt(CutBar::count)
                    .sum();
            assertThat(used).isLessThanOrEqualTo(stock.count().orElse(Integer.MAX_VALUE));
            cost += used * stock.cost();
        }
        assertThat(plan.cost()).isEqualTo(cost);
    }
}
