package org.thalweg.drainage;

import java.util.Optional;
import org.thalweg.units.Area;
import org.thalweg.units.Flow;
import org.thalweg.units.Length;

/**
 * The water of one side of a valley at one place along it.
 *
 * @param along       from the valley's lower end, true length
 * @param area        what of the roof drains past it on this side, seen from above
 * @param spreadLimit how far up the pan the water may spread here: the hold-back less the margin; 0 or more
 * @param flow        what runs past at the rainfall given
 * @param depth       how deep it stands at the low, square to the bed; absent where no channel is
 * @param spread      how far up the pan it reaches, on the metal; absent where no channel is
 */
public record StationWater(
        Length along,
        Area area,
        Length spreadLimit,
        Optional<Flow> flow,
        Optional<Length> depth,
        Optional<Length> spread) {}
