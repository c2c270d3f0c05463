package org.thalweg.reference;

import org.thalweg.units.AreaUnit;
import org.thalweg.units.Length;
import org.thalweg.units.MassUnit;

/**
 * What a sheet weighs for its thickness.
 *
 * @param kilogramsPerCubicMetre above 0
 */
public record Density(double kilogramsPerCubicMetre) {

    /** The tables print pounds per cubic inch, pounds per square foot for each inch of thickness, or grams per cm³. */
    static Density of(double figure, String unit) {
        double pound = MassUnit.POUND.of(1).kilograms();
        double inch = Length.inches(1).metres();
        double kilograms =
                switch (unit) {
                    case "lb/in3" -> pound / (AreaUnit.SQUARE_INCH.of(1).squareMetres() * inch);
                    case "lb/ft2/in" -> pound / (AreaUnit.SQUARE_FOOT.of(1).squareMetres() * inch);
                    case "g/cm3" -> 1000;
                    default -> throw new IllegalArgumentException("no density is printed in " + unit);
                };
        return new Density(figure * kilograms);
    }

    /** Mass of a square metre of sheet this thick, kilograms. */
    public double kilogramsPerSquareMetre(Length thickness) {
        return kilogramsPerCubicMetre * thickness.metres();
    }
}
