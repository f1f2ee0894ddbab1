// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.compare;

import dev.infiltration.statistics.Conclusion;
import dev.infiltration.statistics.TTestPower;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * How many locations are needed to detect a ratio of two rates, such as after to before cleaning.
 *
 * <p>The two-sided t test of the logarithms at 5 %, for log-normal rates: {@code δ = ln(ratio)/s·√n} for n pairs,
 * {@code ln(ratio)/s·√(n/2)} for two groups of n. The exact rank tests of {@link PairedComparison} and
 * {@link GroupComparison} need a few locations more.
 *
 * @param design whether the same locations are tested twice
 * @param logSd  standard deviation of natural logarithms: for pairs, of the differences of the logarithms of each location;
 *               for two groups, of the logarithms within a group; above 0
 */
public record RatioPower(Design design, double logSd) {

    private static final double FARTHEST = 100;

    /** How the two rates are measured. */
    public enum Design {
        /** Each location is tested twice. */
        PAIRS,
        /** Two groups of different locations, the same number in each. */
        TWO_GROUPS
    }

    /**
     * Checks the standard deviation.
     *
     * @throws IllegalArgumentException if it is not above 0 and finite
     */
    public RatioPower {
        if (!(logSd > 0) || Double.isInfinite(logSd)) {
            throw new IllegalArgumentException("logSd: expected a finite number above 0, got " + logSd);
        }
    }

    /**
     * {@return the power for two groups with a coefficient of variation: {@code s² = ln(1 + CV²)}}
     *
     * @param cv standard deviation divided by mean, within a group
     */
    public static RatioPower ofCv(double cv) {
        return new RatioPower(Design.TWO_GROUPS, Math.sqrt(StrictMath.log1p(cv * cv)));
    }

    /**
     * {@return the probability that the test detects a ratio}
     *
     * @param ratio     the true ratio, above 0; a ratio and its inverse have the same power
     * @param locations number of pairs, or of locations in each group, at least 2
     * @throws IllegalArgumentException if an argument is out of range
     */
    public double power(double ratio, int locations) {
        if (!(ratio > 0) || Double.isInfinite(ratio)) {
            throw new IllegalArgumentException("ratio: expected a finite number above 0, got " + ratio);
        }
        return powerOfLog(StrictMath.log(ratio), locations);
    }

    private double powerOfLog(double log, int locations) {
        if (locations < 2) {
            throw new IllegalArgumentException("locations: expected at least 2, got " + locations);
        }
        boolean isPaired = design == Design.PAIRS;
        double noncentrality = log / logSd * Math.sqrt(isPaired ? locations : locations / 2.0);
        return TTestPower.of(noncentrality, isPaired ? locations - 1.0 : 2.0 * locations - 2, Conclusion.RISK);
    }

    /**
     * {@return the smallest number of pairs, or of locations in each group, that detects a ratio; absent if 100 000 do not}
     *
     * @param ratio the true ratio, above 0
     * @param power the required probability of detecting it, such as 0.8
     */
    public OptionalInt locationsFor(double ratio, double power) {
        return TTestPower.smallest(locations -> power(ratio, locations), 2, power);
    }

    /**
     * {@return the ratio above 1 that a number of locations detects; its inverse is detected as well; absent where no ratio up
     *     to e^100 is}
     *
     * @param locations number of pairs, or of locations in each group, at least 2
     * @param power     the required probability of detecting it, such as 0.8
     */
    public OptionalDouble detectableRatio(int locations, double power) {
        if (!(power > 0 && power < 1)) {
            throw new IllegalArgumentException("power: expected between 0 and 1, got " + power);
        }
        double low = 0;
        double high = logSd;
        while (powerOfLog(high, locations) < power) {
            low = high;
            high *= 2;
            if (high > FARTHEST) {
                return OptionalDouble.empty();
            }
        }
        for (double middle = (low + high) / 2; middle > low && middle < high; middle = (low + high) / 2) {
            if (powerOfLog(middle, locations) < power) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return OptionalDouble.of(StrictMath.exp(high));
    }
}
