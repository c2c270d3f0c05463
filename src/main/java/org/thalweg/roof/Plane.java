package org.thalweg.roof;

import org.thalweg.finding.Origin;
import org.thalweg.geometry.Frame;
import org.thalweg.geometry.Region;
import org.thalweg.units.Angle;
import org.thalweg.units.Area;
import org.thalweg.units.Length;

/**
 * One plane of a roof, checked.
 *
 * @param id       the caller's name for it
 * @param frame    its frame; the origin is the outline's leftmost {@code across} and lowest {@code up}
 * @param shape    the plane in its own frame, every coordinate 0 or more; the tag of each side is the edge's index in
 *                 {@link Roof#edges}
 * @param slope    angle from level, in [0°, 90°)
 * @param level    whether the slope is too small to say which way water runs
 * @param area     true area, less openings
 * @param planArea area seen from above, less openings
 * @param off      how far the furthest corner stands off the plane; 0 or more
 * @param at       where in the request it came from
 */
public record Plane(
        String id,
        Frame frame,
        Region shape,
        Angle slope,
        boolean level,
        Area area,
        Area planArea,
        Length off,
        Origin at) {}
