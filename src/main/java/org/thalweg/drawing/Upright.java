package org.thalweg.drawing;

/** Lettering along a line reads from below or from the right, never upside down. */
public final class Upright {

    private Upright() {}

    /** Degrees counter-clockwise of lettering along a line that runs this way on the sheet; -90 (exclusive) to 90. */
    public static double turn(double alongX, double alongY) {
        double turn = Math.toDegrees(Math.atan2(-alongY, alongX));
        if (turn > 90 + 1e-6) {
            return turn - 180;
        }
        return turn <= -90 + 1e-6 ? turn + 180 : turn;
    }
}
