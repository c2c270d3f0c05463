package org.thalweg.drainage;

import java.util.List;
import java.util.Optional;
import org.thalweg.finding.Place;
import org.thalweg.geometry.Tolerance;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;
import org.thalweg.units.Rainfall;

/**
 * A valley whose water is asked for.
 *
 * @param place     the valley, for findings
 * @param length    true length, above 0
 * @param slope     θv, angle from level
 * @param sides     its two sides, in the order of the edge's
 * @param pan       the room the pan leaves
 * @param stations  places along the valley from its lower end, which comes first: 0, then ascending, none past the end
 * @param rainfall  the storm it is held against, if one is given
 * @param roughness Manning's n; see {@link Channel#ROUGHNESS}
 * @param tolerance of the roof
 */
public record WaterCase(
        Place place,
        Length length,
        Angle slope,
        List<WaterSide> sides,
        PanRoom pan,
        List<Length> stations,
        Optional<Rainfall> rainfall,
        double roughness,
        Tolerance tolerance) {

    public WaterCase {
        sides = List.copyOf(sides);
        stations = List.copyOf(stations);
        if (sides.size() != 2) {
            throw new IllegalArgumentException("a valley has 2 sides, not " + sides.size());
        }
        if (stations.isEmpty() || stations.get(0).metres() != 0) {
            throw new IllegalArgumentException("the first of the stations (%s) must be 0".formatted(stations));
        }
        for (int i = 1; i < stations.size(); i++) {
            if (stations.get(i).compareTo(stations.get(i - 1)) <= 0
                    || stations.get(i).compareTo(length) > 0) {
                throw new IllegalArgumentException(
                        "stations (%s) must ascend and end by %s".formatted(stations, length));
            }
        }
    }
}
