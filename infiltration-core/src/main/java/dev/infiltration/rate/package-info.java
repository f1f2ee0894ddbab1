// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
/**
 * What a run comes to: a rate, a bound of it, or nothing with the reasons.
 *
 * <p>A rate that cannot be had is absent by type; nothing is thrown at a field record. The bare equation takes and gives
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
 * <p>How sure a rate is: {@link dev.infiltration.rate.Instruments} make an
 * {@link dev.infiltration.rate.UncertaintyBudget} of a run, {@link dev.infiltration.rate.MeasurementModel} and
 * {@link dev.infiltration.rate.MonteCarlo} of anything.
 */
@NullMarked
package dev.infiltration.rate;

import org.jspecify.annotations.NullMarked;
