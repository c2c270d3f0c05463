package org.thalweg.drawing;

/** A line with a filled head. */
public final class Arrow {

    private static final double HEAD = 5;
    private static final double HALF = 1.5;

    private Arrow() {}

    /** From its tail to its point. */
    public static void draw(Sheet sheet, double tailX, double tailY, double pointX, double pointY, Pen pen) {
        double length = Math.hypot(pointX - tailX, pointY - tailY);
        if (length == 0) {
            return;
        }
        double alongX = (pointX - tailX) / length * HEAD;
        double alongY = (pointY - tailY) / length * HEAD;
        double share = HALF / HEAD;
        sheet.line(tailX, tailY, pointX - alongX / 2, pointY - alongY / 2, pen);
        sheet.fill(
                new double[] {
                    pointX,
                    pointY,
                    pointX - alongX - alongY * share,
                    pointY - alongY + alongX * share,
                    pointX - alongX + alongY * share,
                    pointY - alongY - alongX * share
                },
                pen.ink());
    }
}
