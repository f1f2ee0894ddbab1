// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
/**
 * Before and after, one group and another: ratios of rates, and whether a difference is shown.
 *
 * <p>Rates are compared by their ratios, on the log scale. Tests by rank and sign are exact for the numbers of locations
 * that a season has; where even the clearest outcome could not reach 0.05 on two sides there is no probability, only
 * "cannot tell". A result that the data do not give is absent. A programmer's mistake (groups of different length
 * that should be pairs, a negative rate) throws with the argument's name.
 *
 * <pre>{@code
 * double[] before = {5.1, 7.7, 3.0, 9.4, 6.2, 4.4};
 * double[] after = {106, 88, 97, 140, 51, 120};
 * var cleaning = PairedComparison.of(before, after);
 * cleaning.conclusion();                             // HIGHER
 * System.out.println(cleaning);                      // a small table
 * }</pre>
 */
@NullMarked
package dev.infiltration.compare;

import org.jspecify.annotations.NullMarked;
