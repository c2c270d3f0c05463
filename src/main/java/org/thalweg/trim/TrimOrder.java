package org.thalweg.trim;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.thalweg.reference.Rules;
import org.thalweg.roof.EdgeKind;
import org.thalweg.units.Length;

/**
 * What trims edges of one kind get.
 *
 * @param shape the profile, if the caller has one; else the usual one
 * @param lap   how far a piece lies over the one before; 0 or more
 */
public record TrimOrder(Optional<TrimShape> shape, Length lap) {

    /** For joints nobody prints a lap for. [common practice, no source] */
    private static final Length PLAIN_LAP = Length.inches(4);

    public TrimOrder {
        if (lap.metres() < 0) {
            throw new IllegalArgumentException("a lap (%s) is 0 or more".formatted(lap));
        }
    }

    /** The usual profile and lap for every kind of edge that gets a trim. */
    public static Map<EdgeKind, TrimOrder> usual() {
        Map<EdgeKind, TrimOrder> orders = new EnumMap<>(EdgeKind.class);
        for (EdgeKind kind : EdgeKind.values()) {
            Family.of(kind).ifPresent(family -> orders.put(kind, new TrimOrder(Optional.empty(), usualLap(family))));
        }
        return orders;
    }

    /**
     * Round the outside 3 in, as copper strips along a rake, which is more than the 2 in of a drip edge; 4 in where the slope
     * changes. [published: {@link Rules#rakeStripLap}, {@link Rules#dripEdgeLeastLap}, {@link Rules#slopeChangeLap}] Else 4 in.
     */
    private static Length usualLap(Family family) {
        return switch (family) {
            case PERIMETER -> Rules.rakeStripLap().value();
            case BREAK -> Rules.slopeChangeLap().value();
            case WALL, OPENING, CAP -> PLAIN_LAP;
        };
    }
}
