// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.summary;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Parts of a surface with their shares of its area, each with the moments of the logarithms of its rates; one part of
 * share 1 where the locations are random.
 */
record Strata(List<Part> parts) {

    /** A part of the surface. */
    record Part(double share, Moments logs) {

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

    Strata {
        parts = List.copyOf(parts);
    }

    static Strata of(double... logs) {
        return new Strata(List.of(new Part(1, Moments.of(logs))));
    }

    private double sum(ToDoubleFunction<Part> term) {
        return parts.stream().mapToDouble(term).sum();
    }

    private boolean hasAtLeast(int fewest) {
        return parts.stream().allMatch(part -> part.logs().n() >= fewest);
    }

    /** The mean of the logarithms over the area. */
    double logMean() {
        return sum(part -> part.share() * part.logs().mean());
    }

    /**
     * The interval of {@link #logMean}: Student's for one part; for several with the degrees of freedom of Satterthwaite.
     * Absent where a part has fewer than two locations.
     */
    Optional<Interval> logMeanInterval(double level) {
        if (!hasAtLeast(RateSummary.FEWEST_FOR_SCATTER)) {
            return Optional.empty();
        }
        double variance = sum(Part::varianceOfMean);
        double degrees = variance > 0
                ? variance
                        * variance
                        / sum(part -> Math.pow(part.varianceOfMean(), 2)
                                / (part.logs().n() - 1))
                : 1;
        return Optional.of(
                Interval.around(logMean(), Quantile.studentTwoSided(level, degrees) * Math.sqrt(variance), level));
    }

    /** The mean of log-normal populations over the area. */
    double logNormalMean() {
        return sum(part -> part.share() * part.logNormalMean());
    }

    /**
     * The interval of {@link #logNormalMean}: Land's exact one for one part; for several Land's limits of each put together by
     * the method of variance estimates recovery (Zou, Huo and Taleban 2009). Absent where a part has fewer than three
     * locations.
     */
    Optional<Interval> logNormalMeanInterval(double level) {
        return hasAtLeast(RateSummary.FEWEST_FOR_MEAN)
                ? Optional.of(new Interval(limit((1 - level) / 2, -1), limit((1 + level) / 2, 1), level))
                : Optional.empty();
    }

    private double limit(double probability, int side) {
        double squares = sum(part -> Math.pow(part.share() * (part.limit(probability) - part.logNormalMean()), 2));
        return parts.size() == 1 ? parts.get(0).limit(probability) : logNormalMean() + side * Math.sqrt(squares);
    }
}
