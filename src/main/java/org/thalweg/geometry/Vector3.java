package org.thalweg.geometry;

/** A step or a direction in the world: x and y level, z up, right-handed, metres. */
public record Vector3(double x, double y, double z) {

    public double dot(Vector3 other) {
        return x * other.x + y * other.y + z * other.z;
    }

    public Vector3 cross(Vector3 other) {
        return new Vector3(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    public Vector3 times(double factor) {
        return new Vector3(x * factor, y * factor, z * factor);
    }

    public Vector3 plus(Vector3 other) {
        return new Vector3(x + other.x, y + other.y, z + other.z);
    }

    public double length() {
        return Math.sqrt(dot(this));
    }

    /** The same direction, one long; this vector must have a length. */
    public Vector3 unit() {
        return times(1 / length());
    }
}
