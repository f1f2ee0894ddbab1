// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import dev.infiltration.rate.Uncertainty.Contribution;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A weighted sum of results in the making: terms of one name add up before they are squared. */
final class WeightedSum {

    private final Map<String, Contribution> terms = new LinkedHashMap<>();
    private double value;
    private Correlation correlation = Correlation.NONE;

    void add(Uncertainty result, double weight) {
        if (result.secondOrderVariance() != 0) {
            throw new IllegalArgumentException("results: expected first-order terms alone, found second-order ones");
        }
        value += weight * result.value();
        correlation = correlation.and(result.correlation());
        result.contributions()
                .forEach(each -> terms.merge(each.term().name(), each.times(weight), WeightedSum::joined));
    }

    private static Contribution joined(Contribution one, Contribution other) {
        if (!one.term().spread().equals(other.term().spread())) {
            throw new IllegalArgumentException("results: " + one.term().name() + " has two distributions, "
                    + one.term().spread() + " and " + other.term().spread());
        }
        return new Contribution(one.term(), one.sensitivity() + other.sensitivity());
    }

    Uncertainty result() {
        return new Uncertainty(value, List.copyOf(terms.values()), correlation, 0);
    }
}
