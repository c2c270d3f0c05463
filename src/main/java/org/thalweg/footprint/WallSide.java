package org.thalweg.footprint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thalweg.units.Pitch;

/**
 * One side of the plan: it starts at this corner and ends where the next one starts.
 *
 * @param x        of its first corner, metres
 * @param y        of its first corner, metres
 * @param pitch    of the slope that rises from it; none: the side is a gable, its wall goes up to the slopes beside it
 * @param eave     how high its eave stands, metres; a gable has none
 * @param above    what becomes of it further up, from the lowest on
 * @param cross    for a gable in line with the side before or after it: the pitch of the slopes of the cross gable that ends
 *                 there
 * @param overhang how far the roof stands out from the wall, level and square to it, metres
 * @param apart    whether its eave is told apart from that of a side in line with it
 */
public record WallSide(
        double x,
        double y,
        Optional<Pitch> pitch,
        double eave,
        List<Change> above,
        Optional<Pitch> cross,
        double overhang,
        boolean apart) {

    public WallSide {
        if (!Double.isFinite(x + y + eave + overhang)) {
            throw new IllegalArgumentException("a side at (%s, %s), %s high, must be finite".formatted(x, y, eave));
        }
        above = List.copyOf(above);
    }

    /**
     * From a height on a slope has another pitch, or goes up as a gable.
     *
     * @param height metres, at the level eaves are measured from
     * @param pitch  none: a gable
     */
    public record Change(double height, Optional<Pitch> pitch) {}

    public static WallSide sloped(double x, double y, Pitch pitch) {
        return of(x, y, Optional.of(pitch));
    }

    public static WallSide gable(double x, double y) {
        return of(x, y, Optional.empty());
    }

    static WallSide of(double x, double y, Optional<Pitch> pitch) {
        return new WallSide(x, y, pitch, 0, List.of(), Optional.empty(), 0, false);
    }

    /** The same side with its eave at a height. */
    public WallSide eaveAt(double height) {
        return new WallSide(x, y, pitch, height, above, cross, overhang, apart);
    }

    /** The same side that becomes another from a height on. */
    public WallSide then(Change change) {
        List<Change> more = new ArrayList<>(above);
        more.add(change);
        return new WallSide(x, y, pitch, eave, more, cross, overhang, apart);
    }

    /** The same gable at the end of a cross gable of this pitch. */
    public WallSide crossing(Pitch slopes) {
        return new WallSide(x, y, pitch, eave, above, Optional.of(slopes), overhang, apart);
    }

    public WallSide overhanging(double metres) {
        return new WallSide(x, y, pitch, eave, above, cross, metres, apart);
    }

    public WallSide toldApart() {
        return new WallSide(x, y, pitch, eave, above, cross, overhang, true);
    }

    /** The same side from another corner on. */
    WallSide from(double otherX, double otherY) {
        return new WallSide(otherX, otherY, pitch, eave, above, cross, overhang, apart);
    }
}
