// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

import jakarta.validation.Constraint;
import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorContext;
import jakarta.validation.Payload;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.jspecify.annotations.Nullable;

/** Requires the ring of a test that was made; the violation is reported at {@code ring}. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Constraint(validatedBy = NamesRing.Validator.class)
@interface NamesRing {

    /** {@return the message} */
    String message() default "a test that was made must name its ring";

    /** {@return the groups} */
    Class<?>[] groups() default {};

    /** {@return the payload of the host} */
    Class<? extends Payload>[] payload() default {};

    /** Loaded by a validation provider alone. */
    final class Validator implements ConstraintValidator<NamesRing, LocationTest> {

        @Override
        public boolean isValid(@Nullable LocationTest test, ConstraintValidatorContext context) {
            if (test == null || !test.isMade() || isGiven(test.ring())) {
                return true;
            }
            context.disableDefaultConstraintViolation();
            context.buildConstraintViolationWithTemplate(context.getDefaultConstraintMessageTemplate())
                    .addPropertyNode("ring")
                    .addConstraintViolation();
            return false;
        }

        private static boolean isGiven(@Nullable String text) {
            return text != null && !text.isEmpty();
        }
    }
}
