package org.thalweg.takeoff;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * How a job is bought.
 *
 * @param formed who forms the panels
 * @param rules  how single items are bought; the others as needed
 */
public record Ordering(Formed formed, Map<OrderItem, OrderRule> rules) {

    /** Who forms the panels. */
    public enum Formed {
        /** The supplier: panels come cut to length. */
        BY_SUPPLIER,
        /** The crew, on site, from coil. */
        ON_SITE
    }

    /** Panels cut to length, everything as needed. */
    public static final Ordering PLAIN = new Ordering(Formed.BY_SUPPLIER, Map.of());

    public Ordering {
        rules = rules.isEmpty() ? Map.of() : Collections.unmodifiableMap(new EnumMap<>(rules));
    }

    OrderRule rule(OrderItem item) {
        return rules.getOrDefault(item, OrderRule.AS_NEEDED);
    }
}
