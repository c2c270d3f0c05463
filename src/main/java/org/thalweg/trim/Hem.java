package org.thalweg.trim;

import org.thalweg.units.Angle;
import org.thalweg.units.Length;

/**
 * The edge of a profile folded back on itself: a bend of 180° and one more leg.
 *
 * @param kind         whether the fold is pressed flat
 * @param girth        from the outermost of the fold to the edge of the sheet; above 0
 * @param up           whether it is folded onto the weather face; most are folded under
 * @param insideRadius half of what stays open between the two layers; 0 when closed, above 0 when open
 */
public record Hem(Kind kind, Length girth, boolean up, Length insideRadius) {

    private static final Angle FOLDED_BACK = new Angle(Math.PI);

    public Hem {
        if (girth.metres() <= 0) {
            throw new IllegalArgumentException("the girth of a hem (%s) must be above 0".formatted(girth));
        }
        if (insideRadius.metres() < 0 || (kind == Kind.CLOSED) != (insideRadius.metres() == 0)) {
            throw new IllegalArgumentException(
                    "a %s hem can't have an inside radius of %s".formatted(kind, insideRadius));
        }
    }

    /** The sorts of hem. */
    public enum Kind {
        /** Pressed flat: stiffens an edge and hides its burr. */
        CLOSED,
        /** Left open: hooks over a cleat, or over another hem. */
        OPEN
    }

    /** A hem pressed flat and folded under. */
    public static Hem closed(Length girth) {
        return new Hem(Kind.CLOSED, girth, false, Length.ZERO);
    }

    /** A hem folded under and left open by {@code gap}. */
    public static Hem open(Length girth, Length gap) {
        return new Hem(Kind.OPEN, girth, false, Length.metres(gap.metres() / 2));
    }

    Bend fold() {
        return new Bend(FOLDED_BACK, up, insideRadius);
    }
}
