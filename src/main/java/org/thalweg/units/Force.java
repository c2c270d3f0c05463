package org.thalweg.units;

/**
 * A force: what a clip or a screw can be trusted with.
 *
 * @param newtons finite, 0 or more
 */
public record Force(double newtons) implements Measure, Comparable<Force> {

    public Force {
        if (!(newtons >= 0 && Double.isFinite(newtons))) {
            throw new IllegalArgumentException("a force (%s N) must be 0 or more".formatted(newtons));
        }
    }

    public double in(ForceUnit unit) {
        return unit.from(this);
    }

    @Override
    public int compareTo(Force other) {
        return Double.compare(newtons, other.newtons);
    }
}
