// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import java.util.OptionalInt;
import java.util.function.IntToDoubleFunction;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * The power of the two-sided t test: the probability that it finds an effect of a given size.
 *
 * <p>With an effect of δ standard errors, t has a noncentral t distribution (Johnson, Kotz and Balakrishnan 1995, chapter
 * 31). Both tails count, also the one opposite to the effect.
 */
public final class TTestPower {

    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
    /** The density of the estimated by the true standard deviation is negligible beyond this many widths of its peak. */
    private static final double WIDTHS = 13;

    private static final int STEPS = 4096;
    private static final int MOST = 100_000;

    private TTestPower() {}

    /**
     * {@return the power}
     *
     * @param noncentrality true effect divided by its true standard error
     * @param degrees       degrees of freedom of the estimated standard error, at least 1
     * @param alpha         two-sided significance level, above 0 and below 1
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static double of(double noncentrality, double degrees, double alpha) {
        if (!(alpha > 0 && alpha < 1)) {
            throw new IllegalArgumentException("alpha: expected between 0 and 1, got " + alpha);
        }
        double critical = Quantile.student(1 - alpha / 2, degrees);
        return cumulative(-critical, degrees, -noncentrality) + cumulative(-critical, degrees, noncentrality);
    }

    /**
     * {@return the probability that a noncentral t is at most {@code t}}: {@code ∫ Φ(t·s − δ) f(s) ds}, s the estimated by the
     * true standard deviation; absolute error below 1e-11
     *
     * @param t             the value
     * @param degrees       degrees of freedom, at least 1
     * @param noncentrality the noncentrality δ
     * @throws IllegalArgumentException if the degrees of freedom are below 1 or an argument is not finite
     */
    public static double cumulative(double t, double degrees, double noncentrality) {
        if (!(degrees >= 1) || !Double.isFinite(t + degrees + noncentrality)) {
            throw new IllegalArgumentException(
                    "t, degrees, noncentrality: expected finite numbers, degrees at least 1, got " + t + ", " + degrees
                            + ", " + noncentrality);
        }
        double peak = Math.sqrt((degrees - 1) / degrees);
        double width = 1 / Math.sqrt(2 * degrees);
        double low = Math.max(0, peak - WIDTHS * width);
        double step = (peak + WIDTHS * width - low) / STEPS;
        double sum = 0;
        double all = 0;
        for (int i = 0; i <= STEPS; i++) {
            double s = low + i * step;
            double weight = simpson(i) * density(s, peak, degrees);
            all += weight;
            sum += weight == 0 ? 0 : weight * NORMAL.cumulativeProbability(t * s - noncentrality);
        }
        return sum / all;
    }

    private static int simpson(int i) {
        return i == 0 || i == STEPS ? 1 : i % 2 == 1 ? 4 : 2;
    }

    /** {@code s^(ν − 1)·exp(−ν·s²/2)}, scaled to 1 at its peak. */
    private static double density(double s, double peak, double degrees) {
        double rise = degrees == 1 ? 0 : (degrees - 1) * StrictMath.log(s / peak);
        return StrictMath.exp(rise - degrees * (s - peak) * (s + peak) / 2);
    }

    /**
     * {@return the smallest number for which the power reaches a value, absent if 100 000 do not}
     *
     * @param power    the power of each number, not falling with it
     * @param from     the smallest number that is possible
     * @param required the power required, above 0 and below 1
     */
    public static OptionalInt smallest(IntToDoubleFunction power, int from, double required) {
        if (!(required > 0 && required < 1)) {
            throw new IllegalArgumentException("power: expected between 0 and 1, got " + required);
        }
        int enough = from;
        int few = from - 1;
        while (power.applyAsDouble(enough) < required) {
            if (enough >= MOST) {
                return OptionalInt.empty();
            }
            few = enough;
            enough = Math.min(MOST, 2 * enough);
        }
        while (enough - few > 1) {
            int middle = (few + enough) / 2;
            if (power.applyAsDouble(middle) < required) {
                few = middle;
            } else {
                enough = middle;
            }
        }
        return OptionalInt.of(enough);
    }
}
