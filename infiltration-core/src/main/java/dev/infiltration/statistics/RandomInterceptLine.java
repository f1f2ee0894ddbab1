// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * A straight line through values of several groups, each group with a random intercept, fitted by restricted maximum
 * likelihood (REML; Patterson and Thompson 1971).
 *
 * <p>{@code y = intercept + slope·x + u + e}, u of each group normal with the variance between groups, e of each value normal
 * with the residual variance. With {@code g = 1/(residual/m + between)} for a group of m values, the deviance depends on
 * group means and on sums within groups alone; the ratio of the two variances is found where its derivative is zero, at the
 * lowest of all minima.
 *
 * <p>Degrees of freedom are Satterthwaite's: {@code 2v²/(g'Ag)}, v the variance of the estimate, g its derivatives by the two
 * variances, A twice the inverse of the observed Hessian of the deviance (Giesbrecht and Burns 1985; Fai and Cornelius 1996).
 *
 * <p><b>Zero variance between groups.</b> Where REML estimates it as 0, that formula has no meaning, and programs differ. Here
 * the standard error is that of the model, and the degrees of freedom are those within groups, {@code N − n − 1} for N values
 * of n groups: fewer than the {@code N − 2} of a line without groups, so that the interval does not rely on the zero. A
 * fitted value has the smaller of that and {@code n − 1}. The same numbers apply where the Hessian is not positive definite.
 *
 * <p>{@link #withinSlope} uses no variance between groups at all: least squares with a constant for each group.
 */
public final class RandomInterceptLine {

    /** Ratios of the variances at which the derivative is looked at: from 1e-8 to 1e12, and 0. */
    private static final int GRID = 201;

    private final GroupSums sums;
    private final double ratio;
    private final LineAtRatio line;

    private RandomInterceptLine(GroupSums sums) {
        this.sums = sums;
        this.ratio = bestRatio(sums);
        this.line = new LineAtRatio(sums, ratio);
    }

    /**
     * A slope with its standard error and degrees of freedom.
     *
     * @param value         the slope
     * @param standardError its standard error, positive
     * @param degrees       degrees of freedom of the standard error
     */
    public record Slope(double value, double standardError, double degrees) {

        /** {@return the slope divided by its standard error} */
        public double t() {
            return value / standardError;
        }

        /** {@return the two-sided p-value against a slope of 0} */
        public double pValue() {
            return 2 * TDistribution.of(degrees).survivalProbability(Math.abs(t()));
        }

        /**
         * {@return the t interval of the slope}
         *
         * @param level the confidence level
         */
        public Interval interval(double level) {
            return Interval.around(value, Quantile.studentTwoSided(level, degrees) * standardError, level);
        }
    }

    /**
     * {@return the fit; absent where no group has values at two different x, fewer than two groups are given, no degree of
     *     freedom is left ({@code N − n − 1}), or the lines of all groups fit without residuals}
     *
     * @param groups the group of each value, any number for each
     * @param x      where
     * @param y      the values
     * @throws IllegalArgumentException if the three differ in length or a number is not finite
     */
    public static Optional<RandomInterceptLine> of(int[] groups, double[] x, double[] y) {
        if (groups.length != x.length || x.length != y.length) {
            throw new IllegalArgumentException("groups, x, y: expected the same length, got " + groups.length + ", "
                    + x.length + " and " + y.length);
        }
        if (!Arrays.stream(x).allMatch(Double::isFinite) || !Arrays.stream(y).allMatch(Double::isFinite)) {
            throw new IllegalArgumentException("x, y: expected finite numbers");
        }
        return x.length == 0
                ? Optional.empty()
                : Optional.of(GroupSums.of(groups, x, y))
                        .filter(GroupSums::allowFit)
                        .map(RandomInterceptLine::new);
    }

    private static double bestRatio(GroupSums sums) {
        DoubleUnaryOperator derivative = ratio -> new LineAtRatio(sums, ratio).derivative();
        double best = 0;
        double lowest = new LineAtRatio(sums, 0).deviance();
        double before = 0;
        double atBefore = derivative.applyAsDouble(0);
        for (int i = 0; i < GRID; i++) {
            double ratio = StrictMath.pow(10, -8 + 0.1 * i);
            double at = derivative.applyAsDouble(ratio);
            if (atBefore < 0 && at >= 0) {
                double root = root(derivative, before, ratio);
                double deviance = new LineAtRatio(sums, root).deviance();
                if (deviance < lowest) {
                    best = root;
                    lowest = deviance;
                }
            }
            before = ratio;
            atBefore = at;
        }
        return best;
    }

    /** Bisection to the last digit: the derivative rises from below 0 to 0 or more. */
    private static double root(DoubleUnaryOperator rising, double below, double above) {
        double low = below;
        double high = above;
        for (double middle = (low + high) / 2; middle > low && middle < high; middle = (low + high) / 2) {
            if (rising.applyAsDouble(middle) < 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /** {@return the number of values, N} */
    public int n() {
        return sums.n();
    }

    /** {@return the number of groups, n} */
    public int groups() {
        return sums.groups();
    }

    /** {@return the variance between groups, 0 where the values show none} */
    public double betweenVariance() {
        return ratio * residualVariance();
    }

    /** {@return the variance of values about the line of their group} */
    public double residualVariance() {
        return line.residualVariance();
    }

    /** {@return minus twice the restricted log-likelihood; it depends on the unit of x} */
    public double deviance() {
        return line.deviance();
    }

    /** {@return the slope common to all groups, with Satterthwaite's degrees of freedom} */
    public Slope slope() {
        return new Slope(line.slope(), Math.sqrt(line.variance(0, 1)), degrees(0, 1, sums.withinDegrees()));
    }

    /** {@return the slope of least squares with a constant for each group, {@code N − n − 1} degrees of freedom} */
    public Slope withinSlope() {
        return sums.withinSlope();
    }

    /**
     * {@return the fitted value of a group taken at random}
     *
     * @param x where
     */
    public double at(double x) {
        return line.at(x);
    }

    /**
     * {@return the standard error of {@link #at}}
     *
     * @param x where
     */
    public double standardErrorAt(double x) {
        return Math.sqrt(line.variance(1, x - sums.meanX()));
    }

    /**
     * {@return the degrees of freedom of {@link #standardErrorAt}}
     *
     * @param x where
     */
    public double degreesAt(double x) {
        return degrees(1, x - sums.meanX(), Math.min(sums.withinDegrees(), groups() - 1));
    }

    /**
     * {@return the t interval of {@link #at}}
     *
     * @param x     where
     * @param level the confidence level
     */
    public Interval intervalAt(double x, double level) {
        return Interval.around(at(x), Quantile.studentTwoSided(level, degreesAt(x)) * standardErrorAt(x), level);
    }

    private double degrees(double constant, double slope, double otherwise) {
        double degrees = ratio > 0 ? line.satterthwaite(constant, slope) : Double.NaN;
        return degrees > 0 ? degrees : otherwise;
    }

    double squaresWithin() {
        return sums.xx();
    }

    /** {@return the fit as a small table} */
    @Override
    public String toString() {
        Slope slope = slope();
        return TextTable.titled("line with a random intercept for each group")
                .with("values, groups", n() + ", " + groups())
                .with("slope", TextTable.number(slope.value()) + ", " + slope.interval(Interval.LEVEL))
                .with("degrees of freedom", TextTable.number(slope.degrees()))
                .with("standard deviation between groups", TextTable.number(Math.sqrt(betweenVariance())))
                .with("residual standard deviation", TextTable.number(Math.sqrt(residualVariance())))
                .toString();
    }
}
