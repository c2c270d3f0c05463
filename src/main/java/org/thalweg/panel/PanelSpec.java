package org.thalweg.panel;

import org.thalweg.units.Length;

/**
 * The panel and what can be done with it.
 *
 * @param cover          width a panel covers, from rib to rib; above 0
 * @param longest        longest blank that can be made or carried; above 0
 * @param shortest       shortest blank that can be made; 0 or more
 * @param orderIncrement blanks are ordered in whole increments; 0 for any length
 * @param narrowestRip   a piece narrower than this is a sliver; 0 or more
 * @param endLap         how far a panel goes under the one above it; 0 or more
 * @param stagger        how far the laps of neighbouring strips are apart; 0 or more
 */
public record PanelSpec(
        Length cover,
        Length longest,
        Length shortest,
        Length orderIncrement,
        Length narrowestRip,
        Length endLap,
        Length stagger) {

    public PanelSpec {
        if (cover.metres() <= 0 || longest.metres() <= 0) {
            throw new IllegalArgumentException("cover (%s) and longest (%s) must be above 0".formatted(cover, longest));
        }
        if (!canLap(longest, endLap, stagger, orderIncrement)) {
            throw new IllegalArgumentException(
                    "longest (%s) must be more than end lap (%s), half the stagger (%s) and two increments of (%s) together"
                            .formatted(longest, endLap, stagger, orderIncrement));
        }
    }

    /** Whether a blank this long is more than its lap, with room to stagger and to round; only then can panels be lapped. */
    public static boolean canLap(Length longest, Length endLap, Length stagger, Length orderIncrement) {
        return usable(longest, endLap, stagger, orderIncrement) > 0;
    }

    /** What one lapped blank adds at least: its length less the lap, less room to stagger and to round. Metres. */
    double usable() {
        return usable(longest, endLap, stagger, orderIncrement);
    }

    private static double usable(Length longest, Length endLap, Length stagger, Length orderIncrement) {
        return longest.metres() - endLap.metres() - stagger.metres() / 2 - 2 * orderIncrement.metres();
    }
}
