package org.thalweg.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.thalweg.api.problem.Figure;
import org.thalweg.api.wire.OrderLineAnswer;
import org.thalweg.takeoff.OrderLine;
import org.thalweg.takeoff.OrderLines;
import org.thalweg.takeoff.Quantity;
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
        double ordered = Math.max(round(kind, quantity.ordered()), again(kind, net + lap));
        return new OrderLineAnswer(
                line.item().key(),
                line.made().map(this::made),
                uses,
                net,
                lap,
                again(kind, ordered - net - lap),
                ordered,
                unit(kind),
                boxed(line.pieces()),
                boxed(line.packs()),
                line.mass()
                        .map(mass -> new Figure(
                                units.mass().round(mass), units.mass().symbol())));
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
