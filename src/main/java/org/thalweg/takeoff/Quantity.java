package org.thalweg.takeoff;

import org.thalweg.geometry.Tolerance;

/**
 * How much of something is needed, and why. Net, laps and waste add up to what is ordered and what lies on the rack.
 *
 * @param kind  what it is measured by; the parts are in metres, square metres or pieces
 * @param net   what does its work where it shows or holds; 0 or more
 * @param lap   what lies under laps and in hems and turn-ups; 0 or more
 * @param waste what is cut off, lost or left over; 0 or more
 * @param rack  what of it lies on the rack and is not bought; 0 or more, no more than the others together
 */
public record Quantity(Kind kind, double net, double lap, double waste, double rack) {

    /** What things are measured by. */
    public enum Kind {
        LENGTH,
        AREA,
        COUNT
    }

    private static final long WHOLE = 10_000;

    public Quantity {
        if (!(net >= 0 && lap >= 0 && waste >= 0 && rack >= 0)) {
            throw new IllegalArgumentException(
                    "net (%s), lap (%s), waste (%s) and rack (%s) are 0 or more".formatted(net, lap, waste, rack));
        }
    }

    /** So many pieces, none of them lost. */
    static Quantity count(long pieces) {
        return new Quantity(Kind.COUNT, pieces, 0, 0, 0);
    }

    /** So much length, all of it at work. */
    static Quantity length(double metres) {
        return new Quantity(Kind.LENGTH, metres, 0, 0, 0);
    }

    /** So much area, all of it at work. */
    static Quantity area(double squareMetres) {
        return new Quantity(Kind.AREA, squareMetres, 0, 0, 0);
    }

    /** What is ordered of which so much shows, and no more than is left of it lies in laps; the rest is waste. */
    static Quantity of(Kind kind, double ordered, double net, double lap) {
        double shows = Math.min(Math.max(net, 0), ordered);
        double laps = Math.min(Math.max(lap, 0), ordered - shows);
        return new Quantity(kind, shows, laps, ordered - shows - laps, 0);
    }

    /** What is bought. */
    public double ordered() {
        return Math.max(0, net + lap + waste - rack);
    }

    /** The same goods cut from bars: what is longer than the pieces is waste, and some of it lies on the rack. */
    Quantity cut(double bars, double fromRack) {
        return new Quantity(kind, net, lap, Math.max(0, bars - net - lap), fromRack);
    }

    /** With more for what is lost at work, up to whole packs. Pieces are counted exactly. */
    Quantity bought(OrderRule rule, Tolerance tolerance) {
        double needed = kind == Kind.COUNT ? pieces(rule) : ordered() * (1 + rule.extra() / (double) WHOLE);
        double bought = rule.pack().isPresent()
                ? rule.pack().getAsDouble() * packs(needed, rule.pack().getAsDouble(), tolerance)
                : needed;
        return new Quantity(kind, net, lap, waste + Math.max(0, bought - ordered()), rack);
    }

    private long pieces(OrderRule rule) {
        long pieces = Math.round(ordered());
        return pieces + -Math.floorDiv(-pieces * rule.extra(), WHOLE);
    }

    static long packs(double needed, double pack, Tolerance tolerance) {
        return needed <= tolerance.hair() ? 0 : Math.max(1, tolerance.ceil(needed, pack));
    }
}
