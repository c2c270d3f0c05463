package org.thalweg.wind;

import org.thalweg.finding.Source;
import org.thalweg.roof.Roof;
import org.thalweg.units.Length;

/**
 * How wide the strips along edges are.
 *
 * @param least  least horizontal dimension: the least distance between two parallel lines that hold the whole roof, seen from
 *               above. Overhangs count, and so does what a roof of wings leaves out at an inner corner: both make the
 *               strips wider, on the safe side
 * @param height h, mean roof height above the ground; above 0. For roofs flatter than 10° that of the eave
 * @param width  a; above 0
 */
public record ZoneWidth(Length least, Length height, Length width) {

    /** Where the rule stands: read there as it quotes ASCE 7-02. */
    public static final Source SOURCE =
            new Source("Structural Steel Designer's Handbook (2004), figure 4.3, quoting ASCE 7-02");

    private static final double OF_LEAST = 0.10;
    private static final double OF_HEIGHT = 0.4;
    private static final double AT_LEAST = 0.04;
    private static final Length NARROWEST = Length.feet(3);

    public static ZoneWidth of(Roof roof, Length meanRoofHeight) {
        return of(PlanWidth.least(roof), meanRoofHeight);
    }

    /**
     * 10 % of the least horizontal dimension or 0.4 h, whichever is smaller, but not less than 4 % of the least horizontal
     * dimension or 3 ft. [published: see {@link #SOURCE}]
     */
    static ZoneWidth of(Length least, Length meanRoofHeight) {
        if (meanRoofHeight.metres() <= 0) {
            throw new IllegalArgumentException("mean roof height (%s) must be above 0".formatted(meanRoofHeight));
        }
        double smaller = Math.min(OF_LEAST * least.metres(), OF_HEIGHT * meanRoofHeight.metres());
        double floor = Math.max(AT_LEAST * least.metres(), NARROWEST.metres());
        return new ZoneWidth(least, meanRoofHeight, Length.metres(Math.max(smaller, floor)));
    }
}
