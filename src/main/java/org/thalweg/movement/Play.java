package org.thalweg.movement;

import org.thalweg.finding.Source;
import org.thalweg.units.Length;

/**
 * How far a panel can slide before what holds it stops it.
 *
 * @param eachWay from where it was fastened, up the slope as well as down; 0 or more
 * @param source  whose figure it is
 */
public record Play(Length eachWay, Source source) {

    /** What the hole of a screw with a sealing washer leaves: 1/16 in [common practice, no source]. */
    public static final Play SCREW_HOLE = new Play(Length.inches(0.0625), Source.COMMON_PRACTICE);

    public Play {
        if (eachWay.metres() < 0) {
            throw new IllegalArgumentException("play (%s) must be 0 or more".formatted(eachWay));
        }
    }
}
