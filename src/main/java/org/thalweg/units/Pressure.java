package org.thalweg.units;

/**
 * How hard the wind pushes or pulls on each bit of a surface. Which way is for its user to say.
 *
 * @param pascals finite, 0 or more
 */
public record Pressure(double pascals) implements Measure, Comparable<Pressure> {

    public Pressure {
        if (!(pascals >= 0 && Double.isFinite(pascals))) {
            throw new IllegalArgumentException("a pressure (%s Pa) must be 0 or more".formatted(pascals));
        }
    }

    public double in(PressureUnit unit) {
        return unit.from(this);
    }

    @Override
    public int compareTo(Pressure other) {
        return Double.compare(pascals, other.pascals);
    }
}
