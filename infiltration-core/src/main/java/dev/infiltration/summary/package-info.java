// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
/**
 * What a location and a surface come to, and how sure that is.
 *
 * <p>Nothing is thrown at records: a figure that cannot be had is withheld, with the ids of the rules that say why.
 * Statistics take plain numbers as well as rates; what the data cannot carry is absent by type. A programmer's mistake (a
 * negative rate, a level of 95 for 0.95) throws with the argument's name.
 *
 * <pre>{@code
 * CheckedBook checked = Checker.withDefaults().check(book);
 * VisitAt visit = checked.visits().get(0);
 * List<LocationRate> locations = LocationRate.of(checked, visit);
 * SurfaceRate surface = SurfaceRate.of(visit, locations);
 * Moments.of(7.8, 6.9, 7.2).interval(0.95);          // of logarithms: Optional[6.162 to 8.438 (95 %)]
 * }</pre>
 */
@NullMarked
package dev.infiltration.summary;

import org.jspecify.annotations.NullMarked;
