package org.thalweg.reference;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.thalweg.units.Angle;
import org.thalweg.units.Area;

/**
 * Published figures of the wind on roofs of low buildings: how it grows with height, and how hard it pulls at which zone.
 * Later editions (ASCE 7-16, 7-22) have other zones and larger coefficients; none of theirs were found in print.
 */
public final class WindTables {

    private static final List<WindExposure> EXPOSURES = PublishedTable.read("wind-exposures.csv", WindExposure::of);
    private static final List<UpliftCoefficient> UPLIFT = PublishedTable.read("wind-uplift.csv", UpliftCoefficient::of);

    private WindTables() {}

    /** Every kind of ground, in the order of the file. */
    public static List<WindExposure> exposures() {
        return EXPOSURES;
    }

    /** The one named {@code key}; letter case counts. */
    public static Optional<WindExposure> exposure(String key) {
        return EXPOSURES.stream().filter(exposure -> exposure.key().equals(key)).findFirst();
    }

    /** Every coefficient, in the order of the file. */
    public static List<UpliftCoefficient> uplift() {
        return UPLIFT;
    }

    /**
     * GC_p of the wind that pulls, between the printed areas by the logarithm of the area, beyond them as at the nearest.
     *
     * @param slope of the plane
     * @param zone  1, 2 or 3
     * @param area  effective wind area; above 0
     * @return below 0; nothing for a slope steeper than printed. Of two figures used, the source of the less sure one
     */
    public static Optional<Sourced<Double>> uplift(Angle slope, int zone, Area area) {
        List<UpliftCoefficient> printed = UPLIFT.stream()
                .filter(figure -> figure.zone() == zone && figure.holdsFor(slope))
                .sorted(Comparator.comparingDouble(figure -> figure.area().squareMetres()))
                .toList();
        return printed.isEmpty()
                ? Optional.empty()
                : Optional.of(between(printed.get(0), printed.get(printed.size() - 1), area));
    }

    private static Sourced<Double> between(UpliftCoefficient small, UpliftCoefficient large, Area area) {
        double share = Math.log(area.squareMetres() / small.area().squareMetres())
                / Math.log(large.area().squareMetres() / small.area().squareMetres());
        if (share <= 0) {
            return sourced(small.gcp().doubleValue(), small);
        }
        if (share >= 1) {
            return sourced(large.gcp().doubleValue(), large);
        }
        double gcp = small.gcp().doubleValue()
                + share * (large.gcp().doubleValue() - small.gcp().doubleValue());
        return sourced(gcp, sourced(0, large).recalled() ? large : small);
    }

    private static Sourced<Double> sourced(double gcp, UpliftCoefficient figure) {
        return new Sourced<>(gcp, figure.source(), figure.confidence());
    }
}
