// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.validation;

import dev.infiltration.check.Checker;
import dev.infiltration.check.Finding;
import jakarta.validation.Configuration;
import jakarta.validation.ConstraintViolation;
import jakarta.validation.Path;
import jakarta.validation.Validation;
import jakarta.validation.Validator;
import java.util.Collection;
import java.util.Map;
import java.util.TreeMap;
import org.hibernate.validator.engine.HibernateConstraintViolation;
import org.hibernate.validator.messageinterpolation.ParameterMessageInterpolator;

/** Validators without an expression language, and what their violations say. */
final class Validators {

    /** By the built-in methods and the catalogue as it is written. */
    static final Validator DEFAULT = configuration().buildValidatorFactory().getValidator();

    private Validators() {}

    private static Configuration<?> configuration() {
        return Validation.byDefaultProvider().configure().messageInterpolator(new ParameterMessageInterpolator());
    }

    static Validator by(Checker checker) {
        Configuration<?> configuration = configuration();
        return configuration
                .constraintValidatorFactory(
                        CheckerValidatorFactory.of(checker, configuration.getDefaultConstraintValidatorFactory()))
                .buildValidatorFactory()
                .getValidator();
    }

    /** By path, the message; two at one path are joined in the order of their texts. */
    static Map<String, String> messages(Collection<? extends ConstraintViolation<?>> violations) {
        Map<String, String> messages = new TreeMap<>();
        violations.stream()
                .sorted(java.util.Comparator.comparing(ConstraintViolation::getMessage))
                .forEach(violation -> messages.merge(
                        violation.getPropertyPath().toString(),
                        violation.getMessage(),
                        (one, other) -> one + " | " + other));
        return messages;
    }

    static Finding finding(ConstraintViolation<?> violation) {
        HibernateConstraintViolation<?> known = violation.unwrap(HibernateConstraintViolation.class);
        return known.getDynamicPayload(Finding.class);
    }

    /** The JSON Pointer that a path amounts to, leaving out its first node: the host's own property. */
    static String pointer(Path path) {
        StringBuilder pointer = new StringBuilder();
        boolean isOwn = true;
        for (Path.Node node : path) {
            if (node.getIndex() != null) {
                pointer.append('/').append(node.getIndex());
            }
            if (!isOwn && node.getName() != null && !node.getName().startsWith("<")) {
                pointer.append('/').append(node.getName());
            }
            isOwn = false;
        }
        return pointer.toString();
    }
}
