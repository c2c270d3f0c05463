package org.thalweg.drainage;

import java.util.Optional;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Tolerance;
import org.thalweg.units.Angle;
import org.thalweg.units.Flow;
import org.thalweg.units.Length;

/**
 * Where the water of one side of a valley runs: a triangular channel between the pan and the centre rib, seen in the
 * section square to the valley line, down which it flows.
 *
 * <pre>
 *            \  | rib: two legs, folded shut, so it stands in the bisector of the two flats
 *             \ |
 *    ----------\|              y   depth, square to the bed
 *     \         +  &lt;- λ        ψ   how far the pan rises outward
 *        \  ψ   |              λ   how far the rib leans away from this side's water; below 0 over it
 *            \  |
 *    ----------\+ the low
 * </pre>
 *
 * <p>Top width T = y (cot ψ + tan λ), area A = y T / 2, wetted girth P = y (1/sin ψ + 1/cos λ), and Manning's formula
 * Q = (1/n) A (A/P)^⅔ √S with the bed's fall S = sin θv [published: any hydraulics handbook]. All three grow with y as a
 * triangle's do, so Q = K · y^(8/3): exact both ways, nothing to iterate.
 *
 * <p>Known limits: steady, uniform flow; no freeboard, no swell where panels pour in. At roof slopes it is rapid.
 */
public final class Channel {

    /** Manning's n of smooth steel, which coated sheet is about as smooth as. Copper and lead are printed as 0.011. */
    public static final double ROUGHNESS = 0.012;

    /** Where {@link #ROUGHNESS} stands. */
    public static final Source ROUGHNESS_SOURCE = new Source("public Manning coefficient table: steel, smooth 0.012");

    private final Angle panRise;
    private final Angle ribLean;
    private final double conveyance;

    /**
     * @param panRise   ψ, in (0°, 90°)
     * @param ribLean   λ, in (−90°, 90°), above ψ − 90° so that the banks part
     * @param bed       θv, in (0°, 90°]
     * @param roughness Manning's n, above 0; s/m^⅓
     */
    Channel(Angle panRise, Angle ribLean, Angle bed, double roughness) {
        double width = 1 / panRise.tan() + ribLean.tan();
        if (!(panRise.radians() > 0 && width > 0 && bed.sin() > 0 && roughness > 0)) {
            throw new IllegalArgumentException("no channel between a pan at %s and a rib at %s, bed %s, n %s"
                    .formatted(panRise, ribLean, bed, roughness));
        }
        this.panRise = panRise;
        this.ribLean = ribLean;
        double area = width / 2;
        double girth = 1 / panRise.sin() + 1 / ribLean.cos();
        double radiusRoot = StrictMath.cbrt(area / girth);
        conveyance = area * radiusRoot * radiusRoot * Math.sqrt(bed.sin()) / roughness;
    }

    /**
     * The channel on one side of a valley. The rib's legs are bent alike and closed, so it stands in the bisector of the
     * two flats and leans from the upright by λ = (ψ − ψ')/2, away from the steeper flat. [geometry]
     *
     * @param own       the flat of this side
     * @param other     the flat across the rib
     * @param bed       θv, the valley's slope
     * @param roughness Manning's n; see {@link #ROUGHNESS}
     * @param tolerance a flat that rises by no more than its hair over a metre is level
     * @return nothing when this side's plane does not fall to the valley, or the valley is level: no water runs there
     */
    public static Optional<Channel> of(PanFlat own, PanFlat other, Angle bed, double roughness, Tolerance tolerance) {
        Angle rise = own.rise(bed);
        if (!(rise.sin() > tolerance.hair() && rise.cos() > 0 && bed.sin() > 0)) {
            return Optional.empty();
        }
        Angle lean = new Angle((rise.radians() - other.rise(bed).radians()) / 2);
        return Optional.of(new Channel(rise, lean, bed, roughness));
    }

    /** ψ: how far the pan rises outward, in the section square to the valley. */
    public Angle panRise() {
        return panRise;
    }

    /** λ: how far the rib leans away from this side's water; below 0 when it leans over it. */
    public Angle ribLean() {
        return ribLean;
    }

    /** What the channel carries when the water stands this deep at the low, square to the bed. */
    public Flow flow(Length depth) {
        double square = depth.metres() * depth.metres();
        return new Flow(conveyance * square * StrictMath.cbrt(square));
    }

    /** How deep that much water stands at the low, square to the bed. */
    public Length depth(Flow flow) {
        double eighthRoot = Math.sqrt(Math.sqrt(Math.sqrt(flow.cubicMetresPerSecond() / conveyance)));
        return Length.metres(eighthRoot * eighthRoot * eighthRoot);
    }

    /**
     * How far up the pan water of this depth reaches, y / sin ψ: measured on the metal from the low, as the hold-back is.
     * Its level width, y / tan ψ, is less, and a panel's edge is not chalked off on the level.
     */
    public Length spread(Length depth) {
        return Length.metres(depth.metres() / panRise.sin());
    }

    /** How deep water stands that reaches this far up the pan. */
    public Length depthOfSpread(Length spread) {
        return Length.metres(spread.metres() * panRise.sin());
    }

    /** How high a rib with legs of this girth stands over the low, square to the bed: it leans, so less than its leg. */
    public Length ribHeight(Length leg) {
        return Length.metres(leg.metres() * ribLean.cos());
    }

    /** The leg of a rib that stands this high. */
    public Length ribLeg(Length height) {
        return Length.metres(height.metres() / ribLean.cos());
    }
}
