package org.thalweg.geometry;

/**
 * A place in the world: x and y level, z up, right-handed, metres.
 */
public record Point3(double x, double y, double z) {

    public Vector3 minus(Point3 other) {
        return new Vector3(x - other.x, y - other.y, z - other.z);
    }

    public Point3 plus(Vector3 step) {
        return new Point3(x + step.x(), y + step.y(), z + step.z());
    }

    public double distance(Point3 other) {
        return minus(other).length();
    }
}
