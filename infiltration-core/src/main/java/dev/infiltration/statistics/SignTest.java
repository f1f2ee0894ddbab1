// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import java.math.BigInteger;

/**
 * The sign test: are there as many rises as falls.
 *
 * <p>Pairs without a difference are left out. The probability is exact, from the binomial distribution with one half.
 *
 * @param rises how many differences lie above zero
 * @param falls how many lie below
 */
public record SignTest(int rises, int falls) {

    /**
     * Checks the counts.
     *
     * @throws IllegalArgumentException if one is negative
     */
    public SignTest {
        if (rises < 0 || falls < 0) {
            throw new IllegalArgumentException("rises, falls: expected counts, got " + rises + ", " + falls);
        }
    }

    /**
     * {@return the test of some differences}
     *
     * @param differences one for each pair, infinite ones included
     */
    public static SignTest of(double... differences) {
        return within(0, differences);
    }

    /**
     * {@return the test of differences of logarithms}
     *
     * @param differences one for each pair, infinite ones included; those within 1e-12 of 0 are zero
     */
    public static SignTest ofLogs(double... differences) {
        return within(Ranks.logTolerance(), differences);
    }

    static SignTest within(double tolerance, double... differences) {
        int rises = 0;
        int falls = 0;
        for (double difference : differences) {
            rises += difference > tolerance ? 1 : 0;
            falls += difference < -tolerance ? 1 : 0;
        }
        return new SignTest(rises, falls);
    }

    /** {@return how many pairs differ} */
    public int n() {
        return rises + falls;
    }

    /** {@return the two-sided probability: twice that of the smaller count or less, at most 1} */
    public ExactProbability exact() {
        return exactTail().doubled();
    }

    /** {@return the one-sided probability of the smaller count or less} */
    public ExactProbability exactTail() {
        BigInteger choices = BigInteger.ONE;
        BigInteger sum = BigInteger.ONE;
        for (int k = 1; k <= Math.min(rises, falls); k++) {
            choices = choices.multiply(BigInteger.valueOf(n() - k + 1L)).divide(BigInteger.valueOf(k));
            sum = sum.add(choices);
        }
        return new ExactProbability(sum, BigInteger.ONE.shiftLeft(n()));
    }

    /** {@return the least that the two-sided probability of so many pairs can be: 2^(1 − n), at most 1} */
    public double smallestPValue() {
        return Math.min(1, Math.scalb(1.0, 1 - n()));
    }

    /** {@return the conclusion at a two-sided risk of 5 %} */
    public Conclusion conclusion() {
        return Conclusion.of(exact().value(), smallestPValue(), rises - falls);
    }

    /** {@return the test as a small table} */
    @Override
    public String toString() {
        TextTable table = TextTable.titled("signs").with("above zero, below zero", rises + ", " + falls);
        return TestRows.ended(table, exact().value(), conclusion()).toString();
    }
}
