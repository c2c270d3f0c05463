package org.thalweg.roof;

import java.util.List;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Tolerance;
import org.thalweg.units.Pitch;

/**
 * A roof as measured, before it is read.
 *
 * @param planes       in the caller's order; at least one
 * @param named        edges whose kind the caller gives
 * @param tolerance    how close two corners must be to be one
 * @param leastSlope   flattest slope the panel system allows
 * @param leastSlopeSource where that figure comes from
 */
public record RoofSurvey(
        List<PlaneOutline> planes,
        List<NamedEdge> named,
        Tolerance tolerance,
        Pitch leastSlope,
        Source leastSlopeSource) {

    public RoofSurvey {
        planes = List.copyOf(planes);
        named = List.copyOf(named);
    }
}
