package org.thalweg.api.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.thalweg.api.wire.CoilAnswer;
import org.thalweg.api.wire.CoilAnswer.RunPanelAnswer;
import org.thalweg.drawing.Area;
import org.thalweg.drawing.Flow;
import org.thalweg.drawing.Ink;
import org.thalweg.drawing.Label;
import org.thalweg.drawing.MarkRow;
import org.thalweg.drawing.MarkRow.Side;
import org.thalweg.drawing.Pen;
import org.thalweg.drawing.Scale;
import org.thalweg.drawing.Sheet;
import org.thalweg.drawing.Table;
import org.thalweg.drawing.Type;
import org.thalweg.units.LengthUnit;

/**
 * Panels one after the other from a coil, drawn row under row.
 *
 * @param coil as answered
 * @param unit of its lengths
 */
record CoilRun(CoilAnswer coil, LengthUnit unit) {

    private static final double AFTER = 8;
    private static final double STRIP = 24;
    private static final double AT_ONCE = 9;
    private static final int MOST_DRAWN = 240;

    void on(Flow flow) {
        flow.heading("Coil " + coil.stock(), 120);
        flow.text(
                "The shortest run takes " + coil.orderedLength().tape() + " of coil; square blanks would take "
                        + coil.squareLength().tape() + ". In the order of laying a run takes "
                        + coil.layingOrder().length().tape() + ".",
                Type.SMALL,
                Ink.BLACK);
        boolean same = coil.run().equals(coil.layingOrder().run());
        run(flow, same ? "The run, also the order of laying" : "The shortest run", coil.run());
        if (!same) {
            flow.skip(AFTER);
            flow.heading("Or in the order of laying", 60);
            table(coil.layingOrder().run()).on(flow);
        }
    }

    private void run(Flow flow, String title, List<RunPanelAnswer> run) {
        flow.skip(AFTER);
        if (run.size() > MOST_DRAWN) {
            flow.heading(title, 60);
            table(run).on(flow);
            return;
        }
        double longest = 0;
        double sum = 0;
        for (RunPanelAnswer panel : run) {
            longest = Math.max(longest, to(panel) - from(panel));
            sum += to(panel) - from(panel);
        }
        double room = flow.width() - 12;
        double shown = Math.max(longest, Math.min(sum, AT_ONCE * sum / Math.max(1, run.size())));
        Scale scale = Scale.fitting(shown, 0, unit, new Area(0, 0, room, STRIP));
        flow.heading(title + ", marks from the square end of the coil  ·  scale along it " + scale.stated(), 130);
        int first = 0;
        while (first < run.size()) {
            double begin = from(run.get(first));
            int next = first + 1;
            while (next < run.size() && (to(run.get(next)) - begin) * scale.points() <= room) {
                next++;
            }
            row(flow, run.subList(first, next), begin, scale);
            first = next;
        }
    }

    private static double from(RunPanelAnswer panel) {
        return Math.min(panel.lower().from().value(), panel.upper().from().value());
    }

    private static double to(RunPanelAnswer panel) {
        return Math.max(panel.lower().to().value(), panel.upper().to().value());
    }

    private void row(Flow flow, List<RunPanelAnswer> panels, double begin, Scale scale) {
        MarkRow above = new MarkRow(Side.ABOVE, 0, 0, 1);
        MarkRow below = new MarkRow(Side.BELOW, 0, 0, 1);
        marks(above, below, panels, begin, 0, 0, scale);
        double height = above.depth() + STRIP + below.depth() + AFTER;
        Area area = flow.take(height);
        Sheet sheet = flow.sheet();
        Scales.tell(sheet, scale);
        double left = area.left() + 6;
        double top = area.top() + above.depth();
        above = new MarkRow(Side.ABOVE, top, area.left(), area.right());
        below = new MarkRow(Side.BELOW, top + STRIP, area.left(), area.right());
        marks(above, below, panels, begin, left, top, scale);
        for (RunPanelAnswer panel : panels) {
            double lowerFrom = left + (panel.lower().from().value() - begin) * scale.points();
            double lowerTo = left + (panel.lower().to().value() - begin) * scale.points();
            double upperFrom = left + (panel.upper().from().value() - begin) * scale.points();
            double upperTo = left + (panel.upper().to().value() - begin) * scale.points();
            sheet.ring(
                    new double[] {upperFrom, top, upperTo, top, lowerTo, top + STRIP, lowerFrom, top + STRIP},
                    Pen.OUTLINE);
            double middle = (lowerFrom + lowerTo + upperFrom + upperTo) / 4;
            if (fits(panel, scale)) {
                sheet.wordsIfClear(label(panel), middle, top + STRIP / 2 + 2.5, 0);
            }
        }
        above.on(sheet);
        below.on(sheet);
    }

    private static void marks(
            MarkRow above,
            MarkRow below,
            List<RunPanelAnswer> panels,
            double begin,
            double left,
            double top,
            Scale scale) {
        for (RunPanelAnswer panel : panels) {
            add(above, panel.upper(), begin, left, top, scale);
            add(below, panel.lower(), begin, left, top + STRIP, scale);
            if (!fits(panel, scale)) {
                double upper = panel.upper().from().value() + panel.upper().to().value();
                above.add(
                        left + (upper / 2 - begin) * scale.points(),
                        top + STRIP / 3,
                        label(panel).text());
            }
        }
    }

    private static Label label(RunPanelAnswer panel) {
        return Label.of(panel.id() + (panel.turned() ? ", turned" : ""), Type.SMALL)
                .within(130);
    }

    private static boolean fits(RunPanelAnswer panel, Scale scale) {
        double clear = Math.min(panel.lower().to().value(), panel.upper().to().value())
                - Math.max(panel.lower().from().value(), panel.upper().from().value());
        return label(panel).width() + 4 <= clear * scale.points();
    }

    private static void add(
            MarkRow row, CoilAnswer.SpanAnswer span, double begin, double left, double edge, Scale scale) {
        row.add(
                left + (span.from().value() - begin) * scale.points(),
                edge,
                span.from().tape(),
                Ink.ACCENT);
        row.add(
                left + (span.to().value() - begin) * scale.points(),
                edge,
                span.to().tape(),
                Ink.ACCENT);
    }

    private static Table table(List<RunPanelAnswer> run) {
        Table table = new Table();
        for (int i = 0; i < 2; i++) {
            table.words("panel", 110)
                    .words("turned", 34)
                    .figures("lower edge, from")
                    .figures("to")
                    .figures("upper edge, from")
                    .figures("to");
        }
        for (int i = 0; i < run.size(); i += 2) {
            List<String> cells = new ArrayList<>();
            for (RunPanelAnswer panel : run.subList(i, Math.min(run.size(), i + 2))) {
                Collections.addAll(
                        cells,
                        panel.id(),
                        panel.turned() ? "turned" : "",
                        panel.lower().from().tape(),
                        panel.lower().to().tape(),
                        panel.upper().from().tape(),
                        panel.upper().to().tape());
            }
            while (cells.size() < 12) {
                cells.add("");
            }
            table.row(cells.toArray(String[]::new));
        }
        return table;
    }
}
