package org.thalweg.api.sheet;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.thalweg.api.wire.LayoutAnswer;
import org.thalweg.api.wire.LayoutAnswer.LaidPlane;
import org.thalweg.api.wire.PanelAnswer;
import org.thalweg.api.wire.ReadRoof.EdgeAnswer;
import org.thalweg.api.wire.ReadRoof.PlaneAnswer;
import org.thalweg.drawing.Area;
import org.thalweg.drawing.Arrow;
import org.thalweg.drawing.Bounds;
import org.thalweg.drawing.Dot;
import org.thalweg.drawing.Fit;
import org.thalweg.drawing.Flow;
import org.thalweg.drawing.Ink;
import org.thalweg.drawing.Label;
import org.thalweg.drawing.Legend;
import org.thalweg.drawing.Packet;
import org.thalweg.drawing.Pen;
import org.thalweg.drawing.Roomiest;
import org.thalweg.drawing.Sheet;
import org.thalweg.drawing.Table;
import org.thalweg.drawing.Type;

/** The roof from above, and its planes and edges in tables. */
final class MapSheets {

    private static final double LEGEND = 132;
    private static final double MARGIN = 16;
    private static final double ARROW = 22;
    private static final double LONGEST_NAME = 90;

    private final LayoutAnswer answer;
    private final List<LaidPlaneView> views;
    private final Sheet sheet;
    private final Fit fit;

    private MapSheets(LayoutAnswer answer, List<LaidPlaneView> views, Sheet sheet, Area area) {
        this.answer = answer;
        this.views = views;
        this.sheet = sheet;
        this.fit =
                Fit.middle(Bounds.of(LaidPlaneView.plans(views)), answer.units().length(), area);
    }

    static void add(Packet packet, LayoutAnswer answer, List<LaidPlaneView> views) {
        Sheet sheet = packet.open(View.MAP.word(), View.MAP.title());
        Area field = packet.field();
        MapSheets map = new MapSheets(
                answer, views, sheet, field.leftPart(field.width() - LEGEND).inside(MARGIN));
        sheet.scale(map.fit.scale().stated() + " in plan");
        map.draw();
        map.legend(field.beyond(field.width() - LEGEND));
        tables(packet, answer, views);
    }

    private void draw() {
        views.forEach(this::panels);
        views.forEach(this::openings);
        answer.roof().edges().forEach(edge -> sheet.run(ends(edge), EdgePens.of(edge.kind())));
        views.forEach(this::name);
        answer.roof().edges().forEach(this::name);
        views.forEach(this::marks);
    }

    private double[] ends(EdgeAnswer edge) {
        return fit.corners(new double[] {
            edge.from().x(), edge.from().y(), edge.to().x(), edge.to().y()
        });
    }

    private void panels(LaidPlaneView view) {
        for (PanelAnswer panel : view.panels()) {
            sheet.ring(fit.corners(view.plan(LaidPlaneView.shown(panel))), Pen.RULE);
        }
    }

    /** An opening is struck through, as on any plan. */
    private void openings(LaidPlaneView view) {
        for (double[] opening : view.openings()) {
            double[] ring = fit.corners(view.plan(opening));
            sheet.fill(ring, Ink.WASH);
            int half = ring.length / 4 * 2;
            sheet.line(ring[0], ring[1], ring[half], ring[half + 1], Pen.RULE);
            if (ring.length >= 8) {
                int next = (half + 2) % ring.length;
                sheet.line(ring[2], ring[3], ring[next], ring[next + 1], Pen.RULE);
            }
        }
    }

    /** Its name and pitch where there is most room, over an arrow down the slope. */
    private void name(LaidPlaneView view) {
        List<double[]> rings = new ArrayList<>();
        rings.add(fit.corners(view.plan(view.outline())));
        view.openings().forEach(opening -> rings.add(fit.corners(view.plan(opening))));
        double[] at = Roomiest.of(rings);
        PlaneAnswer plane = view.plane();
        letter(plane.id(), at[0], at[1] - 1);
        String pitch = plane.level() ? "level" : Lettered.pitch(plane.pitch());
        sheet.wordsIfClear(Label.of(pitch, Type.SMALL).onPaper(), at[0], at[1] + 8, 0);
        if (!plane.level() || view.laid().flatMap(LaidPlane::frame).isPresent()) {
            down(view, at[0], at[1] + 12);
        }
    }

    /** As large as is clear, higher up or lower down where it must be. */
    private void letter(String name, double x, double y) {
        for (Type type : List.of(Type.TEXT, Type.SMALL, Type.TINY)) {
            for (double lift : new double[] {0, -9, 18, -18, 27}) {
                if (sheet.wordsIfClear(Label.cut(name, type, LONGEST_NAME).onPaper(), x, y + lift, 0)) {
                    return;
                }
            }
        }
    }

    private void down(LaidPlaneView view, double x, double y) {
        double right = -view.frame().up().x();
        double up = -view.frame().up().y();
        double length = Math.hypot(right, up);
        if (length > 0) {
            double dx = right / length * ARROW;
            double dy = -up / length * ARROW;
            double tailX = Math.abs(dx) > Math.abs(dy) ? x - dx / 2 : x + 14;
            double tailY = Math.abs(dx) > Math.abs(dy) ? y + 3 : y - 12 - dy / 2;
            Arrow.draw(sheet, tailX, tailY, tailX + dx, tailY + dy, Pen.THIN);
        }
    }

