package org.thalweg.pricing;

import java.math.BigDecimal;
import java.util.Optional;
import org.thalweg.finding.Origin;

/**
 * Work that is priced by a total of the takeoff: so much for each panel, for each foot of mitre.
 *
 * @param id      the book's name for it
 * @param per     the total's item
 * @param of      the total's kind, where kinds are told apart
 * @param unit    what the price is per
 * @param price   0 or more
 * @param minimum the least it costs where there is anything to do
 * @param at      where in the book it stands
 */
public record LabourItem(
        String id,
        String per,
        Optional<String> of,
        BookUnit unit,
        BigDecimal price,
        Optional<BigDecimal> minimum,
        Origin at) {

    public LabourItem {
        if (price.signum() < 0) {
            throw new IllegalArgumentException("a price is 0 or more: " + price);
        }
    }
}
