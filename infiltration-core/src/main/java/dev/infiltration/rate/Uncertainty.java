// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import dev.infiltration.statistics.Interval;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * A result with its standard uncertainty, term by term, after JCGM 100:2008 (the GUM).
 *
 * <p>{@code u² = Σ Σ ci·cj·u(xi)·u(xj)·r(xi, xj)} (5.2.2), with second-order terms where requested (5.1.2,
 * note). Effective degrees of freedom after Welch and Satterthwaite (G.4.1), from the first-order terms; terms that are
 * correlated with each other count as one with the fewest degrees of freedom among them, which is exact for means of the
 * same n sets of readings and cautious otherwise. The coverage factor is that of the t-distribution with the degrees of
 * freedom cut to a whole number (G.4.1).
 */
public final class Uncertainty {

    private final double value;
    private final List<Contribution> contributions;
    private final Correlation correlation;
    private final double secondOrder;
    private final double standardUncertainty;

    Uncertainty(double value, List<Contribution> contributions, Correlation correlation, double secondOrder) {
        this.value = value;
        this.contributions = List.copyOf(contributions);
        this.correlation = correlation;
        this.secondOrder = secondOrder;
        double variance = correlation.variance(contributions) + secondOrder;
        this.standardUncertainty = StrictMath.sqrt(Math.max(0, variance));
    }

    /**
     * What one term adds to a result.
     *
     * @param term        the term
     * @param sensitivity by how much the result changes for a unit of the term
     */
    public record Contribution(Term term, double sensitivity) {

        /** {@return the sensitivity times the term's standard uncertainty, with the sign of the sensitivity} */
        public double amount() {
            return sensitivity * term.spread().standardUncertainty();
        }

        Contribution times(double weight) {
            return new Contribution(term, weight * sensitivity);
        }
    }

    /**
     * {@return the mean of results that may share terms}: a term of one name counts as the same error in each and is not
     * diminished; terms of different names average out
     *
     * @param results the results, at least one
     * @throws IllegalArgumentException if there is none, a name has two distributions or two correlations, or second-order
     *     terms were requested, which a mean does not have
     */
    public static Uncertainty mean(List<Uncertainty> results) {
        double[] weights = new double[results.size()];
        Arrays.fill(weights, 1.0 / weights.length);
        return sum(results, weights);
    }

    /**
     * {@return the mean of repeated results, with how far they differ as one more term}: of two or three, half their range to
     * either side, rectangular (JCGM 100:2008, 4.3.7), since so few have no useful standard deviation; of four or more, the
     * standard deviation of their mean (4.2.3)
     *
     * @param name    names the term
     * @param results the results, at least one; of one nothing is added
     * @throws IllegalArgumentException as {@link #mean} does
     */
    public static Uncertainty meanOfRepeats(String name, List<Uncertainty> results) {
        Uncertainty mean = mean(results);
        double[] values = results.stream().mapToDouble(Uncertainty::value).toArray();
        return values.length < 2 ? mean : mean.with(ReadTerms.repeats(name, values));
    }

    private Uncertainty with(Term term) {
        List<Contribution> all = new ArrayList<>(contributions);
        all.add(new Contribution(term, 1));
        return new Uncertainty(value, all, correlation, secondOrder);
    }

    /**
     * {@return the weighted sum of results that may share terms}, as {@link #mean} takes them: weights 1 and −1 give a
     * difference
     *
     * @param results the results, at least one
     * @param weights a weight for each
     * @throws IllegalArgumentException as {@link #mean} does, or if there is not a weight for each
     */
    public static Uncertainty sum(List<Uncertainty> results, double... weights) {
        WeightedSum sum = new WeightedSum();
        if (results.isEmpty() || results.size() != weights.length) {
            throw new IllegalArgumentException(
                    "results: expected some and a weight for each, found " + results.size() + " and " + weights.length);
        }
        for (int i = 0; i < weights.length; i++) {
            sum.add(results.get(i), weights[i]);
        }
        return sum.result();
    }

    /**
     * {@return this result times an exact factor}: the same in another unit
     *
     * @param factor the factor
     */
    public Uncertainty times(double factor) {
        List<Contribution> scaled =
                contributions.stream().map(each -> each.times(factor)).toList();
        return new Uncertainty(factor * value, scaled, correlation, factor * factor * secondOrder);
    }

    /** {@return the result} */
    public double value() {
        return value;
    }

    /** {@return what each term adds, in the order of the terms} */
    public List<Contribution> contributions() {
        return contributions;
    }

    Correlation correlation() {
        return correlation;
    }

    /** {@return the combined standard uncertainty, in the unit of the result} */
    public double standardUncertainty() {
        return standardUncertainty;
    }

    /** {@return what second-order terms add to the square of the uncertainty; 0 where they were not requested} */
    public double secondOrderVariance() {
        return secondOrder;
    }

    /** Whether it is so small that its fourth power is finite, which its degrees of freedom need. */
    boolean isWithinMeasure() {
        double variance = standardUncertainty * standardUncertainty;
        return Double.isFinite(variance * variance);
    }

