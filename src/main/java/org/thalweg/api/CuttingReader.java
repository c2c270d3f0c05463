package org.thalweg.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.problem.ReadingCode;
import org.thalweg.api.wire.CuttingForm;
import org.thalweg.api.wire.CuttingForm.SheetItem;
import org.thalweg.api.wire.CuttingForm.SheetStockForm;
import org.thalweg.api.wire.StockCutRequest.StockKind;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.Refused;
import org.thalweg.stock.Grid;
import org.thalweg.stock.StockBar;
import org.thalweg.stock.Turning;
import org.thalweg.takeoff.OrderItem;
import org.thalweg.takeoff.SheetStock;
import org.thalweg.takeoff.SheetStock.CoilOffer;
import org.thalweg.takeoff.SheetStock.Offer;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;
import org.thalweg.units.Tape;

/** Reads what goods of sheet metal are cut from. */
final class CuttingReader {

    private static final Origin CUTTING = Origin.REQUEST.at("cutting");
    private static final Origin STOCK = CUTTING.at("stock");
    private static final int USUAL_MS = 200;

    private final LengthUnit unit;
    private final TapeReader tape;

    CuttingReader(LengthUnit unit, TapeReader tape) {
        this.unit = unit;
        this.tape = tape;
    }

    /**
     * What there is to cut from, where the caller says it.
     *
     * @param noCoil why panels don't come from a coil here; null where they do
     */
    Optional<SheetStock> read(@Nullable CuttingForm form, @Nullable String noCoil) {
        if (form == null) {
            return Optional.empty();
        }
        StockReader reader = new StockReader(form.stock(), STOCK, tape);
        List<Length> lengths = reader.lengths();
        List<Optional<Length>> widths = new ArrayList<>();
        for (int i = 0; i < form.stock().size(); i++) {
            SheetStockForm stock = form.stock().get(i);
            boolean coil = stock.kindOrBar() == StockKind.COIL;
            widths.add(
                    coil
                            ? Optional.empty()
                            : tape.given(stock.width(), STOCK.at(i).at("width"), Limits.STOCK_WIDTH));
            check(stock, STOCK.at(i));
        }
        Optional<CoilOffer> coil = coil(form, noCoil);
        Length kerf = tape.length(form.kerf(), Length.ZERO, CUTTING.at("kerf"), Limits.KERF);
        Length keepable = tape.length(
                form.keepableOffcut(), StockCutReader.KEEPABLE, CUTTING.at("keepableOffcut"), Limits.KEEPABLE);
        return Optional.of(new SheetStock(
                reader.readable() ? offers(form, reader.bars(lengths), widths) : List.of(),
                Grid.atLeast(kerf),
                Math.max(1, Grid.atLeast(keepable)),
                form.deadlineMs() == null ? USUAL_MS : form.deadlineMs().intValue(),
                Tape.finest(unit),
                coil));
    }

    /**
     * Ids that stand for two sorts of stock; asked once everything could be read.
     *
     * @throws Refused when there are any
     */
    static void refuseDuplicates(@Nullable CuttingForm form) {
        if (form != null) {
            List<Refusal> refusals = new ArrayList<>(0);
            StockCutReader.twice(form.stock(), SheetStockForm::id, STOCK, "sort of stock", refusals);
            if (!refusals.isEmpty()) {
                throw new Refused(refusals);
            }
        }
    }

    private void check(SheetStockForm stock, Origin at) {
        boolean cleats = stock.item() == SheetItem.CLEAT;
        if (stock.kindOrBar() == StockKind.COIL) {
            if (stock.length() != null
                    || stock.cost() != null
                    || stock.count() != null
                    || stock.item() != null
                    || stock.width() != null) {
                tape.note(
                        ReadingCode.EITHER_OR,
                        at,
                        "A coil is as long as it need be and as wide as the panels: it has an id and its kind alone.");
            }
            return;
        }
        if (cleats && stock.width() != null) {
            tape.note(ReadingCode.EITHER_OR, at.at("width"), "No width is known of cleats. Leave the width out.");
        }
        boolean counted = stock.count() != null || stock.kindOrBar() == StockKind.RACK;
        if (counted && stock.item() == null) {
            tape.note(
                    ReadingCode.MISSING_MEMBER,
                    at,
                    "\"item\" is missing here: what is counted can be used up for one item only.");
        }
        if (counted && !cleats && stock.width() == null) {
            tape.note(
                    ReadingCode.MISSING_MEMBER,
                    at,
                    "\"width\" is missing here: what is counted can be used up for one width only.");
        }
    }

    private Optional<CoilOffer> coil(CuttingForm form, @Nullable String noCoil) {
        Optional<CoilOffer> found = Optional.empty();
        for (int i = 0; i < form.stock().size(); i++) {
            SheetStockForm stock = form.stock().get(i);
            if (stock.kindOrBar() != StockKind.COIL) {
                continue;
            }
            if (noCoil != null) {
                tape.note(ReadingCode.EITHER_OR, STOCK.at(i), noCoil);
            }
            if (found.isPresent()) {
                tape.note(ReadingCode.EITHER_OR, STOCK.at(i), "Panels come from one coil. Leave the other coil out.");
            }
            found = Optional.of(new CoilOffer(
                    stock.id(),
                    form.turning() == null ? Turning.FORBIDDEN : form.turning(),
                    Boolean.TRUE.equals(form.keepLayingOrder())));
        }
        if (found.isEmpty()) {
            besideCoil(form.turning(), "turning");
            besideCoil(form.keepLayingOrder(), "keepLayingOrder");
        }
        return found;
    }

    private void besideCoil(@Nullable Object given, String name) {
        if (given != null) {
            tape.note(
                    ReadingCode.UNKNOWN_MEMBER,
                    CUTTING.at(name),
                    "\"%s\" is only read beside a coil in the stock. Leave it out.".formatted(name));
        }
    }

    private static List<Offer> offers(CuttingForm form, List<StockBar> bars, List<Optional<Length>> widths) {
        List<Offer> offers = new ArrayList<>(bars.size());
        for (int i = 0; i < form.stock().size(); i++) {
            SheetStockForm stock = form.stock().get(i);
            if (stock.kindOrBar() != StockKind.COIL) {
                offers.add(new Offer(
                        bars.get(offers.size()),
                        stock.kindOrBar() == StockKind.RACK,
                        Optional.ofNullable(stock.item()).map(CuttingReader::item),
                        widths.get(i)));
            }
        }
        return offers;
    }

    private static OrderItem item(SheetItem item) {
        return switch (item) {
            case VALLEY_PAN -> OrderItem.VALLEY_PAN;
            case TRIM -> OrderItem.TRIM;
            case CLEAT -> OrderItem.CLEAT;
        };
    }
}
