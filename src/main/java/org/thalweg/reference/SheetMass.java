package org.thalweg.reference;

import org.thalweg.finding.Source;
import org.thalweg.units.Area;
import org.thalweg.units.Mass;

/**
 * What a sheet weighs.
 *
 * @param kilogramsPerSquareMetre mass per area; 0 or more
 * @param source                  where the figure, or the density behind it, stands
 * @param fromTable               whether a table prints this mass for this thickness; if not, it is density by thickness
 */
public record SheetMass(double kilogramsPerSquareMetre, Source source, boolean fromTable) {

    /** Mass of this much sheet. */
    public Mass of(Area area) {
        return new Mass(kilogramsPerSquareMetre * area.squareMetres());
    }
}
