package org.thalweg.pricing;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * An order line as a takeoff prints it, digit for digit.
 *
 * @param item    what is ordered
 * @param made    what it is made of, for goods of sheet metal
 * @param net     what does its work; 0 or more
 * @param lap     what lies in laps and folds; 0 or more
 * @param ordered net, laps and waste; 0 or more
 * @param unit    of these three
 * @param mass    of all that is ordered, where it is known
 */
public record PrintedLine(
        String item,
        Optional<Made> made,
        BigDecimal net,
        BigDecimal lap,
        BigDecimal ordered,
        BookUnit unit,
        Optional<Mass> mass) {

    public PrintedLine {
        if (net.signum() < 0 || lap.signum() < 0 || ordered.signum() < 0) {
            throw new IllegalArgumentException(
                    "net (%s), lap (%s) and ordered (%s) are 0 or more".formatted(net, lap, ordered));
        }
    }

    /**
     * What goods of sheet metal are made of.
     *
     * @param metal     its name in the table of metals
     * @param thickness as printed, in the takeoff's length unit
     * @param width     of the flat sheet, likewise
     * @param profile   its shape, where it has a name
     */
    public record Made(String metal, double thickness, double width, Optional<String> profile) {}

    /**
     * A printed mass.
     *
     * @param number as printed; 0 or more
     * @param unit   a unit of mass
     */
    public record Mass(BigDecimal number, BookUnit unit) {

        public Mass {
            if (number.signum() < 0 || unit.kind() != BookUnit.Kind.MASS) {
                throw new IllegalArgumentException("%s %s is no mass".formatted(number, unit));
            }
        }
    }
}
