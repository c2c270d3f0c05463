package org.thalweg.api.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.thalweg.api.wire.LayoutAnswer;
import org.thalweg.api.wire.LayoutAnswer.BlankLine;
import org.thalweg.api.wire.MarkedLength;
import org.thalweg.api.wire.PanelAnswer;
import org.thalweg.api.wire.PanelAnswer.CutAnswer;
import org.thalweg.api.wire.PanelAnswer.PanelShape;
import org.thalweg.api.wire.PlanePoint;
import org.thalweg.drawing.Anchor;
import org.thalweg.drawing.Area;
import org.thalweg.drawing.Bounds;
import org.thalweg.drawing.Fit;
import org.thalweg.drawing.Flow;
import org.thalweg.drawing.Ink;
import org.thalweg.drawing.Label;
import org.thalweg.drawing.Packet;
import org.thalweg.drawing.Pen;
import org.thalweg.drawing.Scale;
import org.thalweg.drawing.Sheet;
import org.thalweg.drawing.Type;
import org.thalweg.panel.Cut;
import org.thalweg.units.LengthUnit;

/**
 * A ticket for every different panel. It lies as on the bench: the lower end, where the tape is hooked, to the left, the left
 * rib above.
 */
final class TicketSheets {

    private static final double HOOK = 46;
    private static final double RIGHT = 56;
    private static final double HIGHEST = 56;
    private static final double HEAD = 13;
    private static final double MARKS = 15;
    private static final double GAP = 9;
    private static final double LEVEL = 7;

    private final LayoutAnswer answer;
    private final LengthUnit unit;
    private final Flow flow;

    private TicketSheets(LayoutAnswer answer, Flow flow) {
        this.answer = answer;
        this.unit = answer.units().length();
        this.flow = flow;
    }

    static void add(Packet packet, LayoutAnswer answer) {
        if (answer.panels().isEmpty()) {
            return;
        }
        Flow flow = new Flow(packet, View.TICKETS.word(), View.TICKETS.title());
        TicketSheets tickets = new TicketSheets(answer, flow);
        flow.text(
                "Panels that no tape tells apart are one ticket, lying as on the bench: lower end and hooked tape to the left, left rib above. Marks are"
                        + " measured from the hooked end; of a cut the mark on either rib is given. Thick: cut. Dash and dot: fold of a"
                        + " hem or turn-up. Faint: the blank.",
                Type.SMALL,
                Ink.GREY);
        flow.skip(6);
        alike(answer.panels(), tickets.unit).values().forEach(tickets::ticket);
    }

    /** Panels that no tape tells apart, in the order of the first of each. */
    private static Map<List<Object>, List<PanelAnswer>> alike(List<PanelAnswer> panels, LengthUnit unit) {
        Map<List<Object>, List<PanelAnswer>> alike = new LinkedHashMap<>();
        for (PanelAnswer panel : panels) {
            List<Object> key = new ArrayList<>(
                    List.of(panel.blankLength().tape(), panel.width().tape()));
            shape(panel.cut(), unit, key);
            shape(panel.finished(), unit, key);
            for (CutAnswer cut : panel.cuts()) {
                key.add(cut.end());
                key.add(tape(cut.left()) + tape(cut.right()) + cut.rise().tape() + tape(cut.notch()));
            }
            alike.computeIfAbsent(key, first -> new ArrayList<>()).add(panel);
        }
        return alike;
    }

    private static void shape(PanelShape shape, LengthUnit unit, List<Object> key) {
        key.add(Taped.corners(shape.outline(), unit));
        shape.openings().forEach(hole -> key.add(Taped.corners(hole.outline(), unit)));
    }

    private static String tape(Optional<MarkedLength> length) {
        return length.map(MarkedLength::tape).orElse("-");
    }

    private void ticket(List<PanelAnswer> alike) {
        PanelAnswer panel = alike.get(0);
        Bounds bounds = Bounds.of(List.of(
                Places.of(panel.cut().outline()), Places.of(panel.finished().outline())));
        double along = Math.max(panel.blankLength().value(), bounds.high());
        double cover = Math.max(answer.used().panel().cover(), bounds.width());
        Scale scale = Scale.fitting(along, cover, unit, new Area(0, 0, flow.width() - HOOK - RIGHT, HIGHEST));
        List<String> notes = notes(alike);
        double height = cover * scale.points();
        Area area = flow.take(HEAD + 2 * MARKS + height + notes.size() * Type.TINY.leading() + GAP);
        Sheet sheet = flow.sheet();
        sheet.scale("as told beside each panel");
        head(sheet, area, alike, scale);
        double y = area.top() + HEAD + 2 * MARKS + height + Type.TINY.size();
        for (String note : notes) {
            sheet.words(Label.cut(note, Type.TINY, flow.width() - HOOK).text(), area.left() + HOOK, y, Type.TINY);
            y += Type.TINY.leading();
        }
        Fit fit = new Fit(scale, area.left() + HOOK, area.top() + HEAD + MARKS, true);
        draw(sheet, fit, panel, cover);
        rib(sheet, fit, marks(panel, CutAnswer::left), 0, -1);
        rib(sheet, fit, marks(panel, CutAnswer::right), cover, 1);
        sheet.line(area.left(), area.bottom() - 4, area.right(), area.bottom() - 4, Pen.RULE);
    }

