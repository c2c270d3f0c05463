package org.thalweg.drawing;

/** Shapes of small marks, told apart without colour. Corners are x and y by turns, in points from the middle. */
public enum Dot {
    DISC(Ink.BLACK, true, 1.25, 0, 0.88, 0.88, 0, 1.25, -0.88, 0.88, -1.25, 0, -0.88, -0.88, 0, -1.25, 0.88, -0.88),
    SQUARE(Ink.BLACK, false, 1.2, 1.2, -1.2, 1.2, -1.2, -1.2, 1.2, -1.2),
    DIAMOND(Ink.ACCENT, true, 1.7, 0, 0, 1.7, -1.7, 0, 0, -1.7),
    TRIANGLE(Ink.BLACK, false, 0, -1.7, 1.5, 1, -1.5, 1),
    RING(Ink.ACCENT, false, 1.25, 0, 0.88, 0.88, 0, 1.25, -0.88, 0.88, -1.25, 0, -0.88, -0.88, 0, -1.25, 0.88, -0.88),
    BAR(Ink.BLACK, true, 0.5, 1.7, -0.5, 1.7, -0.5, -1.7, 0.5, -1.7),
    WEDGE(Ink.ACCENT, true, 0, 1.7, 1.5, -1, -1.5, -1),
    CROSS(
            Ink.BLACK, true, 0.35, 1.6, 0.35, 0.35, 1.6, 0.35, 1.6, -0.35, 0.35, -0.35, 0.35, -1.6, -0.35, -1.6, -0.35,
            -0.35, -1.6, -0.35, -1.6, 0.35, -0.35, 0.35, -0.35, 1.6);

    private final Ink ink;
    private final boolean filled;
    private final double[] corners;

    Dot(Ink ink, boolean filled, double... corners) {
        this.ink = ink;
        this.filled = filled;
        this.corners = corners;
    }

    Ink ink() {
        return ink;
    }

    /** Whether it is filled; else it is drawn as an outline. */
    boolean filled() {
        return filled;
    }

    /** How many corners it has. */
    int count() {
        return corners.length / 2;
    }

    double x(int corner) {
        return corners[2 * corner];
    }

    double y(int corner) {
        return corners[2 * corner + 1];
    }
}
