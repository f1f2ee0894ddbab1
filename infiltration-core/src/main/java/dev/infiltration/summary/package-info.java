// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
/**
 * What a location and a surface come to.
 *
 * <p>Nothing is thrown at records: a figure that cannot be had is withheld, with the ids of the rules that say why.
 *
 * <pre>{@code
 * CheckedBook checked = Checker.withDefaults().check(book);
 * VisitAt visit = checked.visits().get(0);
 * List<LocationRate> locations = LocationRate.of(checked, visit);
 * SurfaceRate surface = SurfaceRate.of(visit, locations);
 * surface.mean();
 * }</pre>
 */
@NullMarked
package dev.infiltration.summary;

import org.jspecify.annotations.NullMarked;
