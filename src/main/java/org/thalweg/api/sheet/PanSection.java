package org.thalweg.api.sheet;

import java.util.ArrayList;
import java.util.List;
import org.thalweg.api.wire.LineAnswer.Hand;
import org.thalweg.api.wire.ValleyAnswer;
import org.thalweg.api.wire.ValleyAnswer.PanAnswer;
import org.thalweg.api.wire.ValleyAnswer.SideAnswer;
import org.thalweg.api.wire.ValleyWaterAnswer.WaterSideAnswer;
import org.thalweg.drawing.Arc;
import org.thalweg.drawing.Area;
import org.thalweg.drawing.Bounds;
import org.thalweg.drawing.Callout;
import org.thalweg.drawing.Dimension;
import org.thalweg.drawing.Fit;
import org.thalweg.drawing.Flow;
import org.thalweg.drawing.Ink;
import org.thalweg.drawing.Label;
import org.thalweg.drawing.Pen;
import org.thalweg.drawing.Sheet;
import org.thalweg.drawing.Type;
import org.thalweg.units.LengthUnit;

/**
 * The pan cut square to the valley line, as it lies on the roof, seen looking up the valley; layers of metal that touch are
 * drawn a little apart.
 */
final class PanSection {

    private static final double HEIGHT = 185;
    private static final double LEAST_ARC = 14;
    private static final double APART = 1.4;
    private static final double RETURN_APART = 2.6;
    private static final double PANEL_APART = 6;

    private final Sheet sheet;
    private final Area area;
    private final ValleyAnswer valley;
    private final Fit fit;

    private PanSection(Sheet sheet, Area area, ValleyAnswer valley, LengthUnit unit) {
        this.sheet = sheet;
        this.area = area;
        this.valley = valley;
        this.fit = Fit.middle(bounds(valley), unit, area.inside(28));
    }

    static void draw(Flow flow, ValleyAnswer valley, LengthUnit unit) {
        Area area = flow.take(HEIGHT);
        PanSection section = new PanSection(flow.sheet(), area, valley, unit);
        section.draw();
        Scales.tell(flow.sheet(), section.fit.scale());
    }

    private static Bounds bounds(ValleyAnswer valley) {
        List<double[]> reach = new ArrayList<>();
        reach.add(new double[] {0, 0});
        double rib = rib(valley);
        double leg = valley.pan().ribLeg().value();
        reach.add(new double[] {leg * Math.cos(rib), leg * Math.sin(rib)});
        for (SideAnswer side : valley.sides()) {
            double out = out(valley, side);
            double flat = side.flat().value() * 1.1;
            reach.add(new double[] {flat * Math.cos(out), flat * Math.sin(out)});
        }
        return Bounds.of(reach);
    }

    /** Which way a flat rises from the low, from the right of the sheet; half the bend where the answer does not part it. */
    private static double out(ValleyAnswer valley, SideAnswer side) {
        List<WaterSideAnswer> water = valley.drainage().sides();
        boolean told = water.stream().allMatch(other -> other.panRiseDeg().isPresent());
        double rise = told
                ? water.stream()
                        .filter(other -> other.hand() == side.hand())
                        .findFirst()
                        .flatMap(WaterSideAnswer::panRiseDeg)
                        .orElse(0.0)
                : valley.bendDeg() / 2;
        return Math.toRadians(side.hand() == Hand.LEFT ? 180 - rise : rise);
    }

    /** The legs stand half-way between the flats. */
    private static double rib(ValleyAnswer valley) {
        return valley.sides().stream().mapToDouble(side -> out(valley, side)).sum() / 2;
    }

