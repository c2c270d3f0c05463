package org.thalweg.api.sheet;

import java.util.ArrayList;
import java.util.List;
import org.thalweg.api.wire.PlanePoint;
import org.thalweg.drawing.Area;
import org.thalweg.drawing.Bounds;
import org.thalweg.drawing.Chain;
import org.thalweg.drawing.Flow;
import org.thalweg.drawing.Ink;
import org.thalweg.drawing.LongFit;
import org.thalweg.drawing.MarkRow;
import org.thalweg.drawing.MarkRow.Side;
import org.thalweg.drawing.Pen;
import org.thalweg.drawing.Sheet;
import org.thalweg.units.LengthUnit;

/**
 * A blank lying flat before you, its lower end to the left: outline, bend lines and cuts, with the marks of its corners read
 * off a tape hooked at the lower end.
 *
 * @param title   what is made of it
 * @param outline its corners
 * @param lines   bend lines
 * @param slits   cuts within the outline
 * @param across  what lies between the lines across it, from one long side to the other; or how far they are from the first
 * @param borders where those lines are: one more than {@code across}, or as many
 * @param middle  across of what parts the marks above from those below
 */
record BlankView(
        String title,
        List<PlanePoint> outline,
        List<Line> lines,
        List<Line> slits,
        List<String> across,
        List<Double> borders,
        double middle) {

    private static final double SIDE = 62;
    private static final double CHAIN_LINE = 8.4;
    private static final double CLEAR = 4;

    BlankView {
        outline = List.copyOf(outline);
        lines = List.copyOf(lines);
        slits = List.copyOf(slits);
        across = List.copyOf(across);
        borders = List.copyOf(borders);
    }

    /**
     * A line on a blank.
     *
     * @param from its lower end
     * @param to   its upper end
     */
    record Line(PlanePoint from, PlanePoint to) {}

    /** How much of its length the cuts of either end take, and a little more. */
    private double ends(Bounds bounds) {
        double foot = 0;
        double head = 0;
        double half = (bounds.low() + bounds.high()) / 2;
        for (PlanePoint corner : corners()) {
            if (corner.up() < half) {
                foot = Math.max(foot, corner.up() - bounds.low());
            } else {
                head = Math.max(head, bounds.high() - corner.up());
            }
        }
        return Math.max(Math.max(foot, head) * 1.15, bounds.width() * 0.5);
    }

    private List<PlanePoint> corners() {
        List<PlanePoint> corners = new ArrayList<>(outline);
        slits.forEach(slit -> {
            corners.add(slit.from());
            corners.add(slit.to());
        });
        return corners;
    }

    /** Draws it where {@code flow} stands, its width across at most {@code most} points, together with the {@code keep} points under it. */
    void on(Flow flow, double most, double keep, LengthUnit unit) {
        Bounds bounds = Bounds.of(List.of(Places.of(outline)));
        Area room = new Area(flow.left() + SIDE, 0, flow.width() - 2 * SIDE, most);
        LongFit fit = LongFit.in(bounds, ends(bounds), unit, room);
        double chain = (across.size() * CHAIN_LINE - fit.height()) / 2 + 2;
        double reach = Math.max(chain, Math.max(depth(fit, true, unit), depth(fit, false, unit)) + CLEAR);
        double height = 2 * reach + fit.height();
        flow.heading(title + "  ·  scale " + fit.scale().stated(), height + keep);
        Area area = flow.take(height);
        fit = fit.at(area.left() + SIDE, area.top() + reach);
        draw(flow.sheet(), fit, area, unit);
    }

    private void draw(Sheet sheet, LongFit fit, Area area, LengthUnit unit) {
        Scales.tell(sheet, fit.scale());
        fit.ring(sheet, Places.of(outline), Pen.OUTLINE);
        for (Line line : lines) {
            fit.line(
                    sheet,
                    line.from().across(),
                    line.from().up(),
                    line.to().across(),
                    line.to().up(),
                    Pen.BEND);
        }
        for (Line slit : slits) {
            fit.line(
                    sheet,
                    slit.from().across(),
                    slit.from().up(),
                    slit.to().across(),
                    slit.to().up(),
                    Pen.MARK);
        }
        fit.breakOn(sheet);
        chain(sheet, fit, area);
        row(fit, area, true, unit).on(sheet);
        row(fit, area, false, unit).on(sheet);
    }

    private void chain(Sheet sheet, LongFit fit, Area area) {
        double line = fit.left() - 8;
        double[] places = borders.stream().mapToDouble(fit::y).toArray();
        if (places.length > across.size()) {
            Chain.draw(sheet, Side.LEFT, line, places, across, area.top(), area.bottom());
            return;
        }
        MarkRow row = new MarkRow(Side.LEFT, line, area.top(), area.bottom());
        for (int i = 0; i < places.length; i++) {
            row.add(places[i], fit.left() - 2, across.get(i));
        }
        row.on(sheet);
    }

    private double depth(LongFit fit, boolean above, LengthUnit unit) {
        return row(fit, new Area(0, 0, 0, 0), above, unit).depth();
    }

    private MarkRow row(LongFit fit, Area area, boolean above, LengthUnit unit) {
        double line = above ? fit.top() - CLEAR : fit.bottom() + CLEAR;
        MarkRow row = new MarkRow(above ? Side.ABOVE : Side.BELOW, line, area.left() + SIDE - 16, area.right());
        for (PlanePoint corner : corners()) {
            if (corner.across() <= middle == above) {
                row.add(fit.x(corner.up()), fit.y(corner.across()), Taped.mark(corner.up(), unit), Ink.ACCENT);
            }
        }
        return row;
    }
}
