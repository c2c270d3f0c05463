package org.thalweg.movement;

import java.util.Optional;
import org.thalweg.reference.Expansion;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;

/**
 * How far the free end of a piece moves, from where it was when the piece was fastened: ΔL = α·L·ΔT.
 *
 * <pre>
 *   fixed                            shorter  longer
 *   point                           |&lt;------|-----&gt;|
 *     x-----------------------------+-------+-------+
 *                                 winter  fastened summer
 * </pre>
 *
 * @param longer  by how much it grows at its warmest; 0 or more
 * @param shorter by how much it shrinks at its coldest; 0 or more, a length and no signed distance
 */
public record Growth(Length longer, Length shorter) {

    public Growth {
        if (longer.metres() < 0 || shorter.metres() < 0) {
            throw new IllegalArgumentException(
                    "longer (%s) and shorter (%s) must be 0 or more".formatted(longer, shorter));
        }
    }

    /**
     * The growth of a piece that nothing holds but its fixed point.
     *
     * @param free      from the fixed point to the end that moves; 0 or more
     * @param expansion of its metal
     */
    public static Growth of(Length free, Expansion expansion, Temperatures temperatures) {
        return new Growth(
                expansion.growth(free, temperatures.warming()), expansion.growth(free, temperatures.cooling()));
    }

    /** The greater of the two: what must be allowed to either side where nobody marks which side is which. */
    public Length most() {
        return longer.compareTo(shorter) >= 0 ? longer : shorter;
    }

    /** From the coldest to the warmest: the whole way the end travels. */
    public Length range() {
        return Length.metres(longer.metres() + shorter.metres());
    }

    /**
     * As much of it as is square to an end that runs at φ: by so much a hem there opens and closes. The rest runs along the end.
     * [geometry: ΔL · cos φ]
     *
     * @param mitre φ, from the level line to the end
     */
    public Growth squareTo(Angle mitre) {
        return new Growth(Length.metres(longer.metres() * mitre.cos()), Length.metres(shorter.metres() * mitre.cos()));
    }

    /**
     * The longest free length that moves no further than it may, to either side; what holds a panel fixed at one end allows a
     * panel this long, half-way up twice as long.
     *
     * @return nothing where the metal keeps one temperature and any length will do
     */
    public static Optional<Length> longest(Play play, Expansion expansion, Temperatures temperatures) {
        double perMetre = of(Length.metres(1), expansion, temperatures).most().metres();
        return perMetre > 0 ? Optional.of(Length.metres(play.eachWay().metres() / perMetre)) : Optional.empty();
    }
}
