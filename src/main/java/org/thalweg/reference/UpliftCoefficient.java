package org.thalweg.reference;

import java.math.BigDecimal;
import org.apache.commons.csv.CSVRecord;
import org.thalweg.finding.Source;
import org.thalweg.units.Angle;
import org.thalweg.units.Area;
import org.thalweg.units.AreaUnit;

/**
 * One figure of the table of wind that pulls at roofs, as printed.
 *
 * @param over       roofs steeper than this
 * @param upTo       and no steeper than this
 * @param zone       1 the field, 2 along edges, 3 at corners
 * @param area       the effective wind area it is printed for
 * @param gcp        GC_p, with the digits it was printed with; below 0, off the roof
 * @param source     where it stands
 * @param confidence how sure we are of it; see {@link Sourced#confidence}
 * @param note       anything else; may be empty
 */
public record UpliftCoefficient(
        Angle over, Angle upTo, int zone, Area area, BigDecimal gcp, Source source, String confidence, String note) {

    static UpliftCoefficient of(CSVRecord row) {
        return new UpliftCoefficient(
                Angle.degrees(Double.parseDouble(row.get("over_deg"))),
                Angle.degrees(Double.parseDouble(row.get("up_to_deg"))),
                Integer.parseInt(row.get("zone")),
                AreaUnit.SQUARE_FOOT.of(Double.parseDouble(row.get("area_ft2"))),
                new BigDecimal(row.get("gcp")),
                Sourced.cited(row.get("source"), row.get("confidence")),
                row.get("confidence"),
                row.get("note"));
    }

    /** Whether it is for roofs of this slope: level ones go with the flattest. Slopes as an answer prints them. */
    boolean holdsFor(Angle slope) {
        double degrees = slope.roundedDegrees();
        return degrees <= upTo.roundedDegrees() && (degrees > over.roundedDegrees() || over.radians() == 0);
    }
}
