package org.thalweg.packet;

import java.util.Optional;
import org.thalweg.fastening.FixedPoint;
import org.thalweg.finding.Source;
import org.thalweg.movement.HemHook;
import org.thalweg.movement.Play;
import org.thalweg.units.Length;

/**
 * What lets panels and pans of one job move.
 *
 * @param fixed      where each panel is fixed
 * @param clipTravel how far a panel can slide in its clips, if that is known
 * @param engagement how much of a cleat's lip lies in a hem when it is hooked, if it is not half of it
 * @param screwPlay  what the hole of a fixed screw leaves
 */
public record MovementTerms(FixedPoint fixed, Optional<Play> clipTravel, Optional<Length> engagement, Play screwPlay) {

    /** Panels fixed at their lower ends [common practice, no source]. */
    public static final MovementTerms USUAL =
            new MovementTerms(FixedPoint.EAVE, Optional.empty(), Optional.empty(), Play.SCREW_HOLE);

    /** How a hem this deep is hooked: no further than to its fold. */
    HemHook hook(Length hem) {
        return engagement
                .map(given -> given.compareTo(hem) < 0 ? given : hem)
                .map(engaged -> new HemHook(engaged, Length.metres(hem.metres() - engaged.metres()), Source.REQUEST))
                .orElseGet(() -> HemHook.halfWayInto(hem));
    }
}
