package org.thalweg.movement;

import org.thalweg.finding.Source;
import org.thalweg.units.Length;

/**
 * How far what holds an end of a panel lets it move, from where it was fastened.
 *
 * @param longer  out, as the panel grows; 0 or more
 * @param shorter in, as it shrinks; 0 or more
 * @param source  whose figures they are
 */
public record Allowance(Length longer, Length shorter, Source source) {

    public Allowance {
        if (longer.metres() < 0 || shorter.metres() < 0) {
            throw new IllegalArgumentException(
                    "longer (%s) and shorter (%s) must be 0 or more".formatted(longer, shorter));
        }
    }
}
