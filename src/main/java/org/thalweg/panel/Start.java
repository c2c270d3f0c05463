package org.thalweg.panel;

import org.thalweg.units.Length;

/** Where the first rib of a plane goes. */
public sealed interface Start {

    /**
     * At a stated place.
     *
     * @param width how wide the first panel is, from the edge where laying starts; 0 for a whole panel; in [0, cover)
     */
    record Offset(Length width) implements Start {}

    /** So that the first and the last panel are equally wide, and as wide as can be. */
    record Centred() implements Start {}

    /** Where the least is ordered; see {@link StartSearch}. */
    record LeastWaste() implements Start {}
}
