package org.thalweg.footprint;

import java.util.Optional;
import org.thalweg.units.Pitch;

/**
 * One side of the plan: it starts at this corner and ends where the next one starts.
 *
 * @param x     of its first corner, metres
 * @param y     of its first corner, metres
 * @param pitch of the slope that rises from it; none: the side is a gable, its wall goes up to the slopes beside it
 */
public record WallSide(double x, double y, Optional<Pitch> pitch) {

    public static WallSide sloped(double x, double y, Pitch pitch) {
        return new WallSide(x, y, Optional.of(pitch));
    }

    public static WallSide gable(double x, double y) {
        return new WallSide(x, y, Optional.empty());
    }
}
