// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.summary;

import java.util.Arrays;
import java.util.Optional;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * Number, mean and standard deviation of some values, and what Student's distribution says of their mean.
 *
 * <p>The standard deviation has divisor n − 1 and is not a number for fewer than two values. Both are computed in two
 * passes with the rounding of the first one taken out, so that a spread far smaller than the mean keeps its digits.
 *
 * @param n    how many values
 * @param mean their arithmetic mean
 * @param sd   their standard deviation, or not a number
 */
public record Moments(int n, double mean, double sd) {

    /**
     * {@return the moments of the values}
     *
     * @param values at least one value
     * @throws IllegalArgumentException if there is no value
     */
    public static Moments of(double... values) {
        if (values.length == 0) {
            throw new IllegalArgumentException("values: expected at least one, got none");
        }
        double first = Arrays.stream(values).sum() / values.length;
        double mean = first + sumOfPowers(values, first, 1) / values.length;
        double squares = sumOfPowers(values, mean, 2) - square(sumOfPowers(values, mean, 1)) / values.length;
        return new Moments(values.length, mean, Math.sqrt(squares / (values.length - 1)));
    }

    private static double sumOfPowers(double[] values, double centre, int power) {
        double sum = 0;
        for (double value : values) {
            double off = value - centre;
            sum += power == 1 ? off : off * off;
        }
        return sum;
    }

    private static double square(double value) {
        return value * value;
    }

    /** {@return the standard error of the mean, or not a number for fewer than two values} */
    public double standardError() {
        return sd / Math.sqrt(n);
    }

    /**
     * {@return the interval of the mean of a normal population, absent for fewer than two values}
     *
     * @param level how often such an interval is right
     */
    public Optional<Interval> interval(double level) {
        return n < 2
                ? Optional.empty()
                : Optional.of(Interval.around(mean, Quantile.studentTwoSided(level, n - 1) * standardError(), level));
    }

    /** {@return Student's t of the mean against 0, not a number for fewer than two values or no spread about 0} */
    public double t() {
        return mean / standardError();
    }

    /** {@return the two-sided probability of {@link #t}, not a number where that is not} */
    public double p() {
        return n < 2 || Double.isNaN(t())
                ? Double.NaN
                : 2 * TDistribution.of(n - 1).survivalProbability(Math.abs(t()));
    }
}
