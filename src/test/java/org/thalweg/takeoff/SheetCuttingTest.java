package org.thalweg.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.thalweg.stock.CutBar;
import org.thalweg.stock.CuttingPlan.Reason;
import org.thalweg.stock.CuttingPlan.Unplaced;
import org.thalweg.stock.Grid;
import org.thalweg.stock.StockBar;
import org.thalweg.takeoff.SheetStock.Offer;
import org.thalweg.units.Length;

/** Goods of sheet metal, drawn bar by bar. Lengths in inches; bars of ten and twelve feet. */
class SheetCuttingTest {

    private static final Length SIXTEENTH = Length.inches(1 / 16.0);
    private static final Length NARROW = Length.inches(7);
    private static final Length WIDE = Length.inches(12);

    private static Offer bar(String id, double inches, long cost) {
        return new Offer(
                StockBar.of(id, Grid.atMost(Length.inches(inches)), cost), false, Optional.empty(), Optional.empty());
    }

    private static Offer rack(String id, double inches, OrderItem item, Optional<Length> width) {
        return new Offer(StockBar.onRack(id, Grid.atMost(Length.inches(inches)), 1), true, Optional.of(item), width);
    }

    private static SheetCutting from(Offer... offers) {
        return new SheetCutting(
                new SheetStock(List.of(offers), 0, Grid.atLeast(Length.inches(12)), 50, SIXTEENTH, Optional.empty()));
    }

    private static List<String> marks(CutBar bar) {
        return bar.pieces().stream().map(CutBar.PlacedPiece::id).toList();
    }

    @Test
    void profilesOfOneWidthShareABarAndOtherWidthsDoNot() {
        SheetCutting cutting = from(bar("ten", 120, 1));
        cutting.addTrim(NARROW, "E1-1", Length.inches(70), 1);
        cutting.addTrim(WIDE, "R1-1", Length.inches(50), 1);
        cutting.addTrim(NARROW, "K1-1", Length.inches(50), 1);
        List<SheetCut> cuts = cutting.cut();
        assertThat(cuts).hasSize(2);
        assertThat(cuts.get(0).plan().bars()).hasSize(1);
        assertThat(marks(cuts.get(0).plan().bars().get(0))).containsExactly("E1-1", "K1-1");
        assertThat(marks(cuts.get(1).plan().bars().get(0))).containsExactly("R1-1");
    }

    @Test
    void widthsThatATapeTellsApartAreTwoWidths() {
        SheetCutting cutting = from(bar("ten", 120, 1));
        cutting.addTrim(Length.inches(7.0625), "a", Length.inches(60), 1);
        cutting.addTrim(Length.inches(7.05), "b", Length.inches(60), 1);
        cutting.addTrim(Length.inches(7.125), "c", Length.inches(60), 1);
        assertThat(cutting.cut()).extracting(cut -> cut.asked().pieces().size()).containsExactly(2, 1);
    }

    @Test
    void whatLiesOnTheRackIsTakenFirstAndForItsOwnWidthOnly() {
        SheetCutting cutting = from(bar("ten", 120, 1), rack("left", 60, OrderItem.TRIM, Optional.of(NARROW)));
        cutting.addTrim(NARROW, "a", Length.inches(55), 1);
        cutting.addTrim(WIDE, "b", Length.inches(55), 1);
        List<SheetCut> cuts = cutting.cut();
        assertThat(cuts.get(0).taken()).singleElement().satisfies(taken -> {
            assertThat(taken.rack()).isTrue();
            assertThat(taken.length().metres()).isCloseTo(60 * 0.0254, within(1e-12));
        });
        assertThat(cuts.get(1).taken()).singleElement().satisfies(taken -> assertThat(taken.rack())
                .isFalse());
    }

    @Test
    void aCleatIsLaidInWholeBarsOfTheLongestSortAndARest() {
        SheetCutting cutting = from(bar("ten", 120, 10), bar("twelve", 144, 12));
        cutting.addCleat("E1-cleat-1", Length.inches(300));
        SheetCut cut = cutting.cut().get(0);
        assertThat(cut.width()).isEmpty();
        assertThat(cut.asked().pieces())
                .extracting(piece -> piece.id() + " " + piece.count() + " x "
                        + Math.round(Grid.length(piece.length()).metres() / 0.0254))
                .containsExactly("E1-cleat-1 2 x 144", "E1-cleat-1-last 1 x 12");
        assertThat(cut.plan().cost()).isEqualTo(12 + 12 + 10);
    }

    @Test
    void whatNoBarIsLongEnoughForIsStillOrdered() {
        SheetCutting cutting = from(bar("ten", 120, 1));
        cutting.addTrim(NARROW, "long", Length.inches(130), 2);
        cutting.addTrim(NARROW, "short", Length.inches(30), 1);
        SheetCut cut = cutting.cut().get(0);
        assertThat(cut.plan().unplaced()).containsExactly(new Unplaced("long", 2, Reason.TOO_LONG));
        assertThat(cut.unplaced().metres()).isCloseTo(260 * 0.0254, within(1e-12));
        assertThat(cut.taken()).hasSize(1);
    }

    @Test
    void goodsThatNoStockServesAreNotCut() {
        SheetCutting cutting = from(rack("left", 60, OrderItem.CLEAT, Optional.empty()));
        cutting.addTrim(NARROW, "a", Length.inches(55), 1);
        assertThat(cutting.cut()).isEmpty();
    }
}
