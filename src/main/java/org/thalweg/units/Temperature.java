package org.thalweg.units;

/**
 * How warm a piece of metal is. Kept in kelvins; the factory says which scale a figure came in. A difference of two
 * temperatures is no temperature but a plain number of kelvins.
 *
 * @param kelvins above absolute zero, which is 0; finite
 */
public record Temperature(double kelvins) implements Measure, Comparable<Temperature> {

    public Temperature {
        if (!(kelvins >= 0 && Double.isFinite(kelvins))) {
            throw new IllegalArgumentException(
                    "a temperature (%s K) must be finite and not below absolute zero".formatted(kelvins));
        }
    }

    public static Temperature celsius(double degrees) {
        return TemperatureScale.CELSIUS.of(degrees);
    }

    public static Temperature fahrenheit(double degrees) {
        return TemperatureScale.FAHRENHEIT.of(degrees);
    }

    public double in(TemperatureScale scale) {
        return scale.from(this);
    }

    /** How much warmer this is than {@code other}, kelvins; below 0 when it is colder. */
    public double above(Temperature other) {
        return kelvins - other.kelvins;
    }

    @Override
    public int compareTo(Temperature other) {
        return Double.compare(kelvins, other.kelvins);
    }
}
