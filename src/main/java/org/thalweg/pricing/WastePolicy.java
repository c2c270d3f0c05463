package org.thalweg.pricing;

import java.math.BigDecimal;

/**
 * How much of an order line is paid for.
 *
 * @param basis   what of the line counts
 * @param percent more for waste, of net and laps; 0 with {@link Basis#ORDERED}
 */
public record WastePolicy(Basis basis, BigDecimal percent) {

    /** What of an order line counts. */
    public enum Basis {
        /** All that is ordered: net, laps and waste, packs of the order filled up. */
        ORDERED,
        /** What does its work and what lies in laps, with a flat percentage for waste in place of the order's own. */
        NET
    }

    /** The order as it stands. */
    public static final WastePolicy AS_ORDERED = new WastePolicy(Basis.ORDERED, BigDecimal.ZERO);

    public WastePolicy {
        if (percent.signum() < 0 || (basis == Basis.ORDERED && percent.signum() > 0)) {
            throw new IllegalArgumentException("waste of %s %% of %s".formatted(percent, basis));
        }
    }

    /** How much of the line is paid for, in the line's unit. */
    Ratio of(PrintedLine line) {
        return basis == Basis.ORDERED ? Ratio.of(line.ordered()) : Ratio.of(atWork(line));
    }

    /** How much of its mass: as large a part of it as is paid for of the line. */
    Ratio massOf(PrintedLine line, BigDecimal mass) {
        if (basis == Basis.ORDERED || line.ordered().signum() == 0) {
            return Ratio.of(mass);
        }
        return new Ratio(mass.multiply(atWork(line)), line.ordered());
    }

    private BigDecimal atWork(PrintedLine line) {
        return line.net().add(line.lap()).multiply(BigDecimal.ONE.add(percent.movePointLeft(2)));
    }
}
