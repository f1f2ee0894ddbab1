// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.validation;

import dev.infiltration.check.Finding;
import jakarta.validation.ConstraintValidatorContext;
import org.hibernate.validator.constraintvalidation.HibernateConstraintValidatorContext;

/** Support for the dynamic payload of one provider; loaded only with that provider. */
final class DynamicPayload {

    private DynamicPayload() {}

    static void put(Finding finding, ConstraintValidatorContext context) {
        context.unwrap(HibernateConstraintValidatorContext.class).withDynamicPayload(finding);
    }
}
