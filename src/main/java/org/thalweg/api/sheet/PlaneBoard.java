package org.thalweg.api.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.thalweg.api.wire.PanelAnswer;
import org.thalweg.api.wire.ReadRoof.EdgeAnswer;
import org.thalweg.drawing.Area;
import org.thalweg.drawing.Arrow;
import org.thalweg.drawing.Bounds;
import org.thalweg.drawing.Fit;
import org.thalweg.drawing.Ink;
import org.thalweg.drawing.Inside;
import org.thalweg.drawing.Label;
import org.thalweg.drawing.Pen;
import org.thalweg.drawing.Sheet;
import org.thalweg.drawing.Type;
import org.thalweg.drawing.Upright;
import org.thalweg.units.LengthUnit;

/** One plane on a sheet, seen square to it, with what several views draw of it. */
final class PlaneBoard {

    private static final double BESIDE = 7;

    private final LaidPlaneView view;
    private final Sheet sheet;
    private final Fit fit;
    private final double[] outline;

    PlaneBoard(LaidPlaneView view, Sheet sheet, LengthUnit unit, Area area) {
        this.view = view;
        this.sheet = sheet;
        List<double[]> shapes = new ArrayList<>();
        shapes.add(view.outline());
        view.panels().forEach(panel -> shapes.add(LaidPlaneView.shown(panel)));
        this.fit = Fit.middle(Bounds.of(shapes), unit, area);
        this.outline = fit.corners(view.outline());
        sheet.scale(fit.scale().stated() + " in the plane");
    }

    Fit fit() {
        return fit;
    }

    void panels(Pen pen) {
        for (PanelAnswer panel : view.panels()) {
            sheet.ring(fit.corners(LaidPlaneView.shown(panel)), pen);
            panel.finished()
                    .openings()
                    .forEach(hole -> sheet.ring(
                            fit.corners(Places.of(
                                    hole.outline(),
                                    panel.place().across(),
                                    panel.place().up())),
                            pen));
        }
    }

    /** Outline, openings and edges, each edge by its kind's pen, with what {@code words} says of it beside it. */
    void edges(Function<EdgeAnswer, String> words) {
        for (double[] opening : view.openings()) {
            sheet.fill(fit.corners(opening), Ink.WASH);
        }
        for (EdgeAnswer edge : view.edges()) {
            sheet.run(ends(edge), EdgePens.of(edge.kind()));
        }
        for (EdgeAnswer edge : view.edges()) {
            letter(words.apply(edge), edge.id(), ends(edge));
        }
    }

    private double[] ends(EdgeAnswer edge) {
        double[] from = view.onto(edge.from());
        double[] to = view.onto(edge.to());
        return fit.corners(new double[] {from[0], from[1], to[0], to[1]});
    }

    /** Along the edge, outside of the plane where there is room; only its name where it is too short. */
    private void letter(String text, String name, double[] ends) {
        double alongX = ends[2] - ends[0];
        double alongY = ends[3] - ends[1];
        double length = Math.hypot(alongX, alongY);
        if (length < 1) {
            return;
        }
        double outX = -alongY / length;
        double outY = alongX / length;
        double side = Inside.of(outline, (ends[0] + ends[2]) / 2 + outX, (ends[1] + ends[3]) / 2 + outY) ? -1 : 1;
        double turn = Upright.turn(alongX, alongY);
        Label whole = Label.of(text, Type.SMALL).onPaper();
        boolean fits = whole.width() < length * 1.4 + 20;
        for (Label label : fits
                ? List.of(whole, Label.of(name, Type.TINY).onPaper())
                : List.of(Label.of(name, Type.TINY).onPaper())) {
            for (double off : new double[] {BESIDE, -BESIDE, 2 * BESIDE + 2}) {
                for (double share : new double[] {0.5, 0.3, 0.7}) {
                    double x = ends[0] + share * alongX + side * off * outX;
                    double y = ends[1] + share * alongY + side * off * outY;
                    double drop = label.type().size() * 0.35;
                    double downX = Math.sin(Math.toRadians(turn)) * drop;
                    double downY = Math.cos(Math.toRadians(turn)) * drop;
                    if (sheet.wordsIfClear(label, x + downX, y + downY, turn)) {
                        return;
                    }
                }
            }
        }
    }

    /** An arrow up the slope in the upper left corner of {@code area}, with the plane's pitch; what a plane without one is. */
    void bearings(Area area) {
        double x = area.left() + 12;
        double foot = area.top() + 44;
        if (view.plane().level() && view.laid().isEmpty()) {
            sheet.words("level: the sheet's top is the roof's +y", x - 8, foot - 26, Type.TINY);
            return;
        }
        Arrow.draw(sheet, x, foot, x, foot - 30, Pen.THIN);
        sheet.words("up the slope", x + 5, foot - 18, Type.TINY);
        sheet.words(
                Lettered.pitch(view.plane().pitch()) + ", "
                        + Lettered.degrees(view.plane().slopeDeg()),
                x + 5,
                foot - 9,
                Type.TINY);
        sheet.words("water runs to the foot of the sheet", x + 5, foot, Type.TINY);
    }
}
