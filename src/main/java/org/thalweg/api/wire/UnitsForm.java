package org.thalweg.api.wire;

import jakarta.validation.constraints.NotNull;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.units.AreaUnit;
import org.thalweg.units.LengthUnit;
import org.thalweg.units.MassUnit;
import org.thalweg.units.Units;

/**
 * The caller's units.
 *
 * @param length unit of lengths
 * @param area   unit of areas
 * @param mass   unit of masses
 */
@Schema(
        name = "Units",
        requiredProperties = {"length", "area", "mass"},
        additionalProperties = Schema.False.class,
        description =
                "The units of a request and its answer: every length, area and mass without exception. There is no"
                        + " default.")
public record UnitsForm(
        @Schema(
                ref = "LengthUnit",
                description = "Unit of every length that is a bare number, and of every length answered.")
        @NotNull
        LengthUnit length,

        @Schema(ref = "AreaUnit", description = "Unit of every area answered.") @NotNull
        AreaUnit area,

        @Schema(ref = "MassUnit", description = "Unit of every mass answered.") @NotNull
        MassUnit mass) {

    public static UnitsForm of(Units units) {
        return new UnitsForm(units.length(), units.area(), units.mass());
    }

    public Units units() {
        return new Units(length, area, mass);
    }
}
