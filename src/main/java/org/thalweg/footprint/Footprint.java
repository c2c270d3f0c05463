package org.thalweg.footprint;

import java.util.ArrayList;
import java.util.List;
import org.thalweg.geometry.Tolerance;

/**
 * The plan of the walls. Sides are numbered through: first those of the outline, then those of each courtyard, in the order
 * given. Each ring may run either way round.
 *
 * @param outline    the sides of the outer ring
 * @param courtyards rings inside it that stay open to the sky
 * @param tolerance  how well it was measured: corners this close are one, and corners this close to a line are on it
 */
public record Footprint(List<WallSide> outline, List<List<WallSide>> courtyards, Tolerance tolerance) {

    /** As well as the grid can tell. */
    static final Tolerance EXACT = new Tolerance(1e-7);

    public Footprint {
        outline = List.copyOf(outline);
        courtyards = courtyards.stream().map(List::copyOf).toList();
    }

    Footprint(List<WallSide> outline, List<List<WallSide>> courtyards) {
        this(outline, courtyards, EXACT);
    }

    public static Footprint of(List<WallSide> outline) {
        return new Footprint(outline, List.of(), EXACT);
    }

    List<List<WallSide>> rings() {
        List<List<WallSide>> rings = new ArrayList<>();
        rings.add(outline);
        rings.addAll(courtyards);
        return rings;
    }

    /** Whether a ring runs counter-clockwise seen from above. */
    static boolean turnsLeft(List<WallSide> ring) {
        WallSide origin = ring.get(0);
        double twice = 0;
        for (int i = 1; i + 1 < ring.size(); i++) {
            WallSide one = ring.get(i);
            WallSide next = ring.get(i + 1);
            twice +=
                    (one.x() - origin.x()) * (next.y() - origin.y()) - (one.y() - origin.y()) * (next.x() - origin.x());
        }
        return twice > 0;
    }

    public int sides() {
        return outline.size() + courtyards.stream().mapToInt(List::size).sum();
    }
}
