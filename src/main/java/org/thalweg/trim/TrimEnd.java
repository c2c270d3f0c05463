package org.thalweg.trim;

import java.util.List;
import org.thalweg.units.Length;

/**
 * One end of a trim.
 *
 * @param hand  which end it is as the trim lies before you, weather face up and last leg towards you
 * @param first what the legs up to the bend at the edge meet
 * @param last  what the legs beyond it meet
 * @param cuts  across every leg, from the first edge to the last
 */
public record TrimEnd(Hand hand, Meeting first, Meeting last, List<LegCut> cuts) {

    public TrimEnd {
        cuts = List.copyOf(cuts);
    }

    /** How far the trim runs past the corner in all: the furthest of its lines. */
    public Length reach() {
        double most = Double.NEGATIVE_INFINITY;
        for (LegCut cut : cuts) {
            most = Math.max(most, Math.max(cut.inner().metres(), cut.outer().metres()));
        }
        return Length.metres(most);
    }

    /** How much of its length the cuts take up: from the line that ends first to the one that reaches furthest. */
    public Length depth() {
        double least = Double.POSITIVE_INFINITY;
        for (LegCut cut : cuts) {
            least = Math.min(least, Math.min(cut.inner().metres(), cut.outer().metres()));
        }
        return Length.metres(reach().metres() - least);
    }
}
