// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import dev.infiltration.statistics.CensoredNormal.Point;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.DoubleStream;

/**
 * The log-normal population that makes rates and bounds of rates most likely (censored maximum likelihood, Cohen 1959).
 *
 * <p>A rate counts with its density, a bound with the chance of lying below or above it. Without bounds μ and σ are the
 * mean and the standard deviation (divisor n) of the logarithms. It is absent for fewer than two different rates, and for
 * any number that has no logarithm.
 */
public final class LogNormalFit {

    private final CensoredNormal likelihood;
    private final Point top;
    private final double centre;

    private LogNormalFit(double[] rates, double[] atMost, double[] atLeast) {
        SampleStatistics logs = SampleStatistics.of(logs(rates, 0));
        this.centre = logs.mean();
        this.likelihood = new CensoredNormal(logs(rates, centre), logs(atMost, centre), logs(atLeast, centre));
        this.top = likelihood.top(new Point(0, 1 / logs.sd()));
    }

    private static double[] logs(double[] values, double centre) {
        return Arrays.stream(values)
                .map(value -> StrictMath.log(value) - centre)
                .toArray();
    }

    /**
     * {@return the fit to rates and bounds}
     *
     * @param rates   what was measured
     * @param atMost  upper bounds
     * @param atLeast lower bounds
     */
    public static Optional<LogNormalFit> of(double[] rates, double[] atMost, double[] atLeast) {
        boolean haveLogs = DoubleStream.concat(
                        Arrays.stream(rates), DoubleStream.concat(Arrays.stream(atMost), Arrays.stream(atLeast)))
                .allMatch(value -> value > 0 && value < Double.POSITIVE_INFINITY);
        boolean differ = Arrays.stream(rates).distinct().count() > 1;
        return haveLogs && differ ? Optional.of(new LogNormalFit(rates, atMost, atLeast)) : Optional.empty();
    }

    /** {@return μ, the mean of the logarithms} */
    public double logMean() {
        return top.mu() + centre;
    }

    /** {@return σ, the standard deviation of the logarithms} */
    public double logSd() {
        return top.sigma();
    }

    /** {@return the geometric mean and median of the population} */
    public double geometricMean() {
        return StrictMath.exp(logMean());
    }

    /** {@return the arithmetic mean of the population} */
    public double mean() {
        return StrictMath.exp(logMean() + logSd() * logSd() / 2);
    }

    /** {@return standard deviation by mean of the population} */
    public double cv() {
        return Math.sqrt(StrictMath.expm1(logSd() * logSd()));
    }

    /** {@return the standard error of {@link #logMean} by the curvature of the likelihood} */
    public double logMeanError() {
        return Math.sqrt(likelihood.covariance(top).mu());
    }

    /** {@return the standard error of {@link #logSd} by the curvature of the likelihood} */
    public double logSdError() {
        return Math.sqrt(likelihood.covariance(top).sigma());
    }

    /** {@return the covariance of {@link #logMean} and {@link #logSd} by the curvature of the likelihood} */
    public double covariance() {
        return likelihood.covariance(top).both();
    }

    /**
     * {@return the interval of {@link #logMean} by its profile likelihood and chi-squared, for many locations}
     *
     * <p>Few locations make it too narrow; {@link #interval} widens it.
     *
     * @param level how often such an interval is right
     */
    public Interval profile(double level) {
        return within(Quantile.chiSquared(level, 1), level);
    }

    /**
     * {@return the interval of {@link #geometricMean} by the profile likelihood of its logarithm, widened for few locations
     *     so that without bounds it is Student's: {@code n·ln(1 + t²/(n − 1))} for chi-squared}
     *
     * @param level how often such an interval is right
     */
    public Interval interval(double level) {
        double degrees = likelihood.n() - 1.0;
        double t = Quantile.studentTwoSided(level, degrees);
        return within(likelihood.n() * StrictMath.log1p(t * t / degrees), level).exp();
    }

    private Interval within(double drop, double level) {
        double floor = likelihood.at(top) - drop / 2;
        double step = logMeanError();
        return new Interval(edge(-step, floor), edge(step, floor), level);
    }

    private double edge(double step, double floor) {
        return centre + Roots.beyond(top.mu(), step, mu -> likelihood.at(likelihood.topAt(mu, top)) - floor);
    }

    /** {@return the fit as a small table} */
    @Override
    public String toString() {
        return TextTable.titled("log-normal population")
                .with(
                        "geometric mean",
                        TextTable.rate(geometricMean()) + ", "
                                + interval(Interval.LEVEL).text(geometricMean(), TextTable::rate, "locations"))
                .with("mean", TextTable.rate(mean()))
                .with("coefficient of variation", TextTable.number(cv()))
                .toString();
    }
}
