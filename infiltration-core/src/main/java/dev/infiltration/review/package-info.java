// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
/**
 * All of it over a book, joined: problems, findings, outcomes of runs, rows of locations and surfaces, decisions, and the
 * history of each surface.
 *
 * <p>Nothing is thrown at records. Places count as the document counts, entries that could not be read included.
 *
 * <pre>{@code
 * Review review = Review.of(book);
 * List<Finding> serious = review.findings(Effect.DEVIATION);
 * for (SurfaceRate surface : review.surfaces()) {
 *     System.out.println(surface.visit().subject() + " " + surface.mean().figure());
 * }
 * }</pre>
 */
@NullMarked
package dev.infiltration.review;

import org.jspecify.annotations.NullMarked;
