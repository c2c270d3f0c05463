package org.thalweg.api.sheet;

import org.thalweg.units.LengthUnit;
import org.thalweg.units.Tape;

/**
 * Corners of blanks on a tape. The answer prints them as numbers; they are read to the nearest mark by the rule the answer
 * names, which is how it rounds every mark of its own.
 */
final class Taped {

    private Taped() {}

    static String mark(double printed, LengthUnit unit) {
        return Tape.mark(unit.of(printed), unit);
    }
}
