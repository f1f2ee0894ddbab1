// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.trend;

import dev.infiltration.statistics.Conclusion;
import dev.infiltration.statistics.SampleStatistics;
import dev.infiltration.statistics.TTestPower;
import java.util.List;
import java.util.OptionalInt;

/**
 * How many fixed locations are needed to detect a loss of rate with time, when all are tested at the same times.
 *
 * <p>The two-sided t test of the slope within locations at 5 %: standard error {@code s/√(n·Σ(x − x̄)²)} and
 * {@code n·m − n − 1} degrees of freedom for n locations and m times. Every location is assumed to lose the same share a
 * year; where the losses differ, more locations are needed.
 *
 * @param logSd standard deviation of natural logarithms of rates of a location about its own line, above 0
 * @param years times of the tests in years, at least two different ones
 */
public record TrendPower(double logSd, List<Double> years) {

    /**
     * Copies the times.
     *
     * @throws IllegalArgumentException if the standard deviation is not above 0 or fewer than two times differ
     */
    public TrendPower {
        years = List.copyOf(years);
        if (!(logSd > 0) || Double.isInfinite(logSd)) {
            throw new IllegalArgumentException("logSd: expected a finite number above 0, got " + logSd);
        }
        if (years.stream().distinct().count() < 2) {
            throw new IllegalArgumentException("years: expected at least two different times, got " + years);
        }
    }

    /**
     * {@return the probability that the test detects an annual factor}
     *
     * @param annualFactor the true factor by which the rate changes in a year, above 0: 0.8 for a loss of 20 % a year
     * @param locations    number of locations; at least 1, or 2 for two times
     * @throws IllegalArgumentException if an argument is out of range
     */
    public double power(double annualFactor, int locations) {
        if (!(annualFactor > 0) || Double.isInfinite(annualFactor)) {
            throw new IllegalArgumentException("annualFactor: expected a finite number above 0, got " + annualFactor);
        }
        if (locations < fewest()) {
            throw new IllegalArgumentException("locations: expected at least " + fewest() + ", got " + locations);
        }
        SampleStatistics times = SampleStatistics.of(
                years.stream().mapToDouble(Double::doubleValue).toArray());
        double squares = times.sd() * times.sd() * (times.n() - 1);
        double noncentrality = StrictMath.log(annualFactor) / logSd * Math.sqrt(locations * squares);
        return TTestPower.of(noncentrality, locations * (times.n() - 1.0) - 1, Conclusion.RISK);
    }

    private int fewest() {
        return years.size() > 2 ? 1 : 2;
    }

    /**
     * {@return the smallest number of locations that detects an annual factor; absent if 100 000 do not}
     *
     * @param annualFactor the true factor, above 0
     * @param power        the required probability of detecting it, such as 0.8
     */
    public OptionalInt locationsFor(double annualFactor, double power) {
        return TTestPower.smallest(locations -> power(annualFactor, locations), fewest(), power);
    }
}
