package org.thalweg.trim;

import java.util.Optional;
import org.thalweg.roof.EdgeKind;

/** Trims that run on into one another. */
enum Family {
    /** Round the outside of the roof: one leg on the roof, the others on the fascia. */
    PERIMETER,
    /** Along walls. */
    WALL,
    /** Round one opening. */
    OPENING,
    /** Over ridges and hips: a leg on each of two planes. */
    CAP,
    /** Where the slope changes: a leg under one plane's panels and one over the other's. */
    BREAK;

    /** Of the trim an edge gets; nothing where it gets none. */
    static Optional<Family> of(EdgeKind kind) {
        return switch (kind) {
            case EAVE, HIGH_EAVE, RAKE, ANGLED_EAVE, ANGLED_RAKE -> Optional.of(PERIMETER);
            case SIDE_WALL, HEAD_WALL -> Optional.of(WALL);
            case OPENING -> Optional.of(OPENING);
            case RIDGE, HIP -> Optional.of(CAP);
            case PITCH_BREAK -> Optional.of(BREAK);
            case VALLEY, LEVEL_VALLEY, FLUSH, EXPANSION_JOINT, STACKED -> Optional.empty();
        };
    }

    /** Whether such a trim lies on two planes. */
    boolean onTwoPlanes() {
        return this == CAP || this == BREAK;
    }
}
