package org.thalweg.movement;

import org.thalweg.finding.Source;
import org.thalweg.reference.Rules;
import org.thalweg.units.Temperature;

/**
 * How cold and how warm the metal itself gets: colder than the air on a clear night, far warmer under the sun.
 *
 * @param lowest      coldest it gets
 * @param highest     warmest it gets; not below {@code lowest}
 * @param installedAt how warm it was when it was fastened; between the two, ends included
 */
public record Temperatures(Temperature lowest, Temperature highest, Temperature installedAt) {

    /**
     * Where nobody knows better: −20 °F to 180 °F, fastened at 60 °F. That the two are 200 °F apart is published; where on
     * the thermometer those 200 °F lie, and how warm it is when roofs are laid, is common practice. The caller's figures
     * and the engineer's win.
     */
    public static final Temperatures USUAL =
            new Temperatures(Temperature.fahrenheit(-20), Temperature.fahrenheit(180), Temperature.fahrenheit(60));

    /** What to cite beside {@link #USUAL}. */
    public static final Source USUAL_SOURCE = new Source("a range of 200 °F: "
            + Rules.designTemperatureRange().source().text() + "; where it lies: " + Source.COMMON_PRACTICE.text());

    public Temperatures {
        if (lowest.compareTo(installedAt) > 0 || installedAt.compareTo(highest) > 0) {
            throw new IllegalArgumentException("installedAt (%s) must lie between lowest (%s) and highest (%s)"
                    .formatted(installedAt, lowest, highest));
        }
    }

    /** By how much the metal warms at most from when it was fastened, kelvins; 0 or more. */
    public double warming() {
        return highest.above(installedAt);
    }

    /** By how much the metal cools at most from when it was fastened, kelvins; 0 or more. */
    public double cooling() {
        return installedAt.above(lowest);
    }
}
