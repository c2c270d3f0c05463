package org.thalweg.api;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.wire.LayoutRequest.PanelForm;
import org.thalweg.api.wire.TrimsForm;
import org.thalweg.api.wire.TrimsForm.BendFormula;
import org.thalweg.api.wire.TrimsForm.SheetForm;
import org.thalweg.api.wire.TrimsForm.StockForm;
import org.thalweg.api.wire.TrimsUsed;
import org.thalweg.api.wire.TrimsUsed.KindUsed;
import org.thalweg.api.wire.TrimsUsed.SheetUsed;
import org.thalweg.api.wire.TrimsUsed.StockUsed;
import org.thalweg.trim.BendAllowance;
import org.thalweg.trim.TrimSpec;
import org.thalweg.trim.TrimSpec.Sheet;
import org.thalweg.trim.TrimStock;
import org.thalweg.units.Length;
import org.thalweg.units.Units;

/** Writes the figures trims were laid out with, given or default. */
final class TrimUsedWriter {

    /** Digits of a K-factor that are told. */
    private static final double FACTOR_PLACES = 1e6;

    private final Units units;

    TrimUsedWriter(Units units) {
        this.units = units;
    }

    TrimsUsed used(TrimSpec spec) {
        Map<String, KindUsed> kinds = new LinkedHashMap<>();
        spec.orders()
                .forEach((kind, order) -> kinds.put(
                        kind.wire(),
                        new KindUsed(length(order.lap()), order.shape().isEmpty())));
        return new TrimsUsed(
                length(spec.seamHeight()),
                length(spec.hipLeg()),
                sheet(spec.sheet()),
                stock(spec.stock()),
                spec.ventedRidge(),
                length(spec.past()),
                spec.laidFrom(),
                kinds);
    }

    SheetUsed sheet(Sheet sheet) {
        BendAllowance allowance = sheet.allowance();
        Optional<Double> factor = allowance instanceof BendAllowance.KFactor given
                ? Optional.of(Math.rint(given.k() * FACTOR_PLACES) / FACTOR_PLACES)
                : Optional.empty();
        return new SheetUsed(
                length(sheet.thickness()),
                length(sheet.insideRadius()),
                factor,
                factor.isPresent() ? Optional.empty() : Optional.of(formula(allowance)),
                allowance.source().text(),
                length(sheet.coilWidth()));
    }

    private static BendFormula formula(BendAllowance allowance) {
        return allowance instanceof BendAllowance.Empirical ? BendFormula.HANDBOOK : BendFormula.DIN_6935;
    }

    StockUsed stock(TrimStock stock) {
        return new StockUsed(length(stock.length()), length(stock.shortest()));
    }

    /** Pointers to what a request left out of its trims, and of its panel what trims alone take from it. */
    static void defaults(@Nullable TrimsForm given, @Nullable PanelForm panel, List<String> left) {
        TrimsForm form = given == null ? TrimReader.NONE : given;
        UsedWriter.ifAbsent(panel == null ? null : panel.seamHeight(), "#/panel/seamHeight", left);
        defaults(form.sheet(), "#/trims/sheet", left);
        defaults(form.stock(), "#/trims/stock", left);
        UsedWriter.ifAbsent(form.ventedRidge(), "#/trims/ventedRidge", left);
        UsedWriter.ifAbsent(form.past(), "#/trims/past", left);
        UsedWriter.ifAbsent(form.laidFrom(), "#/trims/laidFrom", left);
        if (form.kinds() == null) {
            left.add("#/trims/kinds");
            return;
        }
        form.kinds().forEach((kind, got) -> {
            if (!Boolean.TRUE.equals(got.none())) {
                UsedWriter.ifAbsent(got.lap(), "#/trims/kinds/" + kind + "/lap", left);
                UsedWriter.ifAbsent(got.profile(), "#/trims/kinds/" + kind + "/profile", left);
            }
        });
    }

    static void defaults(@Nullable SheetForm given, String at, List<String> left) {
        SheetForm sheet = given == null ? TrimReader.NO_SHEET : given;
        UsedWriter.ifAbsent(sheet.thickness(), at + "/thickness", left);
        UsedWriter.ifAbsent(sheet.insideRadius(), at + "/insideRadius", left);
        if (sheet.bendFormula() == null) {
            UsedWriter.ifAbsent(sheet.kFactor(), at + "/kFactor", left);
        }
        UsedWriter.ifAbsent(sheet.coilWidth(), at + "/coilWidth", left);
    }

    static void defaults(@Nullable StockForm given, String at, List<String> left) {
        StockForm stock = given == null ? TrimReader.NO_STOCK : given;
        UsedWriter.ifAbsent(stock.pieceLength(), at + "/pieceLength", left);
        UsedWriter.ifAbsent(stock.shortestPiece(), at + "/shortestPiece", left);
    }

    private double length(Length length) {
        return units.length().round(length);
    }
}
