package org.thalweg.pricing;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.thalweg.finding.Origin;
import org.thalweg.units.Length;

/**
 * What a price book says of one sort of goods.
 *
 * @param item    the key of the order lines it is for
 * @param match   what else such a line must say
 * @param unit    what the prices are per
 * @param breaks  prices by quantity, the first from 0, each from more than the one before; never none
 * @param pack    quantity in one pack, in {@code unit}; above 0
 * @param minimum the least a line with anything on it costs
 * @param waste   how much of a line is paid for
 * @param gtin    the goods' Global Trade Item Number
 * @param code    the supplier's own number
 * @param at      where in the book it stands
 */
public record BookItem(
        String item,
        Match match,
        BookUnit unit,
        List<PriceBreak> breaks,
        Optional<BigDecimal> pack,
        Optional<BigDecimal> minimum,
        WastePolicy waste,
        Optional<String> gtin,
        Optional<String> code,
        Origin at) {

    public BookItem {
        breaks = List.copyOf(breaks);
        if (breaks.isEmpty() || breaks.get(0).from().signum() != 0) {
            throw new IllegalArgumentException("prices start from a quantity of 0: " + breaks);
        }
        for (int i = 1; i < breaks.size(); i++) {
            if (breaks.get(i - 1).from().compareTo(breaks.get(i).from()) >= 0) {
                throw new IllegalArgumentException("price breaks go up: " + breaks);
            }
        }
        if (pack.isPresent() && pack.get().signum() <= 0) {
            throw new IllegalArgumentException("a pack holds something: " + pack);
        }
    }

    /**
     * What an order line must be made of to have the price. What is left out is of no account.
     *
     * @param metal     its name in the table of metals
     * @param thickness the same, as the takeoff prints it
     * @param width     of the flat sheet, likewise
     * @param profile   its shape
     */
    public record Match(
            Optional<String> metal, Optional<Length> thickness, Optional<Length> width, Optional<String> profile) {

        /** Whatever it is made of. */
        public static final Match ANY =
                new Match(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    /**
     * A price that holds for the whole quantity once that is reached.
     *
     * @param from  the quantity; 0 or more
     * @param price per unit; 0 or more
     */
    public record PriceBreak(BigDecimal from, BigDecimal price) {

        public PriceBreak {
            if (from.signum() < 0 || price.signum() < 0) {
                throw new IllegalArgumentException("neither is below 0: %s from %s".formatted(price, from));
            }
        }
    }

    /** The price of the last break that is reached. */
    BigDecimal price(Ratio quantity) {
        int last = breaks.size() - 1;
        while (last > 0 && !quantity.atLeast(breaks.get(last).from())) {
            last--;
        }
        return breaks.get(last).price();
    }
}
