package org.thalweg.api.wire;

import jakarta.validation.Constraint;
import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorContext;
import jakarta.validation.Payload;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** A valley is at a corner, or in a roof where it is named in exactly one way. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Constraint(validatedBy = ValleyForm.Check.class)
public @interface ValleyForm {

    String message() default
            "Give the valley in exactly one form: corner, or roof with valley (two points) or edge (its name).";

    Class<?>[] groups() default {};

    Class<? extends Payload>[] payload() default {};

    /** Tells the forms apart by their members. */
    final class Check implements ConstraintValidator<ValleyForm, ValleyRequest> {
        @Override
        public boolean isValid(ValleyRequest request, ConstraintValidatorContext context) {
            boolean named = request.valley() != null || request.edge() != null;
            boolean both = request.valley() != null && request.edge() != null;
            return request.corner() != null
                    ? request.roof() == null && !named
                    : request.roof() != null && named && !both;
        }
    }
}
