package org.thalweg.geometry;

import java.util.List;

/**
 * A shape in one piece: an outer ring, counter-clockwise, less openings, each clockwise, inside it and apart.
 *
 * @param outer    counter-clockwise
 * @param openings clockwise, in a stated order
 */
public record Region(Ring outer, List<Ring> openings) {

    public Region {
        openings = List.copyOf(openings);
    }

    /** Outer area less openings. Square metres. */
    public double area() {
        double area = outer.signedArea();
        for (Ring opening : openings) {
            area += opening.signedArea();
        }
        return area;
    }

    /** Mirrored on the diagonal: what ran up now runs across. Sides keep their tags. */
    public Region turned() {
        return new Region(outer.turned(), openings.stream().map(Ring::turned).toList());
    }

    public Region moved(double acrossBy, double upBy) {
        Ring movedOuter = outer.moved(acrossBy, upBy);
        return openings.isEmpty()
                ? new Region(movedOuter, List.of())
                : new Region(
                        movedOuter,
                        openings.stream().map(o -> o.moved(acrossBy, upBy)).toList());
    }
}
