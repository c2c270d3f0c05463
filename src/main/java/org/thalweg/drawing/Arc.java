package org.thalweg.drawing;

/** Part of a circle, as angles are dimensioned with. */
public final class Arc {

    private static final double STEP_DEG = 4;

    private Arc() {}

    /** Draws it around a place, from one direction to another, degrees counter-clockwise from the right of the sheet. */
    public static void draw(Sheet sheet, double x, double y, double radius, double fromDeg, double toDeg, Pen pen) {
        int steps = Math.max(1, (int) Math.ceil(Math.abs(toDeg - fromDeg) / STEP_DEG));
        double[] corners = new double[2 * steps + 2];
        for (int i = 0; i <= steps; i++) {
            double turn = Math.toRadians(fromDeg + (toDeg - fromDeg) * i / steps);
            corners[2 * i] = x + radius * Math.cos(turn);
            corners[2 * i + 1] = y - radius * Math.sin(turn);
        }
        sheet.run(corners, pen);
    }
}
