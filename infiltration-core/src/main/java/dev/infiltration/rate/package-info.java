// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
/**
 * Outcome of runs: a rate, a bound, or the reasons why no rate is given.
 *
 * <p>A run without a rate has a withheld outcome with the reasons; no field record causes an exception. The bare equation uses
 * plain doubles and answers as IEEE 754 does.
 *
 * <pre>{@code
 * RateOutcome outcome = RateEquation.asPublished().rate(ring, run);
 * String text = outcome.match(
 *         measured -> measured.value().toString(), upper -> "at most " + upper.bound(),
 *         lower -> "at least " + lower.bound(), withheld -> "no rate: " + withheld.reasons());
 * double bare = RateEquation.millimetresPerHour(18.00, 300, 60.0);                  // 15278.886…
 * }</pre>
 *
 * <p>Uncertainty of a rate: {@link dev.infiltration.rate.Instruments} make an
 * {@link dev.infiltration.rate.UncertaintyBudget} of a run, {@link dev.infiltration.rate.MeasurementModel} and
 * {@link dev.infiltration.rate.MonteCarlo} of anything.
 */
@NullMarked
package dev.infiltration.rate;

import org.jspecify.annotations.NullMarked;
