package org.thalweg.units;

/**
 * A speed: of the wind a roof is designed for.
 *
 * @param metresPerSecond finite, 0 or more
 */
public record Speed(double metresPerSecond) implements Comparable<Speed> {

    public Speed {
        if (!(metresPerSecond >= 0 && Double.isFinite(metresPerSecond))) {
            throw new IllegalArgumentException("a speed (%s m/s) must be 0 or more".formatted(metresPerSecond));
        }
    }

    public double in(SpeedUnit unit) {
        return unit.from(this);
    }

    @Override
    public int compareTo(Speed other) {
        return Double.compare(metresPerSecond, other.metresPerSecond);
    }
}
