package org.thalweg.trim;

import java.util.List;
import org.thalweg.geometry.Point2;

/**
 * One piece of a trim, lying flat before it is bent. Where the cuts at both ends of a trim cross, or a leg is shorter than its
 * bends take, there is nothing to draw the cuts on and the piece is left square.
 *
 * @param outline counter-clockwise from its lowest corner on the left; blank frame: across from the first edge of the profile,
 *                along from the end of the piece nearer the start of the edge; metres. So drawn it shows its weather face, on a
 *                {@linkplain Seat#mirrored mirrored} trim its back
 */
public record TrimBlank(List<Point2> outline) {

    public TrimBlank {
        outline = List.copyOf(outline);
    }
}
