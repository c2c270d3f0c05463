package org.thalweg.takeoff;

import org.thalweg.geometry.Tolerance;

/**
 * How much of something is ordered, and why. The parts add up to what is ordered.
 *
 * @param kind  what it is measured by; the parts are in metres, square metres or pieces
 * @param net   what does its work where it shows or holds; 0 or more
 * @param lap   what lies under laps and in hems and turn-ups; 0 or more
 * @param waste what is cut off, lost or left over; 0 or more
 */
public record Quantity(Kind kind, double net, double lap, double waste) {

    /** What things are measured by. */
    public enum Kind {
        LENGTH,
        AREA,
        COUNT
    }

    private static final long WHOLE = 10_000;

    public Quantity {
        if (!(net >= 0 && lap >= 0 && waste >= 0)) {
            throw new IllegalArgumentException(
                    "net (%s), lap (%s) and waste (%s) are 0 or more".formatted(net, lap, waste));
        }
    }

    /** So many pieces, none of them lost. */
    static Quantity count(long pieces) {
        return new Quantity(Kind.COUNT, pieces, 0, 0);
    }

    /** So much length, all of it at work. */
    static Quantity length(double metres) {
        return new Quantity(Kind.LENGTH, metres, 0, 0);
    }

    /** So much area, all of it at work. */
    static Quantity area(double squareMetres) {
        return new Quantity(Kind.AREA, squareMetres, 0, 0);
    }

    /** What is ordered of which so much shows, and no more than is left of it lies in laps; the rest is waste. */
    static Quantity of(Kind kind, double ordered, double net, double lap) {
        double shows = Math.min(Math.max(net, 0), ordered);
        double laps = Math.min(Math.max(lap, 0), ordered - shows);
        return new Quantity(kind, shows, laps, ordered - shows - laps);
    }

    public double ordered() {
        return net + lap + waste;
    }

    /** With more for what is lost at work, up to whole packs. Pieces are counted exactly. */
    Quantity bought(OrderRule rule, Tolerance tolerance) {
        double needed = kind == Kind.COUNT ? pieces(rule) : ordered() * (1 + rule.extra() / (double) WHOLE);
        double bought = rule.pack().isPresent()
                ? rule.pack().getAsDouble() * packs(needed, rule.pack().getAsDouble(), tolerance)
                : needed;
        return new Quantity(kind, net, lap, waste + Math.max(0, bought - ordered()));
    }

    private long pieces(OrderRule rule) {
        long pieces = Math.round(ordered());
        return pieces + -Math.floorDiv(-pieces * rule.extra(), WHOLE);
    }

    static long packs(double needed, double pack, Tolerance tolerance) {
        return needed <= tolerance.hair() ? 0 : Math.max(1, tolerance.ceil(needed, pack));
    }
}
