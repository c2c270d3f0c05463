package org.thalweg.api.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thalweg.api.wire.FlatAnswer.HemAnswer;
import org.thalweg.api.wire.PlanePoint;
import org.thalweg.api.wire.TrimAnswer;
import org.thalweg.drawing.Area;
import org.thalweg.drawing.Bounds;
import org.thalweg.drawing.Callout;
import org.thalweg.drawing.Fit;
import org.thalweg.drawing.Ink;
import org.thalweg.drawing.Label;
import org.thalweg.drawing.Pen;
import org.thalweg.drawing.Sheet;
import org.thalweg.drawing.Type;
import org.thalweg.units.LengthUnit;

/** A profile in section: its legs with their girths, its bends, its hems a little open. */
final class ProfileSection {

    private static final double HEM_APART = 2.8;
    private static final double SHORTEST_HEM = 5;

    private final Sheet sheet;
    private final Area area;
    private final TrimAnswer trim;
    private final double[] corners;
    private final double middleX;
    private final double middleY;

    private ProfileSection(Sheet sheet, Area area, TrimAnswer trim, Fit fit) {
        this.sheet = sheet;
        this.area = area;
        this.trim = trim;
        this.corners = fit.corners(Places.of(trim.section()));
        this.middleX = area.left() + area.width() / 2;
        this.middleY = area.top() + area.height() / 2;
    }

    /** As large as {@code area} allows. */
    static Fit fit(List<PlanePoint> section, Area area, LengthUnit unit) {
        return Fit.middle(Bounds.of(List.of(Places.of(section))), unit, area.inside(38));
    }

    static void draw(Sheet sheet, Area area, TrimAnswer trim, LengthUnit unit) {
        Fit fit = fit(trim.section(), area, unit);
        Scales.tell(sheet, fit.scale());
        new ProfileSection(sheet, area, trim, fit).draw();
    }

    private void draw() {
        sheet.run(corners, Pen.OUTLINE);
        int last = corners.length - 2;
        hem(trim.hems().first(), 0, 2, false);
        hem(trim.hems().last(), last, last - 2, true);
        for (int leg = 0; leg < trim.legs().size(); leg++) {
            girth(leg);
        }
        for (int bend = 0; bend < trim.bendsDeg().size(); bend++) {
            bend(bend);
        }
        weatherFace();
    }

    /** Folded back along its leg, on the side it is folded to; the weather face is to the left of the walk. */
    private void hem(Optional<HemAnswer> hem, int edge, int inward, boolean atLast) {
        if (hem.isEmpty()) {
            return;
        }
        double length = length(edge, inward);
        double backX = (corners[inward] - corners[edge]) / length;
        double backY = (corners[inward + 1] - corners[edge + 1]) / length;
        boolean left = hem.get().up() != atLast;
        double offX = (left ? backY : -backY) * HEM_APART;
        double offY = (left ? -backX : backX) * HEM_APART;
        double girth = Math.max(SHORTEST_HEM, hem.get().girth().value() * scaleOf(edge, inward, atLast));
        double x = corners[edge] + offX;
        double y = corners[edge + 1] + offY;
        sheet.run(
                new double[] {
                    corners[edge],
                    corners[edge + 1],
                    corners[edge] + offX / 2 - backX,
                    corners[edge + 1] + offY / 2 - backY,
                    x,
                    y,
                    x + girth * backX,
                    y + girth * backY
                },
                Pen.OUTLINE);
        note(
                Lettered.word(hem.get().kind()) + " hem " + hem.get().girth().tape()
                        + (hem.get().up() ? " up" : " under"),
                corners[edge] - backX,
                corners[edge + 1] - backY,
                -backX,
                -backY,
                Ink.BLACK);
    }

    /** Points to a unit, as the leg between two corners shows it. */
    private double scaleOf(int edge, int inward, boolean atLast) {
        int leg = atLast ? trim.legs().size() - 1 : 0;
        double value = trim.legs().get(leg).value();
        return value > 0 ? length(edge, inward) / value : 0;
    }

    private double length(int one, int other) {
        return Math.max(1e-9, Math.hypot(corners[other] - corners[one], corners[other + 1] - corners[one + 1]));
    }

    private void girth(int leg) {
        int from = 2 * leg;
        double x1 = corners[from];
        double y1 = corners[from + 1];
        double x2 = corners[from + 2];
        double y2 = corners[from + 3];
        Label label = Label.of(trim.legs().get(leg).tape(), Type.SMALL);
        if (!Callout.along(sheet, area, label, x1, y1, x2, y2)) {
            double length = length(from, from + 2);
            double x = (x1 + x2) / 2;
            double y = (y1 + y2) / 2;
            double outX = (y2 - y1) / length;
            double outY = -(x2 - x1) / length;
            double sign = outX * (x - middleX) + outY * (y - middleY) >= 0 ? 1 : -1;
            Callout.note(sheet, area, label, x, y, sign * outX, sign * outY);
        }
    }

    /** Outside of the angle it makes. */
    private void bend(int bend) {
        int at = 2 * bend + 2;
        double before = length(at, at - 2);
        double after = length(at, at + 2);
        double x = (corners[at - 2] - corners[at]) / before + (corners[at + 2] - corners[at]) / after;
        double y = (corners[at - 1] - corners[at + 1]) / before + (corners[at + 3] - corners[at + 1]) / after;
        double size = Math.hypot(x, y);
        double toX = size > 1e-6 ? -x / size : 0;
        double toY = size > 1e-6 ? -y / size : -1;
        note(Lettered.bend(trim.bendsDeg().get(bend)), corners[at], corners[at + 1], toX, toY, Ink.ACCENT);
    }

    /** A word on the side the weather sees, at the longest leg. */
    private void weatherFace() {
        List<Double> lengths = new ArrayList<>();
        for (int from = 0; from + 2 < corners.length; from += 2) {
            lengths.add(length(from, from + 2));
        }
        int longest = 2 * lengths.indexOf(lengths.stream().max(Double::compare).orElse(0.0));
        double length = length(longest, longest + 2);
        double alongX = (corners[longest + 2] - corners[longest]) / length;
        double alongY = (corners[longest + 3] - corners[longest + 1]) / length;
        double x = corners[longest] + 0.75 * length * alongX;
        double y = corners[longest + 1] + 0.75 * length * alongY;
        double toX = alongY;
        double toY = -alongX;
        double tipX = x + 2 * toX;
        double tipY = y + 2 * toY;
        sheet.line(tipX, tipY, x + 12 * toX, y + 12 * toY, Pen.HAIR);
        sheet.line(tipX, tipY, x + 5 * toX + 1.6 * alongX, y + 5 * toY + 1.6 * alongY, Pen.HAIR);
        sheet.line(tipX, tipY, x + 5 * toX - 1.6 * alongX, y + 5 * toY - 1.6 * alongY, Pen.HAIR);
        Label label = Label.of("weather face", Type.TINY).in(Ink.GREY);
        Callout.note(sheet, area, label, x + 12 * toX, y + 12 * toY, toX, toY);
    }

    private void note(String text, double x, double y, double toX, double toY, Ink ink) {
        Callout.note(sheet, area, Label.of(text, Type.SMALL).in(ink), x, y, toX, toY);
    }
}
