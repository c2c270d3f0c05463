package org.thalweg.drawing;

/**
 * Where a line of lettering lies on the sheet: a rectangle that may be turned.
 *
 * @param x      of the lower left corner as the line is read, points
 * @param y      of that corner
 * @param width  along the line
 * @param height across it, upward as the line is read
 * @param turn   degrees counter-clockwise
 */
record LetterBox(double x, double y, double width, double height, double turn) {

    /** Room kept between two lines of lettering, points. */
    private static final double ROOM = 0.4;

    double[] corners() {
        double cos = Math.cos(Math.toRadians(turn));
        double sin = Math.sin(Math.toRadians(turn));
        double left = width * cos;
        double down = -width * sin;
        double outX = -height * sin;
        double outY = -height * cos;
        return new double[] {x, y, x + left, y + down, x + left + outX, y + down + outY, x + outX, y + outY};
    }

    /** Whether it and {@code other} share more than a border. */
    boolean meets(LetterBox other) {
        double reach = width + height + other.width + other.height;
        if (Math.abs(x - other.x) > reach || Math.abs(y - other.y) > reach) {
            return false;
        }
        double[] own = corners();
        double[] theirs = other.corners();
        return !apart(own, theirs, turn) && !apart(own, theirs, other.turn);
    }

    /** Whether a line along or across the direction {@code turn} lies between the two. */
    private static boolean apart(double[] own, double[] theirs, double turn) {
        double cos = Math.cos(Math.toRadians(turn));
        double sin = Math.sin(Math.toRadians(turn));
        return apart(own, theirs, cos, -sin) || apart(own, theirs, sin, cos);
    }

    private static boolean apart(double[] own, double[] theirs, double alongX, double alongY) {
        double ownLeast = Double.POSITIVE_INFINITY;
        double ownMost = Double.NEGATIVE_INFINITY;
        double theirLeast = Double.POSITIVE_INFINITY;
        double theirMost = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < own.length; i += 2) {
            double mine = own[i] * alongX + own[i + 1] * alongY;
            double other = theirs[i] * alongX + theirs[i + 1] * alongY;
            ownLeast = Math.min(ownLeast, mine);
            ownMost = Math.max(ownMost, mine);
            theirLeast = Math.min(theirLeast, other);
            theirMost = Math.max(theirMost, other);
        }
        return ownMost + ROOM <= theirLeast || theirMost + ROOM <= ownLeast;
    }
}
