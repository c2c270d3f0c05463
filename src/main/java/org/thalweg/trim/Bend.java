package org.thalweg.trim;

import org.thalweg.finding.Source;
import org.thalweg.units.Angle;
import org.thalweg.units.Length;

/**
 * One bend of a profile.
 *
 * @param turn         β, how far the metal is turned from flat, in [0°, 180°]; 180° folds it back on itself
 * @param up           whether the next leg comes up toward the weather face, walking from the first edge
 * @param insideRadius r, radius of the inner face of the bend; 0 or more, 0 is sharp
 */
public record Bend(Angle turn, boolean up, Length insideRadius) {

    /** Where the setback of a bend stands. */
    public static final Source SETBACK_SOURCE = new Source("FAA-H-8083-31 Airframe vol. 1, setback");

    private static final double SQUARE = Math.PI / 2;

    public Bend {
        if (!(turn.radians() >= 0 && turn.radians() <= Math.PI)) {
            throw new IllegalArgumentException("a bend (%s°) turns 0° to 180°".formatted(turn.inDegrees()));
        }
        if (insideRadius.metres() < 0) {
            throw new IllegalArgumentException("an inside radius (%s) is 0 or more".formatted(insideRadius));
        }
    }

    /**
     * How far the mould line lies beyond the end of each flat: (r + t) · tan(β/2). [published: FAA-H-8083-31, there called
     * the setback] Past a square bend that runs away, and the leg is measured to the outermost of the bend instead: r + t.
     * [common practice, no source]
     *
     * @param thickness t, of the metal; 0 or more
     */
    public Length setback(Length thickness) {
        double outside = insideRadius.metres() + thickness.metres();
        return Length.metres(turn.radians() < SQUARE ? outside * Math.tan(turn.radians() / 2) : outside);
    }
}