    /** Beside the edge, on whichever side and at whichever part of it there is room. */
    private void name(EdgeAnswer edge) {
        double[] ends = ends(edge);
        double length = Math.hypot(ends[2] - ends[0], ends[3] - ends[1]);
        Label label = Label.of(edge.id(), Type.TINY).onPaper();
        if (length == 0) {
            return;
        }
        double outX = -(ends[3] - ends[1]) / length;
        double outY = (ends[2] - ends[0]) / length;
        for (double share : new double[] {0.5, 0.35, 0.65, 0.2, 0.8}) {
            for (double off : new double[] {6, -6}) {
                double x = ends[0] + share * (ends[2] - ends[0]) + off * outX;
                double y = ends[1] + share * (ends[3] - ends[1]) + off * outY + Type.TINY.size() * 0.3;
                if (sheet.wordsIfClear(label, x, y, 0)) {
                    return;
                }
            }
        }
    }

    /** Numbers of strips at the foot of their panels, and a wedge where laying starts. */
    private void marks(LaidPlaneView view) {
        for (PanelAnswer panel : view.panels()) {
            if (panel.piece() > 1) {
                continue;
            }
            double[] shown = LaidPlaneView.shown(panel);
            double[] ring = fit.corners(view.plan(shown));
            double[] at = Roomiest.of(List.of(ring));
            if (panel.strip() == 1) {
                sheet.dots(new double[] {at[0], at[1]}, Dot.WEDGE);
            } else {
                sheet.wordsIfClear(
                        Label.of(Integer.toString(panel.strip()), Type.TINY).in(Ink.GREY),
                        at[0],
                        at[1] + Type.TINY.size() * 0.35,
                        0);
            }
        }
    }

    private void legend(Area area) {
        Legend legend = new Legend(sheet, area.inside(4));
        legend.heading("Edges");
        Set<Pen> used = EnumSet.noneOf(Pen.class);
        answer.roof().edges().forEach(edge -> used.add(EdgePens.of(edge.kind())));
        used.forEach(pen -> legend.pen(pen, EdgePens.meaning(pen)));
        legend.skip(4);
        legend.heading("Panels");
        legend.pen(Pen.RULE, "panels as they show");
        legend.dot(Dot.WEDGE, "first strip, where laying starts");
        legend.note("A small number is a strip: the mark on the panel is the plane's name, a dash and that number.");
        legend.note("Arrows point down the slope.");
        legend.skip(4);
        legend.heading("Bearings");
        double x = area.left() + 16;
        double y = legend.y() + 34;
        Arrow.draw(sheet, x, y, x, y - 30, Pen.THIN);
        Arrow.draw(sheet, x, y, x + 30, y, Pen.THIN);
        sheet.words("+y", x - 4, y - 33, Type.TINY);
        sheet.words("+x", x + 33, y + 2, Type.TINY);
        Legend rest = new Legend(sheet, new Area(area.left() + 4, y + 8, area.width() - 8, 100));
        rest.note("Axes of the roof as posted; true north is not known.");
    }

    private static void tables(Packet packet, LayoutAnswer answer, List<LaidPlaneView> views) {
        Flow flow = new Flow(packet, View.MAP.word(), "Planes and edges");
        flow.heading("Planes", 40);
        Table planes = new Table()
                .words("plane", 180)
                .words("pitch", 60)
                .figures("slope")
                .figures("area (" + Lettered.unit(answer.units().area()) + ")")
                .figures("panels")
                .words("laid from the", 60)
                .figures("first panel");
        for (LaidPlaneView view : views) {
            planes.row(
                    view.plane().id(),
                    Lettered.pitch(view.plane().pitch()),
                    Lettered.degrees(view.plane().slopeDeg()),
                    Lettered.number(view.plane().area()),
                    view.laid().map(laid -> Integer.toString(laid.panelCount())).orElse("none"),
                    view.laid().map(laid -> Lettered.word(laid.leads())).orElse(""),
                    view.laid()
                            .map(laid -> laid.firstWidth().value() == 0
                                    ? "whole"
                                    : laid.firstWidth().tape())
                            .orElse(""));
        }
        planes.on(flow);
        flow.skip(10);
        flow.heading("Edges", 40);
        Table edges = new Table()
                .words("edge", 50)
                .words("kind", 80)
                .words("planes", 240)
                .figures("length")
                .figures("slope")
                .figures("bend")
                .words("angle to the level line, by plane", 200);
        for (EdgeAnswer edge : answer.roof().edges()) {
            edges.row(
                    edge.id(),
                    Lettered.word(edge.kind()),
                    String.join(", ", edge.planes()),
                    edge.length().tape(),
                    Lettered.degrees(edge.slopeDeg()),
                    Lettered.degrees(edge.bendDeg()),
                    String.join(
                            ", ",
                            edge.sides().stream()
                                    .map(side -> Lettered.degrees(side.angleDeg()))
                                    .toList()));
        }
        edges.on(flow);
    }
}
