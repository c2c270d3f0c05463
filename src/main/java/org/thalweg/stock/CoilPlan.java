package org.thalweg.stock;

import java.util.List;

/**
 * Mitred panels out of one coil, and what other ways of cutting them would take. No shear takes a kerf.
 *
 * @param best       the shortest run there is, panels in any order
 * @param inOrder    the shortest run that keeps the order the panels were given in, which is the order they are laid in
 * @param eachSquare coil for blanks that are each cut square, grid steps
 * @param bothEdges  lower and upper edges of all panels: twice their area over the coil's width
 */
public record CoilPlan(CoilRun best, CoilRun inOrder, long eachSquare, long bothEdges) {

    public static CoilPlan of(List<MitredPanel> panels, Turning turning) {
        return new CoilPlan(
                turning == Turning.ALLOWED ? EndMatching.run(panels) : DirectedRun.run(panels),
                LayingOrder.run(panels, turning),
                panels.stream().mapToLong(MitredPanel::blank).sum(),
                panels.stream().mapToLong(MitredPanel::bothEdges).sum());
    }

    /** Coil that keeping the laying order takes above the best, grid steps. */
    public long costOfOrder() {
        return inOrder.length() - best.length();
    }
}
