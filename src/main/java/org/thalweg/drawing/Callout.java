package org.thalweg.drawing;

/** Lettering beside what it tells of: as near as there is room, with a leader where that is not at hand. */
public final class Callout {

    private static final double[] AWAY = {4, 8, 13, 19, 26, 34, 44, 56, 70, 90, 115, 145};
    private static final double[] ASIDE = {0, 20, -20, 45, -45, 75, -75, 110, -110, 145, -145, 180};
    private static final double LEADER_FROM = 7;

    private Callout() {}

    /**
     * Letters {@code label} near a place.
     *
     * @param within what it must not leave
     * @param toX    where it would rather stand, seen from the place; with {@code toY} as long as 1
     * @return whether there was room for it
     */
    public static boolean note(Sheet sheet, Area within, Label label, double x, double y, double toX, double toY) {
        for (double away : AWAY) {
            for (double aside : ASIDE) {
                double cos = Math.cos(Math.toRadians(aside));
                double sin = Math.sin(Math.toRadians(aside));
                if (note(sheet, within, label, x, y, toX * cos - toY * sin, toX * sin + toY * cos, away)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean note(
            Sheet sheet, Area within, Label label, double x, double y, double toX, double toY, double away) {
        double size = label.type().size();
        double half = label.width() / 2;
        double edge = Math.min(
                Math.abs(toX) < 1e-9 ? Double.POSITIVE_INFINITY : half / Math.abs(toX),
                Math.abs(toY) < 1e-9 ? Double.POSITIVE_INFINITY : size * 0.5 / Math.abs(toY));
        double middleX = x + toX * (away + edge);
        double middleY = y + toY * (away + edge);
        boolean led = away >= LEADER_FROM;
        double endX = x + toX * (away - 1);
        double endY = y + toY * (away - 1);
        if (led && !sheet.lineIsClear(x, y, endX, endY)) {
            return false;
        }
        Label centred = label.at(Anchor.MIDDLE);
        if (!sheet.wordsIfFree(centred, middleX, middleY + size * 0.27, 0, within)) {
            return false;
        }
        if (led) {
            sheet.line(x, y, endX, endY, Pen.HAIR);
        }
        return true;
    }

    /** Letters {@code label} along a line, close beside it, where on it there is room. */
    public static boolean along(Sheet sheet, Area within, Label label, double x1, double y1, double x2, double y2) {
        double length = Math.hypot(x2 - x1, y2 - y1);
        if (length < label.width()) {
            return false;
        }
        double turn = Upright.turn((x2 - x1) / length, (y2 - y1) / length);
        double cos = Math.cos(Math.toRadians(turn));
        double sin = Math.sin(Math.toRadians(turn));
        double size = label.type().size();
        Label centred = label.at(Anchor.MIDDLE);
        for (double lift : new double[] {2.2, -size * 0.76 - 1.4}) {
            for (double share : new double[] {0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74, 0.18, 0.82}) {
                double x = x1 + share * (x2 - x1) - lift * sin;
                double y = y1 + share * (y2 - y1) - lift * cos;
                if (sheet.wordsIfFree(centred, x, y, turn, within)) {
                    return true;
                }
            }
        }
        return false;
    }
}
