package org.thalweg.api.wire;

import jakarta.validation.Constraint;
import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorContext;
import jakarta.validation.Payload;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Trims are those of profiles or those of a roof, and the request brings nothing that belongs to the other. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Constraint(validatedBy = TrimsOf.Check.class)
public @interface TrimsOf {

    String message() default
            "Give the trims in exactly one form: profiles (with sheet and stock), or roof (with panel, hipCap, trims and tolerance).";

    Class<?>[] groups() default {};

    Class<? extends Payload>[] payload() default {};

    /** Tells the forms apart by their members. */
    final class Check implements ConstraintValidator<TrimsOf, TrimsRequest> {
        @Override
        public boolean isValid(TrimsRequest request, ConstraintValidatorContext context) {
            boolean ofProfiles = request.sheet() != null || request.stock() != null;
            boolean ofRoof = request.panel() != null
                    || request.hipCap() != null
                    || request.trims() != null
                    || request.tolerance() != null;
            return request.profiles() != null
                    ? request.roof() == null && !ofRoof
                    : request.roof() != null && !ofProfiles;
        }
    }
}
