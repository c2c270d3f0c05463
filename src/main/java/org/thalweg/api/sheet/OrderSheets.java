package org.thalweg.api.sheet;

import java.util.ArrayList;
import java.util.List;
import org.thalweg.api.problem.Figure;
import org.thalweg.api.wire.LayoutAnswer;
import org.thalweg.api.wire.LayoutAnswer.BlankLine;
import org.thalweg.api.wire.LayoutAnswer.Total;
import org.thalweg.api.wire.OrderLineAnswer;
import org.thalweg.drawing.Flow;
import org.thalweg.drawing.Packet;
import org.thalweg.drawing.Table;

/** What to order, the blanks it holds, and the totals. */
final class OrderSheets {

    private OrderSheets() {}

    static void add(Packet packet, LayoutAnswer answer) {
        Flow flow = new Flow(packet, View.ORDER.word(), "Order list");
        lines(flow, answer.orderLines());
        flow.skip(10);
        blanks(flow, answer.order());
        flow.skip(10);
        totals(flow, answer.totals());
    }

    private static void lines(Flow flow, List<OrderLineAnswer> lines) {
        flow.heading("What to order", 40);
        Table table = new Table()
                .words("item", 90)
                .words("of", 190)
                .words("for", 250)
                .figures("net")
                .figures("laps")
                .figures("waste")
                .figures("to order")
                .words("unit", 40)
                .figures("pieces, packs")
                .figures("mass");
        for (OrderLineAnswer line : lines) {
            table.row(
                    Lettered.title(Lettered.spaced(line.item())),
                    made(line),
                    uses(line),
                    Lettered.number(line.net()),
                    Lettered.number(line.lap()),
                    Lettered.number(line.waste()),
                    Lettered.number(line.ordered()),
                    Lettered.unit(line.unit()),
                    counts(line),
                    line.mass().map(Figure::text).orElse(""));
        }
        table.on(flow);
    }

    private static String made(OrderLineAnswer line) {
        List<String> words = new ArrayList<>();
        line.made().ifPresent(made -> {
            made.profile().ifPresent(words::add);
            words.add(made.metal());
            words.add(Lettered.number(made.thickness()) + " thick");
            words.add(made.width().tape() + " wide flat");
        });
        line.bars()
                .ifPresent(bars -> bars.forEach(taken -> words.add(taken.count() + " × " + taken.stock() + " "
                        + taken.length().tape())));
        line.rack().ifPresent(rack -> words.add(Lettered.number(rack) + " from the rack"));
        return String.join(", ", words);
    }

    private static String uses(OrderLineAnswer line) {
        return String.join(
                ", ", line.uses().stream().map(OrderLineAnswer.Use::use).toList());
    }

    private static String counts(OrderLineAnswer line) {
        List<String> counts = new ArrayList<>();
        line.pieces().ifPresent(pieces -> counts.add(pieces + " pcs"));
        line.packs().ifPresent(packs -> counts.add(packs + " packs"));
        return String.join(", ", counts);
    }

    private static void blanks(Flow flow, List<BlankLine> blanks) {
        flow.heading("Panel blanks, the longest first", 40);
        Table table = new Table()
                .figures("count")
                .figures("length")
                .figures("cover")
                .figures("flat width")
                .words("marks", 560);
        for (BlankLine blank : blanks) {
            table.row(
                    Integer.toString(blank.count()),
                    blank.blankLength().tape(),
                    blank.cover().tape(),
                    blank.girth().tape(),
                    Marks.listed(blank.marks()));
        }
        table.on(flow);
    }

    private static void totals(Flow flow, List<Total> totals) {
        flow.heading("Totals", 40);
        Table table = new Table().words("of", 200).figures("quantity").words("unit", 60);
        for (Total total : totals) {
            String kind = total.of().map(of -> ", " + Lettered.spaced(of)).orElse("");
            table.row(
                    Lettered.title(Lettered.spaced(total.item())) + kind,
                    Lettered.number(total.quantity()),
                    Lettered.unit(total.unit()));
        }
        table.on(flow);
    }
}