    private void draw() {
        PanAnswer pan = valley.pan();
        double rib = rib(valley);
        double leg = pan.ribLeg().value() * fit.scale().points();
        double lowX = fit.x(0, 0);
        double lowY = fit.y(0, 0);
        double tipX = lowX + leg * Math.cos(rib);
        double tipY = lowY - leg * Math.sin(rib);
        for (SideAnswer side : valley.sides()) {
            side(side, lowX, lowY);
            double shift = side.hand() == Hand.LEFT ? -APART : APART;
            double x = shift * Math.sin(rib);
            double y = shift * Math.cos(rib);
            sheet.run(new double[] {lowX + x, lowY + y, tipX + x, tipY + y, tipX, tipY - APART}, Pen.OUTLINE);
        }
        dimension(
                lowX - 6 * Math.sin(rib),
                lowY,
                tipX - 6 * Math.sin(rib),
                tipY,
                8,
                pan.ribLeg().tape());
        note("crown " + Lettered.degrees(pan.crownBendDeg()), tipX, tipY - 2, 0, -1);
        note("low, both sides, " + Lettered.degrees(pan.lowBendDeg()), lowX, lowY + 3, 0.5, 0.866);
        double left = Math.toDegrees(out(valley, left()));
        double right = Math.toDegrees(out(valley, right()));
        double radius = Math.max(LEAST_ARC, Math.min(60, area.bottom() - lowY - 10));
        double lean = Math.toRadians(left - 180);
        sheet.line(lowX, lowY, lowX + (radius + 8) * Math.cos(lean), lowY - (radius + 8) * Math.sin(lean), Pen.HAIR);
        Arc.draw(sheet, lowX, lowY, radius, left - 180, right, Pen.HAIR);
        double middle = Math.toRadians((left - 180 + right) / 2);
        note(
                "bend " + Lettered.degrees(valley.bendDeg()),
                lowX + radius * Math.cos(middle),
                lowY - radius * Math.sin(middle),
                Math.cos(middle),
                -Math.sin(middle));
    }

    private SideAnswer left() {
        return valley.sides().get(0);
    }

    private SideAnswer right() {
        return valley.sides().get(1);
    }

    private void side(SideAnswer side, double lowX, double lowY) {
        double points = fit.scale().points();
        double turn = out(valley, side);
        double outX = Math.cos(turn);
        double outY = -Math.sin(turn);
        double sign = side.hand() == Hand.LEFT ? -1 : 1;
        double upX = sign * outY;
        double upY = -sign * outX;
        double flat = side.flat().value() * points;
        double back = valley.pan().edgeReturn().value() * points;
        double hold = side.holdBack().value() * points;
        double endX = lowX + flat * outX;
        double endY = lowY + flat * outY;
        sheet.run(
                new double[] {
                    lowX,
                    lowY,
                    endX,
                    endY,
                    endX + RETURN_APART * upX,
                    endY + RETURN_APART * upY,
                    endX + RETURN_APART * upX - back * outX,
                    endY + RETURN_APART * upY - back * outY
                },
                Pen.OUTLINE);
        double edgeX = lowX + hold * outX + PANEL_APART * upX;
        double edgeY = lowY + hold * outY + PANEL_APART * upY;
        double past = (side.flat().value() * 1.1) * points - hold;
        sheet.line(edgeX, edgeY, edgeX + past * outX, edgeY + past * outY, Pen.MARK);
        double below = side.hand() == Hand.LEFT ? 1 : -1;
        dimension(lowX, lowY, endX, endY, below * 26, side.flat().tape());
        dimension(
                lowX,
                lowY,
                lowX + hold * outX,
                lowY + hold * outY,
                below * 13,
                side.holdBack().tape());
        dimension(
                lowX + hold * outX,
                lowY + hold * outY,
                endX,
                endY,
                below * 13,
                side.coverUnderPanel().tape());
        note(
                "return " + valley.pan().edgeReturn().tape() + ", "
                        + Lettered.degrees(valley.pan().returnBendDeg()),
                endX,
                endY,
                outX,
                outY);
        Label label =
                Label.of("panel of " + side.plane(), Type.SMALL).in(Ink.ACCENT).within(area.width() * 0.35);
        if (!Callout.along(
                sheet, area, label, edgeX + 6 * outX, edgeY + 6 * outY, edgeX + past * outX, edgeY + past * outY)) {
            Callout.note(sheet, area, label, edgeX + past / 2 * outX, edgeY + past / 2 * outY, upX, upY);
        }
    }

    private void dimension(double x1, double y1, double x2, double y2, double off, String text) {
        Dimension.draw(sheet, x1, y1, x2, y2, off, text);
    }

    private void note(String text, double x, double y, double toX, double toY) {
        Callout.note(sheet, area, Label.of(text, Type.SMALL), x, y, toX, toY);
    }
}
