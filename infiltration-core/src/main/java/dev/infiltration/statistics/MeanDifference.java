// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import java.util.Optional;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * The difference of two means whose groups may scatter differently (Welch 1947).
 *
 * <p>Degrees of freedom after Satterthwaite. With fewer than two values in a group, or no scatter in either, there is no
 * interval and the probability is not a number.
 *
 * @param group   moments of the one group
 * @param against moments of the other
 */
public record MeanDifference(SampleStatistics group, SampleStatistics against) {

    /**
     * {@return the comparison of two groups}
     *
     * @param group   values of the one
     * @param against values of the other
     */
    public static MeanDifference of(double[] group, double[] against) {
        return new MeanDifference(SampleStatistics.of(group), SampleStatistics.of(against));
    }

    /** {@return the mean of the first less that of the second} */
    public double difference() {
        return group.mean() - against.mean();
    }

    /** {@return the difference in standard errors} */
    public double t() {
        return difference() / standardError();
    }

    private double standardError() {
        return Math.hypot(group.standardError(), against.standardError());
    }

    /** {@return the degrees of freedom, not whole in general} */
    public double degrees() {
        double a = Math.pow(group.standardError(), 2);
        double b = Math.pow(against.standardError(), 2);
        return (a + b) * (a + b) / (a * a / (group.n() - 1) + b * b / (against.n() - 1));
    }

    /** {@return the two-sided probability, or not a number} */
    public double pValue() {
        return isKnown() ? 2 * TDistribution.of(degrees()).survivalProbability(Math.abs(t())) : Double.NaN;
    }

    /**
     * {@return the interval of the difference}
     *
     * @param level how often such an interval is right
     */
    public Optional<Interval> interval(double level) {
        return isKnown()
                ? Optional.of(Interval.around(
                        difference(), Quantile.studentTwoSided(level, degrees()) * standardError(), level))
                : Optional.empty();
    }

    private boolean isKnown() {
        return degrees() > 0;
    }

    /** {@return the test as a small table} */
    @Override
    public String toString() {
        return TextTable.titled("two means")
                .with("difference", TextTable.number(difference()))
                .with("its interval", TestRows.limits(interval(Interval.LEVEL)))
                .with("t", TextTable.number(t()))
                .with("degrees of freedom", TextTable.number(degrees()))
                .with("two-sided probability", TextTable.number(pValue()))
                .toString();
    }
}
