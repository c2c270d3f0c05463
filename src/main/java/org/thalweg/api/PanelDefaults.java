package org.thalweg.api;

import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;

/**
 * What a panel is like when the caller does not say. Every figure may be replaced; the supplier's and the engineer's win.
 * Round inches for callers who work in inches or feet, round millimetres for the rest.
 *
 * @param longest        longest blank: 45 ft, "practical limit of continuous pan run", or 13.7 m [published: SMACNA
 *                       architectural sheet metal manual, 5th ed., as quoted]
 * @param shortest       shortest blank [common practice, no source]
 * @param orderIncrement step of blank lengths [common practice, no source]
 * @param narrowestRip   a piece narrower than this is a sliver [common practice, no source]
 * @param mostEndLap     end lap of panels that are long enough for it [common practice, no source]
 * @param mostStagger    stagger of the laps of neighbours [common practice, no source]
 */
record PanelDefaults(
        Length longest,
        Length shortest,
        Length orderIncrement,
        Length narrowestRip,
        Length mostEndLap,
        Length mostStagger) {

    /** No. 24 galvanized sheet; see the gauge table. [common practice, no source] */
    static final String METAL = "galvanized-steel";

    static final Length THICKNESS = Length.inches(0.0276);

    /** Both seams together: 1 1/2 in and 1 1/4 in [published: Copper Roofings, a manual, 1920s]. */
    private static final Length SEAMS = Length.inches(2.75);

    private static final PanelDefaults INCHES = new PanelDefaults(
            Length.feet(45),
            Length.inches(6),
            Length.inches(0.25),
            Length.inches(4),
            Length.inches(6),
            Length.inches(24));

    private static final PanelDefaults METRIC = new PanelDefaults(
            Length.metres(13.7),
            Length.millimetres(150),
            Length.millimetres(5),
            Length.millimetres(100),
            Length.millimetres(150),
            Length.millimetres(600));

    static PanelDefaults of(LengthUnit unit) {
        return unit.inInches() ? INCHES : METRIC;
    }

    /** Width of the flat sheet for a cover. */
    static Length girth(Length cover) {
        return Length.metres(cover.metres() + SEAMS.metres());
    }

    /** At most a tenth of the longest blank. */
    Length endLap(Length longestUsed) {
        return least(mostEndLap, longestUsed.metres() / 10);
    }

    /** At most a quarter of the longest blank. */
    Length stagger(Length longestUsed) {
        return least(mostStagger, longestUsed.metres() / 4);
    }

    private static Length least(Length most, double other) {
        return other < most.metres() ? Length.metres(other) : most;
    }
}
