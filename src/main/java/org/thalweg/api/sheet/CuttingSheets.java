package org.thalweg.api.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.thalweg.api.wire.CoilAnswer;
import org.thalweg.api.wire.MarkedLength;
import org.thalweg.api.wire.SheetCutAnswer;
import org.thalweg.api.wire.StockCutAnswer.BarAnswer;
import org.thalweg.api.wire.StockCutAnswer.PlacedAnswer;
import org.thalweg.drawing.Area;
import org.thalweg.drawing.Flow;
import org.thalweg.drawing.Hatch;
import org.thalweg.drawing.Ink;
import org.thalweg.drawing.Label;
import org.thalweg.drawing.MarkRow;
import org.thalweg.drawing.MarkRow.Side;
import org.thalweg.drawing.Packet;
import org.thalweg.drawing.Pen;
import org.thalweg.drawing.Scale;
import org.thalweg.drawing.Sheet;
import org.thalweg.drawing.Table;
import org.thalweg.drawing.Type;
import org.thalweg.units.LengthUnit;

/** How bars and coil are cut up. */
final class CuttingSheets {

    private static final double COUNT = 40;
    private static final double BAR = 15;
    private static final double AFTER = 8;
    /** Bars of more pieces, and coils of more panels, are told by a table. */
    private static final int DRAWN = 40;

    private static final int BESIDE = 3;

    private CuttingSheets() {}

    static void add(Packet packet, Optional<List<SheetCutAnswer>> cuts, Optional<CoilAnswer> coil, LengthUnit unit) {
        List<SheetCutAnswer> bars = cuts.orElse(List.of());
        if (bars.isEmpty() && coil.isEmpty()) {
            return;
        }
        Flow flow = new Flow(packet, View.CUTTING.word(), "Cutting");
        if (!bars.isEmpty()) {
            flow.text(
                    "Hook the tape at the left end of every bar; marks are where a piece ends, a number before a bar is how many are"
                            + " cut so. Hatched is what is left.",
                    Type.SMALL,
                    Ink.GREY);
        }
        bars.forEach(cut -> add(flow, cut, unit));
        coil.ifPresent(run -> new CoilRun(run, unit).on(flow));
    }

    private static void add(Flow flow, SheetCutAnswer cut, LengthUnit unit) {
        String width =
                cut.width().map(wide -> ", " + wide.tape() + " wide flat").orElse("");
        double longest = cut.bars().stream()
                .mapToDouble(bar -> bar.length().value())
                .max()
                .orElse(1);
        Scale scale = Scale.fitting(longest, 0, unit, new Area(0, 0, flow.width() - COUNT - 6, BAR));
        flow.heading(Lettered.title(Lettered.word(cut.item())) + width + "  ·  scale " + scale.stated(), 90);
        flow.text(bound(cut), Type.SMALL, Ink.BLACK);
        if (!cut.unplaced().isEmpty()) {
            flow.text(
                    "On no bar, order them as long as they are: "
                            + String.join(
                                    "; ",
                                    cut.unplaced().stream()
                                            .map(piece -> piece.count() + " × " + piece.id() + " ("
                                                    + Lettered.word(piece.reason()) + ")")
                                            .toList())
                            + ".",
                    Type.SMALL,
                    Ink.ACCENT);
        }
        Map<Pattern, List<BarAnswer>> alike = new LinkedHashMap<>();
        for (BarAnswer bar : cut.bars()) {
            alike.computeIfAbsent(Pattern.of(bar), pattern -> new ArrayList<>()).add(bar);
        }
        alike.values().forEach(bars -> bar(flow, bars, scale));
        flow.skip(AFTER);
    }

    /**
     * Where a bar is cut, whatever its pieces are called.
     *
     * @param stock  which sort
     * @param places where every piece begins and ends
     * @param offcut what is left
     * @param kept   whether that goes back to the rack
     */
    private record Pattern(String stock, List<MarkedLength> places, MarkedLength offcut, boolean kept) {

        static Pattern of(BarAnswer bar) {
            List<MarkedLength> places = new ArrayList<>();
            bar.pieces().forEach(piece -> Collections.addAll(places, piece.from(), piece.to()));
            return new Pattern(bar.stock(), places, bar.offcut(), bar.kept());
        }
    }

    private static String bound(SheetCutAnswer cut) {
        String proven = cut.proven()
                ? "proven: no plan costs less"
                : "not proven: a plan could cost " + cut.gap() + " less at most";
        String kept = cut.keptValue() > 0 ? " Off-cuts that are kept are worth " + cut.keptValue() + "." : "";
        return cut.barCount() + (cut.barCount() == 1 ? " bar" : " bars") + ", cost " + cut.cost() + ", lower bound "
                + cut.lowerBound() + ", " + proven + "." + kept;
    }

