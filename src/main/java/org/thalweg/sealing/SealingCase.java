package org.thalweg.sealing;

import java.util.List;
import org.thalweg.fastening.FastenerRows;
import org.thalweg.geometry.Tolerance;
import org.thalweg.trim.Trim;
import org.thalweg.valley.ValleyLayout;

/**
 * What is to be made tight.
 *
 * @param rows      of fasteners, through panels laid on the same roof
 * @param valleys   whose cleats and pan pieces are sealed
 * @param trims     whose laps are sealed and riveted
 * @param rules     with how much
 * @param tolerance of the roof
 */
public record SealingCase(
        FastenerRows rows, List<ValleyLayout> valleys, List<Trim> trims, SealingRules rules, Tolerance tolerance) {

    public SealingCase {
        valleys = List.copyOf(valleys);
        trims = List.copyOf(trims);
    }
}
