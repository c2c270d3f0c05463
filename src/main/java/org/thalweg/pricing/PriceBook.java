package org.thalweg.pricing;

import java.util.Currency;
import java.util.List;
import org.thalweg.finding.Origin;
import org.thalweg.pricing.Surcharge.Base;

/**
 * A supplier's or a crew's prices. One that exists is good: it can be used for any number of takeoffs.
 *
 * @param currency of every price; has a minor unit, be it the currency itself
 * @param waste    how much of a line is paid for, where its entry says nothing else
 * @param items    goods
 * @param labour   work, in the order of the quote
 * @param markups  in the order they are added
 * @param taxes    in the order of the quote; no tax is taxed
 * @param at       where the book stands
 */
public record PriceBook(
        Currency currency,
        WastePolicy waste,
        BookItems items,
        List<LabourItem> labour,
        List<Surcharge> markups,
        List<Surcharge> taxes,
        Origin at) {

    public PriceBook {
        labour = List.copyOf(labour);
        markups = List.copyOf(markups);
        taxes = List.copyOf(taxes);
        if (currency.getDefaultFractionDigits() < 0) {
            throw new IllegalArgumentException("nothing is paid in " + currency);
        }
        if (!items.clashes().isEmpty()) {
            throw new IllegalArgumentException("two entries say the same: " + items.clashes());
        }
        if (markups.stream().anyMatch(markup -> markup.base() == Base.TOTAL)
                || taxes.stream().anyMatch(tax -> tax.base() == Base.RUNNING)) {
            throw new IllegalArgumentException("mark-ups come before the total and taxes after it");
        }
    }

    /** Decimals of an amount of money [published: ISO 4217, by way of the Java runtime]. */
    public int decimals() {
        return currency.getDefaultFractionDigits();
    }
}
