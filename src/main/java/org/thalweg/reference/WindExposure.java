package org.thalweg.reference;

import org.apache.commons.csv.CSVRecord;
import org.thalweg.finding.Source;
import org.thalweg.units.Length;

/**
 * What the wind blows over before it comes to a building, and how it grows with height there.
 *
 * @param key        how it is named in print: B towns and woods, C open country, D flat shores
 * @param alpha      the power of its growth; above 0
 * @param gradient   z_g, the height from which the ground no longer slows the wind; above 0
 * @param least      below this height the wind is taken as at it; above 0
 * @param source     where it stands
 * @param confidence how sure we are of it; see {@link Sourced#confidence}
 * @param note       anything else; may be empty
 */
public record WindExposure(
        String key, double alpha, Length gradient, Length least, Source source, String confidence, String note) {

    /** The factor the published formula begins with. */
    private static final double AT_GRADIENT = 2.01;

    static WindExposure of(CSVRecord row) {
        return new WindExposure(
                row.get("exposure"),
                Double.parseDouble(row.get("alpha")),
                Length.feet(Double.parseDouble(row.get("zg_ft"))),
                Length.feet(Double.parseDouble(row.get("least_ft"))),
                Sourced.cited(row.get("source"), row.get("confidence")),
                row.get("confidence"),
                row.get("note"));
    }

    /**
     * Velocity pressure exposure coefficient: K_z = 2.01 (z / z_g)^(2 / α). [published: ASCE 7-05, 7-10]
     *
     * @param height z, above the ground; 0 or more
     */
    public double kz(Length height) {
        double z = Math.max(height.metres(), least.metres());
        return AT_GRADIENT * Math.pow(z / gradient.metres(), 2 / alpha);
    }
}
