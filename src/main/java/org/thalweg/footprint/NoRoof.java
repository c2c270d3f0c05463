package org.thalweg.footprint;

import java.util.Optional;
import java.util.OptionalInt;
import org.thalweg.units.Measure;

/**
 * Why no roof is answered.
 *
 * @param reason what is wrong
 * @param side   the side it was noticed at, if it was one
 * @param other  another side that has part in it
 * @param detail for people: what is wrong and what to do. {@code {side}} and {@code {other}} stand where the names of the
 *               sides go, {@code {actual}} and {@code {limit}} where the figures go
 * @param actual the figure found
 * @param limit  the figure it was held against
 */
public record NoRoof(
        Reason reason,
        OptionalInt side,
        OptionalInt other,
        String detail,
        Optional<Measure> actual,
        Optional<Measure> limit)
        implements Rise {

    /** A reason never changes its meaning. */
    public enum Reason {
        /** Fewer than three corners are left once corners in line and corners at one place are one. */
        TOO_FEW_CORNERS,
        /** More sides or courtyards than are worked on. */
        TOO_MANY_SIDES,
        /** The plan is larger than is worked on. */
        TOO_LARGE,
        /** A pitch so close to level or to upright that the slope is no roof. */
        PITCH_EXTREME,
        /** A change of pitch at or below the one before it, or below the eave. */
        HEIGHTS_OUT_OF_ORDER,
        /** A ring crosses or touches itself or another ring. */
        RINGS_CROSS,
        /** A courtyard outside the outline, or inside another courtyard. */
        COURTYARD_OUTSIDE,
        /** Eaves moved out by their overhangs leave no room for a side between them, or cross. */
        OVERHANG_TOO_WIDE,
        /** Two sides in one line have different overhangs: their eaves would not meet. */
        OVERHANGS_IN_LINE,
        /** Two sides in one line meet at a corner and have different pitches: one of them would have no slope. */
        PITCHES_IN_LINE,
        /** Slopes never meet over some part of the plan: too many of its sides are gables. */
        NEVER_CLOSES,
        /** A slope surrounds another part of the roof, touches itself, or has no area. */
        SLOPE_NOT_SIMPLE,
        /** The eaves met in a way that could not be told apart. */
        NOT_RESOLVED,
        /** More steps than are taken for one plan. */
        TOO_MUCH_WORK,
        /** A roof was found, but did not pass one of its checks. */
        CHECK_FAILED
    }

    static NoRoof because(Reason reason, String detail) {
        return new NoRoof(reason, OptionalInt.empty(), OptionalInt.empty(), detail, Optional.empty(), Optional.empty());
    }

    static NoRoof because(Reason reason, int side, String detail) {
        return new NoRoof(
                reason, OptionalInt.of(side), OptionalInt.empty(), detail, Optional.empty(), Optional.empty());
    }

    NoRoof with(int otherSide) {
        return new NoRoof(reason, side, OptionalInt.of(otherSide), detail, actual, limit);
    }

    NoRoof with(Measure found, Measure heldAgainst) {
        return new NoRoof(reason, side, other, detail, Optional.of(found), Optional.of(heldAgainst));
    }

    Stop stop() {
        return new Stop(this);
    }

    /** Carries a reason out of the depth of the search; never leaves this room. */
    static final class Stop extends RuntimeException {

        private static final long serialVersionUID = 1L;

        private final transient NoRoof why;

        Stop(NoRoof why) {
            super(why.toString(), null, false, false);
            this.why = why;
        }

        NoRoof why() {
            return why;
        }
    }
}
