package org.thalweg.units;

/**
 * An area.
 *
 * @param squareMetres the area; finite
 */
public record Area(double squareMetres) implements Measure {
    public double in(AreaUnit unit) {
        return unit.from(this);
    }
}
