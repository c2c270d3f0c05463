package org.thalweg.wind;

import java.util.Optional;
import org.thalweg.finding.Source;
import org.thalweg.reference.Sourced;
import org.thalweg.reference.WindExposure;
import org.thalweg.reference.WindTables;
import org.thalweg.units.Angle;
import org.thalweg.units.Area;
import org.thalweg.units.Length;
import org.thalweg.units.Pressure;
import org.thalweg.units.PressureUnit;
import org.thalweg.units.Speed;
import org.thalweg.units.SpeedUnit;

/**
 * The wind on a low gable or hip roof by the published tables of ASCE 7-05 and 7-10: a closed building on level ground, of
 * ordinary importance. Preliminary: the engineer decides.
 *
 * <p>q_h = 0.00256 · K_z · K_d · V² in pounds-force on a square foot, V in miles an hour; uplift = q_h · (GC_pi − GC_p), times
 * 0.6 for a speed of strength. [published]
 *
 * @param speed    V, basic wind speed: the gust of 3 seconds, 33 ft up in open country; above 0
 * @param map      what sort of map it was read from
 * @param exposure what the wind blows over
 * @param height   h, mean roof height; above 0, at most {@link #HIGHEST}
 * @param area     effective wind area of a clip; above 0. The table knows no wind harder than that on 10 ft² or less
 */
public record LowRiseWind(Speed speed, SpeedMap map, WindExposure exposure, Length height, Area area) {

    /** The tables end here. */
    public static final Length HIGHEST = Length.feet(60);

    /** What the tables are; for one figure and how sure it is see {@link #coefficient}. */
    public static final Source SOURCE = new Source("ASCE 7-05/7-10 components and cladding, low gable and hip roofs");

    private static final double VELOCITY_PRESSURE = 0.00256;

    /** K_d: wind and gust seldom come from the worst direction together. */
    private static final double DIRECTIONALITY = 0.85;

    /** GC_pi: the air inside a closed building pushes outward. */
    private static final double INSIDE = 0.18;

    /** Which load a speed on a map leads to. */
    public enum SpeedMap {
        /** Maps of ASCE 7-05 and before: the pressure is one of allowable loads as it is; 10 psf at least. */
        ALLOWABLE("allowable", 1, 10),
        /** Maps of ASCE 7-10 and later, for strength: 0.6 of the pressure for allowable loads; of 16 psf at least. */
        STRENGTH("strength", 0.6, 16);

        private final String wire;
        private final double share;
        private final double leastPsf;

        SpeedMap(String wire, double share, double leastPsf) {
            this.wire = wire;
            this.share = share;
            this.leastPsf = leastPsf;
        }

        /** How callers write it. */
        public String wire() {
            return wire;
        }

        /** The least pressures are from memory: memory-high, ASCE 7-05 6.1.4.2 and 7-10 30.2.2. */
        private Pressure allowable(double psf) {
            return PressureUnit.POUND_FORCE_PER_SQUARE_FOOT.of(share * Math.max(psf, leastPsf));
        }
    }

    public LowRiseWind {
        if (speed.metresPerSecond() <= 0 || area.squareMetres() <= 0) {
            throw new IllegalArgumentException("speed (%s) and area (%s) must be above 0".formatted(speed, area));
        }
        if (height.metres() <= 0 || height.compareTo(HIGHEST) > 0) {
            throw new IllegalArgumentException("height (%s) must be above 0 and at most %s".formatted(height, HIGHEST));
        }
    }

    /** How hard it lifts a plane of this slope; nothing if that is steeper than printed. */
    public Optional<ZonePressures> on(Angle slope) {
        return coefficient(slope, WindZone.FIELD).isEmpty()
                ? Optional.empty()
                : Optional.of(new ZonePressures(
                        uplift(slope, WindZone.FIELD), uplift(slope, WindZone.EDGE), uplift(slope, WindZone.CORNER)));
    }

    private Pressure uplift(Angle slope, WindZone zone) {
        double gcp = coefficient(slope, zone).orElseThrow().value();
        return map.allowable(velocityPressure() * (INSIDE - gcp));
    }

    /** The coefficient used for a zone, and where it stands. */
    public Optional<Sourced<Double>> coefficient(Angle slope, WindZone zone) {
        return WindTables.uplift(slope, zone.number(), area);
    }

    /** Pounds-force on a square foot, at the level of the map. */
    private double velocityPressure() {
        double v = speed.in(SpeedUnit.MILE_PER_HOUR);
        return VELOCITY_PRESSURE * exposure.kz(height) * DIRECTIONALITY * v * v;
    }
}
