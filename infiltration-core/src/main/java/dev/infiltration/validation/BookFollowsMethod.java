// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.validation;

import dev.infiltration.check.Checker;
import dev.infiltration.field.FieldBook;
import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorContext;
import org.jspecify.annotations.Nullable;

/** Validates field books for {@link FollowsMethod}; created by the validation provider. */
public final class BookFollowsMethod implements ConstraintValidator<FollowsMethod, FieldBook> {

    private ConstraintCheck judge;

    /** Uses the built-in methods and rules. */
    public BookFollowsMethod() {
        this(Checker.withDefaults());
    }

    BookFollowsMethod(Checker checker) {
        judge = ConstraintCheck.by(checker);
    }

    @Override
    public void initialize(FollowsMethod asked) {
        judge = judge.asked(asked);
    }

    @Override
    public boolean isValid(@Nullable FieldBook book, ConstraintValidatorContext context) {
        return book == null || judge.isFollowed(book, context);
    }
}
