// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.summary;

import dev.infiltration.statistics.Quantile;
import java.util.OptionalInt;
import java.util.function.IntToDoubleFunction;

/**
 * Confidence interval of a geometric mean for a number of locations, given the variation of rates between locations.
 *
 * <p>The interval runs from the mean divided by a factor to the mean times it: {@code exp(t·s/√n)}.
 *
 * @param logSd standard deviation of the logarithms of the rates, not negative
 */
public record ScatterPlan(double logSd) {

    /** More locations than anybody tests. */
    private static final int MOST = 10_000;

    /**
     * Checks the scatter.
     *
     * @throws IllegalArgumentException if it is negative or not finite
     */
    public ScatterPlan {
        if (!(logSd >= 0) || Double.isInfinite(logSd)) {
            throw new IllegalArgumentException("logSd: expected a finite number of at least 0, got " + logSd);
        }
    }

    /**
     * {@return the plan for a coefficient of variation of log-normal rates: s² = ln(1 + CV²)}
     *
     * @param cv standard deviation by mean
     */
    public static ScatterPlan ofCv(double cv) {
        return new ScatterPlan(Math.sqrt(StrictMath.log1p(cv * cv)));
    }

    /**
     * {@return the plan for the scatter that some locations showed, taken as large as it may well be}
     *
     * <p>A pilot of few locations shows a scatter that is itself uncertain; the upper bound is {@code s·√(df/χ²)}.
     *
     * @param logSd   standard deviation of the logarithms that they showed
     * @param degrees its degrees of freedom: locations less one, added up over surfaces that are pooled
     * @param level   how often the scatter is not larger
     */
    public static ScatterPlan cautious(double logSd, double degrees, double level) {
        return new ScatterPlan(logSd * Math.sqrt(degrees / Quantile.chiSquared(1 - level, degrees)));
    }

    /**
     * {@return the factor by which the interval of the geometric mean is off to either side}
     *
     * @param n     how many locations, at least 2
     * @param level how often such an interval is right
     */
    public double factor(int n, double level) {
        return StrictMath.exp(Quantile.studentTwoSided(level, n - 1.0) * logSd / Math.sqrt(n));
    }

    /**
     * {@return how many locations make the factor no larger than a given one; absent if ten thousand do not}
     *
     * @param factor the factor, above 1
     * @param level  how often such an interval is right
     */
    public OptionalInt locationsFor(double factor, double level) {
        return fewest(n -> factor(n, level), factor);
    }

    /**
     * {@return how many locations make the factor of the arithmetic mean no larger than a given one: the scatter's own
     *     uncertainty adds {@code s⁴/(2(n − 1))} (Cox's method, Olsson 2005); absent if ten thousand do not}
     *
     * @param factor the factor, above 1
     * @param level  how often such an interval is right
     */
    public OptionalInt locationsForMean(double factor, double level) {
        double variance = logSd * logSd;
        return fewest(
                n -> StrictMath.exp(Quantile.studentTwoSided(level, n - 1.0)
                        * Math.sqrt(variance / n + variance * variance / (2 * (n - 1.0)))),
                factor);
    }

    /** The factor falls with every location more: doubled and halved. */
    private static OptionalInt fewest(IntToDoubleFunction factors, double factor) {
        if (!(factors.applyAsDouble(MOST) <= factor)) {
            return OptionalInt.empty();
        }
        int few = 1;
        int enough = MOST;
        while (enough - few > 1) {
            int middle = (few + enough) / 2;
            if (factors.applyAsDouble(middle) <= factor) {
                enough = middle;
            } else {
                few = middle;
            }
        }
        return OptionalInt.of(enough);
    }
}
