package org.thalweg.api;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.thalweg.api.problem.Echo;
import org.thalweg.api.problem.Fault;
import org.thalweg.api.problem.Nearest;
import org.thalweg.api.problem.ReadingCode;
import org.thalweg.api.wire.CuttingForm;
import org.thalweg.api.wire.OrderingForm;
import org.thalweg.api.wire.OrderingForm.CoilForm;
import org.thalweg.api.wire.OrderingForm.ItemForm;
import org.thalweg.finding.Origin;
import org.thalweg.takeoff.Coil;
import org.thalweg.takeoff.OrderItem;
import org.thalweg.takeoff.OrderRule;
import org.thalweg.takeoff.Ordering;
import org.thalweg.takeoff.Quantity;
import org.thalweg.takeoff.SheetStock;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;
import org.thalweg.units.Tape;

/** Reads how a job is bought. */
final class OrderingReader {

    private static final Origin ITEMS = Origin.REQUEST.at("ordering").at("items");
    private static final Origin COIL = Origin.REQUEST.at("ordering").at("coil");
    private static final List<String> KNOWN =
            Arrays.stream(OrderItem.values()).map(OrderItem::key).toList();

    private static final String SUPPLIED =
            "Panels that the supplier forms come from no coil of yours. Say \"formed\": \"onSite\" in \"ordering\", or leave the coil"
                    + " out.";

    private final LengthUnit unit;
    private final TapeReader tape;
    private final Map<OrderItem, OrderRule> rules = new EnumMap<>(OrderItem.class);

    OrderingReader(LengthUnit unit, TapeReader tape) {
        this.unit = unit;
        this.tape = tape;
    }

    /**
     * How it is bought.
     *
     * @param cutting   what goods of sheet metal are cut from
     * @param thickness of the sheet, which says how much of it is on a coil
     */
    Ordering read(@Nullable OrderingForm form, @Nullable CuttingForm cutting, Length thickness) {
        Length mark = Tape.finest(unit);
        boolean onSite = form != null && form.formed() == OrderingForm.Formed.ON_SITE;
        Optional<SheetStock> stock = new CuttingReader(unit, tape).read(cutting, onSite ? null : SUPPLIED);
        if (form != null && form.items() != null) {
            form.items().forEach(this::read);
        }
        if (form != null && form.coil() != null) {
            coil(form.coil(), onSite, thickness);
        }
        stock.ifPresent(this::cutOrPacked);
        return new Ordering(onSite ? Ordering.Formed.ON_SITE : Ordering.Formed.BY_SUPPLIER, rules, stock, mark);
    }

    /** What is cut from stock is ordered as whole bars: nothing more is added and no packs are made. */
    private void cutOrPacked(SheetStock stock) {
        for (OrderItem item : rules.keySet()) {
            if (stock.mayServe(item)) {
                tape.note(
                        ReadingCode.EITHER_OR,
                        ITEMS.at(item.key()),
                        "This item is cut from the stock in \"cutting\" and ordered as whole bars. Leave it out here, or give that"
                                + " stock another \"item\".");
            }
        }
    }

    private void coil(CoilForm form, boolean onSite, Length thickness) {
        if (!onSite) {
            tape.note(() -> Fault.of(
                    ReadingCode.UNKNOWN_MEMBER,
                    COIL.pointer(),
                    "A coil is only read beside \"formed\": \"onSite\". Leave it out, or say so."));
        }
        Length outer = tape.length(form.outerDiameter(), COIL.at("outerDiameter"), Limits.COIL_DIAMETER);
        Length core = tape.length(form.coreDiameter(), COIL.at("coreDiameter"), Limits.CORE_DIAMETER);
        if (core.metres() <= 0 || thickness.metres() <= 0) {
            return;
        }
        if (outer.compareTo(core) <= 0) {
            tape.notePassed(
                    COIL.at("outerDiameter"), outer, core, "The coil is %s wide; it must be more than its core, %s.");
            return;
        }
        OrderRule given = rules.getOrDefault(OrderItem.COIL, OrderRule.AS_NEEDED);
        rules.put(
                OrderItem.COIL,
                new OrderRule(
                        given.extra(),
                        OptionalDouble.of(
                                new Coil(outer, core).length(thickness).metres())));
    }

    private void read(String key, ItemForm form) {
        Origin at = ITEMS.at(key);
        Optional<OrderItem> item = OrderItem.of(key);
        if (item.isEmpty()) {
            tape.note(() -> Fault.of(
                    ReadingCode.UNKNOWN_VALUE,
                    at.pointer(),
                    "%s is no item of an order.%s Known: %s."
                            .formatted(Echo.of(key), Nearest.hint(key, KNOWN), String.join(", ", KNOWN))));
            return;
        }
        double percent = form.extraPercent() == null ? 0 : form.extraPercent();
        rules.put(item.get(), new OrderRule(Math.round(percent * 100), pack(item.get(), form, at)));
    }

    private OptionalDouble pack(OrderItem item, ItemForm form, Origin at) {
        boolean counted = item.kind() == Quantity.Kind.COUNT;
        if (form.packCount() != null && !counted) {
            noteWrongPack(at.at("packCount"), "measured by its length. Give packLength");
        }
        if (form.packLength() != null && counted) {
            noteWrongPack(at.at("packLength"), "counted. Give packCount");
        }
        if (counted) {
            return form.packCount() == null ? OptionalDouble.empty() : OptionalDouble.of(form.packCount());
        }
        Optional<Length> pack = tape.given(form.packLength(), at.at("packLength"), Limits.PACK_LENGTH);
        return pack.isPresent() && pack.get().metres() > 0
                ? OptionalDouble.of(pack.get().metres())
                : OptionalDouble.empty();
    }

    private void noteWrongPack(Origin at, String why) {
        tape.note(() -> Fault.of(
                ReadingCode.UNKNOWN_MEMBER, at.pointer(), "This item is %s, or leave the pack out.".formatted(why)));
    }
}
