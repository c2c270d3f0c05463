package org.thalweg.takeoff;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.thalweg.units.Length;

/**
 * How a job is bought.
 *
 * @param formed who forms the panels
 * @param rules  how single items are bought; the others as needed
 * @param stock  what goods of sheet metal are cut from; nothing where they are ordered as long as their pieces
 * @param mark   the finest mark of a shop's tape: widths of sheet that are nearest to the same mark are one width; above 0
 */
public record Ordering(Formed formed, Map<OrderItem, OrderRule> rules, Optional<SheetStock> stock, Length mark) {

    /** Who forms the panels. */
    public enum Formed {
        /** The supplier: panels come cut to length. */
        BY_SUPPLIER,
        /** The crew, on site, from coil. */
        ON_SITE
    }

    /** Panels cut to length, everything as needed. */
    public static Ordering plain(Length mark) {
        return new Ordering(Formed.BY_SUPPLIER, Map.of(), Optional.empty(), mark);
    }

    public Ordering {
        rules = rules.isEmpty() ? Map.of() : Collections.unmodifiableMap(new EnumMap<>(rules));
    }

    /** The width a shop cuts for this one. */
    Length marked(Length width) {
        return SheetStock.marked(width, mark);
    }

    OrderRule rule(OrderItem item) {
        return rules.getOrDefault(item, OrderRule.AS_NEEDED);
    }
}
