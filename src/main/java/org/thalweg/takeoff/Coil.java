package org.thalweg.takeoff;

import org.thalweg.units.Length;

/**
 * A coil of sheet, wound tight.
 *
 * @param outer diameter over the outermost turn; more than {@code core}
 * @param core  diameter of the hole; above 0
 */
public record Coil(Length outer, Length core) {

    public Coil {
        if (!(core.metres() > 0 && outer.metres() > core.metres())) {
            throw new IllegalArgumentException("a coil (%s) is wider than its core (%s)".formatted(outer, core));
        }
    }

    /** How much sheet of this thickness is on it: L = π · (D² − d²) / (4 · t), no air between the turns. [geometry] */
    public Length length(Length thickness) {
        double turns = outer.metres() * outer.metres() - core.metres() * core.metres();
        return Length.metres(Math.PI * turns / (4 * thickness.metres()));
    }
}
