package org.thalweg.units;

/**
 * An angle. Kept in radians; callers see degrees.
 *
 * @param radians the angle; finite
 */
public record Angle(double radians) implements Measure, Comparable<Angle> {

    public static final Angle ZERO = new Angle(0);

    /** Decimals an angle is answered with, in degrees: 0.0001° is 0.02 mm at the end of a 12 m panel. */
    public static final int DECIMALS = 4;

    public static Angle degrees(double degrees) {
        return new Angle(Math.toRadians(degrees));
    }

    public static Angle atan2(double rise, double run) {
        return new Angle(Math.atan2(rise, run));
    }

    public double inDegrees() {
        return Math.toDegrees(radians);
    }

    /** The angle as an answer prints it: degrees, to {@link #DECIMALS} places, halfway away from zero. */
    public double roundedDegrees() {
        return Rounding.toDecimals(inDegrees(), DECIMALS);
    }

    public double sin() {
        return Math.sin(radians);
    }

    public double cos() {
        return Math.cos(radians);
    }

    public double tan() {
        return Math.tan(radians);
    }

    @Override
    public int compareTo(Angle other) {
        return Double.compare(radians, other.radians);
    }
}
