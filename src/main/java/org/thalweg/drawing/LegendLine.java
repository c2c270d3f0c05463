package org.thalweg.drawing;

import java.util.ArrayList;
import java.util.List;

/** What pens and dots stand for, one beside the other, in lines as wide as there is room. */
public final class LegendLine {

    private static final double SAMPLE = 24;
    private static final double GAP = 14;
    private static final Type TYPE = Type.SMALL;
    private static final double LEADING = TYPE.leading() + 2;

    /** Draws a sample of what a line of a legend tells. */
    private interface Sample {
        void draw(Sheet sheet, double x, double y);
    }

    /**
     * One thing told.
     *
     * @param sample what it looks like
     * @param text   what it is
     */
    private record Entry(Sample sample, String text) {
        double width() {
            return SAMPLE + 4 + Lettering.width(text, TYPE.size()) + GAP;
        }
    }

    private final List<Entry> entries = new ArrayList<>();

    public LegendLine pen(Pen pen, String text) {
        entries.add(new Entry((sheet, x, y) -> sheet.line(x, y, x + SAMPLE, y, pen), text));
        return this;
    }

    public LegendLine dot(Dot dot, String text) {
        entries.add(new Entry(
                (sheet, x, y) -> sheet.dots(new double[] {x + 4, y, x + SAMPLE / 2, y, x + SAMPLE - 4, y}, dot), text));
        return this;
    }

    /** Draws it where {@code flow} stands. */
    public void on(Flow flow) {
        double most = flow.width();
        Area line = flow.take(LEADING);
        double x = line.left();
        for (Entry entry : entries) {
            if (x > line.left() && x + entry.width() - GAP > line.left() + most) {
                line = flow.take(LEADING);
                x = line.left();
            }
            double y = line.top() + TYPE.size();
            entry.sample.draw(flow.sheet(), x, y - TYPE.size() * 0.3);
            flow.sheet().words(entry.text, x + SAMPLE + 4, y, TYPE);
            x += entry.width();
        }
    }
}
