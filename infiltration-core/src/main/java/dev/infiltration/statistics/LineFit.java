// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * The straight line of least squares through points, with what it says between, beyond and backwards.
 *
 * <p>{@code y = intercept + slope·x}, all scatter in {@code y}, normal and even. Two points make a line without scatter:
 * everything that needs the scatter is then absent or not a number. All {@code x} the same make a slope that is not a
 * number. Backwards (inverse prediction) by Fieller's limits, which are not symmetric and may have no bounds.
 */
public final class LineFit {

    private final int n;
    private final double meanX;
    private final double meanY;
    private final double sumXx;
    private final double slope;
    private final double residualSd;
    private final double rSquared;

    private LineFit(double[] x, double[] y) {
        this.n = x.length;
        this.meanX = SampleStatistics.of(x).mean();
        this.meanY = SampleStatistics.of(y).mean();
        this.sumXx = sum(i -> (x[i] - meanX) * (x[i] - meanX));
        this.slope = sum(i -> (x[i] - meanX) * (y[i] - meanY)) / sumXx;
        double residuals = sum(i -> Math.pow(y[i] - meanY - slope * (x[i] - meanX), 2));
        this.residualSd = n > 2 ? Math.sqrt(residuals / (n - 2)) : Double.NaN;
        this.rSquared = 1 - residuals / sum(i -> Math.pow(y[i] - meanY, 2));
    }

    private double sum(IntToDoubleFunction term) {
        return IntStream.range(0, n).mapToDouble(term).sum();
    }

    /**
     * {@return the line through some points}
     *
     * @param x where, at least two
     * @param y what was found there
     * @throws IllegalArgumentException if there are fewer than two points or the numbers differ
     */
    public static LineFit of(double[] x, double[] y) {
        if (x.length != y.length || x.length < 2) {
            throw new IllegalArgumentException(
                    "x, y: expected at least two pairs, got " + x.length + " and " + y.length);
        }
        return new LineFit(x, y);
    }

    /** {@return how many points there are} */
    public int n() {
        return n;
    }

    /** {@return the rise of {@code y} for one more of {@code x}} */
    public double slope() {
        return slope;
    }

    /** {@return the standard error of {@link #slope}} */
    public double slopeError() {
        return residualSd / Math.sqrt(sumXx);
    }

    /** {@return the height of the line at 0} */
    public double intercept() {
        return at(0);
    }

    /** {@return the standard error of {@link #intercept}} */
    public double interceptError() {
        return residualSd * Math.sqrt(1.0 / n + distance(0));
    }

    /** {@return the standard deviation of the points about the line, with n − 2 degrees of freedom} */
    public double residualSd() {
        return residualSd;
    }

    /** {@return the share of the scatter of {@code y} that the line takes up, 0 to 1} */
    public double rSquared() {
        return rSquared;
    }

    /**
     * {@return the height of the line}
     *
     * @param x where
     */
    public double at(double x) {
        return meanY + slope * (x - meanX);
    }

    private double distance(double x) {
        return (x - meanX) * (x - meanX) / sumXx;
    }

    /**
     * {@return the interval of the slope, absent for fewer than three points}
     *
     * @param level how often such an interval is right
     */
    public Optional<Interval> slopeInterval(double level) {
        return around(slope, slopeError(), level);
    }

    /**
     * {@return the interval of the line's height}
     *
     * @param x     where
     * @param level how often such an interval is right
     */
    public Optional<Interval> lineAt(double x, double level) {
        return around(at(x), lineError(x), level);
    }

    /**
     * {@return the standard error of the line's height}
     *
     * @param x where
     */
    public double lineError(double x) {
        return residualSd * Math.sqrt(1.0 / n + distance(x));
    }

    /**
     * {@return the interval in which one further point will lie}
     *
     * @param x     where
     * @param level how often such an interval is right
     */
    public Optional<Interval> nextAt(double x, double level) {
        return around(at(x), predictionError(x), level);
    }

    /**
     * {@return the standard error of a single future value, not a number for two points}
     *
     * @param x where
     */
    public double predictionError(double x) {
        return residualSd * Math.sqrt(1 + 1.0 / n + distance(x));
    }

    private Optional<Interval> around(double centre, double error, double level) {
        return hasScatter() ? Optional.of(Interval.around(centre, quantile(level) * error, level)) : Optional.empty();
    }

    private boolean hasScatter() {
        return n > 2 && sumXx > 0;
    }

    private double quantile(double level) {
        return Quantile.studentTwoSided(level, n - 2.0);
    }

    /**
     * {@return where the line itself has a height, absent for fewer than three points}
     *
     * @param y     the height
     * @param level how often such limits are right
     */
    public Optional<Fieller> whereLine(double y, double level) {
        return where(y, Double.POSITIVE_INFINITY, level);
    }

    /**
     * {@return where a mean of further readings comes to a value: the limits take in the readings' own scatter}
     *
     * @param y        the mean of the readings
     * @param readings how many there are; infinitely many for the line itself
     * @param level    how often such limits are right
     */
    public Optional<Fieller> where(double y, double readings, double level) {
        if (!hasScatter()) {
            return Optional.empty();
        }
        double variance = residualSd * residualSd;
        return Optional.of(
                new Fieller.Estimates(y - meanY, slope, variance * (1 / readings + 1.0 / n), 0, variance / sumXx)
                        .limits(quantile(level), level)
                        .plus(meanX));
    }

    /**
     * {@return the standard error of {@link #where} by the law of propagation, as calibration guides give it}
     *
     * @param y        the mean of the readings
     * @param readings how many there are; infinitely many for the line itself
     */
    public double whereError(double y, double readings) {
        double x = meanX + (y - meanY) / slope;
        return residualSd / Math.abs(slope) * Math.sqrt(1 / readings + 1.0 / n + distance(x));
    }

    /** {@return the line as a small table} */
    @Override
    public String toString() {
        return TextTable.titled("line of least squares")
                .with("points", n())
                .with("slope", TextTable.number(slope()))
                .with(
                        "its interval",
                        slopeInterval(Interval.LEVEL).map(Interval::toString).orElse("not given"))
                .with("height at 0", TextTable.number(intercept()))
                .with("scatter about it", TextTable.number(residualSd()))
                .toString();
    }
}
