package org.thalweg.api.wire;

import jakarta.validation.Constraint;
import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorContext;
import jakarta.validation.Payload;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** A roof comes in exactly one form, and brings nothing that belongs to another. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Constraint(validatedBy = OneForm.Check.class)
public @interface OneForm {

    String message() default
            "Give the roof in exactly one form: points with planes (and edges), plan, footprint, or cityjson (and building).";

    Class<?>[] groups() default {};

    Class<? extends Payload>[] payload() default {};

    /** Tells the forms apart by their members. */
    final class Check implements ConstraintValidator<OneForm, RoofForm> {
        @Override
        public boolean isValid(RoofForm roof, ConstraintValidatorContext context) {
            boolean anyOfPoints = roof.points() != null || roof.planes() != null || roof.edges() != null;
            boolean anyOfCity = roof.cityjson() != null || roof.building() != null;
            boolean plan = roof.plan() != null;
            boolean footprint = roof.footprint() != null;
            int forms = (anyOfPoints ? 1 : 0) + (anyOfCity ? 1 : 0) + (plan ? 1 : 0) + (footprint ? 1 : 0);
            boolean whole =
                    plan || footprint || roof.cityjson() != null || roof.points() != null && roof.planes() != null;
            return whole && forms == 1;
        }
    }
}
