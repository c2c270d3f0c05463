package org.thalweg.api;

import org.thalweg.reference.Rules;
import org.thalweg.underlayment.Roll;
import org.thalweg.units.Length;
import org.thalweg.units.LengthUnit;

/**
 * What underlayment is like when the caller does not say. Laps and the reach of an ice barrier are published: see {@link Rules};
 * metric callers get the millimetres the codes print beside the inches. Rolls, and the laps of an ice barrier, are common practice
 * without a source.
 *
 * @param sheet      36 in by 72 ft, two squares with little to spare
 * @param ice        36 in by 66 ft
 * @param insideWall of an ice barrier
 * @param alongSlope of one on a steep roof
 * @param valley     width of the strip under a valley
 */
record UnderlayDefaults(Roll sheet, Roll ice, Length insideWall, Length alongSlope, Length valley) {

    private static final UnderlayDefaults INCHES = new UnderlayDefaults(
            new Roll(
                    Length.inches(36),
                    Length.feet(72),
                    Rules.underlaySideLap().value(),
                    Rules.underlayEndLap().value(),
                    Rules.underlayLapsApart().value()),
            new Roll(
                    Length.inches(36),
                    Length.feet(66),
                    Length.inches(4),
                    Length.inches(6),
                    Rules.underlayLapsApart().value()),
            Rules.iceBarrierInsideWall().value(),
            Rules.iceBarrierAlongSlope().value(),
            Rules.valleyUnderlayWidth().value());

    private static final UnderlayDefaults METRIC = new UnderlayDefaults(
            new Roll(
                    Length.metres(1),
                    Length.metres(22),
                    Length.millimetres(51),
                    Length.millimetres(102),
                    Length.millimetres(1829)),
            new Roll(
                    Length.metres(1),
                    Length.metres(20),
                    Length.millimetres(100),
                    Length.millimetres(150),
                    Length.millimetres(1829)),
            Length.millimetres(610),
            Length.millimetres(914),
            Length.millimetres(914));

    static UnderlayDefaults of(LengthUnit unit) {
        return unit.inInches() ? INCHES : METRIC;
    }
}
