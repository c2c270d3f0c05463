package org.thalweg.movement;

import org.thalweg.finding.Source;
import org.thalweg.units.Length;

/**
 * What a hem hooked round a cleat lets a panel's end do. The lip of the cleat lies so far in the fold: when the panel grows
 * over its end the fold slides off the lip, when it shrinks the fold closes on it.
 *
 * <pre>
 *   panel ____________________
 *                             )   fold
 *          lip ===========  __)
 *                         |gap|
 *               |engaged|
 * </pre>
 *
 * @param engaged how much of the lip lies in the fold when it is fastened; the end may move out by less than this; 0 or more
 * @param gap     from the lip to the fold; the end may move in by this; 0 or more
 * @param source  whose figures they are
 */
public record HemHook(Length engaged, Length gap, Source source) {

    public HemHook {
        if (engaged.metres() < 0 || gap.metres() < 0) {
            throw new IllegalArgumentException("engaged (%s) and gap (%s) must be 0 or more".formatted(engaged, gap));
        }
    }

    /** A hem with the lip half-way into it [common practice, no source]. */
    public static HemHook halfWayInto(Length hem) {
        Length half = Length.metres(hem.metres() / 2);
        return new HemHook(half, half, Source.COMMON_PRACTICE);
    }

    /** The hem that would take all of a growth, with the lip where it is needed: no more than both ways together. */
    public static Length hemFor(Growth growth) {
        return growth.range();
    }
}