    /** {@return the effective degrees of freedom: infinite where every term's uncertainty is exact, or there is none} */
    public double degreesOfFreedom() {
        return WelchSatterthwaite.degreesOfFreedom(contributions, correlation);
    }

    /**
     * {@return the covariance with a result that may share terms} (JCGM 100, H.2.3)
     *
     * @param other the other result
     */
    public double covariance(Uncertainty other) {
        return correlation.and(other.correlation).covariance(contributions, other.contributions);
    }

    /**
     * {@return the correlation coefficient with a result that may share terms}; NaN where either is exact
     *
     * @param other the other result
     */
    public double correlation(Uncertainty other) {
        return covariance(other) / (standardUncertainty * other.standardUncertainty);
    }

    /**
     * {@return what the standard uncertainty is multiplied by for a level of confidence}
     *
     * @param level the level, 0.95 for 95 %
     * @throws IllegalArgumentException if the level is not between 0 and 1
     */
    public double coverageFactor(double level) {
        double known = degreesOfFreedom();
        return coverageFactor(level, known >= 1 ? Math.floor(known) : known);
    }

    /**
     * {@return the coverage factor for a level of confidence and degrees of freedom}, which need not be whole
     *
     * @param level            the level, 0.95 for 95 %
     * @param degreesOfFreedom above 0; may be infinite
     * @throws IllegalArgumentException if the level is not between 0 and 1 or the degrees of freedom are not above 0
     */
    public static double coverageFactor(double level, double degreesOfFreedom) {
        requireLevel(level);
        double beyond = (1 - level) / 2;
        return Double.isInfinite(degreesOfFreedom)
                ? NormalDistribution.of(0, 1).inverseSurvivalProbability(beyond)
                : TDistribution.of(degreesOfFreedom).inverseSurvivalProbability(beyond);
    }

    static void requireLevel(double level) {
        if (!(level > 0 && level < 1)) {
            throw new IllegalArgumentException("level: allowed between 0 and 1, found " + level);
        }
    }

    /**
     * {@return the expanded uncertainty}: coverage factor times standard uncertainty
     *
     * @param level the level, 0.95 for 95 %
     * @throws IllegalArgumentException if the level is not between 0 and 1
     */
    public double expanded(double level) {
        return coverageFactor(level) * standardUncertainty;
    }

    /**
     * {@return value ± expanded uncertainty}
     *
     * @param level the level, 0.95 for 95 %
     * @throws IllegalArgumentException if the level is not between 0 and 1
     */
    public Interval interval(double level) {
        double half = expanded(level);
        return Interval.between(value - half, value + half, level);
    }

    /**
     * {@return value and expanded uncertainty for people}, the uncertainty to two significant digits, the value to match:
     * {@code 15280 ± 450}
     *
     * @param level the level, 0.95 for 95 %
     * @throws IllegalArgumentException if the level is not between 0 and 1
     */
    public String plusMinus(double level) {
        return Rounding.pair(value, expanded(level));
    }

    /**
     * {@return an uncertainty for people, to two significant digits}
     *
     * @param uncertainty the uncertainty
     */
    public static String rounded(double uncertainty) {
        return Rounding.digits(uncertainty, 2);
    }

    /**
     * {@return a value and half the width of its interval for people}, rounded together as {@link #plusMinus(double)} does
     *
     * @param value the value
     * @param half  half the width, in the unit of the value
     */
    public static String plusMinus(double value, double half) {
        return Rounding.pair(value, half);
    }

    /**
     * {@return value and expanded uncertainty for people}, the uncertainty to two significant digits, the value to match:
     * {@code 15280 ± 450 mm/h (95 %, k = 1.96)}
     *
     * @param level the level, 0.95 for 95 %
     * @param unit  the unit of the result, printed as it is
     * @throws IllegalArgumentException if the level is not between 0 and 1
     */
    public String text(double level, String unit) {
        return String.format(
                Locale.ROOT,
                "%s %s (%s %%, k = %.2f)",
                plusMinus(level),
                unit,
                Rounding.percent(level),
                coverageFactor(level));
    }

    /** {@return a table of the terms for people, a line each: name, spread, what it adds, its share of u², basis} */
    public String table() {
        StringBuilder table = new StringBuilder();
        for (Contribution each : contributions) {
            double amount = Math.abs(each.amount());
            double share = 100 * amount * amount / (standardUncertainty * standardUncertainty);
            table.append(String.format(
                    Locale.ROOT,
                    "%-36s %-28s %10s %6.1f %%  %s%n",
                    each.term().name(),
                    each.term().spread(),
                    Rounding.digits(amount, 2),
                    share,
                    each.term().basis()));
        }
        return table.toString();
    }

    /** {@return value and standard uncertainty for people} */
    @Override
    public String toString() {
        return Rounding.pair(value, standardUncertainty) + " (standard uncertainty)";
    }
}
