package org.thalweg.takeoff;

import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * How an item is bought.
 *
 * @param extra what is ordered more for what is lost at work, in hundredths of a per cent; 0 or more
 * @param pack  what is in one pack: pieces, metres or square metres, above 0; nothing where it is sold singly
 */
public record OrderRule(long extra, OptionalDouble pack) {

    /** No more than is needed, sold singly. */
    public static final OrderRule AS_NEEDED = new OrderRule(0, OptionalDouble.empty());

    /** The same, in these packs where it says of none. */
    OrderRule packedBy(@Nullable Double usual) {
        return pack.isPresent() || usual == null ? this : new OrderRule(extra, OptionalDouble.of(usual));
    }

    public OrderRule {
        if (extra < 0 || pack.isPresent() && !(pack.getAsDouble() > 0)) {
            throw new IllegalArgumentException("extra (%d) is 0 or more, a pack (%s) above 0".formatted(extra, pack));
        }
    }
}
