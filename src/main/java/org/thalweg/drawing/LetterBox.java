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

    /** The same, longer by {@code points} at either end. */
    LetterBox longer(double points) {
        double cos = Math.cos(Math.toRadians(turn));
        double sin = Math.sin(Math.toRadians(turn));
        return new LetterBox(x - points * cos, y + points * sin, width + 2 * points, height, turn);
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

    /** Whether the line from one place to another runs through it or beside it within {@link #ROOM}. */
    boolean crossed(double x1, double y1, double x2, double y2) {
        double cos = Math.cos(Math.toRadians(turn));
        double sin = Math.sin(Math.toRadians(turn));
        double fromAlong = (x1 - x) * cos - (y1 - y) * sin;
        double fromUp = -(x1 - x) * sin - (y1 - y) * cos;
        double along = (x2 - x1) * cos - (y2 - y1) * sin;
        double up = -(x2 - x1) * sin - (y2 - y1) * cos;
        double[] stretch = {0, 1};
        return within(stretch, fromAlong, along, width) && within(stretch, fromUp, up, height);
    }

    /** Narrows a stretch of the line to what lies between 0 and {@code most}; whether anything is left. */
    private static boolean within(double[] stretch, double from, double run, double most) {
        if (Math.abs(run) < 1e-9) {
            return from > -ROOM && from < most + ROOM;
        }
        double one = (-ROOM - from) / run;
        double other = (most + ROOM - from) / run;
        stretch[0] = Math.max(stretch[0], Math.min(one, other));
        stretch[1] = Math.min(stretch[1], Math.max(one, other));
        return stretch[0] < stretch[1];
    }

    /** Whether all of it lies in {@code area}. */
    boolean inside(Area area) {
        double[] corners = corners();
        for (int i = 0; i < corners.length; i += 2) {
            if (corners[i] < area.left()
                    || corners[i] > area.right()
                    || corners[i + 1] < area.top()
                    || corners[i + 1] > area.bottom()) {
                return false;
            }
        }
        return true;
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
