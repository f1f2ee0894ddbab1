// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.rate.RateOutcome;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Speed;
import org.jspecify.annotations.Nullable;

/**
 * A rate to be marked in a plot.
 *
 * @param label   what it is the rate of
 * @param outcome the rate or its bound
 * @param half    the rate's expanded uncertainty (95 %), the end point included; null where none is known
 */
public record RateMark(
        String label, RateOutcome outcome, @Nullable InfiltrationRate half) {

    /** Checks that all but the interval is there. */
    public RateMark {
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(outcome, "outcome");
    }

    /**
     * {@return a rate without an interval}
     *
     * @param label   what it is the rate of
     * @param outcome the rate or its bound
     */
    public static RateMark of(String label, RateOutcome outcome) {
        return new RateMark(label, outcome, null);
    }

    /**
     * {@return the rate or its bound in a unit; empty where there is neither}
     *
     * @param unit the unit
     */
    public Optional<Double> in(FieldUnit<Speed> unit) {
        return outcome.figure().map(rate -> rate.in(unit));
    }

    boolean hasInterval() {
        return half != null && half.millimetresPerHour() > 0;
    }

    /** {@return the rate in words beside limits, with its ± where one is known} */
    String text(FieldUnit<Speed> unit, List<InfiltrationRate> limits) {
        return outcome.match(
                measured -> text(measured.value(), unit, limits),
                upper -> "at most " + upper.bound().text(unit, limits),
                lower -> "at least " + lower.bound().text(unit, limits),
                withheld -> "no rate");
    }

    private String text(InfiltrationRate rate, FieldUnit<Speed> unit, List<InfiltrationRate> limits) {
        return half == null || !hasInterval()
                ? rate.text(unit, limits)
                : RateWords.rateWithUncertainty(rate, half, unit, limits);
    }
}
