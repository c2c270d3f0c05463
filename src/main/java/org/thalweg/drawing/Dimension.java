package org.thalweg.drawing;

/** Dimension lines as on a working drawing: extension lines, a line between them, a slanted tick at either end. */
public final class Dimension {

    private static final double TICK = 2.2;
    private static final double PAST = 2;
    private static final double SHORT_OF = 1.5;

    private Dimension() {}

    /**
     * From one place to another, its line {@code off} points to the left of the way from the first to the second.
     *
     * @param off points; below 0 to the right
     */
    public static void draw(Sheet sheet, double x1, double y1, double x2, double y2, double off, String text) {
        double length = Math.hypot(x2 - x1, y2 - y1);
        if (length == 0) {
            return;
        }
        double alongX = (x2 - x1) / length;
        double alongY = (y2 - y1) / length;
        double outX = alongY * Math.signum(off);
        double outY = -alongX * Math.signum(off);
        double far = Math.abs(off);
        double fromX = x1 + outX * far;
        double fromY = y1 + outY * far;
        double toX = x2 + outX * far;
        double toY = y2 + outY * far;
        extension(sheet, x1, y1, outX, outY, far);
        extension(sheet, x2, y2, outX, outY, far);
        sheet.line(fromX, fromY, toX, toY, Pen.HAIR);
        tick(sheet, fromX, fromY, alongX, alongY);
        tick(sheet, toX, toY, alongX, alongY);
        letter(sheet, text, (fromX + toX) / 2, (fromY + toY) / 2, alongX, alongY, length);
    }

    private static void extension(Sheet sheet, double x, double y, double outX, double outY, double far) {
        sheet.line(
                x + outX * SHORT_OF, y + outY * SHORT_OF, x + outX * (far + PAST), y + outY * (far + PAST), Pen.HAIR);
    }

    private static void tick(Sheet sheet, double x, double y, double alongX, double alongY) {
        double slantX = (alongX - alongY) * TICK / Math.sqrt(2);
        double slantY = (alongY + alongX) * TICK / Math.sqrt(2);
        sheet.line(x + slantX, y + slantY, x - slantX, y - slantY, Pen.OUTLINE);
    }

    /** On the line, read from below or from the right; past its end where it is too short. */
    private static void letter(
            Sheet sheet, String text, double x, double y, double alongX, double alongY, double length) {
        double turn = Upright.turn(alongX, alongY);
        double cos = Math.cos(Math.toRadians(turn));
        double sin = Math.sin(Math.toRadians(turn));
        Label label = Label.of(text, Type.SMALL).onPaper();
        double drop = Type.SMALL.size() * 0.27;
        double[] shifts = length > label.width() + 6
                ? new double[] {0}
                : new double[] {length / 2 + label.width() / 2 + 4, -length / 2 - label.width() / 2 - 4};
        for (double lift : new double[] {0, 8, -8, 16, -16, 24}) {
            for (double shift : shifts) {
                double atX = x + shift * cos - (lift - drop) * sin;
                double atY = y - shift * sin - (lift - drop) * cos;
                if (sheet.wordsIfClear(label, atX, atY, turn)) {
                    return;
                }
            }
        }
    }
}
