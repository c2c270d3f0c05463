package org.thalweg.drawing;

/** What pens and dots stand for, one under the other. */
public final class Legend {

    private static final double SAMPLE = 24;
    private static final Type TYPE = Type.TINY;

    private final Sheet sheet;
    private final double left;
    private final double width;
    private double y;

    /** Begins at the top of {@code area}. */
    public Legend(Sheet sheet, Area area) {
        this.sheet = sheet;
        this.left = area.left();
        this.width = area.width();
        this.y = area.top() + Type.SMALL.size();
    }

    public void heading(String text) {
        sheet.words(text, left, y, Type.SMALL, Anchor.START, Ink.GREY);
        y += Type.SMALL.leading() + 1;
    }

    public void pen(Pen pen, String meaning) {
        double middle = y - TYPE.size() * 0.3;
        sheet.line(left, middle, left + SAMPLE, middle, pen);
        meaning(meaning);
    }

    public void dot(Dot dot, String meaning) {
        sheet.dots(new double[] {left + SAMPLE / 2, y - TYPE.size() * 0.3}, dot);
        meaning(meaning);
    }

    /** A line without a sample. */
    public void note(String text) {
        for (String line : Lettering.lines(text, TYPE.size(), width)) {
            sheet.words(line, left, y, TYPE, Anchor.START, Ink.BLACK);
            y += TYPE.leading();
        }
        y += 1;
    }

    public void skip(double points) {
        y += points;
    }

    private void meaning(String text) {
        for (String line : Lettering.lines(text, TYPE.size(), width - SAMPLE - 5)) {
            sheet.words(line, left + SAMPLE + 5, y, TYPE);
            y += TYPE.leading();
        }
        y += 1.5;
    }

    /** How far down it has come. */
    public double y() {
        return y;
    }
}
