package org.thalweg.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.wire.CuttingForm;
import org.thalweg.api.wire.CuttingForm.SheetItem;
import org.thalweg.api.wire.CuttingForm.SheetStockForm;
import org.thalweg.api.wire.CuttingUsed;
import org.thalweg.api.wire.CuttingUsed.SheetStockUsed;
import org.thalweg.api.wire.FindingAnswer;
import org.thalweg.api.wire.SheetCutAnswer;
import org.thalweg.api.wire.StockCutRequest.StockKind;
import org.thalweg.finding.Origin;
import org.thalweg.stock.CuttingPlan;
import org.thalweg.stock.Grid;
import org.thalweg.stock.StockBar;
import org.thalweg.takeoff.OrderItem;
import org.thalweg.takeoff.SheetCut;
import org.thalweg.takeoff.SheetStock;
import org.thalweg.takeoff.SheetStock.CoilOffer;
import org.thalweg.takeoff.SheetStock.Offer;
import org.thalweg.units.Units;

/** Writes how goods of sheet metal are cut from stock. */
final class CuttingWriter {

    private static final Origin STOCK = Origin.REQUEST.at("cutting").at("stock");

    private final Units units;

    CuttingWriter(Units units) {
        this.units = units;
    }

    /** The plans, where stock was given. */
    Optional<List<SheetCutAnswer>> cuts(Optional<SheetStock> stock, List<SheetCut> cuts) {
        return stock.map(given -> cuts.stream().map(this::cut).toList());
    }

    private SheetCutAnswer cut(SheetCut cut) {
        PlanWriter writer = new PlanWriter(units);
        CuttingPlan plan = cut.plan();
        return new SheetCutAnswer(
                item(cut.item()),
                cut.width().map(width -> RoofWriter.marked(width, units)),
                writer.bars(plan),
                plan.cost(),
                plan.barCount(),
                plan.lowerBound(),
                plan.proven(),
                plan.proof(),
                plan.gap(),
                plan.keptValue(),
                writer.certificate(cut.asked(), plan),
                PlanWriter.unplaced(plan));
    }

    private static SheetItem item(OrderItem item) {
        return switch (item) {
            case VALLEY_PAN -> SheetItem.VALLEY_PAN;
            case CLEAT -> SheetItem.CLEAT;
            default -> SheetItem.TRIM;
        };
    }

    /** Pieces that are on no bar. */
    List<FindingAnswer> findings(List<SheetCut> cuts) {
        List<FindingAnswer> findings = new ArrayList<>();
        for (SheetCut cut : cuts) {
            findings.addAll(FindingWriter.findings(CutFindings.of(cut.plan(), cut.asked(), piece -> STOCK), units));
        }
        return findings;
    }

    /** What was cut from, and pointers to what the request left out of it. */
    Optional<CuttingUsed> used(@Nullable CuttingForm form, Optional<SheetStock> stock, List<String> left) {
        return form == null ? Optional.empty() : stock.map(read -> used(form, read, left));
    }

    private CuttingUsed used(CuttingForm form, SheetStock stock, List<String> left) {
        List<SheetStockUsed> sorts = new ArrayList<>();
        int bars = 0;
        for (int i = 0; i < form.stock().size(); i++) {
            SheetStockForm given = form.stock().get(i);
            UsedWriter.stockDefaults(given, "#/cutting/stock/" + i, left);
            sorts.add(
                    given.kindOrBar() == StockKind.COIL
                            ? coil(given)
                            : bar(given, stock.offers().get(bars++)));
        }
        UsedWriter.ifAbsent(form.kerf(), "#/cutting/kerf", left);
        UsedWriter.ifAbsent(form.keepableOffcut(), "#/cutting/keepableOffcut", left);
        if (stock.coil().isPresent()) {
            UsedWriter.ifAbsent(form.turning(), "#/cutting/turning", left);
            UsedWriter.ifAbsent(form.keepLayingOrder(), "#/cutting/keepLayingOrder", left);
        }
        UsedWriter.ifAbsent(form.deadlineMs(), "#/cutting/deadlineMs", left);
        return new CuttingUsed(
                sorts,
                length(stock.kerf()),
                length(stock.keepable()),
                stock.coil().map(CoilOffer::turning),
                stock.coil().map(CoilOffer::keepOrder),
                stock.milliseconds());
    }

    private SheetStockUsed bar(SheetStockForm given, Offer offer) {
        StockBar bar = offer.bar();
        return new SheetStockUsed(
                bar.id(),
                given.kindOrBar(),
                Optional.of(length(bar.length())),
                Optional.of(bar.cost()),
                PlanWriter.count(bar),
                Optional.ofNullable(given.item()),
                offer.width().map(units.length()::round));
    }

    private static SheetStockUsed coil(SheetStockForm given) {
        return new SheetStockUsed(
                given.id(),
                StockKind.COIL,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private double length(long steps) {
        return units.length().round(Grid.length(steps));
    }
}
