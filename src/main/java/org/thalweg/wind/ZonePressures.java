package org.thalweg.wind;

import org.thalweg.units.Pressure;

/**
 * How hard the wind lifts a plane by design, at the level of allowable loads.
 *
 * @param field  away from edges
 * @param edge   along edges
 * @param corner at corners
 */
public record ZonePressures(Pressure field, Pressure edge, Pressure corner) {

    /** The same everywhere. */
    public static ZonePressures everywhere(Pressure uplift) {
        return new ZonePressures(uplift, uplift, uplift);
    }

    public Pressure in(WindZone zone) {
        return switch (zone) {
            case FIELD -> field;
            case EDGE -> edge;
            case CORNER -> corner;
        };
    }
}
