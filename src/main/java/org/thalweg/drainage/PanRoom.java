package org.thalweg.drainage;

import org.thalweg.finding.Source;
import org.thalweg.units.Length;

/**
 * The room a pan leaves for water, alike on both its sides; measured on the metal, square to the valley.
 *
 * @param holdBackAtBottom how far the panel edge is held back from the low at the valley's lower end; 0 or more
 * @param holdBackAtTop    the same at the upper end; straight between the two
 * @param margin           how far the water must stay off the panel edge; 0 or more
 * @param ribLeg           girth of each of the rib's two legs; above 0
 * @param beyondHoldBack   what half the coil holds besides the hold-back: cover under the panel, edge return, rib leg
 * @param source           where hold-back and margin come from
 */
public record PanRoom(
        Length holdBackAtBottom,
        Length holdBackAtTop,
        Length margin,
        Length ribLeg,
        Length beyondHoldBack,
        Source source) {

    public PanRoom {
        if (holdBackAtBottom.metres() < 0 || holdBackAtTop.metres() < 0 || margin.metres() < 0) {
            throw new IllegalArgumentException("hold-backs (%s, %s) and margin (%s) must be 0 or more"
                    .formatted(holdBackAtBottom, holdBackAtTop, margin));
        }
        if (ribLeg.metres() <= 0) {
            throw new IllegalArgumentException("ribLeg (%s) must be above 0".formatted(ribLeg));
        }
    }

    /**
     * How far up the pan water may spread at a place; below 0 when the margin is all of the hold-back.
     *
     * @param share how far up the valley, 0 at its lower end to 1 at the upper
     */
    double spreadLimit(double share) {
        double bottom = holdBackAtBottom.metres();
        return bottom + share * (holdBackAtTop.metres() - bottom) - margin.metres();
    }
}
