package org.thalweg.geometry;

/** Whether the sides of a shape keep apart, but for the corners they share with their neighbours. */
final class SidesApart {

    /** Beyond this many sides the plain look at every pair costs more than noding them. */
    private static final int MOST_SIDES = 200;

    private SidesApart() {}

    /** False as well for shapes too large to look at side by side. */
    static boolean in(Region shape) {
        int sides = shape.outer().size()
                + shape.openings().stream().mapToInt(Ring::size).sum();
        if (sides > MOST_SIDES || !apart(shape.outer())) {
            return false;
        }
        for (int i = 0; i < shape.openings().size(); i++) {
            Ring opening = shape.openings().get(i);
            if (!apart(opening) || !apart(opening, shape.outer())) {
                return false;
            }
            for (int j = 0; j < i; j++) {
                if (!apart(opening, shape.openings().get(j))) {
                    return false;
                }
            }
        }
        return true;
    }

    private static boolean apart(Ring ring) {
        for (int i = 0; i < ring.size(); i++) {
            for (int j = i + 2; j < ring.size(); j++) {
                if (ring.next(j) != i && meet(ring, i, ring, j)) {
                    return false;
                }
            }
        }
        return true;
    }

    private static boolean apart(Ring a, Ring b) {
        for (int i = 0; i < a.size(); i++) {
            for (int j = 0; j < b.size(); j++) {
                if (meet(a, i, b, j)) {
                    return false;
                }
            }
        }
        return true;
    }

    private static boolean meet(Ring a, int i, Ring b, int j) {
        int iEnd = a.next(i);
        int jEnd = b.next(j);
        return Math.max(a.across(i), a.across(iEnd)) >= Math.min(b.across(j), b.across(jEnd))
                && Math.max(b.across(j), b.across(jEnd)) >= Math.min(a.across(i), a.across(iEnd))
                && Math.max(a.up(i), a.up(iEnd)) >= Math.min(b.up(j), b.up(jEnd))
                && Math.max(b.up(j), b.up(jEnd)) >= Math.min(a.up(i), a.up(iEnd))
                && turn(a, i, iEnd, b, j) * turn(a, i, iEnd, b, jEnd) <= 0
                && turn(b, j, jEnd, a, i) * turn(b, j, jEnd, a, iEnd) <= 0;
    }

    private static double turn(Ring a, int from, int to, Ring b, int third) {
        return (a.across(to) - a.across(from)) * (b.up(third) - a.up(from))
                - (a.up(to) - a.up(from)) * (b.across(third) - a.across(from));
    }
}
