// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.validation;

import dev.infiltration.check.Checker;
import dev.infiltration.field.Visit;
import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorContext;
import org.jspecify.annotations.Nullable;

/** Validates visits without their book for {@link FollowsMethod}; created by the validation provider. */
public final class VisitFollowsMethod implements ConstraintValidator<FollowsMethod, Visit> {

    private ConstraintCheck judge;

    /** Uses the built-in methods and rules. */
    public VisitFollowsMethod() {
        this(Checker.withDefaults());
    }

    VisitFollowsMethod(Checker checker) {
        judge = ConstraintCheck.by(checker);
    }

    @Override
    public void initialize(FollowsMethod asked) {
        judge = judge.asked(asked);
    }

    @Override
    public boolean isValid(@Nullable Visit visit, ConstraintValidatorContext context) {
        return visit == null || judge.isFollowed(visit, context);
    }
}
