// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
/**
 * A season told to people.
 *
 * <p>Text is the same in every locale and zone. Nothing is thrown at records; control characters of ids and notes are shown
 * as U+FFFD.
 *
 * <pre>{@code
 * Review review = Review.of(book);
 * System.out.print(SeasonText.of(review));
 * }</pre>
 */
@NullMarked
package dev.infiltration.report;

import org.jspecify.annotations.NullMarked;
