// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * A sample of logarithms of a log-normal quantity, by strata with their shares of the area; one stratum of share 1 for a
 * simple random sample.
 *
 * @param strata the strata
 */
public record StratifiedSample(List<Stratum> strata) {

    /** Fewest values of a stratum for an interval of the mean of the logarithms. */
    private static final int FEWEST_FOR_LOG_MEAN = 2;
    /** Fewest values of a stratum for an interval of the arithmetic mean. */
    private static final int FEWEST_FOR_MEAN = 3;

    /**
     * A stratum.
     *
     * @param share its share of the area, 0 to 1
     * @param logs  number, mean and standard deviation of its logarithms
     */
    public record Stratum(double share, SampleStatistics logs) {

        private double variance() {
            return logs.sd() * logs.sd();
        }

        private double varianceOfMean() {
            return share * share * variance() / logs.n();
        }

        /** The arithmetic mean of a log-normal population of these moments. */
        private double logNormalMean() {
            return StrictMath.exp(logs.mean() + variance() / 2);
        }

        private double limit(double probability) {
            return StrictMath.exp(new LogNormalMean(logs.n(), logs.mean(), logs.sd()).limit(probability));
        }
    }

    /** Copies the strata. */
    public StratifiedSample {
        strata = List.copyOf(strata);
    }

    /**
     * {@return a simple random sample}
     *
     * @param logs the logarithms, at least one
     */
    public static StratifiedSample of(double... logs) {
        return new StratifiedSample(List.of(new Stratum(1, SampleStatistics.of(logs))));
    }

    private double sum(ToDoubleFunction<Stratum> term) {
        return strata.stream().mapToDouble(term).sum();
    }

    private boolean hasAtLeast(int fewest) {
        return strata.stream().allMatch(stratum -> stratum.logs().n() >= fewest);
    }

    /** {@return the mean of the logarithms, weighted by area} */
    public double logMean() {
        return sum(stratum -> stratum.share() * stratum.logs().mean());
    }

    /**
     * {@return the interval of {@link #logMean}: Student t for one stratum, with Satterthwaite degrees of freedom for several;
     *     absent where a stratum has fewer than two values}
     *
     * @param level the confidence level
     */
    public Optional<Interval> logMeanInterval(double level) {
        if (!hasAtLeast(FEWEST_FOR_LOG_MEAN)) {
            return Optional.empty();
        }
        double variance = sum(Stratum::varianceOfMean);
        double degrees = variance > 0
                ? variance
                        * variance
                        / sum(stratum -> Math.pow(stratum.varianceOfMean(), 2)
                                / (stratum.logs().n() - 1))
                : 1;
        return Optional.of(
                Interval.around(logMean(), Quantile.studentTwoSided(level, degrees) * Math.sqrt(variance), level));
    }

    /** {@return the arithmetic mean of the log-normal strata, weighted by area: {@code Σ share·exp(mean + sd²/2)}} */
    public double logNormalMean() {
        return sum(stratum -> stratum.share() * stratum.logNormalMean());
    }

    /**
     * {@return the interval of {@link #logNormalMean}: Land's limits for one stratum; for several, the Land's limits of each
     *     combined by the method of variance estimates recovery (Zou, Huo and Taleban 2009); absent where a stratum has
     *     fewer than three values}
     *
     * @param level the confidence level
     */
    public Optional<Interval> logNormalMeanInterval(double level) {
        return hasAtLeast(FEWEST_FOR_MEAN)
                ? Optional.of(new Interval(limit((1 - level) / 2, -1), limit((1 + level) / 2, 1), level))
                : Optional.empty();
    }

    private double limit(double probability, int side) {
        double squares =
                sum(stratum -> Math.pow(stratum.share() * (stratum.limit(probability) - stratum.logNormalMean()), 2));
        return strata.size() == 1 ? strata.get(0).limit(probability) : logNormalMean() + side * Math.sqrt(squares);
    }
}
