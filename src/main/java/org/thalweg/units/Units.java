package org.thalweg.units;

/**
 * The caller's units: one choice, applied to every length, area and mass of a request and its answer.
 *
 * @param length unit of every length without a unit of its own
 * @param area   unit of every area
 * @param mass   unit of every mass
 */
public record Units(LengthUnit length, AreaUnit area, MassUnit mass) {

    /** The unit flows are answered in: it follows from the tape. */
    public FlowUnit flow() {
        return FlowUnit.beside(length);
    }

    /** The unit forces are answered in: it follows from the tape. */
    public ForceUnit force() {
        return ForceUnit.beside(length);
    }

    /** The unit pressures are answered in: it follows from the tape. */
    public PressureUnit pressure() {
        return PressureUnit.beside(length);
    }
}
