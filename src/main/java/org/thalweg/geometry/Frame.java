package org.thalweg.geometry;

/**
 * The frame of a roof plane, seen from outside looking up the slope.
 *
 * @param origin  where {@code across} and {@code up} are 0; world, metres
 * @param across  level, to the right, one long
 * @param up      straight up the slope, one long
 * @param outward across × up, away from the building, one long
 */
public record Frame(Point3 origin, Vector3 across, Vector3 up, Vector3 outward) {

    /** Where a point of the world comes to lie on the plane, straight down onto it. */
    public Point2 onPlane(Point3 point) {
        Vector3 step = point.minus(origin);
        return new Point2(step.dot(across), step.dot(up));
    }

    /** How far a point stands off the plane; above 0 outward. Metres. */
    public double off(Point3 point) {
        return point.minus(origin).dot(outward);
    }

    public Point3 inWorld(Point2 point) {
        return origin.plus(across.times(point.across())).plus(up.times(point.up()));
    }

    /** A place of the same plane, given in another frame of it. */
    public Point2 from(Frame given, Point2 place) {
        return given.equals(this) ? place : onPlane(given.inWorld(place));
    }

    /** A shape of the same plane, given in another frame of it. */
    public Region from(Frame given, Region shape) {
        if (given.equals(this)) {
            return shape;
        }
        return new Region(
                from(given, shape.outer()),
                shape.openings().stream().map(opening -> from(given, opening)).toList());
    }

    private Ring from(Frame given, Ring ring) {
        int n = ring.size();
        double[] newAcross = new double[n];
        double[] newUp = new double[n];
        int[] tag = new int[n];
        for (int i = 0; i < n; i++) {
            Point2 corner = onPlane(given.inWorld(ring.corner(i)));
            newAcross[i] = corner.across();
            newUp[i] = corner.up();
            tag[i] = ring.tag(i);
        }
        return new Ring(newAcross, newUp, tag);
    }
}
