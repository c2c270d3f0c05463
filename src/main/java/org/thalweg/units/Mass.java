package org.thalweg.units;

/**
 * A mass.
 *
 * @param kilograms the mass; finite, 0 or more
 */
public record Mass(double kilograms) implements Measure {
    public double in(MassUnit unit) {
        return unit.from(this);
    }
}