    private void head(Sheet sheet, Area area, List<PanelAnswer> alike, Scale scale) {
        PanelAnswer panel = alike.get(0);
        double y = area.top() + Type.HEAD.size();
        Label blank = Label.of(
                "blank " + panel.blankLength().tape() + girth() + "  ·  shows "
                        + panel.width().tape() + (panel.ripped() ? " wide, ripped" : " wide") + "  ·  "
                        + scale.stated(),
                Type.SMALL);
        sheet.words(blank.text(), area.right(), y, Type.SMALL, Anchor.END, Ink.BLACK);
        String marks = alike.size() + " ×  "
                + Marks.listed(alike.stream().map(PanelAnswer::mark).toList());
        sheet.words(
                Label.cut(marks, Type.HEAD, area.width() - blank.width() - 14).text(), area.left(), y, Type.HEAD);
    }

    private String girth() {
        return answer.order().stream()
                .findFirst()
                .map(BlankLine::girth)
                .map(girth -> " × " + girth.tape() + " flat")
                .orElse("");
    }

    private void draw(Sheet sheet, Fit fit, PanelAnswer panel, double cover) {
        double end = panel.blankLength().value();
        sheet.ring(fit.corners(new double[] {0, 0, cover, 0, cover, end, 0, end}), Pen.RULE);
        if (!panel.finished().equals(panel.cut())) {
            shape(sheet, fit, panel.finished(), Pen.BEND);
        }
        shape(sheet, fit, panel.cut(), Pen.OUTLINE);
        double x = fit.x(0, 0);
        double top = fit.y(0, 0);
        double bottom = fit.y(cover, 0);
        sheet.line(x - 4, top, x - 4, bottom, Pen.MARK);
        sheet.wordsIfClear(
                Label.of("hook 0", Type.TINY).in(Ink.ACCENT).at(Anchor.END), x - 6, (top + bottom) / 2 + 2, 0);
        sheet.words("left rib", x - 6, top + 1, Type.TINY, Anchor.END, Ink.GREY);
        sheet.words("right rib", x - 6, bottom + 5, Type.TINY, Anchor.END, Ink.GREY);
    }

    private static void shape(Sheet sheet, Fit fit, PanelShape shape, Pen pen) {
        sheet.ring(fit.corners(Places.of(shape.outline())), pen);
        shape.openings().forEach(hole -> sheet.ring(fit.corners(Places.of(hole.outline())), pen));
    }

    /** What is to be marked on one rib, from the hooked end up, each mark once. */
    private static List<MarkedLength> marks(PanelAnswer panel, Function<CutAnswer, Optional<MarkedLength>> rib) {
        Set<MarkedLength> marks = new LinkedHashSet<>();
        panel.cuts().stream()
                .map(rib)
                .flatMap(Optional::stream)
                .filter(mark -> mark.value() != 0)
                .forEach(marks::add);
        return marks.stream()
                .sorted((a, b) -> Double.compare(a.value(), b.value()))
                .toList();
    }

    /** Ticks outside of a rib with their tape marks; a mark that would run into another stands further out. */
    private static void rib(Sheet sheet, Fit fit, List<MarkedLength> marks, double across, int out) {
        for (MarkedLength mark : marks) {
            double x = fit.x(across, mark.value());
            double y = fit.y(across, mark.value());
            Label label = Label.of(mark.tape(), Type.SMALL).in(Ink.ACCENT);
            for (double far : new double[] {5, 5 + LEVEL, 5 + 2 * LEVEL}) {
                double base = y + out * far + (out > 0 ? Type.SMALL.size() * 0.75 : 0);
                if (sheet.wordsIfClear(label, x, base, 0)) {
                    sheet.line(x, y, x, y + out * (far - 1), Pen.MARK);
                    break;
                }
            }
        }
    }

    /** Every cut in a line: what it is for, its marks, rise, mitre and notch. */
    private static List<String> notes(List<PanelAnswer> alike) {
        List<String> notes = new ArrayList<>();
        PanelAnswer first = alike.get(0);
        for (int i = 0; i < first.cuts().size(); i++) {
            int cut = i;
            CutAnswer told = first.cuts().get(cut);
            List<String> edges = alike.stream()
                    .map(panel -> panel.cuts().get(cut).edge())
                    .distinct()
                    .toList();
            notes.add(note(told, edges));
        }
        return notes;
    }

    private static String note(CutAnswer cut, List<String> edges) {
        StringBuilder note = new StringBuilder(Lettered.title(Lettered.word(cut.end())));
        note.append(cut.end() == Cut.End.LOWER || cut.end() == Cut.End.UPPER ? " end at " : " side at ");
        note.append(String.join(", ", edges)).append(": ");
        List<String> parts = new ArrayList<>();
        cut.left().ifPresent(left -> parts.add("left rib " + left.tape()));
        cut.right().ifPresent(right -> parts.add("right rib " + right.tape()));
        if (cut.left().isEmpty() || cut.right().isEmpty()) {
            parts.add("from " + place(cut.from()) + " to " + place(cut.to()) + " (across, along)");
        }
        if (cut.mitreDeg() == 0) {
            parts.add("square");
        } else {
            parts.add("rise " + cut.rise().tape());
            parts.add("mitre " + Lettered.degrees(cut.mitreDeg()) + " from square");
        }
        note.append(String.join("  ·  ", parts));
        cut.notch().ifPresent(notch -> note.append("  ·  notch ").append(notch.tape()));
        return note.toString();
    }

    private static String place(PlanePoint point) {
        return Lettered.number(point.across()) + ", " + Lettered.number(point.up());
    }
}
