package org.thalweg.packet;

import java.util.Optional;
import org.thalweg.roof.Roof;
import org.thalweg.units.Force;
import org.thalweg.units.Length;
import org.thalweg.wind.LowRiseWind;
import org.thalweg.wind.Uplift;
import org.thalweg.wind.WindZones;
import org.thalweg.wind.ZonePressures;

/**
 * What clips of one job are spaced for.
 *
 * @param clip          what one clip may be trusted with; above 0
 * @param mostInField   greatest spacing in the field however little the wind; above 0
 * @param mostElsewhere the same along edges and at corners; above 0
 * @param noWider       no clips stand further apart than this, if a caller says so
 * @param zones         how wide the strips along edges are, or how high the roof is, from which that follows
 * @param pressures     how hard the wind lifts
 */
public record WindTerms(
        Force clip,
        Length mostInField,
        Length mostElsewhere,
        Optional<Length> noWider,
        Zones zones,
        Pressures pressures) {

    /**
     * How wide strips are. One of the two is there.
     *
     * @param width  a, as given; goes before the rule
     * @param height h, mean roof height
     */
    public record Zones(Optional<Length> width, Optional<Length> height) {}

    /** Where pressures come from. */
    public sealed interface Pressures permits Named, WorkedOut {
        Uplift on(Roof roof, WindZones zones);
    }

    /**
     * An engineer's.
     *
     * @param zones the same on every plane
     */
    public record Named(ZonePressures zones) implements Pressures {
        @Override
        public Uplift on(Roof roof, WindZones of) {
            return Uplift.given(roof, of, zones);
        }
    }

    /**
     * By published tables; preliminary.
     *
     * @param wind what blows
     */
    public record WorkedOut(LowRiseWind wind) implements Pressures {
        @Override
        public Uplift on(Roof roof, WindZones of) {
            return Uplift.lowRise(roof, of, wind);
        }
    }
}
