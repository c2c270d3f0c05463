package org.thalweg.fastening;

import org.thalweg.reference.Rules;
import org.thalweg.units.Force;
import org.thalweg.units.Length;
import org.thalweg.units.Pressure;
import org.thalweg.wind.Uplift;
import org.thalweg.wind.WindZone;

/**
 * Clips spaced for the wind: by what one may be trusted with and how hard the wind lifts, zone by zone.
 *
 * @param uplift      how hard the wind lifts, where
 * @param allowable   what one clip may be trusted with; above 0
 * @param mostInField greatest spacing in the field however little the wind; above 0
 * @param mostElsewhere the same along edges and at corners; above 0
 */
public record WindClips(Uplift uplift, Force allowable, Length mostInField, Length mostElsewhere) {

    /** As far apart as is published at most: {@link Rules#clipFieldSpacing} and {@link Rules#clipEdgeSpacing}. */
    public static WindClips of(Uplift uplift, Force allowable) {
        return new WindClips(
                uplift,
                allowable,
                Rules.clipFieldSpacing().value(),
                Rules.clipEdgeSpacing().value());
    }

    /** The same, but nowhere further apart than {@code most}. */
    public WindClips atMost(Length most) {
        return new WindClips(uplift, allowable, lesser(mostInField, most), lesser(mostElsewhere, most));
    }

    private static Length lesser(Length one, Length other) {
        return one.compareTo(other) <= 0 ? one : other;
    }

    /** The greatest spacing in a zone the wind lifts this hard. */
    public Length spacing(WindZone zone, Pressure lift, Length cover) {
        return new ClipLoad(allowable, zone == WindZone.FIELD ? mostInField : mostElsewhere).spacing(lift, cover);
    }
}
