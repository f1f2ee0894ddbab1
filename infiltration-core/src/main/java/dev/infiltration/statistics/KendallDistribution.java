// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import java.math.BigInteger;
import java.util.Arrays;

/**
 * How many orders of some values have how many pairs in the wrong order, computed exactly.
 *
 * <p>With groups of equal values of sizes t the counts are the coefficients of {@code Π(1 − qⁱ), i to n}, over the same
 * product for each t (the Gaussian multinomial coefficient; MacMahon 1915).
 */
final class KendallDistribution {

    /** The most values that are computed exactly. */
    static final int MOST = 40;

    private final BigInteger[] counts;
    private final BigInteger all;

    private KendallDistribution(BigInteger[] counts) {
        this.counts = counts;
        this.all = sum(counts.length - 1);
    }

    /** {@return the distribution for as many values as the groups hold, each group of equal ones} */
    static KendallDistribution of(int... groups) {
        int n = Arrays.stream(groups).sum();
        int within = Arrays.stream(groups).map(size -> size * (size - 1) / 2).sum();
        BigInteger[] counts = new BigInteger[n * (n - 1) / 2 - within + 1];
        Arrays.fill(counts, BigInteger.ZERO);
        counts[0] = BigInteger.ONE;
        int placed = 0;
        for (int size : groups) {
            for (int i = 1; i <= size; i++) {
                multiply(counts, ++placed);
                divide(counts, i);
            }
        }
        return new KendallDistribution(counts);
    }

    /** {@return the distribution for values that all differ} */
    static KendallDistribution ofDifferent(int n) {
        int[] groups = new int[n];
        Arrays.fill(groups, 1);
        return of(groups);
    }

    /** By 1 − q^power. */
    private static void multiply(BigInteger[] series, int power) {
        for (int k = series.length - 1; k >= power; k--) {
            series[k] = series[k].subtract(series[k - power]);
        }
    }

    /** By 1 − q^power. */
    private static void divide(BigInteger[] series, int power) {
        for (int k = power; k < series.length; k++) {
            series[k] = series[k].add(series[k - power]);
        }
    }

    private BigInteger sum(int most) {
        BigInteger sum = BigInteger.ZERO;
        for (int k = 0; k <= Math.min(most, counts.length - 1); k++) {
            sum = sum.add(counts[k]);
        }
        return sum;
    }

    /** {@return the probability of at most so many pairs in the wrong order, 0 for a negative number} */
    ExactProbability atMost(long inversions) {
        return new ExactProbability(sum((int) Math.min(inversions, counts.length)), all);
    }

    /**
     * {@return how many of the lowest numbers of pairs, and as many of the highest, can be excluded so that the confidence
     * level is still at least {@code level}}
     */
    int lowNumbers(double level) {
        int number = 0;
        while (atMost(number).reaches(level)) {
            number++;
        }
        return number;
    }
}
