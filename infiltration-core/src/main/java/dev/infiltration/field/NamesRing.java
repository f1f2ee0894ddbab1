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

/** A test that was made names its ring; a violation stands at {@code ring}. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Constraint(validatedBy = NamesRing.Validator.class)
@interface NamesRing {

    /** {@return what is wrong} */
    String message() default "a test that was made must name its ring";

    /** {@return when it is looked at} */
    Class<?>[] groups() default {};

    /** {@return what the host hangs on it} */
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
