package org.thalweg.units;

import java.util.Arrays;
import java.util.Optional;

/**
 * The scales a thermometer may be read on. The ice point is 273.15 K and 32 °F, a kelvin is 1.8 °F, all exactly
 * [published: NIST Special Publication 811, appendix B.8].
 */
public enum TemperatureScale {
    FAHRENHEIT("F", 459.67, 1.8),
    CELSIUS("C", 273.15, 1);

    /** Decimals a temperature is answered with, on every scale. */
    public static final int DECIMALS = 2;

    private final String symbol;
    private final double aboveAbsoluteZero;
    private final double degreesPerKelvin;

    TemperatureScale(String symbol, double aboveAbsoluteZero, double degreesPerKelvin) {
        this.symbol = symbol;
        this.aboveAbsoluteZero = aboveAbsoluteZero;
        this.degreesPerKelvin = degreesPerKelvin;
    }

    /** The scale callers write as {@code symbol}; letter case counts. */
    public static Optional<TemperatureScale> of(String symbol) {
        return Arrays.stream(values())
                .filter(scale -> scale.symbol.equals(symbol))
                .findFirst();
    }

    /** How callers write the scale. */
    public String symbol() {
        return symbol;
    }

    /** @param degrees on this scale; not below absolute zero, which is −459.67 °F and −273.15 °C */
    public Temperature of(double degrees) {
        return new Temperature((degrees + aboveAbsoluteZero) / degreesPerKelvin);
    }

    public double from(Temperature temperature) {
        return temperature.kelvins() * degreesPerKelvin - aboveAbsoluteZero;
    }

    /** The temperature as an answer prints it: on this scale, to {@link #DECIMALS} places, halfway away from zero. */
    public double round(Temperature temperature) {
        return Rounding.toDecimals(from(temperature), DECIMALS);
    }
}
