package org.thalweg.drainage;

import org.thalweg.roof.Roof;

/**
 * One side of a valley: what its plane brings, and the flat it runs on.
 *
 * @param left      whether the plane lies left of the valley, seen looking up it
 * @param catchment what the plane brings to the valley
 * @param flat      the pan's flat on this side
 */
public record WaterSide(boolean left, Catchment catchment, PanFlat flat) {

    /**
     * The side of a valley in a roof.
     *
     * @param plane index in {@link Roof#planes}
     * @param edge  index in {@link Roof#edges}; one of the plane's
     */
    public static WaterSide of(Roof roof, int plane, int edge) {
        return new WaterSide(
                FallLines.liesLeft(roof, plane, edge), Catchment.of(roof, plane, edge), PanFlat.of(roof, plane, edge));
    }
}
