// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * Quantiles of the distributions that the intervals rest on.
 *
 * <p>A probability outside 0 to 1 throws {@link IllegalArgumentException}, as do degrees of freedom that are not
 * positive. Good to about 1e-12 of the value; the arithmetic is that of commons-statistics.
 */
public final class Quantile {

    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

    private Quantile() {}

    /**
     * {@return the quantile of the standard normal distribution}
     *
     * @param probability the probability below it
     */
    public static double normal(double probability) {
        return NORMAL.inverseCumulativeProbability(probability);
    }

    /**
     * {@return the quantile of Student's distribution}
     *
     * @param probability the probability below it
     * @param degrees     degrees of freedom, whole or not
     */
    public static double student(double probability, double degrees) {
        return TDistribution.of(degrees).inverseCumulativeProbability(probability);
    }

    /**
     * {@return the quantile that cuts equal tails off Student's distribution}
     *
     * @param level   the probability between the negative of it and itself
     * @param degrees degrees of freedom, whole or not
     */
    public static double studentTwoSided(double level, double degrees) {
        return student((1 + level) / 2, degrees);
    }

    /**
     * {@return the quantile of the chi-squared distribution}
     *
     * @param probability the probability below it
     * @param degrees     degrees of freedom, whole or not
     */
    public static double chiSquared(double probability, double degrees) {
        return ChiSquaredDistribution.of(degrees).inverseCumulativeProbability(probability);
    }

    /**
     * {@return the quantile of the beta distribution}
     *
     * @param probability the probability below it
     * @param alpha       first shape, positive
     * @param beta        second shape, positive
     */
    public static double beta(double probability, double alpha, double beta) {
        return BetaDistribution.of(alpha, beta).inverseCumulativeProbability(probability);
    }
}