    /** Bars with the same cuts, drawn once; the pieces of each are told where they are not the same. */
    private static void bar(Flow flow, List<BarAnswer> bars, Scale scale) {
        BarAnswer bar = bars.get(0);
        List<PlacedAnswer> pieces = bar.pieces();
        int count = bars.stream().mapToInt(BarAnswer::count).sum();
        boolean single = bars.size() == 1;
        boolean drawn = pieces.size() <= DRAWN;
        double title = Type.SMALL.leading() + 3;
        MarkRow measured = new MarkRow(Side.BELOW, 0, 0, 1);
        MarkRow names = new MarkRow(Side.ABOVE, 0, 0, 1);
        if (drawn) {
            marks(measured, names, bar, single, 0, 0, scale);
        }
        double height = title + names.depth() + BAR + measured.depth() + 4;
        Area area = flow.take(height);
        Sheet sheet = flow.sheet();
        Scales.tell(sheet, scale);
        sheet.words(
                bar.stock() + ", " + bar.length().tape() + ": off-cut "
                        + bar.offcut().tape()
                        + (bar.kept() ? ", back to the rack" : "")
                        + (bar.kerfs() > 0 ? ", the saw takes " + Lettered.number(bar.kerfs()) : ""),
                area.left() + COUNT,
                area.top() + Type.SMALL.size() + 1,
                Type.SMALL);
        double left = area.left() + COUNT;
        double top = area.top() + title + names.depth();
        sheet.words(count + " ×", area.left(), top + BAR - 4, Type.HEAD);
        draw(sheet, bar, left, top, scale);
        if (drawn) {
            MarkRow below = new MarkRow(Side.BELOW, top + BAR, left - 6, area.right());
            MarkRow above = new MarkRow(Side.ABOVE, top, left - 6, area.right());
            marks(below, above, bar, single, left, top, scale);
            if (single) {
                within(sheet, bar, left, top, scale);
            }
            above.on(sheet);
            below.on(sheet);
        } else if (single) {
            table(pieces).on(flow);
            flow.skip(AFTER);
        }
        if (!single) {
            each(flow, bars);
        }
    }

    private static void each(Flow flow, List<BarAnswer> bars) {
        List<String> each = new ArrayList<>();
        for (BarAnswer bar : bars) {
            String times = bar.count() > 1 ? bar.count() + " × " : "";
            each.add(times
                    + String.join(
                            " + ", bar.pieces().stream().map(PlacedAnswer::id).toList()));
        }
        flow.text("On them, from the hooked end: " + String.join("; ", each) + ".", Type.SMALL, Ink.BLACK);
        flow.skip(AFTER / 2);
    }

    private static void draw(Sheet sheet, BarAnswer bar, double left, double top, Scale scale) {
        double points = scale.points();
        double right = left + bar.length().value() * points;
        double end = left;
        for (PlacedAnswer piece : bar.pieces()) {
            double from = left + piece.from().value() * points;
            double to = left + piece.to().value() * points;
            if (from > end + 0.05) {
                sheet.fill(box(end, top, from, top + BAR), Ink.FAINT);
            }
            sheet.ring(box(from, top, to, top + BAR), Pen.THIN);
            end = to;
        }
        double offcut = Math.min(right, right - bar.offcut().value() * points);
        if (offcut > end + 0.05) {
            sheet.fill(box(end, top, offcut, top + BAR), Ink.FAINT);
        }
        Hatch.draw(sheet, new Area(offcut, top, right - offcut, BAR), 4);
        sheet.ring(box(left, top, right, top + BAR), Pen.OUTLINE);
    }

    private static double[] box(double left, double top, double right, double bottom) {
        return new double[] {left, top, right, top, right, bottom, left, bottom};
    }

    /** Where pieces end, and the names of those too short to hold them. */
    private static void marks(
            MarkRow measured, MarkRow names, BarAnswer bar, boolean named, double left, double top, Scale scale) {
        for (PlacedAnswer piece : bar.pieces()) {
            double to = left + piece.to().value() * scale.points();
            measured.add(to, top + BAR, piece.to().tape(), Ink.ACCENT);
            if (named && !fits(piece, scale)) {
                double from = left + piece.from().value() * scale.points();
                names.add((from + to) / 2, top, named(piece).text());
            }
        }
    }

    private static Label named(PlacedAnswer piece) {
        return Label.of(piece.id(), Type.SMALL).within(120);
    }

    private static boolean fits(PlacedAnswer piece, Scale scale) {
        return named(piece).width() + 4 <= (piece.to().value() - piece.from().value()) * scale.points();
    }

    private static void within(Sheet sheet, BarAnswer bar, double left, double top, Scale scale) {
        for (PlacedAnswer piece : bar.pieces()) {
            if (fits(piece, scale)) {
                double middle = (piece.from().value() + piece.to().value()) / 2;
                sheet.wordsIfClear(named(piece), left + middle * scale.points(), top + BAR / 2 + 2.5, 0);
            }
        }
    }

    private static Table table(List<PlacedAnswer> pieces) {
        Table table = new Table();
        for (int i = 0; i < BESIDE; i++) {
            table.words("piece", 110).figures("from").figures("to");
        }
        for (int i = 0; i < pieces.size(); i += BESIDE) {
            List<String> cells = new ArrayList<>();
            for (PlacedAnswer piece : pieces.subList(i, Math.min(pieces.size(), i + BESIDE))) {
                Collections.addAll(
                        cells, piece.id(), piece.from().tape(), piece.to().tape());
            }
            while (cells.size() < 3 * BESIDE) {
                cells.add("");
            }
            table.row(cells.toArray(String[]::new));
        }
        return table;
    }
}
