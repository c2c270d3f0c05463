package org.thalweg.reference;

import org.thalweg.units.Length;

/**
 * How far a metal grows when it warms: ΔL = α·L·ΔT.
 *
 * @param perKelvin α, the share of its own length a piece grows by per kelvin; above 0
 */
public record Expansion(double perKelvin) {

    private static final double FAHRENHEIT_DEGREES_PER_KELVIN = 1.8;

    static Expansion of(double figure, String unit) {
        return new Expansion(
                switch (unit) {
                    case "m/m/K" -> figure;
                    case "in/in/F" -> figure * FAHRENHEIT_DEGREES_PER_KELVIN;
                    default -> throw new IllegalArgumentException("no expansion is printed in " + unit);
                });
    }

    /**
     * How much longer a free piece gets.
     *
     * @param kelvins by how much it warms; below 0 when it cools, and then the growth is below 0 too
     */
    public Length growth(Length length, double kelvins) {
        return Length.metres(perKelvin * length.metres() * kelvins);
    }
}
