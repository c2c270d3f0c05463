package org.thalweg.drawing;

import org.thalweg.units.LengthUnit;

/**
 * Where something long lies on the sheet: along runs to the right, across runs down. What would become too thin if all of
 * its length were shown is shown at both ends, with a break between them.
 *
 * @param scale     how large
 * @param bounds    of what is shown: right is across, up is along
 * @param left      x where it begins
 * @param top       y of its least across
 * @param width     how long it is on the sheet
 * @param breakFrom along where the first end stops
 * @param breakTo   along where the other begins; the same where there is no break
 */
public record LongFit(
        Scale scale, Bounds bounds, double left, double top, double width, double breakFrom, double breakTo) {

    private static final double GAP = 16;
    private static final double THIN = 0.5;
    private static final double ZIGZAG = 3;

    /**
     * At the upper left of {@code area}.
     *
     * @param ends how much of its length must be seen at either end
     */
    public static LongFit in(Bounds bounds, double ends, LengthUnit unit, Area area) {
        Scale whole = Scale.fitting(bounds.height(), bounds.width(), unit, area);
        if (bounds.width() * whole.points() >= THIN * area.height()) {
            return whole(whole, bounds, area);
        }
        Area halves = new Area(area.left(), area.top(), area.width() - GAP, area.height());
        Scale closer = Scale.fitting(Math.min(2 * ends, bounds.height()), bounds.width(), unit, halves);
        if (closer.points() <= whole.points()) {
            return whole(whole, bounds, area);
        }
        if (bounds.height() * closer.points() <= area.width()) {
            return whole(closer, bounds, area);
        }
        double shown = halves.width() / 2 / closer.points();
        return new LongFit(
                closer, bounds, area.left(), area.top(), area.width(), bounds.low() + shown, bounds.high() - shown);
    }

    private static LongFit whole(Scale scale, Bounds bounds, Area area) {
        double middle = bounds.low() + bounds.height() / 2;
        return new LongFit(scale, bounds, area.left(), area.top(), bounds.height() * scale.points(), middle, middle);
    }

    /** The same, elsewhere on the sheet. */
    public LongFit at(double newLeft, double newTop) {
        return new LongFit(scale, bounds, newLeft, newTop, width, breakFrom, breakTo);
    }

    /** Points. */
    public double height() {
        return bounds.width() * scale.points();
    }

    public double right() {
        return left + width;
    }

    public double bottom() {
        return top + height();
    }

    public boolean broken() {
        return breakTo > breakFrom;
    }

    /** Whether what lies at {@code along} is shown. */
    public boolean shows(double along) {
        return !broken() || along <= breakFrom || along >= breakTo;
    }

    public double x(double along) {
        return along <= breakFrom || !broken()
                ? left + (along - bounds.low()) * scale.points()
                : right() - (bounds.high() - along) * scale.points();
    }

    public double y(double across) {
        return top + (across - bounds.left()) * scale.points();
    }

    /** Draws what is shown of a closed outline, across and along by turns. */
    public void ring(Sheet sheet, double[] outline, Pen pen) {
        for (int i = 0; i < outline.length; i += 2) {
            int next = (i + 2) % outline.length;
            line(sheet, outline[i], outline[i + 1], outline[next], outline[next + 1], pen);
        }
    }

    /** Draws what is shown of a line. */
    public void line(Sheet sheet, double across1, double along1, double across2, double along2, Pen pen) {
        if (along2 < along1) {
            line(sheet, across2, along2, across1, along1, pen);
            return;
        }
        if (!broken()) {
            sheet.line(x(along1), y(across1), x(along2), y(across2), pen);
            return;
        }
        double run = along2 - along1;
        if (along1 < breakFrom) {
            double end = Math.min(along2, breakFrom);
            double across = run > 0 ? across1 + (across2 - across1) * (end - along1) / run : across2;
            sheet.line(x(along1), y(across1), x(end), y(across), pen);
        }
        if (along2 > breakTo) {
            double start = Math.max(along1, breakTo);
            double across = run > 0 ? across1 + (across2 - across1) * (start - along1) / run : across1;
            double startX = right() - (bounds.high() - start) * scale.points();
            sheet.line(startX, y(across), x(along2), y(across2), pen);
        }
    }

    /** Draws the two jagged lines of the break, if there is one. */
    public void breakOn(Sheet sheet) {
        if (broken()) {
            double first = x(breakFrom);
            jagged(sheet, first);
            jagged(sheet, first + GAP);
        }
    }

    private void jagged(Sheet sheet, double x) {
        double middle = (top + bottom()) / 2;
        sheet.run(
                new double[] {
                    x,
                    top - 5,
                    x,
                    middle - 4,
                    x - ZIGZAG,
                    middle - 2,
                    x + ZIGZAG,
                    middle + 2,
                    x,
                    middle + 4,
                    x,
                    bottom() + 5
                },
                Pen.HAIR);
    }
}
