package org.thalweg.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;
import org.thalweg.finding.Refused;
import org.thalweg.stock.Budget;
import org.thalweg.stock.CutPiece;
import org.thalweg.stock.CuttingCase;
import org.thalweg.stock.Grid;
import org.thalweg.stock.StockCuts;
import org.thalweg.trim.Trim;
import org.thalweg.trim.TrimPiece;
import org.thalweg.units.Count;
import org.thalweg.units.Length;
import org.thalweg.valley.CleatRun;
import org.thalweg.valley.PanPiece;
import org.thalweg.valley.ValleyLayout;
import org.thalweg.valley.ValleySide;

/**
 * Collects the goods of sheet metal of a job and cuts them from stock: those of one item and one width together, whatever
 * their profile, since sheet slit to that width does for all of them.
 */
public final class SheetCutting {

    private final SheetStock stock;
    private final Map<Goods, List<CutPiece>> pieces = new LinkedHashMap<>();

    public SheetCutting(SheetStock stock) {
        this.stock = stock;
    }

    private record Goods(OrderItem item, Optional<Length> width) {}

    /** The pieces of a pan and its cleats. */
    public void add(ValleyLayout valley) {
        for (PanPiece piece : valley.pieces()) {
            add(OrderItem.VALLEY_PAN, Optional.of(valley.spec().coilWidth()), piece.mark(), piece.length(), 1);
        }
        String edge = valley.edge().edge().id();
        int side = 0;
        for (ValleySide each : valley.sides()) {
            String name = edge + (side++ == 0 ? "-left" : "-right");
            each.cleat().ifPresent(cleat -> cleats(name, cleat));
        }
    }

    private void cleats(String name, CleatRun cleat) {
        strips(name, cleat.piece(), cleat.count() - 1, cleat.last());
    }

    /** The pieces of a trim. */
    public void add(Trim trim) {
        for (TrimPiece piece : trim.pieces()) {
            addTrim(trim.flat().width(), piece.mark(), piece.length(), 1);
        }
    }

    /** Pieces of trim of one flat width. */
    public void addTrim(Length flatWidth, String mark, Length length, int count) {
        add(OrderItem.TRIM, Optional.of(flatWidth), mark, length, count);
    }

    /** A cleat along an edge: strips end to end, so it takes whole bars of the longest sort and what is left over. */
    void addCleat(String mark, Length length) {
        long whole = stock.offersFor(OrderItem.CLEAT, Optional.empty()).stream()
                .mapToLong(offer -> offer.bar().length())
                .max()
                .orElse(Long.MAX_VALUE);
        long steps = Grid.atLeast(length);
        strips(mark, Grid.length(whole), Math.toIntExact(steps / whole), Grid.length(steps % whole));
    }

    private void strips(String mark, Length piece, int count, Length last) {
        if (count > 0) {
            add(OrderItem.CLEAT, Optional.empty(), mark, piece, count);
        }
        add(OrderItem.CLEAT, Optional.empty(), count > 0 ? mark + "-last" : mark, last, 1);
    }

    private void add(OrderItem item, Optional<Length> width, String mark, Length length, int count) {
        long steps = Grid.atLeast(length);
        if (steps > 0) {
            pieces.computeIfAbsent(
                            new Goods(item, width.map(w -> SheetStock.marked(w, stock.mark()))),
                            goods -> new ArrayList<>())
                    .add(CutPiece.of(mark, steps, count));
        }
    }

    /**
     * A plan for all goods that there is stock for, item by item, then as they came.
     *
     * @throws Refused when goods of one width have more different lengths than one plan holds
     */
    public List<SheetCut> cut() {
        List<Goods> served = pieces.keySet().stream()
                .filter(goods -> !stock.offersFor(goods.item(), goods.width()).isEmpty())
                .sorted(Comparator.comparing(Goods::item))
                .toList();
        List<SheetCut> cuts = new ArrayList<>(served.size());
        for (Goods goods : served) {
            cuts.add(cut(goods, pieces.getOrDefault(goods, List.of()), stock.milliseconds() / served.size()));
        }
        return cuts;
    }

    private SheetCut cut(Goods goods, List<CutPiece> wanted, int milliseconds) {
        check(wanted);
        List<SheetStock.Offer> offers = stock.offersFor(goods.item(), goods.width());
        CuttingCase asked = new CuttingCase(
                offers.stream().map(SheetStock.Offer::bar).toList(),
                wanted,
                stock.kerf(),
                stock.keepable(),
                Budget.work(milliseconds));
        return new SheetCut(goods.item(), goods.width(), offers, asked, StockCuts.cut(asked));
    }

    private static void check(List<CutPiece> wanted) {
        Set<Long> lengths = new HashSet<>();
        wanted.forEach(piece -> lengths.add(piece.length()));
        if (lengths.size() > CuttingCase.MOST_KINDS) {
            throw new Refused(Refusal.of(
                    RefusalCode.TOO_MANY_LENGTHS,
                    Origin.REQUEST.at("cutting"),
                    "The pieces of one width have {actual} different lengths; at most {limit} are cut from stock together. Leave"
                            + " the cutting out, or ask for the job in parts.",
                    new Count(lengths.size()),
                    new Count(CuttingCase.MOST_KINDS)));
        }
    }
}
