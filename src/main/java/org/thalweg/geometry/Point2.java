package org.thalweg.geometry;

/**
 * A place on a plane or a panel.
 *
 * @param across to the right, along the level line, metres
 * @param up     up the slope, metres
 */
public record Point2(double across, double up) {
    public double distance(Point2 other) {
        return Math.hypot(across - other.across, up - other.up);
    }
}
