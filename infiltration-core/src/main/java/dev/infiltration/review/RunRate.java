// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.review;

import dev.infiltration.check.PouringAt;
import dev.infiltration.field.Place;
import dev.infiltration.rate.RateConstant;
import dev.infiltration.rate.RateOutcome;
import dev.infiltration.rate.Uncertainty;
import dev.infiltration.rate.UncertaintyBudget;
import java.util.Optional;

/**
 * A run and what it comes to.
 *
 * @param run     the run in its surroundings
 * @param where   its place, as the document counts
 * @param outcome the rate, a bound, or none with the ids of the rules that say why
 */
public record RunRate(PouringAt run, Place where, RateOutcome outcome) {

    /** {@return the constant that the rate or its bound was worked with; empty where there is neither} */
    public Optional<RateConstant> constant() {
        return outcome.figure().isPresent() ? run.constant() : Optional.empty();
    }

    /** {@return what the rate's uncertainty rests on, term by term, from the book's own instruments; empty unless measured} */
    public Optional<UncertaintyBudget> budget() {
        return run.budget();
    }

    /**
     * {@return the rate's uncertainty in mm/h}, {@link UncertaintyBudget#INSTRUMENTS_ONLY}; worked anew each time; empty unless
     * measured
     */
    public Optional<Uncertainty> uncertainty() {
        return budget().map(UncertaintyBudget::uncertainty);
    }
}
