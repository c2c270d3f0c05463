package org.thalweg.drawing;

/** Slanted hair lines over an area that is not used. */
public final class Hatch {

    private Hatch() {}

    /** Draws them {@code gap} points apart along the longer way. */
    public static void draw(Sheet sheet, Area area, double gap) {
        double high = area.height();
        for (double at = gap / 2; at < area.width() + high; at += gap) {
            double lowFrom = Math.max(0, at - area.width());
            double highTo = Math.min(high, at);
            if (highTo - lowFrom > 0.2) {
                sheet.line(
                        area.left() + at - lowFrom,
                        area.bottom() - lowFrom,
                        area.left() + at - highTo,
                        area.bottom() - highTo,
                        Pen.RULE);
            }
        }
    }
}
