// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.validation;

import dev.infiltration.check.Checker;
import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorFactory;
import java.util.Objects;

/**
 * Passes the host's own checker, with its methods, policy and date, to the validators of {@link FollowsMethod}.
 *
 * <p>All other validators come from the given factory.
 *
 * <pre>{@code
 * Configuration<?> configuration = Validation.byDefaultProvider().configure();
 * configuration.constraintValidatorFactory(
 *         CheckerValidatorFactory.of(checker, configuration.getDefaultConstraintValidatorFactory()));
 * }</pre>
 */
public final class CheckerValidatorFactory implements ConstraintValidatorFactory {

    private final Checker checker;
    private final ConstraintValidatorFactory others;

    private CheckerValidatorFactory(Checker checker, ConstraintValidatorFactory others) {
        this.checker = Objects.requireNonNull(checker, "checker");
        this.others = Objects.requireNonNull(others, "others");
    }

    /**
     * {@return a factory of validators}
     *
     * @param checker the checker for {@link FollowsMethod}
     * @param others  factory of all other validators
     */
    public static CheckerValidatorFactory of(Checker checker, ConstraintValidatorFactory others) {
        return new CheckerValidatorFactory(checker, others);
    }

    @Override
    public <T extends ConstraintValidator<?, ?>> T getInstance(Class<T> kind) {
        if (kind == BookFollowsMethod.class) {
            return kind.cast(new BookFollowsMethod(checker));
        }
        if (kind == VisitFollowsMethod.class) {
            return kind.cast(new VisitFollowsMethod(checker));
        }
        if (kind == TestFollowsMethod.class) {
            return kind.cast(new TestFollowsMethod(checker));
        }
        return others.getInstance(kind);
    }

    @Override
    public void releaseInstance(ConstraintValidator<?, ?> instance) {
        if (!instance.getClass().getPackage().equals(CheckerValidatorFactory.class.getPackage())) {
            others.releaseInstance(instance);
        }
    }
}
