package org.thalweg.footprint;

import java.util.List;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Tolerance;
import org.thalweg.roof.PlaneOutline.OpeningOutline;
import org.thalweg.units.Length;
import org.thalweg.units.Pitch;

/**
 * A roof as its walls say it: where they stand, what rises from each of them, and where it was said.
 *
 * @param walls            the plan; heights in it are measured from {@code eaveHeight}
 * @param sides            its sides, in the order of their numbers
 * @param eaveHeight       how high the eaves stand
 * @param openings         chimneys, skylights as seen from above, in the caller's order; their corners' heights mean nothing
 * @param at               where in the request the plan stands
 * @param tolerance        how close two corners of the roof must be to be one
 * @param leastSlope       flattest slope the panel system allows
 * @param leastSlopeSource where that figure comes from
 */
public record FootprintSurvey(
        Footprint walls,
        List<Side> sides,
        Length eaveHeight,
        List<OpeningOutline> openings,
        Origin at,
        Tolerance tolerance,
        Pitch leastSlope,
        Source leastSlopeSource) {

    public FootprintSurvey {
        sides = List.copyOf(sides);
        openings = List.copyOf(openings);
        if (sides.size() != walls.sides()) {
            throw new IllegalArgumentException("%d sides, %d names".formatted(walls.sides(), sides.size()));
        }
    }

    /**
     * What was said of a side.
     *
     * @param id      the caller's name for it, or one made of its number; its slope is called so
     * @param own     whether the caller gave the name
     * @param told    what it is called in a sentence
     * @param walled  whether a wall goes on above the roof along it
     * @param at      where in the request its first corner stands
     * @param saidAt  where more is said about it
     * @param pitchAt where its pitch stands, or that of its cross gable
     */
    public record Side(String id, boolean own, String told, boolean walled, Origin at, Origin saidAt, Origin pitchAt) {}
}
