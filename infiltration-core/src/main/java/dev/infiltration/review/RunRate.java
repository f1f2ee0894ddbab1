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
 * A run and its result.
 *
 * @param run     the run with its test, visit and surface
 * @param where   its place, as the document counts
 * @param outcome the rate, a bound, or none with the ids of the rules that give the reasons
 */
public record RunRate(PouringAt run, Place where, RateOutcome outcome) {

    /** {@return the constant used for the rate or the bound; empty where there is neither} */
    public Optional<RateConstant> constant() {
        return outcome.figure().isPresent() ? run.constant() : Optional.empty();
    }

    /** {@return the uncertainty budget of the rate, from the instruments in the book; empty unless measured} */
    public Optional<UncertaintyBudget> budget() {
        return run.budget();
    }

    /**
     * {@return the rate's uncertainty in mm/h}, {@link UncertaintyBudget#INSTRUMENTS_ONLY}; computed at each call; empty unless
     * measured
     */
    public Optional<Uncertainty> uncertainty() {
        return budget().map(UncertaintyBudget::uncertainty);
    }
}
