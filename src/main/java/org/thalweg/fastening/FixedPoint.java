package org.thalweg.fastening;

import org.thalweg.units.Length;

/**
 * Where a panel is fixed to the roof. One place holds it; from there it grows and shrinks, and everything else must let it.
 */
public enum FixedPoint {
    /** At its lower end, so that it grows toward the ridge. */
    EAVE(0),
    /** At its upper end, so that it grows over the eave. */
    RIDGE(1),
    /** Half-way up, so that each end moves half as far. */
    MIDDLE(0.5);

    private final double share;

    FixedPoint(double share) {
        this.share = share;
    }

    /** How far up the panel it is. */
    Length up(Length panel) {
        return Length.metres(share * panel.metres());
    }

    /** From it to the further end of a panel. */
    public Length furthest(Length panel) {
        return Length.metres(panel.metres() * Math.max(share, 1 - share));
    }

    /** The longest panel whose further end lies no further from it than {@code free}: twice as long when fixed half-way. */
    public Length longest(Length free) {
        return Length.metres(free.metres() / Math.max(share, 1 - share));
    }
}
