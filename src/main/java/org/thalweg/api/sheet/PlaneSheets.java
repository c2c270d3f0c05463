package org.thalweg.api.sheet;

import java.util.List;
import org.thalweg.api.wire.LayoutAnswer;
import org.thalweg.api.wire.LayoutAnswer.LaidPlane;
import org.thalweg.api.wire.PanelAnswer;
import org.thalweg.drawing.Area;
import org.thalweg.drawing.Arrow;
import org.thalweg.drawing.Ink;
import org.thalweg.drawing.Label;
import org.thalweg.drawing.Packet;
import org.thalweg.drawing.Pen;
import org.thalweg.drawing.Roomiest;
import org.thalweg.drawing.Sheet;
import org.thalweg.drawing.Type;
import org.thalweg.panel.Lead;
import org.thalweg.units.LengthUnit;

/** Every plane as it is: edges with their lengths, panels with their marks, where laying starts. */
final class PlaneSheets {

    private static final double MARGIN = 24;
    private static final double FACTS = 14;

    private final LaidPlaneView view;
    private final Sheet sheet;
    private final PlaneBoard board;

    private PlaneSheets(LaidPlaneView view, Sheet sheet, LengthUnit unit, Area area) {
        this.view = view;
        this.sheet = sheet;
        this.board = new PlaneBoard(view, sheet, unit, area);
    }

    static void add(Packet packet, LayoutAnswer answer, List<LaidPlaneView> views) {
        Area field = packet.field();
        for (LaidPlaneView view : views) {
            Sheet sheet =
                    packet.open(View.PLANES.word(), "Plane " + view.plane().id());
            sheet.words(facts(view, answer), field.left(), field.top() + Type.TEXT.size(), Type.TEXT);
            Area rest = field.below(FACTS);
            PlaneSheets drawn = new PlaneSheets(view, sheet, answer.units().length(), rest.inside(MARGIN));
            drawn.draw();
            drawn.board.bearings(rest);
        }
    }

    private static String facts(LaidPlaneView view, LayoutAnswer answer) {
        String area = "Area " + Lettered.number(view.plane().area()) + " "
                + Lettered.unit(answer.units().area());
        return view.laid().map(laid -> area + "  ·  " + facts(laid)).orElse(area + "  ·  no panels: see the findings");
    }

    private static String facts(LaidPlane laid) {
        String first = laid.firstWidth().value() == 0
                ? "the first panel is whole"
                : "the first panel is " + laid.firstWidth().tape() + " wide";
        return laid.panelCount() + " panels, laid from the " + Lettered.word(laid.leads()) + "  ·  " + first;
    }

    private void draw() {
        board.panels(Pen.THIN);
        board.edges(edge -> edge.id() + " " + Lettered.word(edge.kind()) + " "
                + edge.length().tape());
        view.laid().ifPresent(this::start);
        view.panels().forEach(this::mark);
    }

    /** A line up the plane where the first panel begins, and an arrow the way laying goes. */
    private void start(LaidPlane laid) {
        if (view.panels().isEmpty()) {
            return;
        }
        double[] first = board.fit().corners(LaidPlaneView.shown(view.panels().get(0)));
        boolean left = laid.leads() == Lead.LEFT;
        double x = first[0];
        double low = first[1];
        double high = first[1];
        for (int i = 0; i < first.length; i += 2) {
            x = left ? Math.min(x, first[i]) : Math.max(x, first[i]);
            low = Math.max(low, first[i + 1]);
            high = Math.min(high, first[i + 1]);
        }
        sheet.line(x, low + 14, x, high - 4, Pen.MARK);
        Arrow.draw(sheet, x, low + 12, left ? x + 26 : x - 26, low + 12, Pen.MARK);
        Label start = Label.of("start", Type.TINY).in(Ink.ACCENT).onPaper();
        sheet.wordsIfClear(start, left ? x + 13 : x - 13, low + 20, 0);
    }

    /** The whole mark up the panel where there is room, else the number of its strip. */
    private void mark(PanelAnswer panel) {
        double[] ring = board.fit().corners(LaidPlaneView.shown(panel));
        double[] at = Roomiest.of(List.of(ring));
        double rise = extent(ring, 1);
        double wide = extent(ring, 0);
        Label whole = Label.of(panel.mark(), Type.SMALL).onPaper();
        double half = Type.SMALL.size() * 0.35;
        if (wide > whole.width() + 4 && sheet.wordsIfClear(whole, at[0], at[1] + half, 0)) {
            return;
        }
        if (rise > whole.width() + 6
                && wide > Type.SMALL.size()
                && sheet.wordsIfClear(whole, at[0] + half, at[1], 90)) {
            return;
        }
        String number = panel.mark().substring(panel.plane().length() + 1);
        Label strip = Label.of(number, Type.TINY).onPaper();
        if (!sheet.wordsIfClear(strip, at[0], at[1] + Type.TINY.size() * 0.35, 0)) {
            sheet.wordsIfClear(strip, at[0] + Type.TINY.size() * 0.35, at[1], 90);
        }
    }

    private static double extent(double[] ring, int first) {
        double least = ring[first];
        double most = ring[first];
        for (int i = first; i < ring.length; i += 2) {
            least = Math.min(least, ring[i]);
            most = Math.max(most, ring[i]);
        }
        return most - least;
    }
}
