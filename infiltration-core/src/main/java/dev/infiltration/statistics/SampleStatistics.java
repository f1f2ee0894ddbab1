// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * Number, mean and standard deviation of some values, and what Student's distribution says of their mean.
 *
 * <p>The standard deviation has divisor n − 1 and is not a number for fewer than two values. Both are computed in two
 * passes with the rounding of the first one taken out, and sums carry what rounding drops (Neumaier 1974), so that a
 * spread far smaller than the mean keeps its digits.
 *
 * @param n    how many values
 * @param mean their arithmetic mean
 * @param sd   their standard deviation, or not a number
 */
public record SampleStatistics(int n, double mean, double sd) {

    /**
     * {@return the moments of the values}
     *
     * @param values at least one value
     * @throws IllegalArgumentException if there is no value
     */
    public static SampleStatistics of(double... values) {
        if (values.length == 0) {
            throw new IllegalArgumentException("values: expected at least one, got none");
        }
        int n = values.length;
        double first = sum(values, value -> value) / n;
        double mean = first + sum(values, value -> value - first) / n;
        double rest = sum(values, value -> value - mean);
        double squares = sum(values, value -> (value - mean) * (value - mean)) - rest * rest / n;
        return new SampleStatistics(n, mean, Math.sqrt(squares / (n - 1)));
    }

    /**
     * {@return the median: the middle value, or the mean of the two middle values}
     *
     * @param values at least one value
     */
    public static double median(double... values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int middle = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[middle] : sorted[middle - 1] / 2 + sorted[middle] / 2;
    }

    /**
     * {@return the indices of outliers: values with a modified z-score 0.6745·|x − median|/MAD above 3.5 (Iglewicz and
     *     Hoaglin 1993); none where half of the values or more are equal}
     *
     * @param values at least one value
     */
    public static int[] outliers(double... values) {
        return Outliers.of(values);
    }

    /**
     * {@return the bootstrap-t interval of the mean (Efron 1979, Hall 1988), from 1999 samples}
     *
     * @param values at least one value; without any variation the interval is the mean
     * @param level  the confidence level
     * @param seed   the same seed gives the same interval on every machine
     */
    public static Interval bootstrapInterval(double[] values, double level, long seed) {
        return BootstrapInterval.interval(values, level, seed);
    }

    private static double sum(double[] values, DoubleUnaryOperator term) {
        double sum = 0;
        double dropped = 0;
        for (double value : values) {
            double next = term.applyAsDouble(value);
            double total = sum + next;
            dropped += Math.abs(sum) >= Math.abs(next) ? sum - total + next : next - total + sum;
            sum = total;
        }
        return sum + dropped;
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
    public double pValue() {
        return n < 2 || Double.isNaN(t())
                ? Double.NaN
                : 2 * TDistribution.of(n - 1).survivalProbability(Math.abs(t()));
    }
}
