// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;

/**
 * A probability computed exactly, not approximated: a fraction in its lowest terms.
 *
 * @param numerator   outcomes at least as far out as the one seen, from 0 to {@code denominator}
 * @param denominator all outcomes, positive
 */
public record ExactProbability(BigInteger numerator, BigInteger denominator) implements Comparable<ExactProbability> {

    /**
     * Reduces the fraction.
     *
     * @throws IllegalArgumentException if it does not lie in 0 to 1
     */
    public ExactProbability {
        if (numerator.signum() < 0 || denominator.signum() <= 0 || numerator.compareTo(denominator) > 0) {
            throw new IllegalArgumentException(
                    "numerator: expected 0 to the denominator " + denominator + ", got " + numerator);
        }
        BigInteger divisor = numerator.gcd(denominator);
        numerator = numerator.divide(divisor);
        denominator = denominator.divide(divisor);
    }

    /**
     * {@return a fraction of whole numbers}
     *
     * @param numerator   outcomes counted
     * @param denominator all outcomes
     */
    public static ExactProbability of(long numerator, long denominator) {
        return new ExactProbability(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator));
    }

    /** {@return twice this, at most 1: the two-sided probability of a symmetric distribution} */
    ExactProbability doubled() {
        return new ExactProbability(numerator.shiftLeft(1).min(denominator), denominator);
    }

    /**
     * {@return whether an interval that excludes this probability at each end reaches a confidence level, without rounding}:
     * 1/20 at each end reaches 0.9
     *
     * @param level the confidence level, read as the decimal number that prints it
     */
    public boolean reaches(double level) {
        BigDecimal required = BigDecimal.valueOf(level).multiply(new BigDecimal(denominator));
        return new BigDecimal(between()).compareTo(required) >= 0;
    }

    /** {@return the confidence level of an interval that excludes this probability (at most 1/2) at each end} */
    public double level() {
        return new ExactProbability(between().max(BigInteger.ZERO), denominator).value();
    }

    private BigInteger between() {
        return denominator.subtract(numerator.shiftLeft(1));
    }

    /** {@return the fraction as a double, correctly rounded to 16 digits} */
    public double value() {
        return new BigDecimal(numerator)
                .divide(new BigDecimal(denominator), MathContext.DECIMAL64)
                .doubleValue();
    }

    @Override
    public int compareTo(ExactProbability other) {
        return numerator.multiply(other.denominator).compareTo(other.numerator.multiply(denominator));
    }

    /** {@return the value and, where it is short, the fraction} */
    @Override
    public String toString() {
        String value = TextTable.number(value());
        return denominator.bitLength() <= Short.SIZE ? value + " (" + numerator + "/" + denominator + ")" : value;
    }
}
