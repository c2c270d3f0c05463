package org.thalweg.roof;

import java.util.List;
import org.thalweg.finding.Origin;
import org.thalweg.geometry.Point3;

/**
 * One plane as the caller drew it, before anything is checked.
 *
 * @param id       the caller's name for it
 * @param outline  corners in order, either way round, the first repeated at the end or not; world, metres
 * @param openings chimneys, skylights; in the caller's order
 * @param at       where in the request the plane stands; corner i is {@code at/outline/i} for rings of the caller
 * @param outlineAt where in the request the outline's list of corners stands
 */
public record PlaneOutline(
        String id, List<Point3> outline, List<OpeningOutline> openings, Origin at, Origin outlineAt) {

    public PlaneOutline {
        outline = List.copyOf(outline);
        openings = List.copyOf(openings);
    }

    /**
     * A hole in a plane.
     *
     * @param id        the caller's name for it
     * @param outline   corners in order, either way round; world, metres
     * @param outlineAt where in the request the opening's list of corners stands
     */
    public record OpeningOutline(String id, List<Point3> outline, Origin outlineAt) {
        public OpeningOutline {
            outline = List.copyOf(outline);
        }
    }
}
