package org.thalweg.pricing;

import java.math.BigDecimal;

/**
 * A mark-up or a tax: a part of a sum that is added to it.
 *
 * @param id      the book's name for it
 * @param percent 0 or more
 * @param base    of which sum
 */
public record Surcharge(String id, BigDecimal percent, Base base) {

    /** The sums of a quote that a part may be taken of. */
    public enum Base {
        /** All goods. */
        GOODS,
        /** All labour. */
        LABOUR,
        /** Goods and labour. */
        SUBTOTAL,
        /** The subtotal and the mark-ups so far; only for mark-ups. */
        RUNNING,
        /** The subtotal and all mark-ups; only for taxes, which are not taxed again. */
        TOTAL
    }

    public Surcharge {
        if (percent.signum() < 0) {
            throw new IllegalArgumentException("a percentage is 0 or more: " + percent);
        }
    }
}
