package org.thalweg.fastening;

import org.thalweg.reference.Rules;
import org.thalweg.reference.Sourced;
import org.thalweg.units.Force;
import org.thalweg.units.Length;
import org.thalweg.units.Pressure;

/**
 * How far apart clips may stand for the wind. A clip holds down the panel as wide as its cover and as long as half-way to the
 * next clip on either side: spacing = clip load / (pressure · cover). [statics] Preliminary: the engineer decides.
 *
 * @param allowable what one clip may be trusted with; above 0
 * @param most      how far apart clips may stand however little the wind; above 0
 */
public record ClipLoad(Force allowable, Length most) {

    public ClipLoad {
        if (allowable.newtons() <= 0 || most.metres() <= 0) {
            throw new IllegalArgumentException(
                    "allowable (%s) and most (%s) must be above 0".formatted(allowable, most));
        }
    }

    /** From the load a clip fails at in a test, divided by the published safety factor of 3. */
    public static ClipLoad tested(Force failing, Length most) {
        Sourced<Double> safety = Rules.clipSafety();
        return new ClipLoad(new Force(failing.newtons() / safety.value()), most);
    }

    /**
     * The greatest spacing.
     *
     * @param uplift how hard the wind pulls at the panel by design, off the roof; 0 or more
     * @param cover  of the panel, from rib to rib; above 0
     */
    public Length spacing(Pressure uplift, Length cover) {
        double onEachMetre = uplift.pascals() * cover.metres();
        return onEachMetre * most.metres() <= allowable.newtons()
                ? most
                : Length.metres(allowable.newtons() / onEachMetre);
    }
}
