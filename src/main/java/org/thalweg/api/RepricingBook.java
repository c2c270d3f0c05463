package org.thalweg.api;

import org.thalweg.pricing.PriceBook;

/** The price book of a repricing. Never changes, so that any number of workers may use it. */
public final class RepricingBook {

    private final PriceBook prices;
    private final String digest;

    RepricingBook(PriceBook prices, String digest) {
        this.prices = prices;
        this.digest = digest;
    }

    PriceBook prices() {
        return prices;
    }

    /** SHA-256 of the canonical form (RFC 8785) of the line it was read from. */
    public String digest() {
        return digest;
    }
}
