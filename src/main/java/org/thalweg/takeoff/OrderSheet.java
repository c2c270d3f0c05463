package org.thalweg.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;
import org.thalweg.geometry.Tolerance;
import org.thalweg.reference.Gauges;
import org.thalweg.takeoff.OrderLine.Made;
import org.thalweg.takeoff.OrderLine.Use;
import org.thalweg.units.Area;
import org.thalweg.units.Length;
import org.thalweg.units.Mass;

/** Lines of an order while they are added up: like goods on one line, with what they are for. */
final class OrderSheet {

    private final Ordering ordering;
    private final Tolerance tolerance;
    private final Map<OrderItem, Sum> plain = new EnumMap<>(OrderItem.class);
    private final Map<Goods, Sum> ofSheet = new LinkedHashMap<>();
    private final Map<OrderItem, Double> packs = new EnumMap<>(OrderItem.class);

    OrderSheet(Ordering ordering, Tolerance tolerance) {
        this.ordering = ordering;
        this.tolerance = tolerance;
    }

    /** Goods of one line. A metal is known by its key: all it says of itself is long to compare. */
    private record Goods(OrderItem item, String metal, Length thickness, Length width, Optional<String> profile) {

        static Goods of(OrderItem item, Made made) {
            return new Goods(item, made.metal().key(), made.thickness(), made.width(), made.profile());
        }
    }

    private static final class Sum {
        private final Optional<Made> made;
        private double net;
        private double lap;
        private double waste;
        private long pieces;
        private Optional<SheetCut> cut = Optional.empty();
        private final Map<String, double[]> uses = new LinkedHashMap<>();

        Sum(Optional<Made> made) {
            this.made = made;
        }
    }

    /** Adds what is needed for one use; nothing is no line. */
    void add(OrderItem item, Optional<Made> made, String use, Quantity quantity, long pieces) {
        if (quantity.ordered() <= 0) {
            return;
        }
        Sum sum = made.isPresent()
                ? ofSheet.computeIfAbsent(Goods.of(item, made.get()), goods -> new Sum(made))
                : plain.computeIfAbsent(item, goods -> new Sum(made));
        sum.net += quantity.net();
        sum.lap += quantity.lap();
        sum.waste += quantity.waste();
        sum.pieces += pieces;
        sum.uses.computeIfAbsent(use, name -> new double[1])[0] += quantity.net();
    }

    /** Says that an item comes in such packs, where the caller says nothing of them. */
    void packed(OrderItem item, double pack) {
        packs.put(item, pack);
    }

    /** Adds laps and waste that belong to no one use to an item that has uses. */
    void more(OrderItem item, double lap, double waste) {
        Sum sum = plain.get(item);
        if (sum != null) {
            sum.lap += lap;
            sum.waste += Math.max(0, waste);
        }
    }

    /** Says what goods are cut from: those of the item and the width. */
    void cutFrom(SheetCut cut) {
        if (cut.width().isEmpty()) {
            cutFrom(cut, plain.get(cut.item()));
            return;
        }
        Length width = cut.width().get();
        ofSheet.forEach((goods, sum) -> {
            if (goods.item() == cut.item() && goods.width().equals(width)) {
                cutFrom(cut, sum);
            }
        });
    }

    private static void cutFrom(SheetCut cut, @Nullable Sum sum) {
        if (sum != null) {
            sum.cut = Optional.of(cut);
        }
    }

    /** Makes an item as much in all as one run of coil takes. */
    void inOneRun(OrderItem item, Made made, Length run) {
        Sum sum = ofSheet.get(Goods.of(item, made));
        if (sum != null) {
            sum.waste = Math.max(0, run.metres() - sum.net - sum.lap);
        }
    }

    /** Item by item; goods of one item as they came. */
    List<OrderLine> lines() {
        List<OrderLine> lines = new ArrayList<>(plain.size() + ofSheet.size());
        plain.forEach((item, sum) -> lines.add(line(item, sum)));
        ofSheet.forEach((goods, sum) -> lines.add(line(goods.item(), sum)));
        lines.sort(Comparator.comparing(OrderLine::item));
        return lines;
    }

    private OrderLine line(OrderItem item, Sum sum) {
        OrderRule rule =
                sum.cut.isPresent() ? OrderRule.AS_NEEDED : ordering.rule(item).packedBy(packs.get(item));
        Quantity needed = new Quantity(item.kind(), sum.net, sum.lap, sum.waste, 0);
        Quantity bought = sum.cut.map(cut -> cut(needed, cut)).orElse(needed).bought(rule, tolerance);
        List<Use> uses = new ArrayList<>(sum.uses.size());
        sum.uses.forEach((name, amount) -> uses.add(new Use(name, amount[0])));
        return new OrderLine(
                item,
                sum.made,
                uses,
                bought,
                sum.pieces > 0 ? OptionalLong.of(sum.pieces) : OptionalLong.empty(),
                sum.cut.map(SheetCut::taken).orElse(List.of()),
                rule.pack().isPresent()
                        ? OptionalLong.of(
                                Math.round(bought.ordered() / rule.pack().getAsDouble()))
                        : OptionalLong.empty(),
                sum.made.map(made -> mass(made, bought)));
    }

    private static Quantity cut(Quantity needed, SheetCut cut) {
        double bars = cut.unplaced().metres();
        double rack = 0;
        for (SheetCut.Taken taken : cut.taken()) {
            bars += taken.length().metres();
            rack += taken.rack() ? taken.length().metres() : 0;
        }
        return needed.cut(bars, rack);
    }

    private static Mass mass(Made made, Quantity bought) {
        return Gauges.massPerArea(made.metal(), made.thickness())
                .of(new Area(bought.ordered() * made.width().metres()));
    }
}
