// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.summary;

import dev.infiltration.check.CheckedBook;
import dev.infiltration.rate.RateOutcome;
import dev.infiltration.rate.RateOutcome.LowerBound;
import dev.infiltration.rate.RateOutcome.Measured;
import dev.infiltration.rate.RateOutcome.UpperBound;
import dev.infiltration.rate.RateOutcome.Withheld;
import dev.infiltration.rule.RuleId;
import dev.infiltration.units.InfiltrationRate;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * How outcomes join: one upper bound makes the whole an upper bound, one lower bound a lower bound, both together withhold it;
 * what is withheld is left out.
 */
final class Outcomes {

    private Outcomes() {}

    /** {@return what {@code figure} makes of the outcomes that have one} */
    static RateOutcome join(List<RateOutcome> outcomes, ToDoubleFunction<double[]> figure) {
        List<RateOutcome> given = outcomes.stream()
                .filter(outcome -> outcome.figure().isPresent())
                .toList();
        boolean isUpper = given.stream().anyMatch(UpperBound.class::isInstance);
        boolean isLower = given.stream().anyMatch(LowerBound.class::isInstance);
        List<String> reasons = reasons(given.isEmpty() ? outcomes : given);
        if (given.isEmpty() || (isUpper && isLower)) {
            return new Withheld(reasons);
        }
        double value = figure.applyAsDouble(figures(given));
        if (!Double.isFinite(value)) {
            return new Withheld(List.of(RuleId.RUN_IMPLAUSIBLE.id()));
        }
        InfiltrationRate rate = new InfiltrationRate(value);
        if (isUpper) {
            return new UpperBound(rate, reasons);
        }
        return isLower ? new LowerBound(rate, reasons) : new Measured(rate);
    }

    private static List<String> reasons(List<RateOutcome> outcomes) {
        return outcomes.stream()
                .flatMap(outcome -> outcome.reasons().stream())
                .distinct()
                .sorted(CheckedBook.catalogueOrder())
                .toList();
    }

    private static double[] figures(List<RateOutcome> given) {
        return given.stream()
                .mapToDouble(outcome -> outcome.figure().orElseThrow().millimetresPerHour())
                .toArray();
    }
}
