package org.thalweg.stock;

import java.util.OptionalInt;

/**
 * Bars that are alike: as the supplier sells them, or off-cuts on the rack.
 *
 * @param id     the caller's name for them
 * @param length of one, grid steps; 1 or more
 * @param cost   of one, whole units, as cents; 0 or more. What lies on the rack and is paid for costs 0 and so is used first
 * @param count  how many there are, 1 or more; as many as wanted if empty. Bars that cost nothing have a count
 */
public record StockBar(String id, long length, long cost, OptionalInt count) {

    public StockBar {
        if (length < 1 || cost < 0 || count.orElse(1) < 1) {
            throw new IllegalArgumentException(
                    "stock %s: length %d, cost %d, count %s".formatted(id, length, cost, count));
        }
        if (cost == 0 && count.isEmpty()) {
            throw new IllegalArgumentException("stock %s costs nothing and has no count".formatted(id));
        }
    }

    /** As many as anybody wants. */
    public static StockBar of(String id, long length, long cost) {
        return new StockBar(id, length, cost, OptionalInt.empty());
    }

    /** What is on the rack. */
    public static StockBar onRack(String id, long length, int count) {
        return new StockBar(id, length, 0, OptionalInt.of(count));
    }
}
