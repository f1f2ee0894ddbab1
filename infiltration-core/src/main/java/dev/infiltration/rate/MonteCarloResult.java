// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import dev.infiltration.statistics.Interval;
import java.util.Arrays;
import java.util.Locale;

/**
 * Result of Monte Carlo trials of a measurement, after JCGM 101:2008.
 *
 * <p>A model that is not finite for some trials shows in the mean and the standard uncertainty, which are then not finite
 * either, and in {@link #isStable}; the intervals hold as long as their ends are finite.
 */
public final class MonteCarloResult {

    /** Largest difference of the ends, in standard uncertainties. */
    private static final double MOST_OFF = 0.1;

    private final double[] sorted;
    private final double level;
    private final int digits;
    private final boolean stable;
    private final double mean;
    private final double standardUncertainty;

    MonteCarloResult(double[] values, double level, int digits, boolean stable) {
        this.sorted = values.clone();
        Arrays.sort(sorted);
        this.level = level;
        this.digits = digits;
        this.stable = stable;
        double middle = sorted[sorted.length / 2];
        double sum = 0;
        double squares = 0;
        for (double value : sorted) {
            sum += value - middle;
            squares += (value - middle) * (value - middle);
        }
        double offset = sum / sorted.length;
        this.mean = middle + offset;
        this.standardUncertainty = StrictMath.sqrt((squares - sum * offset) / (sorted.length - 1));
    }

    /** {@return the number of trials} */
    public int count() {
        return sorted.length;
    }

    /** {@return the coverage probability of the intervals} */
    public double level() {
        return level;
    }

    /** {@return whether the values are stable to a fifth of the numerical tolerance} (7.9.4, 8.2) */
    public boolean isStable() {
        return stable;
    }

    /** {@return the mean of the trials, the estimate of the result} (7.6) */
    public double mean() {
        return mean;
    }

    /** {@return the standard deviation of the trials, the standard uncertainty of the result} (7.6) */
    public double standardUncertainty() {
        return standardUncertainty;
    }

    /** {@return the coverage interval with as many trials below as above it} (7.7.2) */
    public Interval symmetric() {
        int covered = covered();
        return from((sorted.length - covered + 1) / 2 - 1, covered);
    }

    /** {@return the shortest coverage interval} (7.7.2, 5.3.4); of several equal ones, the lowest */
    public Interval shortest() {
        int covered = covered();
        Interval shortest = from(0, covered);
        for (int start = 1; start + covered < sorted.length; start++) {
            if (sorted[start + covered] - sorted[start] < shortest.width()) {
                shortest = from(start, covered);
            }
        }
        return shortest;
    }

    private int covered() {
        return (int) Math.min(sorted.length - 1L, Math.round(level * sorted.length));
    }

    private Interval from(int start, int covered) {
        int first = Math.max(0, start);
        return Interval.between(sorted[first], sorted[first + covered], level);
    }

    /** {@return the numerical tolerance: half a unit in the last meaningful digit of the standard uncertainty} (7.9.2) */
    public double tolerance() {
        return tolerance(standardUncertainty, digits);
    }

    static double tolerance(double uncertainty, int digits) {
        return Double.isFinite(uncertainty) ? Rounding.lastDigit(uncertainty, digits) / 2 : Double.NaN;
    }

    /**
     * {@return how the ends of the linear interval compare with those of the trials} (8.1), at a tenth of the standard
     * uncertainty where the numerical tolerance is more: it is up to a half, by the decade that the uncertainty lies in
     *
     * @param linear the same measurement by the law of propagation of uncertainty
     */
    public Agreement compare(Uncertainty linear) {
        Interval straight = linear.interval(level);
        Interval trials = symmetric();
        return new Agreement(
                Math.abs(straight.low() - trials.low()),
                Math.abs(straight.high() - trials.high()),
                Math.min(tolerance(), MOST_OFF * standardUncertainty),
                stable);
    }

    /**
     * Validity of linear propagation: both ends agree with those of the trials within the tolerance (JCGM 101, 8).
     *
     * @param low       difference of the lower ends
     * @param high      difference of the upper ends
     * @param tolerance largest allowed difference
     * @param shown     whether the trials were stable
     */
    public record Agreement(double low, double high, double tolerance, boolean shown) {

        /** {@return whether linear propagation is confirmed} */
        public boolean holds() {
            return shown && low <= tolerance && high <= tolerance;
        }

        /** {@return the verdict for people} */
        @Override
        public String toString() {
            String verdict = holds()
                    ? "linear propagation is valid"
                    : shown
                            ? "linear propagation is not valid: use the trials"
                            : "not confirmed: the trials were not stable";
            return String.format(
                    Locale.ROOT,
                    "%s (ends differ by %s and %s, tolerance %s)",
                    verdict,
                    Rounding.digits(low, 2),
                    Rounding.digits(high, 2),
                    Rounding.digits(tolerance, 1));
        }
    }

    /** {@return mean and standard uncertainty for people} */
    @Override
    public String toString() {
        return Rounding.pair(mean, standardUncertainty) + " (standard uncertainty by " + count() + " trials)";
    }
}
