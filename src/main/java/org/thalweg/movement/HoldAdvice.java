package org.thalweg.movement;

import org.thalweg.finding.Source;
import org.thalweg.units.Length;

/**
 * Which way to hold the panels at a valley. Screws through panel, sealant and pan are simple, but a panel can move under
 * them only by the play of their holes. Where it moves further, its edge is hemmed round a cleat: nothing pierces the
 * panel, and it slides.
 *
 * @param growth how far the panel's end moves at most, to either side
 * @param limit  how far fixed screws let it
 * @param source where the limit comes from
 */
public record HoldAdvice(Length growth, Length limit, Source source) {

    /**
     * The advice for a valley.
     *
     * @param longest growth, from its fixed point, of the longest panel that ends at the valley
     * @param play    of the screws' holes
     */
    public static HoldAdvice of(Growth longest, Play play) {
        return new HoldAdvice(longest.most(), play.eachWay(), play.source());
    }

    /** Whether fixed screws let every panel move as far as it will; if not, cleats do. */
    public boolean fixedWillDo() {
        return growth.compareTo(limit) <= 0;
    }
}
