package org.thalweg.roof;

import org.thalweg.geometry.Vector3;
import org.thalweg.units.Angle;

/**
 * How a plane lies in space: found from its outer ring, before anything is asked of the ring's shape.
 *
 * @param across  level, to the right, seen from outside looking up the slope
 * @param up      straight up the slope
 * @param outward across × up
 * @param height  of the plane along {@code outward}, from the datum: the mean of its outer corners; metres
 * @param slope   angle from level, in [0°, 90°]
 * @param level   whether the slope is under {@link #LEVEL}; then {@code across} is the direction of x
 */
record PlaneFit(Vector3 across, Vector3 up, Vector3 outward, double height, Angle slope, boolean level) {

    /**
     * Under half a degree, about 1 in 115, sag and the unevenness of a deck decide which way water runs, not the
     * plane. [common practice]
     */
    static final Angle LEVEL = Angle.degrees(0.5);

    private static final Vector3 NOTHING = new Vector3(0, 0, 0);

    /**
     * @param normal upward, of any length but 0
     */
    static PlaneFit of(Vector3 normal, Corners corners, Outlines outlines, int ring) {
        // Divided, not multiplied by the inverse, so that whole numbers stay whole; adding nothing turns −0 into 0.
        Vector3 outward = over(normal, normal.length());
        double run = Math.hypot(outward.x(), outward.y());
        Angle slope = Angle.atan2(run, outward.z());
        boolean level = slope.compareTo(LEVEL) < 0;
        Vector3 across = level
                ? over(new Vector3(outward.z(), 0, -outward.x()), Math.hypot(outward.x(), outward.z()))
                : over(new Vector3(-outward.y(), outward.x(), 0), run);
        Vector3 up = outward.cross(across).plus(NOTHING);
        return new PlaneFit(across, up, outward, meanHeight(outward, corners, outlines, ring), slope, level);
    }

    private static Vector3 over(Vector3 step, double length) {
        return new Vector3(step.x() / length, step.y() / length, step.z() / length).plus(NOTHING);
    }

    private static double meanHeight(Vector3 outward, Corners corners, Outlines outlines, int ring) {
        double sum = 0;
        for (int slot = outlines.firstSlot[ring]; slot < outlines.firstSlot[ring + 1]; slot++) {
            sum += along(outward, corners, outlines.corner[slot]);
        }
        return sum / outlines.corners(ring);
    }

    /** How far a corner stands off the plane; above 0 outward. Metres. */
    double off(Corners corners, int corner) {
        return along(outward, corners, corner) - height;
    }

    /** Angle from the plane's level line to a line in it, whichever way that leans; in [0°, 90°]. */
    Angle mitre(Vector3 run) {
        return Angle.atan2(Math.abs(run.dot(up)), Math.abs(run.dot(across)));
    }

    /** How far a corner lies along a direction, from the datum. Metres. */
    static double along(Vector3 direction, Corners corners, int corner) {
        return direction.x() * corners.x[corner]
                + direction.y() * corners.y[corner]
                + direction.z() * corners.z[corner];
    }

    /**
     * Twice the area of a ring as a vector square to it, by Newell's sum; its length says how much the ring encloses,
     * and it is nearly 0 for a ring that encloses nothing.
     */
    static Vector3 newell(Corners corners, Outlines outlines, int ring) {
        int first = outlines.firstSlot[ring];
        int origin = outlines.corner[first];
        double x = 0;
        double y = 0;
        double z = 0;
        for (int slot = first + 1; slot + 1 < outlines.firstSlot[ring + 1]; slot++) {
            int p = outlines.corner[slot];
            int q = outlines.corner[slot + 1];
            double px = corners.x[p] - corners.x[origin];
            double py = corners.y[p] - corners.y[origin];
            double pz = corners.z[p] - corners.z[origin];
            double qx = corners.x[q] - corners.x[origin];
            double qy = corners.y[q] - corners.y[origin];
            double qz = corners.z[q] - corners.z[origin];
            x += py * qz - pz * qy;
            y += pz * qx - px * qz;
            z += px * qy - py * qx;
        }
        return new Vector3(x, y, z);
    }
}
