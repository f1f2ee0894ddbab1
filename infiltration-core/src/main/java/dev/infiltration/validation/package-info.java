// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
/**
 * Findings as constraint violations, for a host that validates its objects with Jakarta Validation.
 *
 * <p>The records of {@code dev.infiltration.field} carry annotations for what {@code data.required} requires; {@link
 * dev.infiltration.validation.FollowsMethod} requires that and every other rule. No expression language is needed.
 * No record causes an exception; an unknown method is a {@link jakarta.validation.ConstraintDeclarationException}.
 *
 * <pre>{@code
 * record Inspection(String asset, @FollowsMethod(method = "C1781") FieldBook book) {}
 *
 * for (ConstraintViolation<Inspection> violation : validator.validate(inspection)) {
 *     System.out.println(violation.getPropertyPath() + ": " + violation.getMessage());
 * }
 * }</pre>
 */
@NullMarked
package dev.infiltration.validation;

import org.jspecify.annotations.NullMarked;
