package org.thalweg.footprint;

import java.util.ArrayList;
import java.util.List;

/**
 * The plan of the walls. Sides are numbered through: first those of the outline, then those of each courtyard, in the order
 * given. Each ring may run either way round.
 *
 * @param outline    the sides of the outer ring
 * @param courtyards rings inside it that stay open to the sky
 */
public record Footprint(List<WallSide> outline, List<List<WallSide>> courtyards) {

    public Footprint {
        outline = List.copyOf(outline);
        courtyards = courtyards.stream().map(List::copyOf).toList();
    }

    public static Footprint of(List<WallSide> outline) {
        return new Footprint(outline, List.of());
    }

    List<List<WallSide>> rings() {
        List<List<WallSide>> rings = new ArrayList<>();
        rings.add(outline);
        rings.addAll(courtyards);
        return rings;
    }

    public int sides() {
        return outline.size() + courtyards.stream().mapToInt(List::size).sum();
    }
}
