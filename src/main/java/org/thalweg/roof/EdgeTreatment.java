package org.thalweg.roof;

import org.thalweg.units.Length;

/**
 * How a panel ends at an edge.
 *
 * @param setback      how far the finished edge stops short of the roof line, in the plane, square to it, at the edge's
 *                     lower end; below 0 it runs past
 * @param setbackAtTop the same at its upper end: less where a valley lies open wider toward the eave; as much as
 *                     {@code setback} on a level edge
 * @param hem          metal beyond the finished edge that is folded under; 0 or more
 * @param turnUp       metal beyond the finished edge that is turned up; 0 or more
 */
public record EdgeTreatment(Length setback, Length setbackAtTop, Length hem, Length turnUp) {

    /** The panel ends on the line, nothing folded. */
    public static final EdgeTreatment PLAIN = new EdgeTreatment(Length.ZERO, Length.ZERO, Length.ZERO);

    public EdgeTreatment {
        if (hem.metres() < 0 || turnUp.metres() < 0) {
            throw new IllegalArgumentException("hem (%s) and turn-up (%s) must be 0 or more".formatted(hem, turnUp));
        }
    }

    /** Panels that end alike along the whole edge. */
    public EdgeTreatment(Length setback, Length hem, Length turnUp) {
        this(setback, setback, hem, turnUp);
    }

    /** Metal beyond the finished edge, folded one way or the other. */
    public Length extra() {
        return Length.metres(hem.metres() + turnUp.metres());
    }
}
