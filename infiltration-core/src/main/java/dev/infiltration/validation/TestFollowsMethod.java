// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.validation;

import dev.infiltration.check.Checker;
import dev.infiltration.field.LocationTest;
import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorContext;
import org.jspecify.annotations.Nullable;

/** Validates tests without their visit for {@link FollowsMethod}; created by the validation provider. */
public final class TestFollowsMethod implements ConstraintValidator<FollowsMethod, LocationTest> {

    private ConstraintCheck judge;

    /** Uses the built-in methods and rules. */
    public TestFollowsMethod() {
        this(Checker.withDefaults());
    }

    TestFollowsMethod(Checker checker) {
        judge = ConstraintCheck.by(checker);
    }

    @Override
    public void initialize(FollowsMethod asked) {
        judge = judge.asked(asked);
    }

    @Override
    public boolean isValid(@Nullable LocationTest test, ConstraintValidatorContext context) {
        return test == null || judge.isFollowed(test, context);
    }
}
