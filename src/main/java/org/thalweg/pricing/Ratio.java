package org.thalweg.pricing;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * An exact quantity that need not end after so many decimals: 100 in are 100/12 ft.
 *
 * @param over  0 or more
 * @param under above 0
 */
public record Ratio(BigDecimal over, BigDecimal under) {

    public Ratio {
        if (over.signum() < 0 || under.signum() <= 0) {
            throw new IllegalArgumentException("%s over %s is no quantity".formatted(over, under));
        }
    }

    public static Ratio of(BigDecimal number) {
        return new Ratio(number, BigDecimal.ONE);
    }

    Ratio times(BigDecimal number) {
        return new Ratio(over.multiply(number), under);
    }

    /** The quantity of {@code from} as one of {@code to}. */
    Ratio converted(BookUnit from, BookUnit to) {
        if (from == to) {
            return this;
        }
        Ratio one = from.in(to);
        return new Ratio(product(over, one.over), product(under, one.under));
    }

    private static BigDecimal product(BigDecimal a, BigDecimal b) {
        return b.equals(BigDecimal.ONE) ? a : a.multiply(b);
    }

    boolean atLeast(BigDecimal number) {
        return over.compareTo(product(under, number)) >= 0;
    }

    /** The fewest packs that hold it: a whole number. */
    BigDecimal packsOf(BigDecimal pack) {
        return over.divide(under.multiply(pack), 0, RoundingMode.CEILING);
    }

    /** Rounded once, half up. */
    public BigDecimal rounded(int decimals) {
        return under.equals(BigDecimal.ONE)
                ? over.setScale(decimals, RoundingMode.HALF_UP)
                : over.divide(under, decimals, RoundingMode.HALF_UP);
    }
}
