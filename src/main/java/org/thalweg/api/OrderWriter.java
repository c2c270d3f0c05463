package org.thalweg.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.thalweg.api.problem.Figure;
import org.thalweg.api.wire.OrderLineAnswer;
import org.thalweg.stock.Grid;
import org.thalweg.takeoff.OrderLine;
import org.thalweg.takeoff.OrderLines;
import org.thalweg.takeoff.Quantity;
import org.thalweg.takeoff.SheetCut;
import org.thalweg.units.Area;
import org.thalweg.units.Length;
import org.thalweg.units.Units;

/**
 * Writes order lines so that they add up as printed: the uses to the net, the net, the laps and the waste to what is ordered.
 * Uses and laps are rounded; what is ordered is rounded and is more than both, and the waste is what lies between.
 */
final class OrderWriter {

    /** UN/CEFACT Recommendation 20: a piece. */
    static final String PIECE = "C62";

    private final Units units;

    OrderWriter(Units units) {
        this.units = units;
    }

    List<OrderLineAnswer> lines(OrderLines lines) {
        return lines.lines().stream().map(this::line).toList();
    }

    private OrderLineAnswer line(OrderLine line) {
        Quantity quantity = line.quantity();
        Quantity.Kind kind = quantity.kind();
        List<OrderLineAnswer.Use> uses = new ArrayList<>(line.uses().size());
        double net = 0;
        for (OrderLine.Use use : line.uses()) {
            double amount = round(kind, use.amount());
            net += amount;
            uses.add(new OrderLineAnswer.Use(use.name(), amount));
        }
        net = again(kind, net);
        double lap = round(kind, quantity.lap());
        double rack = round(kind, quantity.rack());
        double needed = Math.max(round(kind, quantity.ordered() + quantity.rack()), again(kind, net + lap));
        boolean cut = !line.bars().isEmpty();
        return new OrderLineAnswer(
                line.item().key(),
                line.made().map(this::made),
                uses,
                net,
                lap,
                again(kind, needed - net - lap),
                again(kind, needed - rack),
                unit(kind),
                cut ? Optional.of(rack) : Optional.empty(),
                boxed(line.pieces()),
                cut ? Optional.of(line.bars().stream().map(this::taken).toList()) : Optional.empty(),
                boxed(line.packs()),
                line.mass()
                        .map(mass -> new Figure(
                                units.mass().round(mass), units.mass().symbol())));
    }

    private OrderLineAnswer.BarsTaken taken(SheetCut.Taken taken) {
        return new OrderLineAnswer.BarsTaken(
                taken.bar().id(), RoofWriter.marked(Grid.length(taken.bar().length()), units), taken.count());
    }

    private OrderLineAnswer.Made made(OrderLine.Made made) {
        return new OrderLineAnswer.Made(
                made.metal().key(),
                units.length().round(made.thickness()),
                RoofWriter.marked(made.width(), units),
                made.profile());
    }

    private double round(Quantity.Kind kind, double amount) {
        return switch (kind) {
            case LENGTH -> units.length().round(Length.metres(amount));
            case AREA -> units.area().round(new Area(amount));
            case COUNT -> Math.rint(amount);
        };
    }

    /** The nearest printed number to a sum of printed numbers. */
    private double again(Quantity.Kind kind, double printed) {
        return switch (kind) {
            case LENGTH -> units.length().round(units.length().of(printed));
            case AREA -> units.area().round(units.area().of(printed));
            case COUNT -> printed;
        };
    }

    private String unit(Quantity.Kind kind) {
        return switch (kind) {
            case LENGTH -> units.length().code();
            case AREA -> units.area().code();
            case COUNT -> PIECE;
        };
    }

    private static Optional<Long> boxed(OptionalLong number) {
        return number.isPresent() ? Optional.of(number.getAsLong()) : Optional.empty();
    }
}
