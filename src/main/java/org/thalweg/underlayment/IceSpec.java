package org.thalweg.underlayment;

import org.thalweg.reference.Rules;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;
import org.thalweg.units.Pitch;

/**
 * The ice barrier as asked for.
 *
 * @param overhang   level distance from the eave's edge to the outside of the wall below it; 0 or more
 * @param insideWall how far it goes on inside that wall line, measured level; 0 or more. [published: see
 *                   {@link Rules#iceBarrierInsideWall}]
 * @param steepFrom  slope from which on it also goes so far along the slope. [published: see {@link Rules#iceBarrierSteep}]
 * @param alongSlope how far along the slope it goes there at least; 0 or more, 0 by the code of 2024
 * @param valley     width of the strip under valleys, both sides together; 0 for none
 * @param roll       what it is laid of
 */
public record IceSpec(
        Length overhang, Length insideWall, Pitch steepFrom, Length alongSlope, Length valley, Roll roll) {

    /** A slope this little below the steep one is as steep: a roof of 8:12 measured in millimetres. Radians. */
    private static final double STEEP_HAIR = Math.toRadians(0.01);

    public IceSpec {
        if (overhang.metres() < 0 || insideWall.metres() < 0 || alongSlope.metres() < 0 || valley.metres() < 0) {
            throw new IllegalArgumentException(
                    "overhang (%s), what goes inside the wall (%s), along the slope (%s) and under valleys (%s) are 0 or more"
                            .formatted(overhang, insideWall, alongSlope, valley));
        }
    }

    /**
     * How wide it is on a plane, square to the eave. What is measured level, d, is longer on the slope: w = d · cos σ / cos θ,
     * which on a level eave is d / cos θ. [geometry: a strip of the plane is 1 / cos θ of its plan, an edge 1 / cos σ]
     *
     * @param slope θ, of the plane, below 90°
     * @param edge  σ, of the eave; 0 unless it is an angled one
     */
    public Length width(Angle slope, Angle edge) {
        double level = overhang.metres() + insideWall.metres();
        double byWall = level * edge.cos() / slope.cos();
        boolean steep = slope.compareTo(new Angle(steepFrom.slope().radians() - STEEP_HAIR)) >= 0;
        return Length.metres(steep ? Math.max(byWall, alongSlope.metres()) : byWall);
    }
}
