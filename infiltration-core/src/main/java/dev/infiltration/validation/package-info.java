// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
/**
 * Findings as constraint violations, for a host that validates its objects with Jakarta Validation.
 *
 * <p>The records of {@code dev.infiltration.field} carry annotations for what {@code data.required} asks for; {@link
 * dev.infiltration.validation.FollowsMethod} asks for that and for every other rule. No expression language is needed.
 * Nothing is thrown at a record; a method that nobody knows is a {@link jakarta.validation.ConstraintDeclarationException}.
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
