// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
/**
 * Results of locations and surfaces, and their confidence.
 *
 * <p>No record causes an exception: a result that is not given is withheld, with the ids of the rules that give the reasons.
 * Statistics take plain numbers as well as rates; what the data do not give is absent. A programmer's mistake (a
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
